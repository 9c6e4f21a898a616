"""Yarn: what each letter takes, and what is missing of its lot."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.extras import extras, strand_counts
from chartmaker.knit.floats import find_floats
from chartmaker.knit.interval import Interval
from chartmaker.knit.layout import lay_out
from chartmaker.knit.loop import areal_density, loop_length, tex
from chartmaker.knit.yarn import Requirement, requirements
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import CastOn, Finish, Fold, Hat, Trim
from chartmaker.model.palette import Yarn
from chartmaker.model.round import Round
from chartmaker.model.settings import Allowances
from tests.builders import chart, lot

SWATCH = Swatch(stitches=100, metres=1.0)
"""One centimetre of yarn in a stitch."""
NO_TAILS = Allowances(tail_cm=0)


def needs(design: Design) -> dict[str, Requirement]:
    fabric = lay_out(design)
    loop = loop_length(design)
    return {need.letter: need for need in requirements(design, fabric, find_floats(fabric), loop)}


def extra_cm(design: Design, letter: str, what: str) -> float:
    fabric = lay_out(design)
    loop = loop_length(design)
    found = extras(design, fabric, loop_cm=loop.cm)
    return sum(extra.cm.likely for extra in found if extra.letter == letter and what in extra.what)


def test_stitches_take_one_loop_each() -> None:
    need = needs(chart("A B | .x..", times=30, swatches=(SWATCH,)))
    assert (need["A"].stitches, need["B"].stitches) == (90, 30)
    assert need["A"].stitch_m.likely == pytest.approx(0.90)


def test_floats_are_as_long_as_the_stitches_they_pass_and_their_slack() -> None:
    design = chart("A B | .x..", times=30, gauge=(25, 32), allowances=Allowances(float_slack_percent=10))
    float_m = needs(design)["B"].float_m
    assert float_m.low == pytest.approx(30 * 3 * 0.4 / 100)
    assert float_m.likely == pytest.approx(float_m.low * 1.1)
    assert float_m.high == pytest.approx(float_m.low * 1.2)


def test_plain_cloth_of_one_letter_weighs_what_the_areal_density_formula_says() -> None:
    """Texcoms Textile Technical Handbook 2023, p. 147, on an area of 120 × 60 stitches."""
    gauge = Gauge(stitches_per_10cm=28, rounds_per_10cm=32)
    design = chart("\n".join(["A | ...."] * 60), times=30, gauge=gauge, metres_per_100g=460.0)
    need = needs(design)["A"]
    area_m2 = 120 * gauge.stitch_width_cm * 60 * gauge.round_height_cm / 10_000
    loop_cm = loop_length(design).cm.likely
    density = areal_density(stitches_per_cm2=28 * 32 / 100, loop_cm=loop_cm, grist_tex=tex(460))
    assert need.stitch_m.likely / 4.60 == pytest.approx(area_m2 * density)


def test_a_long_tail_cast_on_takes_the_published_tail_and_its_loops() -> None:
    """Published tip: 3 × the finished width and a tenth; 12 in take 39.6 in."""
    gauge = Gauge(stitches_per_10cm=100 / 2.54, rounds_per_10cm=40)
    design = chart("A | ..........", times=12, gauge=gauge, swatches=(SWATCH,))
    assert extra_cm(design, "A", "cast-on") == pytest.approx(39.6 * 2.54 + 120 * 1.0)


@pytest.mark.parametrize(("method", "loops"), [("knitted", 2), ("provisional", 1)])
def test_other_cast_ons_take_loops_alone(method: str, loops: int) -> None:
    design = chart("A | ....", times=25, swatches=(SWATCH,), hat=Hat(cast_on=CastOn("B", method)))
    assert extra_cm(design, "B", "cast-on") == pytest.approx(100 * loops)


def test_the_top_is_drawn_together_twice_round() -> None:
    design = chart("A | .. | ^^\nA | ......", times=2, gauge=(20, 30), hat=Hat(finish=Finish("B")))
    assert extra_cm(design, "B", "drawn") == pytest.approx(2 * 4 * 0.5)


def test_the_published_pompom_and_tassel_come_out_as_printed() -> None:
    """American Thread Co. booklet: 60 wraps of a 3 in card, 9.14 m; a tassel of 20 wraps, 3.05 m."""
    trims = (Trim(kind="pompom", letter="B", size_cm=7.62), Trim(kind="tassel", letter="C", size_cm=7.62))
    design = chart("A | ....", hat=Hat(trims=trims))
    assert extra_cm(design, "B", "pompom") == pytest.approx(914, abs=1)
    assert extra_cm(design, "C", "tassel") == pytest.approx(305, abs=1)


def uses(picture: str) -> np.ndarray:
    return np.array([sign == "x" for sign in picture])


@pytest.mark.parametrize(
    ("picture", "strands", "carried"),
    [
        ("xxxxx", 1, 0),
        ("x.x.x", 1, 2),
        ("x....x", 1, 4),
        ("x.....x", 2, 0),
        ("..x..", 1, 0),
        ("x.....x..x", 2, 2),
        (".....", 0, 0),
    ],
)
def test_an_idle_letter_is_carried_up_or_cut(picture: str, strands: int, carried: int) -> None:
    assert strand_counts(uses(picture), carry_up_rounds=4) == (strands, carried)


def test_each_strand_has_a_tail_at_either_end() -> None:
    design = chart("B | ....\nA | ....", swatches=(SWATCH,), allowances=Allowances(tail_cm=15))
    # A: the cast-on to the drawn-through top, over one idle round; B: one strand.
    assert extra_cm(design, "B", "tails") == pytest.approx(30)
    assert extra_cm(design, "A", "tails") == pytest.approx(30)
    assert extra_cm(design, "A", "carried up 1") == pytest.approx(design.gauge.round_height_cm)


def test_the_cast_on_s_letter_need_not_be_in_the_first_round() -> None:
    design = chart("A | ....", hat=Hat(cast_on=CastOn("C"), finish=Finish("A")))
    assert needs(design)["C"].stitches == 0
    assert needs(design)["C"].metres.likely > 0


def test_grams_go_by_the_lot_s_own_grist() -> None:
    own = Yarn(id="thin", name="thin", metres_per_100g=800)
    design = chart(
        "A B | .x", times=60, yarns=[own], lots={"A": lot("a", yarn="thin"), "B": lot("b")}, metres_per_100g=400
    )
    need = needs(design)
    assert need["A"].grams.likely == pytest.approx(need["A"].metres.likely / 8)
    assert need["B"].grams.likely == pytest.approx(need["B"].metres.likely / 4)


def test_a_lot_s_own_grist_goes_before_its_base_s() -> None:
    base = Yarn(id="base", name="base", metres_per_100g=400)
    design = chart("A | ....", times=60, yarns=[base], lots={"A": lot("a", yarn="base", metres_per_100g=360)})
    assert needs(design)["A"].grams.likely == pytest.approx(needs(design)["A"].metres.likely / 3.6)


def test_what_is_planned_is_the_high_end_and_the_reserve() -> None:
    design = chart(
        "A | ....", times=40, lots={"A": lot("a", on_hand_g=0.25)}, allowances=Allowances(reserve_percent=20)
    )
    need = needs(design)["A"]
    assert need.planned_g == pytest.approx(need.grams.high * 1.2)
    assert need.short_g == pytest.approx(need.planned_g - 0.25)


def test_nothing_is_short_when_there_is_enough() -> None:
    assert needs(chart("A | ....", lots={"A": lot("a", on_hand_g=50)}))["A"].short_g == 0


def test_two_letters_of_one_lot_share_what_is_on_hand() -> None:
    one = lot("a", on_hand_g=1.0)
    design = chart("A B | .x", times=200, lots={"A": one, "B": one})
    need = needs(design)
    together = need["A"].planned_g + need["B"].planned_g
    assert need["A"].short_g + need["B"].short_g == pytest.approx(together - 1.0)


@given(
    st.lists(st.tuples(st.sampled_from(["AB", "BC", "CA", "AA"]), st.integers(0, 1)), min_size=1, max_size=8),
    st.integers(1, 20),
    st.integers(1, 5),
)
def test_the_letters_stitches_sum_to_all_stitches(lines: list[tuple[str, int]], width: int, times: int) -> None:
    rounds = tuple(Round(letters, bytes((start + i) % 2 for i in range(width))) for letters, start in lines)
    design = Design(bands=(Band(name="", times=times, rounds=rounds),), allowances=NO_TAILS)
    assert sum(need.stitches for need in needs(design).values()) == width * times * len(rounds)


def test_an_interval_adds_and_scales_end_by_end() -> None:
    assert (Interval(1, 2, 4) + Interval.exactly(1)) * 2 == Interval(4, 6, 10)
    with pytest.raises(ValueError, match="do not rise"):
        Interval(3, 2, 1)


def test_a_folded_hem_is_sewn_down_in_the_cast_on_s_letter_and_no_other_fold_is() -> None:
    sewn = Hat(cast_on=CastOn("B"), fold=Fold("in", 1))
    design = chart("A | ....", times=25, gauge=(25, 32), hat=sewn)
    assert extra_cm(design, "B", "hem sewn") == pytest.approx(3 * 100 * 0.4)
    for way in ("up", "roll"):
        assert extra_cm(chart("A | ....", times=25, hat=Hat(fold=Fold(way, 1))), "A", "hem") == 0
