import pytest

from chartmaker.app.chart_grid import laid_out
from chartmaker.app.hand import Hand, all_tools
from chartmaker.app.tools import DrawTool, PickTool, TwoEndsTool, line
from chartmaker.model.stitches import Part
from tests.app.hand_at import drawn
from tests.builders import chart

TOOLS = pytest.mark.parametrize("tool", all_tools(), ids=lambda tool: tool.name)
BARE = chart("\n".join(["A B | ......"] * 4), times=24)


def test_drawing_passes_every_cell_between_two_moves():
    tool = DrawTool()
    tool.press((0, 0))
    tool.move((0, 3))
    tool.move((2, 3))
    assert tool.release() == ((0, 0), (0, 1), (0, 2), (0, 3), (1, 3), (2, 3))


def test_a_line_forgets_where_the_hand_went_between():
    tool = TwoEndsTool("line", line)
    tool.press((0, 0))
    tool.move((5, 5))
    wanted = ((0, 0, 0), (0, 1, 1), (0, 2, 2), (0, 3, 3))
    assert tool.strips(tool.move((0, 3))) == wanted
    assert tool.strips(tool.release()) == wanted


def test_picking_previews_nothing_and_ends_on_the_cell_where_it_let_go():
    tool = PickTool()
    assert tool.press((0, 0)) == ()
    assert tool.move((1, 2)) == ()
    assert tool.release() == ((1, 2),)


@TOOLS
def test_a_cancelled_gesture_leaves_nothing(tool):
    tool.press((0, 0))
    assert tool.is_busy
    tool.cancel()
    assert not tool.is_busy
    assert tool.move((1, 1)) == ()
    assert tool.release() == ()
    assert tool.strips(()) == ()


def test_a_preview_is_the_design_that_letting_go_would_make():
    hand, grid = Hand(), laid_out(BARE)
    hand.press((0, 0), Part.FIGURE)
    hand.move((0, 2))
    preview = hand.preview(BARE, grid)
    edit = hand.release(BARE, grid)
    assert edit is not None
    assert drawn(preview)[-1] == "...xxx"
    assert edit.applied_to(BARE) == preview


def test_drawing_over_a_neighbour_draws_the_live_stitch():
    hand, grid = Hand(), laid_out(BARE)
    hand.press((1, -1), Part.FIGURE)
    hand.move((1, -2))
    edit = hand.release(BARE, grid)
    assert edit is not None
    assert drawn(edit.applied_to(BARE))[2] == "xx...."


def test_a_gesture_across_two_bands_is_one_edit_that_can_be_taken_back():
    design = chart("A B | ....", "A B | ....", times=36)
    hand = Hand()
    hand.press((0, 0), Part.FIGURE)
    hand.move((1, 0))
    edit = hand.release(design, laid_out(design))
    assert edit is not None
    after = edit.applied_to(design)
    assert (drawn(after, 0), drawn(after, 1)) == (["...x"], ["...x"])
    assert edit.inverse().applied_to(after) == design


def test_drawing_what_is_there_already_is_no_edit():
    hand = Hand()
    hand.press((0, 0), Part.GROUND)
    assert hand.release(BARE, laid_out(BARE)) is None


def test_picking_takes_up_the_part_of_the_stitch():
    design = chart("A B C | .x+", times=48)
    hand = Hand()
    hand.take("pick")
    hand.press((0, 0), Part.FIGURE)
    assert hand.release(design, laid_out(design)) is None
    assert hand.part == Part.THIRD


def test_the_second_button_draws_ground_or_figure_where_ground_is_drawn_already():
    hand = Hand()
    assert hand.opposite == Part.GROUND
    hand.part = Part.GROUND
    assert hand.opposite == Part.FIGURE
