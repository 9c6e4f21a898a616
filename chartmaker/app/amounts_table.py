"""A short table of names and amounts that is written in: the mordants of a bath, or its assists."""

from __future__ import annotations

from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHeaderView, QTableWidget, QTableWidgetItem

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from PySide6.QtGui import QFocusEvent

_T = TypeVar("_T")
WRITTEN_BY = (
    QTableWidget.EditTrigger.AnyKeyPressed
    | QTableWidget.EditTrigger.EditKeyPressed
    | QTableWidget.EditTrigger.SelectedClicked
    | QTableWidget.EditTrigger.DoubleClicked
)
"""What begins to write in a cell: typing at it, F2, and clicks."""


class AmountsTable(QTableWidget):
    """One empty row stands below for what is to be added; a row whose name is emptied, or Delete, goes."""

    def __init__(self, heading: str, unit: str, rows: Sequence[tuple[str, float]]) -> None:
        super().__init__(0, 2)
        self.setHorizontalHeaderLabels([heading, unit])
        self.verticalHeader().hide()
        self.horizontalHeader().setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self.horizontalHeader().setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        self.setTabKeyNavigation(False)
        self.setFixedHeight(118)
        self.setEditTriggers(WRITTEN_BY)
        for name, amount in rows:
            self._append(name, f"{amount:.12g}")
        self._append("", "")
        self.cellChanged.connect(self._follow)
        remove = QShortcut(QKeySequence(QKeySequence.StandardKey.Delete), self)
        remove.setContext(Qt.ShortcutContext.WidgetShortcut)
        remove.activated.connect(self._remove)

    def read(self, make: Callable[[str, float], _T]) -> tuple[_T, ...]:
        """Give what the rows say, each made by `make`; empty rows are passed over.

        Raises ValueError, with a sentence, where a row is no name and amount.
        """
        found = []
        for row in range(self.rowCount()):
            name, amount = self._text(row, 0), self._text(row, 1)
            if not name and not amount:
                continue
            try:
                value = float(amount.replace(",", "."))
            except ValueError:
                raise ValueError(f"the amount of {name or 'a row'} is {amount!r}, which is not a number") from None
            found.append(make(name, value))
        return tuple(found)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Come in at the first cell, so that typing begins there."""
        super().focusInEvent(event)
        if self.currentRow() < 0:
            self.setCurrentCell(0, 0)

    def _text(self, row: int, column: int) -> str:
        item = self.item(row, column)
        return item.text().strip() if item else ""

    def _append(self, name: str, amount: str) -> None:
        row = self.rowCount()
        self.insertRow(row)
        for column, text in enumerate((name, amount)):
            item = QTableWidgetItem(text)
            if column:
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            self.setItem(row, column, item)

    def _follow(self, row: int, _column: int) -> None:
        """Keep one empty row at the end."""
        if row == self.rowCount() - 1 and self._text(row, 0):
            self.blockSignals(True)
            self._append("", "")
            self.blockSignals(False)

    def _remove(self) -> None:
        row = self.currentRow()
        if 0 <= row < self.rowCount() - 1:
            self.removeRow(row)
            self.cellChanged.emit(row, 0)
