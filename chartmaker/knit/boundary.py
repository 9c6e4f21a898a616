"""How much edge two letters share: what decides whether the eye has to tell their shades apart."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.layout import STITCHES_EATEN, Fabric, parents
from chartmaker.model.bounds import MOST_LETTERS
from chartmaker.model.gauge import Gauge
from chartmaker.model.stitches import Part


@dataclass(frozen=True, slots=True, eq=False)
class Boundary:
    """Shared edge of every pair of letters in the whole hat; symmetric, shape (26, 26), 0 for A to 25 for Z."""

    all_cm: NDArray[np.float64]
    """All of it; the diagonal is edge within one letter."""
    drawn_cm: NDArray[np.float64]
    """Where the two play different parts, so that the pattern itself is drawn by it."""


def measure_boundary(fabric: Fabric, gauge: Gauge) -> Boundary:
    """Measure the edges (design.md, section 5).

    A sideways neighbour, the one across the round's join included, shares one round height. A stitch shares one stitch
    width with the round below, split evenly among the stitches it eats, and nothing when it eats none.
    """
    # One number a stitch: its part and its letter together, so that one count sorts edges by both.
    kind = fabric.parts.astype(np.intp) * MOST_LETTERS + fabric.letters
    eater, eaten = parents(fabric)
    sideways = _count(kind, _beside(kind, fabric), None)
    upwards = _count(kind[eater], kind[eaten], _shares(fabric, eater))
    edges = gauge.round_height_cm * sideways + gauge.stitch_width_cm * upwards
    total = edges.sum(axis=(0, 2))
    for part in range(len(Part)):
        edges[part, :, part, :] = 0
    return Boundary(_both_ways(total), _both_ways(edges.sum(axis=(0, 2))))


def _count(first: NDArray[np.intp], second: NDArray[np.intp], share: NDArray[np.float64] | None) -> NDArray[np.float64]:
    """Count the edges between the kinds of stitch: shape (parts, 26, parts, 26)."""
    kinds = len(Part) * MOST_LETTERS
    counts = np.bincount(first * kinds + second, weights=share, minlength=kinds * kinds)
    return counts.reshape(len(Part), MOST_LETTERS, len(Part), MOST_LETTERS).astype(np.float64)


def _beside(kind: NDArray[np.intp], fabric: Fabric) -> NDArray[np.intp]:
    """Give the kind of the next stitch of each stitch, the round's last wrapping to its first."""
    following = np.append(kind[1:], 0)
    following[fabric.starts[1:] - 1] = kind[fabric.starts[:-1]]
    return following


def _shares(fabric: Fabric, eater: NDArray[np.intp]) -> NDArray[np.float64] | None:
    """Give the part of a stitch width that each eaten stitch has of its eater; None when all have the whole."""
    if not fabric.shaping.any():
        return None
    return 1 / STITCHES_EATEN[fabric.shaping[eater]]


def _both_ways(flat: NDArray[np.float64]) -> NDArray[np.float64]:
    """Fold edges counted as (first, second) and (second, first) into one symmetric table."""
    one_way = flat.reshape(MOST_LETTERS, MOST_LETTERS)
    table: NDArray[np.float64] = one_way + one_way.T
    table[np.diag_indices(MOST_LETTERS)] /= 2
    table.flags.writeable = False
    return table
