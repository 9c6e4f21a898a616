"""Loop length and areal density against published figures."""

import math
from dataclasses import replace
from typing import Any

import pytest

from chartmaker.knit.floats import find_floats
from chartmaker.knit.interval import Interval
from chartmaker.knit.layout import lay_out
from chartmaker.knit.loop import (
    KS_FULLY_RELAXED,
    KS_WET_RELAXED,
    LoopLength,
    areal_density,
    loop_from_gauge,
    loop_length,
    munden_loop_cm,
    swatch_loop_cm,
    tex,
)
from chartmaker.knit.yarn import requirements
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.settings import Allowances
from tests.builders import chart


def test_munden_s_relation_gives_the_published_worked_example() -> None:
    """GATE TF 2015, question 54: Kw 4.2, Kc 5.5, l 0.5 cm give 92.4 loops/cm²."""
    assert math.isclose(KS_FULLY_RELAXED, 4.2 * 5.5)
    assert pytest.approx(92.4) == KS_FULLY_RELAXED / 0.5**2
    assert munden_loop_cm(92.4, KS_FULLY_RELAXED) == pytest.approx(0.5)


def test_the_wet_relaxed_constant_is_munden_s_product_as_printed() -> None:
    """Munden 1959: Kc 5.3 and Kw 4.1 are printed with Ks 21.6; their product is 21.73."""
    assert math.isclose(KS_WET_RELAXED, 5.3 * 4.1, rel_tol=0.01)


@pytest.mark.parametrize(
    ("stitches", "rounds"),
    [(22, 26), (28, 32), (30, 32), (32, 36), (36, 40)],
)
def test_the_loop_fits_its_own_gauge(stitches: float, rounds: float) -> None:
    loop = loop_from_gauge(Gauge(stitches_per_10cm=stitches, rounds_per_10cm=rounds))
    assert loop.source == "gauge"
    assert KS_WET_RELAXED / loop.cm.likely**2 == pytest.approx(stitches * rounds / 100)
    assert loop.cm.low < loop.cm.likely < loop.cm.high


def test_the_gauge_s_own_error_widens_the_interval_on_either_side() -> None:
    """By hand: 20 and 25 over 10 cm, half a stitch and half a round more or less, with Munden's constants."""
    loop = loop_from_gauge(Gauge(stitches_per_10cm=20, rounds_per_10cm=25)).cm
    assert loop.low == pytest.approx(math.sqrt(19.0 / (2.05 * 2.55)))
    assert loop.likely == pytest.approx(math.sqrt(21.6 / (2.0 * 2.5)))
    assert loop.high == pytest.approx(math.sqrt(23.1 / (1.95 * 2.45)))


def plain(*swatches: Swatch, **settings: Any) -> Design:
    return chart("A | ....", swatches=swatches, **settings)


def test_a_swatch_overrides_what_gauge_says() -> None:
    loop = loop_length(plain(Swatch(stitches=1200, metres=17.9)))
    assert loop.source == "swatch"
    assert loop.cm.likely == pytest.approx(1.4917, abs=5e-5)


def test_a_swatch_tells_the_same_weighed_measured_and_by_its_ball() -> None:
    grams = 17.9 * 100 / 460
    measured = loop_length(plain(Swatch(stitches=1200, metres=17.9)))
    weighed = loop_length(plain(Swatch(stitches=1200, grams=grams), metres_per_100g=460.0))
    by_ball = loop_length(
        plain(Swatch(stitches=1200, ball_before_g=50, ball_after_g=50 - grams), metres_per_100g=460.0)
    )
    assert weighed.cm.likely == pytest.approx(measured.cm.likely)
    assert by_ball.cm.likely == pytest.approx(measured.cm.likely)


def test_a_swatch_s_own_grist_goes_before_the_design_s() -> None:
    own = plain(Swatch(stitches=1000, grams=10, metres_per_100g=300), metres_per_100g=460.0)
    assert loop_length(own).cm.likely == pytest.approx(3.0)


def test_a_stranded_swatch_gives_the_loop_of_the_plain_one_when_its_floats_are_taken_out() -> None:
    """Floats by the closed form: two letters all along take one taut stitch width a stitch, and the slack."""
    gauge, slack = Gauge(stitches_per_10cm=30, rounds_per_10cm=34), 10.0
    loop_cm, stitches = 1.4, 1500
    metres = stitches * (loop_cm + gauge.stitch_width_cm * (1 + slack / 100)) / 100
    design = plain(
        Swatch(stitches=stitches, metres=metres, passed=stitches),
        gauge=gauge,
        allowances=Allowances(float_slack_percent=slack),
    )
    assert loop_length(design).cm.likely == pytest.approx(loop_cm)


def test_a_stranded_swatch_agrees_with_the_yarn_that_its_own_chart_takes() -> None:
    """The way there and back: a swatch knitted as a chart says gives the loop that the chart was reckoned with."""
    drawn = chart("A B | .x..x.", times=20, allowances=Allowances(tail_cm=0))
    loop = Interval.exactly(1.37)
    fabric = lay_out(drawn)
    floats = find_floats(fabric)
    needs = requirements(drawn, fabric, floats, LoopLength(loop, "swatch"))
    metres = sum(need.stitch_m.likely + need.float_m.likely for need in needs)
    passed = int(floats.passed().sum())
    swatch = Swatch(stitches=fabric.counts[0], metres=metres, passed=passed)
    assert loop_length(replace(drawn, swatches=(swatch,))).cm.likely == pytest.approx(1.37)


def test_several_swatches_give_their_mean_and_what_it_may_be_off_by() -> None:
    """NIST/SEMATECH e-Handbook, 1.3.5.2: mean ± quantile × s / √n; here 1.40, 1.50, 1.60 cm, s 0.1."""
    loop = loop_length(plain(*(Swatch(stitches=100, metres=metres) for metres in (1.4, 1.5, 1.6))))
    assert loop.cm.likely == pytest.approx(1.5)
    assert loop.deviation_cm == pytest.approx(0.1)
    assert loop.cm.high - loop.cm.likely == pytest.approx(1.645 * 0.1 / math.sqrt(3))
    assert "3 swatches" in loop.why


def test_two_swatches_that_agree_by_luck_are_not_taken_as_exact() -> None:
    loop = loop_length(plain(Swatch(stitches=100, metres=1.5), Swatch(stitches=100, metres=1.5)))
    assert loop.cm.high == pytest.approx(1.5 * (1 + 0.05 / math.sqrt(2)))


@pytest.mark.parametrize("count", [5, 28, 100])
def test_without_a_swatch_the_interval_is_wider_and_says_why(count: float) -> None:
    gauge = Gauge(stitches_per_10cm=count, rounds_per_10cm=count)
    one, none = loop_length(plain(Swatch(stitches=100, metres=1.5))), loop_length(plain(gauge=gauge))
    assert none.cm.high / none.cm.low > one.cm.high / one.cm.low
    assert "relax" in none.why
    assert "relax" not in one.why


def test_a_swatch_whose_floats_would_take_all_its_yarn_is_passed_over() -> None:
    design = plain(Swatch(stitches=1000, metres=1.0, passed=1000))
    with pytest.raises(ValueError, match=r"floats alone would take 3\.93 m"):
        swatch_loop_cm(design.swatches[0], design)
    assert loop_length(design).source == "gauge"


@pytest.mark.parametrize(
    ("nm", "ne", "denier"),
    [(50, 29.525, 180)],
)
def test_tex_agrees_with_the_published_conversions(nm: float, ne: float, denier: float) -> None:
    """GATE TF 1992, question 2: 20 tex = 29.525 Ne = 180 denier = 50 Nm; Nm is metres in a gram."""
    assert tex(100 * nm) == pytest.approx(20)
    assert tex(100 * nm) == pytest.approx(590.5 / ne)
    assert tex(100 * nm) == pytest.approx(denier / 9)


def test_jumper_weight_is_its_label_s_tex() -> None:
    """A spinner's label, 2024: 105 m in 25 g, sold as 2/8.4 Nm, which is 238 tex."""
    assert tex(420) == pytest.approx(1000 / (8.4 / 2), rel=0.001)


def test_yarn_in_plain_cloth_weighs_what_the_areal_density_formula_says() -> None:
    """Texcoms Textile Technical Handbook 2023, p. 147: g/m² = S · l[mm] · tex / 100, that is Ks · tex / l[mm]."""
    gauge = Gauge(stitches_per_10cm=28, rounds_per_10cm=32)
    loop_cm = loop_from_gauge(gauge).cm.likely
    density = 28 * 32 / 100
    stitches_per_m2 = density * 10_000
    grams = stitches_per_m2 * loop_cm / 100 * 100 / 460
    formula = areal_density(stitches_per_cm2=density, loop_cm=loop_cm, grist_tex=tex(460))
    assert formula == pytest.approx(grams)
    assert formula == pytest.approx(KS_WET_RELAXED * tex(460) / (10 * loop_cm))


def test_a_circular_machine_s_yarn_is_loops_times_loop_length() -> None:
    """Worked example, apparel-merchandising 2011: 2260 needles × 90 feeders × 4 mm, 26 rpm for 1 h: 1 269 216 m."""
    loops_a_turn = 2260 * 90
    assert loops_a_turn == 203_400
    metres = loops_a_turn * 26 * 60 * loop_length(plain(Swatch(stitches=1000, metres=4.0))).cm.likely
    assert metres / 100 == pytest.approx(1_269_216)


def test_floats_of_two_letters_every_round_are_a_quarter_of_the_plain_yarn() -> None:
    """Derived: taut floats take one stitch width a stitch, and w = l / Kw: so 1/Kw of the yarn, about 24-26 %."""
    gauge = Gauge(stitches_per_10cm=30, rounds_per_10cm=30 * 5.3 / 4.1)
    share = gauge.stitch_width_cm / loop_from_gauge(gauge).cm.likely
    assert share == pytest.approx(1 / 4.1, rel=0.01)
    assert 0.23 < share < 0.27
    assert math.isclose(gauge.stitch_width_cm, 1 / 3)
