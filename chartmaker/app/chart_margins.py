"""What stands around the fabric: band names at the left, round numbers at the right, stitch numbers below.

Beside the number of a round whose count does not meet stands the sign of a finding that stops the knitter, beside one
that carries three strands at once the sign of that.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPalette

from chartmaker.app.chart_frame import BOTTOM, LEFT, RIGHT, TOP, ChartFrame
from chartmaker.app.signs import draw_stop, draw_strands
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.model.design import Design

SHORTEST_NAME = 4
"""A band's name cut shorter than this says nothing, and is left to the status bar."""


@dataclass(frozen=True, slots=True)
class RowMarks:
    """What is marked among the round numbers."""

    current: int
    """The row of the cursor."""
    chosen: range
    """The rows that are worked on together."""
    broken: frozenset[int]
    """The rows that do not meet the one below."""
    crowded: frozenset[int] = frozenset()
    """The rows that carry three strands at once."""


def paint_margins(  # noqa: PLR0913 - everything that the margins tell of
    painter: QPainter, frame: ChartFrame, design: Design, palette: QPalette, marks: RowMarks, *, heading: str
) -> None:
    """Paint all four margins in the window's own colours; `heading` stands above the live repeat."""
    width, height = frame.window
    ground, ink = palette.color(QPalette.ColorRole.Window), palette.color(QPalette.ColorRole.WindowText)
    for strip in (
        QRectF(0, 0, width, TOP),
        QRectF(0, height - BOTTOM, width, BOTTOM),
        QRectF(0, 0, LEFT, height),
        QRectF(width - RIGHT, 0, RIGHT, height),
    ):
        painter.fillRect(strip, ground)
    painter.setPen(ink)
    _paint_heading(painter, frame, ink, heading)
    paint_round_numbers(painter, frame, palette, marks)
    _paint_stitch_numbers(painter, frame)
    _paint_band_names(painter, frame, design)


def _paint_heading(painter: QPainter, frame: ChartFrame, ink: QColor, heading: str) -> None:
    """Write where the live repeat and its neighbours are."""
    area = frame.area
    left = frame.box(0, frame.grid.width - 1).left()
    right = frame.box(0, 0).right()
    pale = QColor(ink)
    pale.setAlpha(150)
    for text, start, end, colour in (
        (tr("neighbour"), frame.origin.x(), left, pale),
        (heading, left, right, ink),
        (tr("neighbour"), right, frame.origin.x() + frame.fabric.width(), pale),
    ):
        box = QRectF(max(start, area.left()), 0, min(end, area.right()) - max(start, area.left()), TOP)
        if QFontMetricsF(painter.font()).horizontalAdvance(text) <= box.width() - 4:
            painter.setPen(colour)
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
    painter.setPen(ink)


def paint_round_numbers(painter: QPainter, frame: ChartFrame, palette: QPalette, marks: RowMarks) -> None:
    """Paint the margin at the right alone: the others don't tell where the cursor is."""
    width = frame.window[0]
    step = _number_step(frame.cell.height(), QFontMetricsF(painter.font()).height() - 3)
    painter.save()
    strip = QRectF(width - RIGHT, TOP, RIGHT, frame.area.height())
    painter.setClipRect(strip)
    painter.fillRect(strip, palette.color(QPalette.ColorRole.Window))
    run = marks.chosen if len(marks.chosen) > 1 else range(0)
    _paint_strips(painter, frame, palette.color(QPalette.ColorRole.Highlight), marks.current, run)
    inks = palette.color(QPalette.ColorRole.WindowText), palette.color(QPalette.ColorRole.HighlightedText)
    for row in frame.rows_in_sight():
        is_marked = row == marks.current or row in run
        if (row + 1) % step and not is_marked and row not in marks.broken:
            continue
        top, height = frame.row_span(row)
        middle = QRectF(width - RIGHT + 2, top + height / 2 - 9, RIGHT - 8, 18)
        painter.setPen(inks[is_marked])
        is_near = abs(row - marks.current) * height < 12 or (is_marked and height < 12)
        if row == marks.current or not ((row + 1) % step or is_near):
            painter.drawText(middle, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, str(row + 1))
        if row in marks.broken:
            draw_stop(painter, QPointF(width - RIGHT + 9, top + height / 2), height, inks[is_marked])
        elif row in marks.crowded:
            draw_strands(painter, QPointF(width - RIGHT + 9, top + height / 2), height, inks[is_marked])
    painter.restore()


def _paint_strips(painter: QPainter, frame: ChartFrame, colour: QColor, current: int, run: range) -> None:
    """Paint what the marked numbers stand on, before any of them."""
    left = frame.window[0] - RIGHT + 2
    for row in frame.rows_in_sight():
        if row == current or row in run:
            top, height = frame.row_span(row)
            reach = max(height, 16) if row == current else height
            painter.fillRect(QRectF(left, top + (height - reach) / 2, RIGHT - 4, reach), colour)


def _paint_stitch_numbers(painter: QPainter, frame: ChartFrame) -> None:
    """Number the columns of the live repeat from 1 at the right."""
    height = frame.window[1]
    metrics = QFontMetricsF(painter.font())
    step = _number_step(frame.cell.width(), metrics.horizontalAdvance("00") + 2)
    painter.save()
    painter.setClipRect(QRectF(LEFT, height - BOTTOM, frame.area.width(), BOTTOM))
    for column in frame.columns_in_sight():
        if (column + 1) % step and column:
            continue
        box = frame.box(0, column)
        painter.drawText(
            QRectF(box.center().x() - 20, height - BOTTOM, 40, BOTTOM - 2),
            Qt.AlignmentFlag.AlignCenter,
            str(column + 1),
        )
    painter.restore()


def _paint_band_names(painter: QPainter, frame: ChartFrame, design: Design) -> None:
    """Write each band's name upwards along its rounds, with how many times its repeat goes round."""
    area = frame.area
    painter.save()
    painter.setClipRect(QRectF(0, TOP, LEFT, area.height()))
    for band, group in groupby(range(len(frame.grid.rows)), key=lambda row: frame.grid.rows[row].band):
        rows = list(group)
        top = max(frame.row_span(rows[-1])[0], area.top())
        low_top, low_height = frame.row_span(rows[0])
        bottom = min(low_top + low_height, area.bottom())
        if bottom - top < 12:
            continue
        painter.fillRect(QRectF(LEFT - 4, top + 2, 1.5, bottom - top - 4), painter.pen().color())
        text = f"{design.bands[band].name} × {design.bands[band].times}"
        room = bottom - top - 6
        metrics = QFontMetricsF(painter.font())
        if metrics.horizontalAdvance(text) > room:
            text = design.bands[band].name
        elided = metrics.elidedText(text, Qt.TextElideMode.ElideRight, room)
        if elided != text and len(elided) < SHORTEST_NAME:
            continue
        painter.save()
        painter.translate(QPointF(0, bottom - 3))
        painter.rotate(-90)
        painter.drawText(QRectF(0, 0, room, LEFT - 5), Qt.AlignmentFlag.AlignCenter, elided)
        painter.restore()
    painter.restore()


def _number_step(room: float, needed: float) -> int:
    """Give how many rows or columns share one number so that numbers don't touch."""
    return next((step for step in (1, 2, 5, 10, 20, 50) if step * room >= needed), 100)
