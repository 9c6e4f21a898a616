"""Loop length and areal density against published figures."""

import math

import pytest

from chartmaker.knit.loop import (
    KS_FULLY_RELAXED,
    KS_WET_RELAXED,
    areal_density,
    loop_from_gauge,
    loop_from_swatch,
    loop_length,
    munden_loop_cm,
    tex,
)
from chartmaker.model.gauge import Gauge, Swatch


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


def test_a_swatch_overrides_what_gauge_says() -> None:
    loop = loop_length(Gauge(), Swatch(stitches=1200, metres=17.9), metres_per_100g=460)
    assert loop.source == "swatch"
    assert loop.cm.likely == pytest.approx(1.4917, abs=5e-5)


def test_a_weighed_swatch_agrees_with_a_measured_one() -> None:
    grams = 17.9 * 100 / 460
    weighed = loop_from_swatch(Swatch(stitches=1200, grams=grams), metres_per_100g=460)
    measured = loop_from_swatch(Swatch(stitches=1200, metres=17.9), metres_per_100g=460)
    assert weighed.cm.likely == pytest.approx(measured.cm.likely)


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
    metres = loops_a_turn * 26 * 60 * loop_from_swatch(Swatch(stitches=1000, metres=4.0), metres_per_100g=100).cm.likely
    assert metres / 100 == pytest.approx(1_269_216)


def test_floats_of_two_letters_every_round_are_a_quarter_of_the_plain_yarn() -> None:
    """Derived: taut floats take one stitch width a stitch, and w = l / Kw: so 1/Kw of the yarn, about 24-26 %."""
    gauge = Gauge(stitches_per_10cm=30, rounds_per_10cm=30 * 5.3 / 4.1)
    share = gauge.stitch_width_cm / loop_from_gauge(gauge).cm.likely
    assert share == pytest.approx(1 / 4.1, rel=0.01)
    assert 0.23 < share < 0.27
    assert math.isclose(gauge.stitch_width_cm, 1 / 3)
