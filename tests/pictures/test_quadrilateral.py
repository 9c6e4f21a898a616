"""Corners in a picture: put in order, mapped, and read over their inside."""

from itertools import permutations

import numpy as np
import pytest
from skimage.transform import ProjectiveTransform

from chartmaker.pictures.quadrilateral import UNIT_SQUARE, homography, in_order, mapped, outside_share, read_at

CORNERS = np.array([[12.0, 20.0], [140.0, 8.0], [150.0, 90.0], [4.0, 99.0]])


def test_the_homography_is_that_of_the_second_library():
    theirs = ProjectiveTransform.from_estimate(UNIT_SQUARE, CORNERS)
    points = np.random.default_rng(1).random((30, 2))
    assert mapped(homography(CORNERS), points) == pytest.approx(theirs(points), abs=1e-6)
    assert mapped(homography(CORNERS), UNIT_SQUARE) == pytest.approx(CORNERS)


def test_corners_in_any_order_come_clockwise_from_the_upper_left():
    for order in permutations(range(4)):
        assert in_order(CORNERS[list(order)]).tolist() == CORNERS.tolist()


@pytest.mark.parametrize("corners", [[(0, 0)] * 4, [(0, 0), (50, 0), (100, 0), (50, 60)], [(0, np.nan)] * 4])
def test_corners_that_span_nothing_are_refused(corners):
    with pytest.raises(ValueError, match="corners"):
        in_order(corners)


def test_pixels_tell_their_median_light_and_what_is_lost():
    picture = np.full((10, 10, 3), 128, dtype=np.uint8)
    picture[0, :4] = 255
    picture[1, :3] = 2
    picture[2, :2] = (0, 90, 90)
    x, y = np.meshgrid(np.arange(10) + 0.5, np.arange(10) + 0.5)
    found = read_at(picture, np.stack((x, y), axis=-1).reshape(-1, 2))
    assert (found.clipped, found.dark, found.floored) == pytest.approx((0.04, 0.03, 0.02))
    assert found.light == pytest.approx(np.full(3, 0.21586), abs=1e-4)  # 128 of 255 by IEC 61966-2-1


def test_points_outside_are_counted_and_take_the_nearest_pixel():
    picture = np.arange(12, dtype=np.uint8).reshape(2, 2, 3)
    points = np.array([[-3.0, 0.5], [0.5, 0.5], [9.0, 9.0], [1.5, 1.5]])
    assert outside_share(picture, points) == 0.5
    assert np.rint(255 * read_at(picture, points).values[:, 0]).tolist() == [0, 0, 9, 9]
