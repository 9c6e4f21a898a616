"""The hand at the chart: its tool, the part or sign that it draws, and what the gesture under way would do. No Qt."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.mirror import Axes
from chartmaker.app.strokes import fill_edit, sign_edit, stroke_edit
from chartmaker.app.tools import (
    DrawTool,
    FillTool,
    PickTool,
    SelectTool,
    ShapeTool,
    StampTool,
    Tool,
    TwoEndsTool,
    line,
    one_by_one,
)
from chartmaker.model import shapes
from chartmaker.model.stitches import Part, Shaping

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid, Spot
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.motif import Motif
    from chartmaker.model.shapes import Cell


def all_tools() -> tuple[Tool, ...]:
    """Make one of each tool."""
    return (
        DrawTool(),
        TwoEndsTool("line", line),
        TwoEndsTool("rectangle", shapes.rectangle),
        TwoEndsTool("filled-rectangle", shapes.filled_rectangle),
        TwoEndsTool("ellipse", shapes.ellipse),
        TwoEndsTool("filled-ellipse", shapes.filled_ellipse),
        FillTool(),
        PickTool(),
        SelectTool(),
        ShapeTool(),
        StampTool(),
    )


class Hand:
    """Turns presses, moves and releases on cells into one edit a gesture."""

    def __init__(self) -> None:
        self._tools = {tool.name: tool for tool in all_tools()}
        self.tool: Tool = self._tools["draw"]
        self.part = Part.FIGURE
        """What it draws unless told otherwise."""
        self.sign = Shaping.K2TOG
        """What the shaping tool makes of a stitch."""
        self.motif: Motif | None = None
        """What the stamp sets down."""
        self.snaps = True
        """Whether the stamp's tiles begin with the repeat."""
        self.axes = Axes()
        """What drawing and filling are mirrored about; signs and motifs are not."""
        self.landed: Spot | None = None
        """Where the stitch stands that was shaped last; None after any other gesture."""
        self._part_now = Part.FIGURE
        self._sign_now = Shaping.K2TOG
        self._cells: tuple[Cell, ...] = ()

    def take(self, name: str) -> None:
        """Take up another tool; a gesture under way is dropped."""
        self.cancel()
        self.tool = self._tools[name]

    @property
    def tools(self) -> tuple[str, ...]:
        """The names of all its tools."""
        return tuple(self._tools)

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""
        return self.tool.is_busy

    @property
    def cells(self) -> tuple[Cell, ...]:
        """The cells of the gesture under way."""
        return self._cells

    @property
    def paints(self) -> bool:
        """Whether its tool draws stitches."""
        return self.tool.name not in ("pick", "select")

    @property
    def sign_held(self) -> Shaping | None:
        """The sign that its tool would set; None where its tool sets none."""
        return self.sign if self.tool.name == "shape" else None

    @property
    def holds_stamp(self) -> bool:
        """Whether its tool sets down a motif."""
        return self.tool.name == "stamp"

    @property
    def opposite(self) -> Part:
        """What the second button draws: ground, or figure where ground is what the first draws."""
        return Part.FIGURE if self.part == Part.GROUND else Part.GROUND

    def press(self, cell: Cell, part: Part | None = None) -> None:
        """Begin a gesture, with the part and the sign that it holds unless it is told a part."""
        self._part_now = self.part if part is None else part
        self._sign_now = self.sign
        self._cells = self.tool.press(cell)

    def press_second(self, cell: Cell) -> None:
        """Begin a gesture of the second button, which takes back: it draws ground, and makes a stitch plain."""
        self._part_now, self._sign_now = self.opposite, Shaping.PLAIN
        self._cells = self.tool.press(cell)

    def move(self, cell: Cell) -> None:
        """Continue the gesture, if one is under way."""
        self._cells = self.tool.move(cell)

    def preview(self, design: Design, grid: ChartGrid) -> Design:
        """Give the design as it would be if the hand let go now; as it is where that would be refused."""
        return self._preview_of(self._cells, design, grid)

    def preview_at(self, cell: Cell, design: Design, grid: ChartGrid) -> Design:
        """Give the design as a click on a cell would leave it; as it is where that would be refused."""
        self._part_now, self._sign_now = self.part, self.sign
        return self._preview_of((cell,), design, grid)

    def _preview_of(self, cells: tuple[Cell, ...], design: Design, grid: ChartGrid) -> Design:
        try:
            edit, _ = self._made_of(cells, design, grid)
        except ValueError:
            return design
        return edit.applied_to(design) if edit else design

    def release(self, design: Design, grid: ChartGrid) -> Edit | None:
        """End the gesture with its edit; None where nothing changes. A pick takes up the stitch's part instead.

        Raises ValueError, with a sentence, for a sign that the round has no stitch to spare for.
        """
        cells = self.tool.release()
        self._cells = ()
        if not self.paints:
            self._pick(cells, design, grid)
        edit, self.landed = self._made_of(cells, design, grid)
        return edit

    def _made_of(self, cells: tuple[Cell, ...], design: Design, grid: ChartGrid) -> tuple[Edit | None, Spot | None]:
        """Make the edit that a gesture's cells come to, and tell where the stitch stands that it shapes."""
        name = self.tool.name
        if not cells or not self.paints:
            return None, None
        if name == "shape":
            return sign_edit(design, grid, cells, self._sign_now) or (None, None)
        if name == "stamp":
            return self._stamp(cells[0], design, grid), None
        if name == "fill":
            return fill_edit(design, grid, cells[0], self._part_now, self.axes), None
        return stroke_edit(design, grid, self.tool.strips(cells), self._part_now, self.axes), None

    def _stamp(self, cell: Cell, design: Design, grid: ChartGrid) -> Edit | None:
        if self.motif is None:
            return None
        # Imported late: the start can do without.
        from chartmaker.app.stamps import stamp_edit

        return stamp_edit(design, grid, cell, self.motif, snaps=self.snaps)

    def stitch_drawn(self, cell: Cell, part: Part, design: Design, grid: ChartGrid) -> Edit | None:
        """Make the edit that draws one stitch, and its likeness about the axes, without a gesture."""
        return stroke_edit(design, grid, one_by_one((cell,)), part, self.axes)

    def _pick(self, cells: tuple[Cell, ...], design: Design, grid: ChartGrid) -> None:
        for row, column in cells:
            spot = grid.spot(row, column)
            if spot is not None:
                self.part = Part(design.bands[spot.band].rounds[spot.index].cells[spot.stitch])

    def cancel(self) -> None:
        """Drop the gesture."""
        self.tool.cancel()
        self._cells = ()
