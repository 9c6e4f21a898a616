"""Where every stitch of a design stands on the chart: all bands stacked, one repeat live, its neighbours ghosted.

Chart coordinates are `(row, column)`: row 0 is the first round knitted, column 0 the right-most of the live repeat,
counted leftwards; columns below 0 and from `width` on are neighbours. Arrays are laid out as a picture instead: line 0
is the last round, place 0 the left-most column.
"""

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.band import Band
from chartmaker.model.design import Design

if TYPE_CHECKING:
    from chartmaker.model.round import Round

GHOST_CODE = 26
"""Added to a letter's code where the stitch belongs to a neighbour of the live repeat."""
NO_STITCH = 52
"""Code of a place that no stitch covers."""
WIDEST_GHOST = 8
CLOSED = "another band is worked in alone, so this one is left as it is; work in all bands to change it"


@dataclass(frozen=True, slots=True)
class Spot:
    """A stitch that some place of the chart shows."""

    band: int
    index: int
    """Round in the band."""
    stitch: int
    """Stitch in the repeat."""
    repeat: int
    """0 is the live repeat, 1 its neighbour to the left, -1 to the right."""


@dataclass(frozen=True, slots=True)
class Row:
    """Where one round stands."""

    band: int
    index: int
    offset: int
    """Column of its stitch 1 in the live repeat."""
    length: int
    width: int
    """Columns of its band's drawing: a neighbour stands that far away."""


@dataclass(frozen=True, slots=True)
class ChartGrid:
    """The whole chart as codes, and the way from a place to its stitch and back."""

    rows: tuple[Row, ...]
    width: int
    """Columns of the widest band's drawing."""
    ghost: int
    """Columns of neighbours on each side."""
    codes: NDArray[np.uint8]
    """`(rows, columns)` as a picture: letter, letter + `GHOST_CODE`, or `NO_STITCH`."""
    shaping: NDArray[np.uint8]
    """`(rows, columns)` as a picture: the `Shaping` of each stitch."""
    purl: NDArray[np.bool_]
    """`(rows, columns)` as a picture: whether a stitch is purled."""
    focus: int | None = None
    """The band that is worked in alone, the others being neighbours too; None where all are worked in."""

    @property
    def columns(self) -> int:
        """Columns of the picture, neighbours included."""
        return self.width + 2 * self.ghost

    def place(self, row: int, column: int) -> tuple[int, int]:
        """Give the line and the place in the picture of chart coordinates."""
        return len(self.rows) - 1 - row, self.width + self.ghost - 1 - column

    def cell(self, line: int, place: int) -> tuple[int, int]:
        """Give the chart coordinates of a line and a place in the picture; it is its own inverse."""
        return len(self.rows) - 1 - line, self.width + self.ghost - 1 - place

    def spot(self, row: int, column: int) -> Spot | None:
        """Give the stitch shown there, or None where no stitch is."""
        if not (0 <= row < len(self.rows) and -self.ghost <= column < self.width + self.ghost):
            return None
        line = self.rows[row]
        repeat, within = divmod(column, line.width)
        stitch = within - line.offset
        return Spot(line.band, line.index, stitch, repeat) if 0 <= stitch < line.length else None

    def open_spot(self, row: int, column: int) -> Spot | None:
        """Give the stitch shown there if it may be changed: outside the band that is worked in alone none may."""
        spot = self.spot(row, column)
        return spot if spot is not None and self.is_open(row) else None

    def is_open(self, row: int) -> bool:
        """Tell whether the stitches of a row may be changed."""
        return self.focus is None or self.rows[row].band == self.focus

    def require_open(self, band: int) -> None:
        """Raise ValueError, with a sentence, where a band may not be changed since another is worked in alone."""
        if self.focus is not None and band != self.focus:
            raise ValueError(CLOSED)

    def column_of(self, row: int, stitch: int) -> int:
        """Give the column in which a stitch of the live repeat stands."""
        return self.rows[row].offset + stitch

    def row_of(self, band: int, index: int) -> int:
        """Give the row of a round of a band."""
        return next(number for number, row in enumerate(self.rows) if (row.band, row.index) == (band, index))


def laid_out(design: Design, focus: int | None = None) -> ChartGrid:
    """Lay out a whole design; the stitches of other bands than the one in focus are ghosted."""
    rows = tuple(row for number, band in enumerate(design.bands) for row in _rows_of(number, band))
    width = max(row.width for row in rows)
    ghost = min(WIDEST_GHOST, max(4, width))
    shape = (len(rows), width + 2 * ghost)
    grid = ChartGrid(
        rows, width, ghost, np.empty(shape, np.uint8), np.empty(shape, np.uint8), np.empty(shape, np.bool_), focus
    )
    for number in range(len(rows)):
        _write(grid, number, design)
    return _frozen(grid)


def laid_out_anew(grid: ChartGrid, before: Design, after: Design) -> tuple[ChartGrid, tuple[int, ...] | None]:
    """Lay out a changed design from the layout of what it was before, and say which rows differ.

    The rows are None where the layout itself changed, so that everything differs.
    """
    if before.bands is after.bands:
        return grid, ()
    if not _same_outline(before, after):
        return laid_out(after, grid.focus), None
    changed = tuple(
        number
        for number, row in enumerate(grid.rows)
        if before.bands[row.band].rounds[row.index] is not after.bands[row.band].rounds[row.index]
    )
    # Where the outline stands, shaping and texture do too.
    grid = replace(grid, codes=grid.codes.copy())
    for number in changed:
        _write_codes(grid, number, after)
    return _frozen(grid), changed


def _same_outline(before: Design, after: Design) -> bool:
    if len(before.bands) != len(after.bands):
        return False
    return all(
        old is new
        or (
            len(old.rounds) == len(new.rounds)
            and old.texture == new.texture
            and all(
                a is b or (len(a) == len(b) and a.shaping == b.shaping)
                for a, b in zip(old.rounds, new.rounds, strict=True)
            )
        )
        for old, new in zip(before.bands, after.bands, strict=True)
    )


def _rows_of(number: int, band: Band) -> tuple[Row, ...]:
    offsets = chart_offsets(band.rounds)
    width = max(offset + len(line) for offset, line in zip(offsets, band.rounds, strict=True))
    return tuple(
        Row(number, index, offset, len(line), width)
        for index, (offset, line) in enumerate(zip(offsets, band.rounds, strict=True))
    )


def _write(grid: ChartGrid, number: int, design: Design) -> None:
    _write_codes(grid, number, design)
    row = grid.rows[number]
    stitch, _ = stitches_along(grid.width, grid.ghost, row)
    band = design.bands[row.band]
    shaping = np.frombuffer(band.rounds[row.index].shaping, np.uint8)
    here = stitch >= 0
    picture_line = len(grid.rows) - 1 - number
    grid.shaping[picture_line] = np.where(here, shaping[stitch], 0)
    texture = np.frombuffer((band.texture or "k").encode(), np.uint8)
    grid.purl[picture_line] = here & (texture[stitch % len(texture)] == ord("p"))


def _write_codes(grid: ChartGrid, number: int, design: Design) -> None:
    row = grid.rows[number]
    stitch, is_live = stitches_along(grid.width, grid.ghost, row)
    line: Round = design.bands[row.band].rounds[row.index]
    letters = np.frombuffer(line.cells_by_letter, np.uint8)
    codes = letters[stitch] + np.where(is_live & grid.is_open(number), 0, GHOST_CODE).astype(np.uint8)
    grid.codes[len(grid.rows) - 1 - number] = np.where(stitch >= 0, codes, NO_STITCH)


def stitches_along(width: int, ghost: int, row: Row) -> tuple[NDArray[np.intp], NDArray[np.bool_]]:
    """Give the stitch at each place of a picture line, -1 where there is none, and whether it is live."""
    return _stitches_along(width, ghost, row.offset, row.length, row.width)


@lru_cache(maxsize=64)
def _stitches_along(
    width: int, ghost: int, offset: int, length: int, row_width: int
) -> tuple[NDArray[np.intp], NDArray[np.bool_]]:
    column = np.arange(width + ghost - 1, -ghost - 1, -1)
    stitch = column % row_width - offset
    stitch[(stitch < 0) | (stitch >= length)] = -1
    return stitch, column // row_width == 0


def _frozen(grid: ChartGrid) -> ChartGrid:
    grid.codes.flags.writeable = False
    grid.shaping.flags.writeable = False
    grid.purl.flags.writeable = False
    return grid
