"""Baths planned from what is short, against the recipes of an old book and plain sums."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.dye.fibre import MOISTURE_PERCENT, bone_dry_g, fibre_for
from chartmaker.dye.plan import BathPlan, plan_baths
from chartmaker.model.dyeing import DyeingHabits
from chartmaker.model.palette import Assist, Bath, Mordant, Palette, Planned
from tests.builders import lot
from tests.strategies import dyeing_habits

OUNCE_G = 28.349523125
"""Grams in an avoirdupois ounce, by definition."""


FREELY = DyeingHabits(skein_g=0, sample_g=0, scouring_loss_percent=0, handling_loss_percent=0)
"""Nothing is lost, kept or rounded, so that a recipe comes out in its own weights."""


def plan_of(bath: Bath, **short_g: float) -> BathPlan:
    lots = tuple(lot(f"lot{load}", bath=bath.id, load=load) for load in (1, 2, 3))
    (plan,) = plan_baths(Palette(baths=(bath,), lots=lots, dyeing=FREELY), short_g)
    return plan


@pytest.mark.parametrize(
    ("wool_oz", "alum_oz", "tartar_oz", "madder_oz"),
    [(100, 8, 2, 50), (16, 4, 1, 8)],
)
def test_old_recipes_come_out_in_their_own_weights(
    wool_oz: float, alum_oz: float, tartar_oz: float, madder_oz: float
) -> None:
    """Mairet 1916 (Project Gutenberg 50079): 100 oz wool take 8 alum, 2 tartar, 50 madder; 1 lb takes 4, 1 and 8 oz.

    As shares of the fibre these are 8, 2, 50 % and 25, 6.25, 50 % WOF, which is what a palette holds.
    """
    percent = {"alum": {100: 8.0, 16: 25.0}[wool_oz], "cream of tartar": {100: 2.0, 16: 6.25}[wool_oz]}
    bath = Bath(
        id="old", dyestuff="madder", ratio=0.5, mordants=tuple(Mordant(name, wof) for name, wof in percent.items())
    )
    plan = plan_of(bath, lot1=wool_oz * OUNCE_G)
    assert [item.grams / OUNCE_G for item in plan.mordants] == pytest.approx([alum_oz, tartar_oz])
    assert plan.dyestuff_g / OUNCE_G == pytest.approx(madder_oz)


def test_a_first_load_takes_what_is_short() -> None:
    plan = plan_of(Bath(id="b", dyestuff="weld", ratio=0.8, liquor_l_per_100g=4), lot1=25)
    assert [(load.load, load.lot, load.fibre_g) for load in plan.loads] == [(1, "lot1", 25)]
    assert plan.dyestuff_g == pytest.approx(20)
    assert plan.water_l == pytest.approx(1.0)


def test_loads_of_one_bath_go_together_and_weigh_the_same() -> None:
    bath = Bath(id="b", dyestuff="weld", ratio=1.0, mordants=(Mordant("alum", 10),), assists=(Assist("chalk", 2),))
    plan = plan_of(bath, lot1=10, lot2=30)
    assert [load.fibre_g for load in plan.loads] == [30, 30]
    assert [load.short_g for load in plan.loads] == [10, 30]
    assert plan.fibre_g == 60
    assert plan.dyestuff_g == 30  # for the first load alone; the exhaust uses what that leaves
    assert plan.mordants[0].grams == pytest.approx(6)  # for all the fibre
    assert plan.assists[0].grams == pytest.approx(0.6)


def test_an_exhaust_needs_the_loads_before_it() -> None:
    plan = plan_of(Bath(id="b", dyestuff="weld", ratio=1.0), lot3=12)
    assert [(load.load, load.lot, load.short_g) for load in plan.loads] == [
        (1, "lot1", 0),
        (2, "lot2", 0),
        (3, "lot3", 12),
    ]


def test_a_load_that_no_lot_records_goes_to_stock_without_a_name() -> None:
    bath = Bath(id="b", dyestuff="weld", ratio=1.0)
    (plan,) = plan_baths(Palette(baths=(bath,), lots=(lot("second", bath="b", load=2),)), {"second": 5})
    assert [load.lot for load in plan.loads] == ["", "second"]


def test_a_planned_lot_is_dyed_in_its_bath() -> None:
    bath = Bath(id="b", dyestuff="weld", ratio=1.0)
    palette = Palette(baths=(bath,), lots=(lot("coming", planned=Planned("b", 1)),))
    (plan,) = plan_baths(palette, {"coming": 5})
    assert plan.loads[0].lot == "coming"


def test_enough_yarn_and_unknown_baths_need_no_plan() -> None:
    palette = Palette(lots=(lot("loose"),), baths=(Bath(id="b", dyestuff="weld", ratio=1.0),))
    assert plan_baths(palette, {"loose": 10, "absent": 3}) == ()


def test_two_lots_of_one_load_are_dyed_as_one() -> None:
    bath = Bath(id="b", dyestuff="weld", ratio=1.0)
    lots = (lot("one", bath="b"), lot("two", bath="b"))
    (plan,) = plan_baths(Palette(baths=(bath,), lots=lots, dyeing=FREELY), {"one": 4, "two": 6})
    assert [(load.lot, load.fibre_g) for load in plan.loads] == [("one", 10)]


def test_fibre_to_weigh_out_takes_losses_a_sample_and_whole_skeins() -> None:
    # By hand: 40 g and 2 g for the sample; 10 % lost in scouring, 5 % in handling: 42 / (0.9 * 0.95) = 49.12 g,
    # which is two skeins of 25 g; 50 * 0.855 - 2 = 40.75 g come out, 0.75 g more than are short.
    habits = DyeingHabits(skein_g=25, sample_g=2, scouring_loss_percent=10, handling_loss_percent=5)
    bath = Bath(id="b", dyestuff="weld", ratio=0.5, mordants=(Mordant("alum", 10),), liquor_l_per_100g=4)
    (plan,) = plan_baths(Palette(baths=(bath,), lots=(lot("one", bath="b"),)), {"one": 40.0}, habits)
    (load,) = plan.loads
    assert (load.short_g, load.fibre_g, load.skeins) == (40.0, 50.0, 2)
    assert load.losses_g == pytest.approx(50 * (1 - 0.9 * 0.95))
    assert load.comes_out_g == pytest.approx(40.75)
    assert load.to_stock_g == pytest.approx(0.75)
    assert (plan.dyestuff_g, plan.mordants[0].grams, plan.water_l) == (25.0, 5.0, 2.0)


@pytest.mark.parametrize(("need_g", "fibre_g"), [(1.0, 25.0), (21.7, 25.0), (21.8, 50.0), (45.4, 50.0), (45.6, 75.0)])
def test_fibre_goes_up_to_the_next_whole_skein(need_g: float, fibre_g: float) -> None:
    # 25 g skeins lose 3 % and 2 % and a 2 g sample: 25 * 0.97 * 0.98 - 2 = 21.765 g of one, 45.53 g of two.
    assert fibre_for(need_g, DyeingHabits()) == fibre_g


@settings(max_examples=60)
@given(st.floats(0, 500), dyeing_habits())
def test_what_comes_out_is_never_less_than_what_is_short(need_g: float, habits: DyeingHabits) -> None:
    bath = Bath(id="b", dyestuff="weld", ratio=0.5)
    plans = plan_baths(Palette(baths=(bath,), lots=(lot("one", bath="b"),)), {"one": need_g}, habits)
    for plan in plans:
        assert plan.loads[0].comes_out_g >= need_g - 1e-6
        if habits.skein_g:
            one_less = (plan.loads[0].fibre_g - habits.skein_g) * habits.kept - habits.sample_g
            assert one_less < need_g + 1e-6  # no skein too many


def test_wool_in_room_air_holds_the_moisture_of_the_standard() -> None:
    """ASTM D2118: a moisture content of 12.0 % is a regain of 13.64 %."""
    dry = bone_dry_g(100.0)
    assert 100 * (100 - dry) / dry == pytest.approx(13.64)
    assert 100 - dry == pytest.approx(MOISTURE_PERCENT, abs=0.005)
