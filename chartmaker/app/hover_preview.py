"""What a click would do, shown under the pointer or the cursor before any button is pressed."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.model.design import Design


class HoverPreview:
    """Follows the canvas's `hovered` while the hand holds a tool that shows itself so."""

    def __init__(self, canvas: ChartCanvas) -> None:
        self._canvas = canvas
        self._at: tuple[int, int] | None = None
        """Where the pointer or the cursor was last."""
        self._of: Design | None = None
        self._preview: Design | None = None
        """What was shown last, and the design that it was made of."""
        canvas.hovered.connect(self._follow)
        canvas.hand_changed.connect(self.show_anew)

    def show_at(self, cell: tuple[int, int] | None) -> None:
        """Show what the tool in hand would do at a cell; nothing at None, nor while a gesture shows its own."""
        self._at = cell
        hand, design = self._canvas.hand, self._canvas.document.design
        if hand.tool.shows_under_pointer and not hand.is_busy:
            shown = design if cell is None else hand.preview_at(cell, design, self._canvas.grid)
            self._canvas.show_design(shown)
            self._of, self._preview = design, shown

    def show_anew(self) -> None:
        """Show it where the pointer was last, or at the cursor: another tool, part or way of using it is at hand."""
        self.show_at(self._canvas.current if self._at is None and self._canvas.hasFocus() else self._at)

    def _follow(self, cell: tuple[int, int] | None) -> None:
        """Go along, but not again for every step within one stitch."""
        is_shown = self._canvas.shown is self._preview and self._canvas.document.design is self._of
        if cell != self._at or not is_shown:
            self.show_at(cell)
