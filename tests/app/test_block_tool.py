"""The block tool as a state machine: pressed, moved, let go and cancelled, without a window."""

from dataclasses import replace

import pytest

from chartmaker.app.block_tool import BlockTool, block_between, followed
from chartmaker.app.chart_grid import laid_out
from chartmaker.model.block import Block
from chartmaker.model.clip import clip_from_text
from chartmaker.model.notation import rounds_to_text
from tests.builders import chart

DESIGN = chart("A B | ......\nA B | .....x\nA B | x....x", "A B | ....\nA B | ....", times=(24, 36))
GRID = laid_out(DESIGN)
CORNER = Block(band=0, first=0, last=1, column=5, width=2)


def rounds_of(design, band=0):
    return [line.split("|")[1].strip() for line in rounds_to_text(design.bands[band].rounds).splitlines()]


@pytest.fixture
def tool():
    """Give a tool that has marked `CORNER` over the join."""
    tool = BlockTool()
    tool.press((0, 5), DESIGN, GRID)
    tool.move((1, 6), GRID)
    tool.end_mark()
    assert tool.block == CORNER
    return tool


def test_marking_previews_nothing_and_cancelling_gives_back_what_was_selected(tool):
    tool.press((2, 2), DESIGN, GRID)
    assert tool.is_marking
    assert tool.block == Block(band=0, first=2, last=2, column=2, width=1)
    assert tool.preview(DESIGN, GRID) is DESIGN
    tool.cancel()
    assert tool.block == CORNER
    assert not tool.is_busy


def test_a_preview_is_the_design_that_setting_down_makes(tool):
    tool.press((1, 5), DESIGN, GRID)
    tool.move((2, 2), GRID)
    previewed = tool.preview(DESIGN, GRID)
    laid = tool.set_down(DESIGN, GRID)
    assert laid.edit.applied_to(DESIGN) == previewed
    assert rounds_of(previewed) == ["..x...", "..xx..", "......"]
    assert tool.block == laid.block == Block(band=0, first=1, last=2, column=2, width=2)
    assert not tool.is_busy


def test_a_copy_leaves_what_was_taken_up(tool):
    tool.press((1, 6), DESIGN, GRID, is_copy=True)
    tool.move((2, 3), GRID)
    assert rounds_of(tool.preview(DESIGN, GRID)) == ["..x...", "..xx.x", "x....x"]


def test_cancelling_a_carry_leaves_the_block_where_it_was(tool):
    tool.press((1, 5), DESIGN, GRID)
    tool.move((2, 2), GRID)
    tool.cancel()
    assert tool.block == CORNER
    assert tool.preview(DESIGN, GRID) is DESIGN


def test_a_piece_that_has_no_room_shows_nothing_and_is_not_set_down(tool):
    tool.take_up(clip_from_text("A B | x....x"), (3, 0))
    assert tool.preview(DESIGN, GRID) is DESIGN
    assert tool.outlined(DESIGN, GRID) is None
    with pytest.raises(ValueError, match="only 4"):
        tool.set_down(DESIGN, GRID)
    assert tool.is_busy
    tool.carry((-1, 0), GRID)
    assert tool.set_down(DESIGN, GRID).block == Block(band=0, first=2, last=2, column=0, width=6)


def test_nothing_is_set_down_where_nothing_is_carried():
    with pytest.raises(ValueError, match="nothing is carried"):
        BlockTool().set_down(DESIGN, GRID)


def test_a_block_holds_its_cells_in_every_repeat(tool):
    for cell in ((0, 5), (1, 0), (0, -1), (1, 6), (0, 12)):
        assert tool.holds(cell, GRID)
    for cell in ((2, 5), (0, 1), (0, 4), (3, 5), (-1, 5), (99, 5)):
        assert not tool.holds(cell, GRID)


def test_no_block_begins_beside_all_rounds():
    assert block_between(GRID, (-1, 0), (2, 2)) is None
    assert block_between(GRID, (5, 0), (2, 2)) is None


def test_a_block_goes_with_its_band_and_goes_where_its_rounds_do():
    lower, upper = DESIGN.bands
    swapped = replace(DESIGN, bands=(upper, lower))
    assert followed(CORNER, DESIGN, swapped) == replace(CORNER, band=1)
    redrawn = replace(lower, rounds=(lower.rounds[1], *lower.rounds[1:]))
    assert followed(CORNER, DESIGN, replace(DESIGN, bands=(redrawn, upper))) == CORNER
    for fewer in (replace(lower, rounds=lower.rounds[:2]), replace(lower, rounds=upper.rounds + upper.rounds[:1])):
        assert followed(CORNER, DESIGN, replace(DESIGN, bands=(fewer, upper))) is None
    assert followed(CORNER, DESIGN, replace(DESIGN, bands=(upper,))) is None


def test_a_gesture_ends_when_the_design_changes_under_it(tool):
    tool.press((1, 5), DESIGN, GRID)
    tool.move((2, 2), GRID)
    tool.follow(DESIGN, replace(DESIGN, title="Other"))
    assert not tool.is_busy
    assert tool.block == CORNER


def test_keys_grow_a_block_from_where_it_was_marked(tool):
    tool.grow((0, 0), (1, -3), GRID)
    assert tool.block == Block(band=0, first=0, last=2, column=3, width=3)
    tool.forget()
    tool.grow((3, 1), (5, 9), GRID)
    assert tool.block == Block(band=1, first=0, last=1, column=1, width=4)
