"""The line at the foot: every part of what is told stays in sight, the longest cut short, and the tool tip has all."""

import pytest
from PySide6.QtGui import QFontMetrics
from PySide6.QtTest import QTest

from chartmaker.app.stitch_line import BETWEEN, fitted
from tests.app.hand_at import point
from tests.builders import chart

LONG = BETWEEN.join(["round 12 (a band of a very long name indeed)", "stitch 3 of 8", "ground: A", "value 30.0"])


@pytest.mark.parametrize("share", [0.9, 0.7, 0.5])
def test_long_parts_are_cut_first_and_short_ones_stay_whole(qapp, share):
    metrics = QFontMetrics(qapp.font())
    width = round(share * metrics.horizontalAdvance(LONG))
    parts = fitted(LONG, metrics, width).split(BETWEEN)
    assert metrics.horizontalAdvance(BETWEEN.join(parts)) <= width
    assert len(parts) == 4
    assert parts[0].startswith("rou")
    assert parts[0].endswith("…")
    assert share < 0.6 or parts[1:] == LONG.split(BETWEEN)[1:]


@pytest.mark.parametrize("width", [0, 3, 20])
def test_next_to_no_room_is_not_gone_beyond(qapp, width):
    metrics = QFontMetrics(qapp.font())
    cut = fitted(LONG, metrics, width)
    assert cut != LONG
    assert metrics.horizontalAdvance(cut) <= max(width, metrics.horizontalAdvance("…"))


def test_what_has_room_is_written_whole(qapp):
    metrics = QFontMetrics(qapp.font())
    assert fitted(LONG, metrics, metrics.horizontalAdvance(LONG)) == LONG


def test_in_a_narrow_window_round_stitch_letter_lot_value_and_float_stay_in_sight(open_on):
    rows = "\n".join(["A B | xx......"] * 6)
    window = open_on(chart(rows, times=18, lots={"A": (30, 8, 12), "B": (80, 0, 20)}), size=(1024, 700))
    QTest.mouseMove(window.chart.canvas.viewport(), point(window.chart.canvas, (3, 2)))
    line = window._hover
    whole, shown = line.text().split(BETWEEN), line.shown.split(BETWEEN)
    assert shown[:5] == whole[:5]
    assert [part.split()[0] for part in shown] == [part.split()[0] for part in whole]
    assert shown[5].startswith("B behind: 6 stitches")
    assert line.fontMetrics().horizontalAdvance(line.shown) <= line.width()
    assert "B behind: 6 stitches" in line.toolTip()
