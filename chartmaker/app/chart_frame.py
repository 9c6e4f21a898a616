"""How the chart lies in its window: margins, zoom and scroll, and the way from a point to a cell and back."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSizeF

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.app.chart_scale import CellSize

LEFT, TOP, RIGHT, BOTTOM = 26, 26, 48, 24
"""Margins for band names, the heading, signs and round numbers, and stitch numbers, in window units."""
AIR = 10
"""Kept free around the fabric, in window units."""


@dataclass(frozen=True, slots=True)
class ChartFrame:
    """One state of zoom and scroll."""

    grid: ChartGrid
    size: CellSize
    pixel_ratio: float
    window: tuple[int, int]
    """Width and height of the canvas."""
    scroll: tuple[int, int]
    cell: QSizeF = field(init=False)
    """A stitch in window units: whole pixels of the screen."""
    area: QRectF = field(init=False)
    """Where fabric may show."""
    origin: QPointF = field(init=False)
    """Where the picture's top left stands; a chart smaller than the window stands in its middle."""

    def __post_init__(self) -> None:
        width, height = self.window
        cell = QSizeF(self.size.width / self.pixel_ratio, self.size.height / self.pixel_ratio)
        area = QRectF(LEFT, TOP, max(0, width - LEFT - RIGHT), max(0, height - TOP - BOTTOM))
        object.__setattr__(self, "cell", cell)
        object.__setattr__(self, "area", area)
        object.__setattr__(self, "origin", self._origin())

    @property
    def fabric(self) -> QSizeF:
        """The whole chart in window units."""
        return QSizeF(self.grid.columns * self.cell.width(), len(self.grid.rows) * self.cell.height())

    @property
    def reach(self) -> tuple[int, int]:
        """How far the chart can be scrolled."""
        fabric, area = self.fabric, self.area
        return (
            max(0, int(fabric.width() + 2 * AIR - area.width()) + 1),
            max(0, int(fabric.height() + 2 * AIR - area.height()) + 1),
        )

    def _origin(self) -> QPointF:
        area, fabric, reach = self.area, self.fabric, self.reach
        x = AIR - self.scroll[0] if reach[0] else (area.width() - fabric.width()) / 2
        y = AIR - self.scroll[1] if reach[1] else (area.height() - fabric.height()) / 2
        return QPointF(self._snapped(area.x() + x), self._snapped(area.y() + y))

    def _snapped(self, length: float) -> float:
        return round(length * self.pixel_ratio) / self.pixel_ratio

    def cell_at(self, point: QPointF) -> tuple[int, int]:
        """Give the chart coordinates under a point; they may lie outside the chart."""
        origin, cell = self.origin, self.cell
        return self.grid.cell(
            int((point.y() - origin.y()) // cell.height()), int((point.x() - origin.x()) // cell.width())
        )

    def box(self, row: int, column: int) -> QRectF:
        """Give where a cell is drawn."""
        line, place = self.grid.place(row, column)
        origin, cell = self.origin, self.cell
        return QRectF(origin.x() + place * cell.width(), origin.y() + line * cell.height(), cell.width(), cell.height())

    def row_span(self, row: int) -> tuple[float, float]:
        """Give the top and the height of a row."""
        box = self.box(row, 0)
        return box.top(), box.height()

    def row_beside(self, point: QPointF) -> int | None:
        """Give the row level with a point beside the fabric; None where no round in sight is level with it."""
        if self.area.contains(point) or not self.area.top() <= point.y() < self.area.bottom():
            return None
        row = self.cell_at(point)[0]
        return row if row in self.rows_in_sight() else None

    def rows_in_sight(self) -> range:
        """Give the rows of which anything shows, upwards."""
        area = self.area
        lowest = self.cell_at(QPointF(area.left(), area.bottom() - 0.5))[0]
        highest = self.cell_at(area.topLeft())[0]
        return range(max(0, lowest), min(len(self.grid.rows) - 1, highest) + 1)

    def columns_in_sight(self) -> range:
        """Give the columns of the live repeat of which anything shows, leftwards."""
        area = self.area
        first = self.cell_at(QPointF(area.right() - 0.5, area.top()))[1]
        last = self.cell_at(area.topLeft())[1]
        return range(max(0, first), min(self.grid.width - 1, last) + 1)
