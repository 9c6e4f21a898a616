"""What becomes of a pattern that was made of a picture or of words: held as a stamp, a band of its own, or kept."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from chartmaker.app.words import tr
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.app.motif_desk import MotifDesk
    from chartmaker.app.pattern_dialog import PatternDialog
    from chartmaker.app.questions import Questions


class PatternDesk:
    """Keeps the dialog from one time to the next, so that picture and settings are still there."""

    def __init__(self, canvas: ChartCanvas, motifs: MotifDesk) -> None:
        self._canvas = canvas
        self._motifs = motifs
        self.dialog: PatternDialog | None = None
        """None until it is first asked for."""

    def open(
        self, side: Literal["picture", "words"], parent: QWidget, *, settings: QSettings, questions: Questions
    ) -> None:
        """Show the dialog for the band at the cursor; a gesture under way is dropped."""
        self._canvas.drop()
        document = self._canvas.document
        if not document.is_appraised:
            document.appraise_now()
        if self.dialog is None:
            # Imported late: it brings Pillow and the faces.
            from chartmaker.app.pattern_dialog import PatternDialog

            self.dialog = dialog = PatternDialog(settings, questions, self._canvas.units, parent)
            dialog.stamp.clicked.connect(self._stamp)
            dialog.lay_in.clicked.connect(self._lay_in)
            dialog.keep.clicked.connect(self._keep)
        line = self._canvas.grid.rows[self._canvas.current[0]]
        self.dialog.begin(side, document.appraisal, band=line.band, index=line.index)

    @property
    def _band(self) -> int:
        return self._canvas.grid.rows[self._canvas.current[0]].band

    def _stamp(self) -> None:
        """Hold the pattern as a stamp: its parts alone, in the letters of the rounds that it is set down on."""
        from chartmaker.model.stamping import motif_of

        dialog = self.dialog
        if dialog is None or dialog.pattern is None:
            return
        try:
            self._motifs.hold_made(motif_of(dialog.pattern.rounds, name=dialog.title))
        except ValueError as refusal:
            dialog.tell_problem(str(refusal))
            return
        dialog.accept()
        self._canvas.setFocus()

    def _lay_in(self) -> None:
        """Make the pattern a band above the one at the cursor, in its own letters, and go to it."""
        from chartmaker.model.band_edits import lay_in_rounds

        dialog, document, band = self.dialog, self._canvas.document, self._band
        if dialog is None or dialog.pattern is None:
            return
        try:
            edit = lay_in_rounds(document.design, band=band, rounds=dialog.pattern.rounds, name=dialog.title)
        except ValueError as refusal:
            dialog.tell_problem(str(refusal))
            return
        dialog.accept()
        document.do(edit)
        row = self._canvas.grid.row_of(band + 1, 0)
        self._canvas.choose(range(row, row + 1))
        self._canvas.setFocus()

    def _keep(self) -> None:
        """Save the pattern among the user's motifs; the dialog stays."""
        dialog = self.dialog
        if dialog is None or dialog.pattern is None:
            return
        try:
            motif = self._motifs.keep(dialog.pattern.rounds, dialog.title)
        except (UserProblem, ValueError) as problem:
            dialog.tell_problem(str(problem))
            return
        dialog.tell(tr("{0} is on the shelf now, among your own.").format(motif.name))
