"""The worn hat as a surface of revolution: one line from the cast-on edge to the top, turned about its axis."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.easing import eased_steps
from chartmaker.knit.profile import Profile

CLOSED_CM = 2.5
"""A last round of no larger radius is drawn together and closes the top; a larger one is left open."""
ROUNDING = 3
"""Rounds over which a bend of the outline is softened, as thick fabric softens it."""

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
    """Ease an outline between its decreases, as the fabric does; a closed top stays where it is."""
    run, rise = shape.run_cm, shape.rise_cm
    knitted = len(run) if shape.is_open else len(run) - 1
    run[:knitted], rise[:knitted] = eased_steps(run[:knitted], rise[:knitted], round_cm=round_cm)
    radius = shape.radius_cm[0] + np.concatenate([[0.0], np.cumsum(run)])
    return Outline(np.maximum(radius, 0.0), np.concatenate([[0.0], np.cumsum(rise)]))


def softened(values: Lengths) -> Lengths:
    """Take the running mean over `ROUNDING` rounds, ends kept."""
    side = ROUNDING // 2
    padded = np.concatenate([np.repeat(values[:1], side), values, np.repeat(values[-1:], side)])
    kernel = np.full(ROUNDING, 1 / ROUNDING)
    return np.asarray(np.convolve(padded, kernel, mode="valid"), dtype=np.float64)
