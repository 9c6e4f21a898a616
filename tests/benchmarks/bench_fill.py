"""How long a flood fill of the largest chart takes, from the click to the edit."""

from collections.abc import Callable, Iterator

import numpy as np
from numpy.typing import NDArray

from chartmaker.app.chart_grid import laid_out
from chartmaker.app.strokes import fill_edit
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.round import Round
from chartmaker.model.stitches import Part
from tests.benchmarks.row import Row, median_ms

SIDE = 600
"""Most stitches of a round and most rounds that a file may have."""


def _bare() -> NDArray[np.uint8]:
    return np.zeros((SIDE, SIDE), np.uint8)


def _scattered() -> NDArray[np.uint8]:
    """Draw figure on a third of the stitches at random, the first among the ground."""
    drawn = (np.random.default_rng(2026).random((SIDE, SIDE)) < 1 / 3).astype(np.uint8)
    drawn[:3, :3] = 0
    return drawn


def _meander() -> NDArray[np.uint8]:
    """Let one path of the ground go up and down, a stitch wide: no run of stitches leads far, and none is idle."""
    drawn = np.zeros((SIDE, SIDE), np.uint8)
    drawn[:, 1::2] = 1
    drawn[0, 1::4] = drawn[-1, 3::4] = 0
    return drawn


DRAWINGS: dict[str, Callable[[], NDArray[np.uint8]]] = {
    "a bare chart": _bare,
    "between stitches at random": _scattered,
    "a path up and down, the worst known": _meander,
}


def measure() -> Iterator[Row]:
    """Fill from the first stitch of charts that are easy and hard to fill."""
    for words, draw in DRAWINGS.items():
        rounds = tuple(Round("AB", line.tobytes()) for line in draw())
        design = Design(bands=(Band(name="all over", times=1, rounds=rounds),))
        grid = laid_out(design)
        fill_ms = median_ms(lambda design=design, grid=grid: fill_edit(design, grid, (0, 0), Part.THIRD))
        yield Row(name="fill of 600 × 600", figure=fill_ms, limit=50, unit="ms", detail=words)
