"""Pairs and rounds that do not read, and the ways out that are named."""

import pytest

from chartmaker.appraisal import appraise
from chartmaker.checks.finding import Finding
from chartmaker.model.design import Design
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Limits
from tests.builders import chart, lot

LIGHT, MIDDLE, DARK = (85.0, 0.0, 12.0), (60.0, 0.0, 30.0), (25.0, -5.0, -25.0)


def steady(lot_id: str, lab: tuple[float, float, float]) -> Lot:
    """Give a lot whose five readings hardly scatter, so that its bound is close to its difference."""
    lightness, green_red, blue_yellow = lab
    return lot(lot_id, labs=[(lightness + step / 100, green_red, blue_yellow) for step in (-2, -1, 0, 1, 2)])


def found(design: Design, check: str, palette: Palette | None = None) -> list[Finding]:
    return [finding for finding in appraise(design, palette).findings if finding.check == check]


def two(first: Lot, second: Lot, **settings: object) -> Design:
    return chart("A B | .x.x", times=30, lots={"A": first, "B": second}, **settings)


def test_a_lost_pair_is_warned_of_with_its_edge_and_figures() -> None:
    (finding,) = found(two(steady("a", (50, 0, 0)), steady("b", (55, 40, 0))), "pair-contrast")
    assert finding.severity == "warn"
    assert finding.place.letters == "AB"
    assert "lost" in finding.message
    assert "5.0 in value" in finding.message


def test_a_soft_pair_is_a_note_and_a_clear_one_nothing() -> None:
    (soft,) = found(two(steady("a", (50, 0, 0)), steady("b", (65, 0, 0))), "pair-contrast")
    assert soft.severity == "note"
    assert found(two(steady("a", (50, 0, 0)), steady("b", (72, 0, 0))), "pair-contrast") == []


def test_contrast_is_judged_on_the_lower_bound_not_on_the_difference() -> None:
    scattered = lot("b", labs=[(69, 0, 0), (71, 0, 0), (73, 0, 0)])
    design = two(steady("a", (50, 0, 0)), scattered)
    (pair,) = appraise(design).pairs
    assert pair.value_difference == pytest.approx(21)
    assert pair.grade == "soft"


def test_the_design_s_own_limits_decide() -> None:
    lots = steady("a", (50, 0, 0)), steady("b", (58, 0, 0))
    assert found(two(*lots, limits=Limits(value_clear=7, value_soft=3)), "pair-contrast") == []


def test_two_grounds_that_follow_each_other_may_be_close() -> None:
    lots = {"A": steady("a", (80, 0, 0)), "B": steady("b", (83, 0, 0)), "C": steady("c", (30, 0, 0))}
    design = chart("A C | .x.x\nB C | .x.x", times=30, lots=lots)
    assert found(design, "pair-contrast") == []
    grades = {pair.letters: pair.grade for pair in appraise(design).pairs}
    assert grades["AB"] == "lost"


def test_the_remedy_is_the_lot_with_the_least_change_of_hue() -> None:
    shelf = Palette(
        lots=(
            steady("pale-blue", (80, -10, -25)),
            steady("pale-red", (82, 22, 8)),
            steady("mid-red", (57, 40, 14)),
        )
    )
    (finding,) = found(two(steady("a", (45, 0, 0)), steady("red", (50, 45, 16))), "pair-contrast", shelf)
    assert finding.remedy_lot == ("B", "pale-red")
    assert "pale-red" in finding.remedy
    assert "clear" in finding.remedy


def test_a_remedy_makes_no_other_pair_worse() -> None:
    lots = {"A": steady("a", (45, 0, 0)), "B": steady("red", (50, 45, 16)), "C": steady("c", (84, 0, 0))}
    shelf = Palette(lots=(steady("pale-red", (82, 45, 16)), steady("dark-red", (20, 20, 8))))
    design = chart("C B | .x.x\nA B | .x.x", times=30, lots=lots)
    (finding,) = found(design, "pair-contrast", shelf)
    assert finding.remedy_lot == ("B", "dark-red")


def test_a_lot_that_is_taken_or_has_no_shade_is_no_remedy() -> None:
    lots = {"A": steady("a", (45, 0, 0)), "B": steady("red", (50, 45, 16)), "C": steady("c", (84, 0, 0))}
    design = chart("C | ....\nA B | .x.x", times=30, lots=lots)
    (finding,) = found(design, "pair-contrast", Palette(lots=(lot("unread"),)))
    assert finding.remedy_lot is None
    assert "dye one with a value under 25 or over 70" in finding.remedy


def test_applying_the_named_lot_mends_the_pair() -> None:
    shelf = Palette(lots=(steady("pale-red", (82, 22, 8)),))
    (finding,) = found(two(steady("a", (45, 0, 0)), steady("red", (50, 45, 16))), "pair-contrast", shelf)
    assert finding.remedy_lot is not None
    letter, lot_id = finding.remedy_lot
    mended = {"A": steady("a", (45, 0, 0)), letter: shelf.lots[0]}
    assert lot_id == shelf.lots[0].id
    assert found(chart("A B | .x.x", times=30, lots=mended), "pair-contrast") == []


def test_a_lost_round_is_told_with_the_letter_that_would_mend_it() -> None:
    lots = {"A": steady("a", LIGHT), "B": steady("b", (84, 20, 1)), "C": steady("c", DARK), "D": steady("d", MIDDLE)}
    design = chart("D | ....\nA C | .x.x\nA B | .x.x\nA B | x.x.", times=30, lots=lots)
    (finding,) = found(design, "round-contrast")
    assert finding.severity == "warn"
    assert finding.place.text.startswith("rounds 1–2")
    assert finding.place.round == 0
    assert finding.remedy == "work D in the place of A: the round becomes clear"


def test_a_round_without_a_shade_has_no_grade() -> None:
    appraisal = appraise(chart("A B | .x.x", times=30, lots={"A": steady("a", LIGHT), "B": lot("b")}))
    assert appraisal.rounds[0].grade == ""
    assert appraisal.rounds[0].value_difference is None
    assert appraisal.pairs[0].grade == ""


def test_a_round_of_three_is_as_good_as_its_worst_pair() -> None:
    lots = {"A": steady("a", LIGHT), "B": steady("b", DARK), "C": steady("c", (80, 0, 0))}
    appraisal = appraise(chart("A B C | .x+.", times=30, lots=lots))
    assert appraisal.rounds[0].grade == "lost"
    assert appraisal.rounds[0].value_difference == pytest.approx(5)


def test_a_plain_round_is_plain() -> None:
    line = appraise(chart("A | ....", lots={"A": steady("a", LIGHT)})).rounds[0]
    assert (line.grade, line.value_difference) == ("plain", 0.0)


def test_lights_and_darks_that_overlap_are_told() -> None:
    """The darkest of the lights stays lighter than the lightest of the darks (Mucklestone, 200 Fair Isle Motifs)."""
    lots = {
        "A": steady("a", (90, 0, 0)),
        "B": steady("b", (50, 0, 0)),
        "C": steady("c", (60, 0, 0)),
        "D": steady("d", (20, 0, 0)),
    }
    (finding,) = found(chart("A C | .x.x\nB D | .x.x", times=30, lots=lots), "light-and-dark")
    assert finding.place.letters == "BC"
    assert found(chart("A D | .x.x\nC B | .x.x", times=30, lots=lots), "light-and-dark") == []


def test_a_letter_that_plays_both_sides_takes_neither() -> None:
    lots = {"A": steady("a", LIGHT), "B": steady("b", DARK)}
    assert found(chart("A B | .x.x\nB A | .x.x", times=30, lots=lots), "light-and-dark") == []


def test_each_band_is_judged_for_itself() -> None:
    lots = {"A": steady("a", LIGHT), "B": steady("b", DARK), "C": steady("c", MIDDLE)}
    design = chart("A C | .x.x", "C B | .x.x", times=30, lots=lots)
    assert found(design, "light-and-dark") == []
