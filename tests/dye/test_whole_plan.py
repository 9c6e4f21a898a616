"""All baths together: what they share, when they are run, and what is to be got."""

from dataclasses import replace

import pytest

from chartmaker.dye.dye_plan import Need, whole_plan
from chartmaker.dye.timetable import COMMON, KINDS, MAIRET
from chartmaker.model.dyeing import DyeingHabits, Dyestuff, Pot, Undyed
from chartmaker.model.palette import Assist, Bath, Mordant, Palette, Yarn
from tests.builders import lot

ALUM = Mordant("alum", 10.0)
PALETTE = Palette(
    yarns=(Yarn(id="wool", name="2-ply wool"), Yarn(id="silk", name="silk")),
    baths=(
        Bath(id="weld", dyestuff="weld", ratio=0.8, mordants=(ALUM,), assists=(Assist("washing soda", 2),), minutes=60),
        Bath(id="grey", dyestuff="oak", ratio=1.0, mordants=(ALUM, Mordant("iron", 2.0)), state="fresh"),
    ),
    lots=(
        lot("weld-1", bath="weld", yarn="wool"),
        lot("weld-2", bath="weld", load=2, yarn="wool"),
        lot("grey-1", bath="grey", yarn="silk"),
        lot("found"),
    ),
    dyestuffs=(Dyestuff(name="weld", on_hand_g=25.0),),
    undyed=(Undyed(yarn="wool", on_hand_g=60.0),),
    pots=(Pot(name="big", litres=9.0),),
    dyeing=DyeingHabits(skein_g=50, sample_g=0, scouring_loss_percent=0, handling_loss_percent=0),
)


def plan_of(**short_g: float):
    needs = [
        Need(lot=name.replace("_", "-"), planned_g=grams, on_hand_g=0.0, designs=("Cap",))
        for name, grams in short_g.items()
    ]
    return whole_plan(PALETTE, needs)


def test_the_list_has_each_thing_once_with_what_is_at_hand_taken_off():
    shopping = {item.name: item for item in plan_of(weld_2=40, grey_1=30).shopping}
    assert (shopping["2-ply wool"].needed_g, shopping["2-ply wool"].missing_g) == (100, 40)  # two loads of one skein
    assert shopping["2-ply wool"].skeins == 1
    assert (shopping["silk"].needed_g, shopping["silk"].at_hand_g) == (50, 0)
    assert shopping["weld (dry)"].missing_g == pytest.approx(0.8 * 50 - 25)
    assert shopping["alum"].needed_g == pytest.approx(15)  # one line for both baths
    assert shopping["alum"].at_hand_g is None
    assert shopping["iron"].cautions


def test_what_is_not_short_is_not_planned_and_what_has_no_bath_is_named():
    plan = plan_of(weld_1=0, found=5)
    assert plan.cards == ()
    assert [need.lot for need in plan.without_bath] == ["found"]


def test_the_steps_follow_one_another_and_each_says_where_it_is_from():
    card = plan_of(weld_2=40).card("weld")
    steps = card.timetable
    assert [step.kind for step in steps] == [
        "weigh", "soak", "mordant", "extract", "dye", "rest", "dye", "rest", "rinse", "dry",
    ]  # fmt: skip
    assert all(step.kind in KINDS and step.hours > 0 and step.source for step in steps)
    by_kind = {step.kind: step for step in steps}
    assert (by_kind["mordant"].source, by_kind["soak"].source, by_kind["dye"].source) == (MAIRET, COMMON, "the recipe")
    assert by_kind["extract"].starts_h == by_kind["mordant"].starts_h  # beside it
    ready = max(by_kind["extract"].ends_h, by_kind["mordant"].ends_h)
    first_dye = next(step for step in steps if step.kind == "dye")
    assert first_dye.starts_h == ready
    assert first_dye.hours == pytest.approx(2.0)  # an hour to heat, 60 minutes by the recipe
    after = [step for step in steps if step.starts_h >= ready]
    assert [step.starts_h for step in after[1:]] == [step.ends_h for step in after[:-1]]
    assert card.hours == steps[-1].ends_h


def test_hazards_stand_at_the_step_where_the_hand_meets_them():
    steps = plan_of(weld_1=40).card("weld").timetable
    by_kind = {step.kind: " ".join(step.cautions) for step in steps}
    assert "H318" in by_kind["mordant"]
    assert "dust mask" in by_kind["mordant"]
    assert "below a boil" in by_kind["dye"]
    assert "Burns eyes" in by_kind["dye"]
    assert by_kind["soak"] == ""


def test_iron_saddens_after_the_dyeing_in_its_own_pot():
    card = plan_of(grey_1=30).card("grey")
    kinds = [step.kind for step in card.timetable]
    assert kinds.index("sadden") == kinds.index("dye") + 1
    sadden = next(step for step in card.timetable if step.kind == "sadden")
    assert "H302" in " ".join(sadden.cautions)
    assert card.pot.pot is None  # `big` is not kept for iron


def test_a_bath_that_is_not_planned_is_not_given():
    with pytest.raises(ValueError, match="bath 'grey' is not in the plan"):
        plan_of(weld_1=5).card("grey")


def test_the_steps_of_a_bath_stand_in_the_order_in_which_they_begin():
    palette = replace(PALETTE, pots=(Pot(name="pan", litres=2.5),))
    (card,) = whole_plan(palette, [Need(lot="weld-1", planned_g=90, on_hand_g=0, designs=("cap",))]).cards
    steps = card.timetable
    assert sum(step.kind == "mordant" for step in steps) > 1
    assert [step.starts_h for step in steps] == sorted(step.starts_h for step in steps)
    assert steps[[step.kind for step in steps].index("extract")].starts_h < steps[-1].starts_h
