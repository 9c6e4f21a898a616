"""The stitches of one part that hang together in a band's drawing: what filling from one of them reaches."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

if TYPE_CHECKING:
    from collections.abc import Sequence

    from numpy.typing import NDArray

    from chartmaker.model.band import Band

    Numbers = NDArray[np.int32]

BLANK = 255
"""Stands where a column of the drawing has no stitch."""


def flooded(band: Band, *, at: tuple[int, int], offsets: Sequence[int]) -> NDArray[np.bool_]:
    """Tell of each place of a band's drawing, `(rounds, columns)`, whether it hangs together with a stitch.

    `at` is that stitch (round in the band, stitch in the repeat). Neighbours are of one part, side by side in a round,
    where the repeat closes so that its last stitch is beside its first, or in one column of rounds on one another;
    `offsets` are the columns at which the rounds' first stitches are drawn (`knit.outline.chart_offsets`).
    """
    picture = _drawing(band, offsets)
    runs, lines, starts = _runs(picture)
    run = int(runs[at[0], offsets[at[0]] + at[1]])
    first = np.asarray(offsets)
    last = first + [len(line) - 1 for line in band.rounds]
    every = np.arange(len(band.rounds))
    meets = picture[every, first] == picture[every, last]
    joins = np.stack((runs[every, first][meets], runs[every, last][meets]))
    above, below = runs[1:], runs[:-1]
    # Two runs meet first where either begins: one pair there is enough for all the columns that they share.
    begins = np.zeros(picture.shape, np.bool_)
    begins[lines, starts] = True
    touch = (picture[1:] == picture[:-1]) & (begins[1:] | begins[:-1])
    pairs = np.concatenate((np.stack((above[touch], below[touch])), joins), axis=1)
    together = _together(len(starts), pairs)
    reached: NDArray[np.bool_] = (together[runs] == together[run]) & (picture != BLANK)
    return reached


def _drawing(band: Band, offsets: Sequence[int]) -> NDArray[np.uint8]:
    width = max(offset + len(line) for offset, line in zip(offsets, band.rounds, strict=True))
    picture = np.full((len(band.rounds), width), BLANK, np.uint8)
    for index, (offset, line) in enumerate(zip(offsets, band.rounds, strict=True)):
        picture[index, offset : offset + len(line)] = np.frombuffer(line.cells, np.uint8)
    return picture


def _runs(picture: NDArray[np.uint8]) -> tuple[Numbers, NDArray[np.intp], NDArray[np.intp]]:
    """Number the runs of equal cells along the rounds; give each cell's run, and where each run begins."""
    begins = np.ones(picture.shape, np.bool_)
    begins[:, 1:] = picture[:, 1:] != picture[:, :-1]
    lines, starts = np.nonzero(begins)
    runs = np.cumsum(begins, dtype=np.int32).reshape(picture.shape) - 1
    return runs, lines, starts


def _together(count: int, pairs: Numbers) -> Numbers:
    """Give things that pairs join, one to the next, one number: the same for all that hang together.

    In each turn every thing that has a partner of lower number takes that one's name, then every name is followed to
    its end; turn about it is the higher number, so that half of what still has partners goes in two turns.
    """
    names = np.arange(count, dtype=np.int32)
    turn = 0
    while True:
        low, high = np.minimum(*pairs), np.maximum(*pairs)
        apart = low != high
        if not apart.any():
            return names
        low, high = low[apart], high[apart]
        roots = np.arange(count, dtype=np.int32)
        if turn % 2:
            roots[low] = high
        else:
            roots[high] = low
        roots = _followed(roots)
        names = roots[names]
        pairs = np.stack((roots[low], roots[high]))
        turn += 1


def _followed(roots: Numbers) -> Numbers:
    while True:
        further = roots[roots]
        if np.array_equal(further, roots):
            return roots
        roots = further
