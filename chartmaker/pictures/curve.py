"""The hat as one line in space, turned about its axis: worn with its fold, or a tam laid flat on its plate.

The line follows the fabric from the cast-on edge, so that a fold only leads it down and up again, and which face of the
fabric is seen follows from the line's own direction: its right side lies to the right of the way up.
"""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.profile import Profile
from chartmaker.model.design import Design
from chartmaker.model.hat import Fold
from chartmaker.pictures.outline import Outline, eased, outline, softened

THICKNESS_CM = 0.32
"""From the middle of stranded fabric to the middle of what lies on it: common practice, no source."""
FOLD_STEPS = 8
"""Vertices round the bend of a fold."""
ROLL_TURNS, ROLL_TIGHTENS = 1.2, 0.45
"""How far an edge rolls in, in whole turns, and how much narrower it is at its end: by eye, no source."""
ROLL_STEPS = 40
LENS = (0.12, 0.07)
"""How thick a laid tam stands above and below its rim, as parts of its radius: by eye, no source."""
RIB_AT_REST = 0.82
"""How wide an opening draws in when nothing stretches it, as a part of its worn radius: common practice, no source."""
CREASE, CREASE_CM = 0.45, 0.5
"""Light that is lost where a turned-up edge lies on the hat, and how far from it that fades."""
PER_ROUND = 6
"""Points of the line for each round of a laid tam."""

Lengths = NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Curve:
    """Points of the line from the cast-on edge on, arrays of one shape; lengths in cm."""

    radius_cm: Lengths
    height_cm: Lengths
    row: Lengths
    """Rounds from the cast-on edge, with fractions; the strip that closes the top goes on past the last."""
    light: Lengths
    """What is left of the light beside something that stands in it; 1 in the open."""
    body_from: float = 0.0
    """The row from which the wrong side is the inside of the hat; below it, it belongs to a fold."""

    def normals(self) -> tuple[Lengths, Lengths]:
        """Give where the right side faces at each point: its part away from the axis and its part upwards."""
        run, rise = np.diff(self.radius_cm), np.diff(self.height_cm)
        length = np.maximum(np.hypot(run, rise), 1e-9)
        parts = (_at_points(softened(rise / length)), _at_points(softened(-run / length)))
        whole = np.maximum(np.hypot(*parts), 1e-9)
        return parts[0] / whole, parts[1] / whole

    @property
    def length_cm(self) -> Lengths:
        """Way along the fabric to each point."""
        steps = np.hypot(np.diff(self.radius_cm), np.diff(self.height_cm))
        return np.concatenate([[0.0], np.cumsum(steps)])

    @property
    def reach_cm(self) -> float:
        """Largest radius."""
        return float(self.radius_cm.max())

    @property
    def top_cm(self) -> float:
        """Height of what is highest."""
        return float(self.height_cm.max())

    @property
    def foot_cm(self) -> float:
        """Height of what is lowest."""
        return float(self.height_cm.min())


def curve_of(design: Design, profile: Profile, *, laid: bool = False) -> Curve:
    """Lead the line along the hat as it is worn, or as a tam lies flat.

    Raises ValueError where a hat that is no tam is to lie flat.
    """
    shape = outline(profile)
    if laid:
        if not can_lie_flat(design):
            raise ValueError("only a tam lies flat on a plate; this hat is none")
        return _laid(shape, design.hat.fold, round_cm=design.gauge.round_height_cm)
    shape = eased(shape, round_cm=design.gauge.round_height_cm)
    fold = design.hat.fold
    if fold is None:
        return _line(shape.radius_cm, shape.height_cm, np.arange(len(shape.radius_cm), dtype=np.float64))
    body = _Body(shape, min(fold.rounds, len(profile.rise_cm) - 1), design.gauge.round_height_cm)
    return _rolled(body) if fold.way == "roll" else _folded(body, outside=fold.way == "up")


def can_lie_flat(design: Design) -> bool:
    """Tell whether `curve_of` can lay the hat flat."""
    return design.hat.shape == "tam"


@dataclass(frozen=True, slots=True, eq=False)
class _Body:
    """The hat above its folded rounds."""

    shape: Outline
    rounds: int
    """That are folded."""
    round_cm: float

    def above(self, row: float) -> tuple[Lengths, Lengths, Lengths]:
        """Give radius, height above the first point, and row of the points from `row` on."""
        rows = np.arange(len(self.shape.radius_cm), dtype=np.float64)
        kept = np.concatenate([[row], rows[rows > row]])
        height = np.interp(kept, rows, self.shape.height_cm)
        return np.interp(kept, rows, self.shape.radius_cm), height - height[0], kept


def _folded(body: _Body, *, outside: bool) -> Curve:
    """Lead the line down over the folded rounds, round the bend and up the hat."""
    bend = min(math.pi * THICKNESS_CM / 4 / body.round_cm, body.rounds / 2)
    radius, height, rows = body.above(body.rounds + bend)
    off = THICKNESS_CM if outside else -THICKNESS_CM
    folded_rows = np.concatenate([np.arange(math.ceil(body.rounds - bend)), [body.rounds - bend]])
    folded_height = (body.rounds - bend - folded_rows) * body.round_cm
    folded_radius = np.interp(folded_height, height, radius) + off
    angle = np.linspace(0, math.pi, FOLD_STEPS + 1)[1:-1]
    bend_radius = radius[0] + off / 2 * (1 + np.cos(angle))
    bend_height = -THICKNESS_CM / 2 * np.sin(angle)
    bend_rows = body.rounds + bend * (2 * angle / math.pi - 1)
    edge_cm = float(folded_height[0])
    beyond = np.clip((height - edge_cm) / CREASE_CM, 0, 40)
    light = np.where(height < edge_cm, 1 - CREASE, 1 - CREASE * np.exp(-beyond)) if outside else np.ones_like(height)
    return _line(
        np.concatenate([folded_radius, bend_radius, radius]),
        np.concatenate([folded_height, bend_height, height]),
        np.concatenate([folded_rows, bend_rows, rows]),
        np.concatenate([np.ones(len(folded_rows) + len(angle)), light]),
        body_from=float(body.rounds),
    )


def _rolled(body: _Body) -> Curve:
    """Lead the line out of a spiral at the hat's foot, which shows the wrong side, and up the hat."""
    radius, height, rows = body.above(float(body.rounds))
    turned = np.linspace(0, 2 * math.pi * ROLL_TURNS, ROLL_STEPS)
    part = 1 - ROLL_TIGHTENS * turned / turned[-1]
    way = np.concatenate([[0.0], np.cumsum((part[1:] + part[:-1]) / 2 * np.diff(turned))])
    wide = body.rounds * body.round_cm / way[-1]
    roll_radius = radius[0] + wide - wide * part * np.cos(turned)
    roll_height = -wide * part * np.sin(turned)
    roll_rows = body.rounds * (1 - way / way[-1])
    light = 1 - CREASE * np.exp(-np.clip(np.abs(height - wide) / CREASE_CM, 0, 40))
    return _line(
        np.concatenate([roll_radius[:0:-1], radius]),
        np.concatenate([roll_height[:0:-1], height]),
        np.concatenate([roll_rows[:0:-1], rows]),
        np.concatenate([np.ones(len(turned) - 1), light]),
        body_from=float(body.rounds),
    )


def _laid(shape: Outline, fold: Fold | None, *, round_cm: float) -> Curve:
    """Lay a tam over a plate as wide as its widest round: the opening below, the wheel above.

    The fabric of each side is spread evenly from the rim inwards; what a fold doubles lies unseen inside.
    """
    edges = np.arange(len(shape.radius_cm), dtype=np.float64)
    first = float(min(fold.rounds, len(edges) - 2)) if fold else 0.0
    reach = float(shape.radius_cm.max())
    widest = np.flatnonzero(shape.radius_cm > reach - 1e-6)
    rim = max(float(widest[0] + widest[-1]) / 2, first)
    rows = np.linspace(first, edges[-1], math.ceil((edges[-1] - first) * PER_ROUND) + 1)
    rows = np.unique(np.concatenate([rows, [rim]]))
    along = np.interp(rows, edges, np.concatenate([[0.0], np.cumsum(np.maximum(shape.slope_cm, round_cm))]))
    at_rim = float(np.interp(rim, rows, along))
    opening = RIB_AT_REST * float(np.interp(first, edges, shape.radius_cm))
    below = reach - (reach - opening) * (at_rim - along) / max(at_rim - along[0], 1e-9)
    above = reach - (reach - shape.radius_cm[-1]) * (along - at_rim) / max(along[-1] - at_rim, 1e-9)
    radius = np.where(rows <= rim, below, above)
    bulge = np.sqrt(np.maximum(0, 1 - (radius / reach) ** 2))
    height = np.where(rows <= rim, -LENS[1], LENS[0]) * reach * bulge
    return _line(radius, height, rows)


def _line(
    radius: Lengths, height: Lengths, rows: Lengths, light: Lengths | None = None, *, body_from: float = 0.0
) -> Curve:
    """Stand the line on the ground."""
    return Curve(radius, height - height.min(), rows, np.ones_like(rows) if light is None else light, body_from)


def _at_points(values: Lengths) -> Lengths:
    """Give the means of neighbouring segments at the points between them, ends kept."""
    inner = (values[1:] + values[:-1]) / 2
    return np.concatenate([values[:1], inner, values[-1:]])
