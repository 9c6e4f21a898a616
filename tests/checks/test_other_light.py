"""Pairs that read in one light and not in another; the spectra are made for it, and said to be."""

import numpy as np

from chartmaker.appraisal import appraise
from chartmaker.checks.finding import Finding
from chartmaker.model.design import Design
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.reading import Spectrum
from chartmaker.model.settings import Viewing
from chartmaker.report.as_json import report_as_json
from tests.builders import chart, lot

NM = np.arange(400, 701, 10)


def made(name: str, reflectance: np.ndarray) -> Lot:
    """Give a lot with three equal spectra, so that its bound is its difference."""
    reading = Spectrum(start_nm=400, step_nm=10, reflectance=tuple(reflectance.tolist()))
    return Lot(id=name, name=name, readings=(reading,) * 3)


def step(edge_nm: float, low: float, high: float) -> np.ndarray:
    return low + (high - low) / (1 + np.exp(-(NM - edge_nm) / 12))


RED = made("red", step(595, 0.03, 0.55))
"""Lighter by lamplight, which is rich in long waves."""
DARK = made("dark", np.full(31, 0.05))
GREY = made("grey", np.full(31, 0.06))


def grey_below(value: float, name: str = "other") -> Lot:
    """Give a grey with this much less value than the red has in daylight."""
    red = appraise(chart("A B | .x.x", lots={"A": RED, "B": DARK})).letter("A").shade
    assert red is not None
    luminance = ((red.value - value + 16) / 116) ** 3
    return made(name, np.full(31, luminance))


def grey_above(value: float) -> Lot:
    return grey_below(-value)


def found(design: Design, palette: Palette | None = None) -> list[Finding]:
    return [finding for finding in appraise(design, palette).findings if finding.check == "other-light"]


def two(second: Lot, **settings: object) -> Design:
    return chart("A B | .x.x", times=30, lots={"A": RED, "B": second}, **settings)


def test_a_pair_that_turns_soft_by_lamplight_is_a_note_with_both_figures() -> None:
    # The grey stays, the red comes nearer to it from below.
    design = two(grey_above(20.5))
    (pair,) = appraise(design).pairs
    lamp = next(there for there in pair.in_lights if there.illuminant == "A")
    assert (pair.grade, lamp.grade) == ("clear", "soft")
    (finding,) = found(design)
    assert finding.severity == "note"
    assert finding.place.letters == "AB"
    assert "are clear in daylight (D65), but soft by an incandescent lamp (A)" in finding.message
    assert f"{lamp.value_difference_low:.1f} apart" in finding.message
    assert f"in the place of {pair.value_difference_low:.1f}" in finding.message


def test_a_pair_that_is_lost_by_lamplight_is_warned_of() -> None:
    (finding,) = found(two(grey_above(10.5)))
    assert finding.severity == "warn"
    assert "are soft in daylight (D65), but lost by an incandescent lamp" in finding.message


def test_a_pair_that_gains_by_other_lights_and_one_that_stays_are_left_alone() -> None:
    assert found(chart("A B | .x.x", times=30, lots={"A": DARK, "B": made("pale", np.full(31, 0.7))})) == []
    lamp = appraise(two(grey_below(19.5))).pairs[0].in_lights[0]
    assert (lamp.illuminant, lamp.grade) == ("A", "clear")


def test_a_pair_that_is_lost_anyway_is_told_of_once_by_its_own_check() -> None:
    design = two(grey_above(6))
    assert found(design) == []
    checks = [finding.check for finding in appraise(design).findings if "lost" in finding.message]
    assert checks == ["pair-contrast", "round-contrast"]


def test_the_worst_light_depends_on_the_design_s_own() -> None:
    design = two(grey_below(19.0), viewing=Viewing(illuminant="A"))
    assert appraise(design).pairs[0].grade == "clear"
    (finding,) = found(design)
    assert "clear by an incandescent lamp (A), but soft in daylight (D65)" in finding.message


def test_a_lot_without_spectra_is_never_accused_of_another_light() -> None:
    shade = appraise(two(grey_above(20.5))).letter("B").shade
    assert shade is not None
    design = two(lot("lab", labs=[shade.lab] * 3))
    assert appraise(design).pairs[0].grade == "clear"
    assert found(design) == []


def test_letters_that_only_follow_each_other_may_come_near_in_any_light() -> None:
    lots = {"A": RED, "B": grey_above(20.5), "C": DARK}
    design = chart("A C | .x.x\nB C | .x.x", times=30, lots=lots)
    assert {finding.place.letters for finding in found(design)}.isdisjoint({"AB"})
    assert any(pair.letters == "AB" for pair in appraise(design).pairs)


def test_the_remedy_is_a_lot_that_keeps_the_grade_in_that_light_too() -> None:
    steady, near = grey_above(30), grey_above(20.6)
    shelf = Palette(
        lots=tuple(
            Lot(id=name, name=name, readings=one.readings) for name, one in (("paler", steady), ("no better", near))
        )
    )
    (finding,) = found(two(grey_above(20.5)), shelf)
    assert finding.remedy_lot == ("B", "paler")
    assert "clear there too" in finding.remedy
    assert found(two(shelf.lots[0])) == []


def test_a_lot_that_is_not_known_by_spectra_is_no_remedy_for_another_light() -> None:
    (finding,) = found(two(grey_above(20.5)), Palette(lots=(lot("white", labs=[(97, 0, 0)] * 3),)))
    assert finding.remedy_lot is None
    assert finding.remedy == "no lot at hand would stay clear there; look at both in that light before you knit"


def test_the_report_carries_other_lights_and_other_eyes() -> None:
    (pair,) = report_as_json(appraise(two(grey_above(20.5))))["pairs"]
    assert [there["illuminant"] for there in pair["in_lights"]] == ["A", "LED-B3", "FL11"]
    assert pair["in_lights"][0]["grade"] == "soft"
    assert pair["in_lights"][0]["value_difference_low"] < 20 < pair["value_difference_low"]
    assert [eyes["kind"] for eyes in pair["to_eyes"]] == ["protan", "deutan", "tritan"]
    assert pair["to_eyes"][1]["ciede2000"] < pair["ciede2000"] - 1  # deutan: a red is less of one
