"""What was last painted of the chart, kept so that painting is a blit, and scrolling shifts it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRect, QRectF
from PySide6.QtGui import QPainter, QPixmap

if TYPE_CHECKING:
    from chartmaker.app.chart_frame import ChartFrame


class KeptPicture:
    """One picture of the canvas; empty until something is painted into it, and again after `forget`."""

    def __init__(self) -> None:
        self._pixmap = QPixmap()
        self._frame: ChartFrame | None = None

    @property
    def is_empty(self) -> bool:
        """Whether nothing is kept."""
        return self._pixmap.isNull()

    def forget(self) -> None:
        """Drop it, since everything may look otherwise."""
        self._pixmap = QPixmap()
        self._frame = None

    def begin(self, frame: ChartFrame) -> QPainter:
        """Give a painter on a new picture of this frame, all of which is to be painted."""
        width, height = frame.window
        self._pixmap = QPixmap(round(width * frame.pixel_ratio), round(height * frame.pixel_ratio))
        self._pixmap.setDevicePixelRatio(frame.pixel_ratio)
        self._frame = frame
        return QPainter(self._pixmap)

    def painter(self) -> QPainter:
        """Give a painter on what is kept."""
        return QPainter(self._pixmap)

    def is_at(self, frame: ChartFrame) -> bool:
        """Tell whether it is scrolled as a frame is."""
        return self._frame is not None and self._frame.scroll == frame.scroll

    def shifted_to(self, frame: ChartFrame) -> list[QRectF] | None:
        """Shift the fabric to where a frame has it, and give what came into sight; None where all is to be painted.

        That is so after another zoom or size of window, where nothing stays in sight, and on screens whose pixels
        are no whole part of a window unit.
        """
        before = self._frame
        if before is None or self.is_empty or not _is_shift(before, frame):
            return None
        ratio = int(frame.pixel_ratio)
        moved: QPointF = (frame.origin - before.origin) * ratio
        dx, dy = round(moved.x()), round(moved.y())
        area = frame.area
        port = QRect(*(round(side * ratio) for side in (area.x(), area.y(), area.width(), area.height())))
        if abs(dx) >= port.width() or abs(dy) >= port.height():
            return None
        self._frame = frame
        self._pixmap.scroll(dx, dy, port)
        return _exposed(area, dx / ratio, dy / ratio)

    def blit(self, painter: QPainter, part: QRect) -> None:
        """Paint a part of the canvas, in window units."""
        ratio = self._pixmap.devicePixelRatio()
        painter.drawPixmap(part, self._pixmap, QRect(part.topLeft() * ratio, part.size() * ratio))


def _is_shift(before: ChartFrame, after: ChartFrame) -> bool:
    return (
        after.pixel_ratio == int(after.pixel_ratio)
        and (before.size, before.pixel_ratio, before.window) == (after.size, after.pixel_ratio, after.window)
        and before.grid.codes.shape == after.grid.codes.shape
    )


def _exposed(area: QRectF, dx: float, dy: float) -> list[QRectF]:
    """Give the strips of an area that a shift of what was in it leaves bare."""
    strips = []
    if dx:
        strips.append(QRectF(area.left() if dx > 0 else area.right() + dx, area.top(), abs(dx), area.height()))
    if dy:
        strips.append(QRectF(area.left(), area.top() if dy > 0 else area.bottom() + dy, area.width(), abs(dy)))
    return strips
