"""The chart as it is shown: kept as one picture, so that painting the widget is a blit of that."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPixmap, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QAbstractScrollArea, QWidget

from chartmaker.app import shades
from chartmaker.app.chart_frame import ChartFrame
from chartmaker.app.chart_grid import ChartGrid, Spot, laid_out, laid_out_anew
from chartmaker.app.chart_margins import RowMarks, paint_margins
from chartmaker.app.chart_scale import cell_sizes
from chartmaker.app.chosen_rounds import run_between
from chartmaker.app.fabric_painter import FabricPainter, Look
from chartmaker.model.counts import rounds_not_meeting

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.model.design import Design

SMALLEST_AT_FIRST, COMFORTABLE = 15, 22
"""Stitch widths, in window units, that a chart is first shown at: the larger where it fits, never below the smaller."""


class ChartView(QAbstractScrollArea):
    """Shows the chart, its cursor, and what a gesture would make of it; other controls follow its signals."""

    view_moved = Signal()
    """Scrolled, zoomed or resized: rows stand elsewhere."""
    cursor_moved = Signal()

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document = document
        self.current = (0, 0)
        """The round and stitch that the cursor is on, as chart coordinates."""
        self.view = "shade"
        self._anchor: int | None = None
        """The row where choosing a run of rounds began; None while the cursor's round alone is chosen."""
        self._shown = document.design
        self._broken = rounds_not_meeting(document.design)
        self._grid = laid_out(document.design)
        self._sizes = cell_sizes(document.design.gauge)
        self._size = self._sizes[len(self._sizes) // 2]
        self._painter = FabricPainter(self._grid, Look.of(document.appraisal, self.view))
        self._picture = QPixmap()
        self._has_been_painted = False
        self.current = (0, self._grid.rows[0].offset)
        self.setObjectName("chart")
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.setMinimumSize(260, 160)
        document.edited.connect(self._follow_edit)
        document.appraised.connect(self._show_appraisal)
        document.replaced.connect(self._start_over)

    # --- where things stand

    @property
    def frame(self) -> ChartFrame:
        """Zoom and scroll as they are."""
        port = self.viewport()
        return ChartFrame(
            self._grid,
            self._size,
            port.devicePixelRatioF(),
            (port.width(), port.height()),
            (self.horizontalScrollBar().value(), self.verticalScrollBar().value()),
        )

    @property
    def grid(self) -> ChartGrid:
        """The layout of what is shown."""
        return self._grid

    def spot_at(self, cell: tuple[int, int]) -> Spot | None:
        """Give the stitch shown at chart coordinates."""
        return self._grid.spot(*cell)

    @property
    def chosen(self) -> range:
        """The rows that are worked on together: the cursor's, or a run within a band that ends there."""
        return run_between(self._grid, self._anchor, self.current[0])

    def go_to(self, row: int, stitch: int = 0) -> None:
        """Make a stitch of the live repeat the current one, and bring it into sight."""
        row = min(max(row, 0), len(self._grid.rows) - 1)
        stitch = min(max(stitch, 0), self._grid.rows[row].length - 1)
        self._move_cursor((row, self._grid.column_of(row, stitch)))

    def choose(self, rows: range) -> None:
        """Choose a run of rounds, the cursor in the last of them at the stitch where it is."""
        self._anchor = None
        self.go_to(rows[0], self._stitch_near())
        self.reach_to(rows[-1])

    def reach_to(self, row: int) -> None:
        """Choose the rounds from where choosing began, or the cursor's, to a row, as far as the band goes."""
        anchor = self.current[0] if self._anchor is None else self._anchor
        run = run_between(self._grid, anchor, min(max(row, 0), len(self._grid.rows) - 1))
        row = run.start if anchor != run.start else run.stop - 1
        stitch = min(self._stitch_near(), self._grid.rows[row].length - 1)
        self._move_cursor((row, self._grid.column_of(row, stitch)), anchor=anchor)

    def _stitch_near(self) -> int:
        row, column = self.current
        return max(0, column - self._grid.rows[row].offset) if row < len(self._grid.rows) else 0

    # --- what is shown

    def show_view(self, view: str) -> None:
        """Show shades, grey values or symbols."""
        self.view = view
        self._painter.take(self._grid, Look.of(self.document.appraisal, view))
        self._repaint_all()

    def zoom(self, steps: int, at: QPointF | None = None) -> None:
        """Make stitches larger or smaller by steps, about a point that stays where it is."""
        index = self._sizes.index(self._size) + steps
        self._take_size(min(max(index, 0), len(self._sizes) - 1), at or self.frame.area.center())

    def fit(self) -> None:
        """Show the whole chart as large as it fits."""
        frame, best = self.frame, 0
        for index, size in enumerate(self._sizes):
            if replace(frame, size=size).reach == (0, 0):
                best = index
        self._take_size(best, frame.area.center())

    def _fit_at_first(self) -> None:
        """Show the whole width where that leaves stitches large enough to draw on, from the cast-on edge up."""
        frame, best = self.frame, 0
        for index, size in enumerate(self._sizes):
            width = size.width / frame.pixel_ratio
            if width <= SMALLEST_AT_FIRST or (width <= COMFORTABLE and not replace(frame, size=size).reach[0]):
                best = index
        self._take_size(best, frame.area.center())
        self.verticalScrollBar().setValue(self.verticalScrollBar().maximum())
        self._show_live_repeat()

    def _show_live_repeat(self) -> None:
        """Scroll sideways so that the live repeat stands in the middle, or its stitch 1 at the right if it is wider."""
        frame, bar = self.frame, self.horizontalScrollBar()
        left, right = frame.box(0, self._grid.width - 1).left(), frame.box(0, 0).right()
        if right - left < frame.area.width():
            bar.setValue(bar.value() + round((left + right) / 2 - frame.area.center().x()))
        else:
            bar.setValue(bar.value() + round(right + 4 * frame.cell.width() - frame.area.right()))

    def _take_size(self, index: int, at: QPointF) -> None:
        before = self.frame
        origin, cell = before.origin, before.cell
        place = ((at.x() - origin.x()) / cell.width(), (at.y() - origin.y()) / cell.height())
        self._size = self._sizes[index]
        self._set_reach()
        after, base = self.frame, replace(self.frame, scroll=(0, 0)).origin
        self.horizontalScrollBar().setValue(round(base.x() + place[0] * after.cell.width() - at.x()))
        self.verticalScrollBar().setValue(round(base.y() + place[1] * after.cell.height() - at.y()))
        self._repaint_all()

    def _set_reach(self) -> None:
        frame = self.frame
        for bar, reach, page, step in zip(
            (self.horizontalScrollBar(), self.verticalScrollBar()),
            frame.reach,
            (int(frame.area.width()), int(frame.area.height())),
            (frame.cell.width(), frame.cell.height()),
            strict=True,
        ):
            bar.setRange(0, reach)
            bar.setPageStep(max(1, page))
            bar.setSingleStep(max(8, round(3 * step)))

    def _follow_edit(self) -> None:
        self.show_design(self.document.design)

    def show_design(self, design: Design) -> None:
        """Show a design, or what a gesture would make of it, repainting only the rows that differ."""
        before, self._shown = self._shown, design
        broken = self._broken
        if before.bands is not design.bands:
            self._broken = rounds_not_meeting(design)
        self._grid, rows = laid_out_anew(self._grid, before, self._shown)
        if before.gauge != self._shown.gauge:
            nearest = self._size.width
            self._sizes = cell_sizes(self._shown.gauge)
            self._size = min(self._sizes, key=lambda size: abs(size.width - nearest))
            rows = None
        if rows is not None and (broken != self._broken or _names(before) != _names(design)):
            self._paint_margins_anew()
        if rows == ():
            return
        self._painter.take(self._grid, self._painter.look)
        if rows is None:
            self._keep_cursor_inside()
            self._set_reach()
            self._repaint_all()
        else:
            self._repaint_rows(rows)

    def _show_appraisal(self) -> None:
        look = Look.of(self.document.appraisal, self.view)
        if look != self._painter.look:
            self._painter.take(self._grid, look)
            self._repaint_all()

    def _start_over(self) -> None:
        self._shown = self.document.design
        self._broken = rounds_not_meeting(self._shown)
        self._anchor = None
        self._grid = laid_out(self._shown)
        self._sizes = cell_sizes(self._shown.gauge)
        self._size = self._sizes[len(self._sizes) // 2]
        self._painter.take(self._grid, Look.of(self.document.appraisal, self.view))
        self._fit_at_first()
        self.current = (0, self._grid.rows[0].offset)
        self.cursor_moved.emit()

    # --- painting

    def _repaint_all(self) -> None:
        self._picture = QPixmap()
        self.viewport().update()
        self.view_moved.emit()

    def _repaint_rows(self, rows: tuple[int, ...]) -> None:
        frame = self.frame
        top = frame.box(max(rows), 0).top() - 2
        bottom = frame.box(min(rows), 0).bottom() + 2
        strip = QRectF(frame.area.left(), top, frame.area.width(), bottom - top).intersected(frame.area)
        if not self._picture.isNull() and not strip.isEmpty():
            painter = QPainter(self._picture)
            self._paint_fabric(painter, frame, strip)
            painter.end()
        self.viewport().update(strip.toAlignedRect())

    def _paint_fabric(self, painter: QPainter, frame: ChartFrame, area: QRectF) -> None:
        painter.fillRect(area, shades.SURROUND)
        self._painter.paint(painter, origin=frame.origin, cell=frame.cell, area=area, pixel_ratio=frame.pixel_ratio)

    def _fresh_picture(self) -> QPixmap:
        frame = self.frame
        picture = QPixmap(self.viewport().size() * frame.pixel_ratio)
        picture.setDevicePixelRatio(frame.pixel_ratio)
        painter = QPainter(picture)
        painter.setFont(self.font())
        self._paint_fabric(painter, frame, frame.area)
        paint_margins(painter, frame, self._shown, self.palette(), self._row_marks)
        painter.end()
        return picture

    @property
    def _row_marks(self) -> RowMarks:
        return RowMarks(self.current[0], self.chosen, self._broken)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Blit the kept picture, and draw the cursor on it."""
        self._has_been_painted = True
        if self._picture.isNull():
            self._picture = self._fresh_picture()
        painter = QPainter(self.viewport())
        ratio = self._picture.devicePixelRatio()
        part = event.rect()
        source = QRect(part.topLeft() * ratio, part.size() * ratio)
        painter.drawPixmap(part, self._picture, source)
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
        self._scroll_to(cell)
        self._paint_margins_anew()
        self.cursor_moved.emit()

    def _paint_margins_anew(self) -> None:
        """Bring names and marks beside the fabric up to date; the fabric stays as it is."""
        if not self._picture.isNull():
            painter = QPainter(self._picture)
            painter.setFont(self.font())
            paint_margins(painter, self.frame, self._shown, self.palette(), self._row_marks)
            painter.end()
        self.viewport().update()

    def _scroll_to(self, cell: tuple[int, int]) -> None:
        frame = self.frame
        box, area = frame.box(*cell), frame.area.adjusted(12, 12, -12, -12)
        for bar, low, high, start, end in (
            (self.horizontalScrollBar(), box.left(), box.right(), area.left(), area.right()),
            (self.verticalScrollBar(), box.top(), box.bottom(), area.top(), area.bottom()),
        ):
            if low < start:
                bar.setValue(bar.value() - round(start - low))
            elif high > end:
                bar.setValue(bar.value() + round(high - end))

    def _keep_cursor_inside(self) -> None:
        self._anchor = None
        row = min(self.current[0], len(self._grid.rows) - 1)
        at = self._grid.rows[row]
        self.current = (row, min(max(self.current[1], at.offset), at.offset + at.length - 1))

    # --- Qt's own events

    def scrollContentsBy(self, _dx: int, _dy: int) -> None:
        """Show another part of the chart."""
        self._repaint_all()

    def resizeEvent(self, _event: QResizeEvent) -> None:
        """Make room for another size of window; until it is first painted, choose the zoom for it anew."""
        if self._has_been_painted:
            self._set_reach()
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
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange) and hasattr(self, "_picture"):
            self._repaint_all()


def _outline(painter: QPainter, box: QRectF, reach: int) -> None:
    """Draw a black and a white line round a box, to show on any shade."""
    for grow, colour in ((reach, QColor(255, 255, 255)), (reach + 1, QColor(0, 0, 0))):
        painter.setPen(colour)
        painter.drawRect(box.adjusted(-grow, -grow, grow - 1, grow - 1).toAlignedRect().adjusted(0, 0, -1, -1))


def _names(design: Design) -> list[tuple[str, int]]:
    """Give what the margin tells of the bands."""
    return [(band.name, band.times) for band in design.bands]
