"""A bath is written down as it was run, and the lots that came out of it stand in the palette."""

import datetime as dt
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from chartmaker.dye.plan import plan_baths
from chartmaker.dye.recording import complete_record, record_plan, taken_off
from chartmaker.dye.supply import supplies
from chartmaker.files.palette_reading import palette_from_text
from chartmaker.files.palette_writing import palette_to_text
from chartmaker.model.bath_record import BathRecord, LoadRecord
from chartmaker.model.dyeing import DyeingHabits, Dyestuff, Undyed
from chartmaker.model.palette import Bath, Palette, Planned, Yarn
from chartmaker.model.palette_edits import change_lot, delete_lot
from tests.builders import lot
from tests.strategies import palettes

DAY = dt.date(2026, 11, 26)
WOOL = Yarn(id="wool", name="wool")
WELD = Bath(id="weld", dyestuff="weld", ratio=0.8, ph_start=7.4, notes="the recipe")
FIRST = lot("first", planned=Planned("weld", 1), yarn="wool")
SECOND = lot("second", planned=Planned("weld", 2), yarn="wool")
PALETTE = Palette(
    yarns=(WOOL,),
    baths=(WELD,),
    lots=(FIRST, SECOND),
    dyeing=DyeingHabits(skein_g=50, sample_g=0, scouring_loss_percent=0, handling_loss_percent=0),
)


def plan_of(palette: Palette, **short_g: float):
    (plan,) = plan_baths(palette, short_g)
    return plan


def record(*loads: tuple[int, float, float | None], **fields) -> BathRecord:
    made = tuple(LoadRecord(load=load, fibre_g=fibre, dry_g=dry) for load, fibre, dry in loads)
    return BathRecord(**{"dyed_on": DAY, "loads": made} | fields)


def test_planned_lots_become_real_under_their_own_ids():
    plan = plan_of(PALETTE, first=30, second=20)
    done = record_plan(PALETTE, PALETTE, plan, record((1, 50, 47.5), (2, 50, 48.0), ph_start=7.1))
    after = done.edit.applied_to(PALETTE)
    assert done.lots == ("first", "second")
    first, second = after.lots
    assert (first.planned, first.bath, first.load, first.dyed_on, first.on_hand_g) == (None, "weld", 1, DAY, 47.5)
    assert (second.bath, second.load, second.on_hand_g, second.yarn) == ("weld", 2, 48.0, "wool")
    (bath,) = after.baths
    assert (bath.id, bath.ph_start, bath.as_run.ph_start) == ("weld", 7.4, 7.1)  # what was planned stays beside it
    assert [load.lot for load in bath.record.loads] == ["first", "second"]
    assert done.edit.inverse().applied_to(after) == PALETTE


def test_a_recipe_that_was_run_before_stays_and_the_new_run_is_a_bath_of_its_own():
    palette = replace(PALETTE, lots=(lot("old", bath="weld", yarn="wool", on_hand_g=3.0),))
    done = record_plan(palette, palette, plan_of(palette, old=30), record((1, 50, 46.0)))
    after = done.edit.after
    assert after.bath("weld") == WELD
    assert done.bath == "weld-2026-11-26"
    assert after.lot("old").on_hand_g == 3.0  # another dye lot, which is never quite the same
    new = after.lot(done.lots[0])
    assert (new.bath, new.load, new.on_hand_g, new.yarn) == (done.bath, 1, 46.0, "wool")
    assert new.name == "Weld, first bath, 2026-11-26"


def test_a_load_that_is_not_dry_yet_makes_its_lot_when_it_was_weighed():
    plan = plan_of(PALETTE, first=30, second=20)
    wet = record_plan(PALETTE, PALETTE, plan, record((1, 50, 47.0), (2, 50, None))).edit.after
    assert wet.lot("second").planned == Planned("weld", 2)
    noted = wet.baths[0].record
    loads = tuple(replace(load, dry_g=48.5) if load.load == 2 else load for load in noted.loads)
    done = complete_record(wet, "weld", replace(noted, loads=loads))
    assert done.lots == ("second",)
    assert (done.edit.after.lot("second").on_hand_g, done.edit.after.lot("first").on_hand_g) == (48.5, 47.0)


def test_a_weight_that_is_put_right_changes_what_is_on_hand_by_as_much():
    after = record_plan(PALETTE, PALETTE, plan_of(PALETTE, first=30), record((1, 50, 47.0))).edit.after
    used = replace(after, lots=tuple(replace(one, on_hand_g=one.on_hand_g / 2) for one in after.lots))
    noted = used.baths[0].record
    right = replace(noted, loads=(replace(noted.loads[0], dry_g=45.0),))
    assert complete_record(used, "weld", right).edit.after.lot("first").on_hand_g == 47.0 / 2 - 2.0
    with pytest.raises(ValueError, match="there is no bath 'absent'"):
        complete_record(used, "absent", right)


def test_a_lot_that_was_renamed_is_known_to_the_record_and_one_that_was_deleted_stays_away():
    after = record_plan(PALETTE, PALETTE, plan_of(PALETTE, first=30), record((1, 50, 47.0))).edit.after
    renamed = change_lot(after, "first", replace(after.lot("first"), id="gold")).after
    assert renamed.baths[0].record.loads[0].lot == "gold"
    gone = delete_lot(renamed, "gold").after
    done = complete_record(gone, "weld", replace(gone.baths[0].record, notes="sold"))
    assert done.lots == ()
    assert [lot.id for lot in done.edit.after.lots] == ["second"]


def test_the_next_load_goes_on_in_the_liquor_that_is_there():
    after = record_plan(PALETTE, PALETTE, plan_of(PALETTE, first=30, second=20), record((1, 50, 47.0))).edit.after
    plan = plan_of(after, second=20)
    assert [load.load for load in plan.loads] == [2]
    assert plan.is_going_on
    assert (plan.dyestuff_g, plan.assists, plan.fibre_g) == (0.0, (), 50)
    done = record_plan(after, after, plan, record((2, 50, 48.0), ph_end=6.9, notes="next day"))
    (bath,) = done.edit.after.baths
    assert [(load.load, load.lot) for load in bath.record.loads] == [(1, "first"), (2, "second")]
    assert bath.record.ph_end == 6.9
    assert done.edit.after.lot("second").on_hand_g == 48.0


def test_a_planned_lot_of_a_bath_that_was_run_is_moved_to_the_new_run():
    palette = replace(
        PALETTE, lots=(lot("old", bath="weld", yarn="wool"), SECOND, lot("third", planned=Planned("weld", 3)))
    )
    plan = plan_of(palette, second=20, third=10)
    assert [load.load for load in plan.loads] == [1, 2, 3]
    done = record_plan(palette, palette, plan, record((1, 50, 45.0), (2, 50, 46.0)))
    after = done.edit.after
    assert after.lot("second").bath == done.bath
    assert after.lot("third").planned == Planned(done.bath, 3)
    assert [load.load for load in plan_of(after, third=10).loads] == [3]


def test_what_the_palette_lacks_is_brought_from_what_is_at_hand():
    done = record_plan(Palette(), PALETTE, plan_of(PALETTE, first=30), record((1, 50, 47.0)))
    after = done.edit.applied_to(Palette())
    assert [each.id for each in after.baths] == ["weld"]
    assert after.yarns == (WOOL,)
    assert after.lot("first").on_hand_g == 47.0


def test_lots_of_one_load_share_its_weight_by_what_is_short():
    palette = replace(PALETTE, lots=(FIRST, lot("other", planned=Planned("weld", 1), yarn="wool")))
    done = record_plan(palette, palette, plan_of(palette, first=30, other=10), record((1, 50, 44.0)))
    assert [done.edit.after.lot(each).on_hand_g for each in ("first", "other")] == [33.0, 11.0]


@settings(max_examples=30, deadline=None, phases=[Phase.generate], suppress_health_check=[HealthCheck.too_slow])
@given(palettes(), st.data())
def test_of_any_palette_a_record_makes_lots_that_weigh_what_came_out_and_can_be_taken_back(palette, data):
    short = {lot.id: data.draw(st.floats(0.1, 500)) for lot in palette.lots}
    for plan in plan_baths(palette, short):
        loads = tuple(
            LoadRecord(load=load.load, fibre_g=50.0, dry_g=data.draw(st.floats(0, 500))) for load in plan.loads
        )
        done = record_plan(palette, palette, plan, BathRecord(dyed_on=DAY, loads=loads))
        after = done.edit.applied_to(palette)
        before = {lot.id: lot.on_hand_g for lot in palette.lots}
        gained = sum(lot.on_hand_g - before.get(lot.id, 0.0) for lot in after.lots)
        assert gained == pytest.approx(sum(load.dry_g for load in loads), abs=0.1)
        assert all(after.lot(lot_id).planned is None for lot_id in done.lots)
        assert {after.lot(lot_id).bath for lot_id in done.lots} == {done.bath}
        assert after.bath(done.bath).record is not None
        assert palette_from_text(palette_to_text(after), "after") == after
        assert done.edit.inverse().applied_to(after) == palette
        again = complete_record(after, done.bath, after.bath(done.bath).record)
        assert again.lots == ()  # nothing comes of what is on record already
        assert again.edit.after == after


def test_fibre_and_dyestuff_are_taken_off_the_store_but_not_below_nothing():
    palette = replace(
        PALETTE,
        undyed=(Undyed(yarn="wool", on_hand_g=80.0),),
        dyestuffs=(Dyestuff(name="weld", on_hand_g=30.0), Dyestuff(name="weld", state="fresh", on_hand_g=90.0)),
    )
    plan = plan_of(palette, first=30, second=20)
    after = taken_off(palette, plan, record((1, 50, 47.0), (2, 50, 47.0), dyestuff_g=40.0))
    assert after.undyed_g("wool") == 0.0
    assert [each.on_hand_g for each in after.dyestuffs] == [0.0, 90.0]


def test_what_was_reckoned_with_on_the_shelf_is_what_is_taken_off_it():
    """By hand: 12 g dry are there and 8 g more come from fresh, of which 100 g dry to 20 g: 40 g fresh."""
    shelf = (
        Dyestuff(name=" Weld", part="leaf", on_hand_g=12.0),
        Dyestuff(name="weld", part="leaf", state="fresh", on_hand_g=100.0, dries_to_percent=20.0),
    )
    palette = replace(PALETTE, dyestuffs=shelf)
    plan = plan_of(palette, first=25)
    (supply,) = supplies([plan], shelf)
    assert supply.at_hand_g == pytest.approx(12 + 20)
    after = taken_off(palette, plan, record((1, 25, 24.0), dyestuff_g=20.0))
    assert [each.on_hand_g for each in after.dyestuffs] == [0.0, 60.0]
