"""A skein drawn in its shade: a twisted hank, dashed while it is only planned, hatched while its shade is not known."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen, QPixmap

from chartmaker.app.shades import SURROUND, ink_on

if TYPE_CHECKING:
    from collections.abc import Iterator

TURNS = 4
"""How often the hank is twisted."""
SHADOW, EDGE = 0.80, 0.62
"""How much light is left in the shadow between strands, and at the outline."""
INK = QColor(0, 0, 0)


@lru_cache(maxsize=1024)
def skein_pixmap(rgb: int | None, width: int, height: int, ratio: float, *, is_planned: bool = False) -> QPixmap:
    """Give a skein, sharp at the screen's ratio; `rgb` as Qt packs it, None where the shade is not known."""
    pixmap = QPixmap(math.ceil(width * ratio), math.ceil(height * ratio))
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    draw_skein(painter, QRectF(0, 0, width, height), None if rgb is None else QColor(rgb), is_planned=is_planned)
    painter.end()
    return pixmap


def draw_skein(painter: QPainter, box: QRectF, colour: QColor | None, *, is_planned: bool = False) -> None:
    """Draw the hank across a box: two bundles of strands that pass over each other, a loop at either end."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    fill = QBrush(colour or SURROUND)
    edge = _dimmed(colour, EDGE) if colour else INK
    style = Qt.PenStyle.DashLine if is_planned else Qt.PenStyle.SolidLine
    pen = QPen(INK if is_planned else edge, 1.4 if is_planned else 1.2, style)
    for loop in _loops(box):
        painter.setPen(pen)
        painter.setBrush(fill)
        painter.drawPath(loop)
    for bundle, strands in _bundles(box):
        painter.setPen(pen)
        painter.setBrush(fill)
        painter.drawPath(bundle)
        if colour is None:
            _hatch(painter, bundle)
        else:
            painter.setPen(QPen(_dimmed(colour, SHADOW), 1.1))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            for strand in strands:
                painter.drawPath(strand)
    if colour is None:
        _write_unknown(painter, box)
    painter.restore()


def _bundles(box: QRectF) -> Iterator[tuple[QPainterPath, list[QPainterPath]]]:
    """Give, from left to right, the leaning bundles of the twist, each with the shadows between its strands."""
    end = box.height() * 0.42
    left, length = box.left() + end, box.width() - 2 * end
    step = length / TURNS
    high, half = box.height() * 0.40, step * 0.36
    for turn in range(TURNS):
        middle = QPointF(left + step * (turn + 0.5), box.center().y())
        yield (
            _leaf(middle, high, lean=step * 0.62, half=half),
            [_vein(middle, high * 0.84, lean=step * 0.62, off=half * share) for share in (-0.45, 0.05, 0.55)],
        )


def _leaf(middle: QPointF, high: float, *, lean: float, half: float) -> QPainterPath:
    """Give a bundle: a leaning leaf with round ends, fuller below its middle on one side and above it on the other."""
    top, foot = middle + QPointF(lean, -high), middle + QPointF(-lean, high)
    path = QPainterPath(foot)
    path.cubicTo(foot + QPointF(-half * 1.2, -high * 0.7), top + QPointF(-half * 2.9, high * 0.1), top)
    path.cubicTo(top + QPointF(half * 1.2, high * 0.7), foot + QPointF(half * 2.9, -high * 0.1), foot)
    return path


def _vein(middle: QPointF, high: float, *, lean: float, off: float) -> QPainterPath:
    lean *= 0.84
    top, foot = middle + QPointF(lean + off * 0.3, -high), middle + QPointF(-lean + off * 0.3, high)
    path = QPainterPath(foot)
    path.cubicTo(foot + QPointF(off, -high * 0.6), top + QPointF(off * 1.6 - lean * 0.5, high * 0.6), top)
    return path


def _loops(box: QRectF) -> tuple[QPainterPath, QPainterPath]:
    """Give the loops in which the hank ends, as rings."""
    high = box.height() * 0.62
    rings = []
    for left in (box.left() + 2, box.right() - 2 - high):
        ring = QPainterPath()
        ring.addEllipse(QRectF(left, box.center().y() - high / 2, high, high))
        inner = high * 0.42
        ring.addEllipse(QRectF(left + (high - inner) / 2, box.center().y() - inner / 2, inner, inner))
        rings.append(ring)
    return rings[0], rings[1]


def _hatch(painter: QPainter, bundle: QPainterPath) -> None:
    painter.save()
    painter.setClipPath(bundle)
    painter.setPen(QPen(INK, 1))
    around = bundle.boundingRect()
    for step in range(0, math.ceil(around.width() + around.height()), 5):
        start = QPointF(around.left() + step, around.top())
        painter.drawLine(start, start + QPointF(-around.height(), around.height()))
    painter.restore()


def _write_unknown(painter: QPainter, box: QRectF) -> None:
    side = box.height() * 0.5
    plate = QRectF(box.center().x() - side / 2, box.center().y() - side / 2, side, side)
    painter.setPen(QPen(INK, 1))
    painter.setBrush(SURROUND)
    painter.drawEllipse(plate)
    font = painter.font()
    font.setPixelSize(max(8, round(side * 0.7)))
    font.setBold(True)
    painter.setFont(font)
    painter.setPen(ink_on(SURROUND))
    painter.drawText(plate, Qt.AlignmentFlag.AlignCenter, "?")


def _dimmed(colour: QColor, share: float) -> QColor:
    """Give a colour with less light; a very dark one with a little more, so that the strands still show."""
    if colour.lightnessF() < 0.16:
        return colour.lighter(round(100 + 110 * (1 - share))) if colour.lightnessF() > 0.03 else QColor(64, 64, 64)
    return QColor(*(round(share * part) for part in (colour.red(), colour.green(), colour.blue())))
