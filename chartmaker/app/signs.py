"""Signs drawn in a cell: the same marks for letters and for shaping that the printed chart has."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen, QPolygonF

from chartmaker.model.stitches import Shaping
from chartmaker.sheets.marks import PURL_BAR, SHAPING_MARKS, Disc, Mark, Ring, Shape, Solid, marks_by_letter

if TYPE_CHECKING:
    from chartmaker.appraisal import Appraisal

LETTER_SHARE, SHAPING_SHARE = 0.62, 0.8
"""How much of a cell's smaller side a mark takes."""
PURL_DROP, PURLED_MARK_RISE = 0.32, -0.1
"""Where the purl bar stands in a cell, and a letter's mark above it, in cell heights downwards."""
SMALLEST_STOP, LARGEST_STOP = 7, 11
"""Sides of the sign beside a round that does not meet, in window units."""


def letter_marks(appraisal: Appraisal) -> dict[str, Mark]:
    """Give the marks that the printed chart would give the letters of a design."""
    return marks_by_letter({entry.letter: entry.requirement.stitches for entry in appraisal.letters})


def draw_mark(painter: QPainter, cell: QRectF, mark: Mark, ink: QColor, *, is_purled: bool = False) -> None:
    """Draw a letter's mark in the middle of a cell, or above the trade's bar for a purled stitch."""
    if not is_purled:
        _draw_mark(painter, cell, mark, ink, LETTER_SHARE)
        return
    _draw_mark(painter, cell.translated(0, PURLED_MARK_RISE * cell.height()), mark, ink, 0.8 * LETTER_SHARE)
    _draw_mark(painter, cell.translated(0, PURL_DROP * cell.height()), PURL_BAR, ink, LETTER_SHARE)


def draw_mark_aside(painter: QPainter, cell: QRectF, mark: Mark, shaping: int, ink: QColor) -> None:
    """Draw a letter's mark small, in the corner that the sign of a shaped stitch leaves, as on paper."""
    from chartmaker.sheets.chart_cells import ASIDE, SMALL_SHARE

    right, down = ASIDE[Shaping(shaping)]
    _draw_mark(painter, cell.translated(right * cell.width(), down * cell.height()), mark, ink, SMALL_SHARE)


def draw_shaping(painter: QPainter, cell: QRectF, shaping: int, ink: QColor) -> None:
    """Draw the trade's sign of a shaped stitch."""
    _draw_mark(painter, cell, SHAPING_MARKS[Shaping(shaping)], ink, SHAPING_SHARE)


def _draw_mark(painter: QPainter, cell: QRectF, mark: Mark, ink: QColor, share: float) -> None:
    side = min(cell.width(), cell.height()) * share
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(ink, max(1.0, side * mark.stroke))
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    for shape in mark.shapes:
        _draw(painter, shape, cell.center(), side, pen)
    painter.restore()


def draw_letter(painter: QPainter, cell: QRectF, letter: str, ink: QColor) -> None:
    """Write a letter in the middle of a cell."""
    font = QFont(painter.font())
    font.setPixelSize(max(5, round(min(cell.width(), cell.height()) * 0.72)))
    painter.setFont(font)
    painter.setPen(ink)
    painter.drawText(cell, Qt.AlignmentFlag.AlignCenter, letter)


def draw_stop(painter: QPainter, middle: QPointF, room: float, ink: QColor) -> None:
    """Draw the sign of what cannot be knitted, a filled square with a bar left bare, as high as there is room for."""
    side = min(LARGEST_STOP, max(SMALLEST_STOP, room - 2))
    painter.fillRect(QRectF(middle.x() - side / 2, middle.y() - side / 2, side, side), ink)
    bar = QRectF(middle.x() - side / 2 + 2, middle.y() - 1, side - 4, 2)
    painter.fillRect(bar, QColor(0, 0, 0) if ink.lightnessF() > 0.5 else QColor(255, 255, 255))


def draw_strands(painter: QPainter, middle: QPointF, room: float, ink: QColor) -> None:
    """Draw the sign of a round that carries three strands at once, three strokes, as high as there is room for."""
    apart = min(3.0, max(2.0, (room - 2) / 3))
    for step in (-1, 0, 1):
        painter.fillRect(QRectF(middle.x() - 3.5, middle.y() + step * apart - 0.75, 7, 1.5), ink)


def _draw(painter: QPainter, shape: Shape, middle: QPointF, side: float, pen: QPen) -> None:
    def at(point: tuple[float, float]) -> QPointF:
        return QPointF(middle.x() + point[0] * side, middle.y() - point[1] * side)

    is_filled = isinstance(shape, Disc | Solid)
    painter.setPen(Qt.PenStyle.NoPen if is_filled else pen)
    painter.setBrush(pen.color() if is_filled else Qt.BrushStyle.NoBrush)
    if isinstance(shape, Disc | Ring):
        painter.drawEllipse(at(shape.centre), shape.radius * side, shape.radius * side)
        return
    outline = QPolygonF([at(point) for point in shape.points])
    if isinstance(shape, Solid) or shape.is_closed:
        painter.drawPolygon(outline)
    else:
        painter.drawPolyline(outline)
