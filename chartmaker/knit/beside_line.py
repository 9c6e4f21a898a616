"""A line that keeps a distance beside another, as a dimension line follows an outline round its corners."""

import math
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

KEPT_SHARE = 0.75
"""Points nearer to the line than this share of the distance are left out: they would make loops in its hollows."""

Point = tuple[float, float]
Points = NDArray[np.float64]


def beside(line: Sequence[Point], distance: float) -> tuple[tuple[Point, ...], tuple[int, ...]]:
    """Give the line at the left of the way along `line`, and for each point of that which of the new stands for it.

    y counts downwards. The line is smoothed over the distance to each side, so that small steps in it do not show.
    """
    points = np.array(line, dtype=np.float64)
    smooth = _smoothed(points, distance)
    moved = smooth + distance * _leftwards(smooth)
    kept = np.flatnonzero(_distances(moved, points) >= KEPT_SHARE * distance)
    if not len(kept):
        kept = np.arange(len(points))
    nearest = np.abs(kept[None, :] - np.arange(len(points))[:, None]).argmin(axis=1)
    return tuple((float(x), float(y)) for x, y in moved[kept]), tuple(nearest.tolist())


def _smoothed(points: Points, length: float) -> Points:
    """Take the running mean over about a length to each side; both ends stay."""
    steps = np.hypot(*np.diff(points, axis=0).T)
    side = min(len(points) - 1, math.ceil(length / max(float(steps.mean()), 1e-9)))
    padded = np.pad(points, ((side, side), (0, 0)), mode="reflect", reflect_type="odd")
    sums = np.cumsum(np.vstack([np.zeros((1, 2)), padded]), axis=0)
    return np.asarray((sums[2 * side + 1 :] - sums[: -2 * side - 1]) / (2 * side + 1))


def _leftwards(points: Points) -> Points:
    along = np.gradient(points, axis=0)
    along /= np.maximum(np.hypot(along[:, 0], along[:, 1]), 1e-9)[:, None]
    return np.column_stack([along[:, 1], -along[:, 0]])


def _distances(points: Points, line: Points) -> NDArray[np.float64]:
    """Give how far each point is from the nearest place of a line."""
    start, way = line[:-1], np.diff(line, axis=0)
    square = np.maximum((way**2).sum(axis=1), 1e-12)
    part = np.clip(((points[:, None] - start[None]) * way).sum(axis=2) / square, 0, 1)
    gap = points[:, None] - (start[None] + part[..., None] * way)
    return np.asarray(np.hypot(gap[..., 0], gap[..., 1]).min(axis=1))
