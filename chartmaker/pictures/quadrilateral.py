"""Four corners in a picture, at any slant: put in order, mapped onto the unit square, and read over its inside."""

from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.shade.screen import decoded

Floats = NDArray[np.float64]
Picture = NDArray[np.uint8] | NDArray[np.uint16]

UNIT_SQUARE = np.array([[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0]])
"""Its corners from the upper left on, clockwise as a picture is looked at."""
LEAST_SIDE_PX = 6.0
"""Shorter sides hold too few pixels to read."""
CLIPPED_FROM = 252 / 255
"""Coded values from here on may have been brighter: resizing and JPEG bring clipped white down by a step or three."""
DARK_TO = 6 / 255
"""A pixel with no channel above it lies in shadow, where noise and coding leave little of its colour."""
FLOORED_TO = 1 / 255
"""A channel at or below it may have been darker."""


class Pixels(NamedTuple):
    """What some points of a picture say: coded sRGB (… × points × 3), 0 to 1."""

    values: Floats

    @property
    def light(self) -> Floats:
        """The linear RGB (… × 3) of the median of each channel."""
        return decoded(np.median(self.values, axis=-2))

    @property
    def clipped(self) -> Floats:
        """The share (…) of points with a channel at its top."""
        return np.asarray((self.values >= CLIPPED_FROM).any(axis=-1).mean(axis=-1))

    @property
    def dark(self) -> Floats:
        """The share (…) of points in shadow."""
        return np.asarray((self.values.max(axis=-1) <= DARK_TO).mean(axis=-1))

    @property
    def floored(self) -> Floats:
        """The share (…) of points with a channel at its bottom."""
        return np.asarray((self.values <= FLOORED_TO).any(axis=-1).mean(axis=-1))


def in_order(corners: ArrayLike) -> Floats:
    """Give four corners x, y (4 × 2) clockwise from the one nearest the upper left, however they came.

    Raises ValueError where they do not span a quadrilateral that bulges at every corner.
    """
    points = np.asarray(corners, dtype=float)
    if points.shape != (4, 2) or not np.isfinite(points).all():
        raise ValueError(f"four corners have the shape (4, 2), not {points.shape}")
    out = points - points.mean(axis=0)
    points = points[np.argsort(np.arctan2(out[:, 1], out[:, 0]), kind="stable")]
    points = np.roll(points, -int(np.argmin(points.sum(axis=1))), axis=0)
    sides = np.roll(points, -1, axis=0) - points
    following = np.roll(sides, -1, axis=0)
    turns = sides[:, 0] * following[:, 1] - sides[:, 1] * following[:, 0]
    if np.hypot(*sides.T).min() < LEAST_SIDE_PX or turns.min() <= 0:
        raise ValueError("the four corners do not span a four-sided figure; draw them apart")
    return points


def homography(corners: ArrayLike) -> Floats:
    """Give the matrix (3 × 3) that takes the unit square to four corners (4 × 2), both in the same order.

    The direct linear transform for four points, which fix its eight numbers (Hartley and Zisserman, Multiple View
    Geometry, 4.1; from memory).
    """
    rows, wanted = [], []
    for (u, v), (x, y) in zip(UNIT_SQUARE, np.asarray(corners, dtype=float), strict=True):
        rows += [[u, v, 1, 0, 0, 0, -x * u, -x * v], [0, 0, 0, u, v, 1, -y * u, -y * v]]
        wanted += [x, y]
    numbers = np.linalg.solve(np.array(rows), np.array(wanted))
    return np.append(numbers, 1.0).reshape(3, 3)


def mapped(matrix: Floats, points: ArrayLike) -> Floats:
    """Take points (… × 2) through a homography."""
    points = np.asarray(points, dtype=float)
    homogeneous = points @ matrix[:, :2].T + matrix[:, 2]
    return np.asarray(homogeneous[..., :2] / homogeneous[..., 2:])


def read_at(picture: Picture, points: Floats) -> Pixels:
    """Read the pixels under points x, y (… × points × 2); those outside the picture take its nearest pixel."""
    height, width = picture.shape[:2]
    x = np.clip(points[..., 0].astype(np.intp), 0, width - 1)
    y = np.clip(points[..., 1].astype(np.intp), 0, height - 1)
    return Pixels(picture[y, x, :3] / float(np.iinfo(picture.dtype).max))


def outside_share(picture: Picture, points: Floats) -> float:
    """Give the share of points x, y (… × 2) that lie outside a picture."""
    height, width = picture.shape[:2]
    x, y = points[..., 0], points[..., 1]
    return float(np.mean((x < 0) | (y < 0) | (x > width) | (y > height)))
