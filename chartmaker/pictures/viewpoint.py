"""Where the hat is looked at from."""

import math
from dataclasses import dataclass

import numpy as np

from chartmaker.pictures.camera import TILT_DEGREES, Camera
from chartmaker.pictures.curve import Curve

NEAREST, FARTHEST = 8.0, 0.1
"""How far the zoom goes."""
FARTHEST_CM = 1000.0
FRAME_MARGIN = 0.05
"""Surround on each side of a frame, as a share of it."""
GROWTH = 1.6
"""How much larger than from everywhere a hat is drawn at the most, seen from where it is short."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Viewpoint:
    """How far the hat is turned, how far down the eye looks, and how near it is."""

    turn_degrees: float = 0.0
    """Turned about its axis, its front to the right; any number."""
    tilt_degrees: float = TILT_DEGREES
    """From -90, below, over 0, the side, to 90, above."""
    zoom: float = 1.0
    """1 shows the whole hat."""
    lift_cm: float = 0.0
    """How far above the hat's middle the middle of a frame lies, as the frame shows it."""

    def __post_init__(self) -> None:
        if not abs(self.turn_degrees) < 1e9:
            raise ValueError(f"a turn of {self.turn_degrees:g}° is no turn")
        if not -90 <= self.tilt_degrees <= 90:
            raise ValueError(f"a tilt of {self.tilt_degrees:g}° is outside -90 to 90")
        if not FARTHEST <= self.zoom <= NEAREST:
            raise ValueError(f"a zoom of {self.zoom:g} is outside {FARTHEST:g} to {NEAREST:g}")

        if not abs(self.lift_cm) <= FARTHEST_CM:
            raise ValueError(f"a lift of {self.lift_cm:g} cm is beyond {FARTHEST_CM:g}")

    @property
    def turn(self) -> float:
        """The turn as a part of a whole one, 0 to below 1."""
        return (self.turn_degrees / 360) % 1.0


VIEWPOINTS = {
    "side": Viewpoint(),
    "back": Viewpoint(turn_degrees=180),
    "above": Viewpoint(tilt_degrees=90),
    "below": Viewpoint(tilt_degrees=-90),
}
"""Some that have a name."""


def turning_camera(
    curve: Curve, room: tuple[float, float], seen_from: Viewpoint, *, width_px: int, height_px: int
) -> Camera:
    """Fit the hat into a picture; `room` is of its trims.

    Turned it keeps its size. Tilted it grows where that shows more, up to `GROWTH` of the size at which it fits from
    everywhere, and moves so that it stays in the middle.
    """
    tilt = math.radians(seen_from.tilt_degrees)
    top = curve.top_cm + room[1]
    rims = np.concatenate([curve.height_cm, [top]])
    reach = np.concatenate([curve.radius_cm, [room[0]]])
    lift, spread = rims * math.cos(tilt), reach * abs(math.sin(tilt))
    highest, lowest = float((lift + spread).max()), float((lift - spread).min())
    widest = 2 * float(reach.max())
    farthest = 2 * float(np.hypot(reach, rims - (curve.foot_cm + top) / 2).max())
    now, always = (min(width_px / widest, height_px / tall) for tall in (highest - lowest, farthest))
    px_per_cm = (1 - 2 * FRAME_MARGIN) * min(now, GROWTH * always) * seen_from.zoom
    return Camera(width_px, height_px, px_per_cm, (highest + lowest) / 2 + seen_from.lift_cm, tilt)
