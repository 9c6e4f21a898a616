"""A motif set down at a cell of the chart, as one edit. No Qt here."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.chart_grid import CLOSED
from chartmaker.app.words import tr
from chartmaker.knit.outline import chart_offsets
from chartmaker.model.motif import fits
from chartmaker.model.stamping import stamp_hindrance, stamped

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.motif import Motif


def stamp_edit(
    design: Design, grid: ChartGrid, cell: tuple[int, int], motif: Motif, *, snaps: bool = True
) -> Edit | None:
    """Make the edit that stamps a motif, its lowest round and first stitch at a cell; None where it changes nothing.

    Where it tiles the band's repeat and `snaps`, tiles begin with the repeat's stitch 1, wherever in one the cell is.
    Raises ValueError, with a sentence, where the band cannot take the motif, or another one is worked in alone.
    """
    spot = grid.spot(*cell)
    if spot is None:
        return None
    grid.require_open(spot.band)
    band = design.bands[spot.band]
    stitch = spot.stitch
    if snaps and not band.is_shaped and fits(motif, len(band.rounds[spot.index])):
        stitch -= stitch % motif.repeat
    offsets = chart_offsets(band.rounds) if band.is_shaped else ()
    edit = stamped(design, motif, band=spot.band, at=(spot.index, stitch), offsets=offsets)
    return edit if edit.changes else None


def stamp_words(design: Design, grid: ChartGrid, cell: tuple[int, int], motif: Motif) -> str:
    """Tell in a sentence what keeps a motif from being stamped whole at a cell; empty where nothing does."""
    spot = grid.spot(*cell)
    if spot is None:
        return ""
    if not grid.is_open(cell[0]):
        return CLOSED
    band = design.bands[spot.band]
    hindrance = stamp_hindrance(band, motif)
    if hindrance:
        return hindrance
    return left_out_words(rounds_left_out(design, grid, cell, motif), len(motif.rounds))


def rounds_left_out(design: Design, grid: ChartGrid, cell: tuple[int, int], motif: Motif) -> int:
    """Count the motif's rounds that are past the top of the band when it is stamped at a cell."""
    spot = grid.spot(*cell)
    return 0 if spot is None else max(0, spot.index + len(motif.rounds) - len(design.bands[spot.band].rounds))


def left_out_words(count: int, rounds: int, *, is_done: bool = False) -> str:
    """Tell in a sentence that so many of a motif's rounds are left out, or were; empty where none is."""
    if not count:
        return ""
    if count == 1:
        told = tr("was left out") if is_done else tr("is left out")
        return tr("1 of its {0} rounds is past the top of the band and {1}").format(rounds, told)
    told = tr("were left out") if is_done else tr("are left out")
    return tr("{0} of its {1} rounds are past the top of the band and {2}").format(count, rounds, told)
