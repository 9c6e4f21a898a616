"""The hand's tools as small state machines: they are given chart cells, and answer with the cells they would paint.

No Qt here. `press` begins a gesture, `move` continues it, `release` ends it with the cells to paint, `cancel` drops it.
"""

from typing import Protocol

from chartmaker.model.linewalk import cells_between

Cell = tuple[int, int]
"""`(row, column)` on the chart; it may lie in a ghosted neighbour or outside."""


class Tool(Protocol):
    """What every tool can do."""

    name: str
    """As the action table has it."""

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


class DrawTool:
    """Paints every cell that the hand passes over, without gaps however fast it goes."""

    name = "draw"

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


class LineTool:
    """Paints the straight line from where the hand pressed to where it lets go."""

    name = "line"

    def __init__(self) -> None:
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
        """End, with the cells of the line."""
        cells = self._cells()
        self.cancel()
        return cells

    def cancel(self) -> None:
        """Forget the gesture."""
        self._ends = None

    def _cells(self) -> tuple[Cell, ...]:
        return () if self._ends is None else cells_between(*self._ends)


class OneStitchTool:
    """Acts on the one stitch where it lets go."""

    name = ""

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


class ShapeTool(OneStitchTool):
    """Gives the stitch where it lets go the shaping sign that the hand holds."""

    name = "shape"


class SelectTool(OneStitchTool):
    """Paints nothing: the block desk follows its gestures itself."""

    name = "select"
