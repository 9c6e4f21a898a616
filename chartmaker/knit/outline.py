"""Where each round of a band stands in the band's drawing, so that columns run true through decreases and increases."""

import math
import statistics
from collections.abc import Iterator
from itertools import accumulate

from chartmaker.model.round import Round
from chartmaker.model.stitches import EATEN, Shaping

_ON_TOP = {Shaping.PLAIN: 0, Shaping.K2TOG: 0, Shaping.SSK: 1, Shaping.CENTRED: 1}
"""Which of the stitches that a stitch eats lies on top, counted from the right: that one it stands above."""
_VOTES = {Shaping.CENTRED: EATEN[Shaping.CENTRED]}
"""How much a stitch weighs when a round is placed, if not 1. A centred double counts for all that it eats, so that its
spine stays upright where the stitches at its two sides are not equally many."""


def chart_offsets(rounds: tuple[Round, ...]) -> tuple[int, ...]:
    """Give the column, counted leftwards from 0 at the right, at which each round's stitch 1 is drawn.

    A round moves against the one below by the middle way of its stitches, so that most of them stand above the stitch
    that they eat, or that lies on top; half columns add up before they are rounded. The smallest column is 0.
    """
    ways = accumulate((_step(line) for line in rounds[1:]), initial=0.0)
    columns = [math.floor(way + 0.5) for way in ways]
    right_most = min(columns)
    return tuple(column - right_most for column in columns)


def chart_width(rounds: tuple[Round, ...]) -> int:
    """Give the columns that the drawing of a band needs."""
    return max(offset + len(line) for offset, line in zip(chart_offsets(rounds), rounds, strict=True))


def _step(line: Round) -> float:
    if not line.is_shaped:
        return 0.0
    votes = [move for code, move in _moves(line) for _ in range(_VOTES.get(code, 1))]
    return statistics.median(votes or [0])


def _moves(line: Round) -> Iterator[tuple[Shaping, int]]:
    """Give how far each stitch that eats any would have to move left to stand above the one that lies on top."""
    below = 0
    for stitch, code in enumerate(map(Shaping, line.shaping)):
        if code != Shaping.MAKE:
            yield code, below + _ON_TOP[code] - stitch
        below += EATEN[code]
