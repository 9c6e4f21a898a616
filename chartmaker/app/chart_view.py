"""The chart as it is shown: kept as one picture, so that painting the widget is a blit of that."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QRectF, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QAbstractScrollArea, QWidget

from chartmaker.app import shades
from chartmaker.app.chart_cursor import ChartCursor
from chartmaker.app.chart_grid import laid_out, laid_out_anew
from chartmaker.app.chart_margins import RowMarks, paint_margins, paint_round_numbers
from chartmaker.app.chosen_rounds import crowded_rounds
from chartmaker.app.fabric_painter import FabricPainter
from chartmaker.app.kept_picture import KeptPicture
from chartmaker.app.look import Look
from chartmaker.app.views import view_named
from chartmaker.app.words import tr
from chartmaker.model.counts import rounds_not_meeting

if TYPE_CHECKING:
    from chartmaker.app.chart_frame import ChartFrame
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.model.design import Design


class ChartView(ChartCursor):
    """Shows the chart, its cursor, and what a gesture would make of it; other controls follow its signals."""

    view_moved = Signal()
    """Zoomed or resized: rows stand elsewhere."""
    scrolled = Signal()
    """The same rows in the same size, elsewhere by whole window units."""
    cursor_moved = Signal()
    previewed = Signal()
    """Another design is shown, be it done already or not."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        self._kept = KeptPicture()
        self._has_been_painted = False
        super().__init__(document.design, parent)
        self.document = document
        self.view, self.severity = "shade", 1.0
        """How the chart is seen; the severity is of another colour vision."""
        self.is_alone = False
        """Whether the band at the cursor is worked in alone, and the others are ghosted."""
        self._anchor: int | None = None
        """The row where choosing a run of rounds began; None while the cursor's round alone is chosen."""
        self._shown = document.design
        self._broken = rounds_not_meeting(document.design)
        self._painter = FabricPainter(self._grid, self._look(), self._shown)
        self.current = (0, self._grid.rows[0].offset)
        """The round and stitch that the cursor is on, as chart coordinates."""
        self.setObjectName("chart")
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.setMinimumSize(260, 160)
        document.edited.connect(self._follow_edit)
        document.appraised.connect(self._show_appraisal)
        document.replaced.connect(self._start_over)

    @property
    def shown(self) -> Design:
        """What is shown: the design, or what a gesture would make of it."""
        return self._shown

    # --- what is shown

    def show_view(self, view: str, severity: float = 1.0) -> None:
        """Show the chart in one of the views, by its id."""
        self.view, self.severity = view, severity
        self._painter.take(self._grid, self._look(), self._shown)
        self._repaint_all()

    def _look(self) -> Look:
        return Look.of(self.document.appraisal, self.view, severity=self.severity)

    def work_alone(self, *, is_alone: bool) -> None:
        """Work in the band at the cursor alone, or in all."""
        self.is_alone = is_alone
        self._follow_band()

    def _follow_band(self) -> None:
        """Let the band at the cursor be the one that is worked in, where one is worked in alone."""
        focus = self._grid.rows[self.current[0]].band if self.is_alone else None
        if focus != self._grid.focus:
            self._grid = laid_out(self._shown, focus)
            self._painter.take(self._grid, self._painter.look, self._shown)
            self._repaint_all()

    def _follow_edit(self) -> None:
        self.show_design(self.document.design)

    def show_design(self, design: Design) -> None:
        """Show a design, or what a gesture would make of it, repainting only the rows that differ."""
        before, self._shown = self._shown, design
        broken, are_marked = self._broken, _marked(before) == _marked(design)
        self._grid, rows = laid_out_anew(self._grid, before, self._shown)
        if rows is None or not are_marked:
            self._broken = rounds_not_meeting(design)
        if before.gauge != self._shown.gauge:
            self._take_gauge(self._shown.gauge)
            rows = None
        if rows is not None and (broken != self._broken or not are_marked):
            self._paint_margins_anew()
        if rows == ():
            return
        self.previewed.emit()
        self._painter.take(self._grid, self._painter.look, self._shown)
        if rows is None:
            self._keep_cursor_inside()
            self._set_reach()
            self._repaint_all()
        else:
            self._repaint_rows(rows)

    def _show_appraisal(self) -> None:
        look = self._look()
        if look == self._painter.look:
            return
        rows = look.rows_that_differ(self._painter.look)
        self._painter.take(self._grid, look, self._shown)
        if rows is None:
            self._repaint_all()
        else:
            self._repaint_rows(tuple(row for row in rows if row < len(self._grid.rows)))

    def _start_over(self) -> None:
        self._shown = self.document.design
        self._broken = rounds_not_meeting(self._shown)
        self._anchor = None
        self._take_chart(self._shown)
        self._painter.take(self._grid, self._look(), self._shown)
        self._fit_at_first()
        self.current = (0, self._grid.rows[0].offset)
        self._follow_band()
        self.cursor_moved.emit()

    # --- painting

    def _repaint_all(self) -> None:
        self._kept.forget()
        self.viewport().update()
        self.view_moved.emit()

    def _repaint_rows(self, rows: tuple[int, ...]) -> None:
        """Paint some rows anew, and what of the rows next to them they touch."""
        if not rows:
            return
        self._follow_scroll()
        frame = self.frame
        reach = self._painter.reach * frame.cell.height() + 2
        top, bottom = frame.box(max(rows), 0).top() - reach, frame.box(min(rows), 0).bottom() + reach
        strip = QRectF(frame.area.left(), top, frame.area.width(), bottom - top).intersected(frame.area)
        if not self._kept.is_empty and not strip.isEmpty():
            painter = self._kept.painter()
            self._paint_fabric(painter, frame, strip)
            painter.end()
        self.viewport().update(strip.toAlignedRect())

    def _paint_fabric(self, painter: QPainter, frame: ChartFrame, area: QRectF) -> None:
        painter.fillRect(area, shades.SURROUND)
        self._painter.paint(painter, origin=frame.origin, cell=frame.cell, area=area, pixel_ratio=frame.pixel_ratio)

    def _follow_scroll(self) -> None:
        """Shift what is kept of the chart, and paint what came into sight; drop it where nothing of it is left."""
        frame = self.frame
        if self._kept.is_empty or self._kept.is_at(frame):
            return
        exposed = self._kept.shifted_to(frame)
        if exposed is None:
            self._kept.forget()
            return
        painter = self._kept.painter()
        for part in exposed:
            self._paint_fabric(painter, frame, part)
        self._paint_margins(painter)
        painter.end()

    def _paint_picture(self) -> None:
        frame = self.frame
        painter = self._kept.begin(frame)
        self._paint_fabric(painter, frame, frame.area)
        self._paint_margins(painter)
        painter.end()

    def _paint_margins(self, painter: QPainter) -> None:
        painter.setFont(self.font())
        heading = tr("back, seen through") if view_named(self.view).surface == "back" else tr("live repeat")
        paint_margins(painter, self.frame, self._shown, self.palette(), self._row_marks, heading=heading)

    @property
    def _row_marks(self) -> RowMarks:
        return RowMarks(self.current[0], self.chosen, self._broken, crowded_rounds(self._shown))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Blit the kept picture, and draw the cursor on it."""
        self._has_been_painted = True
        self._follow_scroll()
        if self._kept.is_empty:
            self._paint_picture()
        painter = QPainter(self.viewport())
        self._kept.blit(painter, event.rect())
        self._paint_cursor(painter)

    def _paint_cursor(self, painter: QPainter) -> None:
        """Draw a line round the current cell, and one round the rounds chosen with it."""
        frame, rows = self.frame, self.chosen
        painter.setClipRect(frame.area)
        if len(rows) > 1:
            width = self._grid.rows[rows[0]].width
            _outline(painter, frame.box(rows[-1], width - 1).united(frame.box(rows[0], 0)), 1)
        _outline(painter, frame.box(*self.current), 2 if self.hasFocus() else 1)

    def _move_cursor(self, cell: tuple[int, int], *, anchor: int | None = None) -> None:
        """Put the cursor on a cell, and scroll no further than needed to show it."""
        self.current, self._anchor = cell, anchor
        self._follow_band()
        self._scroll_to(cell)
        self._mark_cursor()
        self.cursor_moved.emit()

    def _paint_margins_anew(self) -> None:
        """Bring names and marks beside the fabric up to date; the fabric stays as it is."""
        self._follow_scroll()
        if not self._kept.is_empty:
            painter = self._kept.painter()
            self._paint_margins(painter)
            painter.end()
        self.viewport().update()

    def _mark_cursor(self) -> None:
        """Show where the cursor is: among the round numbers, and on the fabric, where it is painted on what is kept."""
        if not self._kept.is_empty:
            painter = self._kept.painter()
            painter.setFont(self.font())
            paint_round_numbers(painter, self.frame, self.palette(), self._row_marks)
            painter.end()
        self.viewport().update()

    def _keep_cursor_inside(self) -> None:
        self._anchor = None
        row = min(self.current[0], len(self._grid.rows) - 1)
        at = self._grid.rows[row]
        self.current = (row, min(max(self.current[1], at.offset), at.offset + at.length - 1))
        self._follow_band()

    # --- Qt's own events

    def scrollContentsBy(self, _dx: int, _dy: int) -> None:
        """Show another part of the chart."""
        self.viewport().update()
        self.scrolled.emit()

    def resizeEvent(self, _event: QResizeEvent) -> None:
        """Make room for another size of window; until it is first painted, choose the zoom for it anew."""
        if self._has_been_painted:
            bar = self.verticalScrollBar()
            was_at_end = bar.value() == bar.maximum()
            self._set_reach()
            if was_at_end:
                # The cast-on edge stays in sight when a line above the chart takes room.
                bar.setValue(bar.maximum())
            self._repaint_all()
        else:
            self._fit_at_first()

    def showEvent(self, event: QShowEvent) -> None:
        """Choose the zoom when the size of the window is first known."""
        super().showEvent(event)
        if not self._has_been_painted:
            self._fit_at_first()

    def changeEvent(self, event: QEvent) -> None:
        """Follow the system's colours and fonts."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange) and hasattr(self, "_painter"):
            self._repaint_all()


def _outline(painter: QPainter, box: QRectF, reach: int) -> None:
    """Draw a black and a white line round a box, to show on any shade."""
    for grow, colour in ((reach, QColor(255, 255, 255)), (reach + 1, QColor(0, 0, 0))):
        painter.setPen(colour)
        painter.drawRect(box.adjusted(-grow, -grow, grow - 1, grow - 1).toAlignedRect().adjusted(0, 0, -1, -1))


def _marked(design: Design) -> tuple[list[tuple[str, int]], frozenset[int]]:
    """Give what the margin tells of the bands and of single rounds."""
    return [(band.name, band.times) for band in design.bands], crowded_rounds(design)
