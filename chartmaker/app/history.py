"""Which history undo and redo act on: the design's, or where the palette is worked on, the palette's."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QUndoStack

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.open_palette import OpenPalette


PALETTE_PAGES = ("lots", "baths")
"""Where undo acts on the palette."""


class History(QObject):
    """Two histories, of which the page at hand decides.

    On the Lots and Baths pages a step of the design can be taken back too, if it was the last thing done there: copies
    refreshed, say. Steps of the design from other pages, which are not in sight then, are left alone.
    """

    def __init__(self, document: OpenDesign, palette: OpenPalette) -> None:
        super().__init__(document)
        self._design, self._palette = document.stack, palette.stack
        self._is_on_palette = False
        self._last = self._palette
        self._floor = 0
        self._design.indexChanged.connect(self._note_design)
        self._palette.indexChanged.connect(self._note_palette)

    def turn_to(self, page: str) -> None:
        """Follow the window to a page."""
        is_on_palette = page in PALETTE_PAGES
        if is_on_palette and not self._is_on_palette:
            self._last, self._floor = self._palette, self._design.index()
        self._is_on_palette = is_on_palette

    @property
    def undoing(self) -> QUndoStack:
        """The history that undo acts on now."""
        if not self._is_on_palette or (self._last is self._design and self._design.index() > self._floor):
            return self._design
        return self._palette

    @property
    def redoing(self) -> QUndoStack:
        """The history that redo acts on now."""
        if not self._is_on_palette or (self._last is self._design and self._design.canRedo()):
            return self._design
        return self._palette

    def undo_words(self) -> str:
        """Give what would be taken back, and on those pages of what it is a step."""
        return self._words(self.undoing.undoText(), self.undoing)

    def redo_words(self) -> str:
        """Give what would be done again, and on those pages of what it is a step."""
        return self._words(self.redoing.redoText(), self.redoing)

    def _words(self, text: str, stack: QUndoStack) -> str:
        if not text or not self._is_on_palette:
            return text
        return (tr("{0} (palette)") if stack is self._palette else tr("{0} (design)")).format(text)

    def _note_design(self, _index: int) -> None:
        self._note(self._design)

    def _note_palette(self, _index: int) -> None:
        self._note(self._palette)

    def _note(self, stack: QUndoStack) -> None:
        if self._is_on_palette:
            self._last = stack
