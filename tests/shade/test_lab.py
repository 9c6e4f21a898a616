import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from skimage.color import lab2xyz, xyz2lab

from chartmaker.shade.colorimetry import colour
from chartmaker.shade.lab import lab_of_lch, lab_of_xyz, lch_of_lab, xyz_of_lab
from chartmaker.shade.weights import VIEWINGS, white_point

D65_10 = np.array([94.81, 100.0, 107.32])
"""CIE 15, D65 for the 10° observer."""
ROUND_TRIP = 1e-9
"""How far there and back may end from where it began."""
ROUNDED_CONSTANTS = 0.002
"""scikit-image keeps 7.787 and 0.008856 for the exact 841/108 and 216/24389."""

labs = st.tuples(st.floats(0, 110), st.floats(-200, 200), st.floats(-200, 200))


def random_xyz(count: int, *, seed: int) -> np.ndarray:
    return np.random.default_rng(seed).uniform(0, 1, (count, 3)) * D65_10


@pytest.mark.parametrize("viewing", VIEWINGS)
def test_the_white_is_a_hundred_and_without_hue(viewing):
    white = white_point(viewing)
    assert lab_of_xyz(white, white=white).tolist() == [100, 0, 0]


def test_black_is_nought():
    assert lab_of_xyz((0, 0, 0), white=D65_10) == pytest.approx([0, 0, 0], abs=1e-12)


def test_the_line_near_black_has_the_slope_that_the_standard_gives():
    # ISO/CIE 11664-4:2019: L* = 903.3 Y/Yn, which is (29/3)³, up to Y/Yn = (6/29)³, where L* is 8.
    assert lab_of_xyz(0.001 * D65_10, white=D65_10)[0] == pytest.approx((29 / 3) ** 3 * 0.001, rel=1e-12)
    assert lab_of_xyz((6 / 29) ** 3 * D65_10, white=D65_10)[0] == pytest.approx(8, rel=1e-12)


def test_lab_agrees_with_colour_science():
    xyz = random_xyz(1000, seed=4)
    xyz[:50] *= 0.01
    white_xy = colour.XYZ_to_xy(D65_10)
    white = 100 * colour.xy_to_XYZ(white_xy)
    assert lab_of_xyz(xyz, white=white) == pytest.approx(colour.XYZ_to_Lab(xyz / 100, white_xy), abs=1e-9)


@pytest.mark.parametrize("observer", ["2", "10"])
def test_lab_agrees_with_scikit_image(observer):
    white = {"2": np.array([95.047, 100, 108.883]), "10": np.array([94.809668, 100, 107.305136])}[observer]
    xyz = random_xyz(1000, seed=5)
    lab = lab_of_xyz(xyz, white=white)
    assert lab == pytest.approx(xyz2lab(xyz / 100, observer=observer), abs=ROUNDED_CONSTANTS)
    assert xyz_of_lab(lab, white=white) == pytest.approx(100 * lab2xyz(lab, observer=observer), abs=ROUNDED_CONSTANTS)


@given(labs)
def test_lab_to_xyz_and_back_is_the_same_colour(lab):
    assert lab_of_xyz(xyz_of_lab(lab, white=D65_10), white=D65_10) == pytest.approx(lab, abs=ROUND_TRIP)


@given(labs)
def test_lab_to_lch_and_back_is_the_same_colour(lab):
    lch = lch_of_lab(lab)
    assert 0 <= lch[2] < 360
    assert lch[1] >= 0
    assert lab_of_lch(lch) == pytest.approx(lab, abs=ROUND_TRIP)


def test_hues_run_from_red_through_yellow_green_and_blue():
    lab = [(50, 10, 0), (50, 0, 10), (50, -10, 0), (50, 0, -10), (50, 0, 0)]
    assert lch_of_lab(lab)[:, 2] == pytest.approx([0, 90, 180, 270, 0])
    assert lch_of_lab(lab)[:, 1] == pytest.approx([10, 10, 10, 10, 0])


def test_a_hue_a_hair_below_nought_stays_below_360():
    assert lch_of_lab((50, 10, -1e-20))[2] == 0


def test_a_stack_gives_what_each_colour_gives_alone():
    stack = random_xyz(12, seed=6).reshape(3, 4, 3)
    assert lab_of_xyz(stack, white=D65_10)[2, 1].tolist() == lab_of_xyz(stack[2, 1], white=D65_10).tolist()
    lab = lab_of_xyz(stack, white=D65_10)
    assert xyz_of_lab(lab, white=D65_10)[2, 1].tolist() == xyz_of_lab(lab[2, 1], white=D65_10).tolist()
    assert lch_of_lab(lab)[2, 1].tolist() == lch_of_lab(lab[2, 1]).tolist()


def test_a_munsell_value_is_a_tenth_of_the_lightness():
    # ASTM D1535: luminance factor of a Munsell value V; L* is 10 V within about 1.05.
    v = np.linspace(0, 10, 1001)
    y = 1.1914 * v - 0.22533 * v**2 + 0.23352 * v**3 - 0.020484 * v**4 + 0.00081939 * v**5
    xyz = y[:, np.newaxis] * D65_10 / 100
    apart = np.abs(lab_of_xyz(xyz, white=D65_10)[:, 0] - 10 * v)
    assert apart.max() == pytest.approx(1.05, abs=0.01)
    assert y == pytest.approx(colour.colorimetry.luminance_ASTMD1535(v), abs=1e-9)
