"""Colours on the screen, against a second library."""

import numpy as np
import pytest
from skimage.color import lab2rgb

from chartmaker.pictures.shades import SURROUND, decoded, encoded, grey_of_value


@pytest.mark.parametrize("value", [0, 3, 8, 20.5, 50, 77.7, 100])
def test_the_grey_of_a_value_is_that_of_scikit_image(value: float) -> None:
    expected = lab2rgb(np.array([[[value, 0.0, 0.0]]]))[0, 0] * 255
    assert grey_of_value(value) == pytest.approx(expected.mean(), abs=0.6)


def test_the_surround_is_the_grey_of_value_50() -> None:
    assert grey_of_value(50) == SURROUND


def test_every_code_value_comes_back_from_linear_light() -> None:
    codes = np.arange(256, dtype=np.uint8)
    assert np.array_equal(encoded(decoded(codes)), codes)


def test_light_out_of_range_is_clipped() -> None:
    assert encoded(np.array([-1.0, 2.0], dtype=np.float32)).tolist() == [0, 255]
