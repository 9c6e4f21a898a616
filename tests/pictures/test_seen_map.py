"""Which surface a pixel shows, against plane and solid geometry and against a slow search along each ray."""

import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.model.hat import FOLD_WAYS, Fold
from chartmaker.pictures.camera import Camera
from chartmaker.pictures.curve import Curve, curve_of
from chartmaker.pictures.seen_map import SeenMap, right_columns, seen_halves, seen_in_columns
from chartmaker.pictures.viewpoint import Viewpoint, turning_camera

EXAMPLES = Path(__file__).parents[2] / "examples"
RADIUS = 9.0


def line(radius: list[float] | np.ndarray, height: list[float] | np.ndarray) -> Curve:
    radius, height = np.array(radius, dtype=float), np.array(height, dtype=float)
    return Curve(radius, height, np.arange(len(radius), dtype=float), np.ones(len(radius)))


def tube(tall: float = 14.0) -> Curve:
    return line([RADIUS] * 15, np.linspace(0, tall, 15))


def half_ball() -> Curve:
    angle = np.linspace(0, math.pi / 2, 60)
    return line(RADIUS * np.cos(angle), RADIUS * np.sin(angle))


def camera(curve: Curve, tilt: float, side: int = 400) -> Camera:
    return turning_camera(curve, (0, 0), Viewpoint(tilt_degrees=tilt), width_px=side, height_px=side)


def whole(curve: Curve, view: Camera) -> SeenMap:
    return seen_in_columns(curve, view, slice(0, view.width_px))


@pytest.mark.parametrize("tilt", [0, 20, -20, 60, -75])
def test_a_tube_covers_its_projection_less_what_one_sees_through(tilt: float) -> None:
    # A rectangle between two half ellipses, less the lens in which the two open ends overlap.
    sine, cosine = abs(math.sin(math.radians(tilt))), math.cos(math.radians(tilt))
    apart = 14 * cosine / max(sine, 1e-9)
    lens = (
        2 * RADIUS**2 * math.acos(apart / (2 * RADIUS)) - apart / 2 * math.sqrt(4 * RADIUS**2 - apart**2)
        if apart < 2 * RADIUS
        else 0.0
    )
    shown = 2 * RADIUS * 14 * cosine + math.pi * RADIUS**2 * sine - lens * sine
    view = camera(tube(), tilt)
    assert len(whole(tube(), view).places) / view.px_per_cm**2 == pytest.approx(shown, rel=0.01)


def test_a_tube_seen_along_its_axis_covers_nothing_but_its_edge() -> None:
    assert len(whole(tube(), camera(tube(), 90)).places) < 4 * 400


@pytest.mark.parametrize(
    ("tilt", "share"), [(0, 0.5), (90, 1.0), (-90, 1.0), (30, 0.75), (-50, 0.5 + math.sin(math.radians(50)) / 2)]
)
def test_half_a_ball_covers_half_a_disc_and_half_an_ellipse(tilt: float, share: float) -> None:
    view = camera(half_ball(), tilt)
    covered = len(whole(half_ball(), view).places) / view.px_per_cm**2
    assert covered == pytest.approx(share * math.pi * RADIUS**2, rel=0.01)


def test_from_above_every_height_of_half_a_ball_is_a_circle() -> None:
    view = camera(half_ball(), 90)
    seen = whole(half_ball(), view)
    row, column = np.divmod(seen.places, view.width_px)
    from_middle = np.hypot(column + 0.5 - 200, row + 0.5 - 200) / view.px_per_cm
    assert seen.height == pytest.approx(np.sqrt(np.maximum(0, RADIUS**2 - from_middle**2)), abs=0.45)
    inner = from_middle < 0.9 * RADIUS
    assert seen.height[inner] == pytest.approx(np.sqrt(RADIUS**2 - from_middle[inner] ** 2), abs=0.06)


def test_from_above_angles_run_round_the_middle() -> None:
    view = camera(half_ball(), 90)
    seen = whole(half_ball(), view)
    row, column = np.divmod(seen.places, view.width_px)
    expected = np.arctan2(column + 0.5 - 200, row + 0.5 - 200)
    off = np.angle(np.exp(1j * (seen.angle - expected)))
    assert np.abs(off).max() < 1e-3


def test_from_below_the_wrong_side_is_seen_and_from_above_the_right_one() -> None:
    assert not whole(half_ball(), camera(half_ball(), -90)).shows_right.any()
    assert whole(half_ball(), camera(half_ball(), 90)).shows_right.all()
    from_aslant = whole(tube(), camera(tube(), 30))
    assert 0.02 < 1 - from_aslant.shows_right.mean() < 0.5


@pytest.mark.parametrize("width", [301, 302])
@pytest.mark.parametrize("tilt", [-40, 0, 18, 90])
def test_both_halves_together_are_the_whole(width: int, tilt: float) -> None:
    curve = half_ball()
    view = turning_camera(curve, (0, 0), Viewpoint(tilt_degrees=tilt), width_px=width, height_px=240)
    alone = whole(curve, view)
    halves = seen_halves(curve, view, right_columns(curve, view))
    joined = {}
    for half in halves:
        joined.update(zip(half.places.tolist(), zip(half.row.tolist(), half.height.tolist(), strict=True), strict=True))
    assert sorted(joined) == alone.places.tolist()
    rows = np.array([joined[place][0] for place in alone.places.tolist()])
    assert np.abs(rows - alone.row).max() < 1e-3


def slow_search(curve: Curve, view: Camera, x: float, row: int) -> tuple[float, float] | None:
    """Meet every frustum with a ray in full precision, by the quadratic; give nearness and row of the nearest."""
    cosine, sine = math.cos(view.tilt), math.sin(view.tilt)
    up = (view.height_px / 2 - row - 0.5) / view.px_per_cm + view.middle_cm
    origin, way = (x, -up * sine, up * cosine), (0.0, cosine, sine)
    best = None
    for piece in range(len(curve.row) - 1):
        (r0, r1), (z0, z1) = curve.radius_cm[piece : piece + 2], curve.height_cm[piece : piece + 2]
        # The radius goes straight with the part p along the piece, and so does the height: both meet the ray at s.
        parts = []
        if abs(z1 - z0) < 1e-9:
            at = (z0 - origin[2]) / way[2] if abs(way[2]) > 1e-9 else math.nan
            reached = math.hypot(x, origin[1] + at * way[1])
            if abs(r1 - r0) > 1e-12:
                parts.append((at, (reached - r0) / (r1 - r0)))
        else:
            slope = (r1 - r0) / (z1 - z0)
            base = r0 + slope * (origin[2] - z0)
            a = way[1] ** 2 - (slope * way[2]) ** 2
            b = origin[1] * way[1] - base * slope * way[2]
            c = x**2 + origin[1] ** 2 - base**2
            under = b * b - a * c
            if under >= 0 and abs(a) > 1e-12:
                for sign in (1, -1):
                    at = (-b + sign * math.sqrt(under)) / a
                    parts.append((at, (origin[2] + at * way[2] - z0) / (z1 - z0)))
        for at, part in parts:
            if -1e-9 <= part <= 1 + 1e-9 and (best is None or at > best[0]) and r0 + part * (r1 - r0) > -1e-9:
                best = at, curve.row[piece] + part * (curve.row[piece + 1] - curve.row[piece])
    return best


@pytest.mark.parametrize("tilt", [-60, -15, 0.5, 18, 50, 89])
@pytest.mark.parametrize("state", ["worn", "up", "in", "roll", "laid"])
def test_the_nearest_surface_is_the_one_that_a_slow_search_finds(state: str, tilt: float) -> None:
    design = read_design(EXAMPLES / "towpath-tam.hat.toml")
    if state in FOLD_WAYS:
        design = replace(design, hat=replace(design.hat, fold=Fold(state, 9)))
    curve = curve_of(design, appraise(design).profile, laid=state == "laid")
    view = camera(curve, tilt, 160)
    seen = whole(curve, view)
    entry = np.full(160 * 160, -1)
    entry[seen.places] = np.arange(len(seen.places))
    places = np.random.default_rng(5).integers(0, 160, (250, 2)).tolist()
    agreed = 0
    for row, column in places:
        slow = slow_search(curve, view, (column + 0.5 - 80) / view.px_per_cm, row)
        fast = int(entry[row * 160 + column])
        if slow is None or fast < 0:
            agreed += slow is None and fast < 0
        else:
            agreed += abs(slow[0] - float(seen.nearness[fast])) < 0.1
    # A few pixels lie on an edge, where either answer is as good.
    assert agreed >= 0.98 * len(places)
