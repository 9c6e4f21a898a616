"""Edits of a palette: each keeps the law of edits, and none leaves a lot without its yarn or bath."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.model import palette_edits
from chartmaker.model.palette import Bath, Lot, Palette, Planned, Yarn
from chartmaker.model.palette_edits import ReplacePalette, shortfalls, use_up
from chartmaker.model.palette_users import users_of
from tests.builders import chart, lot
from tests.strategies import baths, lots, names, numbers, palettes, texts, yarns

MADDER = Bath(id="madder", dyestuff="madder", ratio=1.0)
PALETTE = Palette(
    yarns=(Yarn(id="fine", name="Fine"),),
    baths=(MADDER, replace(MADDER, id="second")),
    lots=(
        lot("one", yarn="fine", bath="madder", on_hand_g=40.0),
        lot("two", planned=Planned("madder", 2)),
        lot("three", (50, 0, 0), on_hand_g=10.0),
    ),
)


def ids(things):
    return st.sampled_from([thing.id for thing in things]) if things else names()


@st.composite
def palette_edits_of(draw, palette):
    """Give a function that makes any edit of a palette, of things that are there and that are not."""
    lot_id, bath_id, yarn_id = draw(ids(palette.lots)), draw(ids(palette.baths)), draw(ids(palette.yarns))
    some_lot = lots(yarn_ids=[each.id for each in palette.yarns], bath_ids=[each.id for each in palette.baths])
    makers = {
        "rename": lambda: palette_edits.rename_palette(palette, draw(texts())),
        "add lot": lambda: palette_edits.add_lot(palette, draw(some_lot)),
        "change lot": lambda: palette_edits.change_lot(palette, lot_id, draw(some_lot)),
        "delete lot": lambda: palette_edits.delete_lot(palette, lot_id),
        "use up": lambda: use_up(palette, {lot_id: draw(numbers(0, 1000))}),
        "add bath": lambda: palette_edits.add_bath(palette, draw(baths())),
        "change bath": lambda: palette_edits.change_bath(palette, bath_id, draw(baths())),
        "delete bath": lambda: palette_edits.delete_bath(palette, bath_id),
        "add yarn": lambda: palette_edits.add_yarn(palette, draw(yarns())),
        "change yarn": lambda: palette_edits.change_yarn(palette, yarn_id, draw(yarns())),
        "delete yarn": lambda: palette_edits.delete_yarn(palette, yarn_id),
    }
    return makers[draw(st.sampled_from(sorted(makers)))]


def references(palette):
    for each in palette.lots:
        yield each.yarn is None or palette.yarn(each.yarn)
        yield each.source is None or palette.bath(each.source[0])


@given(st.data(), palettes())
@settings(max_examples=300)
def test_every_edit_can_be_taken_back_or_is_refused_with_a_sentence(data, palette):
    make = data.draw(palette_edits_of(palette))
    try:
        edit = make()
    except ValueError as refusal:
        sentence = str(refusal)
    else:
        changed = edit.applied_to(palette)
        assert all(references(changed))
        assert edit.inverse().applied_to(changed) == palette
        assert edit.inverse().inverse().applied_to(palette) == changed
        assert edit.text
        return
    assert len(sentence.split()) > 3


def test_an_edit_of_another_palette_is_refused():
    edit = palette_edits.delete_lot(PALETTE, "three")
    with pytest.raises(ValueError, match="not what the edit remembers"):
        edit.applied_to(Palette())


def test_lots_follow_a_bath_and_a_yarn_that_get_another_id():
    after = palette_edits.change_bath(PALETTE, "madder", replace(MADDER, id="red")).after
    assert [each.source for each in after.lots] == [("red", 1), ("red", 2), None]
    after = palette_edits.change_yarn(after, "fine", Yarn(id="thin", name="Fine")).after
    assert [each.yarn for each in after.lots] == ["thin", None, None]


def test_an_id_that_is_taken_is_refused():
    with pytest.raises(ValueError, match="two lots have the id 'one'"):
        palette_edits.change_lot(PALETTE, "two", lot("one"))
    with pytest.raises(ValueError, match="two baths have the id 'second'"):
        palette_edits.change_bath(PALETTE, "madder", replace(MADDER, id="second"))


def test_a_bath_and_a_yarn_in_use_are_not_deleted_and_their_users_named():
    with pytest.raises(ValueError, match="'madder' cannot be deleted: one came from this bath; two is planned from it"):
        palette_edits.delete_bath(PALETTE, "madder")
    with pytest.raises(ValueError, match="'fine' cannot be deleted: one is of this yarn"):
        palette_edits.delete_yarn(PALETTE, "fine")
    assert [each.id for each in palette_edits.delete_bath(PALETTE, "second").after.baths] == ["madder"]


def test_a_lot_names_the_letters_that_are_it_in_every_colourway():
    design = chart("A B | .x", times=18, lots={"A": lot("one"), "B": lot("one")})
    assert users_of(PALETTE, PALETTE.lots[0], design=design) == (
        "letters A and B of colourway first of the open design are this lot"
    )
    assert users_of(PALETTE, PALETTE.lots[1], design=design) == ""


def test_many_users_are_counted():
    many = Palette(yarns=PALETTE.yarns, lots=tuple(lot(f"l{number}", yarn="fine") for number in range(7)))
    assert users_of(many, many.yarns[0]) == "l0, l1, l2, l3 and 3 more are of this yarn"


def test_using_up_takes_grams_off_and_stops_at_nothing_which_is_told():
    wanted = {"one": 12.5, "three": 14.0}
    after = use_up(PALETTE, wanted).after
    assert [each.on_hand_g for each in after.lots] == [27.5, 0, 0]
    assert [(each.id, missing) for each, missing in shortfalls(PALETTE, wanted)] == [("three", 4.0)]
    assert shortfalls(PALETTE, {"three": 10.0}) == ()


@pytest.mark.parametrize("weight", [-1.0, float("inf"), float("nan")])
def test_what_is_no_weight_is_not_taken(weight):
    with pytest.raises(ValueError, match="cannot be taken off"):
        use_up(PALETTE, {"one": weight})


@given(names(), st.sets(names(), max_size=4))
def test_a_free_id_is_free_and_can_be_an_id(name, taken):
    proposed = palette_edits.free_id(name, taken)
    assert proposed not in taken
    assert Lot(id=proposed, name=name).id == proposed


def test_a_free_id_counts_on():
    assert palette_edits.free_id("Madder, first bath", ["madder-first-bath"]) == "madder-first-bath-2"


def test_a_whole_palette_is_one_edit():
    edit = ReplacePalette(PALETTE, Palette(), "Take measurements")
    assert edit.applied_to(PALETTE) == Palette()
