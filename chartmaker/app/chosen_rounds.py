"""Which rounds are chosen or marked: a run within one band, and those that carry three strands. No Qt here."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.model.design import Design


def rows_of_band(grid: ChartGrid, row: int) -> range:
    """Give the rows of the band that a row belongs to."""
    band = grid.rows[row].band
    first = row - grid.rows[row].index
    end = first
    while end < len(grid.rows) and grid.rows[end].band == band:
        end += 1
    return range(first, end)


def run_between(grid: ChartGrid, anchor: int | None, row: int) -> range:
    """Give the rows from the anchor to a row, as far as the anchor's band goes; the row alone without an anchor."""
    if anchor is None or anchor >= len(grid.rows):
        return range(row, row + 1)
    band = rows_of_band(grid, anchor)
    reached = min(max(row, band.start), band.stop - 1)
    return range(min(anchor, reached), max(anchor, reached) + 1)


def crowded_rounds(design: Design) -> frozenset[int]:
    """Give the rows whose rounds carry three strands at once."""
    lines = (line for _, line in design.rounds())
    return frozenset(row for row, line in enumerate(lines) if len(line.letters) > 2 and len(line.letters_in_use) > 2)
