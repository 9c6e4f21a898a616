"""Scrolls the chart by itself while a drag is held beyond an edge of what is in sight; the further out, the faster."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, QPointF, Qt, QTimer
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

if TYPE_CHECKING:
    from chartmaker.app.chart_canvas import ChartCanvas

EVERY_MS = 30
SLOWEST, FASTEST = 2, 40
"""How far a step goes, in window units."""
STEP_PER_UNIT = 0.25
"""How much further for every window unit that the pointer is out."""


class EdgeScroll(QObject):
    """Watches a canvas's mouse; it scrolls only while a gesture that the pointer leads is under way."""

    def __init__(self, canvas: ChartCanvas) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        self._at = QPointF()
        """Where the pointer was last."""
        self._held = Qt.MouseButton.NoButton
        """The button that was pressed last, until it is let go."""
        self._timer = QTimer(self, interval=EVERY_MS)
        self._timer.timeout.connect(self._step)
        canvas.viewport().installEventFilter(self)

    @property
    def is_running(self) -> bool:
        """Whether it scrolls."""
        return self._timer.isActive()

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Begin and end with the pointer; the event goes on."""
        if event.type() == QEvent.Type.MouseMove and isinstance(event, QMouseEvent):
            self._at = event.position()
            if not self._is_leading or self._speed == (0, 0):
                self._timer.stop()
            elif not self._timer.isActive():
                self._timer.start()
        elif event.type() == QEvent.Type.MouseButtonPress and isinstance(event, QMouseEvent):
            self._held = event.button()
            self._timer.stop()
        elif event.type() in (QEvent.Type.MouseButtonRelease, QEvent.Type.Hide):
            self._held = Qt.MouseButton.NoButton
            self._timer.stop()
        return False

    @property
    def _is_leading(self) -> bool:
        canvas = self._canvas
        is_busy = canvas.hand.is_busy or canvas.is_choosing or canvas.blocks.tool.is_busy
        return self._held != Qt.MouseButton.NoButton and is_busy

    @property
    def _speed(self) -> tuple[int, int]:
        """How far a step goes to the right and down; rounds are chosen among numbers, which stand still sideways."""
        area, at = self._canvas.frame.area, self._at
        across = 0 if self._canvas.is_choosing else _beyond(at.x(), area.left(), area.right())
        return across, _beyond(at.y(), area.top(), area.bottom())

    def _step(self) -> None:
        """Scroll once, and let the gesture reach what came under the pointer."""
        if not self._is_leading:
            self._timer.stop()
            return
        canvas, none = self._canvas, Qt.MouseButton.NoButton
        bars = canvas.horizontalScrollBar(), canvas.verticalScrollBar()
        before = [bar.value() for bar in bars]
        for bar, by in zip(bars, self._speed, strict=True):
            bar.setValue(bar.value() + by)
        if [bar.value() for bar in bars] != before:
            port, keys = canvas.viewport(), QApplication.keyboardModifiers()
            at = QPointF(port.mapToGlobal(self._at.toPoint()))
            QApplication.sendEvent(port, QMouseEvent(QEvent.Type.MouseMove, self._at, at, none, self._held, keys))


def _beyond(at: float, low: float, high: float) -> int:
    """Give how far a step goes for a place beside a range: below zero before it, 0 within."""
    out = at - low if at < low else max(0.0, at - high)
    far = min(FASTEST, SLOWEST + round(abs(out) * STEP_PER_UNIT))
    return 0 if out == 0 else (-far if out < 0 else far)
