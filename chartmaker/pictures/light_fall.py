"""Light that falls off across the photo, as a window's does: found from the target's patches, and evened out."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.shade.correction import misfit

Floats = NDArray[np.float64]

EVENED_FROM = 0.12
"""Fall across the target's width from which it is evened out, as a share of the light (natural logarithm).

Less than that cannot be told from vignetting, which does not go on beyond the target as a fall does: rendered photos.
"""
MOST_FALL = 0.8
"""A steeper one is no fall of light but corners set wrong, or a shadow."""
STEPS = 4
"""Gauss and Newton's; the second changes little."""
NUDGE = 1e-3


@dataclass(frozen=True, slots=True, eq=False)
class LightFall:
    """Light changes by exp(slope · (place - middle)) over the photo."""

    middle: Floats
    """x, y in pixels: the target's."""
    slope: Floats
    """To a pixel along x and y; 0, 0 for even light."""
    across: float
    """Natural logarithm of how it changes over the target's extent where that is greatest."""

    @property
    def is_even(self) -> bool:
        """Whether nothing is evened out."""
        return not self.slope.any()

    @property
    def percent(self) -> float:
        """How much of the light is lost over the target's extent."""
        return float(100 * (1 - np.exp(-self.across)))

    def evened(self, light: Floats, places: Floats) -> Floats:
        """Bring linear RGB (… × 3) read at places x, y (… × 2) to the light in the target's middle."""
        return np.asarray(light * np.exp(-((places - self.middle) @ self.slope))[..., None])


def light_fall(light: Floats, xyz: Floats, places: Floats, *, white: Floats) -> LightFall:
    """Find the fall of light for which patches read at `places` (n × 2) fit their XYZ best by least squares.

    Only the fall is searched for; the correction that goes with each is the best there is.
    """
    middle, extent = places.mean(axis=0), float(np.ptp(places, axis=0).max())
    at = (places - middle) / extent

    def off(slope: Floats) -> Floats:
        return misfit(light * np.exp(-(at @ slope))[:, None], xyz, white=white)

    slope = np.zeros(2)
    for _ in range(STEPS):
        now = off(slope)
        change = np.stack([(off(slope + NUDGE * axis) - now) / NUDGE for axis in np.eye(2)], axis=1)
        slope = slope - np.linalg.lstsq(change, now, rcond=None)[0]
        if not np.hypot(*slope) <= MOST_FALL:
            return LightFall(middle, np.zeros(2), 0.0)
    across = float(np.hypot(*slope))
    return LightFall(middle, slope / extent, across) if across >= EVENED_FROM else LightFall(middle, np.zeros(2), 0.0)
