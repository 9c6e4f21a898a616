"""Ways out of a lost contrast: which of some shades would be clear of its neighbours with the least change of hue."""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.settings import Limits
from chartmaker.shade.difference import ciede2000, delta_h
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.spread import Spread, differences_and_bounds, spread_of


def clear_candidate(
    current: LotShade, *, neighbours: Sequence[LotShade], candidates: Sequence[LotShade], limits: Limits
) -> int | None:
    """Give the index of the candidate to put in the place of `current`, or None where none would do.

    It must be clear of every neighbour on the lower 95 % bound of |ΔL*|. Among those that are, the one whose hue
    differs least from `current` wins, by |ΔH*ab|; where that is equal, by CIEDE2000.
    """
    clear = np.flatnonzero(_is_clear(candidates, neighbours, limits)).tolist()
    if not clear:
        return None
    lab = np.array([candidates[index].lab for index in clear])
    # Rounded, so that equal hues are equal whatever the last digit says.
    hue_change = np.round(np.abs(delta_h(current.lab, lab)), 9)
    order = np.lexsort((ciede2000(current.lab, lab), hue_change))
    return clear[int(order[0])]


def _is_clear(candidates: Sequence[LotShade], neighbours: Sequence[LotShade], limits: Limits) -> NDArray[np.bool_]:
    """Tell of each candidate (k) whether it is clear of every neighbour."""
    rows = Spread(*(column[:, np.newaxis] for column in spread_of(candidates)))
    _, low = differences_and_bounds(rows, spread_of(neighbours))
    return np.asarray((low >= limits.value_clear).all(axis=1))
