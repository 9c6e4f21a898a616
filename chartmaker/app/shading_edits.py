"""Changes to which letters play ground, figure and third: filled over rounds, swapped, mirrored, stepped. No Qt here.

Rows are numbers of rounds from the cast-on edge up, as the chart counts them. None of these touches a stitch, and each
is None where nothing would change.
"""

from collections.abc import Iterable, Mapping, Sequence

from chartmaker.app.chart_grid import ChartGrid
from chartmaker.model.design import Design
from chartmaker.model.edits import Edit, one_edit, reshade
from chartmaker.model.stitches import Part


def fill(design: Design, grid: ChartGrid, *, rows: Iterable[int], part: int, letter: str) -> Edit | None:
    """Make the edit that lets `letter` play a part in all these rows; a row without that part is passed over."""
    changed = {}
    for row in rows:
        letters = letters_of(design, grid, row)
        if part < len(letters):
            changed[row] = letters[:part] + letter + letters[part + 1 :]
    return _joined(design, grid, changed, f"Shade with {letter}")


def add_letter(design: Design, grid: ChartGrid, *, rows: Iterable[int], letter: str) -> Edit | None:
    """Make the edit that gives these rounds one letter more to draw with; a round that has three is passed over."""
    found = {row: letters_of(design, grid, row) for row in rows}
    changed = {row: letters + letter for row, letters in found.items() if len(letters) < len(Part)}
    return _joined(design, grid, changed, f"Give {letter} to draw with")


def take_off_unused(design: Design, grid: ChartGrid, *, rows: Iterable[int]) -> Edit | None:
    """Make the edit that takes off the letters, of figure or third, that no stitch of these rounds needs."""
    changed = {}
    for row in rows:
        at = grid.rows[row]
        line = design.bands[at.band].rounds[at.index]
        changed[row] = line.letters[: max(line.cells) + 1]
    return _joined(design, grid, changed, "Take unused letters off")


def rows_to_band_end(grid: ChartGrid, row: int, *, upwards: bool) -> range:
    """Give the rows from this one to the end of its band, this one first."""
    step = 1 if upwards else -1
    end = row
    while 0 <= end + step < len(grid.rows) and grid.rows[end + step].band == grid.rows[row].band:
        end += step
    return range(row, end + step, step)


def swap(design: Design, grid: ChartGrid, rows: Iterable[int]) -> Edit | None:
    """Make the edit that lets ground and figure change letters; a round without a figure is passed over."""
    found = {row: letters_of(design, grid, row) for row in rows}
    changed = {row: letters[1] + letters[0] + letters[2:] for row, letters in found.items() if len(letters) > 1}
    return _joined(design, grid, changed, "Swap ground and figure")


def mirror(design: Design, grid: ChartGrid, row: int, *, upwards: bool = True) -> Edit | None:
    """Make the edit that repeats the shading of one side of a round on the other, as far as its band goes.

    Upwards, what lies below the round is repeated above it in mirror order; downwards, what lies above it below.
    """
    at, rounds = grid.rows[row], len(design.bands[grid.rows[row].band].rounds)
    reach = min(at.index, rounds - 1 - at.index)
    return mirror_run(design, grid, range(row - reach, row + reach + 1), upwards=upwards)


def mirror_run(design: Design, grid: ChartGrid, rows: range, *, upwards: bool = True) -> Edit | None:
    """Make the edit that mirrors a run about its own middle; that of an even run lies between two rounds.

    A round that is changed keeps the letters of parts that its partner does not have.
    """
    changed = {}
    for step in range(len(rows) // 2):
        low, high = rows[step], rows[-1 - step]
        given, changing = (low, high) if upwards else (high, low)
        new, old = letters_of(design, grid, given), letters_of(design, grid, changing)
        changed[changing] = (new + old[len(new) :])[: len(old)]
    return _joined(design, grid, changed, "Mirror the shading")


def steps(letters: Sequence[str], rounds: int, *, each: int = 0, mirrored: bool = False) -> tuple[str, ...]:
    """Give the letter of each round of a run that is stepped through a row of letters, in their order.

    Args:
        letters: at least one.
        rounds: how many the run has.
        each: rounds for each letter, the row begun again as often as needed; with 0 it is spread evenly over the run,
            so that each letter gets `rounds / len(letters)` rounds, rounded down or up.
        mirrored: step through them up to the middle of the run and back, so that it reads alike from both ends.
    """
    count = (rounds + 1) // 2 if mirrored else rounds
    if each:
        upward = tuple(letters[place // each % len(letters)] for place in range(count))
    else:
        upward = tuple(letters[place * len(letters) // count] for place in range(count))
    return upward + upward[: rounds // 2][::-1] if mirrored else upward


def step_through(
    design: Design, grid: ChartGrid, *, rows: Sequence[int], part: int, letters: Sequence[str]
) -> Edit | None:
    """Make the edit that gives each row its own letter of `letters`, as many as rows, in a part.

    A row without that part keeps its place in the run, so that a plain round does not stretch the steps around it.
    """
    changed = {}
    for row, letter in zip(rows, letters, strict=True):
        old = letters_of(design, grid, row)
        if part < len(old):
            changed[row] = old[:part] + letter + old[part + 1 :]
    return _joined(design, grid, changed, "Shade in steps")


def letters_of(design: Design, grid: ChartGrid, row: int) -> str:
    """Give the letters of a row's round."""
    at = grid.rows[row]
    return design.bands[at.band].rounds[at.index].letters


def _joined(design: Design, grid: ChartGrid, changed: Mapping[int, str], text: str) -> Edit | None:
    """Make one edit of new letters by row."""
    by_band: dict[int, dict[int, str]] = {}
    for row, letters in changed.items():
        by_band.setdefault(grid.rows[row].band, {})[grid.rows[row].index] = letters
    return one_edit(design, [reshade(design, band=band, letters=new, text=text) for band, new in by_band.items()])
