"""Where each round of a band stands in the band's drawing, so that columns run true through decreases and increases."""

import math
import statistics
from itertools import accumulate

from chartmaker.model.round import Round
from chartmaker.model.stitches import EATEN, Shaping


def chart_offsets(rounds: tuple[Round, ...]) -> tuple[int, ...]:
    """Give the column, counted leftwards from 0 at the right, at which each round's stitch 1 is drawn.

    A round moves against the one below by the middle way of its plain stitches, so that most of them stand above the
    stitch that they eat; half columns add up before they are rounded. The smallest column is 0.
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
    eaten_before = accumulate((EATEN[code] for code in line.shaping), initial=0)
    moves = [
        below - stitch
        for stitch, (code, below) in enumerate(zip(line.shaping, eaten_before, strict=False))
        if code == Shaping.PLAIN
    ]
    return statistics.median(moves) if moves else (line.eaten - len(line)) / 2
