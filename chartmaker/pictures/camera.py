"""The eye that looks at the worn hat: parallel rays, from a little above, no perspective.

The hat stands on its cast-on edge: x to the right, y towards the eye, z up, in cm.
"""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.frame import tallest

TILT_DEGREES = 18.0
"""How far the eye looks down, so that the crown shows."""
MARGIN = 0.07
"""Surround on each side, as a share of the width."""
TALLEST = 2.5
"""A picture is at most this many times as tall as it is wide; a very long cap is drawn smaller instead."""

Lengths = NDArray[np.float32]


@dataclass(frozen=True, slots=True)
class Camera:
    """Where points of the hat fall in a picture of `width_px` × `height_px`."""

    width_px: int
    height_px: int
    px_per_cm: float
    middle_cm: float
    """Height on the picture, in cm, that falls on its middle row."""
    tilt: float = math.radians(TILT_DEGREES)

    def across_px(self, x: Lengths) -> Lengths:
        """Give the picture's column of points, 0 at its left edge."""
        return np.asarray(self.width_px / 2 + x * np.float32(self.px_per_cm), dtype=np.float32)

    def down_px(self, y: Lengths | float, z: Lengths | float) -> Lengths:
        """Give the picture's row of points, 0 at its top edge."""
        up = z * np.float32(math.cos(self.tilt)) - y * np.float32(math.sin(self.tilt))
        return np.asarray(self.height_px / 2 - (up - self.middle_cm) * self.px_per_cm, dtype=np.float32)

    def nearness(self, y: Lengths | float, z: Lengths | float) -> Lengths:
        """Give how near to the eye points are, in cm; larger is nearer."""
        return np.asarray(y * math.cos(self.tilt) + z * math.sin(self.tilt), dtype=np.float32)

    def magnified(self, times: int) -> "Camera":
        """Give the same view with each pixel cut into `times` × `times`."""
        return Camera(self.width_px * times, self.height_px * times, self.px_per_cm * times, self.middle_cm, self.tilt)

    def coarser(self, times: int) -> "Camera":
        """Give the same view in pixels `times` as large, which may reach over its right and lower edges."""
        width, height = math.ceil(self.width_px / times), math.ceil(self.height_px / times)
        return Camera(width, height, self.px_per_cm / times, self.middle_cm, self.tilt)


def camera(
    radius_cm: NDArray[np.float64],
    height_cm: NDArray[np.float64],
    *,
    width_px: int,
    room: tuple[float, float] = (0.0, 0.0),
    tilt: float = math.radians(TILT_DEGREES),
) -> Camera:
    """Fit a hat into a picture.

    Args:
        radius_cm: radii of its outline, from the cast-on edge up.
        height_cm: heights of the same points.
        width_px: width of the picture.
        room: radius and height of something on top, in cm.
        tilt: how far the eye looks down, in radians; below 0 it looks up.
    """
    rims = np.concatenate([height_cm, [height_cm.max() + room[1]]])
    reach = np.concatenate([radius_cm, [room[0]]])
    highest = float((rims * math.cos(tilt) + reach * abs(math.sin(tilt))).max())
    lowest = float((rims * math.cos(tilt) - reach * abs(math.sin(tilt))).min())
    wide, tall = 2 * float(reach.max()), highest - lowest
    px_per_cm = width_px * (1 - 2 * MARGIN) / wide
    margin = 2 * MARGIN * width_px
    highest_px = min(TALLEST * width_px, tallest(width_px))
    if tall * px_per_cm + margin > highest_px:
        margin = min(margin, highest_px / 4)
        px_per_cm = (highest_px - margin) / tall
    height_px = max(1, round(tall * px_per_cm + margin))
    return Camera(width_px, height_px, px_per_cm, (highest + lowest) / 2, tilt)
