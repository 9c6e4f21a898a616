"""Pixels to stitches: proportion, place and the mean of light."""

import math

import numpy as np
import pytest
from PIL import Image
from skimage.measure import block_reduce

from chartmaker.pictures.pattern import thresholded, values
from chartmaker.pictures.scaling import STRIP_ROWS, Block, rounds_for, stitch_light, working_copy
from chartmaker.pictures.source import pixels_of
from chartmaker.shade.colorimetry import colour

HEIGHT_PER_WIDTH = 28 / 32
"""Of the usual gauge, 28 stitches and 32 rounds to 10 cm."""
HALF_LIGHT = 116 * 0.5 ** (1 / 3) - 16
"""CIE L* of half of white's light (CIE 15): a stitch that is half covered by black."""


def _disc(side: int, share: float = 0.8) -> np.ndarray:
    y, x = np.mgrid[:side, :side] + 0.5 - side / 2
    return pixels_of(np.where(np.hypot(x, y) <= share * side / 2, 0, 255))


def _block(stitches: int, rounds: int, **fields) -> Block:
    return Block(**{"stitches": stitches, "rounds": rounds, "height_per_width": HEIGHT_PER_WIDTH} | fields)


@pytest.mark.parametrize("height_per_width", [0.7, HEIGHT_PER_WIDTH, 1.0, 1.3])
def test_a_circle_stays_a_circle(height_per_width):
    pixels = _disc(501)
    rounds = rounds_for(pixels, stitches=80, height_per_width=height_per_width)
    light = stitch_light(pixels, _block(80, rounds, height_per_width=height_per_width))
    figure = np.array([list(line.cells) for line in thresholded(light, level=HALF_LIGHT).rounds])
    across, up = figure.any(axis=0).sum(), figure.any(axis=1).sum() * height_per_width
    assert across == pytest.approx(0.8 * 80, abs=1.01)
    assert up == pytest.approx(0.8 * 80, abs=1.01 * height_per_width + 0.5)
    assert figure.sum() * height_per_width == pytest.approx(math.pi * (0.4 * 80) ** 2, rel=0.02)


@pytest.mark.parametrize(("stitches", "rounds"), [(90, 30), (30, 90)])
def test_a_picture_in_a_block_of_another_shape_is_whole_on_white_or_cropped(stitches, rounds):
    pixels = pixels_of(np.zeros((50, 50)))
    whole = stitch_light(pixels, _block(stitches, rounds))[..., 0]
    side = min(stitches, rounds * HEIGHT_PER_WIDTH)
    assert (1 - whole).sum() * HEIGHT_PER_WIDTH == pytest.approx(side**2)
    assert whole.max() == pytest.approx(1)
    assert whole[rounds // 2, stitches // 2] == pytest.approx(0, abs=1e-9)
    assert whole == pytest.approx(whole[::-1, ::-1])
    cropped = stitch_light(pixels, _block(stitches, rounds, crops=True))
    assert cropped == pytest.approx(0, abs=1e-9)


def test_the_lower_right_pixel_is_the_first_stitch_of_the_first_round():
    pixels = np.full((3, 4, 3), 255, dtype=np.uint8)
    pixels[2, 3] = (255, 0, 0)
    pixels[0, 3] = (0, 0, 255)
    light = stitch_light(pixels, _block(4, 3, height_per_width=1.0))
    assert light[0, 0].tolist() == pytest.approx([1, 0, 0])
    assert light[2, 0].tolist() == pytest.approx([0, 0, 1])
    assert light[0, 1:] == pytest.approx(1)


def test_light_is_averaged_and_not_the_numbers_that_code_it():
    """Half black and half white reflect half the light, whose value is 76, not the 54 of the mean code."""
    board = pixels_of(np.indices((40, 40)).sum(axis=0) % 2 * 255)
    light = stitch_light(board, _block(10, 10, height_per_width=1.0))
    assert light == pytest.approx(0.5, abs=1e-6)
    assert values(light) == pytest.approx(HALF_LIGHT, abs=1e-4)


@pytest.mark.parametrize(("factor_x", "factor_y"), [(1, 1), (4, 2), (7, STRIP_ROWS + 9), (16, 3 * STRIP_ROWS)])
def test_whole_factors_average_as_another_library_does(factor_x, factor_y):
    """Pillow's reduce, a box filter on floats, is the second implementation."""
    noise = np.random.default_rng(7).integers(0, 256, (5 * factor_y, 6 * factor_x), dtype=np.uint8)
    coded = noise / 255
    linear = np.where(coded <= 0.04045, coded / 12.92, ((coded + 0.055) / 1.055) ** 2.4).astype(np.float32)
    expected = np.asarray(Image.fromarray(linear).reduce((factor_x, factor_y)))
    light = stitch_light(pixels_of(noise), _block(6, 5, height_per_width=factor_y / factor_x))
    assert light[::-1, ::-1, 1] == pytest.approx(expected, abs=1e-5)


def test_a_picture_smaller_than_the_block_is_drawn_large():
    pixels = pixels_of([[0, 255], [255, 0]])
    light = stitch_light(pixels, _block(8, 8, height_per_width=1.0))[..., 0]
    assert light == pytest.approx(np.kron([[0, 1], [1, 0]], np.ones((4, 4))))


def test_what_shows_through_is_white():
    pixels = np.array([[[0, 0, 0, 0], [0, 0, 0, 255], [0, 0, 0, 51]]], dtype=np.uint8)
    light = stitch_light(pixels, _block(3, 1, height_per_width=1.0))
    assert light[0, ::-1, 0] == pytest.approx([1, 0, 0.8], abs=1e-6)


@pytest.mark.parametrize("height", [83, 84, 85, 86, 87])
def test_a_picture_that_is_not_a_whole_count_of_rounds_high_gets_no_sliver_of_white(height):
    pixels = pixels_of(np.zeros((height, 100)))
    rounds = rounds_for(pixels, stitches=72, height_per_width=HEIGHT_PER_WIDTH)
    assert stitch_light(pixels, _block(72, rounds)) == pytest.approx(0, abs=1e-9)
    assert stitch_light(pixels, _block(72, rounds + 4)).max() == pytest.approx(1)


def test_a_very_long_picture_keeps_within_a_hat():
    assert rounds_for(pixels_of(np.zeros((2000, 1))), stitches=10, height_per_width=1.0) == 600
    assert rounds_for(pixels_of(np.zeros((1, 2000))), stitches=10, height_per_width=1.0) == 1


@pytest.mark.parametrize(
    ("stitches", "rounds", "proportion"), [(0, 5, 1), (601, 5, 1), (5, 0, 1), (5, 601, 1), (5, 5, 0)]
)
def test_a_block_that_no_hat_holds_is_refused(stitches, rounds, proportion):
    with pytest.raises(ValueError, match="outside"):
        _block(stitches, rounds, height_per_width=proportion)


def test_a_working_copy_has_the_mean_light_of_its_squares_whatever_is_left_at_the_edge():
    """Against scikit-image's block means of light that colour-science decodes."""
    pixels = np.random.default_rng(8).integers(0, 256, (17, 24, 3), dtype=np.uint8)
    copy, side = working_copy(pixels, longest=6)
    assert side == 4
    assert copy.shape == (5, 6, 3)
    light = colour.models.eotf_sRGB(pixels / 255)
    means = block_reduce(light[:16], (4, 4, 1), np.mean)
    assert copy[:4] == pytest.approx(np.rint(255 * colour.models.eotf_inverse_sRGB(means)), abs=1)
    assert copy[4] == pytest.approx(
        np.rint(255 * colour.models.eotf_inverse_sRGB(block_reduce(light[16:], (1, 4, 1), np.mean)[0])), abs=1
    )


def test_a_working_copy_of_a_small_picture_is_the_picture_on_white():
    pixels = np.array([[[200, 10, 30, 255], [0, 0, 0, 0]]], dtype=np.uint8)
    copy, side = working_copy(pixels, longest=100)
    assert side == 1
    assert copy.tolist() == [[[200, 10, 30], [255, 255, 255]]]


@pytest.mark.parametrize("shape", [(400, 615), (615, 400), (512, 512)])
def test_stitches_of_a_working_copy_are_those_of_the_picture(shape):
    pixels = pixels_of(np.random.default_rng(2).integers(0, 256, (*shape, 3)))
    copy, side = working_copy(pixels, longest=260)
    assert side > 1
    block = _block(8, 8, crops=True)
    assert values(stitch_light(copy, block)) == pytest.approx(values(stitch_light(pixels, block)), abs=1)
