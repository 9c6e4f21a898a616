"""What is at hand for dyeing, and what a bath really did."""

import datetime as dt

import pytest

from chartmaker.model.bath_record import BathRecord, LoadRecord
from chartmaker.model.dyeing import DyeingHabits, Dyestuff, Pot, Undyed
from chartmaker.model.palette import Bath, Palette, Yarn
from chartmaker.model.palette_edits import change_stock, change_yarn, delete_yarn

WOOL = Yarn(id="wool", name="wool")


def test_losses_follow_one_another():
    assert DyeingHabits(scouring_loss_percent=20, handling_loss_percent=10).kept == pytest.approx(0.8 * 0.9)


@pytest.mark.parametrize(
    ("fields", "sentence"),
    [
        ({"skein_g": -1}, "skein_g is -1, outside 0 to 1000"),
        ({"skein_g": 0.5}, "a skein weighs at least 1 g, or 0 for any"),
        ({"scouring_loss_percent": 81}, "scouring_loss_percent is 81, outside 0 to 80"),
        ({"handling_loss_percent": float("nan")}, "handling_loss_percent must be a finite number, not nan"),
    ],
)
def test_habits_that_cannot_be_are_refused(fields, sentence):
    with pytest.raises(ValueError, match=sentence):
        DyeingHabits(**fields)


def test_a_bath_as_run_has_what_was_noted_in_the_place_of_what_was_planned():
    record = BathRecord(
        dyestuff_g=60.0, hottest_c=83.0, loads=(LoadRecord(load=1, fibre_g=50.0), LoadRecord(load=2, fibre_g=40.0))
    )
    bath = Bath(id="b", dyestuff="madder", ratio=1.0, ph_start=6.8, hottest_c=70.0, record=record)
    run = bath.as_run
    assert (run.ratio, run.hottest_c, run.ph_start) == (1.2, 83.0, 6.8)
    assert bath.ratio == 1.0  # the recipe stays what it was


def test_a_load_is_recorded_once():
    with pytest.raises(ValueError, match="load 1 is recorded twice"):
        BathRecord(loads=(LoadRecord(load=1, fibre_g=5.0), LoadRecord(load=1, fibre_g=5.0)))


def test_a_shelf_tells_dry_from_fresh_but_holds_nothing_twice():
    dry, fresh = Dyestuff(name="weld"), Dyestuff(name="weld", state="fresh")
    assert Palette(dyestuffs=(dry, fresh)).dyestuffs == (dry, fresh)
    with pytest.raises(ValueError, match="two dyestuffs are called 'weld, dry'"):
        Palette(dyestuffs=(dry, dry))
    with pytest.raises(ValueError, match="two pots are called 'big'"):
        Palette(pots=(Pot(name="big", litres=5), Pot(name="big", litres=6)))


def test_the_stock_of_another_palette_comes_in_and_goes_back():
    before = Palette(name="mine", yarns=(WOOL,))
    stock = Palette(
        dyestuffs=(Dyestuff(name="weld", on_hand_g=80.0, identified_by="the warden"),),
        undyed=(Undyed(yarn="wool", on_hand_g=400.0),),
        pots=(Pot(name="big", litres=9.0),),
        dyeing=DyeingHabits(skein_g=50.0),
    )
    edit = change_stock(before, stock)
    after = edit.applied_to(before)
    assert (after.name, after.yarns, after.undyed_g("wool")) == ("mine", (WOOL,), 400.0)
    assert (after.dyestuffs, after.pots, after.dyeing) == (stock.dyestuffs, stock.pots, stock.dyeing)
    assert edit.inverse().applied_to(after) == before
    with pytest.raises(ValueError, match="there is no yarn 'silk'"):
        change_stock(before, Palette(undyed=(Undyed(yarn="silk", on_hand_g=1.0),)))


def test_undyed_yarn_follows_its_yarn():
    palette = Palette(yarns=(WOOL,), undyed=(Undyed(yarn="wool", on_hand_g=9.0),))
    assert change_yarn(palette, "wool", Yarn(id="fleece", name="wool")).after.undyed_g("fleece") == 9.0
    assert delete_yarn(palette, "wool").after.undyed == ()


def test_a_design_asks_the_palette_beside_it_what_is_at_hand():
    own = Palette(pots=(Pot(name="old", litres=2.0),))
    other = Palette(pots=(Pot(name="big", litres=9.0),), dyeing=DyeingHabits(skein_g=50.0))
    assert own.followed_by(other).pots == other.pots
    assert own.followed_by(other).dyeing.skein_g == 50.0
    assert own.followed_by(Palette()).pots == own.pots


def test_a_record_keeps_the_day_of_each_load():
    record = BathRecord(loads=(LoadRecord(load=2, fibre_g=5.0, dyed_on=dt.date(2026, 9, 13)),))
    found = record.of_load(2)
    assert found is not None
    assert found.dyed_on == dt.date(2026, 9, 13)
    assert record.of_load(1) is None
