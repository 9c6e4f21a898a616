"""From the cells that a hand passed over to one edit of the design."""

from collections.abc import Iterable
from dataclasses import replace

from chartmaker.app.chart_grid import ChartGrid, Spot
from chartmaker.model.design import Design
from chartmaker.model.edits import Edit, one_edit, paint
from chartmaker.model.shaping_edits import shape
from chartmaker.model.stitches import Part, Shaping

PART_WORDS = {Part.GROUND: "ground", Part.FIGURE: "figure", Part.THIRD: "third"}
"""What a part is called in menus and messages."""


def stroke_edit(design: Design, grid: ChartGrid, cells: Iterable[tuple[int, int]], part: Part) -> Edit | None:
    """Make the edit that paints chart cells `(row, column)`; None where nothing would change.

    A cell of a ghosted neighbour paints the live stitch that it mirrors; a place without a stitch is passed over.
    """
    by_band: dict[int, dict[tuple[int, int], int]] = {}
    for row, column in cells:
        spot = grid.spot(row, column)
        if spot is not None:
            by_band.setdefault(spot.band, {})[spot.index, spot.stitch] = int(part)
    text = f"Draw {PART_WORDS[part]}"
    return one_edit(design, [paint(design, band=band, cells=found, text=text) for band, found in by_band.items()])


def sign_edit(
    design: Design, grid: ChartGrid, cells: Iterable[tuple[int, int]], sign: Shaping
) -> tuple[Edit, Spot] | None:
    """Make the edit that gives the stitch at a chart cell a shaping sign, and tell where that stitch stands then.

    None where no stitch is, or it is made so already. Raises ValueError where the round has no stitch to spare for it.
    """
    for row, column in cells:
        spot = grid.spot(row, column)
        if spot is not None:
            outcome = shape(design, band=spot.band, index=spot.index, stitch=spot.stitch, sign=sign)
            return (outcome.edit, replace(spot, stitch=outcome.stitch)) if outcome.edit.changes else None
    return None
