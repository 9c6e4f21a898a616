"""Floats, strands, counts, fit and crown: what would go wrong at the needles."""

import pytest

from chartmaker.appraisal import appraise
from chartmaker.checks.finding import Finding
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import Hat
from chartmaker.model.settings import Limits
from tests.builders import chart

LOTS = {"A": (85.0, 0.0, 10.0), "B": (25.0, 0.0, 10.0), "C": (55.0, 0.0, 10.0)}


def found(design: Design, check: str) -> list[Finding]:
    return [finding for finding in appraise(design).findings if finding.check == check]


def test_a_float_longer_than_the_limit_is_reported_with_where_to_catch_it() -> None:
    design = chart("A | ..........\nA B | xxxxxxxxx.", times=15, gauge=(30, 34))
    (finding,) = found(design, "float-length")
    assert finding.severity == "warn"
    assert finding.place.round == 0
    assert finding.place.letters == "A"
    assert "15 floats of up to 9 stitches, 3.0 cm" in finding.message
    assert finding.remedy == "catch A behind stitches 6, 16, 26, 36, 46, 56 and 9 more"


def test_the_float_limit_is_the_design_s() -> None:
    design = chart("A B | xxxxxxxxx.", times=15, gauge=(30, 34), limits=Limits(float_cm=3.5))
    assert found(design, "float-length") == []


def test_three_letters_in_a_round_are_reported() -> None:
    (finding,) = found(chart("A B C | .x+x\nA B | .x.x"), "letters-in-round")
    assert finding.place.round == 1
    assert "A, B, C" in finding.message


def test_a_third_letter_that_is_named_but_not_worked_is_no_strand() -> None:
    assert found(chart("A B C | .x.x"), "letters-in-round") == []


def test_counts_that_do_not_meet_are_a_stop_at_their_round() -> None:
    (finding,) = found(chart("A | ....", "A | ......", times=[36, 20]), "stitch-counts")
    assert finding.severity == "stop"
    assert finding.place.round == 1
    assert finding.message == "6 cells × 20 eat 120 stitches, the round below has 144"
    assert finding.remedy == "work the repeat 24 times"


def test_a_wedge_that_eats_too_few_is_told_how_many_are_missing() -> None:
    (finding,) = found(chart("A | ... | >..\nA | .....", times=6), "stitch-counts")
    assert finding.remedy == "let each repeat eat 1 more"


def test_counts_that_no_repeat_reaches_are_told() -> None:
    (finding,) = found(chart("A | .......", "A | .....", times=[20, 14]), "stitch-counts")
    assert finding.remedy.startswith("work the repeat 28 times")
    (finding,) = found(chart("A | .......", "A | .....", times=[3, 4]), "stitch-counts")
    assert finding.remedy.startswith("no whole number")


def test_a_shaped_first_round_is_a_stop() -> None:
    (finding,) = found(chart("A | .. | >."), "stitch-counts")
    assert finding.place.round == 0
    assert "cast-on edge" in finding.message


def test_a_letter_without_a_lot_is_a_stop() -> None:
    (finding,) = found(chart("A B | .x.x", lots={"A": (80, 0, 0)}), "letter-without-lot")
    assert (finding.severity, finding.place.letters) == ("stop", "B")


@pytest.mark.parametrize(
    ("times", "findings"),
    [(48, 0), (47, 0), (52, 1), (36, 1)],
)
def test_a_hat_far_from_what_head_and_ease_ask_for_is_told(times: int, findings: int) -> None:
    """ANSUR II (Gordon et al. 2014): the median woman's head is 560 mm; 9 % less (The Knitter, 2019) is 51 cm."""
    hat = Hat(head_cm=56.0, ease_percent=-9.0)
    design = chart("A | ...", times=times, gauge=(28, 32), hat=hat)
    assert hat.wanted_cm == pytest.approx(51, abs=0.05)
    assert len(found(design, "circumference")) == findings


def test_ten_centimetres_under_the_head_is_too_tight_even_if_asked_for() -> None:
    """The Knitter (2019): up to 10 cm of negative ease is tolerated."""
    asked = Hat(head_cm=56.0, ease_percent=-20.0)
    (finding,) = found(chart("A | ....", times=31, gauge=(28, 32), hat=asked), "circumference")
    assert "will not go on" in finding.message
    assert found(chart("A | ....", times=33, gauge=(28, 32), hat=Hat(ease_percent=-16)), "circumference") == []


def test_a_hat_that_is_off_is_told_the_count_that_every_band_allows() -> None:
    """56 cm less 6 % at 28 to 10 cm are 147.4 stitches; of the multiples of 24, 144 is nearest."""
    (finding,) = found(chart("A | ....", "A | ........................", times=[30, 5]), "circumference")
    assert finding.remedy.startswith("cast on 144 stitches, 51.4 cm round")
    (finding,) = found(chart("A | " + "." * 100, times=1), "circumference")
    assert finding.remedy.startswith("no count that every band allows is nearer to 147 stitches")
    (finding,) = found(chart("A | ....", "A | . | +", times=[30, 5]), "circumference")
    assert "the bands allow no count" in finding.remedy


@pytest.mark.parametrize("head_cm", [33.88, 50.74, 53.2, 56.0, 59.7])
def test_heads_of_the_published_tables_can_be_fitted(head_cm: float) -> None:
    """WHO 2007, girls at birth and boys at five years; ANSUR II, women's 5th, 50th and 95th percentile."""
    hat = Hat(head_cm=head_cm, ease_percent=-6)
    stitches = round(hat.wanted_cm * 2.8 / 4)
    assert found(chart("A | ....", times=stitches, gauge=(28, 32), hat=hat), "circumference") == []


@pytest.mark.parametrize(("girth_cm", "size"), [(56, 7), (60, 7.5)])
def test_a_hat_s_trade_size_is_its_girth_over_pi(girth_cm: float, size: float) -> None:
    """Trade tables: girth in inches over π, to the nearest eighth; our radius at the edge is half of that width."""
    gauge = Gauge(stitches_per_10cm=20, rounds_per_10cm=30)
    appraisal = appraise(chart("A | .", times=round(girth_cm * 2), gauge=gauge))
    across_in = 2 * appraisal.profile.radius_cm[0] / 2.54
    assert round(across_in * 8) / 8 == size


def wedge(*lines: str) -> Design:
    return chart("\n".join(lines), times=8, gauge=(28, 32))


def test_a_crown_that_decreases_too_fast_puckers() -> None:
    design = wedge("A | .... | >>>>", "A | ........ | >>>>>>>>", "A | " + "." * 16, "A | " + "." * 16)
    (finding,) = found(design, "crown-pucker")
    assert finding.severity == "warn"
    assert finding.place.round == 1
    assert "flat disc" in finding.message


def test_a_crown_that_decreases_once_a_section_every_second_round_lies_flat() -> None:
    lines = []
    for stitches in range(16, 2, -1):
        lines += [f"A | {'.' * stitches} | >{'.' * (stitches - 1)}", f"A | {'.' * (stitches + 1)}"]
    assert found(wedge(*reversed(lines)), "crown-pucker") == []


def test_an_increase_gathers_and_is_only_noted() -> None:
    design = chart("A | ...... | +.+.+.\nA | ...", times=48, gauge=(28, 32))
    (finding,) = found(design, "crown-pucker")
    assert finding.severity == "note"
    assert "gathers" in finding.message


def test_a_tam_is_meant_to_gather_above_its_brim() -> None:
    design = chart("A | ...... | +.+.+.\nA | ...", times=48, gauge=(28, 32), hat=Hat(shape="tam"))
    assert found(design, "crown-pucker") == []
