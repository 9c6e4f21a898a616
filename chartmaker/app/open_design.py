"""The design in the window: its file, its history of edits, and its appraisal, kept up to date."""

from __future__ import annotations

import time
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QUndoStack

from chartmaker.app.edit_command import EditCommand

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.appraisal import Appraisal
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.palette import Palette

AT_ONCE_S = 0.016
"""An appraisal that takes no longer than this, one picture of a screen at 60 Hz, is made with every edit."""
PAUSE_MS = 80
"""A slower one waits until the hand has paused for so long."""


class OpenDesign(QObject):
    """One design being worked on. Everything that shows it listens here, and nothing else holds it."""

    replaced = Signal()
    """Another file, or a new design, is here; history begins anew."""
    edited = Signal()
    """An edit was applied, undone or redone."""
    appraised = Signal()
    """`appraisal` belongs to `design` again."""

    def __init__(
        self, design: Design | Callable[[], Design], *, path: Path | None = None, palette: Palette | None = None
    ) -> None:
        """Take a design, or what gives one when it is first asked for: reading can wait until the window is shown."""
        super().__init__()
        self.stack = QUndoStack(self)
        self._design: Design | None = None
        if callable(design):
            self._give = design
        else:
            self._design = design
        self.path = path
        self.palette = palette
        self._last_took_s = 0.0
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self.appraise_now)
        self._appraisal: Appraisal | None = None

    @property
    def design(self) -> Design:
        """The design as it stands."""
        if self._design is None:
            self._design = self._give()
        return self._design

    @property
    def is_here(self) -> bool:
        """Whether the design has been given already."""
        return self._design is not None

    @property
    def appraisal(self) -> Appraisal:
        """What was last computed of the design; the first is made when it is first asked for."""
        if self._appraisal is None:
            self._appraisal = self._appraised()
        return self._appraisal

    def replace(self, design: Design, *, path: Path | None, palette: Palette | None) -> None:
        """Take up another design, with no history and nothing unsaved."""
        self._pause.stop()
        self._design, self.path, self.palette = design, path, palette
        self._appraisal = self._appraised()
        self.stack.clear()
        self.stack.setClean()  # which clearing leaves undone where there was no history, but something unsaved
        self.replaced.emit()
        self.appraised.emit()

    def take_palette(self, palette: Palette) -> None:
        """Let letters choose from another palette's lots too; the design itself does not change."""
        self.palette = palette
        self.appraise_now()

    def do(self, edit: Edit | None) -> None:
        """Apply an edit as one step that can be undone; None is nothing to do."""
        if edit is not None:
            self.stack.push(EditCommand(edit, self._apply))

    def appraise_now(self) -> None:
        """Bring the appraisal up to date without waiting for a pause."""
        self._pause.stop()
        self._appraisal = self._appraised()
        self.appraised.emit()

    @property
    def is_appraised(self) -> bool:
        """Whether the appraisal belongs to the design as it stands."""
        return self._appraisal is not None and self._appraisal.design is self._design

    def _apply(self, edit: Edit) -> None:
        self._design = edit.applied_to(self.design)
        self.edited.emit()
        if self._last_took_s <= AT_ONCE_S:
            self.appraise_now()
        else:
            self._pause.start()

    def _appraised(self) -> Appraisal:
        # Imported late: it brings numpy, which the window's first picture can do without.
        from chartmaker.appraisal import appraise

        began = time.perf_counter()
        appraisal = appraise(self.design, self.palette)
        self._last_took_s = time.perf_counter() - began
        return appraisal
