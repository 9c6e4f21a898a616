"""CGATS text as the standards have it and as instruments write it.

Grammar: ANSI CGATS.17 and ISO 28178 (keywords, BEGIN_DATA_FORMAT and BEGIN_DATA, quoted strings, comments from #), as
the documentation of the R package colorSpec (`readCGATS`) and of the Rust crate `cgats` describe it.
"""

import pytest

from chartmaker.files.problems import FileRefused
from chartmaker.model.reading import LabReading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing
from tests.files.measurements.builders import cgats, read, readings, sample

BANDS = range(400, 701, 20)
FIELDS = "SAMPLE_ID " + " ".join(f"SPECTRAL_NM{nm}" for nm in BANDS)


def row(name, value, count=16):
    return f"{name} " + " ".join([str(value)] * count)


def test_spectra_in_percent_with_quotes_comments_and_bare_carriage_returns():
    contents = sample("spaces-percent.txt")
    assert readings(contents) == {"Madder, first bath": 2, 'Weld "gold"': 1}
    spectrum = contents.measured[0].readings[0]
    assert isinstance(spectrum, Spectrum)
    assert (spectrum.start_nm, spectrum.step_nm, spectrum.end_nm) == (380, 10, 730)
    assert spectrum.reflectance[0] == pytest.approx(0.03, abs=1e-4)
    assert contents.notes == ("reflectance is told to be 100 for the perfect white",)


def test_tabs_bare_names_decimal_commas_and_latin_letters():
    contents = sample("tabs-latin1.txt")
    assert readings(contents) == {"Käs 1 grün": 2, "Walnuss": 1}
    assert contents.measured[1].readings[0].step_nm == 20
    assert any("Latin-1" in note for note in contents.notes)


def test_a_data_set_under_another_measurement_condition_is_left_aside_and_told():
    contents = sample("tabs-latin1.txt")
    assert any(note.startswith("data set 2 is left aside") for note in contents.notes)


def test_lab_takes_its_viewing_from_the_weighting_functions_and_rows_may_run_over_lines():
    contents = sample("lab-bom.txt")
    assert [each.readings[0] for each in contents.measured] == [
        LabReading(lab=(38.2, 41.0, 27.5)),
        LabReading(lab=(78.1, -2.4, 61.0)),
    ]
    assert contents.notes == ()


def test_a_measurement_source_with_an_observer_tells_the_viewing():
    reading = sample("xyz-source.txt").measured[0].readings[0]
    assert reading == XyzReading(xyz=(8.1, 9.2, 20.3), viewing=Viewing(illuminant="D50", observer="2"))


def test_a_measurement_source_alone_is_the_lamp_of_the_instrument_and_nothing_else():
    contents = read(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "a 50 1 2", head='MEASUREMENT_SOURCE "A"'))
    assert contents.measured[0].readings[0].viewing == Viewing(illuminant="D50", observer="2")
    assert contents.notes == ("no illuminant and observer are told; CIE D50 and 2° are assumed",)


@pytest.mark.parametrize(
    ("head", "illuminant", "observer"),
    [
        ('ILLUMINATION_NAME "D65"\nOBSERVER "10"', "D65", "10"),
        ('ILLUMINANT "A"\nOBSERVER_ANGLE "2"', "A", "2"),
        ('WEIGHTING_FUNCTION "ILLUMINANT,D50"\nWEIGHTING_FUNCTION "OBSERVER,2 degree"', "D50", "2"),
        ('COMPUTATIONAL_PARAMETER "D65/10°"', "D65", "10"),
        ('ILLUMINATION_NAME "F11"\nOBSERVER "CIE 1964"', "FL11", "10"),
    ],
)
def test_illuminant_and_observer_are_found_among_the_keywords(head, illuminant, observer):
    contents = read(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "a 50 1 2", head=head))
    assert contents.measured[0].readings[0].viewing == Viewing(illuminant=illuminant, observer=observer)
    assert contents.notes == ()


def test_an_illuminant_that_no_reading_can_be_kept_for_is_refused():
    with pytest.raises(FileRefused, match="the illuminant is 'C'; a reading can be kept for D65, D50, A"):
        read(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "a 50 1 2", head='ILLUMINANT "C"\nOBSERVER "2"'))


@pytest.mark.parametrize("prefix", ["SPECTRAL_NM", "SPECTRAL_NM_", "NM_", "NM", "SPEC_", "nm", "R_", "SPECTRAL_"])
def test_a_spectrums_columns_may_be_called_many_things(prefix):
    fields = "SAMPLE_ID " + " ".join(f"{prefix}{nm}" for nm in BANDS)
    spectrum = read(cgats(fields, row("a", 0.25))).measured[0].readings[0]
    assert spectrum == Spectrum(start_nm=400, step_nm=20, reflectance=(0.25,) * 16)


def test_without_a_norm_the_largest_value_decides_between_percent_and_factor():
    assert read(cgats(FIELDS, row("a", 25), row("b", 0.9))).measured[0].readings[0].reflectance[0] == 0.25
    factor = read(cgats(FIELDS, row("a", 0.25)))
    assert factor.measured[0].readings[0].reflectance[0] == 0.25
    assert factor.notes == ("reflectance is taken for a factor: the largest value is 0.25",)


def test_the_files_own_norm_wins_over_the_largest_value():
    dark = cgats(FIELDS, row("a", 0.9), head="SPECTRAL_NORM 100")
    assert read(dark).measured[0].readings[0].reflectance[0] == pytest.approx(0.009)


def test_a_spectrum_wins_over_lab_beside_it():
    contents = read(cgats(FIELDS + " LAB_L LAB_A LAB_B", row("a", 0.25) + " 50 1 2"))
    assert [each.kind for each in contents.measured[0].readings] == ["spectrum"]


def test_data_sets_keep_the_format_of_the_one_before_and_their_samples_join():
    text = cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "a 50 1 2") + "BEGIN_DATA\na 51 1 2\nb 20 0 0\nEND_DATA\n"
    assert readings(read(text)) == {"a": 2, "b": 1}


def test_counts_that_disagree_and_a_missing_end_are_told():
    text = cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "a 50 1 2", head="NUMBER_OF_SETS 7").replace("END_DATA\n", "", 1)
    contents = read(text.removesuffix("END_DATA\n"))
    assert "NUMBER_OF_SETS says 7, but there are 1" in contents.notes
    assert "END_DATA is missing: the file may be cut short" in contents.notes


def test_a_hash_within_a_word_begins_no_comment():
    contents = read(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "weld#2 50 1 2 #the second"))
    assert readings(contents) == {"weld#2": 1}


def test_the_format_may_stand_on_one_line_and_in_small_letters():
    text = "cgats.17\nbegin_data_format sample_id lab_l lab_a lab_b end_data_format\nbegin_data\na 50 1 2\nend_data\n"
    assert readings(read(text)) == {"a": 1}


def test_every_problem_is_told_with_line_and_column():
    text = cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "a 5o 1 2", "b 50 1", "c 500 1 2", '"" 50 1 2', "d 50 nan 2")
    with pytest.raises(FileRefused) as refused:
        read(text)
    assert sorted(str(refused.value).splitlines()[1:]) == [
        "  line 10: the sample has no name",
        "  line 11, column 3 (LAB_A): is 'nan', which is no number",
        "  line 7, column 2 (LAB_L): is '5o', which is no number",
        "  line 8: there are 3 values for 4 fields",
        "  line 9: L* is 500, outside 0 to 110",
    ]


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("CGATS.17\nBEGIN_DATA\na 1\nEND_DATA\n", "line 2: data begin without BEGIN_DATA_FORMAT"),
        (cgats("LAB_L LAB_A LAB_B", "50 1 2"), "there is no SAMPLE_NAME and no SAMPLE_ID"),
        (cgats("SAMPLE_ID CMYK_C", "a 50"), "there is no reading in it"),
        (cgats("SAMPLE_ID LAB_L LAB_A LAB_B"), "there is no reading in it"),
        (cgats(FIELDS.replace("NM420", "NM425"), row("a", 0.25)), "do not stand at equal steps: … 400, 425, 440 …"),
        (cgats(FIELDS.replace("NM420", "NM440"), row("a", 0.25)), "there are two columns for 440 nm"),
        (cgats(FIELDS, row("a", -0.5)), "a reflectance factor is -0.5, below 0"),
        (cgats("SAMPLE_ID " + " ".join(f"NM{nm}" for nm in range(400, 541, 20)), row("a", 0.5, 8)), "does not span"),
    ],
)
def test_what_cannot_be_taken_is_refused_in_a_sentence(text, sentence):
    with pytest.raises(FileRefused) as refused:
        read(text)
    assert sentence in str(refused.value)


def test_a_value_a_little_below_nothing_is_nothing_and_told():
    contents = read(cgats(FIELDS, row("a", 0.25).replace("0.25", "-0.001", 1)))
    assert contents.measured[0].readings[0].reflectance[:2] == (0.0, 0.25)
    assert "reflectance a little below 0 is taken for 0" in contents.notes


@pytest.mark.parametrize(
    ("rows", "sentence"),
    [
        ([f"a{n} 50 1 2" for n in range(401)], "there are 401 samples, more than 400"),
        ([f"a 50 1 {n}" for n in range(65)], "'a' has 65 readings, more than 64"),
        (["a 50 1 2"] * 25_601, "there are 25601 rows, more than 25600"),
    ],
)
def test_each_limit_is_named(rows, sentence):
    with pytest.raises(FileRefused) as refused:
        read(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", *rows))
    assert sentence in str(refused.value)
