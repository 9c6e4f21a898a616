"""The one undo command: it carries any edit of the model."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QUndoCommand

from chartmaker.app.told import told

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.model.edits import Edit


class EditCommand(QUndoCommand):
    """Applies an edit when it is pushed or redone, and its inverse when it is undone."""

    def __init__(self, edit: Edit, apply: Callable[[Edit], None]) -> None:
        super().__init__(told(edit.text))
        self._edit = edit
        self._apply = apply
        self.is_compact = False
        """Whether it takes up as little memory as it can."""

    def compact(self) -> None:
        """Take up less memory from now on, and a little longer to be undone."""
        # Imported late: the start can do without.
        from chartmaker.model.compact_edit import compacted

        if not self.is_compact:
            self._edit = compacted(self._edit)
            self.is_compact = True

    def redo(self) -> None:
        """Apply the edit."""
        self._apply(self._edit)

    def undo(self) -> None:
        """Apply its inverse."""
        self._apply(self._edit.inverse())
