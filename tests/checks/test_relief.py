"""Where a lot is short: the rounds that another could take are worked out, and really mend it."""

import pytest

from chartmaker.appraisal import Appraisal, appraise
from chartmaker.checks.relief import Relief, reliefs
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Allowances
from tests.builders import chart, lot

DARK, LIGHT = (25.0, 0.0, 0.0), (85.0, 0.0, 5.0)
NEAR_DARK = (30.0, 2.0, 0.0)
"""As good against the light as the dark itself."""
MIDDLE = (72.0, 0.0, 0.0)
"""Lost against the light."""


def short_hat(*others: Lot, dark_g: float = 5.0) -> Appraisal:
    """Give a hat of 40 rounds that takes some 9 g of its dark lot, with too little of it on hand."""
    design = chart(
        "\n".join(["A B | .x"] * 40),
        times=72,
        lots={"A": lot("light", lab=LIGHT, on_hand_g=100), "B": lot("dark", lab=DARK, on_hand_g=dark_g)},
        allowances=Allowances(reserve_percent=10),
    )
    return appraise(design, Palette(lots=others))


def after(appraisal: Appraisal, relief: Relief) -> Appraisal:
    return appraise(relief.edit.applied_to(appraisal.design), appraisal.palette)


def test_a_lot_with_yarn_to_spare_takes_the_fewest_rounds_that_help() -> None:
    appraisal = short_hat(lot("near", lab=NEAR_DARK, on_hand_g=50))
    short = appraisal.letter("B").requirement.short_g
    (relief,) = reliefs(appraisal)
    assert (relief.letter, relief.lot.id, relief.instead) == ("B", "near", "C")
    assert relief.spared_g >= short
    rounds = relief.last - relief.first + 1
    assert relief.spared_g * (rounds - 1) / rounds < short, "one round fewer would do"


def test_one_click_mends_what_was_short_and_makes_nothing_else_short() -> None:
    appraisal = short_hat(lot("near", lab=NEAR_DARK, on_hand_g=50))
    (relief,) = reliefs(appraisal)
    mended = after(appraisal, relief)
    assert mended.letter("B").requirement.short_g == pytest.approx(0, abs=0.05)
    assert mended.letter("C").requirement.short_g == 0
    # The carried strand between the rounds, and the ends where the cast-on was counted, are no stitch of these rounds.
    assert mended.letter("C").requirement.planned_g == pytest.approx(relief.taken_g, rel=0.06)
    assert relief.edit.inverse().applied_to(mended.design) == appraisal.design


def test_the_cost_in_contrast_is_what_the_changed_hat_is_judged_by() -> None:
    appraisal = short_hat(lot("middle", lab=MIDDLE, on_hand_g=50), lot("near", lab=NEAR_DARK, on_hand_g=50))
    found = reliefs(appraisal)
    assert [one.lot.id for one in found] == ["near", "middle"], "the one that costs nothing first"
    for relief in found:
        line = after(appraisal, relief).rounds[relief.first]
        assert line.grade == relief.grade
        assert line.value_difference_low == pytest.approx(relief.value_difference_low)
    assert (found[0].grade_before, found[0].grade, found[1].grade) == ("clear", "clear", "soft")


def test_a_lot_without_enough_to_spare_is_no_help() -> None:
    assert reliefs(short_hat(lot("near", lab=NEAR_DARK, on_hand_g=1.0))) == ()


def test_a_planned_lot_and_one_without_a_shade_are_no_help() -> None:
    assert reliefs(short_hat(lot("unread", on_hand_g=50))) == ()


def test_nothing_is_offered_where_nothing_is_short() -> None:
    assert reliefs(short_hat(lot("near", lab=NEAR_DARK, on_hand_g=50), dark_g=90)) == ()


def test_a_letter_that_is_the_lot_already_is_used_where_it_does_not_stand() -> None:
    design = chart(
        "\n".join(["A B | .x"] * 30),
        "\n".join(["A C | .x"] * 4),
        times=72,
        lots={
            "A": lot("light", lab=LIGHT, on_hand_g=100),
            "B": lot("dark", lab=DARK, on_hand_g=5),
            "C": lot("near", lab=NEAR_DARK, on_hand_g=50),
        },
    )
    appraisal = appraise(design)
    (relief,) = reliefs(appraisal)
    assert relief.instead == "C"
    assert after(appraisal, relief).design.letters_in_use == "ABC"


@pytest.mark.parametrize("dark_g", [3.45, 3.99, 4.52, 4.87])
def test_a_lot_whose_strand_is_cut_by_the_relief_is_enough_for_its_new_tails_too(dark_g: float) -> None:
    ends, middle = "\n".join(["B C | .x"] * 8), "\n".join(["A B | .x"] * 12)
    lots = {
        "A": lot("light", lab=LIGHT, on_hand_g=100),
        "B": lot("dark", lab=DARK, on_hand_g=dark_g),
        "C": lot("near", lab=(60.0, 0.0, 0.0), on_hand_g=100),
    }
    appraisal = appraise(chart(f"{ends}\n{middle}\n{ends}", times=36, lots=lots))
    (relief,) = (one for one in reliefs(appraisal) if one.lot.id == "near")
    assert relief.first >= 8
    assert relief.last < 20
    mended = after(appraisal, relief)
    assert mended.letter("B").requirement.short_g == 0
    assert all(letter.requirement.short_g == 0 for letter in mended.letters)
