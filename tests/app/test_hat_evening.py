"""An evening with a tam: begun, drawn on, fitted to another gauge, crowned, folded, turned, saved and printed."""

import pypdf
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialogButtonBox

from chartmaker.app.crown_dialog import CrownDialog
from chartmaker.app.main import open_window
from chartmaker.app.start_dialog import StartDialog
from chartmaker.files.design_reading import read_design
from chartmaker.knit.fit import circumference_cm
from chartmaker.model.counts import rounds_not_meeting
from tests.app.hand_at import LEFT, NONE, drag_over, point
from tests.app.test_hat_form import choose, type_into
from tests.app.test_start_dialog import bad, click, retype, tallest

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def window(settings, answers, qtbot):
    """Give the window as it opens on nothing."""
    window = open_window(settings)
    window.filing.questions = answers
    qtbot.addWidget(window, before_close_func=lambda _window: setattr(answers, "unsaved", "discard"))
    window.resize(1280, 800)
    active(window, qtbot)
    qtbot.waitUntil(lambda: window.has_chart)
    return window


def active(window, qtbot):
    """Have the window active again, as a window manager does when a dialog goes."""
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window)


def begin_tam(window, qtbot):
    QTest.keyClick(window, Qt.Key.Key_N, CTRL)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), StartDialog))
    questions = QApplication.activeWindow().questions
    click(questions.shapes.tiles["tam"])
    retype(questions.head.girth, "44")
    retype(questions.stitches.count, "22")
    retype(questions.rounds.count, "26")
    QTest.keyClick(questions.rounds.count, Qt.Key.Key_Return)
    active(window, qtbot)
    qtbot.waitUntil(lambda: window.document.design.hat.shape == "tam")


def stamp_motif(window):
    canvas = window.chart.canvas
    at = tallest(window.document.design)
    canvas.setFocus()
    QTest.keyClick(canvas, Qt.Key.Key_F7)
    shelf = window.chart.motifs.shelf
    QTest.keyClicks(shelf.search, "peerie")
    QTest.keyClick(shelf.search, Qt.Key.Key_Down)
    QTest.keyClick(shelf.list, Qt.Key.Key_Return)
    canvas.fit()
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (canvas.grid.row_of(at, 1), 0)))
    QTest.keyClick(canvas, Qt.Key.Key_Escape)


def settled(page, qtbot):
    qtbot.waitUntil(lambda: page.fit.is_settled and not page.stage.panel.view.maker.is_at_work, timeout=20_000)
    return page.fit


def change_gauge(window, page, qtbot):
    type_into(page.control("gauge", "stitches_per_10cm"), "26")
    type_into(page.control("gauge", "rounds_per_10cm"), "30")
    fit = settled(page, qtbot)
    assert fit.fit_anew.isVisible()
    assert "round instead of" in fit.moved_words.text()
    before = window.document.design
    click(fit.fit_anew)
    settled(page, qtbot)
    after = window.document.design
    wanted = after.hat.wanted_cm

    def off(design):
        return abs(circumference_cm(design.bands[0].stitches(0), design.gauge) - wanted)

    assert off(after) < off(before)
    assert off(after) <= 2
    assert window.document.stack.undoText() == "Fit the hat anew"
    assert not fit.fit_anew.isVisible()


def shape_crown(window, qtbot):
    window.actions_made["bands.crown"].trigger()
    dialog = window.findChild(CrownDialog)
    for box in (dialog.sections, dialog.decrease):
        box.setFocus()
        QTest.keyClick(box, Qt.Key.Key_Down)
    wanted = dialog.crown.sections
    QTest.mouseClick(dialog.buttons.button(QDialogButtonBox.StandardButton.Ok), LEFT)
    active(window, qtbot)
    assert window.document.design.bands[-1].times == wanted


def turn_about(page, qtbot):
    """Turn, tint and lay the hat; none of it is a step of the design."""
    page.stage.buttons["hat"].click()
    panel = page.stage.panel
    settled(page, qtbot)
    before = panel.view.grab().toImage()
    drag_over(panel.view, QPointF(180, 180), QPointF(260, 182))
    assert panel.view.place.turn_degrees == pytest.approx(40)
    assert panel.view.grab().toImage() != before
    choose(panel.tints, 1)
    settled(page, qtbot)
    grey = panel.view.grab().toImage().pixelColor(panel.view.rect().center())
    assert grey.red() == grey.green() == grey.blue()
    QTest.mouseClick(panel.plate, LEFT, NONE, QPoint(8, panel.plate.height() // 2))
    settled(page, qtbot)
    assert panel.view.dress.laid
    assert panel.view.place.tilt_degrees >= 55


@pytest.fixture
def evening(window, qtbot):
    """Give the window, the hat page, and the design after each of the steps."""
    steps = []
    begin_tam(window, qtbot)
    steps.append(window.document.design)
    stamp_motif(window)
    window.show_page("hat")
    page = window._pages["hat"]
    settled(page, qtbot)
    change_gauge(window, page, qtbot)
    shape_crown(window, qtbot)
    choose(page.control("hat", "fold"), 1)
    turn_about(page, qtbot)
    return window, page, steps[0]


def test_an_evening_from_nothing_to_a_printed_tam(evening, qtbot, answers, tmp_path):
    window, page, first = evening
    design, stack = window.document.design, window.document.stack
    assert bad(design) == []
    assert not rounds_not_meeting(design)
    assert design.hat.fold.way == "up"
    assert design.hat.fold.rounds > 1
    assert stack.count() == 6  # motif, two gauges, fit, crown, fold
    answers.path = tmp_path / "evening.hat.toml"
    QTest.keyClick(window, Qt.Key.Key_S, CTRL)
    assert stack.isClean()
    assert read_design(answers.path) == design

    while stack.canUndo():
        QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
    assert window.document.design == first
    assert not settled(page, qtbot).fit_anew.isVisible()
    while stack.canRedo():
        QTest.keyClick(window, Qt.Key.Key_Z, CTRL | SHIFT)
    assert window.document.design == design
    assert stack.isClean()


def test_the_rounds_of_that_evening_are_printed_in_words(evening, qtbot, answers, tmp_path):
    window, _page, _first = evening
    answers.path = tmp_path / "evening.pdf"
    window.show_page("sheets")
    sheets = window._pages["sheets"]
    qtbot.waitUntil(lambda: sheets.printed is not None and sheets.is_current, timeout=30_000)
    with qtbot.waitSignal(window.background.ended, timeout=30_000):
        QTest.mouseClick(sheets.side.filing, LEFT)
    text = " ".join("".join(page.extract_text() for page in pypdf.PdfReader(answers.path).pages).split())
    design = window.document.design
    assert f"Cast on {design.bands[0].stitches(0)}" in text
    assert "rep from *" in text
    assert f"Turn the first {design.hat.fold.rounds} rnds up" in text
    last = design.bands[-1]
    assert f"({last.stitches(len(last.rounds) - 1)} sts)" in text
