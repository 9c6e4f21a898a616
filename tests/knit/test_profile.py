"""The hat's outline against plane and solid geometry."""

import math
from itertools import pairwise

import pytest

from chartmaker.knit.layout import lay_out
from chartmaker.knit.profile import flat_disc_decreases, hemisphere_stitches, profile
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from chartmaker.model.stitches import Shaping
from tests.builders import chart

INCHES = Gauge(stitches_per_10cm=50 / 2.54, rounds_per_10cm=70 / 2.54)
"""Five stitches and seven rounds to the inch."""


def hat_of(counts: list[int], gauge: Gauge) -> Design:
    """Give a hat of rounds with these counts, decreasing by k2tog and increasing by make one as need be."""
    rounds = [Round("A", bytes(counts[0]))]
    for below, here in pairwise(counts):
        pairs = max(0, below - here)
        made = max(0, here - below)
        codes = [Shaping.K2TOG] * pairs + [Shaping.MAKE] * made + [Shaping.PLAIN] * (here - pairs - made)
        rounds.append(Round("A", bytes(here), bytes(codes)))
    return Design(gauge=gauge, bands=(Band(name="", times=1, rounds=tuple(rounds)),))


def test_the_radius_is_the_circumference_over_two_pi() -> None:
    outline = profile(lay_out(chart("A | " + "." * 100, gauge=(25, 32))), Gauge(stitches_per_10cm=25))
    assert outline.radius_cm[0] * 2 * math.pi == pytest.approx(40)


def test_a_tube_is_as_high_as_its_rounds() -> None:
    design = hat_of([120] * 48, INCHES)
    assert profile(lay_out(design), INCHES).height_cm == pytest.approx(48 / 7 * 2.54)


def test_the_flat_disc_rate_is_the_published_one() -> None:
    """Craft pages and geometry: 2π × stitch gauge / round gauge; 5 and 7 per inch give 4.488."""
    assert flat_disc_decreases(INCHES) == pytest.approx(4.488, abs=5e-4)


def test_a_crown_at_the_flat_disc_rate_gains_no_height() -> None:
    gauge = Gauge(stitches_per_10cm=20 * 4 / (2 * math.pi), rounds_per_10cm=20)  # 4 stitches a round, exactly
    assert flat_disc_decreases(gauge) == pytest.approx(4)
    outline = profile(lay_out(hat_of([80 - 4 * k for k in range(19)], gauge)), gauge)
    # A round that runs at the full rate rises by √(h² − h²); rounding leaves the root of a hair.
    assert outline.height_cm == pytest.approx(gauge.round_height_cm, abs=1e-5)
    assert not any(outline.puckers)


def test_a_published_crown_of_nine_fewer_every_second_round_lies_flat() -> None:
    """Published crown: 120 stitches less 9 every other round, at the 5 × 7 gauge that its flat rate goes with."""
    counts = [120 - 9 * (k // 2) for k in range(26)]
    outline = profile(lay_out(hat_of(counts, INCHES)), INCHES)
    assert not any(outline.puckers)
    assert outline.height_cm < 6 * INCHES.round_height_cm


def test_decreasing_twice_the_flat_rate_puckers() -> None:
    outline = profile(lay_out(hat_of([120 - 9 * k for k in range(12)], INCHES)), INCHES)
    assert all(outline.puckers[1:])
    assert set(outline.rise_cm[1:]) == {0.0}


def test_decreases_two_and_three_rounds_apart_by_turns_lie_flat_where_every_fifth_half_round_would() -> None:
    """Geometry: 14 stitches every 2.5 rounds are 5.6 a round, a flat disc's at 28 × 31.4."""
    gauge = Gauge(stitches_per_10cm=28, rounds_per_10cm=28 * 2 * math.pi / 5.6)
    assert flat_disc_decreases(gauge) == pytest.approx(5.6)
    by_turns = [168 - 14 * (k * 2 // 5) for k in range(26)]
    assert not any(profile(lay_out(hat_of(by_turns, gauge)), gauge).puckers)
    every_second = [168 - 14 * (k // 2) for k in range(21)]
    assert all(profile(lay_out(hat_of(every_second, gauge)), gauge).puckers[3:])


def test_a_disc_of_decreases_two_and_three_rounds_apart_by_turns_rises_in_no_steps() -> None:
    """Geometry: a disc that loses 5.6 stitches a round, as many as lie flat, gains no height, however they stand."""
    gauge = Gauge(stitches_per_10cm=28, rounds_per_10cm=28 * 2 * math.pi / 5.6)
    outline = profile(lay_out(hat_of([168 - 14 * (k * 2 // 5) for k in range(26)], gauge)), gauge)
    assert math.fsum(outline.rise_cm[5:]) == pytest.approx(0, abs=1e-5)
    assert sum(outline.run_cm) == pytest.approx(outline.radius_cm[-1] - outline.radius_cm[0])


def test_what_is_over_is_taken_up_by_no_round_that_goes_the_other_way() -> None:
    gauge = Gauge(stitches_per_10cm=28, rounds_per_10cm=28 * 2 * math.pi / 5.6)
    outline = profile(lay_out(hat_of([40, 50, 50, 50, 50], gauge)), gauge)
    assert outline.rise_cm[2:] == pytest.approx([gauge.round_height_cm] * 3)


def test_a_stretch_that_widens_too_fast_is_told_from_the_one_that_narrows_after_it() -> None:
    gauge = Gauge(stitches_per_10cm=28, rounds_per_10cm=28)
    counts = [60, 60, 80, 100, 120, 120, 120, 120, 120, 118, 116]
    assert profile(lay_out(hat_of(counts, gauge)), gauge).puckers == (False, *[True] * 4, *[False] * 6)


def test_a_stretch_that_puckers_as_a_whole_is_found_as_one() -> None:
    gauge = Gauge(stitches_per_10cm=28, rounds_per_10cm=28)
    counts = [150] * 6 + [150 - 9 * k + (k > 6) * 9 for k in range(1, 13)] + [51] * 3
    puckers = profile(lay_out(hat_of(counts, gauge)), gauge).puckers
    first, last = puckers.index(True), len(puckers) - puckers[::-1].index(True)
    assert all(puckers[first:last])
    assert last == 18
    assert first >= 6


def test_a_hemisphere_by_its_formula_is_as_high_as_its_radius() -> None:
    """Geometry: stitches S₀·cos(πk / 2N) over N = (C/4)/h rounds make a quarter circle, whose height is its radius."""
    gauge = Gauge(stitches_per_10cm=40, rounds_per_10cm=50)
    around = 240
    radius_cm = around * gauge.stitch_width_cm / (2 * math.pi)
    rounds = int(around * gauge.stitch_width_cm / 4 / gauge.round_height_cm)
    counts = [max(4, round(hemisphere_stitches(gauge, stitches=around, round_number=k))) for k in range(rounds + 1)]
    height = profile(lay_out(hat_of(counts, gauge)), gauge).height_cm
    assert height == pytest.approx(radius_cm, rel=0.05)


def test_a_hemisphere_ends_in_a_point() -> None:
    gauge = Gauge()
    rounds = 160 * gauge.stitch_width_cm / 4 / gauge.round_height_cm
    assert hemisphere_stitches(gauge, stitches=160, round_number=0) == 160
    ends = 160 * math.cos(math.pi * math.floor(rounds) / (2 * rounds))
    assert hemisphere_stitches(gauge, stitches=160, round_number=math.floor(rounds)) == pytest.approx(ends)
    assert 0 <= ends < 8


def test_a_cone_s_height_is_by_pythagoras() -> None:
    """Geometry: a cone of slant N·h whose radius falls by R has the height √((N·h)² − R²)."""
    gauge = Gauge(stitches_per_10cm=30, rounds_per_10cm=30)
    counts = [120 - 2 * k for k in range(56)]
    outline = profile(lay_out(hat_of(counts, gauge)), gauge)
    fall = outline.radius_cm[0] - outline.radius_cm[-1]
    slant = 55 * gauge.round_height_cm
    assert outline.height_cm == pytest.approx(gauge.round_height_cm + math.sqrt(slant**2 - fall**2))


def test_a_change_of_width_is_shared_with_the_plain_rounds_before_it() -> None:
    outline = profile(lay_out(hat_of([100, 100, 96, 96, 92], INCHES)), INCHES)
    assert outline.run_cm[1] == outline.run_cm[2] == pytest.approx(outline.run_cm[4])
    assert sum(outline.run_cm) == pytest.approx(outline.radius_cm[-1] - outline.radius_cm[0])


@pytest.mark.parametrize(("after", "sharing"), [(110, 4), (90, 12)])
def test_a_lone_change_after_many_plain_rounds_is_shared_by_some_of_them(after: int, sharing: int) -> None:
    outline = profile(lay_out(hat_of([100] * 20 + [after], INCHES)), INCHES)
    assert [change != 0 for change in outline.run_cm] == [False] * (21 - sharing) + [True] * sharing


def test_a_jump_where_counts_do_not_meet_is_no_shaping() -> None:
    outline = profile(lay_out(chart("A | ..........", "A | ....", times=1)), Gauge())
    assert outline.run_cm == (0.0, 0.0)
