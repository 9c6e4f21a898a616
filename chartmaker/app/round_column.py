"""A column beside the chart with one entry for each round, standing level with the chart's rows."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QAction, QContextMenuEvent, QFontMetricsF, QPainter, QPaintEvent, QPalette, QWheelEvent
from PySide6.QtWidgets import QWidget

from chartmaker.app.chart_frame import TOP
from chartmaker.app.chart_lines import SMALLEST_LINES_PX
from chartmaker.app.row_menu import row_menu

if TYPE_CHECKING:
    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.app.chart_frame import ChartFrame

OVERLAP = 10
"""How far, in window units, an entry may reach beyond its row."""
NARROWEST_HEADING = 72
"""A heading is set narrower by so much at the most, in per cent of its usual width."""
LOWEST_TEXT = 12
"""Rows lower than this, in window units, carry no text."""


class RoundColumn(QWidget):
    """Paints a heading and, level with each round in sight, what a subclass has to say about it."""

    menu_opened = Signal(object)
    """The menu of a round, about to be shown."""
    headings: tuple[tuple[str, float, float], ...] = ()
    """Text, left and width of each heading."""

    def __init__(self, canvas: ChartCanvas, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.canvas = canvas
        self.document = canvas.document
        self._frame_now: ChartFrame | None = None
        """The frame while painting, so that it is not made anew for every entry."""
        self.row_actions: tuple[tuple[QAction, ...], ...] = ()
        """Groups of the menu of a round."""
        self._painted: dict[int, object] = {}
        """What each round's entry looked like when it was last painted."""
        self._scroll_seen = canvas.verticalScrollBar().value()
        # What is not filled by itself cannot be shifted.
        self.setAutoFillBackground(True)
        canvas.scrolled.connect(self._follow_scroll)
        canvas.view_moved.connect(self.update)
        for signal in (canvas.cursor_moved, self.document.appraised, self.document.edited):
            signal.connect(self.follow)

    def look_of(self, row: int) -> object:
        """Give all that the look of a round's entry depends on, beside the cursor and the rounds chosen."""
        raise NotImplementedError

    def follow(self) -> None:
        """Paint those entries anew that look otherwise than when they were painted."""
        self._frame_now = frame = self.canvas.frame
        for row in self._rows(frame):
            if self._painted.get(row) != self._whole_look(row):
                self.update(self.row_box(row).toAlignedRect().adjusted(0, -OVERLAP, 0, OVERLAP))
        self._frame_now = None

    def _whole_look(self, row: int) -> object:
        canvas = self.canvas
        return row == canvas.current[0], row in canvas.chosen, self.look_of(row)

    @staticmethod
    def _rows(frame: ChartFrame) -> range:
        """Give the rounds in sight that have an entry; scrolling leaves them the same."""
        seen, step = frame.rows_in_sight(), 1 if frame.cell.height() >= SMALLEST_LINES_PX else 2
        return range(seen.start + -seen.start % step, seen.stop, step)

    def paint_row(self, painter: QPainter, row: int, box: QRectF) -> None:
        """Paint one round's entry; `box` is as wide as the column and as high as the row."""
        raise NotImplementedError

    def row_at(self, y: float) -> int | None:
        """Give the round level with a height in the column, or None beside the chart."""
        row = self.canvas.frame.cell_at(QPointF(0, y))[0]
        in_sight = self.canvas.frame.rows_in_sight()
        return row if row in in_sight else None

    def row_box(self, row: int) -> QRectF:
        """Give where a round's entry stands."""
        top, height = (self._frame_now or self.canvas.frame).row_span(row)
        return QRectF(0, top, self.width(), height)

    def _follow_scroll(self) -> None:
        """Shift what is shown, so that only what came into sight is painted."""
        now = self.canvas.verticalScrollBar().value()
        self.scroll(0, self._scroll_seen - now, QRect(0, TOP, self.width(), int(self.canvas.frame.area.height())))
        self._scroll_seen = now

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the heading and the rounds in sight, as far as they are asked for."""
        painter = QPainter(self)
        painter.setPen(self.palette().color(QPalette.ColorRole.WindowText))
        for text, left, width in self.headings:
            write_heading(painter, text, QRectF(left, 0, width, TOP))
        self._frame_now = frame = self.canvas.frame
        painter.setClipRect(QRectF(0, TOP, self.width(), frame.area.height()))
        rows = [row for row in frame.rows_in_sight() if self._is_asked_for(row, event)]
        mark = self.palette().color(QPalette.ColorRole.Highlight)
        mark.setAlpha(46)
        for row in {self.canvas.current[0], *self.canvas.chosen}.intersection(rows):
            painter.fillRect(self.row_box(row), mark)
        for row in self._rows(frame):
            if row in rows:
                self.paint_row(painter, row, self.row_box(row))
                self._painted[row] = self._whole_look(row)
        self._frame_now = None

    def _is_asked_for(self, row: int, event: QPaintEvent) -> bool:
        return event.region().intersects(self.row_box(row).toAlignedRect().adjusted(0, -OVERLAP, 0, OVERLAP))

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Scroll the chart, and with it this column."""
        self.canvas.verticalScrollBar().event(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Offer what can be done with the current round, or the run that is chosen."""
        menu = row_menu(self, self.row_actions)
        self.menu_opened.emit(menu)
        menu.popup(event.globalPos())


def write_heading(painter: QPainter, text: str, box: QRectF) -> None:
    """Write a heading in the middle of its column, narrower where it is too long for it, and cut short at worst."""
    painter.save()
    needed = QFontMetricsF(painter.font()).horizontalAdvance(text)
    if needed > box.width():
        font = painter.font()
        font.setStretch(max(NARROWEST_HEADING, int(100 * box.width() / needed)))
        painter.setFont(font)
        text = QFontMetricsF(font).elidedText(text, Qt.TextElideMode.ElideRight, box.width())
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
    painter.restore()
