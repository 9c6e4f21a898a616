"""Rounds, bands and repeats changed at the chart: by key and from the menu, each as one step that undo takes back."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QContextMenuEvent, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu, QStyle, QStyleOptionSpinBox

from chartmaker.app.chosen_rounds import rows_of_band, run_between
from chartmaker.app.structure_actions import BAND_ACTIONS, ROUND_ACTIONS
from chartmaker.model.notation import rounds_to_text
from tests.app.hand_at import LEFT, NONE, RIGHT, drag, point, type_at
from tests.builders import chart

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
HAT = chart(
    "A B | xx..\nA B | xx..",
    "A D | .x.x\nA C | x.x.\nA B | xxxx",
    "A B | x...\nA B | ..x.",
    times=(36, 36, 36),
)
MIDDLE = ["AD|.x.x", "AC|x.x.", "AB|xxxx"]


def text(design, band=1):
    return [line.replace(" ", "") for line in rounds_to_text(design.bands[band].rounds).splitlines()]


def shape_of(design):
    return [(band.name, len(band.rounds), len(band.rounds[0]), band.times) for band in design.bands]


@pytest.fixture
def window(open_on):
    """Give the window with the cursor in the middle round of the middle band."""
    window = open_on(HAT)
    window.chart.canvas.go_to(3, 1)
    return window


def press(window, key):
    """Press the key of an action at the chart."""
    pressed = QKeySequence(key)[0]
    window.chart.canvas.setFocus()
    QTest.keyClick(window.chart.canvas, pressed.key(), pressed.keyboardModifiers())


def from_menu(window, name):
    """Take an action from its menu as the hand would."""
    title = name.split(".")[0].capitalize()
    menu = next(entry.menu() for entry in window.menuBar().actions() if entry.text() == f"&{title}")
    menu.popup(window.mapToGlobal(QPoint(50, 50)))
    QTest.mouseClick(menu, LEFT, NONE, menu.actionGeometry(window.actions_made[name]).center())


OUTCOMES = {
    "rounds.insert_above": lambda d: text(d) == ["AD|.x.x", "AC|....", "AC|x.x.", "AB|xxxx"],
    "rounds.insert_below": lambda d: text(d) == ["AD|.x.x", "AC|x.x.", "AC|....", "AB|xxxx"],
    "rounds.duplicate": lambda d: text(d) == ["AD|.x.x", "AC|x.x.", "AC|x.x.", "AB|xxxx"],
    "rounds.delete": lambda d: text(d) == ["AD|.x.x", "AB|xxxx"],
    "rounds.up": lambda d: text(d) == ["AC|x.x.", "AD|.x.x", "AB|xxxx"],
    "rounds.down": lambda d: text(d) == ["AD|.x.x", "AB|xxxx", "AC|x.x."],
    "bands.add_above": lambda d: shape_of(d)[2] == ("band 4", 8, 4, 36) and text(d, 2) == ["AD|...."] * 8,
    "bands.add_below": lambda d: shape_of(d)[1] == ("band 4", 8, 4, 36) and text(d, 1) == ["AB|...."] * 8,
    "bands.duplicate": lambda d: text(d, 1) == text(d, 2) == MIDDLE and d.bands[2].name == "band 4",
    "bands.delete": lambda d: [band.name for band in d.bands] == ["band 1", "band 3"],
    "bands.up": lambda d: [band.name for band in d.bands] == ["band 1", "band 3", "band 2"],
    "bands.down": lambda d: [band.name for band in d.bands] == ["band 2", "band 1", "band 3"],
    "bands.join": lambda d: shape_of(d)[1:] == [("band 2", 5, 4, 36)],
    "bands.split": lambda d: [len(band.rounds) for band in d.bands] == [2, 1, 2, 2],
    "bands.widen_left": lambda d: text(d) == ["AD|..x.x", "AC|.x.x.", "AB|.xxxx"],
    "bands.widen_right": lambda d: text(d) == ["AD|.x.x.", "AC|x.x..", "AB|xxxx."],
    "bands.narrow_left": lambda d: text(d) == ["AD|x.x", "AC|.x.", "AB|xxx"],
    "bands.narrow_right": lambda d: text(d) == ["AD|.x.", "AC|x.x", "AB|xxx"],
    "bands.double": lambda d: shape_of(d)[1] == ("band 2", 3, 8, 18) and text(d)[0] == "AD|.x.x.x.x",
    "bands.halve": lambda d: shape_of(d)[1] == ("band 2", 3, 2, 72) and text(d)[0] == "AD|.x",
}
FIELDS = ("bands.name", "bands.repeat", "bands.times", "bands.texture")
BY_NAME = {action.id: action for action in (*ROUND_ACTIONS, *BAND_ACTIONS)}


def test_every_structure_action_is_tried_here():
    assert BY_NAME.keys() == {*OUTCOMES, *FIELDS, "rounds.choose"}


@pytest.mark.parametrize("name", OUTCOMES)
def test_each_action_is_one_step_by_key_that_undo_takes_back_and_redo_does_again(window, name):
    for key in BY_NAME[name].keys:
        press(window, key)
        after = window.document.design
        assert OUTCOMES[name](after)
        assert window.document.stack.count() == 1
        QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
        assert window.document.design == HAT
        QTest.keyClick(window, Qt.Key.Key_Z, CTRL | SHIFT)
        assert window.document.design == after
        QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
        window.chart.canvas.go_to(3, 1)


@pytest.mark.parametrize("name", OUTCOMES)
def test_each_action_is_in_its_menu(window, name):
    from_menu(window, name)
    assert OUTCOMES[name](window.document.design)
    window.undo()
    assert window.document.design == HAT


@pytest.mark.parametrize(
    ("name", "row"),
    [
        ("rounds.insert_above", 4),
        ("rounds.insert_below", 3),
        ("rounds.duplicate", 4),
        ("rounds.delete", 3),
        ("rounds.up", 4),
        ("rounds.down", 2),
        ("bands.add_above", 5),
        ("bands.add_below", 2),
        ("bands.duplicate", 5),
        ("bands.delete", 2),
        ("bands.up", 5),
        ("bands.down", 1),
    ],
)
def test_the_cursor_goes_with_what_was_done(window, name, row):
    press(window, BY_NAME[name].keys[0])
    assert window.chart.canvas.current[0] == row


# --- a run of rounds


def at_number(window, row):
    return QPoint(window.chart.canvas.viewport().width() - 10, point(window.chart.canvas, (row, 0)).y())


def test_shift_with_up_chooses_rounds_that_are_worked_on_together(window):
    canvas = window.chart.canvas
    QTest.keyClick(canvas, Qt.Key.Key_Up, SHIFT)
    assert canvas.chosen == range(3, 5)
    assert window.chart.band.place.text() == "rounds 2–3 of 3"
    press(window, "Alt+Down")
    assert text(window.document.design) == ["AB|xxxx", "AD|.x.x", "AC|x.x."]
    assert canvas.chosen == range(2, 4)
    press(window, "I")
    assert text(window.document.design) == ["AB|xxxx", "AD|....", "AD|....", "AD|.x.x", "AC|x.x."]
    assert canvas.chosen == range(4, 6)
    press(window, "Ctrl+Del")
    assert window.document.stack.count() == 3
    assert canvas.current[0] == 4
    while window.document.stack.canUndo():
        window.undo()
    assert window.document.design == HAT


def test_deleting_the_top_of_a_band_leaves_the_cursor_in_it(window):
    press(window, "Alt+Up")
    press(window, "Ctrl+Del")
    assert window.chart.canvas.current == (3, 1)
    assert text(window.document.design) == ["AD|.x.x", "AB|xxxx"]


def test_a_run_stays_in_its_band_and_shrinks_again(window):
    canvas = window.chart.canvas
    for _ in range(5):
        QTest.keyClick(canvas, Qt.Key.Key_Down, SHIFT)
    assert canvas.chosen == range(2, 4)
    for _ in range(5):
        QTest.keyClick(canvas, Qt.Key.Key_PageUp, SHIFT)
    assert canvas.chosen == range(3, 5)
    QTest.keyClick(canvas, Qt.Key.Key_Escape)
    assert canvas.chosen == range(4, 5)
    QTest.keyClick(canvas, Qt.Key.Key_B, CTRL)
    assert canvas.chosen == range(2, 5)
    QTest.keyClick(canvas, Qt.Key.Key_Left)
    assert canvas.chosen == range(4, 5)


def test_a_drag_over_round_numbers_chooses_them_and_draws_nothing(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    QTest.mousePress(port, LEFT, NONE, at_number(window, 2))
    QTest.mouseMove(port, at_number(window, 3))
    QTest.mouseMove(port, at_number(window, 4))
    QTest.mouseRelease(port, LEFT, NONE, at_number(window, 4))
    assert canvas.chosen == range(2, 5)
    QTest.mouseMove(port, at_number(window, 2))
    assert canvas.chosen == range(2, 5)
    QTest.mouseClick(port, LEFT, NONE, at_number(window, 1))
    assert canvas.chosen == range(1, 2)
    QTest.mouseClick(port, LEFT, SHIFT, at_number(window, 0))
    assert canvas.chosen == range(2)
    assert window.document.design == HAT


def test_a_click_at_a_bands_name_chooses_its_rounds(window):
    port = window.chart.canvas.viewport()
    QTest.mouseClick(port, LEFT, NONE, QPoint(8, point(window.chart.canvas, (6, 0)).y()))
    assert window.chart.canvas.chosen == range(5, 7)


def test_rounds_are_chosen_in_the_ledger_too(window):
    ledger = window.chart.ledger
    at = [ledger.row_box(row).center().toPoint() for row in range(7)]
    QTest.mousePress(ledger, LEFT, NONE, at[4])
    QTest.mouseMove(ledger, at[3])
    QTest.mouseRelease(ledger, LEFT, NONE, at[3])
    assert window.chart.canvas.chosen == range(3, 5)
    QTest.mouseClick(ledger, LEFT, SHIFT, at[2])
    assert window.chart.canvas.chosen == range(2, 5)


def test_the_chosen_run_is_outlined_on_the_fabric_and_among_the_numbers(window):
    canvas = window.chart.canvas
    bare = canvas.grab().toImage()
    QTest.keyClick(canvas, Qt.Key.Key_Up, SHIFT)
    QTest.keyClick(canvas, Qt.Key.Key_Down, SHIFT)
    assert canvas.grab().toImage() == bare
    QTest.keyClick(canvas, Qt.Key.Key_Down, SHIFT)
    marked = canvas.grab().toImage()
    at = at_number(window, 3) - QPoint(30, 0)
    assert marked.pixelColor(at) == canvas.palette().highlight().color()
    edge = canvas.frame.box(2, 3)
    assert marked.pixelColor(edge.bottomLeft().toPoint() + QPoint(4, 0)) != bare.pixelColor(
        edge.bottomLeft().toPoint() + QPoint(4, 0)
    )


def test_the_run_between_two_rows_ends_with_the_band(window):
    grid = window.chart.canvas.grid
    assert rows_of_band(grid, 3) == range(2, 5)
    assert run_between(grid, None, 3) == range(3, 4)
    assert run_between(grid, 3, 6) == range(3, 5)
    assert run_between(grid, 3, 0) == range(2, 4)
    assert run_between(grid, 99, 3) == range(3, 4)


# --- refusals


@pytest.mark.parametrize(
    ("row", "key", "words"),
    [
        (6, "Alt+Up", "The top of band 'band 3' is reached"),
        (0, "Alt+Shift+Down", "Band 'band 1' is the lowest one already"),
        (6, "J", "has none above it to join with"),
        (0, "Shift+J", "begins with this round already"),
        (1, "Ctrl+Shift+R", "the two halves of round 1 of band 'band 1' differ"),
    ],
)
def test_what_cannot_be_is_told_at_the_foot_and_changes_nothing(window, row, key, words):
    window.chart.canvas.go_to(row)
    press(window, key)
    assert words.lower() in window.statusBar().currentMessage().lower()
    assert window.statusBar().currentMessage().endswith(".")
    assert window.document.design == HAT
    assert window.document.stack.count() == 0


# --- the menu of a round


def open_menu(window):
    return next(menu for menu in window.findChildren(QMenu) if menu.isVisible() and menu.title() == "")


def test_the_second_button_on_a_round_number_offers_what_can_be_done_with_it(window):
    port = window.chart.canvas.viewport()
    at = at_number(window, 4)
    QTest.mouseClick(port, RIGHT, NONE, at)
    QApplication.sendEvent(port, QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, port.mapToGlobal(at)))
    menu = open_menu(window)
    assert window.chart.canvas.current[0] == 4
    QTest.mouseClick(menu, LEFT, NONE, menu.actionGeometry(window.actions_made["rounds.duplicate"]).center())
    assert text(window.document.design)[:2] == ["AD|.x.x", "AD|.x.x"]


def test_the_second_button_keeps_the_run_it_is_pressed_in(window):
    canvas = window.chart.canvas
    QTest.keyClick(canvas, Qt.Key.Key_Up, SHIFT)
    QTest.mouseClick(canvas.viewport(), RIGHT, NONE, at_number(window, 3))
    assert canvas.chosen == range(3, 5)


def test_the_second_button_on_the_fabric_draws_and_opens_no_menu(window):
    port = window.chart.canvas.viewport()
    at = point(window.chart.canvas, (3, 1))
    QApplication.sendEvent(port, QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, port.mapToGlobal(at)))
    assert not [menu for menu in window.findChildren(QMenu) if menu.isVisible()]
    drag(window.chart.canvas, (3, 3), button=RIGHT)
    assert text(window.document.design)[1] == "AC|..x."


@pytest.mark.parametrize("column", ["canvas", "ledger"])
def test_the_menu_key_opens_the_same_menu(window, column):
    widget = getattr(window.chart, column)
    where = widget.viewport() if column == "canvas" else widget
    at = QPoint(5, 5)
    QApplication.sendEvent(where, QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, at, where.mapToGlobal(at)))
    names = [action.objectName() for action in open_menu(window).actions() if action.objectName()]
    assert names[:2] == ["rounds.insert_above", "rounds.insert_below"]
    assert "bands.split" in names
    open_menu(window).close()


# --- the strip


def test_the_strip_tells_the_band_at_the_cursor(window):
    strip = window.chart.band
    assert (strip.name.text(), strip.place.text()) == ("band 2", "round 2 of 3")
    assert (strip.repeat.value(), strip.times.value(), strip.count.text()) == (4, 36, "= 144 stitches")
    assert (strip.texture.text(), strip.texture.placeholderText()) == ("", "knit all")
    type_at(window, Qt.Key.Key_Up, Qt.Key.Key_Up)
    assert (strip.name.text(), strip.place.text()) == ("band 3", "round 1 of 2")


@pytest.mark.parametrize(
    ("key", "typed", "check"),
    [
        (Qt.Key.Key_F2, "rib", lambda band: band.name == "rib"),
        (Qt.Key.Key_F3, "7", lambda band: [len(line) for line in band.rounds] == [7, 7, 7]),
        (Qt.Key.Key_F4, "40", lambda band: band.times == 40),
        (Qt.Key.Key_F5, "KP", lambda band: band.texture == "kp"),
    ],
)
def test_each_field_has_a_key_and_is_taken_by_enter_or_dropped_by_escape(window, key, typed, check):
    for leave, is_taken in ((Qt.Key.Key_Escape, False), (Qt.Key.Key_Return, True)):
        QTest.keyClick(window, key)
        field = QApplication.focusWidget()
        QTest.keyClicks(field, typed)
        QTest.keyClick(field, leave)
        assert QApplication.focusWidget() is window.chart.canvas
        assert window.document.stack.count() == is_taken
    assert check(window.document.design.bands[1])
    assert replace(window.document.design, bands=HAT.bands) == HAT
    window.undo()
    assert window.document.design == HAT
    window.redo()
    assert check(window.document.design.bands[1])


def arrow(spin, which):
    option = QStyleOptionSpinBox()
    spin.initStyleOption(option)
    return spin.style().subControlRect(QStyle.ComplexControl.CC_SpinBox, option, which, spin).center()


def test_the_arrows_of_the_repeat_widen_and_narrow_it_at_the_side_that_is_set(window):
    strip = window.chart.band
    QTest.mouseClick(strip.repeat, LEFT, NONE, arrow(strip.repeat, QStyle.SubControl.SC_SpinBoxUp))
    assert text(window.document.design)[2] == "AB|.xxxx"
    QTest.keyClick(strip.side, Qt.Key.Key_Down)
    QTest.mouseClick(strip.repeat, LEFT, NONE, arrow(strip.repeat, QStyle.SubControl.SC_SpinBoxUp))
    assert text(window.document.design)[2] == "AB|.xxxx."
    assert window.document.design.bands[1].times == 36
    QTest.mouseClick(strip.repeat, LEFT, NONE, arrow(strip.repeat, QStyle.SubControl.SC_SpinBoxDown))
    assert text(window.document.design)[2] == "AB|.xxxx"
    assert [found.place.round for found in window.document.appraisal.findings if found.check == "stitch-counts"] == [
        2,
        5,
    ]


def test_the_arrows_of_times_change_them(window):
    times = window.chart.band.times
    QTest.mouseClick(times, LEFT, NONE, arrow(times, QStyle.SubControl.SC_SpinBoxUp))
    QTest.mouseClick(times, LEFT, NONE, arrow(times, QStyle.SubControl.SC_SpinBoxUp))
    assert window.document.design.bands[1].times == 38
    assert window.document.stack.count() == 2


def test_a_texture_that_does_not_divide_is_refused_with_a_sentence_and_put_back(window):
    strip = window.chart.band
    QTest.keyClick(window, Qt.Key.Key_F5)
    QTest.keyClicks(strip.texture, "kkp")
    QTest.keyClick(strip.texture, Qt.Key.Key_Return)
    assert "does not divide the repeat, which has 4" in window.statusBar().currentMessage()
    assert strip.texture.text() == ""
    assert window.document.design == HAT


def test_a_textured_repeat_is_widened_by_whole_patterns(window):
    window.chart.structure.set_texture("kp")
    press(window, "Alt+Left")
    assert len(window.document.design.bands[1].rounds[0]) == 6
    assert window.chart.band.repeat.singleStep() == 2


def test_the_wheel_over_a_number_of_the_strip_changes_nothing(window):
    from PySide6.QtGui import QWheelEvent

    times = window.chart.band.times
    at = QPointF(times.rect().center())
    event = QWheelEvent(
        at, at, QPoint(), QPoint(0, 120), Qt.MouseButton.NoButton, NONE, Qt.ScrollPhase.NoScrollPhase, False
    )
    QApplication.sendEvent(times, event)
    assert window.document.design == HAT


def test_a_name_stands_beside_the_chart_as_soon_as_it_is_given(window):
    canvas = window.chart.canvas
    before = canvas.grab().toImage()
    window.chart.structure.rename_band("Oat")
    assert canvas.grab().toImage() != before
    window.undo()
    assert canvas.grab().toImage() == before


# --- counts that do not meet


def test_a_round_that_does_not_meet_is_marked_at_its_row_and_in_the_ledger(window):
    canvas, ledger = window.chart.canvas, window.chart.ledger
    margin, column = canvas.grab().toImage(), ledger.grab().toImage()
    window.chart.structure.set_times(35)
    shown, told = canvas.grab().toImage(), ledger.grab().toImage()
    ink = canvas.palette().windowText().color()
    for row, is_marked in ((1, False), (2, True), (3, False), (4, False), (5, True)):
        at = QPoint(canvas.viewport().width() - 39, point(canvas, (row, 0)).y() - 4)
        assert (shown.pixelColor(at) == ink) == is_marked, row
        assert (shown.pixelColor(at) != margin.pixelColor(at)) == is_marked, row
        sign = QPoint(221, round(ledger.row_box(row).center().y()) - 4)
        assert (told.pixelColor(sign) == ink) == is_marked, row
        assert (told.pixelColor(sign) != column.pixelColor(sign)) == is_marked, row
    assert "! eats 140 stitches, the round below has 144" in ledger.words(2)
    assert "does not meet" not in ledger.words(3)
    window.undo()
    assert canvas.grab().toImage() == margin
