"""The light on the worn hat: a large soft lamp beside the eye, which goes where the eye goes; and the hat's shadow."""

import math

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.camera import TILT_DEGREES, Camera
from chartmaker.pictures.curve import Curve
from chartmaker.pictures.seen_map import SeenMap

LIGHT = (-0.50, 0.62, 0.60)
"""Direction to the lamp for the usual tilt: right, towards the eye, up; of length about 1."""
SHADE_SIDE, LIT_SIDE = 0.25, 1.12
"""Factor on the light where the fabric faces away from the lamp, and where it faces it."""
SHADOW, SHADOW_CM = 0.34, 1.3
"""How much the ground is darkened at the hat's foot, and the distance over which that fades."""
INSIDE, DEEP_INSIDE, INSIDE_CM = 0.32, 0.20, 9.0
"""Factors on the light inside the hat, at its mouth and far in, and how far in that is: by eye, no source."""

Numbers = NDArray[np.float32]


def lamp(view: Camera, direction: tuple[float, float, float] = LIGHT) -> tuple[float, float, float]:
    """Give the direction to the lamp for a tilt, when it is known for the usual one."""
    right, deep, up = direction
    more = view.tilt - math.radians(TILT_DEGREES)
    return right, deep * math.cos(more) - up * math.sin(more), deep * math.sin(more) + up * math.cos(more)


def lit(seen: SeenMap, view: Camera, curve: Curve) -> Numbers:
    """Give the factor on the light of each pixel; the wrong side is inside the hat, but for a fold's."""
    right, deep, up = (np.float32(part) for part in lamp(view))
    cosine = np.cos(seen.angle)
    towards = seen.outwards * (np.sin(seen.angle) * right + cosine * deep) + seen.upwards * up
    is_inside = seen.shows_right == (seen.row < curve.body_from)
    towards = np.where(seen.shows_right, towards, -towards)
    light = np.float32(SHADE_SIDE) + np.float32((LIT_SIDE - SHADE_SIDE) / 2) * (1 + towards)
    far = (seen.height if view.tilt < 0 else np.float32(curve.height_cm[-1]) - seen.height) / np.float32(INSIDE_CM)
    inside = INSIDE + (DEEP_INSIDE - INSIDE) * np.clip(far, 0, 1)
    return np.asarray(light * seen.light * np.where(is_inside, inside, 1), dtype=np.float32)


def shadow(view: Camera, radius_cm: float, rows: slice) -> Numbers:
    """Give the part of the light that the ground keeps around the foot of the hat, for rows of a picture.

    From the level of the ground, or from below it, there is none.
    """
    count = len(range(*rows.indices(view.height_px)))
    strength = SHADOW * min(1.0, max(0.0, math.sin(view.tilt) / math.sin(math.radians(TILT_DEGREES))))
    if strength < 0.01:
        return np.ones((count, view.width_px), dtype=np.float32)
    x = (np.arange(view.width_px, dtype=np.float32) + np.float32(0.5 - view.width_px / 2)) / np.float32(view.px_per_cm)
    down = np.arange(rows.start, rows.start + count, dtype=np.float32) + np.float32(0.5)
    up = (np.float32(view.height_px / 2) - down) / np.float32(view.px_per_cm) + np.float32(view.middle_cm)
    far = np.hypot(x[None, :], up[:, None] / np.float32(math.sin(view.tilt))) - np.float32(radius_cm)
    kept = 1 - np.float32(strength) * np.exp(-np.maximum(far, 0) / np.float32(SHADOW_CM))
    return np.asarray(kept, dtype=np.float32)
