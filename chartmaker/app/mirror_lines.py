"""The axes that drawing is mirrored about, drawn on the chart."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintDevice

    from chartmaker.app.chart_frame import ChartFrame
    from chartmaker.app.mirror import Axes

BLACK, WHITE = QColor(0, 0, 0), QColor(255, 255, 255)
DASH = (4.0, 4.0)
"""Lengths of black and of white, in line widths."""
WIDTH = 2
BEYOND = 6
"""How far an axis reaches past the fabric, in window units."""


def paint_axes(device: QPaintDevice, frame: ChartFrame, axes: Axes) -> None:
    """Draw each axis over the fabric in dashes of black on white, which show on any shade."""
    lines = axis_lines(frame, axes)
    if not lines:
        return
    painter = QPainter(device)
    painter.setClipRect(frame.area)
    for colour, width, dashes in ((WHITE, WIDTH + 1, ()), (BLACK, WIDTH, DASH)):
        pen = QPen(colour, width)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        if dashes:
            pen.setDashPattern(dashes)
        painter.setPen(pen)
        painter.drawLines(lines)
    painter.end()


def axis_lines(frame: ChartFrame, axes: Axes) -> list[QLineF]:
    """Give where the axes lie: the upright one by all rounds, the level one by all columns, a little beyond each."""
    origin, fabric, lines = frame.origin, frame.fabric, []
    if axes.across is not None:
        box = frame.box(0, axes.across // 2)
        x = box.left() if axes.across % 2 else box.center().x()
        lines.append(QLineF(x, origin.y() - BEYOND, x, origin.y() + fabric.height() + BEYOND))
    if axes.up is not None:
        box = frame.box(axes.up // 2, 0)
        y = box.top() if axes.up % 2 else box.center().y()
        lines.append(QLineF(origin.x() - BEYOND, y, origin.x() + fabric.width() + BEYOND, y))
    return lines
