"""Which of some shades would be far enough in value from given neighbours, with the least change of hue."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.spread import Spread, differences_and_bounds, spread_of

NEUTRAL_CHROMA = 5.0
"""Below this C*ab a shade passes for grey and its hue angle means little: common practice, no source."""


@dataclass(frozen=True, slots=True)
class Neighbour:
    """A shade to stay away from, and how far: what the lower 95 % bound of |ΔL*| must reach."""

    shade: LotShade
    needed: float


@dataclass(frozen=True, slots=True)
class Change:
    """The candidate found, by index, and the change of hue that it costs."""

    index: int
    hue_change: float


def least_change(current: LotShade, candidates: Sequence[LotShade], neighbours: Sequence[Neighbour]) -> Change | None:
    """Give the candidate that differs enough from every neighbour and least in hue from `current`; None if none does.

    Where the change of hue is equal, CIEDE2000 decides.
    """
    if not candidates:
        return None
    rows = Spread(*(column[:, np.newaxis] for column in spread_of(candidates)))
    _, low = differences_and_bounds(rows, spread_of([neighbour.shade for neighbour in neighbours]))
    fit = np.flatnonzero((low >= [neighbour.needed for neighbour in neighbours]).all(axis=1))
    if not len(fit):
        return None
    lab = np.array([candidates[index].lab for index in fit.tolist()])
    hue_change = _hue_change(np.asarray(current.lab), lab)
    nearest = np.flatnonzero(hue_change == hue_change.min())
    best = nearest[ciede2000(current.lab, lab[nearest]).argmin()] if len(nearest) > 1 else nearest[0]
    return Change(int(fit[best]), float(hue_change[best]))


def _hue_change(current: NDArray[np.float64], lab: NDArray[np.float64]) -> NDArray[np.float64]:
    """Give how far the hue turns from one shade (3,) to others (n, 3), in units of CIELAB.

    The chord 2·C·sin(Δh/2) at the larger chroma of the two: |ΔH*ab|, whose chroma is the mean of both, would have a
    red turn to a dull yellow more cheaply than to a full orange. To or from a grey it is the chroma gained or lost.
    """
    chroma, other = np.hypot(*current[1:]), np.hypot(lab[:, 1], lab[:, 2])
    turn = np.arctan2(lab[:, 2], lab[:, 1]) - np.arctan2(current[2], current[1])
    chord = 2 * np.maximum(chroma, other) * np.abs(np.sin(turn / 2))
    is_grey = np.minimum(chroma, other) < NEUTRAL_CHROMA
    # Rounded, so that equal hues are equal whatever the last digit says.
    return np.asarray(np.round(np.where(is_grey, np.abs(chroma - other), chord), 9), dtype=np.float64)
