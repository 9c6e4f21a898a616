"""Which part of the chart is in sight: how large a stitch is drawn, and how far the chart is scrolled."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QAbstractScrollArea, QWidget

from chartmaker.app.chart_frame import ChartFrame
from chartmaker.app.chart_grid import ChartGrid, laid_out
from chartmaker.app.chart_scale import CellSize, cell_sizes, next_size, size_near

if TYPE_CHECKING:
    from PySide6.QtCore import QPointF

    from chartmaker.model.design import Design
    from chartmaker.model.gauge import Gauge

SMALLEST_AT_FIRST, COMFORTABLE = 15, 22
"""Stitch widths, in window units, that a chart is first shown at: the larger where it fits, never below the smaller."""


class ChartSight(QAbstractScrollArea):
    """A scroll area over a chart; what is painted in it is its heirs' business, who repaint when sight changes."""

    def __init__(self, design: Design, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._take_chart(design)

    def _take_chart(self, design: Design) -> None:
        """Lay out another design, and begin with a middling size."""
        self._grid = laid_out(design)
        self._sizes = cell_sizes(design.gauge)
        self._size = self._sizes[len(self._sizes) // 2]

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

    # --- zoom

    def zoom(self, steps: int, at: QPointF | None = None) -> None:
        """Make stitches larger or smaller by steps, about a point that stays where it is."""
        self._take_size(next_size(self._sizes, self._size, steps), at or self.frame.area.center())

    def fit(self) -> None:
        """Show the whole chart as large as it fits."""
        frame, best = self.frame, self._sizes[0]
        for size in self._sizes:
            if replace(frame, size=size).reach == (0, 0):
                best = size
        self._take_size(best, frame.area.center())

    def show_width(self, width_px: float) -> None:
        """Draw stitches this many pixels of the screen wide, to the nearest whole one, about the middle."""
        ratio = self._sizes[-1].height / self._sizes[-1].width
        self._take_size(size_near(width_px, ratio), self.frame.area.center())

    def _take_gauge(self, gauge: Gauge) -> None:
        """Draw stitches in another proportion, about as wide as they were."""
        nearest = self._size.width
        self._sizes = cell_sizes(gauge)
        self._size = min(self._sizes, key=lambda size: abs(size.width - nearest))

    def _fit_at_first(self) -> None:
        """Show the whole width where that leaves stitches large enough to draw on, from the cast-on edge up."""
        frame, best = self.frame, self._sizes[0]
        for size in self._sizes:
            width = size.width / frame.pixel_ratio
            if width <= SMALLEST_AT_FIRST or (width <= COMFORTABLE and not replace(frame, size=size).reach[0]):
                best = size
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

    def _take_size(self, size: CellSize, at: QPointF) -> None:
        before = self.frame
        origin, cell = before.origin, before.cell
        place = ((at.x() - origin.x()) / cell.width(), (at.y() - origin.y()) / cell.height())
        self._size = size
        self._set_reach()
        after, base = self.frame, replace(self.frame, scroll=(0, 0)).origin
        self.horizontalScrollBar().setValue(round(base.x() + place[0] * after.cell.width() - at.x()))
        self.verticalScrollBar().setValue(round(base.y() + place[1] * after.cell.height() - at.y()))
        self._repaint_all()

    # --- scroll

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

    def _scroll_to(self, cell: tuple[int, int]) -> None:
        """Scroll no further than needed to show a cell with a little around it."""
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

    def _repaint_all(self) -> None:
        """Show the chart anew where all of it may have moved."""
        raise NotImplementedError
