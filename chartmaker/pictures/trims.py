"""Pompom and tassel on the worn hat, made of short strands that are placed by a fixed seed."""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.hat import Trim
from chartmaker.pictures.camera import Camera
from chartmaker.pictures.canvas import Canvas
from chartmaker.pictures.outline import Outline
from chartmaker.pictures.shades import LetterColours

SEED = 7
TUFTS = 5200
"""Cut ends of yarn that show on a pompom."""
TUFT_PART = 0.036
"""Radius of a cut end, as a part of the pompom's."""
SUNK = 0.22
"""How deep a pompom sits in the crown, as a part of its radius."""
STRANDS = 26
TASSEL_SPREAD, TASSEL_TURN = 0.30, 0.42
"""Angles in radians: half the fan of a tassel's strands, and how far right of the front it falls."""
STRAND_CM = 0.13
"""Radius of a tassel's strand."""
LIFT_CM = 0.25
"""How far a tassel lies above the fabric."""
DISC_PX = 0.5
"""Distance of the points of a disc."""

Lengths = NDArray[np.float32]
Places = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Discs:
    """Round spots in space, all of one radius; arrays of shape (discs,), in cm, and the light of each, (discs, 3)."""

    x: Lengths
    y: Lengths
    z: Lengths
    light: Lengths
    radius_cm: float


def trim_room(trims: tuple[Trim, ...]) -> tuple[float, float]:
    """Give the radius and the height, in cm, that trims need above the top of the hat."""
    pompoms = [trim.size_cm for trim in trims if trim.kind == "pompom"]
    largest = max(pompoms, default=0.0)
    knot = 1.0 if len(pompoms) < len(trims) else 0.0
    return largest / 2, max(largest * (1 - SUNK / 2), knot)


def paint_trims(canvas: Canvas, view: Camera, shape: Outline, trims: tuple[Trim, ...], colours: LetterColours) -> None:
    """Paint each trim on top of the hat."""
    random = np.random.default_rng(SEED)
    for trim in trims:
        yarn = colours.linear[ord(trim.letter) - ord("A")]
        make = _pompom if trim.kind == "pompom" else _tassel
        _paint_discs(canvas, view, make(trim.size_cm, shape, yarn, random))


def _pompom(size_cm: float, shape: Outline, yarn: Lengths, random: np.random.Generator) -> _Discs:
    """Spread cut ends evenly over a ball (a golden spiral) and ruffle them."""
    radius = size_cm / 2
    number = np.arange(TUFTS) + 0.5
    up = 1 - 2 * number / TUFTS
    turn = number * math.pi * (3 - math.sqrt(5)) + random.normal(0, 0.12, TUFTS)
    level = np.sqrt(1 - up**2)
    ball = np.stack([level * np.sin(turn), level * np.cos(turn), up])
    reach = radius * random.normal(0.93, 0.045, TUFTS).clip(0.78, 1.0)
    lit = 0.78 + 0.42 * (ball[0] * -0.45 + ball[1] * 0.35 + ball[2] * 0.75)
    light = lit * random.normal(1, 0.08, TUFTS).clip(0.75, 1.25) * (0.45 + 0.55 * (reach / radius - 0.78) / 0.22)
    middle = float(shape.height_cm[-1]) + radius * (1 - SUNK)
    places = ball * reach + np.array([[0.0], [0.0], [middle]])
    return _discs(places, light, yarn, radius_cm=radius * TUFT_PART)


def _tassel(size_cm: float, shape: Outline, yarn: Lengths, random: np.random.Generator) -> _Discs:
    """Let strands fall from the top along the outline, as far as the tassel is long."""
    steps = np.linspace(0, 1, max(16, math.ceil(size_cm / STRAND_CM * 1.6)))
    down = np.concatenate([[0.0], np.cumsum(shape.slope_cm[::-1])])
    turns = TASSEL_TURN + random.uniform(-TASSEL_SPREAD, TASSEL_SPREAD, STRANDS)
    lengths = size_cm * random.normal(0.97, 0.03, STRANDS).clip(0.85, 1.0)
    along = steps[None, :] * lengths[:, None]
    bunched = np.minimum(1.0, 0.35 + along / size_cm)
    turn = TASSEL_TURN + (turns[:, None] - TASSEL_TURN) * bunched
    radius = np.interp(along, down, shape.radius_cm[::-1]) + LIFT_CM
    height = np.interp(along, down, shape.height_cm[::-1]) + LIFT_CM
    shade = random.normal(0.9, 0.12, STRANDS)[:, None] * (1 - 0.18 * np.cos(along / 0.16))
    places = np.stack([radius * np.sin(turn), radius * np.cos(turn), height]).reshape(3, -1)
    return _discs(places, shade.reshape(-1), yarn, radius_cm=STRAND_CM)


def _discs(places: Places, light: Places, yarn: Lengths, *, radius_cm: float) -> _Discs:
    """Put spots at x, y and z, rows of `places`, each with its share of the yarn's light."""
    x, y, z = places.astype(np.float32)
    lit = light.astype(np.float32)
    return _Discs(x=x, y=y, z=z, light=lit[:, None] * yarn[None, :], radius_cm=radius_cm)


def _paint_discs(canvas: Canvas, view: Camera, discs: _Discs) -> None:
    """Paint spots as small domes, so that where two meet the nearer one shows."""
    reach = max(0.5, discs.radius_cm * view.px_per_cm)
    side = np.arange(-reach, reach + DISC_PX, DISC_PX, dtype=np.float32)
    right, down = (part.reshape(-1) for part in np.meshgrid(side, side))
    within = right**2 + down**2 <= reach**2
    right, down = right[within], down[within]
    dome = np.sqrt(np.maximum(0, 1 - (right**2 + down**2) / reach**2)).astype(np.float32)
    at_once = max(1, 400_000 // len(right))
    for first in range(0, len(discs.x), at_once):
        part = slice(first, first + at_once)
        across = view.across_px(discs.x[part])[:, None] + right
        below = view.down_px(discs.y[part], discs.z[part])[:, None] + down
        near = view.nearness(discs.y[part], discs.z[part])[:, None] + dome * discs.radius_cm
        light = discs.light[part][:, None, :] * (0.74 + 0.26 * dome)[None, :, None]
        canvas.splat(
            across=across.reshape(-1), down=below.reshape(-1), nearness=near.reshape(-1), light=light.reshape(-1, 3)
        )
