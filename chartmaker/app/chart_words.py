"""What is under the pointer or the cursor, as one line and as it is spoken."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.shades import known_shade
from chartmaker.app.stitch_line import BETWEEN
from chartmaker.app.strokes import PART_WORDS
from chartmaker.app.words import number, tr
from chartmaker.knit.floats import floats_behind
from chartmaker.model.stitches import Part, Shaping

if TYPE_CHECKING:
    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.app.chart_grid import Spot
    from chartmaker.appraisal import Appraisal
    from chartmaker.knit.floats import FloatBehind
    from chartmaker.model.design import Design
    from chartmaker.model.units import Units

SHAPING_WORDS = {
    Shaping.K2TOG: "two together, leaning right",
    Shaping.SSK: "two together, leaning left",
    Shaping.CENTRED: "centred double decrease",
    Shaping.MAKE: "make one",
}


def stitch_words(canvas: ChartCanvas, cell: tuple[int, int]) -> str:
    """Tell round, stitch, part, letter, lot, value and the strands behind a chart cell; empty where no stitch is."""
    spot = canvas.grid.spot(*cell)
    return "" if spot is None else BETWEEN.join(_parts(canvas, cell[0], spot))


def spoken_words(canvas: ChartCanvas) -> str:
    """Tell the same of the stitch at the cursor, and what is selected, with stops where a voice should pause."""
    words, selected = stitch_words(canvas, canvas.current).replace(BETWEEN, ", "), canvas.blocks.words
    return tr("{0}; selected: {1}").format(words, selected) if selected else words


def _parts(canvas: ChartCanvas, row: int, spot: Spot) -> list[str]:
    """Tell what is shown; what is counted waits for the appraisal of just that."""
    design, appraisal = canvas.shown, canvas.document.appraisal
    band = design.bands[spot.band]
    line = band.rounds[spot.index]
    parts = [tr("round {0} ({1})").format(row + 1, band.name)]
    parts.append(tr("stitch {0} of {1}").format(spot.stitch + 1, len(line)))
    if band.is_shaped:
        parts.append(tr("{0} × {1} = {2} stitches").format(band.times, len(line), band.stitches(spot.index)))
    shaping = Shaping(line.shaping[spot.stitch])
    if shaping in SHAPING_WORDS:
        parts.append(tr(SHAPING_WORDS[shaping]))
    letter = line.letter_of(spot.stitch)
    parts.append(tr("{0}: {1}").format(tr(PART_WORDS[Part(line.cells[spot.stitch])]), letter))
    parts += _lot_words(design, appraisal, letter)
    if appraisal.design is design:
        parts += _float_words(appraisal, row, spot, canvas.units.units)
    return parts


def _lot_words(design: Design, appraisal: Appraisal, letter: str) -> list[str]:
    lot_id = design.colourway.lot_of(letter)
    lot = design.palette.lot(lot_id) if lot_id else None
    is_told = appraisal.design.colourway.lot_of(letter) == lot_id
    shade = known_shade(appraisal, letter) if is_told else None
    words = [lot.name if lot else tr("no lot yet")]
    return words if shade is None else [*words, tr("value {0}").format(number(shade.value, 1))]


def _float_words(appraisal: Appraisal, row: int, spot: Spot, units: Units) -> list[str]:
    """Tell each strand behind a stitch, and where the repeat has it: from which stitch to which, long or caught."""
    band = appraisal.design.bands[spot.band]
    length = len(band.rounds[spot.index])
    place = (spot.repeat % band.times) * length + spot.stitch
    behind = floats_behind(appraisal.fabric, appraisal.floats, index=row, stitch=place)
    width_cm = appraisal.design.gauge.stitch_width_cm
    return [
        _strand_words(strand, units.length.told(strand.length * width_cm), repeat=length)
        + _catch_words(appraisal, row, strand, repeat=length)
        for strand in behind
    ]


def _strand_words(strand: FloatBehind, length: str, *, repeat: int) -> str:
    first, last = (place % repeat + 1 for place in (strand.start, strand.start + strand.length - 1))
    words = tr("{0} behind: {1} stitches, {2}, {3} to {4}")
    if strand.length == 1:
        words = tr("{0} behind this stitch alone, {2}")
    return words.format(strand.letter, strand.length, length, first, last)


def _catch_words(appraisal: Appraisal, row: int, strand: FloatBehind, *, repeat: int) -> str:
    key = (row, strand.letter, strand.start)
    long = next((item for item in appraisal.long_floats if (item.round, item.letter, item.start) == key), None)
    if long is None:
        return ""
    if not long.catches:
        return tr(", ! long")
    catches = ", ".join(str(place % repeat + 1) for place in long.catches)
    return tr(", ! long: catch at {0}").format(catches)
