"""What is under the pointer or the cursor, as one line."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.shades import known_shade
from chartmaker.app.strokes import PART_WORDS
from chartmaker.app.words import number, tr
from chartmaker.model.stitches import Part, Shaping

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.appraisal import Appraisal
    from chartmaker.model.design import Design

SHAPING_WORDS = {
    Shaping.K2TOG: "two together, leaning right",
    Shaping.SSK: "two together, leaning left",
    Shaping.CENTRED: "centred double decrease",
    Shaping.MAKE: "make one",
}


def stitch_words(appraisal: Appraisal, design: Design, grid: ChartGrid, cell: tuple[int, int]) -> str:
    """Tell round, stitch, part, letter, lot and value of a cell of a design's chart; empty where no stitch is.

    The appraisal, which gives the value, may be of an older design.
    """
    spot = grid.spot(*cell)
    if spot is None:
        return ""
    band = design.bands[spot.band]
    line = band.rounds[spot.index]
    letter = line.letter_of(spot.stitch)
    lot_id = design.colourway.lot_of(letter)
    lot = design.palette.lot(lot_id) if lot_id else None
    shade = known_shade(appraisal, letter)
    parts = [
        tr("round {0} ({1})").format(cell[0] + 1, band.name),
        tr("stitch {0} of {1}").format(spot.stitch + 1, len(line)),
        tr("{0}: {1}").format(tr(PART_WORDS[Part(line.cells[spot.stitch])]), letter),
        lot.name if lot else tr("no lot yet"),
    ]
    if shade is not None:
        parts.append(tr("value {0}").format(number(shade.value, 1)))
    shaping = Shaping(line.shaping[spot.stitch])
    if shaping in SHAPING_WORDS:
        parts.append(tr(SHAPING_WORDS[shaping]))
    return "  ·  ".join(parts)
