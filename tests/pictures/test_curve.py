"""The hat's line in space: its surface against the stitches' areas, its folds and the laid tam against geometry."""

import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from chartmaker.appraisal import Appraisal, appraise
from chartmaker.files.design_reading import read_design
from chartmaker.model.hat import Fold, Hat
from chartmaker.pictures.curve import THICKNESS_CM, Curve, curve_of
from tests.builders import chart

EXAMPLES = Path(__file__).parents[2] / "examples"
STITCH_CM, ROUND_CM = 0.4, 1 / 3


def tube(*, stitches: int = 100, rounds: int = 60, hat: Hat | None = None) -> Appraisal:
    return appraise(chart(f"A | {'.' * stitches}\n" * rounds, gauge=(25.0, 30.0), hat=hat or Hat()))


def line(appraisal: Appraisal, *, laid: bool = False) -> Curve:
    return curve_of(appraisal.design, appraisal.profile, laid=laid)


def frusta_cm2(curve: Curve) -> float:
    """Sum the lateral areas of frusta, π (r₁ + r₂) s."""
    steps = np.hypot(np.diff(curve.radius_cm), np.diff(curve.height_cm))
    return float((math.pi * (curve.radius_cm[1:] + curve.radius_cm[:-1]) * steps).sum())


def test_the_surface_of_a_tube_is_the_area_of_its_stitches() -> None:
    assert frusta_cm2(line(tube())) == pytest.approx(100 * 60 * STITCH_CM * ROUND_CM)


@pytest.mark.parametrize("name", ["lockside-cap", "towpath-tam"])
def test_the_surface_of_an_example_is_the_area_of_its_stitches(name: str) -> None:
    appraisal = appraise(read_design(EXAMPLES / f"{name}.hat.toml"))
    gauge = appraisal.design.gauge
    stitches_cm2 = sum(appraisal.fabric.counts) * gauge.stitch_width_cm * gauge.round_height_cm
    assert frusta_cm2(line(appraisal)) == pytest.approx(stitches_cm2, rel=0.03)


@pytest.mark.parametrize("way", ["up", "in", "roll"])
@pytest.mark.parametrize("rounds", [6, 12])
def test_a_fold_is_as_long_as_the_rounds_that_it_takes(way: str, rounds: int) -> None:
    folded = line(tube(hat=Hat(fold=Fold(way, rounds))))
    assert folded.length_cm[-1] == pytest.approx(60 * ROUND_CM, abs=0.06)
    assert folded.row[0] == 0
    assert folded.row[-1] == 60
    assert (np.diff(folded.row) >= 0).all()


@pytest.mark.parametrize(("way", "off"), [("up", THICKNESS_CM), ("in", -THICKNESS_CM)])
def test_a_folded_edge_stands_one_thickness_off_and_shortens_the_hat(way: str, off: float) -> None:
    radius = 100 * STITCH_CM / (2 * math.pi)
    folded = line(tube(hat=Hat(fold=Fold(way, 12))))
    assert folded.radius_cm[0] == pytest.approx(radius + off)
    assert folded.top_cm == pytest.approx(48 * ROUND_CM, abs=0.3)
    assert folded.height_cm[0] == pytest.approx(12 * ROUND_CM, abs=0.3)


def test_a_rolled_edge_lies_outside_the_hat_and_shows_its_wrong_side() -> None:
    radius = 100 * STITCH_CM / (2 * math.pi)
    rolled = line(tube(hat=Hat(fold=Fold("roll", 8))))
    outwards, upwards = rolled.normals()
    roll = rolled.row < 8
    assert rolled.radius_cm.min() == pytest.approx(radius)
    outermost = int(np.argmax(rolled.radius_cm))
    assert roll[outermost]
    assert outwards[outermost] < -0.9
    lowest = int(np.argmin(rolled.height_cm))
    assert upwards[lowest] > 0.9


def test_the_right_side_of_a_tube_faces_away_from_the_axis() -> None:
    outwards, upwards = line(tube()).normals()
    assert outwards == pytest.approx(1)
    assert upwards == pytest.approx(0)


def test_a_laid_tam_is_flat_and_as_wide_as_its_widest_round() -> None:
    appraisal = appraise(read_design(EXAMPLES / "towpath-tam.hat.toml"))
    laid = line(appraisal, laid=True)
    assert laid.reach_cm == pytest.approx(max(appraisal.profile.radius_cm), rel=0.01)
    assert laid.top_cm < 0.2 * laid.reach_cm
    assert laid.radius_cm[-1] == pytest.approx(0, abs=1e-6)
    assert laid.radius_cm[0] < 0.7 * laid.reach_cm


def test_a_wheel_that_decreases_as_a_disc_does_covers_its_plate() -> None:
    # The area of a disc, πr², against that of the stitches above the widest round.
    appraisal = appraise(read_design(EXAMPLES / "towpath-tam.hat.toml"))
    gauge, counts = appraisal.design.gauge, np.array(appraisal.fabric.counts)
    laid = line(appraisal, laid=True)
    rim = np.flatnonzero(counts == counts.max())[-1]
    above_cm2 = counts[rim:].sum() * gauge.stitch_width_cm * gauge.round_height_cm
    # Some of the rounds at the rim lie on the wheel too, which the plate stretches by so much.
    assert math.pi * laid.reach_cm**2 == pytest.approx(above_cm2, rel=0.35)


def test_a_cap_does_not_lie_flat() -> None:
    with pytest.raises(ValueError, match="only a tam"):
        line(tube(), laid=True)


def test_a_fold_of_more_rounds_than_there_are_leaves_one_standing() -> None:
    design = tube(rounds=5).design
    folded = line(appraise(replace(design, hat=Hat(fold=Fold("up", 30)))))
    assert np.isfinite(folded.radius_cm).all()
    assert np.isfinite(folded.height_cm).all()
