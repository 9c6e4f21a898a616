import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from skimage.color import xyz2rgb

from chartmaker.model.settings import Viewing
from chartmaker.shade.lab import lab_of_xyz
from chartmaker.shade.screen import (
    RGB_OF_XYZ,
    SRGB_WHITE,
    XYZ_OF_RGB,
    decoded,
    encoded,
    grey_of,
    screen_of_lab,
    xyz_of_hex,
)
from chartmaker.shade.weights import VIEWINGS, white_point

LIBRARY_STEP = 1
"""Steps of 255: scikit-image's matrix is rounded, so a value on the edge may fall to the other side."""
levels = st.integers(0, 255)


def test_the_matrix_is_the_standard_s_to_its_four_decimals():
    # IEC 61966-2-1:1999, equations for XYZ from linear RGB and back; the way back is printed from rounded values.
    there = [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]]
    back = [[3.2406, -1.5372, -0.4986], [-0.9689, 1.8758, 0.0415], [0.0557, -0.2040, 1.0570]]
    assert pytest.approx(np.array(there), abs=0.00005) == XYZ_OF_RGB / 100
    assert pytest.approx(np.array(back), abs=0.0005) == RGB_OF_XYZ * 100


def test_the_encoding_is_the_standard_s():
    # IEC 61966-2-1:1999: 12.92 times below 0.0031308, 1.055 times the 2.4th root less 0.055 above.
    assert encoded([0, 0.001, 0.5, 1]) == pytest.approx([0, 0.01292, 1.055 * 0.5 ** (1 / 2.4) - 0.055, 1])
    assert encoded(0.0031308) == pytest.approx(0.04045, abs=0.000001)


@given(st.floats(-0.5, 1.5))
def test_decoding_undoes_encoding(linear):
    assert decoded(encoded(linear)) == pytest.approx(linear, abs=1e-7)  # the standard's two thresholds meet to 1e-8


@given(levels, levels, levels)
def test_a_screen_colour_comes_back_the_same(red, green, blue):
    lab = lab_of_xyz(xyz_of_hex(f"#{red:02x}{green:02x}{blue:02X}"), white=SRGB_WHITE)
    rgb, is_out = screen_of_lab(lab, white=SRGB_WHITE)
    assert rgb.tolist() == [red, green, blue]
    assert not is_out


def test_screen_colours_agree_with_scikit_image():
    xyz = np.random.default_rng(9).uniform(0, 1, (2000, 3)) @ (XYZ_OF_RGB.T)
    rgb, is_out = screen_of_lab(lab_of_xyz(xyz, white=SRGB_WHITE), white=SRGB_WHITE)
    assert not is_out.any()
    assert rgb == pytest.approx(255 * xyz2rgb(xyz / 100), abs=0.5 + LIBRARY_STEP)
    assert np.mean(np.abs(rgb - 255 * xyz2rgb(xyz / 100))) < 0.3  # rounding alone makes 0.25


@pytest.mark.parametrize("viewing", VIEWINGS)
def test_the_white_of_any_viewing_is_the_screen_s_white(viewing):
    rgb, is_out = screen_of_lab((100, 0, 0), white=white_point(viewing))
    assert rgb.tolist() == [255, 255, 255]
    assert not is_out


@pytest.mark.parametrize("viewing", VIEWINGS)
def test_a_grey_of_any_viewing_is_grey_on_the_screen(viewing):
    rgb, is_out = screen_of_lab((50, 0, 0), white=white_point(viewing))
    assert rgb.tolist() == [119, 119, 119] == [grey_of(50)] * 3
    assert not is_out


def test_what_a_screen_cannot_show_is_clipped_and_marked():
    white = white_point(Viewing())
    rgb, is_out = screen_of_lab([(60, -120, 0), (60, 5, 5), (110, 0, 0), (50, 0, -120)], white=white)
    assert is_out.tolist() == [True, False, True, True]
    assert rgb[0, 0] == 0
    assert rgb[2].tolist() == [255, 255, 255]


def test_what_rounding_hides_is_not_out_of_gamut():
    just_over = lab_of_xyz(SRGB_WHITE * 1.001, white=SRGB_WHITE)
    well_over = lab_of_xyz(SRGB_WHITE * 1.01, white=SRGB_WHITE)
    _, is_out = screen_of_lab([just_over, well_over], white=SRGB_WHITE)
    assert is_out.tolist() == [False, True]


def test_hex_colours_are_the_standard_s():
    assert xyz_of_hex("#ffffff") == pytest.approx(SRGB_WHITE, abs=1e-9)
    assert xyz_of_hex("#000000") == pytest.approx([0, 0, 0])
    assert xyz_of_hex("#FF0000") == pytest.approx([41.24, 21.26, 1.93], abs=0.005)  # IEC 61966-2-1:1999, red's column


def test_a_hex_colour_with_other_signs_is_refused():
    with pytest.raises(ValueError, match="non-hexadecimal"):
        xyz_of_hex("#00gg00")


def test_greys_run_from_black_to_white_and_stay_there():
    greys = grey_of([-5, 0, 25, 50, 75, 100, 110])
    assert greys.tolist() == [0, 0, 59, 119, 185, 255, 255]
    assert grey_of([[10, 20], [30, 40]]).shape == (2, 2)


@given(st.floats(0, 100), st.floats(0, 100))
def test_the_lighter_value_never_gets_the_darker_grey(first, second):
    light, dark = max(first, second), min(first, second)
    assert grey_of(light) >= grey_of(dark)
