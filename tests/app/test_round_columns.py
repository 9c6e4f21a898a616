"""The columns beside the chart paint only what changed; what is on the screen is as if all had been painted."""

import random

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from chartmaker.app import appraiser
from tests.app.hand_at import drag, type_at
from tests.builders import chart

COLOURS = {"A": (30, 8, 12), "B": (80, 0, 20), "C": (45, 20, 5), "D": (76, 2, 18)}
HAT = chart(
    "\n".join(["A B | x..x..x.", "A C | .xx...xx", "D B | xxxxxxxx"] * 5),
    "\n".join(["B D | xx..", "C A | .xx."] * 6),
    times=(9, 18),
    lots=COLOURS,
)


def on_the_screen(widget: QWidget) -> QImage:
    """Give what stands on the screen of a widget."""
    whole = widget.screen().grabWindow(widget.window().winId()).toImage()
    return whole.copy(widget.rect().translated(widget.mapTo(widget.window(), QPoint())))


def painted_in_full(widget: QWidget) -> QImage:
    """Give a widget with all around it painted anew."""
    whole = widget.window().grab().toImage()
    return whole.copy(widget.rect().translated(widget.mapTo(widget.window(), QPoint())))


def same(first: QImage, second: QImage) -> bool:
    return first.convertToFormat(QImage.Format.Format_RGB32) == second.convertToFormat(QImage.Format.Format_RGB32)


ACTIONS = ("edit.undo", "edit.redo", "rounds.duplicate", "rounds.delete", "shading.swap", "view.value", "view.symbols")


def do_something(window, rng):
    canvas, column = window.chart.canvas, window.chart.shading
    row = rng.choice(canvas.frame.rows_in_sight())
    match rng.randrange(6):
        case 0:
            drag(canvas, (row, rng.randrange(4)), (row, rng.randrange(4)))
        case 1:
            type_at(window, *rng.choices((Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Space, Qt.Key.Key_X), k=3))
        case 2:
            canvas.go_to(row)
            canvas.reach_to(row + rng.randrange(-3, 4))
        case 3:
            column.setFocus()
            QTest.keyClick(column, rng.choice((Qt.Key.Key_C, Qt.Key.Key_D, Qt.Key.Key_Left, Qt.Key.Key_Up)))
        case 4:
            window.actions_made[rng.choice(ACTIONS)].trigger()
        case _:
            canvas.zoom(rng.choice((-1, 1)))


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize("is_late", [False, True])
def test_whatever_is_done_the_columns_on_the_screen_are_as_painted_in_full(open_on, monkeypatch, seed, is_late):
    if is_late:
        monkeypatch.setattr(appraiser, "AT_ONCE_STITCHES", 0)
        monkeypatch.setattr(appraiser.Appraiser, "ask", lambda _self, _design, _palette: None)
    window, rng = open_on(HAT), random.Random(seed)
    for _ in range(25):
        do_something(window, rng)
        QApplication.processEvents()
        for column in (window.chart.ledger, window.chart.shading):
            assert same(on_the_screen(column), painted_in_full(column))
    window.document.appraise_now()
    QApplication.processEvents()
    assert same(on_the_screen(window.chart.ledger), painted_in_full(window.chart.ledger))


def test_a_stitch_has_only_the_entries_about_its_round_painted_anew(open_on, monkeypatch):
    window = open_on(HAT)
    ledger, painted = window.chart.ledger, []
    window.chart.canvas.go_to(7)
    QApplication.processEvents()
    paint_row = ledger.paint_row
    monkeypatch.setattr(
        ledger, "paint_row", lambda painter, row, box: (painted.append(row), paint_row(painter, row, box))
    )
    drag(window.chart.canvas, (7, 0), (7, 3))
    QApplication.processEvents()
    assert 7 in painted
    assert set(painted) <= {5, 6, 7, 8, 9}
