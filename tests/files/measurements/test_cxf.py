"""CxF3 as the standard has it and as programs write it.

Grammar: ISO 17972-1 and its schema `CxF3-core`, of which the library colour-cxf has classes for every element; files
that it writes are read here too.
"""

import pytest

from chartmaker.files.problems import FileRefused
from chartmaker.model.reading import LabReading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing
from tests.files.measurements.builders import cxf, read, readings, sample

DAY = (
    '<ColorSpecification Id="day"><TristimulusSpec><Illuminant>D65</Illuminant><Observer>10_Degree</Observer>'
    "</TristimulusSpec></ColorSpecification>"
)
LAB = '<ColorCIELab ColorSpecification="{0}"><L>{1}</L><A>10</A><B>-20</B></ColorCIELab>'
BANDS = " ".join(["0.25"] * 31)


def an_object(name, values):
    return f'<Object Name="{name}" Id="1" ObjectType="Standard"><ColorValues>{values}</ColorValues></Object>'


def test_the_kept_sample_gives_spectra_lab_and_lch_by_name():
    contents = sample("objects.cxf")
    assert readings(contents) == {"Madder & chalk": 2, "Weld": 2}
    spectrum = contents.measured[0].readings[0]
    assert isinstance(spectrum, Spectrum)
    assert (spectrum.start_nm, spectrum.step_nm, spectrum.end_nm) == (400, 10, 700)
    assert contents.measured[1].readings == (LabReading(lab=(79.1, -1.4, 62)), LabReading(lab=(79, 0, 60)))


def test_of_several_specifications_one_is_taken_and_told():
    notes = sample("objects.cxf").notes
    assert any("those under 'M0' are taken" in note for note in notes)
    assert any("those under 'Day' are taken" in note for note in notes)


def test_start_and_step_come_from_the_specification_where_the_spectrum_is_silent():
    range_of = '<MeasurementSpec><WavelengthRange StartWL="380" Increment="20"/></MeasurementSpec>'
    specification = f'<ColorSpecification Id="s">{range_of}</ColorSpecification>'
    value = f'<ReflectanceSpectrum ColorSpecification="s">{" ".join(["0.5"] * 18)}</ReflectanceSpectrum>'
    spectrum = read(cxf(an_object("a", value), specification)).measured[0].readings[0]
    assert spectrum == Spectrum(start_nm=380, step_nm=20, reflectance=(0.5,) * 18)


def test_a_missing_increment_is_taken_for_10_nm_and_told():
    contents = read(cxf(an_object("a", f'<ReflectanceSpectrum StartWL="400">{BANDS}</ReflectanceSpectrum>')))
    assert contents.measured[0].readings[0].step_nm == 10
    assert "no Increment is told; spectra are taken for steps of 10 nm" in contents.notes


def test_percent_is_known_by_values_that_the_schema_forbids():
    value = f'<ReflectanceSpectrum StartWL="400">{BANDS.replace("0.25", "25")}</ReflectanceSpectrum>'
    assert read(cxf(an_object("a", value))).measured[0].readings[0].reflectance == (0.25,) * 31


def test_xyz_and_an_object_without_a_name_goes_by_its_id():
    value = '<ColorCIEXYZ ColorSpecification="day"><X>8</X><Y>9</Y><Z>20</Z></ColorCIEXYZ>'
    contents = read(cxf(an_object("", value), DAY))
    assert contents.measured[0].name == "1"
    assert contents.measured[0].readings == (XyzReading(xyz=(8, 9, 20)),)


def test_viewing_that_no_specification_tells_is_assumed_and_told():
    contents = read(cxf(an_object("a", LAB.format("gone", 50))))
    assert contents.measured[0].readings[0].viewing == Viewing(illuminant="D50", observer="2")
    assert contents.notes == ("no illuminant and observer are told; CIE D50 and 2° are assumed",)


def test_every_problem_is_told_with_its_line():
    objects = "\n".join(
        [
            "",
            an_object("a", LAB.format("day", "fifty")),
            an_object("b", '<ReflectanceSpectrum StartWL="400">0.1 0.2 x</ReflectanceSpectrum>'),
            an_object("c", '<ReflectanceSpectrum StartWL="400">0.1 0.2 0.3</ReflectanceSpectrum>'),
            an_object("d", f"<ReflectanceSpectrum>{BANDS}</ReflectanceSpectrum>"),
            an_object("e", '<ColorCIELab ColorSpecification="day"><L>50</L><A>1</A></ColorCIELab>'),
        ]
    )
    with pytest.raises(FileRefused) as refused:
        read(cxf(objects, DAY))
    assert sorted(str(refused.value).splitlines()[1:]) == [
        "  line 2: ColorCIELab of 'a': L is 'fifty', which is no number",
        "  line 3: a value of ReflectanceSpectrum is 'x', which is no number",
        "  line 4: ReflectanceSpectrum of 'c': a spectrum of 3 values is outside 8 to 600",
        "  line 5: ReflectanceSpectrum of 'd': neither it nor its ColorSpecification says where it starts",
        "  line 6: ColorCIELab of 'e': B is empty where a number is needed",
    ]


@pytest.mark.parametrize("encoding", ["utf-8-sig", "utf-16", "latin-1"])
def test_the_usual_encodings_of_xml_are_read(encoding):
    head = f'<?xml version="1.0" encoding="{encoding.removesuffix("-sig")}"?>'
    text = cxf(an_object("Käs", LAB.format("day", 50)), DAY).replace('<?xml version="1.0"?>', head)
    assert readings(read(text.encode(encoding))) == {"Käs": 1}


def test_a_file_that_colour_cxf_writes_is_read_with_the_same_values():
    """colour-cxf's classes are generated from the standard's schema: a second pair of hands for the grammar."""
    library = pytest.importorskip("colour_cxf")
    core = library.cxf3
    values = [round(0.03 + 0.6 * index / 35, 4) for index in range(36)]
    spectrum = core.ReflectanceSpectrum(value=values, start_wl=380, color_specification="c")
    lab = core.ColorCielab(l=38.2, a=41.0, b=27.5, color_specification="c")
    spec = core.ColorSpecification(
        id="c",
        tristimulus_spec=core.TristimulusSpec(
            illuminant_or_custom_illuminant=core.Illuminant(value=core.EilluminantType.D65),
            observer=core.Observer(value=core.EobserverType("10_Degree")),
        ),
        measurement_spec=core.MeasurementSpec(wavelength_range=core.WavelengthRange(start_wl=380, increment=10)),
    )
    document = core.CxF(
        resources=core.Resources(
            object_collection=core.ObjectCollection(
                object_value=[
                    core.Object(object_type="Standard", name="one", id="1", color_values=core.ColorValues([spectrum])),
                    core.Object(object_type="Standard", name="two", id="2", color_values=core.ColorValues([lab])),
                ]
            ),
            color_specification_collection=core.ColorSpecificationCollection([spec]),
        )
    )
    written = library.write_cxf(document)
    contents = read(written)
    assert [each.readings for each in contents.measured] == [
        (Spectrum(start_nm=380, step_nm=10, reflectance=tuple(values)),),
        (LabReading(lab=(38.2, 41.0, 27.5)),),
    ]
