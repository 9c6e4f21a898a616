"""Whether what was gathered serves the baths."""

import pytest

from chartmaker.dye.dye_plan import Need, whole_plan
from chartmaker.dye.plan import plan_baths
from chartmaker.dye.supply import supplies
from chartmaker.model.dyeing import DyeingHabits, Dyestuff
from chartmaker.model.palette import Bath, Palette
from tests.builders import lot

FREELY = DyeingHabits(skein_g=0, sample_g=0, scouring_loss_percent=0, handling_loss_percent=0)


def served(*shelf: Dyestuff, baths: tuple[Bath, ...], **short_g: float):
    palette = Palette(baths=baths, lots=tuple(lot(bath.id, bath=bath.id) for bath in baths), dyeing=FREELY)
    return supplies(plan_baths(palette, short_g), shelf)


def weld(bath_id="weld", ratio=2.0, **fields):
    return Bath(id=bath_id, dyestuff="weld", ratio=ratio, **fields)


def test_too_little_tells_how_much_fibre_it_serves_and_what_is_missing():
    (supply,) = served(Dyestuff(name="Weld", on_hand_g=60.0), baths=(weld(),), weld=50)
    assert (supply.needed_g, supply.serves_g, supply.missing_g, supply.is_enough) == (100, 30, 40, False)
    assert supply.text == "60 g of dry weld serve 30 g of the 50 g of fibre; 40 g are missing"


def test_baths_take_from_the_shelf_one_after_another():
    first, second = served(
        Dyestuff(name="weld", on_hand_g=150.0, identified_by="the warden"),
        baths=(weld(), weld("other", mordants=(), assists=(), hottest_c=90.0)),
        weld=50,
        other=50,
    )
    assert (first.is_enough, first.at_hand_g, first.identified_by) == (True, 150, ("the warden",))
    assert (second.at_hand_g, second.missing_g, second.serves_g) == (50, 50, 25)


def test_fresh_counts_for_dry_by_what_it_dries_to():
    fresh = Dyestuff(name="weld", state="fresh", on_hand_g=400.0, dries_to_percent=20.0)
    (supply,) = served(fresh, baths=(weld(),), weld=50)
    assert supply.at_hand_g == pytest.approx(80)
    assert supply.serves_g == pytest.approx(40)
    (wet,) = served(fresh, Dyestuff(name="weld", on_hand_g=10.0), baths=(weld(state="fresh", ratio=10.0),), weld=50)
    assert wet.at_hand_g == pytest.approx(450)  # 10 g dry were 50 g fresh


def test_fresh_of_unknown_dry_weight_is_not_counted_but_told():
    fresh = Dyestuff(name="weld", state="fresh", on_hand_g=400.0)
    (supply,) = served(fresh, baths=(weld(),), weld=50)
    assert (supply.at_hand_g, supply.uncounted, supply.is_listed) == (0, (fresh,), True)


def test_another_part_or_plant_does_not_serve():
    shelf = (Dyestuff(name="weld", part="root", on_hand_g=500.0), Dyestuff(name="dock", on_hand_g=500.0))
    (supply,) = served(*shelf, baths=(weld(part="leaf"),), weld=50)
    assert not supply.is_listed
    assert "the shelf lists none" in supply.text
    (any_part,) = served(*shelf, baths=(weld(),), weld=50)
    assert any_part.is_enough


def test_a_bath_without_dyestuff_needs_none():
    (supply,) = served(baths=(weld(ratio=0.0),), weld=50)
    assert (supply.is_enough, supply.serves_g) == (True, 50)


def test_half_a_gram_is_told_alike_wherever_it_is_told():
    bath = Bath(id="oak", dyestuff="oak gall", ratio=0.5)
    palette = Palette(baths=(bath,), lots=(lot("grey", bath="oak"),))
    (card,) = whole_plan(palette, [Need(lot="grey", planned_g=10, on_hand_g=0, designs=("cap",))]).cards
    assert card.plan.dyestuff_g == 12.5  # half of a skein of 25 g
    assert "12.5 g of dry oak gall are needed" in card.supply.text
    assert "Dyestuff, 12.5 g of dry oak gall" in " ".join(step.text for step in card.timetable)
