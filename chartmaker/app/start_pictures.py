"""The three shapes of a hat, drawn small from the side: our own drawings, in the ink of the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPainterPath, QPalette, QPen, QPixmap, QPolygonF

if TYPE_CHECKING:
    from collections.abc import Callable

WIDTH, HEIGHT = 104, 80
"""The drawings' own units, which are the window's at the size of an icon."""
FILLED = 0.10
"""How much of the ink lies on the fabric."""


def shape_icon(shape: str, palette: QPalette, *, ratio: float) -> QIcon:
    """Give the picture of a shape, sharp at the screen's ratio, in the palette's colour of text."""
    pixmap = QPixmap(round(WIDTH * ratio), round(HEIGHT * ratio))
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _DRAWN[shape](painter, palette.color(QPalette.ColorRole.ButtonText))
    painter.end()
    return QIcon(pixmap)


def _draw_cap(painter: QPainter, ink: QColor) -> None:
    body = QPainterPath(QPointF(26, 60))
    body.lineTo(26, 44)
    body.cubicTo(26, 4, 78, 4, 78, 44)
    body.lineTo(78, 60)
    body.closeSubpath()
    _fabric(painter, ink, body)
    _brim(painter, ink, QRectF(25, 60, 54, 12))
    _lozenges(painter, ink, QRectF(26, 40, 52, 14), count=6)
    _seams(painter, ink, ((38, 37), (42, 22)), ((52, 37), (52, 20)), ((66, 37), (62, 22)))


def _draw_tam(painter: QPainter, ink: QColor) -> None:
    body = QPainterPath(QPointF(33, 60))
    body.cubicTo(20, 58, 4, 52, 6, 42)
    body.cubicTo(10, 26, 36, 20, 52, 20)
    body.cubicTo(68, 20, 94, 26, 98, 42)
    body.cubicTo(100, 52, 84, 58, 71, 60)
    body.closeSubpath()
    _fabric(painter, ink, body)
    _brim(painter, ink, QRectF(33, 60, 38, 11))
    _lozenges(painter, ink, QRectF(10, 40, 84, 12), count=9)
    _seams(painter, ink, ((26, 35), (44, 24)), ((52, 37), (52, 23)), ((78, 35), (60, 24)))


def _draw_stocking(painter: QPainter, ink: QColor) -> None:
    body = QPainterPath(QPointF(24, 62))
    body.cubicTo(24, 40, 30, 8, 54, 7)
    body.cubicTo(74, 7, 88, 24, 90, 52)
    body.lineTo(84, 53)
    body.cubicTo(80, 36, 74, 28, 68, 28)
    body.cubicTo(66, 40, 66, 50, 66, 62)
    body.closeSubpath()
    _fabric(painter, ink, body)
    _brim(painter, ink, QRectF(23, 62, 44, 11))
    _lozenges(painter, ink, QRectF(27, 44, 38, 12), count=4)
    painter.setPen(QPen(ink, 1.1))
    for spread in (-4.0, -2.0, 0.0, 2.0, 4.0):
        painter.drawLine(QPointF(87 + spread * 0.4, 53), QPointF(87 + spread, 66))


def _fabric(painter: QPainter, ink: QColor, body: QPainterPath) -> None:
    painter.setPen(QPen(ink, 1.5))
    painter.setBrush(_faint(ink))
    painter.drawPath(body)


def _brim(painter: QPainter, ink: QColor, box: QRectF) -> None:
    painter.setPen(QPen(ink, 1.5))
    painter.setBrush(_faint(ink))
    painter.drawRoundedRect(box, 2, 2)
    painter.setPen(QPen(ink, 0.9))
    ribs = round(box.width() / 5)
    for rib in range(1, ribs):
        x = box.left() + box.width() * rib / ribs
        painter.drawLine(QPointF(x, box.top() + 2), QPointF(x, box.bottom() - 2))


def _lozenges(painter: QPainter, ink: QColor, box: QRectF, *, count: int) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    solid = QColor(ink)
    solid.setAlphaF(0.55)
    painter.setBrush(solid)
    step = box.width() / count
    for place in range(count):
        middle = QPointF(box.left() + step * (place + 0.5), box.center().y())
        across, up = step * 0.36, box.height() * 0.36
        corners = (QPointF(-across, 0), QPointF(0, -up), QPointF(across, 0), QPointF(0, up))
        painter.drawPolygon(QPolygonF([middle + corner for corner in corners]))


def _seams(painter: QPainter, ink: QColor, *lines: tuple[tuple[int, int], tuple[int, int]]) -> None:
    painter.setPen(QPen(ink, 0.9, Qt.PenStyle.DotLine))
    for (x1, y1), (x2, y2) in lines:
        painter.drawLine(QPointF(x1, y1), QPointF(x2, y2))


def _faint(ink: QColor) -> QColor:
    pale = QColor(ink)
    pale.setAlphaF(FILLED)
    return pale


_DRAWN: dict[str, Callable[[QPainter, QColor], None]] = {
    "cap": _draw_cap,
    "tam": _draw_tam,
    "stocking": _draw_stocking,
}
