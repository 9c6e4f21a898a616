"""How marks on a photo are drawn: black and white lines side by side, which stand out from any colour."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPainter, QPen, QPolygonF

from chartmaker.app.photo_marks import CORNERS, box_points
from chartmaker.pictures.quadrilateral import in_order
from chartmaker.pictures.target_grid import INNER, Position, patch_outlines

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from chartmaker.app.photo_marks import Marks, Point
    from chartmaker.app.photo_reading import OpenedPhoto, PhotoRead

BLACK, WHITE = QColor(0, 0, 0), QColor(255, 255, 255)
HANDLE = 7.0
"""Radius of a corner's ring."""
GLASS = 150.0
"""Side of the magnifier."""
POWER = 4.0
"""How much it magnifies what the view shows."""


def draw_marks(
    painter: QPainter,
    marks: Marks,
    read: PhotoRead | None,
    *,
    place: Callable[[Point], QPointF],
    in_hand: int,
) -> None:
    """Draw the grid of patches, the corners and the boxes; what is in hand stands out."""
    _draw_grid(painter, marks, read, place)
    for number, (x, y) in enumerate(marks.corners):
        is_held = number == in_hand
        radius = HANDLE + 2 if is_held else HANDLE
        for width, colour in ((4.0 if is_held else 3.0, BLACK), (2.0 if is_held else 1.0, WHITE)):
            painter.setPen(QPen(colour, width))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(place((x, y)), radius, radius)
    for index, box in enumerate(marks.skeins):
        polygon = _polygon(box_points(box), place)
        _draw_outline(painter, polygon, heavy=CORNERS + index == in_hand)
        _draw_number(painter, str(index + 1), polygon.boundingRect().topLeft())


def draw_magnified(  # noqa: PLR0913 - a picture, a place in it, and where both stand
    painter: QPainter, photo: OpenedPhoto, corner: Point, *, rect: QRectF, at: QPointF, scale: float
) -> None:
    """Show the photo's own pixels about a corner, in whichever corner of the view is away from it."""
    reach = max(4, round(GLASS / (2 * POWER * scale)))
    x, y = round(corner[0]), round(corner[1])
    height, width = photo.pixels.shape[:2]
    rows = np.clip(np.arange(y - reach, y + reach), 0, height - 1)
    columns = np.clip(np.arange(x - reach, x + reach), 0, width - 1)
    data = photo.pixels[rows[:, None], columns, :3].tobytes()  # held until it is copied: Qt only looks at it
    image = QImage(data, 2 * reach, 2 * reach, 6 * reach, QImage.Format.Format_RGB888).copy()
    left = rect.left() + 8 if at.x() > rect.center().x() else rect.right() - GLASS - 8
    top = rect.top() + 8 if at.y() > rect.center().y() else rect.bottom() - GLASS - 8
    glass = QRectF(left, top, GLASS, GLASS)
    painter.drawImage(glass, image)
    middle = glass.center()
    for line, colour in ((3.0, BLACK), (1.0, WHITE)):
        painter.setPen(QPen(colour, line))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(glass)
        for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):  # a cross that leaves its middle free
            painter.drawLine(middle + QPointF(5 * dx, 5 * dy), middle + QPointF(30 * dx, 30 * dy))


def _draw_grid(painter: QPainter, marks: Marks, read: PhotoRead | None, place: Callable[[Point], QPointF]) -> None:
    target = read.target if read is not None else None
    try:
        corners = in_order(marks.corners)
    except ValueError:  # corners on their way past each other span nothing
        _draw_outline(painter, _polygon(marks.corners, place), heavy=False)
        return
    _draw_outline(painter, _polygon(corners.tolist(), place), heavy=False)
    position = target.position if target is not None else Position()
    for index, outline in enumerate(patch_outlines(corners, position, inner=INNER).tolist()):
        polygon = _polygon(outline, place)
        is_worst = target is not None and index == int(np.nanargmax(target.residual))
        _draw_outline(painter, polygon, heavy=is_worst)
        if target is not None and not target.is_used[index]:
            painter.drawLine(polygon.at(0), polygon.at(2))
            painter.drawLine(polygon.at(1), polygon.at(3))


def _draw_outline(painter: QPainter, polygon: QPolygonF, *, heavy: bool) -> None:
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for width, colour in ((5.0 if heavy else 3.0, BLACK), (2.5 if heavy else 1.0, WHITE)):
        painter.setPen(QPen(colour, width))
        painter.drawPolygon(polygon)


def _draw_number(painter: QPainter, text: str, at: QPointF) -> None:
    size = painter.fontMetrics().boundingRect(text).size()
    tag = QRectF(at.x(), at.y(), size.width() + 8, size.height() + 2)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(BLACK))
    painter.drawRect(tag)
    painter.setPen(WHITE)
    painter.drawText(tag, Qt.AlignmentFlag.AlignCenter, text)


def _polygon(points: Iterable[Point], place: Callable[[Point], QPointF]) -> QPolygonF:
    return QPolygonF([place((x, y)) for x, y in points])
