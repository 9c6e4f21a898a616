"""Lots of one dyestuff that come from one pot, in the order of their strength."""

import pytest

from chartmaker.dye.chains import are_run_alike, chains, strengths
from chartmaker.dye.plan import plan_baths
from chartmaker.model.palette import Assist, Bath, Mordant, Palette, Planned
from tests.builders import lot
from tests.dye.invented_dyes import lot_with, red_dye, shed

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


def measured_loads(bath_id: str, share: float):
    return [
        lot_with(f"{bath_id}-{load}", red_dye() * share ** (load - 1), scatter=0.0, bath=bath_id, load=load)
        for load in (1, 2, 3)
    ]


def test_an_exhaust_is_found_by_the_share_that_was_measured():
    # Each load keeps 0.3 of the dye: 0.3 of the ratio is as strong as the first exhaust, and half of it is not.
    baths = (weld("strong", 1.0), weld("weak", 0.3), weld("half", 0.5))
    lots = (*measured_loads("strong", 0.3), lot("pale", bath="weak"), lot("middling", bath="half"))
    palette = shed(lots, baths)
    found = chains(palette, {"strong-1": 5, "pale": 5, "middling": 5})
    assert [(chain.bath.id, sorted(chain.wanted)) for chain in found] == [("strong", [1, 2]), ("half", [1])]
    assert found[0].joined[0].times_as_strong == pytest.approx(1.0, abs=0.01)


def test_a_new_run_goes_by_the_ladder_of_one_that_was_run_alike():
    palette = shed(measured_loads("june", 0.3), (weld("june", 1.0), weld("july", 1.0), weld("other", 1.0, part="leaf")))
    like, unlike = (strengths(palette, palette.bath(name), [1, 2]) for name in ("july", "other"))
    assert [(each.likely, each.is_assumed) for each in like] == [
        (1.0, False),
        (pytest.approx(0.3, abs=1e-3), False),
    ]
    assert unlike[1].is_assumed


def test_strengths_fall_by_half_where_nothing_is_measured_and_say_so():
    found = strengths(Palette(), weld("w", 1.0), [1, 2, 3])
    assert [(each.likely, each.is_assumed) for each in found] == [(1.0, True), (0.5, True), (0.25, True)]
