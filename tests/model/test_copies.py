"""Copies of lots in a design against the palette: what differs is named, and mended by one edit."""

from dataclasses import replace

from hypothesis import given

from chartmaker.model.copies import add_copies, lots_not_in, refresh_copies, stale_copies
from chartmaker.model.palette import Bath, Mordant, Palette, Yarn
from chartmaker.model.reading import LabReading
from chartmaker.model.units import IMPERIAL, in_units
from tests.builders import chart, lot
from tests.strategies import designs, palettes

BATH = Bath(id="pot", dyestuff="madder", ratio=1.0, mordants=(Mordant("alum", 12.0),))
YARN = Yarn(id="fine", name="Fine")
OWN = lot("one", (50, 10, 10), on_hand_g=48.0, bath="pot", yarn="fine")
DESIGN = chart("A B | .x", times=18, lots={"A": OWN, "B": lot("two", (80, 0, 0))}, yarns=[YARN], baths=[BATH])


def palette(one=OWN, bath=BATH):
    return Palette(yarns=(YARN,), baths=(bath,), lots=(one,))


def told(of):
    return [(each.lot.id, one.what, one.here, one.there) for each in of for one in each.differences]


def test_copies_that_are_alike_are_not_named():
    assert stale_copies(DESIGN, palette()) == ()
    assert [each.id for each in lots_not_in(palette(), DESIGN)] == ["two"]


def test_weight_name_and_readings_that_differ_are_named():
    other = replace(OWN, name="one anew", on_hand_g=36.5, readings=(LabReading(lab=(51.0, 10.0, 10.0)),))
    assert told(stale_copies(DESIGN, palette(other))) == [
        ("one", "name", "one", "one anew"),
        ("one", "on hand", "48 g", "36.5 g"),
        ("one", "readings", "1 (another)", "1 (another)"),
    ]


def test_measures_that_differ_are_told_in_other_units_too():
    other = replace(OWN, on_hand_g=36.5)
    (copy,) = stale_copies(DESIGN, palette(other, replace(BATH, hottest_c=80.0)))
    weight, heat = copy.differences
    assert [in_units(text, IMPERIAL) for text in (weight.here, weight.there)] == ["1.69 oz", "1.29 oz"]
    assert [in_units(text, IMPERIAL) for text in (heat.here, heat.there)] == ["–", "176 °F"]


def test_weights_too_near_to_be_told_apart_are_marked():
    (copy,) = stale_copies(DESIGN, palette(replace(OWN, on_hand_g=48.001)))
    assert [(one.here, one.there) for one in copy.differences] == [("48 g (another)", "48 g (another)")]


def test_a_recipe_that_differs_is_named_with_the_lot():
    other = replace(BATH, ph_start=7.5, mordants=(Mordant("alum", 15.0), Mordant("tartar", 6.0)))
    assert told(stale_copies(DESIGN, palette(bath=other))) == [
        ("one", "mordants", "alum 12", "alum 15, tartar 6"),
        ("one", "pH at the start", "–", "7.5"),
    ]


def test_only_the_chosen_are_refreshed_with_their_recipe():
    two = lot("two", (82, 0, 0))
    there = replace(palette(replace(OWN, on_hand_g=1.0), replace(BATH, ratio=0.5)), lots=(OWN, two))
    edit = refresh_copies(DESIGN, there, ["two"])
    after = edit.applied_to(DESIGN)
    assert after.palette.lots == (OWN, two)
    assert after.palette.baths == (BATH,)
    assert edit.inverse().applied_to(after) == DESIGN
    assert refresh_copies(DESIGN, there, ["one"]).applied_to(DESIGN).palette.baths == (replace(BATH, ratio=0.5),)


def test_refreshing_what_is_alike_is_no_edit():
    assert refresh_copies(DESIGN, palette(), ["one"]) is None


@given(designs(), palettes())
def test_refreshed_copies_are_stale_no_more_and_the_edit_can_be_taken_back(design, other):
    stale = stale_copies(design, other)
    edit = refresh_copies(design, other, [each.lot.id for each in stale])
    after = edit.applied_to(design) if edit else design
    assert stale_copies(after, other) == ()
    assert not edit or edit.inverse().applied_to(after) == design
    assert all(one.here != one.there or "another" in one.here for each in stale for one in each.differences)


@given(designs(), palettes())
def test_lots_of_the_design_can_be_added_to_the_palette(design, other):
    missing = [each.id for each in lots_not_in(other, design)]
    edit = add_copies(other, design, missing)
    after = edit.applied_to(other)
    assert lots_not_in(after, design) == ()
    assert set(other.lots) <= set(after.lots)
    assert edit.inverse().applied_to(after) == other
