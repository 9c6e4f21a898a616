"""S-CIELAB on cells: against Fourier's way on a finely drawn picture, and what the eye's own law demands."""

import numpy as np
import pytest

from chartmaker.model.settings import Viewing
from chartmaker.shade.distance import (
    KERNELS,
    OPPONENT,
    angle_degrees,
    cell_shares,
    lab_from_afar,
    seen_from_afar,
)
from chartmaker.shade.lab import lab_of_xyz, xyz_of_lab
from chartmaker.shade.weights import white_point

WHITE = white_point(Viewing())
STITCH_CM = (0.36, 0.31)
SPREADS = sorted({spread for gaussians in KERNELS for _, spread in gaussians})


def checks(width: int, height: int, *, high: int = 8, wide: int = 8, light=(85, 0, 12), dark=(30, -5, -25)):
    """Give the XYZ of a field of blocks, light and dark in turn."""
    rows, columns = np.arange(high)[:, np.newaxis] // height, np.arange(wide) // width
    lab = np.where(((rows + columns) % 2 == 0)[..., np.newaxis], light, dark)
    return xyz_of_lab(lab, white=WHITE)


def degrees(distance_cm):
    return tuple(angle_degrees(size, distance_cm=distance_cm) for size in STITCH_CM)


def contrast(xyz, distance_cm):
    """Give |ΔL*| between the first cell and the darkest."""
    value = lab_from_afar(xyz, cell_degrees=degrees(distance_cm), white=WHITE)[..., 0]
    return value.max() - value.min()


@pytest.mark.parametrize("spread", SPREADS)
@pytest.mark.parametrize("size", [0.01, 0.07, 0.5, 3.0])
@pytest.mark.parametrize("number", [1, 2, 7, 40])
def test_the_shares_of_a_row_of_cells_come_to_one_and_are_the_same_on_both_sides(spread, size, number):
    shares = cell_shares(spread, size, number)
    assert shares.sum() == pytest.approx(1, abs=1e-12)
    assert shares.min() > -1e-12
    assert shares[1:] == pytest.approx(shares[1:][::-1], abs=1e-10)


def test_the_weights_of_each_axis_are_brought_to_one():
    plain = xyz_of_lab(np.full((6, 9, 3), (47.0, 30.0, -12.0)), white=WHITE)
    for distance_cm in (10, 50, 300, 3000):
        assert seen_from_afar(plain, cell_degrees=degrees(distance_cm)) == pytest.approx(plain, rel=1e-9)


@pytest.mark.parametrize("distance_cm", [40, 120, 400])
def test_it_is_what_fourier_makes_of_the_picture_drawn_in_points(distance_cm):
    # Each cell is drawn as 128 × 128 points; a Gaussian of spread s multiplies a wave of f to the degree by
    # exp(-(π s f)²); the mean over each cell's points is what the house says without any.
    fine, xyz = 128, checks(2, 3, high=6, wide=4)
    xyz[2, 1] = xyz_of_lab((60, 40, 40), white=WHITE)
    points = (xyz @ OPPONENT.T).repeat(fine, axis=0).repeat(fine, axis=1)
    width, height = degrees(distance_cm)
    squared = np.fft.fftfreq(6 * fine, height / fine)[:, np.newaxis] ** 2 + np.fft.fftfreq(4 * fine, width / fine) ** 2
    seen = np.empty_like(points)
    for axis, gaussians in enumerate(KERNELS):
        total = sum(weight for weight, _ in gaussians)
        passed = sum(weight / total * np.exp(-squared * (np.pi * spread) ** 2) for weight, spread in gaussians)
        seen[..., axis] = np.fft.ifft2(np.fft.fft2(points[..., axis]) * passed).real
    expected = seen.reshape(6, fine, 4, fine, 3).mean(axis=(1, 3)) @ np.linalg.inv(OPPONENT).T
    assert seen_from_afar(xyz, cell_degrees=degrees(distance_cm)) == pytest.approx(expected, abs=0.02)


def test_single_stitches_fade_with_distance_without_a_turn():
    found = [contrast(checks(1, 1), distance_cm) for distance_cm in (50, 100, 200, 300, 500, 800, 1500, 3000)]
    assert found == sorted(found, reverse=True)
    assert found[0] > 40
    assert found[-1] < 0.5


def test_the_wider_the_blocks_the_farther_they_read():
    found = [contrast(checks(size, size, high=24, wide=24), 600) for size in (1, 2, 4, 6)]
    assert found == sorted(found)
    assert found[0] < found[-1] / 2


def test_wide_areas_near_by_keep_their_colour_at_their_middle():
    # The third Gaussian of the first axis takes a share of what lies degrees away: at half a metre 40 stitches are 16.
    xyz = checks(40, 40, high=80, wide=80)
    lab = lab_from_afar(xyz, cell_degrees=degrees(50), white=WHITE)
    assert lab[20, 20] == pytest.approx(lab_of_xyz(xyz[20, 20], white=WHITE), abs=0.6)


def test_hue_fades_before_value():
    values, hues = checks(2, 2, light=(60, 0, 0), dark=(40, 0, 0)), checks(2, 2, light=(50, 20, 0), dark=(50, -20, 0))
    for distance_cm in (200, 400):
        value = contrast(values, distance_cm) / 20
        lab = lab_from_afar(hues, cell_degrees=degrees(distance_cm), white=WHITE)
        hue = np.ptp(lab[..., 1]) / 40
        assert hue < value


def test_where_the_pattern_begins_does_not_matter():
    xyz = checks(1, 2, high=4, wide=6)
    xyz[1, 2] = WHITE / 2
    turned = np.roll(xyz, (1, 2), axis=(0, 1))
    seen = seen_from_afar(xyz, cell_degrees=degrees(150))
    assert seen_from_afar(turned, cell_degrees=degrees(150)) == pytest.approx(np.roll(seen, (1, 2), axis=(0, 1)))


def test_a_repeat_and_two_of_it_look_the_same():
    xyz = checks(1, 1, high=4, wide=4)
    seen = seen_from_afar(xyz, cell_degrees=degrees(250))
    assert seen_from_afar(np.tile(xyz, (2, 3, 1)), cell_degrees=degrees(250))[:4, :4] == pytest.approx(seen, rel=1e-9)
