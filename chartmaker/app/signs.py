"""Signs drawn in a cell: one for each letter, to read without colour, and one for each kind of shaping."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPen, QPolygonF

from chartmaker.model.stitches import Shaping

if TYPE_CHECKING:
    from collections.abc import Callable

SHAPING_WORDS = {
    Shaping.PLAIN: "plain",
    Shaping.K2TOG: "two together, leaning right",
    Shaping.SSK: "two together, leaning left",
    Shaping.CENTRED: "centred double decrease",
    Shaping.MAKE: "make one",
}
"""What a stitch's shaping is called in messages."""


def draw_letter_sign(painter: QPainter, cell: QRectF, letter: str, ink: QColor) -> None:
    """Draw a letter's sign in the middle of a cell; letters past the twelfth are written as themselves."""
    side = min(cell.width(), cell.height()) * 0.56
    box = QRectF(0, 0, side, side)
    box.moveCenter(cell.center())
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(_pen(ink, side))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    draw = _SIGNS.get(letter)
    if draw is None:
        draw_text_sign(painter, cell, letter, ink)
    else:
        draw(painter, box, ink)
    painter.restore()


def draw_text_sign(painter: QPainter, cell: QRectF, text: str, ink: QColor) -> None:
    """Write a letter in the middle of a cell."""
    font = QFont(painter.font())
    font.setPixelSize(max(5, round(min(cell.width(), cell.height()) * 0.72)))
    painter.setFont(font)
    painter.setPen(ink)
    painter.drawText(cell, Qt.AlignmentFlag.AlignCenter, text)


def draw_shaping_sign(painter: QPainter, cell: QRectF, shaping: int, ink: QColor) -> None:
    """Draw how a shaped stitch is made: a stroke that leans as the stitch leans, a peak for three, M for a new one."""
    box = cell.adjusted(cell.width() * 0.2, cell.height() * 0.2, -cell.width() * 0.2, -cell.height() * 0.2)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(_pen(ink, min(box.width(), box.height()) * 1.2))
    if shaping == Shaping.K2TOG:
        painter.drawLine(box.bottomLeft(), box.topRight())
    elif shaping == Shaping.SSK:
        painter.drawLine(box.topLeft(), box.bottomRight())
    elif shaping == Shaping.CENTRED:
        peak = QPointF(box.center().x(), box.top())
        painter.drawPolyline(QPolygonF([box.bottomLeft(), peak, box.bottomRight()]))
    elif shaping == Shaping.MAKE:
        dip = QPointF(box.center().x(), box.center().y())
        painter.drawPolyline(QPolygonF([box.bottomLeft(), box.topLeft(), dip, box.topRight(), box.bottomRight()]))
    painter.restore()


def _pen(ink: QColor, side: float) -> QPen:
    pen = QPen(ink, max(1.0, side * 0.14))
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    return pen


def _nothing(_painter: QPainter, _box: QRectF, _ink: QColor) -> None:
    pass


def _disc(painter: QPainter, box: QRectF, ink: QColor) -> None:
    painter.setBrush(ink)
    painter.drawEllipse(box)


def _ring(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    painter.drawEllipse(box)


def _cross(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    painter.drawLine(box.topLeft(), box.bottomRight())
    painter.drawLine(box.topRight(), box.bottomLeft())


def _square(painter: QPainter, box: QRectF, ink: QColor) -> None:
    painter.setBrush(ink)
    painter.drawRect(box)


def _frame(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    painter.drawRect(box)


def _diamond(painter: QPainter, box: QRectF, ink: QColor) -> None:
    painter.setBrush(ink)
    middle = box.center()
    painter.drawPolygon(
        QPolygonF(
            [
                QPointF(middle.x(), box.top()),
                QPointF(box.right(), middle.y()),
                QPointF(middle.x(), box.bottom()),
                QPointF(box.left(), middle.y()),
            ]
        )
    )


def _triangle(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    painter.drawPolygon(QPolygonF([QPointF(box.center().x(), box.top()), box.bottomRight(), box.bottomLeft()]))


def _upright(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    painter.drawLine(QPointF(box.center().x(), box.top()), QPointF(box.center().x(), box.bottom()))


def _dash(painter: QPainter, box: QRectF, _ink: QColor) -> None:
    painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()))


def _plus(painter: QPainter, box: QRectF, ink: QColor) -> None:
    _upright(painter, box, ink)
    _dash(painter, box, ink)


def _dot(painter: QPainter, box: QRectF, ink: QColor) -> None:
    painter.setBrush(ink)
    painter.drawEllipse(box.center(), box.width() * 0.16, box.width() * 0.16)


_SIGNS: dict[str, Callable[[QPainter, QRectF, QColor], None]] = dict(
    zip(
        "ABCDEFGHIJKL",
        (_nothing, _disc, _cross, _ring, _square, _upright, _triangle, _dash, _diamond, _plus, _frame, _dot),
        strict=True,
    )
)
