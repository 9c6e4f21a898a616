"""CSV as spreadsheets and instruments write it; RFC 4180 for quotes and line ends."""

import pytest

from chartmaker.files.problems import FileRefused
from chartmaker.model.reading import LabReading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing
from tests.files.measurements.builders import cgats, read, readings, sample

BANDS = range(400, 701, 10)


def test_semicolons_decimal_commas_quotes_a_mark_and_viewing_in_the_headings():
    contents = sample("lab-german.csv")
    assert readings(contents) == {"Krapp, erstes Bad": 2, "Wau": 1}
    assert contents.measured[1].readings == (LabReading(lab=(78.1, -2.4, 61.0)),)
    assert contents.notes == ("names are taken from column 1, 'Bezeichnung'",)


def test_tabs_with_units_in_headings_and_cells():
    contents = sample("spectra-tabs.csv")
    assert readings(contents) == {"madder-1": 1, "weld-1": 1}
    assert contents.measured[0].readings[0].reflectance[-1] == pytest.approx(0.5998, abs=1e-3)


def test_samples_side_by_side_under_a_column_of_wavelengths():
    contents = sample("side-by-side.csv")
    assert readings(contents) == {"madder-1": 1, "weld-1": 1}
    assert contents.measured[0].readings[0].start_nm == 400


def test_lch_with_the_viewing_above_the_headings():
    contents = sample("lch-above.csv")
    assert readings(contents) == {"woad one": 1, "woad two": 1}
    reading = contents.measured[0].readings[0]
    assert reading.viewing == Viewing(illuminant="A", observer="10")
    # CIE 15: a* = C* cos h, b* = C* sin h; cos 252° = -0.309017, sin 252° = -0.951057.
    assert reading.lab == pytest.approx((40.5, -6.48936, -19.97219), abs=1e-4)


@pytest.mark.parametrize(
    "headings",
    [
        "name,L,a,b",
        "Name,L*,a*,b*",
        "SAMPLE_NAME,LAB_L,LAB_A,LAB_B",
        "lot;CIE L*;CIE a*;CIE b*",
        "name\tL* (D65/10°)\ta* (D65/10°)\tb* (D65/10°)",
        "name;L*(10°/D65);a*(10°/D65);b*(10°/D65)",
        "Lot no.;Lightness;a;b",
        "name|l|A|B",
    ],
)
def test_headings_of_lab_in_any_case_and_with_marks(headings):
    separator = next(sign for sign in ";\t|," if sign in headings)
    text = headings + "\n" + separator.join(["weld", "78.1", "-2.4", "61"]) + "\n"
    assert read(text).measured[0].readings == (LabReading(lab=(78.1, -2.4, 61.0)),)


@pytest.mark.parametrize(
    "heading", ["{}", "{} nm", "{}nm", "R{}", "R {}", "R_{}", "nm{}", "{},0", "{} nm (%)", "λ{}", "SCI {}"]
)
def test_headings_of_wavelengths(heading):
    text = ";".join(["name", *(heading.format(nm) for nm in BANDS)]) + "\n" + ";".join(["a", *["25"] * 31])
    assert read(text).measured[0].readings == (Spectrum(start_nm=400, step_nm=10, reflectance=(0.25,) * 31),)


def test_a_percent_sign_in_the_headings_wins_over_the_largest_value():
    text = ";".join(["name", *(f"{nm} nm (%)" for nm in BANDS)]) + "\n" + ";".join(["a", *["0,9"] * 31])
    assert read(text).measured[0].readings[0].reflectance[0] == pytest.approx(0.009)


def test_of_several_viewing_conditions_the_usual_one_is_taken():
    heads = [f"{name}*({viewing})" for viewing in ("C/2", "A/10", "D65/10") for name in "Lab"]
    text = ",".join(["name", *heads]) + "\na,1,2,3,4,5,6,7,8,9\n"
    assert read(text).measured[0].readings == (LabReading(lab=(7, 8, 9)),)


def test_without_a_heading_of_names_the_first_texts_serve_and_else_the_first_numbers():
    assert readings(read("L;a;b;dyed;seen\n50;1;2;7;woad\n")) == {"woad": 1}
    numbered = read("No;L;a;b\n7;50;1;2\n")
    assert readings(numbered) == {"7": 1}
    assert "names are taken from column 1, 'No'" in numbered.notes


def test_lightness_chroma_and_hue_in_words():
    assert read("lot,Lightness,Chroma,Hue angle\na,50,30,270\n").measured[0].readings == (LabReading(lab=(50, 0, -30)),)


def test_each_row_may_tell_its_own_viewing():
    own = read("name,L,a,b,illuminant,observer\nx,50,1,2,A,2\ny,50,1,2,D65,10\n")
    assert [each.readings[0].viewing for each in own.measured] == [Viewing(illuminant="A", observer="2"), Viewing()]
    assert own.notes == ()
    assert read("name,L,a,b,viewing\nx,50,1,2,D50/2°\n").measured[0].readings[0].viewing.illuminant == "D50"


@pytest.mark.parametrize(
    "text",
    [
        "name,L,a,b,illuminant,observer\nx,50,1,2,lamp 7,2\n",
        "Illuminant;lamp 7\nname;L;a;b\nx;50;1;2\n",
        cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "x 50 1 2", head='ILLUMINANT "lamp 7"'),
    ],
)
def test_a_lamp_that_is_not_known_is_refused_rather_than_passed_over(text):
    with pytest.raises(FileRefused, match="the illuminant is 'lamp 7'; a reading can be kept for D65, D50"):
        read(text)


def test_xyz_and_assumed_viewing_is_told():
    contents = read("name,X,Y,Z\na,8,9,20\n")
    assert contents.measured[0].readings == (XyzReading(xyz=(8, 9, 20)),)
    assert contents.notes == ("no illuminant and observer are told; CIE D65 and 10° are assumed",)


def test_a_name_that_is_empty_gives_way_to_the_id_beside_it():
    assert readings(read("id,name,L,a,b\n1,,50,1,2\n2,weld,50,1,2\n")) == {"1": 1, "weld": 1}


def test_bands_beyond_what_a_reading_may_span_are_left_aside():
    headings = ";".join(["name", *(str(nm) for nm in range(250, 1001, 10))])
    spectrum = read(headings + "\n" + ";".join(["a", *["0,5"] * 76])).measured[0].readings[0]
    assert (spectrum.start_nm, spectrum.end_nm) == (300, 900)


def test_every_problem_is_told_with_line_and_column():
    text = 'name,L,a,b\n"two\nlines",50,1\na,5o,1,2\nb,50,1,\nc,500,1,2\n,50,1,2\n'
    with pytest.raises(FileRefused) as refused:
        read(text)
    assert str(refused.value).splitlines()[1:] == [
        "  line 3, column 4 (b): is empty where a number is needed",
        "  line 4, column 2 (L): is '5o', which is no number",
        "  line 5, column 4 (b): is empty where a number is needed",
        "  line 6: L* is 500, outside 0 to 110",
        "  line 7: the sample has no name",
    ]


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("name,red,green\na,1,2\n", "no row has headings of a colour"),
        ("L,a,b\n50,1,2\n", "no column holds names; call one 'name'"),
        ("just words", "no row has headings of a colour"),
        ("name,L,a,b\n", "there is no reading in it"),
        ("", "the file is empty"),
        ("name,L,a,b\na,50,1,2\n\0", "it holds a zero byte"),
        (",".join(["name", *map(str, BANDS), "400"]) + "\na" + ",1" * 32, "two columns for 400 nm, 2 and 33"),
    ],
)
def test_what_cannot_be_taken_is_refused_in_a_sentence(text, sentence):
    with pytest.raises(FileRefused) as refused:
        read(text)
    assert sentence in str(refused.value)
