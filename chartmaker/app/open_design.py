"""The design in the window: its file, its history of edits, and its appraisal, kept up to date."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QUndoStack

from chartmaker.app.appraiser import Appraiser, is_done_at_once
from chartmaker.app.edit_command import EditCommand, Step

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.appraisal import Appraisal
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.palette import Palette

STEPS_AT_HAND = 12
"""So many of the last steps are kept as they are; what lies further back is compacted."""
COMPACT_AFTER_MS = 400
"""That waits until the hand rests: a chart's worth of rounds takes longer than a frame."""


class OpenDesign(QObject):
    """One design being worked on. Everything that shows it listens here, and nothing else holds it."""

    replaced = Signal()
    """Another file, or a new design, is here; history begins anew."""
    edited = Signal()
    """An edit was applied, undone or redone."""
    appraised = Signal()
    """`appraisal` belongs to `design` again."""
    palette_taken = Signal()
    """`palette` is another one now."""
    failed = Signal(object)
    """The exception that kept the design from being appraised beside the window."""

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
        self._appraisal: Appraisal | None = None
        self._appraised_with: Palette | None = None
        self._steps: list[Step] = []
        """What the stack's commands do, the undone ones too."""
        self._compact_soon = QTimer(self, singleShot=True, interval=COMPACT_AFTER_MS)
        self._compact_soon.timeout.connect(self.compact_past)
        self.appraiser = Appraiser(self)
        self.appraiser.made.connect(self._take_appraisal)
        self.appraiser.failed.connect(self.failed)

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
        """What was last computed of the design; the first is made when it is first asked for.

        While a large design is being appraised it is that of an older one, whose rounds may have stood elsewhere.
        """
        return self._appraisal or self._appraise_here()

    def replace(self, design: Design, *, path: Path | None, palette: Palette | None) -> None:
        """Take up another design, with no history and nothing unsaved."""
        self._design, self.path, self.palette = design, path, palette
        self._appraise_here()
        self.stack.clear()
        self._steps.clear()
        self.stack.setClean()  # which clearing leaves undone where there was no history, but something unsaved
        self.palette_taken.emit()
        self.replaced.emit()
        self.appraised.emit()

    def take_palette(self, palette: Palette) -> None:
        """Let letters choose from another palette's lots too; the design itself does not change."""
        self.palette = palette
        self.palette_taken.emit()
        self._appraise()

    def do(self, edit: Edit | None) -> None:
        """Apply an edit as one step that can be undone; None is nothing to do."""
        if edit is not None:
            step = Step(edit)
            self._steps[self.stack.index() :] = [step]
            self.stack.push(EditCommand(step, self._apply))
            self._compact_soon.start()

    def compact_past(self) -> None:
        """Let steps take up less memory that are too far back to be undone in a hurry."""
        for step in reversed(self._steps[: max(0, self.stack.index() - STEPS_AT_HAND)]):
            if step.is_compact:
                break
            step.compact()

    def appraise_now(self) -> None:
        """Bring the appraisal up to date before going on."""
        if not self.is_appraised:
            self._appraise_here()
            self.appraised.emit()

    def finish(self) -> None:
        """Let nothing be computed any more, and wait for what is."""
        self.appraiser.finish()

    @property
    def is_appraised(self) -> bool:
        """Whether the appraisal belongs to the design as it stands."""
        appraisal = self._appraisal
        return appraisal is not None and appraisal.design is self._design and self._appraised_with is self.palette

    @property
    def has_appraisal(self) -> bool:
        """Whether there is one at all, be it of an older design."""
        return self._appraisal is not None

    def _apply(self, edit: Edit) -> None:
        self._design = edit.applied_to(self.design)
        self.edited.emit()
        self._appraise()

    def _appraise(self) -> None:
        """Appraise a small design at once, and have a large one appraised beside the window."""
        if is_done_at_once(self.design):
            self.appraise_now()
        else:
            self.appraiser.ask(self.design, self.palette)

    def _appraise_here(self) -> Appraisal:
        # Imported late: it brings numpy, which the window's first picture can do without.
        from chartmaker.appraisal import appraise

        self.appraiser.forget()
        appraisal = appraise(self.design, self.palette)
        self._appraisal, self._appraised_with = appraisal, self.palette
        return appraisal

    def _take_appraisal(self, appraisal: Appraisal) -> None:
        self._appraisal, self._appraised_with = appraisal, self.palette
        self.appraised.emit()
