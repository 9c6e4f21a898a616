"""The palette in the window: its value, its file's place, and a history of its own; the one door for changes to it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from chartmaker.app.told import told

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.model.palette import Palette
    from chartmaker.model.palette_edits import PaletteEdit


class PaletteCommand(QUndoCommand):
    """Applies an edit of the palette when it is pushed or redone, and its inverse when it is undone."""

    def __init__(self, edit: PaletteEdit, apply: Callable[[PaletteEdit], None]) -> None:
        super().__init__(told(edit.text))
        self._edit = edit
        self._apply = apply

    def redo(self) -> None:
        """Apply the edit."""
        self._apply(self._edit)

    def undo(self) -> None:
        """Apply its inverse."""
        self._apply(self._edit.inverse())


class OpenPalette(QObject):
    """The palette that the design's letters may choose from, while it is worked on.

    The value stands in the `OpenDesign`, whose appraisal follows it; the design's own copies of lots stay as they are.
    A palette that comes into the design by another way begins a new history, and has no file.
    """

    changed = Signal()
    """The palette, its file, or whether it is saved, is another now."""

    def __init__(self, document: OpenDesign) -> None:
        super().__init__(document)
        self._document = document
        self._own = document.palette
        self.path: Path | None = None
        self.stack = QUndoStack(self)
        self.stack.cleanChanged.connect(self.changed)
        document.palette_taken.connect(self._follow)

    @property
    def palette(self) -> Palette:
        """The palette as it stands; an empty one where none is open."""
        from chartmaker.model.palette import Palette

        return self._document.palette or Palette()

    @property
    def is_there(self) -> bool:
        """Whether a palette is open."""
        return self._document.palette is not None

    @property
    def is_modified(self) -> bool:
        """Whether something of it is not saved."""
        return not self.stack.isClean()

    def take(self, palette: Palette, path: Path | None) -> None:
        """Take up another palette, with no history and nothing unsaved."""
        self.path = path
        self._show(palette)
        self.stack.clear()
        self.stack.setClean()  # which clearing leaves undone where there was no history, but something unsaved
        self.changed.emit()

    def do(self, edit: PaletteEdit | None) -> None:
        """Apply an edit as one step that can be undone; None, or one that changes nothing, is nothing to do.

        Raises ValueError where the edit remembers another palette.
        """
        if edit is not None and edit.applied_to(self.palette) != self.palette:
            self.stack.push(PaletteCommand(edit, self._apply))

    def apply(self, palette: Palette, text: str) -> None:
        """Put a changed palette in the place of the present one, as one step: a whole taking of measurements, say."""
        from chartmaker.model.palette_edits import ReplacePalette

        self.do(ReplacePalette(self.palette, palette, text))

    def _apply(self, edit: PaletteEdit) -> None:
        self._show(edit.applied_to(self.palette))
        self.changed.emit()

    def _show(self, palette: Palette) -> None:
        self._own = palette
        self._document.take_palette(palette)

    def _follow(self) -> None:
        """Begin anew where another palette came into the design than was put there here."""
        if self._document.palette is not self._own:
            self._own = self._document.palette
            self.path = None
            self.stack.clear()
            self.stack.setClean()
            self.changed.emit()
