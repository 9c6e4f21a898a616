"""What is done with a block of the chart: selected, cut, copied, pasted, turned about, shifted and repeated."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QGuiApplication, QPainter

from chartmaker.app.block_outline import paint_block
from chartmaker.app.block_tool import BlockTool
from chartmaker.app.block_words import block_words
from chartmaker.app.chosen_rounds import rows_of_band
from chartmaker.app.words import tr
from chartmaker.knit.outline import chart_offsets
from chartmaker.model import block_edits
from chartmaker.model.block import cut_out, whole_rounds
from chartmaker.model.clip import clip_from_text, clip_to_text

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QAction

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.model.block import Block, ColumnRule
    from chartmaker.model.design import Design
    from chartmaker.model.edits import ReplaceRounds


class BlockDesk(QObject):
    """Holds the block tool at a canvas; what is refused is told by the canvas's `refused`."""

    changed = Signal()
    """Something else is selected, or nothing."""

    def __init__(self, canvas: ChartCanvas) -> None:
        super().__init__(canvas)
        self.canvas = canvas
        self.document = canvas.document
        self.tool = BlockTool()
        self.actions: tuple[tuple[QAction, ...], ...] = ()
        """Groups of the block's menu."""
        self._design = canvas.document.design
        """What the block is a block of."""
        self._told_last = ("", False)
        canvas.cursor_moved.connect(self._follow_choice)
        self.document.edited.connect(self._follow)
        self.document.replaced.connect(self._forget)

    @property
    def is_held(self) -> bool:
        """Whether the hand holds the tool that selects."""
        return self.canvas.hand.tool.name == "select"

    # --- what is selected

    @property
    def block(self) -> Block | None:
        """The block to draw a line round: selected, or where what is carried would lie.

        None between a change of the design and the desk's hearing of it, when the block may be of what is gone.
        """
        is_known = self._design is self.document.design
        return self.tool.outlined(self._design, self.canvas.grid) if is_known else None

    @property
    def words(self) -> str:
        """How large the block is and where it begins; empty where there is none."""
        block, grid = self.block, self.canvas.grid
        if block is None:
            return ""
        first = grid.row_of(block.band, block.first)
        rows = grid.rows[first : first + block.height]
        is_level = all(row.length == row.width for row in rows)
        return block_words(block, rows[0].width, is_level=is_level)

    @property
    def has_selection(self) -> bool:
        """Whether a block or a run of rounds is selected."""
        return self.tool.block is not None or len(self.canvas.chosen) > 1

    @property
    def selection(self) -> Block | None:
        """The block, or else the run of rounds that is chosen; None where the cursor's round alone is."""
        if self.tool.block is not None:
            return self.tool.block
        rows = self.canvas.chosen
        return self.whole(rows) if len(rows) > 1 else None

    @property
    def selection_or_band(self) -> Block:
        """The selection, or else the whole band at the cursor."""
        return self.selection or self.whole(rows_of_band(self.canvas.grid, self.canvas.current[0]))

    def whole(self, rows: range) -> Block:
        """Give the block of all stitches of some rows, which belong to one band."""
        low, high = self.canvas.grid.rows[rows[0]], self.canvas.grid.rows[rows[-1]]
        design = self.document.design
        return whole_rounds(design, band=low.band, first=low.index, last=high.index, columns=chart_offsets)

    # --- actions

    def select_all(self) -> None:
        """Select the rounds that are chosen, or the whole band at the cursor, and hold the tool."""
        rows = self.canvas.chosen
        block = self.whole(rows if len(rows) > 1 else rows_of_band(self.canvas.grid, self.canvas.current[0]))
        self._hold()
        self.tool.block = block
        self.show()

    def copy(self) -> None:
        """Put what is selected on the clipboard, as the text that files have of rounds."""
        self.canvas.drop()
        block = self.selection
        if block is not None:
            QGuiApplication.clipboard().setText(clip_to_text(cut_out(self.document.design, block, chart_offsets)))

    def clear(self) -> None:
        """Leave ground where something is selected."""
        block = self.selection
        if block is not None:
            self.change(block_edits.clear)

    def cut(self) -> None:
        """Copy what is selected, and leave ground there."""
        self.copy()
        self.clear()

    def paste(self) -> None:
        """Let what the clipboard holds float at the cursor until it is set down; tell what is no piece of a chart."""
        try:
            clip = clip_from_text(QGuiApplication.clipboard().text())
        except ValueError as refusal:
            self.canvas.refused.emit(tr("{0}, so it cannot be pasted").format(refusal))
            return
        self._hold()
        self.canvas.setFocus()
        self.tool.take_up(clip, self.canvas.current)
        self.show()

    def change(self, make: Callable[[Design, Block, ColumnRule], ReplaceRounds]) -> None:
        """Do an edit of the selection, or of the whole band, as one step."""
        self.canvas.drop()
        block = self.selection_or_band
        try:
            self.canvas.grid.require_open(block.band)
            edit = make(self.document.design, block, chart_offsets)
        except ValueError as refusal:
            self.canvas.refused.emit(str(refusal))
            return
        self.document.do(edit if edit.changes else None)

    def shift(self, *, rounds: int = 0, stitches: int = 0) -> None:
        """Shift the selection, or the whole band, within itself: upwards and to the left, or back below zero."""
        self.change(
            lambda design, block, columns: block_edits.shift(
                design, block, rounds=rounds, stitches=stitches, columns=columns
            )
        )

    def set_down(self) -> None:
        """Set down what is carried, as one step; a piece that cannot lie there goes on floating, a block goes back."""
        is_own = self.tool.load is not None and self.tool.load.source is not None
        try:
            laid = self.tool.set_down(self.document.design, self.canvas.grid)
        except ValueError as refusal:
            if is_own:
                self.canvas.drop()
            self.canvas.refused.emit(str(refusal))
            return
        self.document.do(laid.edit)
        self.show()
        if laid.left_out:
            from chartmaker.app.stamps import left_out_words

            rounds = laid.left_out + laid.block.height
            self.canvas.told.emit(left_out_words(laid.left_out, rounds, is_done=True))

    # --- upkeep

    def show(self) -> None:
        """Show what the gesture under way would do, and what is selected."""
        self.canvas.show_design(self.tool.preview(self.document.design, self.canvas.grid))
        self._tell()

    def cancel(self) -> None:
        """Drop the gesture under way; what was selected before stays so."""
        self.tool.cancel()
        self._tell()

    def forget(self) -> None:
        """Select nothing."""
        self.tool.forget()
        self.show()

    def paint(self) -> None:
        """Draw the line round the block over the chart; called while the chart is painted."""
        block = self.block
        if block is not None:
            paint_block(QPainter(self.canvas.viewport()), self.canvas.frame, block)

    def _hold(self) -> None:
        if self.is_held:
            self.canvas.drop()
        else:
            self.canvas.take_tool("select")

    def _tell(self) -> None:
        self.canvas.viewport().update()
        now = (self.words, self.has_selection)
        if now != self._told_last:
            self._told_last = now
            self.changed.emit()

    def _follow(self) -> None:
        self.tool.follow(self._design, self.document.design)
        self._design = self.document.design
        self._tell()

    def _forget(self) -> None:
        self._design = self.document.design
        self.tool.forget()
        self._tell()

    def _follow_choice(self) -> None:
        """Let a run of rounds that is chosen take the place of the block."""
        if self._design is not self.document.design:
            return
        if len(self.canvas.chosen) > 1 and not self.tool.is_busy:
            self.tool.forget()
        self._tell()
