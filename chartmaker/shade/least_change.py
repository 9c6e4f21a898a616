"""Which of some shades would be far enough in value from given neighbours, with the least change of hue."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from chartmaker.shade.difference import ciede2000, delta_h
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.spread import Spread, differences_and_bounds, spread_of


@dataclass(frozen=True, slots=True)
class Neighbour:
    """A shade to stay away from, and how far: what the lower 95 % bound of |ΔL*| must reach."""

    shade: LotShade
    needed: float


@dataclass(frozen=True, slots=True)
class Change:
    """The candidate found, by index, and the hue that it costs as |ΔH*ab|."""

    index: int
    hue_change: float


def least_change(current: LotShade, candidates: Sequence[LotShade], neighbours: Sequence[Neighbour]) -> Change | None:
    """Give the candidate that differs enough from every neighbour and least in hue from `current`; None if none does.

    Hue is compared by |ΔH*ab|; where that is equal, CIEDE2000 decides.
    """
    if not candidates:
        return None
    rows = Spread(*(column[:, np.newaxis] for column in spread_of(candidates)))
    _, low = differences_and_bounds(rows, spread_of([neighbour.shade for neighbour in neighbours]))
    fit = np.flatnonzero((low >= [neighbour.needed for neighbour in neighbours]).all(axis=1))
    if not len(fit):
        return None
    lab = np.array([candidates[index].lab for index in fit])
    # Rounded, so that equal hues are equal whatever the last digit says.
    hue_change = np.round(np.abs(delta_h(current.lab, lab)), 9)
    best = np.lexsort((ciede2000(current.lab, lab), hue_change))[0]
    return Change(int(fit[best]), float(hue_change[best]))
