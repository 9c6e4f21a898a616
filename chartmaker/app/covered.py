"""The places that a stroke covers: for each row of the chart, which columns of its band's drawing. No Qt here."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.edits import one_edit, redraw

if TYPE_CHECKING:
    from collections.abc import Iterable

    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.shapes import Strip
    from chartmaker.model.stitches import Part

Covered = dict[int, NDArray[np.bool_]]
"""By row: one for each column of the band's drawing, some of which may hold no stitch."""


def covered_by(strips: Iterable[Strip], grid: ChartGrid) -> Covered:
    """Give what strips of chart cells cover; a ghosted neighbour is the live stitch that it mirrors."""
    covered: Covered = {}
    for row, first, last in strips:
        if not 0 <= row < len(grid.rows):
            continue
        start, stop = max(first, -grid.ghost), min(last, grid.width + grid.ghost - 1) + 1
        width = grid.rows[row].width
        columns = covered.setdefault(row, np.zeros(width, np.bool_))
        while start < stop:
            here = start % width
            reach = min(stop - start, width - here)
            columns[here : here + reach] = True
            start += reach
    return covered


def drawn_edit(design: Design, grid: ChartGrid, covered: Covered, *, part: Part, text: str) -> Edit | None:
    """Make the edit that gives the stitches covered a part, as far as they may be changed; None if it changes nothing.

    A column without a stitch is passed over.
    """
    by_band: dict[int, dict[int, bytes]] = {}
    for row, columns in covered.items():
        at = grid.rows[row]
        if grid.is_open(row):
            cells = np.frombuffer(design.bands[at.band].rounds[at.index].cells, np.uint8)
            drawn = np.where(columns[at.offset : at.offset + at.length], np.uint8(part), cells)
            by_band.setdefault(at.band, {})[at.index] = drawn.tobytes()
    return one_edit(design, [redraw(design, band=band, drawn=cells, text=text) for band, cells in by_band.items()])
