"""The hand at the chart: which tool it holds, which part it draws, and what the gesture under way would do. No Qt."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.strokes import stroke_edit
from chartmaker.app.tools import Cell, DrawTool, LineTool, PickTool, Tool
from chartmaker.model.stitches import Part

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit


class Hand:
    """Turns presses, moves and releases on cells into one edit a gesture."""

    def __init__(self) -> None:
        self._tools: dict[str, Tool] = {tool.name: tool for tool in (DrawTool(), LineTool(), PickTool())}
        self.tool: Tool = self._tools["draw"]
        self.part = Part.FIGURE
        """What it draws unless told otherwise."""
        self._part_now = Part.FIGURE
        self._cells: tuple[Cell, ...] = ()

    def take(self, name: str) -> None:
        """Take up another tool; a gesture under way is dropped."""
        self.cancel()
        self.tool = self._tools[name]

    @property
    def is_busy(self) -> bool:
        """Whether a gesture is under way."""
        return self.tool.is_busy

    @property
    def paints(self) -> bool:
        """Whether its tool draws stitches."""
        return self.tool.name != "pick"

    @property
    def opposite(self) -> Part:
        """What the second button draws: ground, or figure where ground is what the first draws."""
        return Part.FIGURE if self.part == Part.GROUND else Part.GROUND

    def press(self, cell: Cell, part: Part) -> None:
        """Begin a gesture that draws `part`."""
        self._part_now = part
        self._cells = self.tool.press(cell)

    def move(self, cell: Cell) -> None:
        """Continue the gesture, if one is under way."""
        self._cells = self.tool.move(cell)

    def preview(self, design: Design, grid: ChartGrid) -> Design:
        """Give the design as it would be if the hand let go now."""
        edit = stroke_edit(design, grid, self._cells, self._part_now) if self.paints else None
        return edit.applied_to(design) if edit else design

    def release(self, design: Design, grid: ChartGrid) -> Edit | None:
        """End the gesture with its edit; None where nothing changes. A pick takes up the stitch's part instead."""
        cells = self.tool.release()
        self._cells = ()
        if self.paints:
            return stroke_edit(design, grid, cells, self._part_now)
        for row, column in cells:
            spot = grid.spot(row, column)
            if spot is not None:
                self.part = Part(design.bands[spot.band].rounds[spot.index].cells[spot.stitch])
        return None

    def cancel(self) -> None:
        """Drop the gesture."""
        self.tool.cancel()
        self._cells = ()
