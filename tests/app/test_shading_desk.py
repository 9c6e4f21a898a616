import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialogButtonBox, QMenu

from chartmaker.app.letter_row import by_value
from chartmaker.app.steps_dialog import StepsDialog
from tests.app.hand_at import shading, type_at
from tests.builders import chart

CTRL, SHIFT, ALT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.AltModifier,
)
LOTS = {"A": (20, 0, 0), "B": (90, 0, 0), "C": (40, 0, 0), "D": (60, 0, 0)}
FIGURED = chart("\n".join(["A B | x..."] * 8), times=36, lots=LOTS)


@pytest.fixture
def figured(open_on):
    """Give the window on eight rounds with figure, in a hat that has four lots."""
    return open_on(FIGURED)


def press(window, key, modifiers=CTRL):
    QTest.keyClick(window.chart.canvas, key, modifiers)


def choose(window, first, last):
    window.chart.canvas.setFocus()
    window.chart.canvas.choose(range(first, last + 1))


def steps_dialog(window):
    press(window, Qt.Key.Key_L, CTRL | SHIFT)
    (dialog,) = window.findChildren(StepsDialog)
    dialog.activateWindow()
    for _ in range(200):
        if QApplication.focusWidget() is dialog.letters:
            break
        QTest.qWait(5)
    assert QApplication.focusWidget() is dialog.letters
    return dialog


def test_a_letter_is_set_for_all_rounds_that_are_chosen_as_one_step(figured):
    choose(figured, 2, 5)
    figured.chart.shading.setFocus()
    QTest.keyClick(figured.chart.shading, Qt.Key.Key_D)
    assert shading(figured.document.design) == ["AB"] * 2 + ["AD"] * 4 + ["AB"] * 2
    assert figured.document.stack.count() == 1
    assert list(figured.chart.canvas.chosen) == [2, 3, 4, 5]


def test_swapping_and_mirroring_work_on_the_rounds_that_are_chosen(figured):
    choose(figured, 0, 1)
    press(figured, Qt.Key.Key_W, CTRL | SHIFT)
    assert shading(figured.document.design) == ["BA"] * 2 + ["AB"] * 6
    choose(figured, 0, 3)
    press(figured, Qt.Key.Key_M)
    assert shading(figured.document.design) == ["BA"] * 4 + ["AB"] * 4
    figured.undo()
    choose(figured, 0, 3)
    press(figured, Qt.Key.Key_M, CTRL | ALT)
    assert shading(figured.document.design) == ["AB"] * 8


def menu_named(window, name):
    return next(entry.menu() for entry in window.menuBar().actions() if entry.text().replace("&", "") == name)


def test_a_menu_entry_shows_on_the_chart_what_it_would_do_and_leaving_it_does_nothing(figured):
    before, canvas = figured.document.design, figured.chart.canvas
    menu = menu_named(figured, "Shading")
    menu.popup(figured.mapToGlobal(figured.rect().center()))
    entries = {action.objectName(): action for action in menu.actions()}
    while menu.activeAction() is not entries["shading.swap"]:
        QTest.keyClick(menu, Qt.Key.Key_Down)
    assert shading(canvas.shown)[0] == "BA"
    while menu.activeAction() is not entries["shading.choose"]:
        QTest.keyClick(menu, Qt.Key.Key_Up)
    assert canvas.shown == before
    while menu.activeAction() is not entries["shading.swap"]:
        QTest.keyClick(menu, Qt.Key.Key_Down)
    QTest.keyClick(menu, Qt.Key.Key_Escape)
    assert canvas.shown == figured.document.design == before
    menu.popup(figured.mapToGlobal(figured.rect().center()))
    while menu.activeAction() is not entries["shading.swap"]:
        QTest.keyClick(menu, Qt.Key.Key_Down)
    QTest.keyClick(menu, Qt.Key.Key_Return)
    assert shading(figured.document.design)[0] == shading(canvas.shown)[0] == "BA"
    assert figured.document.stack.count() == 1


def test_the_menu_of_letters_shows_the_letter_that_is_marked(figured):
    press(figured, Qt.Key.Key_L)
    menu = next(menu for menu in figured.findChildren(QMenu) if menu.isVisible())
    QTest.keyClick(menu, Qt.Key.Key_Down)
    marked = menu.activeAction().data()
    QTest.keyClick(menu, Qt.Key.Key_Down)
    assert menu.activeAction().data() != marked
    assert shading(figured.chart.canvas.shown)[0] == "A" + menu.activeAction().data()
    QTest.keyClick(menu, Qt.Key.Key_Escape)
    assert figured.chart.canvas.shown == figured.document.design == FIGURED


def test_letters_stand_from_light_to_dark(figured):
    assert by_value(figured.document.appraisal) == "BDCA"


def test_steps_are_shown_at_once_and_ok_does_them_as_one_step(figured):
    dialog = steps_dialog(figured)
    assert dialog.letters.chosen == "BDC"
    assert [letters[1] for letters in shading(figured.chart.canvas.shown)] == list("BBBDDDCC")
    assert figured.document.stack.count() == 0
    QTest.mouseClick(dialog.buttons.button(QDialogButtonBox.StandardButton.Ok), Qt.MouseButton.LeftButton)
    assert [letters[1] for letters in shading(figured.document.design)] == list("BBBDDDCC")
    assert figured.document.stack.count() == 1
    figured.undo()
    assert figured.document.design == FIGURED


def test_escape_leaves_all_as_it_was(figured):
    dialog = steps_dialog(figured)
    assert figured.chart.canvas.shown != FIGURED
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert figured.chart.canvas.shown == figured.document.design == FIGURED
    assert figured.document.stack.count() == 0


def test_steps_run_over_the_chosen_rounds_in_an_order_set_by_keys(figured):
    choose(figured, 2, 5)
    dialog = steps_dialog(figured)
    letters = dialog.letters
    assert dialog.chosen.isVisible()
    letters.setCurrentRow(0)
    QTest.keyClick(letters, Qt.Key.Key_Down, ALT)
    assert letters.chosen == "DBC"
    letters.setCurrentRow(2)
    QTest.keyClick(letters, Qt.Key.Key_Space)
    assert letters.chosen == "DB"
    letters.reverse()
    assert letters.chosen == "BD"
    assert [letters[1] for letters in shading(figured.chart.canvas.shown)] == list("BBBBDDBB")
    dialog.band.click()
    assert [letters[1] for letters in shading(figured.chart.canvas.shown)] == list("BBBBDDDD")
    dialog.reject()


def test_steps_of_so_many_rounds_each_and_back_again(figured):
    dialog = steps_dialog(figured)
    dialog.each.setFocus()
    dialog.each.selectAll()
    QTest.keyClick(dialog.each, Qt.Key.Key_1)
    assert dialog.by_count.isChecked()
    assert [letters[1] for letters in shading(figured.chart.canvas.shown)] == list("BDCBDCBD")
    dialog.mirrored.click()
    assert [letters[1] for letters in shading(figured.chart.canvas.shown)] == list("BDCBBCDB")
    dialog.reject()


def test_steps_tell_where_two_parts_would_be_one_letter(figured):
    dialog = steps_dialog(figured)
    assert "3 letters over 8 rounds" in dialog.told.text()
    dialog.letters.setCurrentRow(3)
    QTest.keyClick(dialog.letters, Qt.Key.Key_Space)
    assert dialog.letters.chosen == "BDCA"
    assert "In 2 of 8 rounds" in dialog.told.text()
    for row in range(4):
        dialog.letters.setCurrentRow(row)
        QTest.keyClick(dialog.letters, Qt.Key.Key_Space)
    assert dialog.letters.chosen == ""
    assert not dialog.buttons.button(QDialogButtonBox.StandardButton.Ok).isEnabled()
    assert figured.chart.canvas.shown == FIGURED
    dialog.reject()


def test_a_third_letter_is_told_in_chart_ledger_and_chips_and_taken_off_again(figured):
    canvas = figured.chart.canvas
    type_at(figured, Qt.Key.Key_T, Qt.Key.Key_Left, Qt.Key.Key_Space)
    assert shading(figured.document.design)[0] == "ABC"
    assert canvas._row_marks.crowded == {0}
    assert "three strands at once: A, B, C" in figured.chart.ledger.words(0)
    figured.chart.shading._describe()
    assert figured.chart.shading.accessibleDescription().endswith(", three strands at once")
    assert any(finding.check == "letters-in-round" for finding in figured.document.appraisal.findings)
    press(figured, Qt.Key.Key_T, CTRL | ALT)
    assert shading(figured.document.design)[0] == "ABC"
    assert "in use" in figured.statusBar().currentMessage()
    type_at(figured, Qt.Key.Key_X)
    assert canvas._row_marks.crowded == set()
    press(figured, Qt.Key.Key_T, CTRL | ALT)
    assert shading(figured.document.design)[0] == "AB"


def test_a_letter_is_added_from_a_menu(figured):
    choose(figured, 0, 1)
    press(figured, Qt.Key.Key_T)
    menu = next(menu for menu in figured.findChildren(QMenu) if menu.isVisible())
    QTest.keyClick(menu, Qt.Key.Key_D)
    assert shading(figured.document.design)[:3] == ["ABD", "ABD", "AB"]
    press(figured, Qt.Key.Key_T)
    assert "three letters at most" in figured.statusBar().currentMessage()
