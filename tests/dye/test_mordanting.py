"""One mordanting for all skeins of a mordant, in turns that the pots hold."""

import pytest

from chartmaker.dye.mordanting import mordantings
from chartmaker.dye.plan import plan_baths
from chartmaker.dye.pots import pot_for
from chartmaker.model.dyeing import DyeingHabits, Pot
from chartmaker.model.palette import Bath, Mordant, Palette
from tests.builders import lot

ALUM, IRON = Mordant("alum", 10.0), Mordant("iron (ferrous sulphate)", 2.0)
SKEINS = DyeingHabits(skein_g=50, sample_g=0, scouring_loss_percent=0, handling_loss_percent=0)
BATHS = (
    Bath(id="weld", dyestuff="weld", ratio=1.0, mordants=(ALUM,)),
    Bath(id="grey", dyestuff="oak", ratio=1.0, mordants=(Mordant("Alum", 10.0), IRON)),
    Bath(id="plain", dyestuff="walnut", ratio=1.0),
)


def planned(*pots: Pot, habits: DyeingHabits = SKEINS, **short_g: float):
    palette = Palette(baths=BATHS, lots=tuple(lot(bath.id, bath=bath.id) for bath in BATHS), dyeing=habits)
    return mordantings(plan_baths(palette, short_g), pots, habits)


def test_skeins_of_one_mordant_share_a_pot_and_iron_stands_apart():
    alum, iron = planned(weld=100, grey=50, plain=50)
    assert alum.baths == (("weld", 100), ("grey", 50))
    assert (alum.portions[0].name, alum.portions[0].grams, alum.metal) == ("alum", 15.0, "")
    assert (iron.baths, iron.portions[0].grams, iron.metal) == ((("grey", 50),), 1.0, "iron")


def test_a_pot_that_does_not_hold_all_makes_turns_of_whole_skeins():
    # 4 l to 100 g: 250 g want 10 l; a pot of 4.5 l holds 112 g, two skeins of 50 g: three turns.
    (alum,) = planned(Pot(name="small", litres=4.5), weld=250)
    assert [turn.fibre_g for turn in alum.turns] == [100, 100, 50]
    assert [turn.mordants[0].grams for turn in alum.turns] == [10, 10, 5]
    assert all(turn.water_l <= 4.5 for turn in alum.turns)
    assert alum.water_l == pytest.approx(10.0)
    assert "3 turns in small" in alum.pot.text


def test_weights_are_parted_evenly_where_no_skeins_are_wound():
    freely = DyeingHabits(skein_g=0, sample_g=0, scouring_loss_percent=0, handling_loss_percent=0)
    (alum,) = planned(Pot(name="small", litres=3.0), habits=freely, weld=100)
    assert [turn.fibre_g for turn in alum.turns] == [50, 50]


def test_iron_never_goes_into_a_pot_for_other_baths_nor_others_into_irons():
    big, rusty = Pot(name="big", litres=9.0), Pot(name="rusty", litres=5.0, kept_for="iron")
    alum, iron = planned(big, rusty, grey=50)
    assert (alum.pot.pot, iron.pot.pot) == (big, rusty)
    alone = planned(big, grey=50)[1].pot
    assert alone.pot is None
    assert "no pot is kept for iron" in alone.text
    assert planned(rusty, weld=50)[0].pot.pot is None


def test_the_smallest_pot_that_holds_the_liquor_is_taken():
    pots = [Pot(name="big", litres=9.0), Pot(name="middle", litres=4.0), Pot(name="small", litres=2.0)]
    assert pot_for(pots, 3.0).pot.name == "middle"
    assert pot_for(pots, 4.0).pot.name == "middle"
    use = pot_for(pots, 20.0)
    assert (use.pot.name, use.turns) == ("big", 3)
    assert pot_for([], 3.0).text == "a dye pot that holds 3.0 L of liquor"


def test_a_pot_too_small_for_one_skein_is_told_so_and_is_never_said_to_hold_it():
    pan = Pot(name="pan", litres=0.5)
    (alum,) = planned(pan, weld=50)
    # A skein of 50 g wants 2 L at 4 L to 100 g.
    assert alum.pot.is_too_small
    assert "takes the" not in alum.pot.text
    assert "nor the 2.0 L of one skein: pan (0.5 L) is too small" in alum.pot.text


def test_a_bath_is_split_by_whole_skeins():
    # 4 skeins of 1 L; a pot of 1.9 L takes one at a time, one of 2.5 L two.
    assert pot_for([Pot(name="low", litres=1.9)], 4.0, least_l=1.0).turns == 4
    assert pot_for([Pot(name="high", litres=2.5)], 4.0, least_l=1.0).turns == 2
    assert pot_for([Pot(name="low", litres=1.9)], 4.0).turns == 3
