"""The worn hat as a surface of revolution: one line from the cast-on edge to the top, turned about its axis."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.profile import Profile

CLOSED_CM = 2.5
"""A last round of no larger radius is drawn together and closes the top; a larger one is left open."""
ROUNDING = 3
"""Rounds over which a bend of the outline is softened, as thick fabric softens it."""

EASED_CM = 1.2
"""How far to either side along the fabric a decrease draws it in, most at the decrease itself: by eye, no source."""

Lengths = NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Outline:
    """Radius and height at the edges between rounds, from the cast-on edge up, in cm.

    Shape (rounds + 1,), and one more at the axis where the top is closed.
    """

    radius_cm: Lengths
    height_cm: Lengths

    @property
    def is_open(self) -> bool:
        """Whether one looks into the hat from above."""
        return float(self.radius_cm[-1]) > 0

    @property
    def run_cm(self) -> Lengths:
        """Change of radius within each round."""
        return np.diff(self.radius_cm)

    @property
    def rise_cm(self) -> Lengths:
        """Height that each round gains."""
        return np.diff(self.height_cm)

    @property
    def slope_cm(self) -> Lengths:
        """Length of each round along the fabric."""
        return np.hypot(self.run_cm, self.rise_cm)

    def outward(self) -> tuple[Lengths, Lengths]:
        """Give the direction that the fabric faces at each round: its part away from the axis and its part upwards."""
        length = np.maximum(self.slope_cm, 1e-6)
        return self.rise_cm / length, -self.run_cm / length


def outline(profile: Profile) -> Outline:
    """Take the outline from the profile: each round adds its run and its rise, and a small last round is closed."""
    run = np.array(profile.run_cm, dtype=np.float64)
    rise = np.array(profile.rise_cm, dtype=np.float64)
    radius = np.maximum(profile.radius_cm[0] + np.concatenate([[0.0], np.cumsum(run)]), 0.0)
    height = np.concatenate([[0.0], np.cumsum(rise)])
    if radius[-1] <= CLOSED_CM:
        radius, height = np.append(radius, 0.0), np.append(height, height[-1])
    return Outline(radius, height)


def eased(shape: Outline, *, round_cm: float) -> Outline:
    """Let the fabric draw in over `EASED_CM` to either side of where it is decreased, as it does between the lines.

    Decreases stand in lines, and the fabric draws in from one to the next along each of them, so that no ledge shows
    where they are few. Height and radii as a whole stay; a rim is as wide as its counts say.
    """
    run, rise = shape.run_cm, shape.rise_cm
    knitted = len(run) if shape.is_open else len(run) - 1
    for stretch in _not_widening(run[:knitted]):
        rounds = round(EASED_CM / round_cm)
        run[stretch], rise[stretch] = _spread(run[stretch], rounds), _spread(rise[stretch], rounds)
    radius = shape.radius_cm[0] + np.concatenate([[0.0], np.cumsum(run)])
    return Outline(np.maximum(radius, 0.0), np.concatenate([[0.0], np.cumsum(rise)]))


def _not_widening(run: Lengths) -> Iterator[slice]:
    """Give the stretches of rounds that none widens."""
    ends = [-1, *np.flatnonzero(run > 0).tolist(), len(run)]
    yield from (slice(below + 1, above) for below, above in pairwise(ends) if above > below + 1)


def _spread(values: Lengths, rounds: int) -> Lengths:
    """Take a running mean over so many rounds to either side, those nearest most; what passes an end is laid back."""
    weights = np.concatenate([np.arange(1, rounds + 1), np.arange(rounds + 1, 0, -1)]) / (rounds + 1) ** 2
    return np.asarray(np.convolve(np.pad(values, rounds, mode="symmetric"), weights, mode="valid"), dtype=np.float64)


def softened(values: Lengths) -> Lengths:
    """Take the running mean over `ROUNDING` rounds, ends kept."""
    side = ROUNDING // 2
    padded = np.concatenate([np.repeat(values[:1], side), values, np.repeat(values[-1:], side)])
    kernel = np.full(ROUNDING, 1 / ROUNDING)
    return np.asarray(np.convolve(padded, kernel, mode="valid"), dtype=np.float64)
