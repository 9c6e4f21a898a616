"""Which point of the fabric each pixel shows: the nearest surface along parallel rays, for one tilt and any turn.

Every column of pixels cuts the hat in two lines, one in front and one behind, which are followed from point to point of
the hat's curve; where a piece of them passes the middle of a pixel, the pixel may show it, and the nearest piece wins.
"""

import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.camera import Camera
from chartmaker.pictures.curve import Curve

STEP_PX = 1.4
"""Length of a piece of the curve."""
STEEP = 0.2
"""Sine of the tilt from which depth is better told by the pixel's height than by its column."""

Numbers = NDArray[np.float32]
Whole = NDArray[np.int32]


@dataclass(frozen=True, slots=True, eq=False)
class SeenMap:
    """What covered pixels show; arrays of one entry for each such pixel."""

    places: Whole
    """Where in the flat picture, row by row."""
    row: Numbers
    """Rounds from the cast-on edge, with fractions."""
    angle: Numbers
    """Round the axis from the front to the right, in radians."""
    outwards: Numbers
    upwards: Numbers
    """Where the right side faces."""
    shows_right: NDArray[np.bool_]
    """Whether that is the side that is seen."""
    light: Numbers
    """What is left of it there."""
    height: Numbers
    """Above the ground in cm."""
    nearness: Numbers
    """To the eye in cm, as the camera tells it."""


@dataclass(frozen=True, slots=True, eq=False)
class _Pieces:
    """The curve in pieces of about a pixel; radius and height in pixels."""

    radius: Numbers
    height: Numbers
    row: Numbers
    light: Numbers
    outwards: Numbers
    upwards: Numbers

    @classmethod
    def of(cls, curve: Curve, px_per_cm: float) -> "_Pieces":
        length = curve.length_cm
        count = max(2, math.ceil(length[-1] * px_per_cm / STEP_PX))
        at = np.unique(np.concatenate([np.linspace(0, length[-1], count), length]))
        columns = (curve.radius_cm * px_per_cm, curve.height_cm * px_per_cm, curve.row, curve.light, *curve.normals())
        return cls(*(np.interp(at, length, column).astype(np.float32) for column in columns))


@dataclass(frozen=True, slots=True, eq=False)
class _Found:
    """Places where a piece passes the middle of a pixel."""

    place: NDArray[np.intp]
    piece: NDArray[np.intp]
    part: Numbers
    depth: Numbers
    """Towards the eye from the axis, in pixels."""
    near: Numbers
    shows_right: NDArray[np.bool_]


def right_columns(curve: Curve, view: Camera) -> slice:
    """Give the columns of a picture from its middle to the right edge of the hat."""
    first = view.width_px // 2
    return slice(first, min(view.width_px, first + math.ceil(curve.reach_cm * view.px_per_cm) + 1))


def seen_halves(curve: Curve, view: Camera, columns: slice) -> tuple[SeenMap, SeenMap]:
    """Find what the pixels of some columns of the right half show, and those across the middle, which are alike.

    The places are those of the whole picture; the middle column of an odd width is in both.
    """
    half = seen_in_columns(curve, view, columns)
    row, column = np.divmod(half.places, np.int32(columns.stop - columns.start))
    line = row * np.int32(view.width_px)
    right = line + column + np.int32(columns.start)
    left = line + np.int32(view.width_px - 1 - columns.start) - column
    return replace(half, places=right), replace(half, places=left, angle=-half.angle)


def seen_in_columns(curve: Curve, view: Camera, columns: slice) -> SeenMap:
    """Find what the pixels of some columns show, as a picture of their own."""
    across = np.arange(columns.start, columns.stop, dtype=np.float32) + np.float32(0.5 - view.width_px / 2)
    return _seen_in_columns(curve, view, across)


def _seen_in_columns(curve: Curve, view: Camera, across: Numbers) -> SeenMap:
    pieces = _Pieces.of(curve, view.px_per_cm)
    square = (pieces.radius**2)[:, None] - (across**2)[None, :]
    hit = square > 0
    crossing = _Crossing(pieces, view, across, np.sqrt(np.maximum(square, 0)), hit[1:] | hit[:-1])
    found = [crossing.found(side) for side in (1.0, -1.0)]
    near = np.full(view.height_px * len(across), -np.inf, dtype=np.float32)
    for one in found:
        np.maximum.at(near, one.place, one.near)
    which = np.full(len(near), -1, dtype=np.int32)
    behind = len(found[0].place)
    for start, one in zip((0, behind), found, strict=True):
        wins = np.flatnonzero(one.near == near[one.place])
        which[one.place[wins]] = wins + start
    places = np.flatnonzero(which >= 0)
    pick = which[places]
    place, piece, part, depth, nearness, shows_right = (
        np.concatenate([getattr(one, name) for one in found])[pick]
        for name in ("place", "piece", "part", "depth", "near", "shows_right")
    )

    def along(values: Numbers) -> Numbers:
        return _between(values, piece, part)

    x = across[place % len(across)]
    px = np.float32(view.px_per_cm)
    return SeenMap(
        places=places.astype(np.int32),
        row=along(pieces.row),
        angle=np.arctan2(x, depth),
        outwards=along(pieces.outwards),
        upwards=along(pieces.upwards),
        shows_right=shows_right,
        light=along(pieces.light),
        height=along(pieces.height) / px,
        nearness=np.asarray(nearness / px, dtype=np.float32),
    )


@dataclass(frozen=True, slots=True, eq=False)
class _Crossing:
    """The lines in which columns of pixels cut the hat, before they are followed."""

    pieces: _Pieces
    view: Camera
    across: Numbers
    """Of each column from the axis, in pixels."""
    depth: Numbers
    """How far in front of the axis the points of the curve stand in each column: (points, columns)."""
    is_there: NDArray[np.bool_]
    """Which pieces of the curve a column meets at all: (pieces, columns)."""

    def found(self, side: float) -> _Found:
        """Find where the front (side 1) or back (-1) line of each column passes the middles of pixels."""
        pieces, view = self.pieces, self.view
        cosine, sine = np.float32(math.cos(view.tilt)), np.float32(math.sin(view.tilt))
        middle = np.float32(view.height_px / 2 + view.middle_cm * view.px_per_cm - 0.5)
        down = self.depth * (sine * np.float32(side))
        down += (middle - pieces.height * cosine)[:, None]
        row = np.ceil(down).astype(np.int32)
        np.clip(row, 0, view.height_px, out=row)
        piece, column = np.nonzero((row[1:] != row[:-1]) & self.is_there)
        begin, end = row[piece, column], row[piece + 1, column]
        count, first = np.abs(end - begin), np.minimum(begin, end)
        from_down, to_down = down[piece, column], down[piece + 1, column]
        if len(count) and count.max() > 1:
            again = np.repeat(np.arange(len(count)), count)
            nth = np.arange(len(again)) - np.repeat(np.cumsum(count) - count, count)
            piece, column, from_down, to_down = piece[again], column[again], from_down[again], to_down[again]
            first = (first[again] + nth).astype(np.int32)
        at = first.astype(np.float32)
        part = np.clip((at - from_down) / (to_down - from_down), 0, 1)
        height = _between(pieces.height, piece, part)
        if abs(sine) > STEEP:
            towards = (at - middle + height * cosine) / sine
        else:
            wide = _between(pieces.radius, piece, part)
            towards = np.sqrt(np.maximum(wide**2 - self.across[column] ** 2, 0)) * np.float32(side)
        place = first.astype(np.intp) * len(self.across) + column
        # The right side lies to the right of the way along the curve, which is mirrored behind the axis.
        shows_right = (to_down < from_down) == (side > 0)
        return _Found(place, piece, part, towards, towards * cosine + height * sine, shows_right)


def _between(values: Numbers, piece: NDArray[np.intp], part: Numbers) -> Numbers:
    low = values[piece]
    return np.asarray(low + part * (values[piece + 1] - low), dtype=np.float32)
