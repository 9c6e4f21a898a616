"""Lines on the chart that help to count: around each stitch, at each fifth and tenth, and around the live repeat."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QPainter

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid, Row

SMALLEST_LINES_PX = 5
"""Cells narrower than this many screen pixels have no line around each."""
FINE = QColor(119, 119, 119, 150)
FIFTH = QColor(20, 20, 20, 210)
TENTH = QColor(20, 20, 20)


def paint_lines(  # noqa: PLR0913 - where the chart stands, told by name
    painter: QPainter,
    grid: ChartGrid,
    *,
    origin: QPointF,
    part: QRectF,
    cell: QSizeF,
    pixel_ratio: float,
    is_drawing: bool = True,
) -> None:
    """Paint the lines of the cells in `part`; on knitted stitches only the tenth and the edges."""
    has_fine = is_drawing and cell.width() * pixel_ratio >= SMALLEST_LINES_PX
    weights = _line_weights(1 / pixel_ratio, has_fine=has_fine, has_fifth=is_drawing)
    columns = range(grid.width + grid.ghost - 1 - int(part.right()), grid.width + grid.ghost + 1 - int(part.left()) + 1)
    for rows in _blocks(grid, part):
        for colour, rects in _block_lines(grid, rows, columns=columns, origin=origin, cell=cell, weights=weights):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour)
            painter.drawRects(rects)


def _blocks(grid: ChartGrid, part: QRectF) -> list[list[int]]:
    """Group the rows in sight, and one beyond at each end, by where their live stitches stand; ghosts have none."""
    last = len(grid.rows) - 1
    lowest, highest = last - int(part.bottom()), last - int(part.top()) + 1
    rows = filter(grid.is_open, range(max(0, lowest), min(last, highest) + 1))
    return [list(group) for _, group in groupby(rows, key=lambda number: _span(grid.rows[number]))]


def _span(row: Row) -> tuple[int, int, int]:
    return row.band, row.offset, row.length


def _line_weights(pixel: float, *, has_fine: bool, has_fifth: bool) -> dict[int, tuple[QColor, float]]:
    """Give colour and thickness of lines: 1 around each stitch, 5 and 10 at those counts, 0 the outline."""
    weights = {10: (TENTH, 2 * pixel if has_fifth else pixel), 0: (TENTH, 2 * pixel)}
    if has_fifth:
        weights |= {5: (FIFTH, pixel)}
    if has_fine:
        weights |= {1: (FINE, pixel)}
    return weights


def _block_lines(  # noqa: PLR0913 - where the chart stands, and what of it
    grid: ChartGrid,
    rows: list[int],
    *,
    columns: range,
    origin: QPointF,
    cell: QSizeF,
    weights: dict[int, tuple[QColor, float]],
) -> list[tuple[QColor, list[QRectF]]]:
    """Give the lines of rows that stand alike, in some columns, faint ones first, as strips of one colour each."""
    first = grid.rows[rows[0]]
    top_line, left_place = grid.place(rows[-1], first.offset + first.length - 1)
    bottom_line, right_place = grid.place(rows[0], first.offset)
    left, right = origin.x() + left_place * cell.width(), origin.x() + (right_place + 1) * cell.width()
    top, bottom = origin.y() + top_line * cell.height(), origin.y() + (bottom_line + 1) * cell.height()
    strips: dict[int, list[QRectF]] = {weight: [] for weight in (1, 5, 10, 0) if weight in weights}
    ends = max(first.offset, columns.start), min(first.offset + first.length + 1, columns.stop)
    for count in range(*ends):
        is_edge = count in (first.offset, first.offset + first.length)
        weight = 0 if is_edge else _weight_at(count)
        if weight in strips:
            thick = weights[weight][1]
            x = origin.x() + (grid.width + grid.ghost - count) * cell.width()
            strips[weight].append(QRectF(x - thick / 2, top, thick, bottom - top))
    for number in range(rows[0], rows[-1] + 2):
        weight = 0 if _is_band_edge(grid, number) else _weight_at(number)
        if weight in strips:
            thick = weights[weight][1]
            y = origin.y() + (len(grid.rows) - number) * cell.height()
            strips[weight].append(QRectF(left - thick / 2, y - thick / 2, right - left + thick, thick))
    return [(weights[weight][0], rects) for weight, rects in strips.items() if rects]


def _weight_at(count: int) -> int:
    return 10 if count % 10 == 0 else 5 if count % 5 == 0 else 1


def _is_band_edge(grid: ChartGrid, number: int) -> bool:
    """Tell whether the line below row `number` parts two bands, or is the chart's own edge."""
    if number in (0, len(grid.rows)):
        return True
    return grid.rows[number].band != grid.rows[number - 1].band
