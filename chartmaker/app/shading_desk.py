"""What re-shades the rounds that are chosen: one edit each, which its menu entry shows on the chart beforehand."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app import shading_edits
from chartmaker.app.letter_menu import letter_menu
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.model.edits import Edit


class ShadingDesk:
    """Makes the edits of the chosen rounds, shows what they would do, and does them."""

    def __init__(self, canvas: ChartCanvas) -> None:
        self._canvas = canvas
        self._document = canvas.document
        self.part = 1
        """Which part it acts on: 0 ground, 1 figure, 2 third."""

    @property
    def letter(self) -> str:
        """The letter of the current part at the cursor; empty where the round has no such part."""
        return self.letter_at(self._canvas.current[0], self.part)

    def letter_at(self, row: int, part: int) -> str:
        """Give the letter that plays a part in a round; empty where the round has no such part."""
        letters = shading_edits.letters_of(self._document.design, self._canvas.grid, row)
        return letters[part] if part < len(letters) else ""

    def strands_at(self, row: int) -> int:
        """Give how many letters a round is worked in, so many strands are carried at once."""
        at = self._canvas.grid.rows[row]
        return len(self._document.design.bands[at.band].rounds[at.index].letters_in_use)

    # --- the edits

    def letter_edit(self, letter: str) -> Edit | None:
        """Let a letter play the current part in the chosen rounds; a lone round without that part gets it."""
        rows = self._canvas.chosen
        if len(rows) == 1 and self.part == len(
            shading_edits.letters_of(self._document.design, self._canvas.grid, rows[0])
        ):
            return self._make(shading_edits.add_letter, rows=rows, letter=letter)
        return self._make(shading_edits.fill, rows=rows, part=self.part, letter=letter)

    def fill_edit(self, *, upwards: bool) -> Edit | None:
        """Carry the letter at the cursor to the end of its band."""
        grid, row = self._canvas.grid, self._canvas.current[0]
        rows = shading_edits.rows_to_band_end(grid, row, upwards=upwards)
        return self._make(shading_edits.fill, rows=rows, part=self.part, letter=self.letter) if self.letter else None

    def swap_edit(self) -> Edit | None:
        """Let ground and figure of the chosen rounds change letters."""
        return self._make(shading_edits.swap, rows=self._canvas.chosen)

    def mirror_edit(self, *, upwards: bool) -> Edit | None:
        """Mirror the band's shading about the cursor's round, or that of several chosen rounds about their middle."""
        rows = self._canvas.chosen
        if len(rows) > 1:
            return self._make(shading_edits.mirror_run, rows=rows, upwards=upwards)
        return self._make(shading_edits.mirror, row=rows[0], upwards=upwards)

    def take_off_edit(self) -> Edit | None:
        """Take the letters off that no stitch of the chosen rounds needs."""
        return self._make(shading_edits.take_off_unused, rows=self._canvas.chosen)

    # --- doing

    def do(self, edit: Edit | None, *, refusal: str = "") -> None:
        """Do an edit as one step; where there is nothing to do, tell why."""
        self._canvas.drop()
        if edit is None and refusal:
            self._canvas.refused.emit(refusal)
        self._document.do(edit)

    def take_off(self) -> None:
        """Take the letters off that no stitch of the chosen rounds needs."""
        self.do(self.take_off_edit(), refusal=tr("every letter of the round is in use"))

    def add_letter(self, parent: QWidget) -> None:
        """Choose one letter more for the chosen rounds, from a menu at the cursor."""
        rows, design = self._canvas.chosen, self._document.design
        counts = {len(shading_edits.letters_of(design, self._canvas.grid, row)) for row in rows}
        if counts == {3}:
            self.do(None, refusal=tr("a round has three letters at most"))
            return
        at = self._canvas.frame.box(*self._canvas.current).bottomLeft().toPoint()
        menu = letter_menu(self._document.appraisal, self._add, parent)
        menu.popup(self._canvas.viewport().mapToGlobal(at))

    def _add(self, letter: str) -> None:
        self.do(self._make(shading_edits.add_letter, rows=self._canvas.chosen, letter=letter))

    def step_through(self, parent: QWidget) -> None:
        """Open the dialog that shades the chosen rounds, or the band, in steps."""
        from chartmaker.app.steps_dialog import StepsDialog

        self._canvas.drop()
        StepsDialog(self._canvas, self.part, parent).show_beside()

    def show(self, edit: Edit | None) -> None:
        """Show what an edit would do, until `show_as_is` or the edit itself."""
        design = self._document.design
        self._canvas.show_design(edit.applied_to(design) if edit else design)

    def show_as_is(self) -> None:
        """Show the design as it stands."""
        if not self._canvas.hand.is_busy:
            self._canvas.show_design(self._document.design)

    def _make(self, maker: Callable[..., Edit | None], **what: object) -> Edit | None:
        return maker(self._document.design, self._canvas.grid, **what)
