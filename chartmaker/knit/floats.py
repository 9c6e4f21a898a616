"""Yarn carried behind stitches worked in another letter: how long, where, and where to catch it."""

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.layout import Fabric
from chartmaker.model.bounds import MOST_LETTERS
from chartmaker.model.gauge import Gauge


@dataclass(frozen=True, slots=True, eq=False)
class Floats:
    """Every float of the hat in the order of rounds, then of letters; all arrays of shape (floats,)."""

    round: NDArray[np.intp]
    """Index of the round."""
    letter: NDArray[np.intp]
    """The letter carried, 0 for A."""
    start: NDArray[np.intp]
    """Index in the round of the first stitch that it passes, in knitting order."""
    length: NDArray[np.intp]
    """Stitches that it passes."""
    rounds: int
    """How many rounds the hat has."""

    def longest(self) -> NDArray[np.intp]:
        """Give the longest float of each round in stitches, 0 where there is none: shape (rounds,)."""
        longest = np.zeros(self.rounds, dtype=np.intp)
        np.maximum.at(longest, self.round, self.length)
        return longest

    def passed(self) -> NDArray[np.intp]:
        """Give the stitches that each letter passes in the whole hat: shape (26,)."""
        return np.bincount(self.letter, weights=self.length, minlength=MOST_LETTERS).astype(np.intp)


@dataclass(frozen=True, slots=True)
class FloatBehind:
    """One strand that passes behind a stitch."""

    letter: str
    start: int
    """Index in the round of the first stitch that it passes."""
    length: int
    """Stitches that it passes."""


@dataclass(frozen=True, slots=True)
class LongFloat:
    """A float over the limit, with the stitches behind which to catch it."""

    round: int
    letter: str
    start: int
    """Index in the round of the first stitch that it passes."""
    length: int
    length_cm: float
    catches: tuple[int, ...]
    """Indexes in the round of the stitches behind which the strand is caught."""


def find_floats(fabric: Fabric) -> Floats:
    """Find the runs of stitches between the uses of each letter in each round, round the whole circumference.

    A letter worked once passes all the other stitches of its round; one not worked in a round has no float there.
    """
    return floats_between(fabric.letters, fabric.counts)


def floats_between(cells: NDArray[np.uint8], counts_of_rounds: Sequence[int]) -> Floats:
    """Find the floats of closed rounds, given the letter of each stitch and how many stitches each round has.

    One repeat closed on itself has the floats of the round that it is repeated in, each once.
    """
    counts = np.asarray(counts_of_rounds)
    starts = np.concatenate(([0], np.cumsum(counts)))
    # 600 rounds × 26 letters fit 16 bits, which numpy sorts by radix: five times as fast.
    keys = (np.repeat(np.arange(len(counts)), counts) * MOST_LETTERS + cells).astype(np.uint16)
    uses = np.argsort(keys, kind="stable")
    keys = keys[uses]
    is_last = np.empty(len(keys), dtype=np.bool_)
    np.not_equal(keys[1:], keys[:-1], out=is_last[:-1])
    is_last[-1] = True
    last = np.flatnonzero(is_last)
    gap = np.empty_like(uses)
    np.subtract(uses[1:], uses[:-1], out=gap[:-1])
    first = np.concatenate(([0], last[:-1] + 1))
    gap[last] = uses[first] + counts[keys[last] // MOST_LETTERS] - uses[last]
    gap -= 1
    found = np.flatnonzero(gap)
    rounds, letters = np.divmod(keys[found], np.uint16(MOST_LETTERS))
    start = uses[found] + 1 - starts[rounds]
    start[start == counts[rounds]] = 0
    return Floats(
        round=rounds.astype(np.intp),
        letter=letters.astype(np.intp),
        start=start,
        length=gap[found],
        rounds=len(counts),
    )


def floats_behind(fabric: Fabric, floats: Floats, *, index: int, stitch: int) -> tuple[FloatBehind, ...]:
    """Give the strands that pass behind a stitch of a round, both as indices, in alphabetical order of letters."""
    first, last = np.searchsorted(floats.round, (index, index + 1))
    here = slice(int(first), int(last))
    start, length = floats.start[here], floats.length[here]
    passing = np.flatnonzero((stitch - start) % fabric.counts[index] < length)
    found = ((int(floats.letter[here][place]), int(start[place]), int(length[place])) for place in passing)
    return tuple(FloatBehind(chr(ord("A") + letter), *run) for letter, *run in sorted(found))


def long_floats(fabric: Fabric, floats: Floats, *, gauge: Gauge, limit_cm: float) -> Iterator[LongFloat]:
    """Give the floats over the limit in knitting order, each caught evenly and not above the last round's catch."""
    width = gauge.stitch_width_cm
    over = np.flatnonzero(floats.length * width > limit_cm * (1 + 1e-9))
    order = over[np.lexsort((floats.start[over], floats.round[over]))]
    caught_below: set[int] = set()
    caught_here: set[int] = set()
    current = -1
    for place in order.tolist():
        index, length = int(floats.round[place]), int(floats.length[place])
        if index != current:
            caught_below = caught_here if index == current + 1 else set()
            caught_here, current = set(), index
        catches = _catches(
            start=int(floats.start[place]),
            length=length,
            most=math.floor(limit_cm * (1 + 1e-9) / width),
            around=fabric.counts[index],
            below=caught_below,
        )
        caught_here.update(catches)
        letter = chr(ord("A") + int(floats.letter[place]))
        yield LongFloat(index, letter, int(floats.start[place]), length, length * width, catches)


def _catches(*, start: int, length: int, most: int, around: int, below: set[int]) -> tuple[int, ...]:
    """Choose the stitches at which to catch a float so that no free run passes `most`, where that can be had.

    The fewest catches, evenly set; each moves aside by a stitch rather than stand above a catch of the round below.
    """
    pieces = math.ceil((length + 1) / (max(most, 1) + 1))
    catches = []
    for number in range(1, pieces):
        middle = number * (length + 1) // pieces - 1
        tries = (middle, middle - 1, middle + 1)
        inside = [step for step in tries if 0 <= step < length]
        chosen = next((step for step in inside if (start + step) % around not in below), middle)
        catches.append((start + chosen) % around)
    return tuple(catches)
