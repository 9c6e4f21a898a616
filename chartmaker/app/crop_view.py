"""A picture in which the part that counts is framed; the frame is dragged by its corners, its edges or as a whole."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import QColor, QImage, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from chartmaker.app.shades import SURROUND
from chartmaker.app.words import tr

REACH = 8.0
"""How near to an edge the pointer takes hold of it, in window units."""
HANDLE = 7.0
"""Side of a handle."""
Grip = tuple[int, int]
"""Which edges are held: -1 left or top, 1 right or bottom, 0 neither; (0, 0) is the frame as a whole."""
SHAPES = {
    (-1, -1): Qt.CursorShape.SizeFDiagCursor,
    (1, 1): Qt.CursorShape.SizeFDiagCursor,
    (1, -1): Qt.CursorShape.SizeBDiagCursor,
    (-1, 1): Qt.CursorShape.SizeBDiagCursor,
    (-1, 0): Qt.CursorShape.SizeHorCursor,
    (1, 0): Qt.CursorShape.SizeHorCursor,
    (0, -1): Qt.CursorShape.SizeVerCursor,
    (0, 1): Qt.CursorShape.SizeVerCursor,
    (0, 0): Qt.CursorShape.SizeAllCursor,
}


class CropView(QWidget):
    """Shows a picture with its frame, in pixels of the picture as it was opened."""

    cropped = Signal(QRect)
    """The frame as it is being dragged."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._image = QImage()
        self._size = QSize()
        self._frame = QRect()
        self._grip: Grip | None = None
        self._pressed = QPoint()
        self._before = QRect()
        self.setMouseTracking(True)
        self.setMinimumSize(160, 110)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(tr("Picture with the part that counts framed"))
        self.setToolTip(tr("Drag the frame's corners or edges, or all of it; a double click frames the whole picture"))

    @property
    def frame(self) -> QRect:
        """The part that counts."""
        return self._frame

    @property
    def is_busy(self) -> bool:
        """Whether the frame is being dragged."""
        return self._grip is not None

    def take_picture(self, image: QImage, size: QSize) -> None:
        """Show a picture; `size` is what it measured when it was opened."""
        self._image, self._size, self._grip = image, size, None
        self._frame = QRect(QPoint(0, 0), size)
        self.update()

    def show_frame(self, frame: QRect) -> None:
        """Frame another part."""
        self._frame = frame
        self.update()

    def drop(self) -> None:
        """Drop the drag under way: the frame is where it was."""
        if self._grip is not None:
            self._grip = None
            self._take(self._before)

    # --- from the picture to the window and back

    @property
    def _area(self) -> QRectF:
        """Where the picture stands."""
        room = QRectF(self.rect()).adjusted(HANDLE, HANDLE, -HANDLE, -HANDLE)
        size = QSizeF(self._size).scaled(room.size(), Qt.AspectRatioMode.KeepAspectRatio)
        corner = QPointF(room.center().x() - size.width() / 2, room.center().y() - size.height() / 2)
        return QRectF(corner, size)

    def shown(self, frame: QRect) -> QRectF:
        """Give where a part of the picture stands in this control."""
        area = self._area
        scale = area.width() / max(1, self._size.width())
        return QRectF(
            area.left() + frame.left() * scale,
            area.top() + frame.top() * scale,
            frame.width() * scale,
            frame.height() * scale,
        )

    def _grip_at(self, at: QPointF) -> Grip | None:
        box = self.shown(self._frame)
        if not box.adjusted(-REACH, -REACH, REACH, REACH).contains(at):
            return None
        return _side(at.x(), box.left(), box.right()), _side(at.y(), box.top(), box.bottom())

    # --- Qt's own events

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the frame; another button during a drag drops it."""
        if self._grip is not None:
            self.drop()
        elif event.button() == Qt.MouseButton.LeftButton and not self._image.isNull():
            self._grip = self._grip_at(event.position())
            self._pressed, self._before = event.position().toPoint(), QRect(self._frame)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag the frame, or show what would be held here."""
        if self._grip is not None:
            self._take(self._dragged(self._grip, event.position().toPoint() - self._pressed))
            return
        grip = None if self._image.isNull() else self._grip_at(event.position())
        self.setCursor(Qt.CursorShape.ArrowCursor if grip is None else SHAPES[grip])

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let the frame go."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._grip = None

    def mouseDoubleClickEvent(self, _event: QMouseEvent) -> None:
        """Frame the whole picture."""
        if not self._image.isNull():
            self._take(QRect(QPoint(0, 0), self._size))

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the picture, what lies outside the frame veiled, and the frame with its handles."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), SURROUND)
        if self._image.isNull():
            painter.setPen(QColor(255, 255, 255))
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, tr("No picture yet"))
            return
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        area, box = self._area, self.shown(self._frame)
        painter.drawImage(area, self._image)
        veil = QColor(SURROUND.red(), SURROUND.green(), SURROUND.blue(), 200)
        for outside in _around(area, box):
            painter.fillRect(outside, veil)
        for width, colour in ((3, QColor(0, 0, 0)), (1, QColor(255, 255, 255))):
            painter.setPen(QPen(colour, width))
            painter.drawRect(box)
        painter.setPen(QPen(QColor(0, 0, 0), 1))
        painter.setBrush(QColor(255, 255, 255))
        for x in (box.left(), box.center().x(), box.right()):
            for y in (box.top(), box.center().y(), box.bottom()):
                if (x, y) != (box.center().x(), box.center().y()):
                    painter.drawRect(QRectF(x - HANDLE / 2, y - HANDLE / 2, HANDLE, HANDLE))

    # --- dragging

    def _dragged(self, grip: Grip, moved: QPoint) -> QRect:
        """Give the frame that a drag leads to: inside the picture, and at least a pixel wide and high."""
        scale = max(1, self._size.width()) / max(1e-6, self._area.width())
        is_whole, before = grip == (0, 0), self._before
        across = moved.x() * scale if grip[0] or is_whole else 0
        down = moved.y() * scale if grip[1] or is_whole else 0
        left, right = _moved(grip[0], (before.left(), before.width()), across, self._size.width())
        top, bottom = _moved(grip[1], (before.top(), before.height()), down, self._size.height())
        return QRect(left, top, right - left, bottom - top)

    def _take(self, frame: QRect) -> None:
        if frame != self._frame:
            self.show_frame(frame)
            self.cropped.emit(frame)


def _side(at: float, low: float, high: float) -> int:
    """Tell which of two edges is near: -1 the lower, 1 the upper, 0 neither."""
    near_low, near_high = abs(at - low), abs(at - high)
    if min(near_low, near_high) > REACH:
        return 0
    return -1 if near_low <= near_high else 1


def _moved(side: int, span: tuple[int, int], by: float, room: int) -> tuple[int, int]:
    """Move one end of a span (start, length) within a room, or both where no side is held."""
    start, end = span[0], span[0] + span[1]
    if side < 0:
        return min(max(round(start + by), 0), end - 1), end
    if side > 0:
        return start, max(min(round(end + by), room), start + 1)
    moved = min(max(round(start + by), 0), room - span[1])
    return moved, moved + span[1]


def _around(area: QRectF, box: QRectF) -> tuple[QRectF, ...]:
    """Give the four strips of an area that lie outside a box."""
    return (
        QRectF(area.topLeft(), QPointF(area.right(), box.top())),
        QRectF(QPointF(area.left(), box.bottom()), area.bottomRight()),
        QRectF(QPointF(area.left(), box.top()), box.bottomLeft()),
        QRectF(box.topRight(), QPointF(area.right(), box.bottom())),
    )
