"""A second implementation of the worn hat, to compare with: its surface cut into points that fall into the picture.

Every round is cut into points closer than a pixel; each takes the light of the fabric there and falls into the picture
where the camera puts it, the nearest point last. The seam between the last stitch and the first is at the back.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from chartmaker.knit.layout import Fabric
from chartmaker.knit.profile import Profile
from chartmaker.model.design import Design
from chartmaker.pictures.camera import Camera, camera
from chartmaker.pictures.canvas import Canvas
from chartmaker.pictures.cells import NO_STITCH, FlatCells, purl_of_repeat
from chartmaker.pictures.curve import curve_of
from chartmaker.pictures.flat import averaged
from chartmaker.pictures.frame import require_width
from chartmaker.pictures.knit import Surface, tile_size
from chartmaker.pictures.outline import Outline, eased, outline, softened
from chartmaker.pictures.shades import LetterColours, encoded
from chartmaker.pictures.trims import SewnTrims, trim_room

PIECES = 2
"""Each pixel is worked out in this many pieces each way, and averaged."""
MOST_PIXELS = 20_000_000
"""Pieces that are worked out at once; a picture of more pixels is enlarged from one of so many."""
ROWS_AT_ONCE = 64
MOST_POINTS = 400_000
"""Rows of pixels, and points of the surface, that are worked out at once."""
POINT_PX = 0.62
"""Distance of two points of the surface, in pieces: below 1/√2, so that no piece between them stays empty."""
LIGHT = (-0.50, 0.62, 0.60)
"""Direction to a large soft lamp: right, towards the eye, up; of length about 1."""
SHADE_SIDE, LIT_SIDE = 0.25, 1.12
"""Factor on the light where the fabric faces away from the lamp, and where it faces it."""

SHADOW, SHADOW_CM = 0.34, 1.3
"""How much the ground is darkened at the hat's foot, and the distance over which that fades."""
INSIDE = 0.30
"""Factor on the light of the inside of a hat that is not closed yet."""

Points = NDArray[np.float32]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Ring:
    """A strip of the surface, one round high: what is knitted there, and its lower and upper edge."""

    number: int
    counts: tuple[int, int]
    """Stitches of the round, and of the one above."""
    radius_cm: tuple[float, float]
    height_cm: tuple[float, float]
    outwards: float
    """Part away from the axis of the direction that it faces."""
    upwards: float

    @property
    def slope_cm(self) -> float:
        """Length along the fabric from edge to edge."""
        return math.hypot(self.radius_cm[1] - self.radius_cm[0], self.height_cm[1] - self.height_cm[0])

    def at(self, part: Points) -> tuple[Points, Points]:
        """Give radius and height between the edges, 0 at the lower and 1 at the upper."""
        radius, height = (
            np.float32(low) + part * np.float32(high - low) for low, high in (self.radius_cm, self.height_cm)
        )
        return radius, height


def draw_worn(
    design: Design, fabric: Fabric, profile: Profile, colours: LetterColours, *, width_px: int
) -> NDArray[np.uint8]:
    """Paint the worn hat on the neutral surround; shape (height, width, 3), the height as the hat needs it.

    Raises ValueError for a width that is not accepted.
    """
    require_width(width_px)
    shape = eased(outline(profile), round_cm=design.gauge.round_height_cm)
    wanted = hat_camera(shape, design, width_px=width_px)
    pixels = wanted.width_px * wanted.height_px
    pieces = PIECES if pixels * PIECES**2 <= MOST_PIXELS else 1
    shrink = min(1.0, math.sqrt(MOST_PIXELS / pixels))
    fine = hat_camera(shape, design, width_px=math.floor(width_px * shrink)).magnified(pieces)
    seen = _developed(_painted(design, fabric, profile, shape, colours, view=fine), pieces)
    return seen if shrink == 1 else _enlarged(seen, wanted)


def _painted(
    design: Design, fabric: Fabric, profile: Profile, shape: Outline, colours: LetterColours, *, view: Camera
) -> Canvas:
    """Paint fabric, trims and shadow on a fresh canvas."""
    canvas = Canvas(view.height_px, view.width_px)
    ratio = design.gauge.round_height_cm / design.gauge.stitch_width_cm
    size = tile_size(design.gauge.stitch_width_cm * view.px_per_cm)
    surface = Surface(_ragged(design, fabric), colours, height_per_width=ratio, size=size)
    for ring in _rings(shape, fabric):
        turns = _seen_turns(view, ring, inside_shows=shape.is_open)
        if len(turns):
            _paint_ring(canvas, view, surface, ring, turns)
    SewnTrims(curve_of(design, profile), design.hat.trims, colours).paint(canvas, view, turn=0.0)
    _cast_shadow(canvas, view, float(shape.radius_cm[0]))
    return canvas


def _developed(canvas: Canvas, pieces: int) -> NDArray[np.uint8]:
    """Average and code the canvas, a strip at a time."""
    strips = range(0, canvas.height_px, ROWS_AT_ONCE * pieces)
    return np.concatenate(
        [encoded(averaged(canvas.light[top : top + ROWS_AT_ONCE * pieces], pieces)) for top in strips]
    )


def hat_camera(shape: Outline, design: Design, *, width_px: int) -> Camera:
    """Fit the hat and what is sewn on it into a picture."""
    return camera(shape.radius_cm, shape.height_cm, width_px=width_px, room=trim_room(design.hat.trims))


def _enlarged(seen: NDArray[np.uint8], wanted: Camera) -> NDArray[np.uint8]:
    larger = Image.fromarray(seen).resize((wanted.width_px, wanted.height_px), Image.Resampling.BICUBIC)
    return np.asarray(larger, dtype=np.uint8)


def _cast_shadow(canvas: Canvas, view: Camera, radius_cm: float) -> None:
    """Darken the ground around the foot of the hat, where nothing stands in front of it; a strip at a time."""
    x = (np.arange(view.width_px, dtype=np.float32) + 0.5 - view.width_px / 2) / view.px_per_cm
    for top in range(0, view.height_px, ROWS_AT_ONCE):
        rows = slice(top, min(top + ROWS_AT_ONCE, view.height_px))
        down = np.arange(rows.start, rows.stop, dtype=np.float32) + 0.5
        up = (view.height_px / 2 - down) / view.px_per_cm + view.middle_cm
        far = np.hypot(x[None, :], up[:, None] / math.sin(view.tilt)) - radius_cm
        kept = 1 - SHADOW * np.exp(-np.maximum(far, 0) / SHADOW_CM)
        kept[np.isfinite(canvas.nearness[rows])] = 1
        canvas.light[rows] *= kept[..., None].astype(np.float32)


def _rings(shape: Outline, fabric: Fabric) -> Iterator[_Ring]:
    """Walk the strips of the surface from the cast-on edge up; a strip above the last round closes the top with it."""
    outwards, upwards = (softened(part) for part in shape.outward())
    for number in range(len(shape.slope_cm)):
        here = min(number, fabric.rounds - 1)
        yield _Ring(
            number=here,
            counts=(fabric.counts[here], fabric.counts[min(here + 1, fabric.rounds - 1)]),
            radius_cm=(float(shape.radius_cm[number]), float(shape.radius_cm[number + 1])),
            height_cm=(float(shape.height_cm[number]), float(shape.height_cm[number + 1])),
            outwards=float(outwards[number]),
            upwards=float(upwards[number]),
        )


def _seen_turns(view: Camera, ring: _Ring, *, inside_shows: bool) -> Points:
    """Give the angles, in radians from the front to the right, of the points of a ring that can be seen."""
    around_px = 2 * math.pi * max(ring.radius_cm) * view.px_per_cm
    count = max(8, math.ceil(around_px / POINT_PX))
    turns = np.pi - (np.arange(count, dtype=np.float32) + 0.5) * np.float32(2 * np.pi / count)
    towards = ring.outwards * np.cos(turns) * math.cos(view.tilt) + ring.upwards * math.sin(view.tilt)
    return np.asarray(turns if inside_shows else turns[towards > -0.02], dtype=np.float32)


def _lit(view: Camera, ring: _Ring, turns: Points) -> Points:
    """Give the factor of the lamp's soft light at angles round the hat; the inside is in the dark."""
    sine, cosine = np.sin(turns), np.cos(turns)
    towards = ring.outwards * (sine * LIGHT[0] + cosine * LIGHT[1]) + ring.upwards * LIGHT[2]
    faces = ring.outwards * cosine * math.cos(view.tilt) + ring.upwards * math.sin(view.tilt) > -0.02
    lit = SHADE_SIDE + (LIT_SIDE - SHADE_SIDE) * (0.5 + 0.5 * towards)
    return np.where(faces, lit, INSIDE).astype(np.float32)


def _paint_ring(canvas: Canvas, view: Camera, surface: Surface, ring: _Ring, turns: Points) -> None:
    """Paint one strip, a few of its rows of points at a time."""
    lit = _lit(view, ring, turns)
    share = 0.5 - turns.astype(np.float64) / (2 * np.pi)
    sine, cosine = np.sin(turns), np.cos(turns)
    count = max(1, math.ceil(ring.slope_cm * view.px_per_cm / POINT_PX))
    rows_at_once = max(1, MOST_POINTS // len(turns))
    for first in range(0, count, rows_at_once):
        part = (np.arange(first, min(first + rows_at_once, count), dtype=np.float64)[:, None] + 0.5) / count
        radius, height = ring.at(part.astype(np.float32))
        deep = radius * cosine
        places, points = canvas.claim(
            across=view.across_px(radius * sine).reshape(-1),
            down=view.down_px(deep, height).reshape(-1),
            nearness=view.nearness(deep, height).reshape(-1),
        )
        row, turn = np.divmod(points, len(turns))
        around = share[turn]
        above = (around * ring.counts[1]).astype(np.intp)
        light = surface.light_at(ring.number + part[row, 0], around * ring.counts[0], above=above)
        canvas.paint(places, light * lit[turn, None])


def _ragged(design: Design, fabric: Fabric) -> FlatCells:
    """Set every round flush, stitch 1 in column 0, with nothing beyond its last stitch."""
    shape = (fabric.rounds, max(fabric.counts))
    letters = np.full(shape, NO_STITCH, dtype=np.uint8)
    purl = np.zeros(shape, dtype=np.bool_)
    for number, (band, line) in enumerate(design.rounds()):
        count = fabric.counts[number]
        letters[number, :count] = fabric.letters[fabric.round(number)]
        purl[number, :count] = np.tile(purl_of_repeat(band.texture, len(line)), band.times)
    return FlatCells(letters, purl)
