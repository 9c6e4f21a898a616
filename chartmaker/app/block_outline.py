"""The line round a block: black and white, so that it shows on any shade; firm in the live repeat, thin in ghosts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

if TYPE_CHECKING:
    from collections.abc import Iterator

    from chartmaker.app.chart_frame import ChartFrame
    from chartmaker.model.block import Block

BLACK, WHITE = QColor(0, 0, 0), QColor(255, 255, 255)
Columns = range | frozenset[int]
"""Where a row of a block has stitches; a range where it has them all."""
FIRM_PX, CORE_PX = 4, 2
"""Widths of the firm line and of the white within its black, in window units."""


def paint_block(painter: QPainter, frame: ChartFrame, block: Block) -> None:
    """Draw the line wherever the block shows, in all repeats."""
    rows = _rows(frame, block)
    width = frame.grid.rows[rows[0]].width
    lines = [line for repeat in _repeats(frame, width) for line in _edges(frame, block, rows, repeat * width)]
    live = frame.box(rows[-1], width - 1).united(frame.box(rows[0], 0)).adjusted(-2, -2, 2, 2)
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setClipRect(frame.area)
    _stroke(painter, lines, QPen(BLACK, 1), QPen(WHITE, 1, Qt.PenStyle.DashLine))
    painter.setClipRect(live.intersected(frame.area))
    _stroke(painter, lines, QPen(BLACK, FIRM_PX), QPen(WHITE, CORE_PX))
    painter.restore()


def _rows(frame: ChartFrame, block: Block) -> range:
    first = frame.grid.row_of(block.band, block.first)
    return range(first, first + block.height)


def _repeats(frame: ChartFrame, width: int) -> range:
    """Give the repeats of which anything may show."""
    grid = frame.grid
    return range(-grid.ghost // width - 2, (grid.width + grid.ghost) // width + 1)


def _stroke(painter: QPainter, lines: list[QLineF], outer: QPen, inner: QPen) -> None:
    for pen in (outer, inner):
        pen.setCapStyle(Qt.PenCapStyle.SquareCap if pen.style() == Qt.PenStyle.SolidLine else Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        painter.drawLines(lines)


def _edges(frame: ChartFrame, block: Block, rows: range, start: int) -> Iterator[QLineF]:
    """Walk the borders of the block's cells in one repeat; a wedge's edge steps with its rounds."""
    columns = [_columns(frame, block, row, start) for row in rows]
    if all(isinstance(here, range) for here in columns):
        if columns[0]:
            yield from _sides(frame.box(rows[-1], max(columns[0])).united(frame.box(rows[0], min(columns[0]))))
        return
    below: Columns = range(0)
    for row, here in zip(rows, columns, strict=True):
        yield from _across(frame, row, below, here, is_top=False)
        for column in here:
            box = frame.box(row, column)
            if column + 1 not in here:
                yield QLineF(box.topLeft(), box.bottomLeft())
            if column - 1 not in here:
                yield QLineF(box.topRight(), box.bottomRight())
        below = here
    yield from _across(frame, rows[-1], below, range(0), is_top=True)


def _sides(box: QRectF) -> tuple[QLineF, ...]:
    """Give the sides of a box, all downwards or to the right: where two blocks meet, their dashes are the same."""
    return (
        QLineF(box.topLeft(), box.bottomLeft()),
        QLineF(box.topRight(), box.bottomRight()),
        QLineF(box.topLeft(), box.topRight()),
        QLineF(box.bottomLeft(), box.bottomRight()),
    )


def _across(frame: ChartFrame, row: int, one: Columns, other: Columns, *, is_top: bool) -> Iterator[QLineF]:
    """Walk the level borders at the foot or the top of a row, between columns that only one of two rows has."""
    for column in sorted(set(one) ^ set(other)):
        box = frame.box(row, column)
        yield QLineF(box.topLeft(), box.topRight()) if is_top else QLineF(box.bottomLeft(), box.bottomRight())


def _columns(frame: ChartFrame, block: Block, row: int, start: int) -> Columns:
    """Give the columns in which a row of the block shows a stitch, in one repeat."""
    grid, at = frame.grid, frame.grid.rows[row]
    low = max(start + block.column, -grid.ghost)
    high = min(start + block.column + block.width, grid.width + grid.ghost)
    if at.length == at.width:
        return range(low, max(low, high))
    return frozenset(column for column in range(low, high) if at.offset <= column % at.width < at.offset + at.length)
