"""Blocks and pieces cut out of a chart: where they lie, how they are turned about, and how they are written."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.block import Block, cut_out, drawing_of, is_there, whole_rounds
from chartmaker.model.clip import GAP, LONGEST_TEXT, Clip, clip_from_text, clip_to_text
from chartmaker.model.notation import rounds_to_text
from tests.builders import chart
from tests.model.blocks import blocks, designs_with_block, written
from tests.strategies import bands


def test_a_block_over_the_join_holds_what_stands_at_both_ends_of_the_repeat():
    design = chart("C D | x....x\nA B C | x....+")
    block = Block(band=0, first=0, last=1, column=4, width=3)
    assert written(cut_out(design, block)) == ["xx.", "+x."]
    assert cut_out(design, block).letters == ("ABC", "CD")
    assert block.reach_over_join(6) == 1
    assert block.height == 2


WEDGE = chart("A B | xx | ><\nA B | xxxx | >..<\nA B | x....x", times=6)


def test_in_a_wedge_a_blocks_columns_run_true_and_have_gaps_beside_it():
    block = Block(band=0, first=0, last=2, column=0, width=6)
    assert written(cut_out(WEDGE, block, chart_offsets)) == ["__xx__", "_xxxx_", "x....x"]
    over = Block(band=0, first=0, last=2, column=4, width=3)
    assert written(cut_out(WEDGE, over, chart_offsets)) == ["___", "__x", "xx."]


def test_whole_rounds_reach_as_far_as_their_stitches():
    block = whole_rounds(WEDGE, band=0, first=1, last=2, columns=chart_offsets)
    assert (block.column, block.width, block.first, block.last) == (1, 4, 1, 2)
    level = chart("A B | x.\nA B | ..", "A B | x...\nA B | ....")
    assert whole_rounds(level, band=1, first=0, last=1) == Block(band=1, first=0, last=1, column=0, width=4)


@pytest.mark.parametrize(
    "wrong",
    [
        {"first": 2, "last": 1},
        {"first": -1},
        {"width": 0},
        {"column": -1},
        {"band": -1},
    ],
)
def test_a_block_that_cannot_be_is_refused(wrong):
    with pytest.raises(ValueError, match="no block of rounds"):
        Block(**{"band": 0, "first": 0, "last": 1, "column": 0, "width": 2} | wrong)


@pytest.mark.parametrize("gone", [{"band": 1}, {"last": 3}, {"column": 6}, {"width": 7}])
def test_a_block_whose_band_rounds_or_columns_are_not_there_is_told_apart_and_not_cut_out(gone):
    fields = {"band": 0, "first": 0, "last": 2, "column": 0, "width": 6}
    assert is_there(WEDGE, Block(**fields), chart_offsets)
    assert not is_there(WEDGE, Block(**fields | gone), chart_offsets)
    with pytest.raises(ValueError, match="no block"):
        cut_out(WEDGE, Block(**fields | gone), chart_offsets)


@given(st.data(), bands())
def test_laying_a_line_back_where_it_was_cut_changes_nothing(data, band):
    drawing = drawing_of(band, chart_offsets)
    index = data.draw(st.integers(0, len(band.rounds) - 1))
    column, width = data.draw(st.integers(-40, 40)), data.draw(st.integers(1, drawing.width))
    line = drawing.cut(index, column, width)
    assert drawing.with_laid(index, column, line) == band.rounds[index].cells
    laid = drawing.with_laid(index, column, bytes(width))
    assert len(laid) == len(band.rounds[index])
    assert laid.count(0) >= len(line) - line.count(GAP)


CORNER = Clip((b"\1\1\0", b"\1\0\0"), ("AB", "AC"))


def test_a_piece_is_flipped_and_shifted_within_itself():
    assert written(CORNER) == ["..x", ".xx"]
    assert written(CORNER.flipped_sideways()) == ["x..", "xx."]
    assert written(CORNER.flipped_upright()) == [".xx", "..x"]
    assert written(CORNER.shifted(stitches=1)) == [".x.", "xx."]
    assert written(CORNER.shifted(stitches=-1)) == ["x..", "x.x"]
    assert written(CORNER.shifted(rounds=1)) == [".xx", "..x"]
    assert CORNER.flipped_upright().letters == CORNER.letters


def test_a_round_of_a_piece_that_comes_to_play_a_part_takes_a_letter_for_it():
    piece = Clip((b"\2", b"\0"), ("ABC", "B")).flipped_upright()
    assert piece.letters == ("ABC", "BAC")
    assert clip_from_text(clip_to_text(piece)) == piece


def test_a_line_with_gaps_is_flipped_about_the_middle_of_its_stitches_when_asked_to():
    clip = Clip((bytes([GAP, 1, 0, 0, GAP, GAP]),), ("AB",))
    assert written(clip) == ["__..x_"]
    assert written(clip.flipped_sideways()) == ["_x..__"]
    assert written(clip.flipped_sideways(within_stitches=True)) == ["__x.._"]


@given(designs_with_block())
def test_a_piece_is_read_back_from_what_was_written_of_it(drawn):
    design, block = drawn
    clip = cut_out(design, block, chart_offsets)
    assert clip_from_text(clip_to_text(clip)) == clip


@given(designs_with_block(), st.integers(-50, 50), st.integers(-50, 50))
def test_laws_of_turning_a_piece_about(drawn, up, across):
    clip = cut_out(*drawn, chart_offsets)
    assert clip.flipped_sideways().flipped_sideways() == clip
    assert clip.flipped_sideways(within_stitches=True).flipped_sideways(within_stitches=True) == clip
    assert clip.flipped_upright().flipped_upright().lines == clip.lines
    assert clip.shifted(rounds=up, stitches=across).shifted(rounds=-up, stitches=-across).lines == clip.lines
    assert clip.shifted(rounds=len(clip.lines), stitches=clip.width) == clip


def test_a_piece_is_written_as_the_chart_is():
    design = chart("C D | x....x\nA B C | x....+")
    block = Block(band=0, first=0, last=1, column=0, width=6)
    assert clip_to_text(cut_out(design, block)) == "C D   | x....x\nA B C | x....+\n"
    part = Block(band=0, first=1, last=2, column=0, width=3)
    assert clip_to_text(cut_out(WEDGE, part, chart_offsets)) == "A B | x__\nA B | xx_\n"


def test_a_band_of_a_file_is_read_as_a_piece_without_its_shaping():
    text = rounds_to_text(chart("A B | xx\nA B | .x").bands[0].rounds)
    assert written(clip_from_text(text)) == ["xx", ".x"]
    assert written(clip_from_text("A B | x. | .<")) == ["x."]


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("", "no piece of a chart"),
        (" \n ", "no piece of a chart"),
        ("oat, moss and fawn", "no piece of a chart"),
        ("A B | x.\nA B", "no piece of a chart"),
        ("x" * (LONGEST_TEXT + 1), "no piece of a chart"),
        ("A B | xq", "'q' at place 2 is no cell"),
        ("A | x.", "a cell plays the figure"),
        ("A B | x.\nA B | x", "all have one width"),
        ("A B | ", "no cells"),
        ("A B | x|", "the shaping after the second"),
        ("A B | _x_ | .", "3 cells but 1 shaping"),
        ("\n".join(["A | ."] * 601), "larger than a chart may be"),
        ("A | " + "." * 601, "600"),
    ],
)
def test_what_is_no_piece_is_refused_with_a_sentence(text, sentence):
    with pytest.raises(ValueError, match=sentence):
        clip_from_text(text)


@pytest.mark.parametrize(
    ("lines", "letters"),
    [((), ()), ((b"",), ("A",)), ((b"\0",), ()), ((b"\1",), ("A",)), ((b"\3",), ("ABCD",)), ((b"\0", b""), ("A", "A"))],
)
def test_a_piece_that_cannot_be_is_refused(lines, letters):
    with pytest.raises(ValueError, match=r"\w+ \w+ \w+"):
        Clip(lines, letters)


def test_gaps_become_ground_where_a_piece_becomes_rounds():
    clip = cut_out(WEDGE, Block(band=0, first=1, last=2, column=0, width=6), chart_offsets)
    assert rounds_to_text(clip.rounds()) == "A B | ..xx..\nA B | .xxxx.\n"
    assert clip.has_gaps
    assert not CORNER.has_gaps


@given(st.data(), designs_with_block())
def test_any_block_that_is_drawn_for_tests_is_there(data, drawn):
    design, block = drawn
    assert is_there(design, block, chart_offsets)
    assert is_there(design, data.draw(blocks(design)), chart_offsets)
