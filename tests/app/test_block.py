"""A block at the chart: marked, moved, copied, cut, pasted, turned about, by mouse and by keys, one step each."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent, QGuiApplication, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMenu

from chartmaker.app.block_actions import BLOCK_ACTIONS
from chartmaker.files.motif_reading import read_motif
from chartmaker.model.block import Block
from chartmaker.model.notation import rounds_to_text
from tests.app.hand_at import LEFT, NONE, RIGHT, drag, drawn, point
from tests.builders import chart

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
LOTS = {"A": (30, 8, 12), "B": (80, 0, 20)}
FIGURE = ["........", "........", "x......x", "x......."]
"""Of the lower band, whose figure stands at the join: stitch 8, and above it stitches 8 and 1."""
MOVED = ["..xx....", "...x....", "........", "........"]
JOIN = Block(band=0, first=0, last=1, column=6, width=3)
"""Stitches 7, 8 and 1 of its lower two rounds."""


def hat():
    lower = "\n".join(f"A B | {line}" for line in FIGURE)
    return chart(lower, "A B | ....\nA B | .x..", times=(18, 36), lots=LOTS)


@pytest.fixture
def window(open_on):
    """Give the window on `hat`, with the tool that selects in hand."""
    window = open_on(hat())
    press(window, "Q")
    return window


@pytest.fixture(autouse=True)
def clipboard(qapp):  # noqa: ARG001 - the clipboard is the application's
    """Give an empty clipboard."""
    QGuiApplication.clipboard().setText("")
    return QGuiApplication.clipboard()


def press(window, *keys):
    """Press keys at the chart, told as the action table tells them."""
    window.chart.canvas.setFocus()
    for key in keys:
        pressed = QKeySequence(key)[0]
        QTest.keyClick(window.chart.canvas, pressed.key(), pressed.keyboardModifiers())


def block_of(window):
    return window.chart.canvas.blocks.tool.block


def shown(window, row):
    """Give what the chart shows of a row of the live repeat of the lower band, as parts."""
    grid = window.chart.canvas.grid
    width = grid.rows[row].width
    return "".join(".x"[int(grid.codes[grid.place(row, column)])] for column in reversed(range(width)))


def words(window):
    return window.chart.canvas.blocks.words


def foot(window):
    """Give what the foot of the window tells."""
    return [label.text() for label in window.statusBar().findChildren(QLabel) if label.isVisible()]


def select_join(window):
    drag(window.chart.canvas, (0, 6), (1, 8))
    assert block_of(window) == JOIN


def is_one_step(window, expected, *, before=FIGURE):
    """Tell whether one step gave the lower band this drawing, and is taken back and done again."""
    assert drawn(window.document.design) == expected
    assert window.document.stack.count() == 1
    press(window, "Ctrl+Z")
    assert drawn(window.document.design) == before
    assert window.document.design == hat()
    press(window, "Ctrl+Shift+Z")
    return drawn(window.document.design) == expected


# --- selecting


def test_a_drag_over_the_join_selects_what_it_passed_and_says_so(window):
    select_join(window)
    assert window.document.stack.count() == 0
    assert words(window) == "3 stitches × 2 rounds, from stitch 7 across the join"
    assert "3 stitches × 2 rounds, from stitch 7 across the join" in foot(window)


def test_what_is_selected_is_spoken_with_the_stitch_at_the_cursor(window):
    canvas = window.chart.canvas
    canvas.go_to(0, 6)
    press(window, "Shift+Left")
    assert canvas.accessibleDescription().endswith("; selected: 2 stitches × 1 round, from stitch 7")
    press(window, "Escape")
    assert "selected" not in canvas.accessibleDescription()


@pytest.mark.parametrize(
    "cells", [((0, 6), (1, 8)), ((1, 8), (0, 6)), ((1, 6), (0, 8)), ((0, -2), (1, 0)), ((1, 0), (0, -2))]
)
def test_a_block_is_the_same_from_whichever_corner_and_over_either_neighbour(window, cells):
    drag(window.chart.canvas, *cells)
    assert block_of(window) == JOIN


def test_a_block_is_shown_while_it_is_being_marked(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    bare = canvas.grab().toImage()
    QTest.mousePress(port, LEFT, NONE, point(canvas, (0, 2)))
    QTest.mouseMove(port, point(canvas, (2, 4)))
    assert words(window) == "3 stitches × 3 rounds, from stitch 3"
    marked = canvas.grab().toImage()
    assert marked != bare
    QTest.mouseMove(port, point(canvas, (2, 5)))
    assert canvas.grab().toImage() != marked
    press(window, "Escape")
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (2, 5)))
    assert block_of(window) is None
    assert words(window) == ""


def test_a_block_ends_with_its_band_and_is_no_wider_than_the_repeat(window):
    drag(window.chart.canvas, (2, 1), (5, 15))
    assert block_of(window) == Block(band=0, first=2, last=3, column=1, width=8)
    press(window, "Escape")
    drag(window.chart.canvas, (2, 7), (0, -6))
    assert block_of(window) == Block(band=0, first=0, last=2, column=0, width=8)


def test_a_click_selects_one_stitch_and_a_click_beside_a_block_drops_it(window):
    drag(window.chart.canvas, (2, 3))
    assert words(window) == "1 stitch × 1 round, from stitch 4"
    drag(window.chart.canvas, (0, 0))
    assert block_of(window) is None
    assert window.document.stack.count() == 0


def test_marking_gives_the_chart_the_keys(window):
    window.chart.letters.setFocus()
    QTest.keyClick(window, Qt.Key.Key_Tab)
    assert not window.chart.canvas.hasFocus()
    select_join(window)
    assert window.chart.canvas.hasFocus()
    QTest.keyClick(window.focusWidget(), Qt.Key.Key_Delete)
    assert drawn(window.document.design) == ["........"] * 4


def test_escape_drops_the_block_in_whichever_tool(window):
    select_join(window)
    press(window, "D")
    assert block_of(window) == JOIN
    press(window, "Escape")
    assert block_of(window) is None
    assert window.chart.canvas.hand.tool.name == "draw"


def test_a_run_of_rounds_takes_the_place_of_the_block(window):
    select_join(window)
    press(window, "D", "Shift+Up")
    assert block_of(window) is None
    assert window.actions_made["block.copy"].isEnabled()


def test_the_line_round_a_block_shows_in_the_live_repeat_and_in_ghosts_on_any_shade(window):
    canvas = window.chart.canvas
    drag(canvas, (1, 2), (2, 4))
    image = canvas.viewport().grab().toImage()
    for column in (4, 4 - 8):
        box = canvas.frame.box(2, column)
        # Down its left edge, on which nothing but the line is black or white.
        down = [image.pixelColor(int(box.left()), int(box.top()) + dy).name() for dy in range(3, int(box.height()))]
        assert "#ffffff" in down
        beside = [image.pixelColor(int(box.left()) - 2, int(box.center().y())).name()]
        assert ("#000000" in down) == (column < 0)
        assert ("#000000" in beside) == (column > 0)


def test_where_blocks_of_two_repeats_meet_their_line_is_black_and_white_too(window):
    canvas = window.chart.canvas
    press(window, "Ctrl+A")
    image = canvas.viewport().grab().toImage()
    for column in (11, -5):
        box = canvas.frame.box(3, column)
        across = [image.pixelColor(int(box.left()) + dx, int(box.top())).name() for dx in range(20)]
        assert {"#000000", "#ffffff"} <= set(across)
    join = canvas.frame.box(0, 7).united(canvas.frame.box(3, 7))
    down = [image.pixelColor(int(join.left()) + dx, int(join.center().y())).name() for dx in range(-3, 3)]
    assert {"#000000", "#ffffff"} <= set(down)


def test_a_narrow_bands_block_is_dashed_where_ghosts_meet(open_on):
    window = open_on(chart("A B | ........", "A B | ..\nA B | ..", times=(18, 72), lots=LOTS))
    canvas = window.chart.canvas
    canvas.go_to(1)
    press(window, "Ctrl+A")
    image = canvas.viewport().grab().toImage()
    box = canvas.frame.box(2, 3).united(canvas.frame.box(1, 3))
    down = [image.pixelColor(int(box.left()), y).name() for y in range(int(box.top()) + 3, int(box.bottom()) - 3)]
    assert {"#000000", "#ffffff"} == set(down)


# --- moving


def test_a_drag_inside_the_block_moves_it_with_ground_where_it_was_and_the_block_goes_along(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    QTest.mousePress(port, LEFT, NONE, point(canvas, (0, 7)))
    QTest.mouseMove(port, point(canvas, (1, 4)))
    assert [shown(window, row) for row in (2, 1, 0)] == ["..xx....", "...x....", "........"]
    assert words(window) == "3 stitches × 2 rounds, from stitch 4"
    assert window.document.stack.count() == 0
    QTest.mouseMove(port, point(canvas, (2, 4)))
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (2, 4)))
    assert block_of(window) == Block(band=0, first=2, last=3, column=3, width=3)
    assert is_one_step(window, MOVED)


def test_the_pointer_tells_whether_a_press_would_mark_or_take_up(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    QTest.mouseMove(port, point(canvas, (2, 3)))
    assert port.cursor().shape() == Qt.CursorShape.CrossCursor
    QTest.mouseMove(port, point(canvas, (1, -2)))
    assert port.cursor().shape() == Qt.CursorShape.OpenHandCursor
    QTest.mousePress(port, LEFT, NONE, point(canvas, (1, -2)))
    assert port.cursor().shape() == Qt.CursorShape.ClosedHandCursor
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (1, -2)))
    press(window, "D")
    assert port.cursor().shape() == Qt.CursorShape.CrossCursor


def test_a_block_is_taken_hold_of_in_a_neighbour_too(window):
    select_join(window)
    drag(window.chart.canvas, (0, -1), (0, -2))
    assert is_one_step(window, ["........", "........", "xx......", ".x......"])


def test_ctrl_and_drag_copies(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    QTest.mousePress(port, LEFT, CTRL, point(canvas, (0, 7)))
    QTest.mouseMove(port, point(canvas, (2, 4)))
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (2, 4)))
    assert is_one_step(window, [*MOVED[:2], *FIGURE[2:]])


def test_escape_puts_a_block_back_that_is_being_moved(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    QTest.mousePress(port, LEFT, NONE, point(canvas, (0, 7)))
    QTest.mouseMove(port, point(canvas, (2, 4)))
    press(window, "Escape")
    assert [shown(window, row) for row in (3, 2, 1, 0)] == FIGURE
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (2, 4)))
    assert window.document.stack.count() == 0
    assert block_of(window) == JOIN


def test_another_button_puts_it_back_too_and_asks_for_no_menu(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    QTest.mousePress(port, LEFT, NONE, point(canvas, (0, 7)))
    QTest.mouseMove(port, point(canvas, (2, 4)))
    QTest.mousePress(port, RIGHT, NONE, point(canvas, (2, 4)))
    ask_for_menu(window, (2, 4))
    assert QApplication.activePopupWidget() is None
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (2, 4)))
    assert drawn(window.document.design) == FIGURE
    assert block_of(window) == JOIN


def test_a_block_stays_whole_at_the_top_of_its_band(window):
    select_join(window)
    drag(window.chart.canvas, (0, 7), (3, 7))
    assert block_of(window) == Block(band=0, first=2, last=3, column=6, width=3)
    assert is_one_step(window, ["x......x", "x.......", "........", "........"])


def test_a_block_moves_to_another_band_as_one_step(window):
    drag(window.chart.canvas, (0, 6), (0, 7))
    drag(window.chart.canvas, (0, 6), (4, 0))
    assert drawn(window.document.design, 1) == ["....", ".xx."]
    assert window.document.stack.count() == 1
    press(window, "Ctrl+Z")
    assert window.document.design == hat()


def test_a_block_wider_than_another_bands_repeat_is_refused_there_and_stays(window):
    drag(window.chart.canvas, (0, 0), (0, 5))
    drag(window.chart.canvas, (0, 2), (4, 2))
    assert window.document.stack.count() == 0
    assert window.statusBar().currentMessage() == "The piece is 6 stitches wide, the band's repeat only 4."
    assert block_of(window) == Block(band=0, first=0, last=0, column=0, width=6)


# --- by keys


def test_shift_and_arrows_mark_over_the_join_and_plain_arrows_drop(window):
    window.chart.canvas.go_to(0, 6)
    press(window, "Shift+Left", "Shift+Left", "Shift+Up")
    assert block_of(window) == JOIN
    assert window.chart.canvas.current == (1, 0)
    press(window, "Shift+Right", "Shift+Right", "Shift+Right", "Shift+Down")
    assert block_of(window) == Block(band=0, first=0, last=0, column=5, width=2)
    press(window, "Up")
    assert block_of(window) is None
    assert window.chart.canvas.current == (1, 5)


def test_marking_by_keys_ends_with_the_band_and_the_repeat(window):
    press(window, *["Shift+Left"] * 20, *["Shift+Up"] * 9)
    assert block_of(window) == Block(band=0, first=0, last=3, column=0, width=8)
    press(window, *["Shift+Right"] * 8)
    assert block_of(window) == Block(band=0, first=0, last=3, column=7, width=2)


def test_enter_takes_the_block_up_arrows_move_it_and_enter_sets_it_down(window):
    select_join(window)
    press(window, "Return", "Up", "Up", "Right", "Right", "Right")
    assert [shown(window, row) for row in (3, 2, 1, 0)] == MOVED
    assert window.document.stack.count() == 0
    assert window.chart.canvas.current == (2, 3)
    press(window, "Return")
    assert is_one_step(window, MOVED)


def test_escape_puts_a_block_back_that_keys_carry(window):
    select_join(window)
    press(window, "Space", "Up", "Left", "Left", "Escape")
    assert [shown(window, row) for row in (3, 2, 1, 0)] == FIGURE
    assert block_of(window) == JOIN
    assert window.document.stack.count() == 0
    press(window, "Escape")
    assert block_of(window) is None


def test_everything_from_the_keyboard_alone(window):
    window.chart.canvas.go_to(0, 6)
    press(window, "Return", "Shift+Left", "Shift+Left", "Shift+Up", "Ctrl+C", "Escape", "Up", "Ctrl+V")
    press(window, "Left", "Left", "Left", "Return")
    assert is_one_step(window, [*MOVED[:2], *FIGURE[2:]])


def test_ctrl_a_selects_the_band_or_the_rounds_that_are_chosen(window):
    press(window, "D", "Ctrl+A")
    assert window.chart.canvas.hand.tool.name == "select"
    assert block_of(window) == Block(band=0, first=0, last=3, column=0, width=8)
    press(window, "Escape", "D", "Up", "Shift+Up", "Ctrl+A")
    assert block_of(window) == Block(band=0, first=1, last=2, column=0, width=8)


# --- cutting, copying, pasting


def test_cutting_leaves_ground_and_the_text_of_the_piece(window, clipboard):
    select_join(window)
    press(window, "Ctrl+X")
    assert clipboard.text() == "A B | xx.\nA B | .x.\n"
    assert block_of(window) == JOIN
    assert is_one_step(window, ["........"] * 4)


@pytest.mark.parametrize("key", ["Del", "Backspace"])
def test_delete_clears_to_ground_and_leaves_the_clipboard(window, clipboard, key):
    select_join(window)
    press(window, key)
    assert clipboard.text() == ""
    assert is_one_step(window, ["........"] * 4)


def test_a_pasted_piece_floats_under_the_pointer_until_a_click_sets_it_down(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    press(window, "Ctrl+C", "Ctrl+V")
    QTest.mouseMove(port, point(canvas, (1, 2)))
    QTest.mouseMove(port, point(canvas, (2, 3)))
    assert [shown(window, row) for row in (3, 2)] == MOVED[:2]
    assert window.document.stack.count() == 0
    QTest.mouseClick(port, LEFT, NONE, point(canvas, (2, 3)))
    assert block_of(window) == Block(band=0, first=2, last=3, column=3, width=3)
    assert is_one_step(window, [*MOVED[:2], *FIGURE[2:]])
    QTest.mouseMove(port, point(canvas, (0, 1)))
    assert [shown(window, row) for row in (3, 2)] == MOVED[:2]


@pytest.mark.parametrize("way", ["escape", "right button"])
def test_a_floating_piece_is_dropped(window, way):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    press(window, "Ctrl+C", "Ctrl+V")
    QTest.mouseMove(port, point(canvas, (2, 3)))
    if way == "escape":
        press(window, "Escape")
    else:
        QTest.mouseClick(port, RIGHT, NONE, point(canvas, (2, 3)))
        ask_for_menu(window, (2, 3))
        assert QApplication.activePopupWidget() is None
    assert [shown(window, row) for row in (3, 2, 1, 0)] == FIGURE
    assert window.document.stack.count() == 0
    assert block_of(window) == JOIN


def test_rounds_that_find_no_room_are_left_out_and_told(window):
    select_join(window)
    press(window, "Ctrl+C", "Escape", "Up", "Up", "Up", "Ctrl+V", "Return")
    assert window.statusBar().currentMessage() == ("1 of its 2 rounds is past the top of the band and was left out.")
    assert window.document.stack.count() == 1


def test_a_piece_wider_than_the_repeat_goes_on_floating(window):
    canvas = window.chart.canvas
    press(window, "Ctrl+A", "Ctrl+C", "Escape")
    canvas.go_to(4, 0)
    press(window, "Ctrl+V", "Return")
    assert window.statusBar().currentMessage() == "The piece is 8 stitches wide, the band's repeat only 4."
    assert window.document.stack.count() == 0
    canvas.go_to(0, 0)
    press(window, "Down", "Down", "Left", "Return")
    assert window.document.stack.count() == 1


@pytest.mark.parametrize("text", ["", "two hanks of fawn", "A B | xq", "A | x.", "A B | x\nA B | xx", "x" * 3_000_000])
def test_text_that_is_no_piece_of_a_chart_is_refused_with_one_sentence(window, clipboard, text):
    clipboard.setText(text)
    press(window, "Ctrl+V")
    told = window.statusBar().currentMessage()
    assert told.endswith("so it cannot be pasted.")
    assert len(told) < 160
    assert not window.chart.canvas.blocks.tool.is_busy
    assert window.document.stack.count() == 0


def test_a_piece_is_pasted_into_another_window(open_on, window):
    select_join(window)
    press(window, "Ctrl+C")
    other = open_on(chart("C D | .....\nC D | .....\nC D | .....", times=20, lots={"C": (30, 0, 0), "D": (80, 0, 0)}))
    press(other, "Up", "Ctrl+V", "Return")
    assert drawn(other.document.design) == ["..xx.", "...x.", "....."]
    assert [line.letters for line in other.document.design.bands[0].rounds] == ["CD"] * 3
    assert drawn(window.document.design) == FIGURE


# --- turning about

OUTCOMES = {
    "block.cut": ["........"] * 4,
    "block.clear": ["........"] * 4,
    "block.flip_sideways": [*FIGURE[:2], "xx......", "x......."],
    "block.flip_upright": [*FIGURE[:2], "x.......", "x......x"],
    "block.turn_half": [*FIGURE[:2], "x.......", "xx......"],
    "block.shift_left": [*FIGURE[:2], ".x.....x", ".......x"],
    "block.shift_right": [*FIGURE[:2], "xx......", ".x......"],
    "block.shift_up": [*FIGURE[:2], "x.......", "x......x"],
    "block.shift_down": [*FIGURE[:2], "x.......", "x......x"],
}
"""Of `JOIN`, by action."""
BY_NAME = {action.id: action for action in BLOCK_ACTIONS}


def test_every_action_of_a_block_is_tried_here():
    assert BY_NAME.keys() == {*OUTCOMES, "block.copy", "block.paste", "block.all", "block.repeat"}


@pytest.mark.parametrize("name", OUTCOMES)
def test_each_action_is_one_step_and_the_block_stays(window, name):
    select_join(window)
    press(window, BY_NAME[name].keys[0])
    assert block_of(window) == JOIN
    assert is_one_step(window, OUTCOMES[name])


@pytest.mark.parametrize("name", OUTCOMES)
def test_each_action_stands_in_the_blocks_menu(window, name):
    select_join(window)
    ask_for_menu(window, (0, 7))
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    QTest.mouseClick(menu, LEFT, NONE, menu.actionGeometry(window.actions_made[name]).center())
    assert is_one_step(window, OUTCOMES[name])


def ask_for_menu(window, cell, reason=QContextMenuEvent.Reason.Mouse):
    """Ask for the menu of a cell as the second button or the menu key does."""
    canvas = window.chart.canvas
    at = point(canvas, cell) if reason == QContextMenuEvent.Reason.Mouse else QPoint(0, 0)
    QApplication.sendEvent(canvas.viewport(), QContextMenuEvent(reason, at, canvas.viewport().mapToGlobal(at)))


def test_the_menu_key_asks_for_the_blocks_menu_too(window):
    select_join(window)
    ask_for_menu(window, (0, 0), QContextMenuEvent.Reason.Keyboard)
    menu = QApplication.activePopupWidget()
    assert window.actions_made["block.repeat"] in menu.actions()
    menu.close()


def test_a_block_is_repeated_across_the_band(window):
    drag(window.chart.canvas, (0, 7), (1, 8))
    press(window, "Ctrl+G")
    assert is_one_step(window, [*FIGURE[:2], "xxxxxxxx", "x.x.x.x."])


def test_a_block_whose_width_does_not_divide_the_repeat_is_told_which_would(window):
    select_join(window)
    press(window, "Ctrl+G")
    told = window.statusBar().currentMessage()
    assert told == "A block of 3 stitches does not divide the repeat of 8; one of 1, 2, 4 or 8 would."
    assert window.document.stack.count() == 0


def test_without_a_selection_the_band_is_turned_and_shifted_and_nothing_is_cut(window):
    for name in ("block.cut", "block.copy", "block.clear", "block.repeat"):
        assert not window.actions_made[name].isEnabled()
    press(window, "D", "Del", "Ctrl+X")
    assert window.document.stack.count() == 0
    press(window, "Ctrl+Left")
    assert is_one_step(window, [*FIGURE[:2], "......xx", ".......x"])
    press(window, "Ctrl+Shift+H")
    assert drawn(window.document.design) == [".......x", "......xx", *FIGURE[:2]]


def test_chosen_rounds_are_shifted_round_the_circumference_at_whole_width(window):
    press(window, "D", "Up", "Shift+Up", "Ctrl+Right")
    assert is_one_step(window, [*FIGURE[:2], "xx......", "x......."])
    press(window, "Del")
    assert drawn(window.document.design) == [*FIGURE[:2], "........", "x......."]


def test_what_cannot_be_right_in_a_wedge_is_told(open_on):
    design = chart("A B | xx | ><\nA B | xxxx | >..<\nA B | x....x", times=6, lots=LOTS)
    window = open_on(design)
    press(window, "Ctrl+Shift+H")
    assert "rounds of one count" in window.statusBar().currentMessage()
    press(window, "Q")
    drag(window.chart.canvas, (0, 0), (2, 5))
    assert words(window) == "6 columns × 3 rounds, from column 1"
    press(window, "Del")
    assert drawn(window.document.design) == ["..", "....", "......"]
    assert not window.chart.canvas.grab().isNull()


# --- what goes on around it


def test_a_block_stays_through_edits_beside_it_and_goes_with_its_band(window):
    select_join(window)
    press(window, "D", "Up", "Up", "Space", "Ctrl+Z", "Ctrl+Shift+Z")
    assert block_of(window) == JOIN
    press(window, "Shift+B")
    assert block_of(window) == Block(band=1, first=0, last=1, column=6, width=3)
    press(window, "Ctrl+Z")
    assert block_of(window) == JOIN


@pytest.mark.parametrize("key", ["Ctrl+Del", "Ctrl+Shift+Del", "Alt+Shift+Left", "Ctrl+Shift+R"])
def test_a_block_goes_where_its_rounds_its_band_or_its_columns_do(open_on, key):
    line = "A B | x.x."
    window = open_on(chart(f"{line}\n{line}", "A B | ....", times=(36, 36), lots=LOTS))
    press(window, "Q", "Ctrl+A")
    assert block_of(window) is not None
    press(window, "D", key)
    assert window.document.stack.count() == 1
    assert block_of(window) is None
    assert words(window) == ""
    assert not window.grab().isNull()


def test_another_design_has_no_block(window):
    select_join(window)
    window.document.replace(chart("A B | .x", times=72, lots=LOTS), path=None, palette=None)
    assert block_of(window) is None
    assert words(window) == ""
    assert not any("stitches ×" in text for text in foot(window))


@pytest.mark.parametrize("selecting", [("Ctrl+A",), ("D", "Up", "Shift+Up", "Shift+Up")])
def test_a_smaller_design_takes_the_place_of_one_with_a_selection(open_on, selecting):
    window = open_on(chart("A B | .", "\n".join(["A B | .x"] * 4), times=(144, 72), lots=LOTS))
    press(window, "Up", "Q", *selecting)
    assert window.actions_made["block.cut"].isEnabled()
    window.document.replace(chart("A B | .", times=144, lots=LOTS), path=None, palette=None)
    assert block_of(window) is None
    assert not window.actions_made["block.cut"].isEnabled()


def test_undo_during_a_move_drops_the_move_first(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    select_join(window)
    press(window, "Del")
    QTest.mousePress(port, LEFT, NONE, point(canvas, (0, 7)))
    QTest.mouseMove(port, point(canvas, (2, 4)))
    press(window, "Ctrl+Z")
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (2, 4)))
    assert drawn(window.document.design) == FIGURE
    assert window.document.stack.count() == 1


def test_taking_another_tool_drops_what_floats(window):
    select_join(window)
    press(window, "Ctrl+C", "Ctrl+V", "Up", "Up", "D")
    assert [shown(window, row) for row in (3, 2, 1, 0)] == FIGURE
    assert not window.chart.canvas.blocks.tool.is_busy


def test_numbers_of_rounds_are_chosen_with_the_tool_in_hand_too(window):
    canvas = window.chart.canvas
    select_join(window)
    x = canvas.viewport().width() - 10
    QTest.mousePress(canvas.viewport(), LEFT, NONE, QPoint(x, point(canvas, (1, 0)).y()))
    QTest.mouseMove(canvas.viewport(), QPoint(x, point(canvas, (2, 0)).y()))
    QTest.mouseRelease(canvas.viewport(), LEFT, NONE, QPoint(x, point(canvas, (2, 0)).y()))
    assert canvas.chosen == range(1, 3)
    assert block_of(window) is None


def test_the_block_is_saved_as_a_motif_over_the_join(window, answers, motifs_folder):
    select_join(window)
    answers.motif_name = "Corner"
    press(window, "Ctrl+Shift+M")
    saved = read_motif(motifs_folder / "corner.motif.toml")
    assert rounds_to_text(saved.rounds) == "A B | xx.\nA B | .x.\n"
