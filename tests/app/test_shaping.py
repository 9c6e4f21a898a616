"""The shaping tool: signs taken up by key or from the tool bar, set with the pointer or at the cursor."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from chartmaker.app.chart_grid import laid_out
from chartmaker.app.hand import Hand
from chartmaker.app.tools import ShapeTool
from chartmaker.model.notation import rounds_to_text
from chartmaker.model.stitches import Shaping
from tests.app.hand_at import LEFT, NONE, RIGHT, drag, point, type_at
from tests.builders import chart

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
CROWN = chart("\n".join(["A B | ........"] * 4), "A B | ....", times=(18, 36))
KEYS = {"K": Shaping.K2TOG, "S": Shaping.SSK, "C": Shaping.CENTRED, "M": Shaping.MAKE, "N": Shaping.PLAIN}


def text(design, band=0):
    return [line.replace(" ", "") for line in rounds_to_text(design.bands[band].rounds).splitlines()]


@pytest.fixture
def window(open_on):
    return open_on(CROWN)


@pytest.mark.parametrize("key", KEYS)
def test_each_sign_has_a_key_and_shows_as_taken_in_the_tool_bar(window, key):
    type_at(window, Qt.Key[f"Key_{key}"])
    assert window.chart.canvas.hand.sign_held == KEYS[key]
    on = [
        name for name in window.actions_made.made if name.startswith("sign.") and window.actions_made[name].isChecked()
    ]
    assert on == [f"sign.{KEYS[key].name.lower()}"]
    assert not window.actions_made["tool.draw"].isChecked()
    type_at(window, Qt.Key.Key_F)
    assert window.chart.canvas.hand.tool.name == "draw"
    assert not window.actions_made[on[0]].isChecked()


@pytest.mark.parametrize(
    ("key", "line", "stitch"),
    [
        ("K", "AB|.......|.....>.", 1),
        ("S", "AB|.......|....<..", 2),
        ("C", "AB|......|....^.", 1),
        ("M", "AB|.........|......+..", 2),
    ],
)
def test_a_click_sets_the_sign_and_the_rounds_above_follow_as_one_step(window, key, line, stitch):
    type_at(window, Qt.Key[f"Key_{key}"])
    drag(window.chart.canvas, (1, 2))
    after = window.document.design
    bare = line.split("|")[1]
    assert text(after) == [f"AB|{bare}", f"AB|{bare}", line, "AB|........"]
    assert window.document.stack.count() == 1
    canvas = window.chart.canvas
    assert canvas.current[0] == 1
    assert canvas.grid.spot(*canvas.current).stitch == stitch
    QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
    assert window.document.design == CROWN
    QTest.keyClick(window, Qt.Key.Key_Z, CTRL | SHIFT)
    assert window.document.design == after
    assert [row.length for row in canvas.grid.rows] == [8, len(bare), len(bare), len(bare), 4]


def test_where_the_next_band_no_longer_meets_it_is_marked(window):
    type_at(window, Qt.Key.Key_Up, Qt.Key.Key_K, Qt.Key.Key_Space)
    assert window.chart.canvas._broken == {4}
    assert "! eats 144 stitches, the round below has 126" in window.chart.ledger.words(4)


def test_a_sign_is_taken_up_by_its_button(window):
    button = window.chart.tools.widgetForAction(window.actions_made["sign.centred"])
    QTest.mouseClick(button, LEFT)
    assert window.chart.canvas.hand.sign_held == Shaping.CENTRED
    assert "C" in button.toolTip()
    drag(window.chart.canvas, (2, 4))
    assert text(window.document.design)[1] == "AB|......|..^..."


def test_the_space_bar_sets_the_sign_at_the_cursor(window):
    type_at(window, Qt.Key.Key_Up, Qt.Key.Key_S, Qt.Key.Key_Space, Qt.Key.Key_End, Qt.Key.Key_K, Qt.Key.Key_Return)
    assert text(window.document.design)[2] == "AB|......|>....<"
    assert window.document.stack.count() == 2
    type_at(window, Qt.Key.Key_N, Qt.Key.Key_Space)
    assert text(window.document.design)[2] == "AB|.......|......<"


def test_the_second_button_makes_a_stitch_plain_again(window):
    type_at(window, Qt.Key.Key_C)
    drag(window.chart.canvas, (1, 3))
    drag(window.chart.canvas, window.chart.canvas.current, button=RIGHT)
    assert window.document.design == CROWN
    assert window.document.stack.count() == 2


def test_a_sign_shows_before_the_button_is_let_go_and_escape_drops_it(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    type_at(window, Qt.Key.Key_K)
    canvas.go_to(1, 4)
    bare, at = canvas.grab().toImage(), [point(canvas, (1, column)) for column in range(8)]
    QTest.mousePress(port, LEFT, NONE, at[4])
    assert canvas.grab().toImage() != bare
    assert [row.length for row in canvas.grid.rows][:2] == [8, 7]
    assert window.document.design == CROWN
    QTest.keyClick(canvas, Qt.Key.Key_Escape)
    QTest.mouseRelease(port, LEFT, NONE, at[4])
    assert window.document.stack.count() == 0
    assert canvas.current == (1, 4)
    assert canvas.grab().toImage() == bare


def test_the_sign_is_set_where_the_button_is_let_go_though_the_preview_moved_stitches(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    type_at(window, Qt.Key.Key_C)
    at = [point(canvas, (1, column)) for column in range(8)]
    QTest.mousePress(port, LEFT, NONE, at[1])
    for column in (2, 3, 4, 5):
        QTest.mouseMove(port, at[column])
    QTest.mouseRelease(port, LEFT, NONE, at[5])
    assert text(window.document.design)[2] == "AB|......|.^...."
    assert window.document.stack.count() == 1


def test_a_stroke_beside_the_stitches_shapes_nothing(window):
    type_at(window, Qt.Key.Key_K)
    drag(window.chart.canvas, (1, 2), (30, 2))
    assert window.document.design == CROWN


def test_a_decrease_without_a_stitch_to_take_in_is_told(open_on):
    window = open_on(chart("A | .\nA | .", times=144))
    type_at(window, Qt.Key.Key_Up, Qt.Key.Key_S, Qt.Key.Key_Space)
    assert window.statusBar().currentMessage() == "The round has no other plain stitch for this one to take in."
    assert window.document.stack.count() == 0
    type_at(window, Qt.Key.Key_Space)
    assert window.document.stack.count() == 0


def test_ground_at_the_cursor_is_drawn_whatever_the_hand_holds(window):
    type_at(window, Qt.Key.Key_Space, Qt.Key.Key_K, Qt.Key.Key_X)
    assert window.document.design == CROWN
    assert window.chart.canvas.hand.sign_held == Shaping.K2TOG


def test_the_status_bar_tells_how_the_stitch_is_made_now(window):
    type_at(window, Qt.Key.Key_Up, Qt.Key.Key_M, Qt.Key.Key_Space)
    assert "stitch 1 of 9" in window._hover.text()
    assert "make one" in window._hover.text()


def test_the_shaping_tool_acts_on_the_last_cell_and_forgets_a_cancelled_gesture():
    tool = ShapeTool()
    assert tool.move((0, 0)) == ()
    assert tool.press((0, 0)) == ((0, 0),)
    assert tool.move((1, 2)) == ((1, 2),)
    assert tool.release() == ((1, 2),)
    tool.press((0, 0))
    tool.cancel()
    assert not tool.is_busy
    assert tool.release() == ()


def test_a_preview_that_would_be_refused_shows_the_design_as_it_is():
    design = chart("A | .\nA | .", times=144)
    hand, grid = Hand(), laid_out(design)
    hand.take("shape")
    hand.press((1, 0))
    assert hand.preview(design, grid) is design
    with pytest.raises(ValueError, match="no other plain stitch"):
        hand.release(design, grid)
