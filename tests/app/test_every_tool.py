"""Every tool of the action table by real events: press, move, release is one step; Escape or another button is none."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest

from chartmaker.app.actions import ACTIONS
from chartmaker.app.drawing_actions import SHAPE_TOOLS
from chartmaker.app.mirror import Axes
from chartmaker.app.shared_button import SharedButton
from chartmaker.model.stitches import Part, Shaping
from tests.app.hand_at import LEFT, NONE, RIGHT, point
from tests.builders import chart

KINDS = ("tool.", "sign.")
TOOLS = [action.id for action in ACTIONS if action.id.startswith(KINDS)] + ["motifs.stamp"]
"""Read from the table, so that whoever adds a tool sees it tried here."""
PAINTLESS = {"tool.pick", "tool.select"}
"""Change nothing of the design: they change what is done next, to what part or which block."""
DRAWN = chart(
    """
    A B | ........
    A B | x....x.. | ....<...
    A B | .........
    A B | .........
    """,
    times=16,
    lots={"A": (30, 8, 12), "B": (80, 0, 20)},
)
WAY = ((0, 1), (1, 2), (2, 5))
"""Cells of a drag: it begins and ends on plain stitches of the ground, the last above the decrease's round."""


@pytest.fixture
def window(open_on):
    return open_on(DRAWN)


def take(window, name):
    """Take a tool up by its key, as the table has it."""
    if name == "motifs.stamp":
        window.chart.show_shelf(is_shown=True)
        QTest.keyClick(window.chart.motifs.shelf.fit, Qt.Key.Key_End)
        window.chart.motifs.shelf.list.setCurrentRow(0)
    canvas = window.chart.canvas
    canvas.setFocus()
    key = QKeySequence(next(action.keys[0] for action in ACTIONS if action.id == name))[0]
    QTest.keyClick(canvas, key.key(), key.keyboardModifiers())
    assert window.actions_made[name].isChecked()


def press_and_move(canvas):
    QTest.mousePress(canvas.viewport(), LEFT, NONE, point(canvas, WAY[0]))
    for cell in WAY[1:]:
        QTest.mouseMove(canvas.viewport(), point(canvas, cell))


def release(canvas):
    QTest.mouseRelease(canvas.viewport(), LEFT, NONE, point(canvas, WAY[-1]))


def press(window, keys):
    key = QKeySequence(keys)[0]
    QTest.keyClick(window, key.key(), key.keyboardModifiers())


def test_the_table_has_the_tools_of_the_hand_and_a_sign_for_every_shaping(window):
    signs = {f"sign.{sign.name.lower()}" for sign in Shaping}
    tools = {f"tool.{name}" for name in window.chart.canvas.hand.tools} - {"tool.shape", "tool.stamp"}
    assert set(TOOLS) == signs | tools | {"motifs.stamp"}


@pytest.mark.parametrize("name", TOOLS)
def test_press_move_and_release_are_one_step_to_take_back_and_take_again(window, name):
    canvas, stack = window.chart.canvas, window.document.stack
    take(window, name)
    if name == "sign.plain":
        shaped(window)
        take(window, name)
    before, count = window.document.design, stack.count()
    press_and_move(canvas)
    shown = canvas.shown
    assert window.document.design is before
    assert stack.count() == count
    release(canvas)
    after = window.document.design
    assert canvas.shown == after == shown
    assert not canvas.hand.is_busy
    if name in PAINTLESS:
        assert stack.count() == count
        assert canvas.hand.part == (Part.GROUND if name == "tool.pick" else Part.FIGURE)
        assert (canvas.blocks.tool.block is not None) == (name == "tool.select")
        return
    assert stack.count() == count + 1
    assert after != before
    press(window, "Ctrl+Z")
    assert window.document.design == canvas.shown == before
    press(window, "Ctrl+Y")
    assert window.document.design == canvas.shown == after


def shaped(window):
    """Make the stitch where the drag ends a decrease, so that there is something to make plain.

    The round moves over as it gets one stitch less, so that the sign is set beside the place where it comes to stand.
    """
    take(window, "sign.k2tog")
    row, column = WAY[-1]
    QTest.mouseClick(window.chart.canvas.viewport(), LEFT, NONE, point(window.chart.canvas, (row, column + 1)))


@pytest.mark.parametrize("name", TOOLS)
@pytest.mark.parametrize("way_out", ["Escape", "another button"])
def test_escape_or_another_button_during_the_gesture_leaves_everything_as_it_was(window, name, way_out):
    canvas, before = window.chart.canvas, window.document.design
    take(window, name)
    part = canvas.hand.part
    press_and_move(canvas)
    assert canvas.hand.is_busy or name == "tool.select"
    if way_out == "Escape":
        QTest.keyClick(canvas, Qt.Key.Key_Escape)
    else:
        QTest.mousePress(canvas.viewport(), RIGHT, NONE, point(canvas, WAY[-1]))
    assert canvas.shown == before
    assert not canvas.hand.is_busy
    release(canvas)
    assert window.document.design is before
    assert window.document.stack.count() == 0
    assert canvas.hand.part == part
    assert canvas.blocks.tool.block is None


@pytest.mark.parametrize("name", sorted(set(TOOLS) - PAINTLESS - {"sign.plain"}))
def test_by_keys_a_tool_draws_at_the_cursor_and_one_of_two_ends_from_there_to_where_it_is_moved(window, name):
    canvas, stack = window.chart.canvas, window.document.stack
    take(window, name)
    QTest.keyClick(canvas, Qt.Key.Key_Space)
    has_two_ends = canvas.hand.tool.needs_two_presses
    assert stack.count() == (0 if has_two_ends else 1)
    if has_two_ends:
        QTest.keyClick(canvas, Qt.Key.Key_Up)
        QTest.keyClick(canvas, Qt.Key.Key_Left)
        assert canvas.shown != window.document.design
        QTest.keyClick(canvas, Qt.Key.Key_Escape)
        assert canvas.shown is window.document.design
        assert stack.count() == 0
        for key in (Qt.Key.Key_Space, Qt.Key.Key_Down, Qt.Key.Key_Return):
            QTest.keyClick(canvas, key)
        assert stack.count() == 1


@pytest.mark.parametrize("name", [name for name in TOOLS if name.startswith("tool.") and name not in PAINTLESS])
def test_what_is_mirrored_shows_in_the_preview_and_is_the_same_step(window, name):
    canvas = window.chart.canvas
    take(window, name)
    press_and_move(canvas)
    plain = canvas.shown
    QTest.keyClick(canvas, Qt.Key.Key_Escape)
    canvas.hand.axes = Axes(across=13, up=1)
    press_and_move(canvas)
    shown = canvas.shown
    assert shown.bands[0].rounds[0].cells.count(1) >= plain.bands[0].rounds[0].cells.count(1)
    assert shown != plain or name == "tool.fill"
    release(canvas)
    assert window.document.design == shown
    assert window.document.stack.count() == 1


def test_line_and_shapes_share_a_button_that_shows_which_was_taken_last(window):
    button = next(iter(window.chart.tools.findChildren(SharedButton)))
    assert [entry.objectName() for entry in button.menu().actions()] == list(SHAPE_TOOLS)
    assert button.defaultAction().objectName() == "tool.line"
    take(window, "tool.filled-ellipse")
    take(window, "tool.draw")
    assert button.defaultAction().objectName() == "tool.filled-ellipse"
    assert button.accessibleName() == "Filled ellipse"
    QTest.mouseClick(button, LEFT, NONE, QPoint(8, button.height() // 2))
    assert window.chart.canvas.hand.tool.name == "filled-ellipse"


@pytest.mark.parametrize("size", [(1024, 700), (1180, 800)])
def test_nothing_of_the_tool_bar_is_cut_off(open_on, size):
    tools = open_on(DRAWN, size=size).chart.tools
    assert [action.text() for action in tools.actions() if not tools.widgetForAction(action).isVisible()] == []


def test_the_status_bar_tells_how_far_a_fill_goes(window):
    assert "as far as the band goes" in window.actions_made["tool.fill"].statusTip()
