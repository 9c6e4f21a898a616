from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from chartmaker.app.shading_actions import ON_A_CHIP
from tests.app.hand_at import LEFT, NONE, drag_over, shading
from tests.builders import chart

GROUND, FIGURE = 0, 1


def chip(window, row, part):
    return window.chart.shading._chip(row, part).center()


def open_menu(window):
    return next(menu for menu in window.findChildren(QMenu) if menu.isVisible())


def test_chips_stand_level_with_their_rounds(window):
    canvas = window.chart.canvas
    for row in (0, 4, 7):
        on_screen = window.chart.shading.mapToGlobal(chip(window, row, GROUND).toPoint()).y()
        stitch = canvas.viewport().mapToGlobal(canvas.frame.box(row, 0).center().toPoint()).y()
        assert abs(on_screen - stitch) <= 1


def test_dragging_a_chip_fills_its_letter_over_the_rounds_as_one_step(window):
    window.chart.canvas.go_to(1)
    window.chart.shading.set_letter("C")
    assert shading(window.document.design)[:3] == ["AB", "AC", "AB"]
    drag_over(window.chart.shading, chip(window, 1, FIGURE), chip(window, 3, FIGURE), chip(window, 5, FIGURE))
    assert shading(window.document.design) == ["AB", "AC", "AC", "AC", "AC", "AC", "AB", "AB"]
    assert window.document.stack.count() == 2
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert shading(window.document.design)[:3] == ["AB", "AC", "AB"]


def test_dragging_downwards_fills_too(window):
    window.chart.canvas.go_to(5)
    window.chart.shading.set_letter("C")
    drag_over(window.chart.shading, chip(window, 5, FIGURE), chip(window, 4, FIGURE), chip(window, 3, FIGURE))
    assert shading(window.document.design)[2:6] == ["AB", "AC", "AC", "AC"]


def test_escape_drops_a_drag_of_a_chip(window):
    column, before = window.chart.shading, window.document.design
    window.chart.canvas.go_to(0)
    column.set_letter("C")
    before = window.document.design
    QTest.mousePress(column, LEFT, NONE, chip(window, 0, FIGURE).toPoint())
    QTest.mouseMove(column, chip(window, 4, FIGURE).toPoint())
    assert window.chart.canvas._shown != before
    QTest.keyClick(column, Qt.Key.Key_Escape)
    QTest.mouseRelease(column, LEFT, NONE, chip(window, 4, FIGURE).toPoint())
    assert window.document.design == before
    assert window.chart.canvas._shown == before


def test_a_click_opens_a_menu_of_letters_and_one_of_them_is_taken(window):
    column = window.chart.shading
    QTest.mouseClick(column, LEFT, NONE, chip(window, 2, FIGURE).toPoint())
    menu = open_menu(window)
    assert [action.text()[1] for action in menu.actions()] == ["A", "B", "C"]
    QTest.keyClick(menu, Qt.Key.Key_C)
    assert shading(window.document.design)[2] == "AC"


def test_the_shading_is_edited_from_the_keyboard(window):
    column = window.chart.shading
    column.setFocus()
    for key in (Qt.Key.Key_Up, Qt.Key.Key_Left, Qt.Key.Key_D):
        QTest.keyClick(column, key)
    assert shading(window.document.design)[:2] == ["AB", "DB"]
    QTest.keyClick(column, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    assert shading(window.document.design)[:3] == ["AB", "DB", "DB"]
    keys = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(column, Qt.Key.Key_Up, keys)
    assert shading(window.document.design) == ["AB"] + ["DB"] * 7
    QTest.keyClick(column, Qt.Key.Key_W, keys)
    assert shading(window.document.design)[2] == "BD"


def test_mirroring_by_key_works_about_the_current_round(open_on):
    window = open_on(chart("A B | x.\nA B | x.\nA C | x.\nA D | x.\nA E | x.", times=72))
    window.chart.canvas.go_to(2)
    QTest.keyClick(window.chart.canvas, Qt.Key.Key_M, Qt.KeyboardModifier.ControlModifier)
    assert shading(window.document.design) == ["AE", "AD", "AC", "AD", "AE"]


def test_the_menu_of_a_chip_offers_what_the_action_table_has_for_it(window):
    column = window.chart.shading
    at = chip(window, 2, FIGURE).toPoint()
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, column.mapToGlobal(at))
    QApplication.sendEvent(column, event)
    menu = open_menu(window)
    names = [action.objectName() for action in menu.actions() if not action.isSeparator()]
    assert names == [name for group in ON_A_CHIP for name in group]
    menu.close()


def test_columns_scroll_with_the_chart_and_the_chart_with_them(open_on):
    window = open_on(chart("\n".join(["A B | ........"] * 120), times=18))
    canvas = window.chart.canvas
    before = canvas.verticalScrollBar().value()
    top = window.chart.shading.row_box(50).top()
    canvas.verticalScrollBar().setValue(before - 100)
    assert window.chart.shading.row_box(50).top() == top + 100
    assert window.chart.ledger.row_box(50).top() == top + 100


def test_a_third_letter_widens_the_column(window):
    narrow = window.chart.shading.width()
    QTest.keyClick(window.chart.canvas, Qt.Key.Key_T)
    QTest.keyClick(window.chart.canvas, Qt.Key.Key_Space)
    assert window.chart.shading.width() > narrow
    assert len(window.chart.shading.headings) == 3


def test_the_ledger_tells_a_round_in_words(window):
    drag_to = QPointF(window.chart.canvas.frame.box(0, 3).center())
    drag_over(window.chart.canvas.viewport(), QPointF(window.chart.canvas.frame.box(0, 0).center()), drag_to)
    words = window.chart.ledger.words(0)
    for part in ("Round 1 of band 1, 144 stitches", "value differs by 50.0", "clear", "longest float 4 stitches"):
        assert part in words
    assert "plain, one letter" in window.chart.ledger.words(1)
