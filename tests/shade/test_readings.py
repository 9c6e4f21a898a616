import numpy as np
import pytest
from hypothesis import given

from chartmaker.model.reading import LabReading, ScreenReading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.readings import is_adapted, lab_of_readings
from chartmaker.shade.weights import VIEWINGS, white_point
from tests import strategies
from tests.builders import flat_spectrum
from tests.shade.second_library import xyz_by_colour_science

LAMP = Viewing(illuminant="A", observer="10")
SCREEN = Viewing(illuminant="D65", observer="2")


def lab_by_colour_science(xyz, viewing):
    return colour.XYZ_to_Lab(np.asarray(xyz) / 100, colour.XYZ_to_xy(white_point(viewing)))


def one(reading, viewing):
    return lab_of_readings([reading], viewing)[0]


@pytest.mark.parametrize("viewing", VIEWINGS)
def test_a_spectrum_gives_the_lab_that_colour_science_gives(viewing):
    reflectance = np.linspace(0.05, 0.7, 31) ** 2
    reading = Spectrum(start_nm=400, step_nm=10, reflectance=tuple(reflectance.tolist()))
    xyz = xyz_by_colour_science(reflectance, np.arange(400, 701, 10), viewing)
    assert one(reading, viewing) == pytest.approx(lab_by_colour_science(xyz, viewing), abs=1e-9)


@pytest.mark.parametrize("viewing", VIEWINGS)
def test_a_spectrum_without_colour_is_grey_in_any_light(viewing):
    # L* of Y = 50 is 76.07 (CIE 15:2018).
    assert one(flat_spectrum(0.5), viewing) == pytest.approx([76.0693, 0, 0], abs=0.0001)


def test_lab_under_the_viewing_itself_stays_to_the_last_digit():
    reading = LabReading(lab=(38.2, 41.0, 27.5), viewing=LAMP)
    assert one(reading, LAMP).tolist() == [38.2, 41.0, 27.5]


def test_lab_under_another_light_is_adapted_by_cat16():
    reading = LabReading(lab=(38.2, 41.0, 27.5), viewing=LAMP)
    xyz = colour.Lab_to_XYZ(reading.lab, colour.XYZ_to_xy(white_point(LAMP)))
    adapted = colour.adaptation.chromatic_adaptation_VonKries(
        100 * xyz, white_point(LAMP), white_point(Viewing()), transform="CAT16"
    )
    assert one(reading, Viewing()) == pytest.approx(lab_by_colour_science(adapted, Viewing()), abs=1e-6)


def test_xyz_gives_the_lab_that_colour_science_gives():
    reading = XyzReading(xyz=(20.0, 15.0, 6.0))
    assert one(reading, Viewing()) == pytest.approx(lab_by_colour_science(reading.xyz, Viewing()), abs=1e-9)


def test_xyz_and_lab_of_one_colour_adapt_alike():
    xyz = XyzReading(xyz=(20.0, 15.0, 6.0), viewing=LAMP)
    lab = LabReading(lab=tuple(one(xyz, LAMP).tolist()), viewing=LAMP)
    assert one(xyz, Viewing()) == pytest.approx(one(lab, Viewing()), abs=1e-9)


def test_a_screen_s_white_and_grey_have_no_hue_in_any_light():
    for viewing in VIEWINGS:
        assert one(ScreenReading(hex="#ffffff"), viewing) == pytest.approx([100, 0, 0], abs=1e-6)
        assert one(ScreenReading(hex="#777777"), viewing)[1:] == pytest.approx([0, 0], abs=1e-6)


def test_a_screen_colour_gives_the_lab_that_colour_science_gives():
    xyz = colour.sRGB_to_XYZ(np.array([0x8A, 0x3B, 0x2F]) / 255)
    expected = colour.XYZ_to_Lab(xyz, colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D65"])
    # colour-science multiplies with the standard's matrix of four decimals.
    assert one(ScreenReading(hex="#8a3b2f"), SCREEN) == pytest.approx(expected, abs=0.02)


def test_only_what_was_taken_under_other_conditions_is_adapted():
    assert not is_adapted(flat_spectrum(), LAMP)
    assert not is_adapted(LabReading(lab=(50, 0, 0), viewing=LAMP), LAMP)
    assert is_adapted(LabReading(lab=(50, 0, 0), viewing=LAMP), Viewing(illuminant="A", observer="2"))
    assert is_adapted(XyzReading(xyz=(20, 20, 20)), LAMP)
    assert is_adapted(ScreenReading(hex="#808080"), Viewing())
    assert not is_adapted(ScreenReading(hex="#808080"), SCREEN)


def test_readings_of_many_forms_come_back_in_their_order():
    readings = [
        LabReading(lab=(30, 1, 2)),
        flat_spectrum(0.2),
        ScreenReading(hex="#8a3b2f"),
        Spectrum(start_nm=400, step_nm=20, reflectance=(0.4,) * 16),
        LabReading(lab=(60, 3, 4), viewing=LAMP),
        flat_spectrum(0.7),
        XyzReading(xyz=(20.0, 15.0, 6.0)),
        LabReading(lab=(31, 1, 2)),
    ]
    together = lab_of_readings(readings, Viewing())
    assert together == pytest.approx(np.array([one(reading, Viewing()) for reading in readings]), abs=1e-9)


@given(strategies.readings(), strategies.viewings())
def test_any_reading_has_a_finite_lab(reading, viewing):
    assert np.isfinite(one(reading, viewing)).all()
