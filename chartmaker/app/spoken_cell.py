"""Speaks the stitch at the chart's cursor to whoever listens with a screen reader."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent

from chartmaker.app.chart_words import spoken_words

if TYPE_CHECKING:
    from chartmaker.app.chart_canvas import ChartCanvas


class SpokenCell(QObject):
    """Keeps the chart's accessible description true to the cursor, and announces it where the chart has the keys."""

    def __init__(self, canvas: ChartCanvas) -> None:
        super().__init__(canvas)
        self._canvas = canvas
        document = canvas.document
        for signal in (
            canvas.cursor_moved,
            canvas.blocks.changed,
            document.appraised,
            document.replaced,
            canvas.units.changed,
        ):
            signal.connect(self.tell)
        self.tell()

    def tell(self) -> None:
        """Describe the stitch at the cursor, and say it where it is another than was described."""
        canvas = self._canvas
        if canvas.current[0] >= len(canvas.grid.rows):
            return
        words = spoken_words(canvas)
        if words == canvas.accessibleDescription():
            return
        canvas.setAccessibleDescription(words)
        if canvas.hasFocus():
            announce(canvas, words)


def announce(canvas: ChartCanvas, words: str) -> None:
    """Ask the screen reader to say something now, in place of what it is saying: the cursor has gone on."""
    event = QAccessibleAnnouncementEvent(canvas, words)
    event.setPoliteness(QAccessible.AnnouncementPoliteness.Assertive)
    QAccessible.updateAccessibility(event)
