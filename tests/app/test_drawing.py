from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.model.stitches import Part
from tests.app.hand_at import LEFT, NONE, RIGHT, drag, drawn, point, type_at


def test_a_drag_of_the_left_button_draws_figure_without_gaps(window):
    drag(window.chart.canvas, (0, 0), (0, 5))
    assert drawn(window.document.design)[-1] == "..xxxxxx"


def test_a_drag_is_one_step_of_undo(window):
    before = window.document.design
    drag(window.chart.canvas, (0, 0), (3, 3), (6, 6))
    after = window.document.design
    assert window.document.stack.count() == 1
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.document.design == before
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    assert window.document.design == after


def test_the_right_button_draws_ground(window):
    drag(window.chart.canvas, (0, 0), (0, 7))
    drag(window.chart.canvas, (0, 2), (0, 3), button=RIGHT)
    assert drawn(window.document.design)[-1] == "xxxx..xx"


def test_drawing_on_a_neighbour_draws_the_live_repeat(window):
    drag(window.chart.canvas, (1, -1), (1, -2))
    assert drawn(window.document.design)[-2] == "xx......"


def test_escape_drops_a_gesture_and_what_it_showed(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    bare = canvas.grab().toImage()
    QTest.mousePress(port, LEFT, NONE, point(canvas, (2, 0)))
    QTest.mouseMove(port, point(canvas, (2, 6)))
    assert canvas.grab().toImage() != bare
    QTest.keyClick(canvas, Qt.Key.Key_Escape)
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (2, 6)))
    assert drawn(window.document.design) == ["........"] * 8
    assert window.document.stack.count() == 0
    type_at(window, Qt.Key.Key_Down, Qt.Key.Key_Down)
    assert canvas.grab().toImage() == bare


def test_the_line_tool_shows_its_line_and_draws_it_on_release(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    type_at(window, Qt.Key.Key_L)
    assert canvas.hand.tool.name == "line"
    bare = canvas.grab().toImage()
    QTest.mousePress(port, LEFT, NONE, point(canvas, (0, 0)))
    QTest.mouseMove(port, point(canvas, (4, 2)))
    QTest.mouseMove(port, point(canvas, (3, 3)))
    assert canvas.grab().toImage() != bare
    assert window.document.stack.count() == 0
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (3, 3)))
    assert drawn(window.document.design)[-4:] == ["....x...", ".....x..", "......x.", ".......x"]


def test_escape_leaves_the_cursor_where_a_line_by_keys_had_brought_it(window):
    type_at(window, Qt.Key.Key_L, Qt.Key.Key_Space, Qt.Key.Key_Up, Qt.Key.Key_Left, Qt.Key.Key_Escape)
    assert window.chart.canvas.current == (1, 1)
    assert window.document.stack.count() == 0


def test_another_button_during_a_gesture_drops_it(window):
    canvas, port = window.chart.canvas, window.chart.canvas.viewport()
    QTest.mousePress(port, LEFT, NONE, point(canvas, (0, 0)))
    QTest.mousePress(port, RIGHT, NONE, point(canvas, (0, 3)))
    QTest.mouseRelease(port, RIGHT, NONE, point(canvas, (0, 3)))
    QTest.mouseRelease(port, LEFT, NONE, point(canvas, (0, 3)))
    assert window.document.stack.count() == 0


def test_the_whole_of_drawing_works_from_the_keyboard(window):
    type_at(window, Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Space)
    assert drawn(window.document.design)[-2] == "......x."
    type_at(window, Qt.Key.Key_X)
    assert drawn(window.document.design)[-2] == "........"
    type_at(window, Qt.Key.Key_L, Qt.Key.Key_Return, Qt.Key.Key_Left, Qt.Key.Key_Left, Qt.Key.Key_Up)
    assert window.document.stack.count() == 2
    type_at(window, Qt.Key.Key_Return)
    assert drawn(window.document.design)[-3:] == ["....xx..", "......x.", "........"]
    type_at(window, Qt.Key.Key_Home, Qt.Key.Key_G, Qt.Key.Key_D, Qt.Key.Key_End, Qt.Key.Key_Space)
    assert window.chart.canvas.hand.part == Part.GROUND
    assert window.chart.canvas.current == (2, 7)


def test_the_cursor_stays_within_the_live_repeat(window):
    type_at(window, Qt.Key.Key_Right, Qt.Key.Key_Down, Qt.Key.Key_Down)
    assert window.chart.canvas.current == (0, 0)
    type_at(window, *[Qt.Key.Key_Left] * 20, *[Qt.Key.Key_PageUp] * 3)
    assert window.chart.canvas.current == (7, 7)


def test_keys_choose_the_part_that_is_drawn(window):
    for key, part in ((Qt.Key.Key_T, Part.THIRD), (Qt.Key.Key_G, Part.GROUND), (Qt.Key.Key_F, Part.FIGURE)):
        type_at(window, key)
        assert window.chart.canvas.hand.part == part
        assert window.actions_made[f"part.{part.name.lower()}"].isChecked()


def test_drawing_the_third_part_gives_the_round_a_third_letter(window):
    type_at(window, Qt.Key.Key_T, Qt.Key.Key_Space)
    assert window.document.design.bands[0].rounds[0].letters == "ABC"
    assert drawn(window.document.design)[-1] == ".......+"


def test_the_status_bar_tells_round_stitch_letter_lot_and_value_under_the_pointer(window):
    QTest.mouseMove(window.chart.canvas.viewport(), point(window.chart.canvas, (3, 2)))
    told = window._hover.text()
    for words in ("round 4", "stitch 3 of 8", "ground: A", "lot a", "value 30.0"):
        assert words in told


def test_the_status_bar_follows_what_is_drawn_under_a_resting_pointer(window):
    at = point(window.chart.canvas, (2, 4))
    QTest.mouseMove(window.chart.canvas.viewport(), at)
    QTest.mouseClick(window.chart.canvas.viewport(), Qt.MouseButton.LeftButton, pos=at)
    window.document.appraise_now()
    assert "figure: B" in window._hover.text()
    window.document.stack.undo()
    window.document.appraise_now()
    assert "ground: A" in window._hover.text()


def test_the_wheel_with_ctrl_zooms_and_leaves_the_stitch_under_the_pointer(window):
    canvas = window.chart.canvas
    for _ in range(4):
        canvas.zoom(1)
    at = QPointF(point(canvas, (4, 4)))
    before = canvas.frame
    event = QWheelEvent(
        at,
        QPointF(canvas.viewport().mapToGlobal(at.toPoint())),
        QPoint(),
        QPoint(0, 120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.ControlModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(canvas.viewport(), event)
    assert canvas.frame.cell.width() > before.cell.width()
    assert canvas.frame.cell_at(at) == (4, 4)


def test_fitting_shows_the_whole_chart(window):
    canvas = window.chart.canvas
    for _ in range(10):
        canvas.zoom(1)
    assert canvas.frame.reach != (0, 0)
    QTest.keyClick(window, Qt.Key.Key_0, Qt.KeyboardModifier.ControlModifier)
    assert canvas.frame.reach == (0, 0)


def test_views_are_switched_by_key_and_look_different(window):
    canvas = window.chart.canvas
    drag(canvas, (0, 0), (4, 4))
    pictures = []
    for key, view in ((Qt.Key.Key_1, "shade"), (Qt.Key.Key_2, "value"), (Qt.Key.Key_4, "symbols")):
        type_at(window, key)
        assert canvas.view == view
        pictures.append(canvas.grab().toImage())
    assert pictures[0] != pictures[1] != pictures[2] != pictures[0]
