"""A whole hat from nothing: File, New bare design, then keys and the mouse alone, as its knitter would draw it."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.files.design_reading import read_design
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.stitches import Shaping
from tests.app.hand_at import LEFT, NONE, drag, drawn, point, type_at
from tests.builders import chart

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
FIELDS = {"name": Qt.Key.Key_F2, "repeat": Qt.Key.Key_F3, "times": Qt.Key.Key_F4, "texture": Qt.Key.Key_F5}


def fill_in(window, **fields):
    """Type into fields of the band at the cursor, each reached by its key and left by Enter."""
    for name, text in fields.items():
        QTest.keyClick(window.chart.canvas, FIELDS[name])
        field = QApplication.focusWidget()
        assert field is getattr(window.chart.band, name)
        QTest.keyClicks(field, text)
        QTest.keyClick(field, Qt.Key.Key_Return)
        assert QApplication.focusWidget() is window.chart.canvas


def at_number(window, row):
    canvas = window.chart.canvas
    return QPoint(canvas.viewport().width() - 10, point(canvas, (row, 0)).y())


def choose(window, first, last):
    """Choose rounds by their numbers: a click, and one with Shift."""
    port = window.chart.canvas.viewport()
    window.chart.canvas.fit()
    QTest.mouseClick(port, LEFT, NONE, at_number(window, first))
    QTest.mouseClick(port, LEFT, SHIFT, at_number(window, last))
    assert window.chart.canvas.chosen == range(first, last + 1)


def draw_rib(window):
    fill_in(window, name="rib", repeat="4", times="36")
    choose(window, 6, 39)
    QTest.keyClick(window.chart.canvas, Qt.Key.Key_Delete, CTRL)
    fill_in(window, texture="kkpp")
    for column in (2, 3):
        drag(window.chart.canvas, (0, column), (5, column))


def draw_crosses(window):
    type_at(window, Qt.Key.Key_B)
    fill_in(window, name="crosses", repeat="12", times="12")
    type_at(window, Qt.Key.Key_L)
    drag(window.chart.canvas, (7, 0), (12, 5))
    drag(window.chart.canvas, (7, 6), (12, 11))
    drag(window.chart.canvas, (12, 0), (7, 5))
    drag(window.chart.canvas, (12, 6), (7, 11))


def draw_lozenges(window):
    type_at(window, Qt.Key.Key_B)
    fill_in(window, name="lozenges")
    QTest.keyClick(window.chart.canvas, Qt.Key.Key_R, CTRL)
    window.chart.canvas.fit()
    row = window.chart.canvas.current[0]
    for ends in (((1, 0), (4, 9)), ((4, 10), (1, 19)), ((4, 1), (7, 10))):
        drag(window.chart.canvas, *[(row + height, column) for height, column in ends])


def draw_crown(window):
    canvas = window.chart.canvas
    type_at(window, Qt.Key.Key_B)
    fill_in(window, name="crown")
    QTest.keyClick(canvas, Qt.Key.Key_B, CTRL)
    type_at(window, Qt.Key.Key_I, Qt.Key.Key_I, Qt.Key.Key_Escape)
    canvas.fit()
    first = canvas.grid.row_of(3, 0)
    type_at(window, Qt.Key.Key_C)
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (first + 1, 12)))
    for _ in range(10):
        type_at(window, Qt.Key.Key_Up, Qt.Key.Key_Up, Qt.Key.Key_Space)
    choose(window, first + 22, first + 23)
    QTest.keyClick(canvas, Qt.Key.Key_Delete, CTRL)


@pytest.fixture
def drawn_hat(open_on):
    window = open_on(chart("A | .", times=144), size=(1440, 900))
    QTest.keyClick(window, Qt.Key.Key_N, CTRL | SHIFT)
    assert len(window.document.design.bands) == 1
    blank = window.document.design
    draw_rib(window)
    draw_crosses(window)
    draw_lozenges(window)
    draw_crown(window)
    return window, blank


def test_a_hat_of_four_bands_with_a_shaped_crown_is_drawn_from_nothing(drawn_hat, answers, tmp_path):
    window, blank = drawn_hat
    design = window.document.design
    assert [(band.name, band.times, len(band.rounds)) for band in design.bands] == [
        ("rib", 36, 6),
        ("crosses", 12, 8),
        ("lozenges", 6, 8),
        ("crown", 6, 22),
    ]
    assert design.bands[0].texture == "kkpp"
    assert drawn(design, 0) == ["xx.."] * 6
    assert drawn(design, 1)[1:7] == [
        "x....xx....x",
        ".x..x..x..x.",
        "..xx....xx..",
        "..xx....xx..",
        ".x..x..x..x.",
        "x....xx....x",
    ]
    assert sum(line.count("x") for line in drawn(design, 2)) == 30
    assert {design.bands[band].stitches(index) for band in (0, 1, 2) for index in range(6)} == {144}
    crown = design.bands[3]
    assert [crown.stitches(index) for index in range(22)] == [144] + [
        144 - 12 * (index // 2 + 1) for index in range(21)
    ]
    assert all(line.shaping.count(Shaping.CENTRED) == index % 2 for index, line in enumerate(crown.rounds))
    assert not rounds_not_meeting(design)
    assert not [found for found in window.document.appraisal.findings if found.check == "stitch-counts"]
    answers.path = tmp_path / "lock.hat.toml"
    QTest.keyClick(window, Qt.Key.Key_S, CTRL)
    assert read_design(answers.path) == design
    while window.document.stack.canUndo():
        QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
    assert window.document.design == blank
    while window.document.stack.canRedo():
        QTest.keyClick(window, Qt.Key.Key_Z, CTRL | SHIFT)
    assert window.document.design == design


CROSSES = ["x....x" * 4, ".x..x." * 4, "..xx.." * 4, "..xx.." * 4, ".x..x." * 4, "x....x" * 4]


def test_a_band_of_crosses_is_one_quarter_mirrored_and_a_block_repeated(open_on):
    window = open_on(chart("\n".join(["A B | " + "." * 24] * 6), times=6), size=(1440, 900))
    canvas, stack = window.chart.canvas, window.document.stack
    canvas.go_to(2, 2)
    type_at(window, *[Qt.Key.Key_V] * 2, *[Qt.Key.Key_H] * 2, Qt.Key.Key_L)
    drag(canvas, (0, 0), (2, 2))
    assert drawn(window.document.design) == ["." * 18 + line[:6] for line in CROSSES]
    type_at(window, Qt.Key.Key_Q)
    drag(canvas, (0, 0), (5, 5))
    window.actions_made["block.repeat"].trigger()
    assert drawn(window.document.design) == CROSSES
    assert stack.count() == 2
    type_at(window, Qt.Key.Key_V, Qt.Key.Key_H, Qt.Key.Key_O)
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (5, 2)))
    assert drawn(window.document.design)[:3] == ["x....x" * 3 + "xxxxxx", ".x..x." * 3 + ".xxxx.", CROSSES[2]]
    assert stack.count() == 3
