"""Edits: every kind can be taken back, and none overwrites what it does not remember."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.edits import (
    ReplaceBands,
    ReplaceRounds,
    ReplaceSetting,
    Together,
    assign,
    paint,
    reshade,
    with_bands,
)
from chartmaker.model.notation import rounds_to_text
from chartmaker.model.palette import Palette, Yarn
from tests.builders import chart, lot
from tests.strategies import allowances, bands, designs, gauges, hats, letters, limits, lots, texts, viewings


def _can_be_taken_back(edit, design):
    changed = edit.applied_to(design)
    assert edit.inverse().applied_to(changed) == design
    assert edit.inverse().inverse().applied_to(design) == changed
    return changed


@given(designs(), st.data())
def test_painting_can_be_taken_back_and_gives_every_cell_its_part(design, data):
    band = data.draw(st.integers(0, len(design.bands) - 1))
    cells = data.draw(
        st.dictionaries(st.tuples(st.integers(-2, 8), st.integers(-2, 26)), st.integers(0, 2), max_size=12)
    )
    changed = _can_be_taken_back(paint(design, band=band, cells=cells, text="Draw"), design)
    before, after = design.bands[band].rounds, changed.bands[band].rounds
    for index, line in enumerate(before):
        for stitch in range(len(line)):
            assert after[index].cells[stitch] == cells.get((index, stitch), line.cells[stitch])
        assert after[index].shaping == line.shaping
        assert after[index].letters.startswith(line.letters)


@given(designs(), st.data())
def test_reshading_can_be_taken_back_and_leaves_the_pattern(design, data):
    band = data.draw(st.integers(0, len(design.bands) - 1))
    rounds = design.bands[band].rounds
    chosen = data.draw(st.sets(st.integers(0, len(rounds) - 1)))
    new = {index: "".join(data.draw(letters()) for _ in rounds[index].letters) for index in chosen}
    changed = _can_be_taken_back(reshade(design, band=band, letters=new, text="Shade"), design)
    for index, line in enumerate(changed.bands[band].rounds):
        assert line == replace(rounds[index], letters=new.get(index, rounds[index].letters))


@given(designs(), letters(), lots())
def test_assigning_a_lot_can_be_taken_back(design, letter, one):
    changed = _can_be_taken_back(assign(design, letter, one.id, source=Palette(lots=(one,))), design)
    assert changed.colourway.lot_of(letter) == one.id
    assert changed.palette.lot(one.id) is not None
    assert changed.colourways[1:] == design.colourways[1:]


@given(designs(), letters())
def test_taking_a_lot_off_a_letter_can_be_taken_back(design, letter):
    changed = _can_be_taken_back(assign(design, letter, None), design)
    assert changed.colourway.lot_of(letter) is None
    assert changed.palette == design.palette


SETTINGS = {
    "title": texts(),
    "notes": texts(),
    "hat": hats(),
    "gauge": gauges(),
    "allowances": allowances(),
    "limits": limits(),
    "viewing": viewings(),
}


@given(designs(), st.sampled_from(sorted(SETTINGS)), st.data())
def test_replacing_a_setting_can_be_taken_back(design, field, data):
    after = data.draw(SETTINGS[field])
    changed = _can_be_taken_back(ReplaceSetting(field, getattr(design, field), after, "Change"), design)
    assert getattr(changed, field) == after


@given(designs(), st.lists(bands(), min_size=1, max_size=3).map(tuple))
def test_replacing_bands_can_be_taken_back(design, after):
    assert _can_be_taken_back(ReplaceBands(design.bands, after, "Move"), design).bands == after


def test_painting_draws_what_was_asked():
    design = chart("A B | ....\nA B | ....", times=3)
    painted = paint(design, band=0, cells={(0, 0): 1, (1, 3): 1, (9, 9): 1}, text="Draw").applied_to(design)
    assert rounds_to_text(painted.bands[0].rounds) == "A B | x...\nA B | ...x\n"


def test_painting_a_plain_round_takes_the_letter_of_the_nearest_round():
    design = chart("A C | x\nA B | x\nA | .\nA | .\nA D | x")
    painted = paint(design, band=0, cells={(2, 0): 1}, text="Draw").applied_to(design)
    assert painted.bands[0].rounds[2].letters == "AB"


def test_painting_where_no_round_has_a_figure_takes_the_first_letter_that_is_free():
    design = chart("A | ..")
    assert paint(design, band=0, cells={(0, 1): 2}, text="Draw").applied_to(design).bands[0].rounds[0].letters == "ABC"


def test_painting_what_stands_there_already_changes_nothing():
    edit = paint(chart("A B | .x"), band=0, cells={(0, 0): 1, (0, 1): 0}, text="Draw")
    assert edit.changes == ()


def test_reshading_may_not_take_the_letter_of_a_part_that_is_drawn():
    with pytest.raises(ValueError, match=r"a cell plays the figure, but the round has 1 letter\(s\)"):
        reshade(chart("A B | .x"), band=0, letters={0: "C"}, text="Shade")


def test_assigning_takes_a_copy_of_a_new_lot_and_its_yarn():
    source = Palette(yarns=(Yarn(id="y", name="y"),), lots=(lot("moss", yarn="y"), lot("fawn")))
    design = chart("A | .", lots={"B": lot("oat")})
    changed = assign(design, "A", "moss", source=source).applied_to(design)
    assert changed.colourway.lots == (("A", "moss"), ("B", "oat"))
    assert changed.palette == Palette(yarns=source.yarns, lots=(lot("oat"), source.lots[0]))


def test_assigning_a_lot_that_is_nowhere_is_refused():
    with pytest.raises(ValueError, match="there is no lot 'gone'"):
        assign(chart("A | ."), "A", "gone")


def test_an_edit_refuses_a_design_that_it_does_not_remember():
    design = chart("A B | .x", lots={"A": lot("oat")}, title="cap")
    other = chart("A B | xx", lots={"A": lot("moss")}, title="tam")
    edits = (
        paint(design, band=0, cells={(0, 1): 1}, text="Draw"),
        ReplaceRounds(0, ((0, design.bands[0].rounds[0], other.bands[0].rounds[0]),), "Draw"),
        assign(design, "B", "oat"),
        ReplaceSetting("title", "cap", "bonnet", "Name"),
        ReplaceBands(design.bands, (), "Move"),
    )
    for edit in edits:
        with pytest.raises(ValueError, match="not what the edit remembers"):
            edit.applied_to(other)


def test_edits_together_are_one_step_that_keeps_the_law() -> None:
    design = chart("A B | .x..", "A | ....", times=10)
    bands = with_bands(design, design.bands[:1], "Keep one")
    assert bands is not None
    named = ReplaceSetting("title", "", "Both", "Name it")
    both = Together((bands, named), "Do both")
    after = both.applied_to(design)
    assert (after.title, len(after.bands)) == ("Both", 1)
    assert both.inverse().applied_to(after) == design
    with pytest.raises(ValueError, match="bands are not what the edit remembers"):
        both.applied_to(after)
