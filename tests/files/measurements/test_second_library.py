"""Spectra of the 24-patch target, which colour-science carries, written to each grammar and read back.

Ohta's spectra (N. Ohta 1997, "The basis of color reproduction engineering", as colour-science publishes them) go from
380 to 780 nm at 5 nm; every second is kept, which gives bands of 10 nm.
"""

import numpy as np
import pytest

from chartmaker.model.settings import Viewing
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.readings import lab_of_readings
from tests.files.measurements.builders import cgats, cxf, read
from tests.shade.second_library import xyz_by_colour_science

NM = np.arange(380, 731, 10)
D65_10, D50_2 = Viewing(), Viewing(illuminant="D50", observer="2")


@pytest.fixture(scope="module")
def patches():
    """Give the 24 spectra (name to 36 factors)."""
    target = colour.SDS_COLOURCHECKERS["ColorChecker N Ohta"]
    return {name: np.array([sd[nm] for nm in NM]) for name, sd in target.items()}


def as_cgats(patches):
    rows = [f'"{name}" ' + " ".join(f"{100 * value:.6f}" for value in values) for name, values in patches.items()]
    return cgats("SAMPLE_NAME " + " ".join(f"SPECTRAL_NM{nm}" for nm in NM), *rows, head="SPECTRAL_NORM 100")


def as_csv(patches):
    rows = [name + ";" + ";".join(f"{v:.8f}".replace(".", ",") for v in values) for name, values in patches.items()]
    return "\n".join(["name;" + ";".join(f"{nm} nm" for nm in NM), *rows])


def as_csv_side_by_side(patches):
    rows = [",".join([str(nm), *(f"{values[at]:.8f}" for values in patches.values())]) for at, nm in enumerate(NM)]
    return "\n".join(["nm," + ",".join(patches), *rows])


def as_cxf(patches):
    objects = "".join(
        f'<Object Name="{name}" Id="{number}"><ColorValues><ReflectanceSpectrum ColorSpecification="c">'
        + " ".join(f"{value:.8f}" for value in values)
        + "</ReflectanceSpectrum></ColorValues></Object>"
        for number, (name, values) in enumerate(patches.items())
    )
    range_of = '<MeasurementSpec><WavelengthRange StartWL="380" Increment="10"/></MeasurementSpec>'
    return cxf(objects, f'<ColorSpecification Id="c">{range_of}</ColorSpecification>')


@pytest.mark.parametrize("write", [as_cgats, as_csv, as_csv_side_by_side, as_cxf])
@pytest.mark.parametrize("viewing", [D65_10, D50_2], ids=["D65/10", "D50/2"])
def test_the_24_patches_come_back_with_the_lab_that_colour_science_gives(patches, write, viewing):
    contents = read(write(patches))
    assert [each.name for each in contents.measured] == list(patches)
    ours = lab_of_readings([each.readings[0] for each in contents.measured], viewing)
    white = xyz_by_colour_science(np.ones(421), np.arange(360, 781), viewing)
    whitepoint = colour.XYZ_to_xy(white)
    for name, lab in zip(patches, ours, strict=True):
        theirs = colour.XYZ_to_Lab(xyz_by_colour_science(patches[name], NM, viewing) / 100, whitepoint)
        assert lab == pytest.approx(theirs, abs=0.01), name


def test_lab_written_by_colour_science_comes_back_as_it_was(patches):
    labs = {}
    for name, values in patches.items():
        xyz = xyz_by_colour_science(values, NM, D50_2) / 100
        labs[name] = colour.XYZ_to_Lab(xyz, colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D50"])
    rows = [f'"{name}" ' + " ".join(f"{value:.4f}" for value in lab) for name, lab in labs.items()]
    head = 'WEIGHTING_FUNCTION "ILLUMINANT,D50"\nWEIGHTING_FUNCTION "OBSERVER,2 degree"'
    contents = read(cgats("SAMPLE_NAME LAB_L LAB_A LAB_B", *rows, head=head))
    for each in contents.measured:
        assert each.readings[0].lab == pytest.approx(labs[each.name], abs=1e-4)
        assert each.readings[0].viewing == D50_2
