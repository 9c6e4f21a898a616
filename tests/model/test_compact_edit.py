"""Edits of the past kept small: they do what they did, and remember what stood there."""

import random
import sys
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model import compact_edit
from chartmaker.model.band_edits import move_band, split_band
from chartmaker.model.compact_edit import RedrawRounds, compacted
from chartmaker.model.edits import ReplaceBands, ReplaceRounds, ReplaceSetting, paint
from chartmaker.model.rearranged_bands import rearranged
from chartmaker.model.round import Round
from chartmaker.model.round_edits import delete_rounds
from tests.builders import chart
from tests.model.test_structure import structure_edits
from tests.strategies import designs


@pytest.fixture
def all_is_worth_it(monkeypatch):
    monkeypatch.setattr(compact_edit, "WORTH_PACKING", 1)


def redrawn(line, draw):
    """Give a round as long as another, drawn at random, with as many letters or more."""
    letters = draw(st.sampled_from((line.letters, line.letters[::-1], "QRS")))
    parts = draw(st.lists(st.integers(0, len(letters) - 1), min_size=len(line), max_size=len(line)))
    return replace(line, letters=letters, cells=bytes(parts))


@given(designs(), st.data())
def test_rounds_drawn_otherwise_in_one_band_are_drawn_alike_and_taken_back(design, data):
    compact_edit.WORTH_PACKING, kept = 1, compact_edit.WORTH_PACKING
    try:
        band = data.draw(st.integers(0, len(design.bands) - 1))
        rounds = design.bands[band].rounds
        chosen = data.draw(st.sets(st.integers(0, len(rounds) - 1), min_size=1))
        edit = ReplaceRounds(
            band, tuple((index, rounds[index], redrawn(rounds[index], data.draw)) for index in chosen), "Fill"
        )
        small = compacted(edit)
    finally:
        compact_edit.WORTH_PACKING = kept
    assert isinstance(small, RedrawRounds)
    changed = edit.applied_to(design)
    assert small.applied_to(design) == changed
    assert small.inverse().applied_to(changed) == design
    assert small.inverse().inverse().applied_to(design) == changed
    assert small.text == "Fill"


@given(designs(), st.data())
def test_rounds_drawn_otherwise_in_many_bands_are_too(design, data):
    compact_edit.WORTH_PACKING, kept = 1, compact_edit.WORTH_PACKING
    try:
        bands = tuple(
            replace(band, rounds=tuple(redrawn(line, data.draw) for line in band.rounds)) for band in design.bands
        )
        small = compacted(ReplaceBands(design.bands, bands, "Fill"))
    finally:
        compact_edit.WORTH_PACKING = kept
    assert isinstance(small, RedrawRounds)
    assert small.applied_to(design).bands == bands
    assert small.inverse().applied_to(replace(design, bands=bands)) == design


TWO_BANDS = chart("A B | x..\nA B | .x.", "A B | ..xx\nC D | x...\nA B | ....", times=(4, 3))


@pytest.mark.usefixtures("all_is_worth_it")
def test_a_compact_edit_does_not_overwrite_what_it_does_not_remember():
    small = compacted(paint(TWO_BANDS, band=1, cells={(1, 2): 1}, text="Draw"))
    other = paint(TWO_BANDS, band=1, cells={(1, 0): 1}, text="Draw").applied_to(TWO_BANDS)
    with pytest.raises(ValueError, match="not what the edit remembers"):
        small.applied_to(other)
    with pytest.raises(ValueError, match="not what the edit remembers"):
        small.inverse().applied_to(TWO_BANDS)


@pytest.mark.usefixtures("all_is_worth_it")
def test_only_what_differs_is_kept_in_runs_of_rounds():
    edit = paint(TWO_BANDS, band=1, cells={(0, 2): 1, (1, 1): 1}, text="Draw")
    assert compacted(edit).runs == ((1, 0, 2),)
    apart = paint(TWO_BANDS, band=1, cells={(0, 2): 1, (2, 3): 1}, text="Draw")
    assert compacted(apart).runs == ((1, 0, 1), (1, 2, 3))


@pytest.mark.usefixtures("all_is_worth_it")
def test_what_neither_redraws_nor_rearranges_stays_as_it_is():
    longer = ReplaceRounds(0, ((0, TWO_BANDS.bands[0].rounds[0], Round("AB", b"\0\1\0\1")),), "Widen")
    for edit in (longer, ReplaceSetting("title", "", "Cap", "Name")):
        assert compacted(edit) is edit


@given(st.data(), designs())
def test_any_structural_edit_does_the_same_when_it_is_kept_small_and_can_be_taken_back(data, design):
    _, make = data.draw(structure_edits(design))
    try:
        edit = make()
    except ValueError:
        return
    if not isinstance(edit, ReplaceBands):
        return
    small, changed = rearranged(edit), edit.applied_to(design)
    assert small.applied_to(design) == changed
    assert small.inverse().applied_to(changed) == design
    assert small.inverse().inverse() == small
    assert small.text == edit.text
    if changed != design:
        with pytest.raises(ValueError, match="not what the edit remembers"):
            small.applied_to(changed)


@pytest.mark.usefixtures("all_is_worth_it")
def test_bands_and_rounds_that_move_are_kept_as_where_they_stood():
    small = compacted(move_band(TWO_BANDS, band=0, up=True))
    assert [sketch.pieces for sketch in small.after] == [((1, 0, 3),), ((0, 0, 2),)]
    split = compacted(split_band(TWO_BANDS, band=1, index=1))
    assert [sketch.pieces for sketch in split.after] == [((0, 0, 2),), ((1, 0, 1),), ((1, 1, 3),)]
    assert [sketch.pieces for sketch in split.before] == [((0, 0, 2),), ((1, 0, 1), (2, 0, 2))]


@pytest.mark.usefixtures("all_is_worth_it")
def test_rounds_that_are_taken_out_are_kept_and_no_others():
    small = compacted(delete_rounds(TWO_BANDS, band=1, first=1, last=1))
    assert small.before[1].pieces == ((1, 0, 1), TWO_BANDS.bands[1].rounds[1], (1, 1, 2))
    assert small.after[1].pieces == ((1, 0, 1), (1, 2, 3))


def test_a_small_designs_bands_stay_as_they_are():
    edit = move_band(TWO_BANDS, band=0, up=True)
    assert compacted(edit) is edit


def test_a_stroke_stays_as_it_is_and_a_fill_gets_small():
    rng = random.Random(7)
    width, height = 200, 100
    line = "A B | " + "." * width
    design = chart("\n".join([line] * height))
    stroke = paint(design, band=0, cells={(50, 10): 1}, text="Draw")
    assert compacted(stroke) is stroke
    rounds = design.bands[0].rounds
    fill = ReplaceRounds(
        0,
        tuple(
            (index, old, replace(old, cells=bytes(rng.choices((0, 1), k=width)))) for index, old in enumerate(rounds)
        ),
        "Fill",
    )
    small = compacted(fill)
    assert isinstance(small, RedrawRounds)
    assert sys.getsizeof(small.difference) < width * height / 5
    assert small.applied_to(design) == fill.applied_to(design)
