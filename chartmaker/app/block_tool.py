"""A block marked on the chart, carried about, or a piece that floats until it is set down. No Qt here.

Like the hand's tools it is a small state machine that is given cells, `(row, column)` on the chart, which may lie in a
ghosted neighbour: there a block begins or goes on as in the live repeat.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from chartmaker.app.chosen_rounds import rows_of_band, run_between
from chartmaker.knit.outline import chart_offsets
from chartmaker.model import block_edits
from chartmaker.model.block import Block, cut_out, is_there

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.model.block_edits import Corner, Laid
    from chartmaker.model.clip import Clip
    from chartmaker.model.design import Design
    from chartmaker.model.shapes import Cell


@dataclass(frozen=True, slots=True)
class Load:
    """What is carried."""

    clip: Clip
    source: Block | None
    """Where it was taken up; None for a piece that was pasted."""
    is_copy: bool
    """Whether it stays there too."""
    held_at: Cell
    """Rounds and columns from its lowest and right-most cell to the one that it is held by."""


class BlockTool:
    """Holds the block, and what the gesture under way does with it."""

    def __init__(self) -> None:
        self.block: Block | None = None
        """None while nothing is selected."""
        self.load: Load | None = None
        """None while nothing is carried."""
        self._anchor: Cell | None = None
        self._at: Cell = (0, 0)
        """Where a mark has reached, or where what is carried is held."""
        self._before: Block | None = None
        """What was selected when the gesture began."""
        self._made: tuple[Design, Load, Corner, Laid] | None = None
        """What setting down would come to, and of what that was made."""
        self._span: tuple[Cell, Cell] | None = None
        """From where to where the block was marked last, so that keys can go on."""

    @property
    def is_marking(self) -> bool:
        """Whether a block is being marked."""
        return self._anchor is not None

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""
        return self.is_marking or self.load is not None

    @property
    def at(self) -> Cell:
        """The cell that the gesture has reached; it may lie in a neighbour."""
        return self._at

    def holds(self, cell: Cell, grid: ChartGrid) -> bool:
        """Tell whether a cell shows a place of the block, in whichever repeat."""
        if self.block is None or not 0 <= cell[0] < len(grid.rows):
            return False
        row = grid.rows[cell[0]]
        is_level = row.band == self.block.band and self.block.first <= row.index <= self.block.last
        return is_level and (cell[1] - self.block.column) % row.width < self.block.width

    # --- gestures

    def press(self, cell: Cell, design: Design, grid: ChartGrid, *, is_copy: bool = False) -> None:
        """Begin to mark at a cell, to carry the block where it is pressed, or to set down what floats there."""
        if self.load is not None:
            self._at = cell
        elif self.holds(cell, grid):
            self.lift(cell, design, grid, is_copy=is_copy)
        else:
            self.begin_mark(cell, grid)

    def begin_mark(self, cell: Cell, grid: ChartGrid) -> None:
        """Begin to mark a block at a cell."""
        self._before, self._anchor = self.block, cell
        self.move(cell, grid)

    def lift(self, cell: Cell, design: Design, grid: ChartGrid, *, is_copy: bool = False) -> None:
        """Take the block up by a cell of it, to be set down elsewhere."""
        if self.block is None:
            return
        row = grid.row_of(self.block.band, self.block.first)
        across = (cell[1] - self.block.column) % grid.rows[row].width
        clip = cut_out(design, self.block, chart_offsets)
        self.load = Load(clip, self.block, is_copy, (cell[0] - row, across))
        self._before, self._at = self.block, cell

    def take_up(self, clip: Clip, cell: Cell) -> None:
        """Let a piece float at a cell, held by its lowest and right-most stitch."""
        self.load = Load(clip, None, True, (0, 0))
        self._before, self._at = self.block, cell

    def move(self, cell: Cell, grid: ChartGrid) -> None:
        """Go on to a cell with what is under way."""
        self._at = cell
        if self._anchor is not None:
            self.block = block_between(grid, self._anchor, cell)

    def end_mark(self) -> None:
        """End marking; a click beside a block selects nothing any more."""
        if self._anchor == self._at and self._before is not None:
            self.block = None
        if self._anchor is not None:
            self._span = (self._anchor, self._at)
        self._anchor = self._before = None

    def grow(self, start: Cell, step: Cell, grid: ChartGrid) -> None:
        """Move the end of the block that was marked last by rounds and columns; without a block, begin at a cell."""
        is_marked = self.block is not None and self._span and self.block == block_between(grid, *self._span)
        anchor, end = self._span if is_marked and self._span else (start, start)
        rows, width = rows_of_band(grid, anchor[0]), grid.rows[anchor[0]].width
        row = min(max(end[0] + step[0], rows.start), rows.stop - 1)
        column = min(max(end[1] + step[1], anchor[1] - width + 1), anchor[1] + width - 1)
        self._at = (row, column)
        self._span = (anchor, self._at)
        self.block = block_between(grid, anchor, self._at)

    def carry(self, step: Cell, grid: ChartGrid) -> None:
        """Move what is carried by rounds and columns, as far as there are rounds."""
        row = min(max(self._at[0] + step[0], 0), len(grid.rows) - 1)
        self._at = (row, self._at[1] + step[1])

    def set_down(self, design: Design, grid: ChartGrid) -> Laid:
        """End carrying with what that comes to; the block is then where the piece lies.

        Raises ValueError, with a sentence, where it cannot lie there; it goes on being carried.
        """
        laid = self._laid(design, grid)
        self.block, self.load, self._before = laid.block, None, None
        return laid

    def cancel(self) -> None:
        """Drop the gesture: the block is what it was."""
        if self.is_busy:
            self.block = self._before
        self._anchor = self.load = self._before = None

    def forget(self) -> None:
        """Select nothing."""
        self.block = self.load = self._anchor = self._before = None

    # --- what is shown meanwhile

    def preview(self, design: Design, grid: ChartGrid) -> Design:
        """Give the design as setting down would leave it now; as it is where that would be refused."""
        try:
            edit = self._laid(design, grid).edit if self.load else None
        except ValueError:
            return design
        return edit.applied_to(design) if edit else design

    def outlined(self, design: Design, grid: ChartGrid) -> Block | None:
        """Give the block to draw a line round: the selected one, or where what is carried would lie."""
        if self.load is None:
            return self.block
        try:
            return self._laid(design, grid).block
        except ValueError:
            return None

    def _laid(self, design: Design, grid: ChartGrid) -> Laid:
        """Give what setting down would come to; several ask, of one design and one place."""
        load = self.load
        if load is None:
            raise ValueError("nothing is carried that could be set down")
        to = self._corner(load, design, grid)
        grid.require_open(to[0])
        if load.source is not None and not load.is_copy:
            grid.require_open(load.source.band)
        if self._made is None or self._made[0] is not design or self._made[1] is not load or self._made[2] != to:
            self._made = (design, load, to, _laid(design, load, to))
        return self._made[3]

    def _corner(self, load: Load, design: Design, grid: ChartGrid) -> Corner:
        """Give where the piece's lowest and right-most cell would lie: in the band under the hand.

        A block that is carried stays whole as far as that band has rounds for it.
        """
        row = grid.rows[min(max(self._at[0], 0), len(grid.rows) - 1)]
        index = row.index - load.held_at[0]
        if load.source is not None:
            index = min(index, len(design.bands[row.band].rounds) - len(load.clip.lines))
        return row.band, max(index, 0), self._at[1] - load.held_at[1]

    # --- upkeep

    def follow(self, before: Design, after: Design) -> None:
        """Keep the block through an edit: it goes with its band, and goes where its rounds or columns do."""
        self.cancel()
        if self.block is not None:
            self.block = followed(self.block, before, after)


def _laid(design: Design, load: Load, to: Corner) -> Laid:
    if load.source is None:
        return block_edits.paste(design, load.clip, to=to, columns=chart_offsets)
    lay = block_edits.copy if load.is_copy else block_edits.move
    return lay(design, load.source, to=to, columns=chart_offsets)


def block_between(grid: ChartGrid, anchor: Cell, cell: Cell) -> Block | None:
    """Give the block from one cell to another, both included: in the anchor's band, no wider than its repeat.

    None where the anchor is beside all rounds.
    """
    if not 0 <= anchor[0] < len(grid.rows):
        return None
    rows = run_between(grid, anchor[0], cell[0])
    low, high = grid.rows[rows[0]], grid.rows[rows[-1]]
    width = min(abs(cell[1] - anchor[1]) + 1, low.width)
    right = anchor[1] if cell[1] >= anchor[1] else anchor[1] - width + 1
    return Block(band=low.band, first=low.index, last=high.index, column=right % low.width, width=width)


def followed(block: Block, before: Design, after: Design) -> Block | None:
    """Give the block in a changed design: where its band went, or where it was while it has as many rounds."""
    old = before.bands[block.band]
    places = [number for number, band in enumerate(after.bands) if band is old]
    if not places and len(before.bands) == len(after.bands):
        new = after.bands[block.band]
        places = [block.band] if len(new.rounds) == len(old.rounds) else []
    if not places:
        return None
    same = Block(band=places[0], first=block.first, last=block.last, column=block.column, width=block.width)
    return same if is_there(after, same, chart_offsets) else None
