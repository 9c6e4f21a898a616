"""The hand's tools as small state machines: they are given chart cells, and answer with the cells they would paint.

A cell is `(row, column)` on the chart; it may lie in a ghosted neighbour or outside. No Qt here. `press` begins a
gesture, `move` continues it, `release` ends it, `cancel` drops it; `strips` says what the cells of an answer stand for.
"""

from collections.abc import Callable
from typing import Protocol

from chartmaker.model.linewalk import cells_between
from chartmaker.model.shapes import Cell, Strip


class Tool(Protocol):
    """What every tool can do."""

    name: str
    """As the action table has it."""
    needs_two_presses: bool
    """Whether by keys one press begins it and another ends it, since where it ends matters."""
    shows_under_pointer: bool
    """Whether what a click would do is shown before any button is pressed."""

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""

    def press(self, cell: Cell) -> tuple[Cell, ...]:
        """Begin a gesture, and give its preview."""

    def move(self, cell: Cell) -> tuple[Cell, ...]:
        """Continue it, and give its preview; nothing while none is under way."""

    def release(self) -> tuple[Cell, ...]:
        """End it, and give the cells to paint."""

    def cancel(self) -> None:
        """Drop it: nothing is painted."""

    def strips(self, cells: tuple[Cell, ...]) -> tuple[Strip, ...]:
        """Give what the cells of its answers stand for, as strips to paint."""


class DrawTool:
    """Paints every cell that the hand passes over, without gaps however fast it goes."""

    name = "draw"
    needs_two_presses = False
    shows_under_pointer = False

    def __init__(self) -> None:
        self._path: dict[Cell, None] = {}
        self._last: Cell | None = None

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""
        return self._last is not None

    def press(self, cell: Cell) -> tuple[Cell, ...]:
        """Begin at a cell."""
        self._path = {cell: None}
        self._last = cell
        return tuple(self._path)

    def move(self, cell: Cell) -> tuple[Cell, ...]:
        """Go on to a cell, passing all between."""
        if self._last is None:
            return ()
        self._path.update(dict.fromkeys(cells_between(self._last, cell)))
        self._last = cell
        return tuple(self._path)

    def release(self) -> tuple[Cell, ...]:
        """End, with every cell passed."""
        cells = tuple(self._path)
        self.cancel()
        return cells

    def cancel(self) -> None:
        """Forget the gesture."""
        self._path = {}
        self._last = None

    def strips(self, cells: tuple[Cell, ...]) -> tuple[Strip, ...]:
        """Give each cell by itself."""
        return one_by_one(cells)


class TwoEndsTool:
    """What lies between where the hand pressed and where it lets go; its answers are these two cells."""

    needs_two_presses = True
    shows_under_pointer = False

    def __init__(self, name: str, between: Callable[[Cell, Cell], tuple[Strip, ...]]) -> None:
        self.name = name
        self._between = between
        self._ends: tuple[Cell, Cell] | None = None

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""
        return self._ends is not None

    def press(self, cell: Cell) -> tuple[Cell, ...]:
        """Begin at a cell."""
        self._ends = (cell, cell)
        return self._cells()

    def move(self, cell: Cell) -> tuple[Cell, ...]:
        """Move the far end."""
        if self._ends is not None:
            self._ends = (self._ends[0], cell)
        return self._cells()

    def release(self) -> tuple[Cell, ...]:
        """End, with both ends."""
        cells = self._cells()
        self.cancel()
        return cells

    def cancel(self) -> None:
        """Forget the gesture."""
        self._ends = None

    def strips(self, cells: tuple[Cell, ...]) -> tuple[Strip, ...]:
        """Give what lies between the two ends."""
        return self._between(*cells) if len(cells) == 2 else ()

    def _cells(self) -> tuple[Cell, ...]:
        return () if self._ends is None else self._ends


class OneStitchTool:
    """Acts on the one stitch where it lets go."""

    name = ""
    needs_two_presses = False
    shows_under_pointer = False

    def __init__(self) -> None:
        self._cell: Cell | None = None

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""
        return self._cell is not None

    def press(self, cell: Cell) -> tuple[Cell, ...]:
        """Begin at a cell."""
        self._cell = cell
        return (cell,)

    def move(self, cell: Cell) -> tuple[Cell, ...]:
        """Move on to a cell."""
        if self._cell is None:
            return ()
        self._cell = cell
        return (cell,)

    def release(self) -> tuple[Cell, ...]:
        """End, with the one cell."""
        cells = () if self._cell is None else (self._cell,)
        self.cancel()
        return cells

    def cancel(self) -> None:
        """Forget the gesture."""
        self._cell = None

    def strips(self, cells: tuple[Cell, ...]) -> tuple[Strip, ...]:
        """Give each cell by itself."""
        return one_by_one(cells)


class PickTool(OneStitchTool):
    """Paints nothing: the part of the stitch where it lets go becomes the one that the hand draws."""

    name = "pick"

    def press(self, cell: Cell) -> tuple[Cell, ...]:
        """Begin at a cell; there is nothing to preview."""
        super().press(cell)
        return ()

    def move(self, cell: Cell) -> tuple[Cell, ...]:
        """Move on to a cell."""
        super().move(cell)
        return ()


class StampTool(OneStitchTool):
    """Sets down the motif that the hand holds, at the stitch where it lets go."""

    name = "stamp"
    shows_under_pointer = True


class FillTool(OneStitchTool):
    """Paints all that hangs together with the stitch where it lets go."""

    name = "fill"
    shows_under_pointer = True


class ShapeTool(OneStitchTool):
    """Gives the stitch where it lets go the shaping sign that the hand holds."""

    name = "shape"


class SelectTool(OneStitchTool):
    """Paints nothing: the block desk follows its gestures itself."""

    name = "select"


def one_by_one(cells: tuple[Cell, ...]) -> tuple[Strip, ...]:
    """Give each cell as a strip of its own."""
    return tuple((row, column, column) for row, column in cells)


def line(start: Cell, end: Cell) -> tuple[Strip, ...]:
    """Give the straight line from one cell to another."""
    return one_by_one(cells_between(start, end))
