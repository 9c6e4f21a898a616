"""Stamping motifs, cutting them out, and making bands of them."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.block import Block
from chartmaker.model.motif import LONGEST_WORD
from chartmaker.model.notation import rounds_to_text
from chartmaker.model.stamping import as_band, motif_from, motif_id, motif_of, stamp_cells, stamp_hindrance, stamped
from tests.builders import chart
from tests.model.test_motif import motif
from tests.strategies import designs

CORNER = motif("A B | x...\nA B | xx..")
"""Its figure is at the left of its repeat: stitches 4 and 3."""


def _drawn(design, edit, band=0):
    return rounds_to_text(edit.applied_to(design).bands[band].rounds)


def test_a_motif_whose_repeat_divides_the_bands_is_tiled_over_it():
    design = chart("A B | xxxxxxxx\nA B | xxxxxxxx\nA B | xxxxxxxx")
    edit = stamped(design, CORNER, band=0, at=(1, 0))
    assert _drawn(design, edit) == "A B | x...x...\nA B | xx..xx..\nA B | xxxxxxxx\n"
    assert edit.inverse().applied_to(edit.applied_to(design)) == design


@pytest.mark.parametrize("stitch", [1, 5, -3])
def test_a_tile_begins_where_the_stamp_was_set(stitch):
    design = chart("A B | ........\nA B | ........")
    assert _drawn(design, stamped(design, CORNER, band=0, at=(0, stitch))) == "A B | ...x...x\nA B | x..xx..x\n"


def test_a_motif_that_does_not_divide_the_repeat_stands_once_and_runs_over_the_join():
    design = chart("A B | xxxxxx\nA B | xxxxxx")
    assert _drawn(design, stamped(design, CORNER, band=0, at=(0, 0))) == "A B | xxx...\nA B | xxxx..\n"
    assert _drawn(design, stamped(design, CORNER, band=0, at=(0, 4))) == "A B | ..xxx.\nA B | ..xxxx\n"


def test_rounds_past_the_bands_end_are_left_out():
    design = chart("A B | ....", "A B | ....")
    assert _drawn(design, stamped(design, CORNER, band=0, at=(0, 0))) == "A B | xx..\n"


def test_stamping_writes_parts_alone_and_a_plain_round_gets_a_figure_letter():
    design = chart("D C | x...\nE   | ....")
    assert _drawn(design, stamped(design, CORNER, band=0, at=(0, 0))) == "D C | x...\nE C | xx..\n"


@given(designs(even=True, shaped=False), st.data())
def test_a_stamp_changes_no_letter_no_shaping_and_no_other_round(design, data):
    band = data.draw(st.integers(0, len(design.bands) - 1))
    lines = design.bands[band].rounds
    small = motif(data.draw(st.sampled_from(["A B | x", "A B | x.\nA B | .x", "A B | .xx\nA | ..."])))
    at = (data.draw(st.integers(0, len(lines) - 1)), data.draw(st.integers(0, 30)))
    if stamp_hindrance(design.bands[band], small):
        return
    edit = stamped(design, small, band=band, at=at)
    changed = edit.applied_to(design)
    assert edit.inverse().applied_to(changed) == design
    for index, (before, after) in enumerate(zip(lines, changed.bands[band].rounds, strict=True)):
        assert after.letters.startswith(before.letters)
        assert after.shaping == before.shaping
        if not at[0] <= index < at[0] + len(small.rounds):
            assert after == before


def test_in_a_shaped_band_a_motif_stands_once_and_its_columns_run_true():
    design = chart("A B | xxxx\nA B | xxxx | <..>\nA B | xxxxxx\nA B | xxxxxx")
    column = motif("A B | .x\nA B | .x\nA B | .x\nA B | .x")
    offsets = chart_offsets(design.bands[0].rounds)
    assert offsets == (0, 0, 1, 1)
    drawn = _drawn(design, stamped(design, column, band=0, at=(0, 2), offsets=offsets))
    assert drawn == "A B | x.xx\nA B | x.xx | <..>\nA B | xx.xxx\nA B | xx.xxx\n"
    assert _drawn(design, stamped(design, column, band=0, at=(3, 3), offsets=offsets)).startswith("A B | xxxx\n")


def test_the_preview_is_what_the_stamp_writes():
    design = chart("A B | xxxxxxxx\nA B | xxxxxxxx\nA B | xxxxxxxx")
    cells = stamp_cells(design.bands[0], CORNER, at=(2, 1))
    assert cells == {(2, stitch): int(stitch in (0, 3, 4, 7)) for stitch in range(8)}


@pytest.mark.parametrize(
    ("drawing", "at", "sentence"),
    [
        ("A B | x.........", (0, 0), "M is 10 stitches wide, the band's repeat only 8"),
        ("A B | .x | .>\nA B | .xx", (0, 0), "M is shaped: lay it in as a band of its own"),
        ("A B | .x", (1, 0), "the band has no round 2"),
    ],
)
def test_what_cannot_be_stamped_is_told(drawing, at, sentence):
    with pytest.raises(ValueError, match=sentence):
        stamped(chart("A | ........"), motif(drawing), band=0, at=at)


def test_nothing_hinders_a_motif_as_wide_as_the_repeat():
    assert stamp_hindrance(chart("A | ....").bands[0], CORNER) == ""


def test_a_block_that_runs_over_the_join_becomes_a_motif_in_placeholders():
    design = chart("C D | x....x\nE | ......\nC D | ......")
    block = Block(band=0, first=1, last=2, column=5, width=3)
    made = motif_from(design, block, name="Tide mark")
    assert (made.id, made.name, made.family) == ("tide-mark", "Tide mark", "own")
    assert rounds_to_text(made.rounds) == "A B | .xx\nA   | ...\n"


def test_a_whole_wedge_keeps_its_shaping_and_a_part_of_it_has_none():
    design = chart("C D | x.x | ..<\nC D | x..x")
    block = Block(band=0, first=0, last=1, column=0, width=4)
    whole = motif_from(design, block, name="Wedge", columns=chart_offsets)
    assert rounds_to_text(whole.rounds) == "A B | x.x | ..<\nA B | x..x\n"
    part = motif_from(design, replace(block, column=1, width=3), name="Wedge", taken={"wedge"}, columns=chart_offsets)
    assert part.id == "wedge-2"
    assert rounds_to_text(part.rounds) == "A B | x.x\nA B | x..\n"


def test_a_block_that_lies_partly_beside_a_wedge_is_no_motif():
    block = Block(band=0, first=0, last=1, column=0, width=3)
    with pytest.raises(ValueError, match="part of the block lies beside the wedge"):
        motif_from(chart("A | ... | ..<\nA | ...."), block, name="x", columns=chart_offsets)


def test_a_block_that_is_not_there_is_refused():
    with pytest.raises(ValueError, match="no block of rounds 1 to 3"):
        motif_from(chart("A B | x...\nA | ...."), Block(band=0, first=0, last=2, column=0, width=2), name="x")


def test_what_was_cut_out_stamps_back_unchanged():
    design = chart("C D | x.xx..\nC D | .x...x\nE F | xx.x..")
    block = motif_from(design, Block(band=0, first=0, last=2, column=4, width=6), name="Whole")
    assert stamped(design, block, band=0, at=(0, 4)).changes == ()


def test_a_motif_becomes_a_band_in_the_letters_given():
    made = as_band(replace(CORNER, name="Corner"), stitches=24, letters="DC", name="")
    assert (made.name, made.times) == ("Corner", 6)
    assert rounds_to_text(made.rounds) == "D C | x...\nD C | xx..\n"
    assert as_band(motif("A | ."), stitches=3, letters="DC", name="edge").rounds[0].letters == "D"


@pytest.mark.parametrize(
    ("stitches", "letters", "sentence"),
    [(26, "AB", "M repeats every 4 stitches, which does not divide 26"), (24, "A", "M needs 2 letters, not 1")],
)
def test_a_motif_that_makes_no_band_is_told(stitches, letters, sentence):
    with pytest.raises(ValueError, match=sentence):
        as_band(CORNER, stitches=stitches, letters=letters)


@pytest.mark.parametrize(
    ("name", "made"),
    [("Crème brûlée No. 2", "creme-brulee-no-2"), ("羊", "motif"), ("--", "motif"), ("x" * 99, "x" * 52)],
)
def test_an_id_is_made_of_a_name(name, made):
    assert motif_id(name) == made
    assert len(motif_id(name, {made, f"{made}-2"})) <= LONGEST_WORD
    assert motif_id(name, {made, f"{made}-2"}) == f"{made}-3"


def test_rounds_of_any_letters_become_a_motif():
    made = motif_of(chart("C D | x.\nE F | ..").bands[0].rounds, name="Net", taken={"net"})
    assert (made.id, rounds_to_text(made.rounds)) == ("net-2", "A B | x.\nA   | ..\n")
