"""Where the hat is looked at from."""

import math
from dataclasses import dataclass

from chartmaker.pictures.camera import MARGIN, TILT_DEGREES, Camera
from chartmaker.pictures.curve import Curve

NEAREST, FARTHEST = 8.0, 0.1
"""How far the zoom goes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Viewpoint:
    """How far the hat is turned, how far down the eye looks, and how near it is."""

    turn_degrees: float = 0.0
    """Turned about its axis, its front to the right; any number."""
    tilt_degrees: float = TILT_DEGREES
    """From -90, below, over 0, the side, to 90, above."""
    zoom: float = 1.0
    """1 shows the whole hat from any side."""

    def __post_init__(self) -> None:
        if not abs(self.turn_degrees) < 1e9:
            raise ValueError(f"a turn of {self.turn_degrees:g}° is no turn")
        if not -90 <= self.tilt_degrees <= 90:
            raise ValueError(f"a tilt of {self.tilt_degrees:g}° is outside -90 to 90")
        if not FARTHEST <= self.zoom <= NEAREST:
            raise ValueError(f"a zoom of {self.zoom:g} is outside {FARTHEST:g} to {NEAREST:g}")

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
    """Fit the hat into a picture so that it keeps its size while it is turned and tilted; `room` is of its trims."""
    top = curve.top_cm + room[1]
    middle = (curve.foot_cm + top) / 2
    ends = [math.hypot(room[0], top - middle), *map(math.hypot, curve.radius_cm, curve.height_cm - middle)]
    reach = max(curve.reach_cm, room[0])
    shown = 1 - 2 * MARGIN
    px_per_cm = shown * min(width_px / (2 * reach), height_px / (2 * max(ends))) * seen_from.zoom
    tilt = math.radians(seen_from.tilt_degrees)
    return Camera(width_px, height_px, px_per_cm, middle * math.cos(tilt), tilt)
