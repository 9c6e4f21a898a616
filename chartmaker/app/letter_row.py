"""A row of letters in an order of one's own: each is ticked or not, and moved by dragging or by keys."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QWidget

from chartmaker.app.letter_menu import letter_words, letters_known, patch_icon
from chartmaker.app.shades import colour_of, known_shade
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Collection

    from PySide6.QtGui import QKeyEvent

    from chartmaker.appraisal import Appraisal

LINES_IN_SIGHT = 8
LETTER = Qt.ItemDataRole.UserRole


class LetterRow(QListWidget):
    """Lists the letters known to a design, at first by value from light to dark, those without a shade last."""

    changed = Signal()
    """Other letters are ticked, or they stand in another order."""

    def __init__(self, appraisal: Appraisal, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Letters in their order"))
        self.setToolTip(tr("Space ticks a letter; drag it, or press Alt with up or down, to move it"))
        self.setIconSize(QSize(26, 16))
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMinimumWidth(300)
        self.setDragDropMode(QAbstractItemView.DragDropMode.InternalMove)
        self.setDefaultDropAction(Qt.DropAction.MoveAction)
        for letter in by_value(appraisal):
            item = QListWidgetItem(
                patch_icon(colour_of(known_shade(appraisal, letter))), letter_words(appraisal, letter)
            )
            item.setToolTip(item.text())
            item.setData(LETTER, letter)
            item.setFlags(
                Qt.ItemFlag.ItemIsEnabled
                | Qt.ItemFlag.ItemIsSelectable
                | Qt.ItemFlag.ItemIsUserCheckable
                | Qt.ItemFlag.ItemIsDragEnabled
            )
            item.setCheckState(Qt.CheckState.Checked)
            self.addItem(item)
        self.setCurrentRow(0)
        self.setMinimumHeight(min(self.count(), LINES_IN_SIGHT) * max(20, self.sizeHintForRow(0)) + 6)
        self.itemChanged.connect(lambda _item: self.changed.emit())
        self.model().rowsMoved.connect(lambda *_: self.changed.emit())

    @property
    def chosen(self) -> str:
        """The letters that are ticked, in their order."""
        items = [self.item(row) for row in range(self.count())]
        return "".join(item.data(LETTER) for item in items if item.checkState() == Qt.CheckState.Checked)

    def choose_all_but(self, letters: Collection[str]) -> None:
        """Tick all but these letters; all, where none would be left."""
        items = [self.item(row) for row in range(self.count())]
        left = [item for item in items if item.data(LETTER) not in letters] or items
        self.blockSignals(True)
        for item in items:
            item.setCheckState(Qt.CheckState.Checked if item in left else Qt.CheckState.Unchecked)
        self.blockSignals(False)
        self.changed.emit()

    def earlier(self) -> None:
        """Let the current letter change places with the one before."""
        self._move(-1)

    def later(self) -> None:
        """Let the current letter change places with the one after."""
        self._move(1)

    def reverse(self) -> None:
        """Turn the order round."""
        self.blockSignals(True)
        current = self.currentItem()
        for item in [self.takeItem(self.count() - 1) for _ in range(self.count())]:
            self.addItem(item)
        self.setCurrentItem(current)
        self.blockSignals(False)
        self.changed.emit()

    def _move(self, by: int) -> None:
        row = self.currentRow()
        if row < 0 or not 0 <= row + by < self.count():
            return
        self.blockSignals(True)
        self.insertItem(row + by, self.takeItem(row))
        self.setCurrentRow(row + by)
        self.blockSignals(False)
        self.changed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move the current letter with Alt and up or down."""
        by = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()), 0)
        if by and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self._move(by)
        else:
            super().keyPressEvent(event)


def by_value(appraisal: Appraisal) -> str:
    """Give the letters known to a design from light to dark; those whose shade is not known come last."""

    def darkness(letter: str) -> float:
        shade = known_shade(appraisal, letter)
        return 1.0 if shade is None else -shade.value

    return "".join(sorted(letters_known(appraisal), key=darkness))
