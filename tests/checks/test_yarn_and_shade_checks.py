"""Yarn that is short, and shades that rest on little."""

import pytest

from chartmaker.appraisal import appraise
from chartmaker.checks.finding import Finding
from chartmaker.knit.loop import loop_from_gauge
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.palette import Bath, Lot, Planned
from chartmaker.model.reading import ScreenReading
from tests.builders import chart, lot

BATH = Bath(id="madder-sept", dyestuff="madder", ratio=1.0)


def found(design: Design, check: str) -> list[Finding]:
    return [finding for finding in appraise(design).findings if finding.check == check]


def plain(one: Lot, **settings: object) -> Design:
    return chart("\n".join(["A | ...."] * 30), times=36, lots={"A": one}, **settings)


def test_a_short_lot_is_told_with_the_bath_that_makes_more() -> None:
    design = plain(lot("madder-1", (40, 40, 25), bath="madder-sept", on_hand_g=3.0), baths=[BATH])
    (finding,) = found(design, "yarn-short")
    need = appraise(design).letter("A").requirement
    assert finding.severity == "warn"
    assert f"{need.short_g:.0f} g short" in finding.message
    assert finding.remedy == (
        "dye 25 g of fibre as the first load of bath madder-sept, 25 g of madder"  # one skein, at 1 g to the gram
    )


def test_a_short_exhaust_names_its_exhaust() -> None:
    design = plain(lot("madder-3", (60, 20, 20), bath="madder-sept", load=3), baths=[BATH])
    (finding,) = found(design, "yarn-short")
    assert finding.remedy.endswith("as exhaust 2 of bath madder-sept, in the liquor of the load before it")


def test_a_lot_without_a_bath_says_that_nothing_can_be_planned() -> None:
    (finding,) = found(plain(lot("found", (40, 0, 0))), "yarn-short")
    assert "no bath is recorded" in finding.remedy


def test_enough_yarn_is_no_finding() -> None:
    assert found(plain(lot("plenty", (40, 0, 0), on_hand_g=100)), "yarn-short") == []


@pytest.mark.parametrize(
    ("one", "severity", "words"),
    [
        (lot("a", (50, 0, 0)), "note", "rests on one reading"),
        (Lot(id="a", name="a", readings=(ScreenReading(hex="#8a3b2f"),)), "note", "screen colour"),
        (lot("a"), "warn", "has no reading"),
        (lot("a", planned=Planned("madder-sept", 2)), "warn", "planned, not dyed"),
    ],
)
def test_a_shade_that_rests_on_little_says_so(one: Lot, severity: str, words: str) -> None:
    (finding,) = found(plain(one, baths=[BATH]), "shade-basis")
    assert finding.severity == severity
    assert words in finding.message


def test_several_readings_are_no_finding() -> None:
    assert found(plain(lot("a", labs=[(50, 0, 0), (51, 0, 0)])), "shade-basis") == []


def test_findings_come_worst_first() -> None:
    design = chart("A B | .x.x.", times=3, lots={"A": (50, 0, 0)})
    order = [finding.severity for finding in appraise(design).findings]
    assert order == sorted(order, key=["stop", "warn", "note"].index)
    assert set(order) == {"stop", "warn", "note"}


def test_a_swatch_that_is_passed_over_is_told_with_its_place() -> None:
    (finding,) = found(plain(lot("a"), swatches=(Swatch(stitches=1000, metres=1.0, passed=1000),)), "swatch")
    assert (finding.severity, finding.place.text) == ("warn", "swatch 1")
    assert "floats alone would take 3.93 m" in finding.message


def test_a_swatch_far_from_what_the_gauge_allows_is_told_and_one_near_it_is_not() -> None:
    gauge = loop_from_gauge(Gauge()).cm.likely
    near, far = (Swatch(stitches=1000, metres=10 * gauge * factor) for factor in (1.25, 1.35))
    (finding,) = found(plain(lot("a"), swatches=(near, far)), "swatch")
    assert (finding.severity, finding.place.text) == ("note", "swatch 2")
    assert f"about {gauge:.2f} cm" in finding.message
