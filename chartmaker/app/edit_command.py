"""The one undo command: it carries any edit of the model."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QUndoCommand

from chartmaker.app.told import told

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.model.edits import Edit


class Step:
    """What a command does, held apart from it: Qt's stack owns its commands and lets them go as it likes."""

    def __init__(self, edit: Edit) -> None:
        self.edit = edit
        self.is_compact = False
        """Whether it takes up as little memory as it can."""

    def compact(self) -> None:
        """Take up less memory from now on, and a little longer to be undone."""
        # Imported late: the start can do without.
        from chartmaker.model.compact_edit import compacted

        if not self.is_compact:
            self.edit = compacted(self.edit)
            self.is_compact = True


class EditCommand(QUndoCommand):
    """Applies a step when it is pushed or redone, and its inverse when it is undone."""

    def __init__(self, step: Step, apply: Callable[[Edit], None]) -> None:
        super().__init__(told(step.edit.text))
        self._step = step
        self._apply = apply

    def redo(self) -> None:
        """Apply the edit."""
        self._apply(self._step.edit)

    def undo(self) -> None:
        """Apply its inverse."""
        self._apply(self._step.edit.inverse())
