"""The design in the window: its file, its history of edits, and its appraisal, kept up to date."""

from __future__ import annotations

import time
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QUndoStack

from chartmaker.app.edit_command import EditCommand
from chartmaker.appraisal import Appraisal, appraise

if TYPE_CHECKING:
    from pathlib import Path

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

    def __init__(self, design: Design, *, path: Path | None = None, palette: Palette | None = None) -> None:
        super().__init__()
        self.stack = QUndoStack(self)
        self.design = design
        self.path = path
        self.palette = palette
        self._last_took_s = 0.0
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self.appraise_now)
        self.appraisal: Appraisal = self._appraised()

    def replace(self, design: Design, *, path: Path | None, palette: Palette | None) -> None:
        """Take up another design, with no history and nothing unsaved."""
        self._pause.stop()
        self.design, self.path, self.palette = design, path, palette
        self.appraisal = self._appraised()
        self.stack.clear()
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
        self.appraisal = self._appraised()
        self.appraised.emit()

    @property
    def is_appraised(self) -> bool:
        """Whether the appraisal belongs to the design as it stands."""
        return self.appraisal.design is self.design

    def _apply(self, edit: Edit) -> None:
        self.design = edit.applied_to(self.design)
        self.edited.emit()
        if self._last_took_s <= AT_ONCE_S:
            self.appraise_now()
        else:
            self._pause.start()

    def _appraised(self) -> Appraisal:
        began = time.perf_counter()
        appraisal = appraise(self.design, self.palette)
        self._last_took_s = time.perf_counter() - began
        return appraisal
