"""Pompom and tassel on the worn hat, made of short strands that are placed by a fixed seed."""

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.hat import Trim
from chartmaker.pictures.camera import Camera
from chartmaker.pictures.curve import Curve
from chartmaker.pictures.lamp import lamp
from chartmaker.pictures.shades import LetterColours

SEED = 7
MOST_POINTS = 400_000
"""Points that are worked out at once."""
TUFTS = 5200
"""Cut ends of yarn that show on a pompom."""
TUFT_PART = 0.036
"""Radius of a cut end, as a part of the pompom's."""
HEART_TUFTS, HEART, HEART_PART = 900, 0.80, 0.09
"""The dark heart behind the cut ends: its spots, and its radius and theirs as parts of the pompom's."""
SUNK = 0.22
"""How deep a pompom sits in the crown, as a part of its radius."""
STRANDS = 90
TASSEL_TURN = 0.42
"""How far right of the front a tassel falls, in radians."""
TASSEL_HALF = 0.115
"""Half the width of a tassel's skirt, as a part of its length."""
TASSEL_PLACES, TASSEL_WIDTHS = (0.0, 0.07, 0.15, 0.30, 1.0), (0.10, 0.62, 0.36, 0.72, 1.0)
"""How wide a tassel is along its length, as parts of both: top, head, tied neck, skirt, ends."""
STRAND_CM = 0.075
"""Radius of a tassel's strand."""
DOME_EDGE = 0.74
"""Factor on the light at the edge of a disc."""
POMPOM_LAMP = (-0.45, 0.35, 0.75)
"""Where the light on a pompom comes from, for the usual tilt; as `lamp.LIGHT`."""

Lengths = NDArray[np.float32]
Places = NDArray[np.float64]


class Target(Protocol):
    """What is painted on: a canvas, or a picture that is wanted at once."""

    @property
    def disc_px(self) -> float:
        """Distance of the points that a disc is painted with."""

    def claim(self, *, across: Lengths, down: Lengths, nearness: Lengths) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
        """Find the points that are nearer than what is there."""

    def paint(self, places: NDArray[np.intp], light: Lengths) -> None:
        """Put linear light where points were claimed."""


@dataclass(frozen=True, slots=True)
class _Pose:
    """How the hat stands before the eye."""

    view: Camera
    turn: float
    """As a part of a whole turn."""

    def turned(self, places: Places) -> Places:
        """Turn points about the axis, the front to the right."""
        sine, cosine = math.sin(2 * math.pi * self.turn), math.cos(2 * math.pi * self.turn)
        x, y, z = places
        return np.stack([x * cosine + y * sine, y * cosine - x * sine, z])


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class _Discs:
    """Round spots in space, all of one radius; arrays of shape (discs,), in cm, and the light of each, (discs, 3)."""

    x: Lengths
    y: Lengths
    z: Lengths
    light: Lengths
    radius_cm: float

    def outside(self, curve: Curve) -> "_Discs":
        """Leave out the spots that sink into the hat, where only its inside could show them."""
        order = np.argsort(curve.height_cm, kind="stable")
        height, radius = curve.height_cm[order], np.maximum.accumulate(curve.radius_cm[order][::-1])[::-1]
        kept = np.hypot(self.x, self.y) >= np.interp(self.z - self.radius_cm, height, radius, right=0.0)
        return replace(self, x=self.x[kept], y=self.y[kept], z=self.z[kept], light=self.light[kept])


def trim_room(trims: tuple[Trim, ...]) -> tuple[float, float]:
    """Give the radius and the height, in cm, that trims need above the top of the hat."""
    pompoms = [trim.size_cm for trim in trims if trim.kind == "pompom"]
    largest = max(pompoms, default=0.0)
    knot = 1.0 if len(pompoms) < len(trims) else 0.0
    return largest / 2, max(largest * (1 - SUNK / 2), knot)


class SewnTrims:
    """The trims of a hat, whose strands are placed once and turn with it."""

    def __init__(self, curve: Curve, trims: tuple[Trim, ...], colours: LetterColours) -> None:
        """Place pompoms and tassels on top of the hat."""
        self._curve, self._trims, self._linear = curve, trims, colours.linear

    def __bool__(self) -> bool:
        """Tell whether there are any."""
        return bool(self._trims)

    def paint(self, target: Target, view: Camera, *, turn: float) -> None:
        """Paint each, turned by a part of a whole turn."""
        for discs in self._discs(_Pose(view, turn)):
            _paint_discs(target, view, discs.outside(self._curve))

    def _discs(self, pose: _Pose) -> Iterator[_Discs]:
        random = np.random.default_rng(SEED)
        for trim in self._trims:
            yarn = self._linear[ord(trim.letter) - ord("A")]
            if trim.kind == "pompom":
                yield from _pompom(trim.size_cm, self._curve, yarn, random, pose)
            else:
                yield from _tassel(trim.size_cm, self._curve, yarn, random, pose)


def _pompom(
    size_cm: float, shape: Curve, yarn: Lengths, random: np.random.Generator, pose: _Pose
) -> tuple[_Discs, ...]:
    """Ruffle cut ends over a ball, and put a dark heart behind them that lets nothing through."""
    radius = size_cm / 2
    middle = np.array([[0.0], [0.0], [shape.top_cm + radius * (1 - SUNK)]])
    heart = pose.turned(_ball(HEART_TUFTS))
    core = _discs(heart * (HEART * radius) + middle, _lit(heart, pose.view) * 0.5, yarn, radius_cm=radius * HEART_PART)
    ends = pose.turned(_ball(TUFTS))
    reach = random.normal(0.93, 0.045, TUFTS).clip(0.78, 1.0)
    light = _lit(ends, pose.view) * random.normal(1, 0.08, TUFTS).clip(0.75, 1.25) * (0.45 + 2.5 * (reach - 0.78))
    return core, _discs(ends * (reach * radius) + middle, light, yarn, radius_cm=radius * TUFT_PART)


def _ball(count: int) -> Places:
    """Spread points evenly over a ball of radius 1, along a golden spiral; shape (3, count)."""
    number = np.arange(count) + 0.5
    up = 1 - 2 * number / count
    turn, level = number * math.pi * (3 - math.sqrt(5)), np.sqrt(1 - up**2)
    return np.stack([level * np.sin(turn), level * np.cos(turn), up])


def _lit(ball: Places, view: Camera) -> Places:
    """Give the light that falls on points of a ball."""
    right, deep, up = lamp(view, POMPOM_LAMP)
    return np.asarray(0.78 + 0.42 * (ball[0] * right + ball[1] * deep + ball[2] * up))


def _tassel(
    size_cm: float, shape: Curve, yarn: Lengths, random: np.random.Generator, pose: _Pose
) -> tuple[_Discs, ...]:
    """Let strands fall from the top along the outline, as far as the tassel is long."""
    steps = np.linspace(0, 1, max(16, math.ceil(size_cm / STRAND_CM * 1.6)))
    part = steps[None, :] * random.normal(0.96, 0.025, STRANDS).clip(0.88, 1.0)[:, None]
    width = np.interp(part, TASSEL_PLACES, TASSEL_WIDTHS) * (TASSEL_HALF * size_cm)
    aside, deep = _bundle(STRANDS, random)
    down = shape.length_cm[-1] - shape.length_cm[::-1]
    lift = width * (1 + deep[:, None]) * 0.7 + STRAND_CM
    radius = np.interp(part * size_cm, down, shape.radius_cm[::-1]) + lift
    height = np.interp(part * size_cm, down, shape.height_cm[::-1]) + lift
    off, sine, cosine = width * aside[:, None], math.sin(TASSEL_TURN), math.cos(TASSEL_TURN)
    light = (0.80 + 0.30 * deep - 0.12 * aside) * random.normal(1, 0.10, STRANDS)
    shade = light[:, None] * np.where(np.abs(part - TASSEL_PLACES[2]) < 0.018, 0.55, 1.0)
    places = np.stack([radius * sine + off * cosine, radius * cosine - off * sine, height]).reshape(3, -1)
    return (_discs(pose.turned(places), shade.reshape(-1), yarn, radius_cm=STRAND_CM),)


def _bundle(count: int, random: np.random.Generator) -> tuple[Places, Places]:
    """Spread strands over the round section of a bundle: how far aside and how far forward each is, -1 to 1."""
    out, turn = np.sqrt(random.uniform(0, 1, count)), random.uniform(0, 2 * math.pi, count)
    return out * np.cos(turn), out * np.sin(turn)


def _discs(places: Places, light: Places, yarn: Lengths, *, radius_cm: float) -> _Discs:
    """Put spots at x, y and z, rows of `places`, each with its share of the yarn's light."""
    x, y, z = places.astype(np.float32)
    lit = light.astype(np.float32)
    return _Discs(x=x, y=y, z=z, light=lit[:, None] * yarn[None, :], radius_cm=radius_cm)


def _paint_discs(canvas: Target, view: Camera, discs: _Discs) -> None:
    """Paint spots as small domes, so that where two meet the nearer one shows."""
    reach = max(0.5, discs.radius_cm * view.px_per_cm)
    beside = math.ceil(reach / canvas.disc_px)
    side = np.arange(-beside, beside + 1, dtype=np.float32) * np.float32(canvas.disc_px)
    right, down = (part.reshape(-1) for part in np.meshgrid(side, side))
    within = right**2 + down**2 <= reach**2
    right, down = right[within], down[within]
    dome = np.sqrt(np.maximum(0, 1 - (right**2 + down**2) / reach**2)).astype(np.float32)
    at_once = max(1, MOST_POINTS // len(right))
    for first in range(0, len(discs.x), at_once):
        part = slice(first, first + at_once)
        across = view.across_px(discs.x[part])[:, None] + right
        below = view.down_px(discs.y[part], discs.z[part])[:, None] + down
        near = view.nearness(discs.y[part], discs.z[part])[:, None] + dome * discs.radius_cm
        places, points = canvas.claim(across=across.reshape(-1), down=below.reshape(-1), nearness=near.reshape(-1))
        disc, spot = np.divmod(points, len(right))
        canvas.paint(places, discs.light[part][disc] * (DOME_EDGE + (1 - DOME_EDGE) * dome[spot])[:, None])
