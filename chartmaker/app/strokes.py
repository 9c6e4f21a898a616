"""From the cells of a gesture to one edit of the design. No Qt here."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from chartmaker.app.covered import covered_by, drawn_edit
from chartmaker.app.mirror import Axes, mirrored
from chartmaker.model.flood import flooded
from chartmaker.model.shaping_edits import shape
from chartmaker.model.stitches import Part, Shaping

if TYPE_CHECKING:
    from collections.abc import Iterable

    from chartmaker.app.chart_grid import ChartGrid, Spot
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.shapes import Cell, Strip

PART_WORDS = {Part.GROUND: "ground", Part.FIGURE: "figure", Part.THIRD: "third"}
"""What a part is called in menus and messages."""
NO_AXES = Axes()


def stroke_edit(
    design: Design, grid: ChartGrid, strips: Iterable[Strip], part: Part, axes: Axes = NO_AXES
) -> Edit | None:
    """Make the edit that paints strips of chart cells, and their likeness about axes; None where nothing would change.

    A cell of a ghosted neighbour paints the live stitch that it mirrors; a place without a stitch is passed over, and
    so is a band other than the one that is worked in alone.
    """
    covered = mirrored(covered_by(strips, grid), axes, grid)
    return drawn_edit(design, grid, covered, part=part, text=f"Draw {PART_WORDS[part]}")


def fill_edit(design: Design, grid: ChartGrid, cell: Cell, part: Part, axes: Axes = NO_AXES) -> Edit | None:
    """Make the edit that fills what hangs together with a chart cell in its band, and its likeness about axes.

    See `model.flood.flooded` for what hangs together. None where nothing would change.
    """
    spot = grid.open_spot(*cell)
    if spot is None:
        return None
    band = design.bands[spot.band]
    if axes == NO_AXES and band.rounds[spot.index].cells[spot.stitch] == part:
        return None
    first = cell[0] - spot.index
    offsets = [row.offset for row in grid.rows[first : first + len(band.rounds)]]
    region = flooded(band, at=(spot.index, spot.stitch), offsets=offsets)
    covered = {first + index: columns for index, columns in enumerate(region) if columns.any()}
    covered = mirrored(covered, axes, grid)
    return drawn_edit(design, grid, covered, part=part, text=f"Fill with {PART_WORDS[part]}")


def sign_edit(design: Design, grid: ChartGrid, cells: Iterable[Cell], sign: Shaping) -> tuple[Edit, Spot] | None:
    """Make the edit that gives the stitch at a chart cell a shaping sign, and tell where that stitch stands then.

    None where no stitch is, or it is made so already. Raises ValueError where the round has no stitch to spare for it.
    """
    for row, column in cells:
        spot = grid.open_spot(row, column)
        if spot is not None:
            outcome = shape(design, band=spot.band, index=spot.index, stitch=spot.stitch, sign=sign)
            return (outcome.edit, replace(spot, stitch=outcome.stitch)) if outcome.edit.changes else None
    return None
