"""How a hat's outline is eased between its decreases, for whatever draws it: a fabric shows no ledges."""

from collections.abc import Iterator
from itertools import pairwise

import numpy as np
from numpy.typing import ArrayLike, NDArray

EASED_CM = 1.2
"""How far to either side along the fabric a decrease draws it in, most at the decrease itself: by eye, no source."""

Lengths = NDArray[np.float64]


def eased_steps(run_cm: ArrayLike, rise_cm: ArrayLike, *, round_cm: float) -> tuple[Lengths, Lengths]:
    """Give the run and the rise of every round, both of shape (rounds,), eased between the decreases.

    Decreases stand in lines, and the fabric draws in from one to the next along each of them, so that no ledge shows
    where they are few. Height and radii as a whole stay; a rim is as wide as its counts say.
    """
    run, rise = np.array(run_cm, dtype=np.float64), np.array(rise_cm, dtype=np.float64)
    rounds = round(EASED_CM / round_cm)
    for stretch in _not_widening(run):
        run[stretch], rise[stretch] = _spread(run[stretch], rounds), _spread(rise[stretch], rounds)
    return run, rise


def _not_widening(run: Lengths) -> Iterator[slice]:
    """Give the stretches of rounds that none widens."""
    ends = [-1, *np.flatnonzero(run > 0).tolist(), len(run)]
    yield from (slice(below + 1, above) for below, above in pairwise(ends) if above > below + 1)


def _spread(values: Lengths, rounds: int) -> Lengths:
    """Take a running mean over so many rounds to either side, those nearest most; what passes an end is laid back."""
    weights = np.concatenate([np.arange(1, rounds + 1), np.arange(rounds + 1, 0, -1)]) / (rounds + 1) ** 2
    return np.asarray(np.convolve(np.pad(values, rounds, mode="symmetric"), weights, mode="valid"), dtype=np.float64)
