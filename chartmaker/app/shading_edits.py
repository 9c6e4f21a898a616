"""Changes to which letters play ground and figure: filled over rounds, swapped, mirrored. No Qt here."""

from collections.abc import Iterable

from chartmaker.app.chart_grid import ChartGrid
from chartmaker.model.design import Design
from chartmaker.model.edits import Edit, one_edit, reshade


def fill(design: Design, grid: ChartGrid, *, rows: Iterable[int], part: int, letter: str) -> Edit | None:
    """Make the edit that lets `letter` play a part in all these rows; a row without that part is passed over.

    None where nothing would change.
    """
    by_band: dict[int, dict[int, str]] = {}
    for number in rows:
        row = grid.rows[number]
        letters = design.bands[row.band].rounds[row.index].letters
        if part < len(letters):
            by_band.setdefault(row.band, {})[row.index] = letters[:part] + letter + letters[part + 1 :]
    return _joined(design, by_band, f"Shade with {letter}")


def rows_to_band_end(grid: ChartGrid, row: int, *, upwards: bool) -> range:
    """Give the rows from this one to the end of its band, this one first."""
    step = 1 if upwards else -1
    end = row
    while 0 <= end + step < len(grid.rows) and grid.rows[end + step].band == grid.rows[row].band:
        end += step
    return range(row, end + step, step)


def swap(design: Design, grid: ChartGrid, row: int) -> Edit | None:
    """Make the edit that lets ground and figure of one round change letters; None where it has no figure."""
    at = grid.rows[row]
    letters = design.bands[at.band].rounds[at.index].letters
    if len(letters) < 2:
        return None
    return _joined(design, {at.band: {at.index: letters[1] + letters[0] + letters[2:]}}, "Swap ground and figure")


def mirror(design: Design, grid: ChartGrid, row: int) -> Edit | None:
    """Make the edit that repeats the shading below a round above it, in mirror order, as far as its band goes.

    A round above keeps the letters of parts that its partner below does not have.
    """
    at = grid.rows[row]
    rounds = design.bands[at.band].rounds
    changed = {}
    for distance in range(1, min(at.index, len(rounds) - 1 - at.index) + 1):
        below, above = rounds[at.index - distance].letters, rounds[at.index + distance].letters
        changed[at.index + distance] = (below + above[len(below) :])[: len(above)]
    return _joined(design, {at.band: changed}, "Mirror the shading")


def _joined(design: Design, by_band: dict[int, dict[int, str]], text: str) -> Edit | None:
    return one_edit(design, [reshade(design, band=band, letters=new, text=text) for band, new in by_band.items()])
