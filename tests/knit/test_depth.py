"""Depth and its parts against the rules that are in print, and against plane and solid geometry."""

import math
from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings

from chartmaker.knit.depth import DEEP, FITS, SHORT, Depth, depth_of, parts_of
from chartmaker.knit.depth_rules import PLATE_STRETCH, Plate, cap_depths, tam_depth, wanted_depth
from chartmaker.knit.layout import lay_out
from chartmaker.knit.profile import hemisphere_stitches, profile
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import Fold, Hat
from chartmaker.model.round import Round
from chartmaker.model.stitches import Shaping
from tests.strategies import designs

GAUGE = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
PLAIN = Round("A", bytes(4))


def rounds_of(counts: list[int]) -> tuple[Round, ...]:
    """Give rounds of these counts, the first as plain as it is, narrowing by k2tog and widening by make one."""
    made = [Round("A", bytes(counts[0]))]
    for below, here in pairwise(counts):
        pairs, more = max(0, below - here), max(0, here - below)
        codes = [Shaping.K2TOG] * pairs + [Shaping.MAKE] * more + [Shaping.PLAIN] * (here - pairs - more)
        made.append(Round("A", bytes(here), bytes(codes)))
    return tuple(made)


def plain(name: str, rounds: int, *, times: int = 36, texture: str = "") -> Band:
    return Band(name=name, times=times, rounds=(PLAIN,) * rounds, texture=texture)


def crown(rounds: int, *, stitches: int = 144) -> Band:
    counts = [round(stitches - (stitches - 8) * k / rounds) for k in range(rounds + 1)]
    return Band(name="crown", times=1, rounds=rounds_of(counts)[1:])


def cap(*, brim: int = 10, body: int = 30, top: int = 28, **hat: Any) -> Design:
    bands = (plain("rib", brim, texture="kkpp"), plain("body", body), crown(top))
    return Design(bands=bands, gauge=GAUGE, hat=Hat(**hat))


def told(depth: Depth) -> dict[str, int]:
    return {part.name: part.rounds for part in depth.parts}


@pytest.mark.parametrize(
    ("head", "by_third", "by_share"),
    [(56.0, 56 / 3 + 2, 22.4), (48.0, 18.0, 19.2), (36.0, 14.0, 14.4), (60.0, 22.0, 24.0)],
)
def test_a_cap_is_between_the_two_rules_of_the_craft_pages(head: float, by_third: float, by_share: float) -> None:
    """Depth: girth/3 + 2 cm, or 0.4 × girth (craft pages, which differ)."""
    wanted = wanted_depth(Hat(head_cm=head))
    assert (wanted.lowest_cm, wanted.highest_cm) == pytest.approx((by_third, by_share))
    assert wanted.wanted_cm == pytest.approx((by_third + by_share) / 2)


def test_the_two_rules_cross_at_a_head_of_30_cm() -> None:
    """girth/3 + 2 = 0.4 × girth where girth is 30: below it, the share is the shallower."""
    assert cap_depths(30) == pytest.approx((12, 12))
    assert cap_depths(24) == pytest.approx((9.6, 10))


def test_what_the_design_sets_comes_before_every_rule() -> None:
    for shape in ("cap", "tam", "stocking"):
        wanted = wanted_depth(Hat(shape=shape, depth_cm=33))
        assert (wanted.lowest_cm, wanted.wanted_cm, wanted.highest_cm) == (33, 33, 33)


def test_a_stocking_cap_may_be_as_deep_as_one_likes_but_no_shallower_than_a_cap() -> None:
    wanted = wanted_depth(Hat(shape="stocking", head_cm=56))
    assert wanted.off_cm(150) == 0
    assert wanted.off_cm(15) < 0
    assert wanted.lowest_cm == pytest.approx(56 / 3 + 2)


def test_the_basic_tam_covers_a_plate_of_ten_inches() -> None:
    """10 in across is the basic tam, widened by half after the brim (Rowe; The Knitter 2017): its rim is 10 in / 1.1.

    Along the fabric: over the plate 5 in, under it 5 in less the brim's radius, and the brim.
    """
    inch = 2.54
    rim = 21 * 0.91 * 1.5 / (2 * math.pi) * inch
    plate = Plate(brim_cm=3, inner_radius_cm=rim / 1.5, radius_cm=rim)
    assert 2 * rim * (1 + PLATE_STRETCH) == pytest.approx(10 * inch, rel=0.01)
    wanted = tam_depth(40, plate)  # so small a head that the plate alone decides
    assert wanted.highest_cm == pytest.approx(3 + 10 * inch - rim / 1.5, abs=0.2)
    assert wanted.lowest_cm == pytest.approx(3 + 2 * rim - rim / 1.5)


def test_a_tam_takes_its_plate_from_the_counts_at_brim_and_rim() -> None:
    widen = Band(name="widen", times=1, rounds=rounds_of([144, 216])[1:])
    bands = (plain("rib", 10, texture="kkpp"), widen, plain("rim", 20, times=54), crown(30, stitches=216))
    depth = depth_of(Design(bands=bands, gauge=GAUGE, hat=Hat(shape="tam", head_cm=30)))
    inner, rim = 48 / (2 * math.pi), 72 / (2 * math.pi)
    assert depth.wanted.lowest_cm == pytest.approx(10 / 3.4 + 2 * rim - inner)
    assert told(depth) == {"brim": 10, "widening": 1, "body": 20, "crown": 30}


def test_every_round_counts_once_and_is_as_deep_as_it_is_high() -> None:
    depth = depth_of(cap())
    assert told(depth) == {"brim": 10, "body": 30, "crown": 28}
    assert depth.cm == pytest.approx(68 * 10 / 34)
    assert sum(part.cm for part in depth.parts) == pytest.approx(depth.cm)


def test_a_hemisphere_is_a_quarter_of_the_girth_deep_while_it_rises_by_a_radius() -> None:
    """Geometry: from pole to equator a sphere of girth C measures C/4 along the surface and C/2π in height."""
    fine = Gauge(stitches_per_10cm=60, rounds_per_10cm=80)
    girth = 300 / 6
    counts = [300] + [round(hemisphere_stitches(fine, stitches=300, round_number=k)) for k in range(1, 100)]
    design = Design(bands=(Band(name="dome", times=1, rounds=rounds_of(counts)),), gauge=fine)
    depth = depth_of(design)
    assert depth.cm == pytest.approx(girth / 4, rel=0.01)
    assert profile(lay_out(design), fine).height_cm == pytest.approx(girth / (2 * math.pi), rel=0.03)


def test_a_flat_disc_is_its_radius_deep() -> None:
    """Geometry: a wheel of r cm has r cm of rounds from the rim to the middle."""
    gauge = Gauge(stitches_per_10cm=20 * 4 / (2 * math.pi), rounds_per_10cm=20)  # a disc loses 4 a round, exactly
    counts = [100 - 4 * k for k in range(25)]
    rounds = rounds_of(counts)
    design = Design(
        bands=(Band(name="b", times=1, rounds=rounds[:1]), Band(name="w", times=1, rounds=rounds[1:])), gauge=gauge
    )
    radius = 100 * gauge.stitch_width_cm / (2 * math.pi)
    assert depth_of(design).part("crown").cm == pytest.approx(radius, abs=gauge.round_height_cm)


@pytest.mark.parametrize(("way", "brim"), [("up", 20), ("in", 20), ("roll", 20)])
def test_folded_rounds_lie_double_and_add_no_depth(way: str, brim: int) -> None:
    design = cap(brim=40, fold=Fold(way, 20))
    depth = depth_of(design)
    assert depth.folded_rounds == 20
    assert told(depth) == {"brim": brim, "body": 30, "crown": 28}
    assert depth.cm == pytest.approx((98 - 20) * 10 / 34)


def test_what_a_hem_lies_on_is_brim_though_it_is_knit() -> None:
    bands = (plain("hem", 9), plain("ridge", 1, texture="p"), plain("body", 40), crown(28))
    design = Design(bands=bands, gauge=GAUGE, hat=Hat(fold=Fold("in", 9)))
    assert told(depth_of(design)) == {"brim": 9, "body": 32, "crown": 28}


def test_a_rolled_edge_has_no_brim_above_it() -> None:
    design = Design(bands=(plain("body", 50), crown(28)), gauge=GAUGE, hat=Hat(fold=Fold("roll", 6)))
    assert told(depth_of(design)) == {"body": 44, "crown": 28}


def test_a_rib_above_a_rolled_edge_is_brim() -> None:
    bands = (plain("roll", 9), plain("rib", 8, texture="kp"), plain("body", 40), crown(28))
    design = Design(bands=bands, gauge=GAUGE, hat=Hat(fold=Fold("roll", 9)))
    assert told(depth_of(design)) == {"brim": 8, "body": 40, "crown": 28}


def test_a_ridge_in_the_middle_of_a_hat_is_no_brim() -> None:
    bands = (plain("body", 20), plain("ridge", 2, texture="p"), plain("body", 20), crown(28))
    assert told(depth_of(Design(bands=bands, gauge=GAUGE))) == {"body": 42, "crown": 28}


def test_a_hat_without_a_crown_says_so() -> None:
    depth = depth_of(Design(bands=(plain("body", 60),), gauge=GAUGE))
    assert not depth.has_crown
    assert told(depth) == {"body": 60}


@pytest.mark.parametrize(("body", "verdict"), [(30, FITS), (10, SHORT), (60, DEEP)])
def test_rounds_to_add_bring_the_depth_to_what_is_wanted(body: int, verdict: str) -> None:
    head = 54.0  # 20 to 21.6 cm; 30 rounds of body make 20.0
    depth = depth_of(cap(body=body, head_cm=head))
    assert depth.verdict == verdict
    mended = depth_of(cap(body=body + depth.rounds_to_add, head_cm=head))
    assert mended.rounds_to_add == 0
    if verdict != FITS:
        assert mended.cm == pytest.approx((20 + 21.6) / 2, abs=GAUGE.round_height_cm / 2)


@settings(max_examples=30)
@given(designs())
def test_the_parts_of_any_design_are_all_its_worn_rounds(design: Design) -> None:
    depth, rounds = depth_of(design), sum(len(band.rounds) for band in design.bands)
    assert depth.folded_rounds + depth.rounds == rounds
    assert all(part.rounds > 0 for part in depth.parts)
    parts = parts_of(design)
    assert 0 <= parts.worn <= parts.body <= parts.crown <= parts.rounds == rounds


@settings(max_examples=30)
@given(designs())
def test_a_fold_of_any_design_takes_its_rounds_off_the_depth(design: Design) -> None:
    folded = replace(design, hat=replace(design.hat, fold=Fold("up", 1)))
    assert depth_of(folded).rounds == sum(len(band.rounds) for band in design.bands) - 1
