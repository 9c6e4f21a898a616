"""The list of keys, made from the action table and from what the chart and its columns do with keys."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QHeaderView, QLineEdit, QVBoxLayout, QWidget

from chartmaker.app.action import MENUS
from chartmaker.app.actions import ACTIONS
from chartmaker.app.control_keys import CONTROL_KEYS
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import plain, tr

if TYPE_CHECKING:
    from collections.abc import Iterator

KEYS_WIDTH = 250
"""Of the column of keys, in window units: longer ones go on in a second line."""
Row = tuple[str, str, str]
"""Where, what, and its keys, in the language of the window."""


class KeysDialog(QDialog):
    """Every key in one table, by menus and then by controls; words typed above it leave the rows that have them."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Keys"))
        self.resize(680, 600)
        self._rows = tuple(rows())
        self.words = QLineEdit()
        self.words.setAccessibleName(tr("Words to look for among the keys"))
        self.words.setPlaceholderText(tr("Words to look for, such as round or Ctrl"))
        self.words.setClearButtonEnabled(True)
        self.words.textChanged.connect(self._show)
        self.table = ReadingTable((tr("where"), tr("what"), tr("keys")), wide=1, name=tr("Keys"))
        self.table.setWordWrap(True)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(2, QHeaderView.ResizeMode.Interactive)
        header.resizeSection(2, KEYS_WIDTH)
        self.table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(self.words)
        layout.addWidget(self.table, 1)
        layout.addWidget(buttons)
        self._show()
        self.words.setFocus()

    def _show(self) -> None:
        """Show the rows that have all the words typed; a place is told once for all the rows that follow in it."""
        words = self.words.text().casefold().split()
        found = [row for row in self._rows if all(word in " ".join(row).casefold() for word in words)]
        shown, before = [], ""
        for where, what, keys in found:
            shown.append((Cell(where if where != before else "", is_strong=True), Cell(what), Cell(keys)))
            before = where
        self.table.show_rows(shown)


def rows() -> Iterator[Row]:
    """Give every key: of the action table by menus, then of the controls."""
    for menu, name in MENUS.items():
        for action in ACTIONS:
            if action.menu == menu and action.keys:
                yield plain(tr(name)), plain(tr(action.text)), native(action.keys)
    for entry in CONTROL_KEYS:
        yield tr(entry.where), tr(entry.what), tr(entry.keys)


def native(keys: tuple[str, ...]) -> str:
    """Write keys as the system does."""
    return ", ".join(QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText) for key in keys)
