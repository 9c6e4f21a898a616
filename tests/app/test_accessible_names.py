"""What a screen reader is told: a name for every control, and in words what is shown by colour or form."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QScrollBar,
    QTabBar,
    QWidget,
)

from chartmaker.app.choice_dialog import ChoiceDialog
from chartmaker.app.keys_dialog import KeysDialog
from chartmaker.app.steps_dialog import StepsDialog
from chartmaker.app.window import PAGES
from tests.app.test_pages import SHORT

CONTROLS = (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QTabBar,
)


def spoken(widget, what=QAccessible.Text.Name):
    return QAccessible.queryAccessibleInterface(widget).text(what)


def is_qts_own(widget):
    """Tell whether Qt made it inside a control of ours, which speaks for it."""
    inside = widget.parentWidget()
    while inside is not None and not inside.isWindow():
        if isinstance(inside, QComboBox | QAbstractSpinBox | QLineEdit | QTabBar):
            return True
        inside = inside.parentWidget()
    return isinstance(widget, QHeaderView) or widget.objectName().startswith("qt_")


def unnamed(top):
    """Give the controls in sight that a screen reader would have no name for, those painted by us among them."""
    controls = [
        widget
        for widget in top.findChildren(QWidget)
        if widget.isVisible()
        and not is_qts_own(widget)
        and not isinstance(widget, QLabel)  # which speaks its text, and is silent without one
        and (
            isinstance(widget, CONTROLS)
            or widget.focusPolicy() & Qt.FocusPolicy.TabFocus
            or (type(widget).__module__.startswith("chartmaker") and type(widget).paintEvent is not QWidget.paintEvent)
        )
        and not (isinstance(widget, QScrollBar) and widget.parentWidget().objectName().startswith("qt_"))
    ]
    assert controls
    return [(type(widget).__name__, widget.objectName()) for widget in controls if not spoken(widget).strip()]


@pytest.mark.parametrize("page", PAGES)
def test_every_control_of_a_page_has_a_name(open_on, page):
    window = open_on(SHORT)
    window.show_page(page)
    assert unnamed(window) == []


def test_every_control_of_the_shelf_has_a_name(open_on):
    window = open_on(SHORT)
    window.chart.show_shelf(is_shown=True)
    assert unnamed(window) == []


def test_every_control_of_a_dialog_has_a_name(open_on, qtbot):
    window = open_on(SHORT)
    choice = ChoiceDialog("Which", "Which?", columns={"file": ["a"]}, buttons={"yes": "Yes", "no": "No"})
    for dialog in (KeysDialog(window), StepsDialog(window.chart.canvas, 1, window), choice):
        qtbot.addWidget(dialog)
        dialog.show()
        assert unnamed(dialog) == []
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
        dialog.close()
    window.show_about()
    about = QApplication.activeModalWidget()
    assert unnamed(about) == []
    about.close()


def test_what_is_shown_by_colour_or_form_is_told_in_words_too(open_on):
    window = open_on(SHORT)
    window.chart.canvas.go_to(3, 0)
    described = QAccessible.Text.Description
    assert "value 32.5" in spoken(window.chart.canvas, described)
    assert "clear" in spoken(window.chart.ledger, described)
    assert spoken(window.chart.shading, described) == "Round 4, figure: B"
    window.chart.shading.setFocus()
    QTest.keyClick(window.chart.shading, Qt.Key.Key_Left)
    assert spoken(window.chart.shading, described) == "Round 4, ground: A"
    ladder = spoken(window.chart.ladder, described)
    assert all(word in ladder for word in ("A", "B", "clear"))
    for box in (window.chart.letters.box("A"), window.chart.letters.box("B")):
        assert "value" in box.currentText() or any(sign.isdigit() for sign in box.currentText())
    assert [window.findings.list.topLevelItem(line).text(0) for line in range(1)] == ["warn"]
