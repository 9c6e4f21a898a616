"""The line at the foot of the window that tells of the stitch under the pointer or the cursor."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QSizePolicy

from chartmaker.app.words import plain_tip

if TYPE_CHECKING:
    from PySide6.QtGui import QFontMetrics, QPaintEvent

    from chartmaker.app.chart_page import ChartPage

BETWEEN = "  ·  "
"""Between the parts of what is told of a stitch."""


class StitchLine(QLabel):
    """Holds the whole text; where it has no room, its longest parts are cut short, and the tool tip has it all."""

    def __init__(self) -> None:
        super().__init__()
        self._chart: ChartPage | None = None
        self._told: tuple[int, int] | None = None
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setContentsMargins(8, 0, 0, 0)
        # Long words are cut short rather than make the window wider.
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def follow(self, chart: ChartPage) -> None:
        """Tell of the chart's stitches from now on."""
        self._chart = chart
        chart.canvas.hovered.connect(self.tell)
        chart.canvas.document.appraised.connect(self._tell_again)

    def tell(self, cell: tuple[int, int] | None) -> None:
        """Tell of the stitch at a chart cell, and first what keeps the motif in hand from it."""
        from chartmaker.app.chart_words import stitch_words
        from chartmaker.app.findings_strip import sentence

        self._told = cell
        if self._chart is None:
            return
        words = stitch_words(self._chart.canvas, cell) if cell else ""
        held = self._chart.motifs.words_at(cell) if cell else ""
        words = f"! {sentence(held)}  {words}" if held else words
        self.setText(words)
        self.setToolTip(plain_tip(words) if words else "")

    def _tell_again(self) -> None:
        """What was drawn under the pointer is told without its moving; a gesture under way tells for itself."""
        if self._chart is None or self._told is None or self._chart.canvas.hand.is_busy:
            return
        self.tell(self._told if self._told[0] < len(self._chart.canvas.grid.rows) else None)

    @property
    def shown(self) -> str:
        """The text as far as it has room."""
        return fitted(self.text(), self.fontMetrics(), self.contentsRect().width())

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Write what has room."""
        from PySide6.QtGui import QPainter

        painter = QPainter(self)
        painter.drawText(self.contentsRect(), Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, self.shown)


def fitted(text: str, metrics: QFontMetrics, width: int) -> str:
    """Cut a text to a width in window units: its longest parts end in dots, so that something stays of each."""
    if metrics.horizontalAdvance(text) <= width:
        return text
    parts = text.split(BETWEEN)
    room = width - metrics.horizontalAdvance(BETWEEN) * (len(parts) - 1)
    most = _most_each([metrics.horizontalAdvance(part) for part in parts], room)
    cut = BETWEEN.join(metrics.elidedText(part, Qt.TextElideMode.ElideRight, most) for part in parts)
    return metrics.elidedText(cut, Qt.TextElideMode.ElideRight, width)


def _most_each(widths: list[int], room: int) -> int:
    """Give the width that no part may go beyond so that all of them together have room."""
    for count, wide in enumerate(sorted(widths)):
        share = room // (len(widths) - count)
        if wide > share:
            return max(0, share)
        room -= wide
    return max(widths)
