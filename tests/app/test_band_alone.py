"""While one band is worked in alone, no block edit and no stamp changes another, by mouse or by keys."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QKeySequence
from PySide6.QtTest import QTest

from chartmaker.app.chart_grid import CLOSED
from chartmaker.model.block import Block
from chartmaker.model.motif import Motif
from chartmaker.model.notation import rounds_from_text
from tests.app.hand_at import LEFT, NONE, drag, drawn, point
from tests.builders import chart

CTRL = Qt.KeyboardModifier.ControlModifier
LOWER = ["........", "........", "x.......", "xx......"]
UPPER = ["......", ".....x", "....xx"]
EDITS = ("Del", "Ctrl+X", "Ctrl+H", "Ctrl+Shift+H", "Ctrl+U", "Ctrl+Left", "Ctrl+Up", "Ctrl+G")


@pytest.fixture
def window(open_on):
    """Give the window on two bands, the lower worked in alone, with the tool that selects in hand."""
    texts = ["\n".join(f"A B | {line}" for line in lines) for lines in (LOWER, UPPER)]
    window = open_on(chart(*texts, times=(18, 24), lots={"A": (30, 8, 12), "B": (80, 0, 20)}))
    press(window, "W", "Q")
    return window


@pytest.fixture
def refusals(window):
    """Give the list of what the chart refuses from now on."""
    told = []
    window.chart.canvas.refused.connect(told.append)
    return told


def press(window, *keys):
    """Press keys at the chart, told as the action table tells them."""
    window.chart.canvas.setFocus()
    for key in keys:
        pressed = QKeySequence(key)[0]
        QTest.keyClick(window.chart.canvas, pressed.key(), pressed.keyboardModifiers())


def is_as_it_was(window):
    design = window.document.design
    return drawn(design, 0) == LOWER and drawn(design, 1) == UPPER and not window.document.stack.count()


@pytest.mark.parametrize("key", EDITS)
def test_a_block_of_another_band_is_not_changed_and_one_sentence_says_so(window, refusals, key):
    drag(window.chart.canvas, (4, 0), (5, 2))
    assert window.chart.canvas.blocks.tool.block == Block(band=1, first=0, last=1, column=0, width=3)
    press(window, key)
    assert is_as_it_was(window)
    assert refusals == [CLOSED]
    assert window.statusBar().currentMessage().startswith("Another band is worked in alone")


@pytest.mark.parametrize("key", EDITS)
def test_the_band_itself_is_changed_and_so_is_the_other_once_all_are_worked_in(window, refusals, key):
    drag(window.chart.canvas, (0, 4), (2, 7))
    press(window, key)
    assert drawn(window.document.design, 0) != LOWER
    assert drawn(window.document.design, 1) == UPPER
    press(window, "W")
    drag(window.chart.canvas, (4, 0), (5, 2))
    press(window, key)
    assert drawn(window.document.design, 1) != UPPER
    assert not refusals


@pytest.mark.parametrize(("start", "end"), [((0, 7), (5, 1)), ((4, 0), (0, 3))])
def test_a_block_is_carried_neither_into_another_band_nor_out_of_one(window, refusals, start, end):
    canvas = window.chart.canvas
    drag(canvas, start, (start[0] + 1, start[1] - 1 if start[1] else 1))
    drag(canvas, start, end)
    assert is_as_it_was(window)
    assert refusals == [CLOSED]
    assert canvas.shown is window.document.design


def test_a_block_of_another_band_may_be_copied_here(window, refusals):
    canvas = window.chart.canvas
    drag(canvas, (4, 0), (5, 1))
    QTest.mousePress(canvas.viewport(), LEFT, CTRL, point(canvas, (4, 0)))
    QTest.mouseMove(canvas.viewport(), point(canvas, (2, 3)))
    QTest.mouseRelease(canvas.viewport(), LEFT, CTRL, point(canvas, (2, 3)))
    assert drawn(window.document.design, 0) == ["....x...", "...xx...", *LOWER[2:]]
    assert drawn(window.document.design, 1) == UPPER
    assert not refusals


def test_a_pasted_piece_goes_on_floating_over_another_band_and_lies_down_in_this_one(window, refusals):
    canvas = window.chart.canvas
    QGuiApplication.clipboard().setText("A B | xx")
    press(window, "Ctrl+V")
    QTest.mouseMove(canvas.viewport(), point(canvas, (4, 3)))
    QTest.mouseMove(canvas.viewport(), point(canvas, (5, 3)))
    assert canvas.shown is window.document.design
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (5, 3)))
    assert refusals == [CLOSED]
    assert is_as_it_was(window)
    QTest.mouseMove(canvas.viewport(), point(canvas, (3, 3)))
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (3, 3)))
    assert drawn(window.document.design, 0) == ["...xx...", *LOWER[1:]]
    assert drawn(window.document.design, 1) == UPPER


def test_a_stamp_is_refused_over_another_band_and_told_beforehand(window, refusals):
    canvas = window.chart.canvas
    window.chart.motifs.hold_made(Motif(id="pair", name="pair", family="own", rounds=rounds_from_text("A B | xx")))
    for cell in ((4, 0), (5, 2)):
        QTest.mouseMove(canvas.viewport(), point(canvas, cell))
    assert canvas.shown is window.document.design
    assert "nother band is worked in alone" in window._hover.text()
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (5, 2)))
    assert is_as_it_was(window)
    assert refusals == [CLOSED]
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (3, 2)))
    assert drawn(window.document.design, 0)[0] == "xxxxxxxx"
    assert drawn(window.document.design, 1) == UPPER
