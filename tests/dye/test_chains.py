"""Lots of one dyestuff that come from one pot, in the order of their strength."""

import pytest

from chartmaker.dye.chains import are_run_alike, chains, strengths
from chartmaker.dye.plan import plan_baths
from chartmaker.model.palette import Assist, Bath, Mordant, Palette, Planned
from tests.builders import lot

ALUM = (Mordant("alum", 10),)


def weld(bath_id: str, ratio: float, **fields) -> Bath:
    return Bath(**{"id": bath_id, "dyestuff": "weld", "ratio": ratio, "mordants": ALUM} | fields)


def test_the_weaker_of_two_like_baths_comes_from_an_exhaust_of_the_stronger():
    # Without measured lots each load keeps half: half the ratio is as strong as the first exhaust.
    palette = Palette(
        baths=(weld("weak", 0.4), weld("strong", 0.8)),
        lots=(lot("pale", bath="weak"), lot("full", bath="strong"), lot("paler", bath="weak", load=2)),
    )
    (plan,) = plan_baths(palette, {"pale": 10, "full": 12, "paler": 5})
    assert plan.bath.id == "strong"
    assert [load.lots for load in plan.loads] == [(("full", 12),), (("pale", 10),), (("paler", 5),)]
    assert [(each.lot, each.load, each.times_as_strong) for each in plan.joined] == [
        ("pale", 2, 1.0),
        ("paler", 3, 1.0),
    ]
    assert plan.lots == {"pale", "full", "paler"}


def test_a_lot_between_two_exhausts_keeps_its_own_bath():
    palette = Palette(
        baths=(weld("strong", 1.0), weld("between", 0.7)),
        lots=(lot("full", bath="strong"), lot("middling", bath="between")),
    )
    assert [chain.bath.id for chain in chains(palette, {"full": 5, "middling": 5})] == ["strong", "between"]


@pytest.mark.parametrize(
    "other",
    [
        weld("b", 0.5, part="leaf"),
        weld("b", 0.5, state="fresh"),
        weld("b", 0.5, mordants=(Mordant("alum", 12),)),
        weld("b", 0.5, assists=(Assist("chalk", 2),)),
        weld("b", 0.5, hottest_c=90.0),
        weld("b", 0.5, ph_start=8.0),
        weld("b", 0.5, dyestuff="dock"),
    ],
)
def test_baths_that_differ_in_what_moves_a_shade_stay_apart(other):
    assert not are_run_alike(weld("a", 1.0, hottest_c=80.0 if other.hottest_c else None), other)


def test_a_planned_lot_joins_the_lots_that_are_dyed():
    palette = Palette(baths=(weld("w", 1.0),), lots=(lot("first", bath="w"), lot("coming", planned=Planned("w", 2))))
    (plan,) = plan_baths(palette, {"coming": 5})
    assert [(load.load, load.lot, load.short_g) for load in plan.loads] == [(1, "first", 0), (2, "coming", 5)]


def test_strengths_fall_by_half_where_nothing_is_measured_and_say_so():
    found = strengths(Palette(), weld("w", 1.0), [1, 2, 3])
    assert [(each.likely, each.is_assumed) for each in found] == [(1.0, True), (0.5, True), (0.25, True)]
