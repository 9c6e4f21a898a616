"""The hat turning in space: made ready once for a design and a tint, then painted from anywhere, many times a second.

While only the turn changes, the surface that each pixel shows stays where it is on the hat's curve, and a frame is no
more than picking stitches by their angle. A still picture is painted in finer pieces, which are averaged.
"""

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from chartmaker.appraisal import Appraisal
from chartmaker.pictures.camera import Camera, camera
from chartmaker.pictures.canvas import Canvas
from chartmaker.pictures.curve import curve_of
from chartmaker.pictures.fabric_tiles import FabricTiles, Relief
from chartmaker.pictures.flat import averaged
from chartmaker.pictures.frame import require_width
from chartmaker.pictures.hat_colours import HatColours, hat_colours
from chartmaker.pictures.lamp import lit, shadow
from chartmaker.pictures.quick import CodedPicture, QuickTiles, ground
from chartmaker.pictures.seen_map import SeenMap, right_columns, seen_halves
from chartmaker.pictures.shades import encoded
from chartmaker.pictures.shot import Shot, shot_of
from chartmaker.pictures.trims import SewnTrims, trim_room
from chartmaker.pictures.viewpoint import Viewpoint, turning_camera

PIECES = 2
"""Each pixel of a still picture is worked out in this many pieces each way, and averaged."""
MOST_PIXELS = 20_000_000
"""Pieces that are held at once; a picture of more pixels is enlarged from one of so many."""
PIXELS_AT_ONCE = 1_500_000
ROWS_AT_ONCE = 64
"""Pixels that the surface is worked out for at once, and rows that are coded at once."""
MOST_RELIEFS = 3
"""Sizes of tiles that are held; large ones take some ten megabytes each."""
FOOT_CM = 1.2
"""What is no higher above the ground casts the shadow on it."""
FRAMES = 16, 4096
"""Narrowest and widest side of a frame."""

Surface = Literal["knit", "flat"]
Pixels = NDArray[np.uint8]


@dataclass(frozen=True, slots=True, kw_only=True)
class Dress:
    """How a hat is shown."""

    tint: str = "shade"
    """One of `tints.TINTS`."""
    severity: float = 1.0
    """Of another colour vision, where the tint is one."""
    surface: Surface = "knit"
    laid: bool = False
    """Whether a tam lies flat, as on its plate."""


def prepare(appraisal: Appraisal, dress: Dress | None = None) -> "TurningHat":
    """Make a hat ready to be turned; raises ValueError for an unknown tint, or a hat that cannot lie flat."""
    return TurningHat(appraisal, dress or Dress())


@dataclass(frozen=True, slots=True, eq=False)
class _Kept:
    """What one frame leaves for the next, as long as only the turn changes."""

    view: Camera
    halves: list[Shot]
    tiles: QuickTiles
    ground: Pixels
    nearness: NDArray[np.float32]
    """Of every pixel, where trims need it."""


class TurningHat:
    """A hat of one design under one dress, which paints itself from any viewpoint."""

    def __init__(self, appraisal: Appraisal, dress: Dress) -> None:
        """Take an appraised design."""
        design = appraisal.design
        self.dress = dress
        self.curve = curve_of(design, appraisal.profile, laid=dress.laid)
        self._colours: HatColours = hat_colours(appraisal, dress.tint, severity=dress.severity)
        self._stitch_cm = design.gauge.stitch_width_cm
        self._height_per_width = design.gauge.round_height_cm / design.gauge.stitch_width_cm
        self._room = trim_room(design.hat.trims)
        self._trims = SewnTrims(self.curve, design.hat.trims, self._colours.trims)
        self._tiles = _kept_tiles(self._colours, self._stitch_cm)
        self._quick = lru_cache(maxsize=MOST_RELIEFS)(QuickTiles)
        self._kept: _Kept | None = None

    def frame(self, seen_from: Viewpoint, width_px: int, height_px: int, *, fine: bool = False) -> Pixels:
        """Paint the hat as sRGB, shape (height, width, 3): at once, or `fine`, smoothed, when it stands still.

        The hat keeps its size while it is turned and tilted. Raises ValueError for a size outside `FRAMES`.
        """
        if not all(FRAMES[0] <= side <= FRAMES[1] for side in (width_px, height_px)):
            raise ValueError(f"a frame of {width_px} × {height_px} is outside {FRAMES[0]} to {FRAMES[1]} pixels a side")
        view = turning_camera(self.curve, self._room, seen_from, width_px=width_px, height_px=height_px)
        return self._still(view, seen_from.turn) if fine else self._at_once(view, seen_from.turn)

    def picture(self, seen_from: Viewpoint, width_px: int) -> Pixels:
        """Paint the hat finely in a picture that is as tall as it needs; the zoom is left aside.

        Raises ValueError for a width that is not accepted.
        """
        require_width(width_px)
        tilt = math.radians(seen_from.tilt_degrees)
        wanted = camera(self.curve.radius_cm, self.curve.height_cm, width_px=width_px, room=self._room, tilt=tilt)
        return self._still(wanted, seen_from.turn)

    def _at_once(self, view: Camera, turn: float) -> Pixels:
        kept = self._kept
        if kept is None or kept.view != view:
            kept = self._kept = self._made_ready(view)
        pixels = kept.ground.copy()
        for half in kept.halves:
            kept.tiles.paint(pixels, half, turn=turn)
        if self._trims:
            self._trims.paint(CodedPicture(pixels, kept.nearness.copy(), view.width_px), view, turn=turn)
        return pixels.reshape(view.height_px, view.width_px, 3)

    def _made_ready(self, view: Camera) -> _Kept:
        tiles = self._tiles_for(view)
        halves = self._halves(view, tiles, right_columns(self.curve, view))
        nearness = np.full(view.width_px * view.height_px if self._trims else 0, -np.inf, dtype=np.float32)
        if self._trims:
            for seen, _ in halves:
                nearness[seen.places] = seen.nearness
        return _Kept(view, [shot for _, shot in halves], self._quick(tiles), ground(view, self._foot_cm), nearness)

    def _halves(self, view: Camera, tiles: FabricTiles, columns: slice) -> tuple[tuple[SeenMap, Shot], ...]:
        """Work out columns of the right half, and those across the middle, which differ by their light."""
        right, left = seen_halves(self.curve, view, columns)
        shot = shot_of(right, view, tiles, self._colours.cells.counts, light=lit(right, view, self.curve))
        return (right, shot), (left, shot.mirrored(left, lit(left, view, self.curve)))

    def _tiles_for(self, view: Camera) -> FabricTiles:
        stitch_px = self._stitch_cm * view.px_per_cm
        is_knitted = self.dress.surface == "knit"
        return self._tiles(Relief.of(stitch_px, height_per_width=self._height_per_width, is_knitted=is_knitted))

    @property
    def _foot_cm(self) -> float:
        """Radius of what stands on the ground."""
        curve = self.curve
        return float(curve.radius_cm[curve.height_cm <= curve.foot_cm + FOOT_CM].max())

    def _still(self, wanted: Camera, turn: float) -> Pixels:
        pixels = wanted.width_px * wanted.height_px
        pieces = PIECES if pixels * PIECES**2 <= MOST_PIXELS else 1
        shrink = min(1.0, math.sqrt(MOST_PIXELS / pixels))
        fine = wanted if shrink == 1 else _shrunk(wanted, shrink)
        seen = _developed(self._painted(fine.magnified(pieces), turn), pieces)
        return seen if shrink == 1 else _enlarged(seen, wanted)

    def _painted(self, view: Camera, turn: float) -> Canvas:
        """Paint fabric, shadow and trims on a fresh canvas, a strip of columns at a time."""
        canvas = Canvas(view.height_px, view.width_px)
        tiles = self._tiles_for(view)
        at_once = max(1, PIXELS_AT_ONCE // view.height_px)
        right = right_columns(self.curve, view)
        for first in range(right.start, right.stop, at_once):
            columns = slice(first, min(first + at_once, right.stop))
            for seen, shot in self._halves(view, tiles, columns):
                values, light = shot.values(turn, tiles)
                canvas.light.reshape(-1, 3)[seen.places] = tiles.light[values] * light[:, None]
                canvas.nearness.reshape(-1)[seen.places] = seen.nearness
        self._trims.paint(canvas, view, turn=turn)
        for top in range(0, view.height_px, ROWS_AT_ONCE):
            rows = slice(top, min(top + ROWS_AT_ONCE, view.height_px))
            kept = shadow(view, self._foot_cm, rows)
            kept[np.isfinite(canvas.nearness[rows])] = 1
            canvas.light[rows] *= kept[..., None]
        return canvas


def _kept_tiles(colours: HatColours, stitch_cm: float) -> Callable[[Relief], FabricTiles]:
    """Give what makes tiles, and holds the last few sizes of them: a zoom passes through many."""

    @lru_cache(maxsize=MOST_RELIEFS)
    def tiles(relief: Relief) -> FabricTiles:
        return FabricTiles(colours.cells, colours.linear, relief=relief, stitch_cm=stitch_cm)

    return tiles


def _developed(canvas: Canvas, pieces: int) -> Pixels:
    """Average and code the canvas, a strip at a time."""
    strips = range(0, canvas.height_px, ROWS_AT_ONCE * pieces)
    return np.concatenate(
        [encoded(averaged(canvas.light[top : top + ROWS_AT_ONCE * pieces], pieces)) for top in strips]
    )


def _shrunk(view: Camera, share: float) -> Camera:
    width, height = (max(1, math.floor(side * share)) for side in (view.width_px, view.height_px))
    return replace(view, width_px=width, height_px=height, px_per_cm=view.px_per_cm * width / view.width_px)


def _enlarged(seen: Pixels, wanted: Camera) -> Pixels:
    larger = Image.fromarray(seen).resize((wanted.width_px, wanted.height_px), Image.Resampling.BICUBIC)
    return np.asarray(larger, dtype=np.uint8)
