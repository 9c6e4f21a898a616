"""A table of the store that is written in: a row a thing, and an empty row below for what comes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QComboBox, QHeaderView, QTableWidget, QTableWidgetItem, QWidget

from chartmaker.app.amounts_table import WRITTEN_BY
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QFocusEvent

ROW_HEIGHT = 28
KEYS_HERE = (Qt.Key.Key_F2, Qt.Key.Key_Delete)


@dataclass(frozen=True, slots=True)
class Column:
    """One column."""

    title: str
    is_number: bool = False
    is_fixed: bool = False
    """Whether it names the row, and is not written in."""
    choices: tuple[str, ...] = ()


Row = tuple[str, ...]
"""What stands in one row, numbers as they are typed."""


class StoreTable(QTableWidget):
    """Told of as soon as a cell was written in; Delete takes the row out."""

    written = Signal()
    """Something in it is another now."""

    def __init__(self, name: str, columns: Sequence[Column], *, wide: int, grows: bool = True) -> None:
        """Take the name that is spoken, the columns, which takes what room is left, and if rows can be added."""
        super().__init__(0, len(columns))
        self._columns = columns
        self._grows = grows
        self.setAccessibleName(name)
        self.setHorizontalHeaderLabels([column.title for column in columns])
        self.setEditTriggers(WRITTEN_BY)
        self.setTabKeyNavigation(False)
        self.setToolTip(tr("Typing, or F2, writes in a cell; Delete removes its row") if grows else "")
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        header = self.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(wide, QHeaderView.ResizeMode.Stretch)
        self.cellChanged.connect(self._follow)

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show these rows, and the empty one below; the cell at hand stays at hand."""
        at = self.currentRow(), self.currentColumn()
        self.blockSignals(True)
        self.setRowCount(0)
        for row in rows:
            self._append(row)
        if self._grows:
            self._append(("",) * len(self._columns))
        self.blockSignals(False)
        self.setFixedHeight(self.horizontalHeader().sizeHint().height() + ROW_HEIGHT * min(6, self.rowCount()) + 6)
        if at[0] >= 0:
            self.setCurrentCell(min(at[0], self.rowCount() - 1), at[1])

    def rows(self) -> list[Row]:
        """Give the rows in which something stands."""
        found = [self._row(row) for row in range(self.rowCount())]
        return [row for row in found if any(map(self._is_written, row, self._columns))]

    def event(self, event: QEvent) -> bool:
        """Keep the keys that write here from the window's actions."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            shift_or_none = event.modifiers() in {Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier}
            if shift_or_none and (event.text().isprintable() or event.key() in KEYS_HERE):
                event.accept()
                return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take a row out by Delete."""
        if event.key() == Qt.Key.Key_Delete:
            self._remove()
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Come in at the first cell, so that typing begins there."""
        super().focusInEvent(event)
        if self.currentRow() < 0:
            self.setCurrentCell(0, 0)

    def _row(self, row: int) -> Row:
        return tuple(self._text(row, column) for column in range(len(self._columns)))

    def _is_written(self, text: str, column: Column) -> bool:
        return bool(text) and not column.choices  # a choice is always made

    def _text(self, row: int, column: int) -> str:
        box = self.cellWidget(row, column)
        if isinstance(box, QComboBox):
            return self._columns[column].choices[box.currentIndex()]
        item = self.item(row, column)
        return item.text().strip() if item else ""

    def _append(self, texts: Row) -> None:
        row = self.rowCount()
        self.insertRow(row)
        for place, (text, column) in enumerate(zip(texts, self._columns, strict=True)):
            if column.choices:
                self.setCellWidget(row, place, self._box(text, column))
                continue
            item = QTableWidgetItem(text)
            if column.is_number:
                item.setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            if column.is_fixed:
                item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEditable)
            self.setItem(row, place, item)

    def _box(self, text: str, column: Column) -> QWidget:
        box = QComboBox()
        box.setAccessibleName(column.title)
        box.addItems([tr(choice) for choice in column.choices])
        box.setCurrentIndex(max(0, column.choices.index(text) if text in column.choices else 0))
        box.currentIndexChanged.connect(lambda _index: self.written.emit())
        return box

    def _follow(self, _row: int, _column: int) -> None:
        self.written.emit()

    def _remove(self) -> None:
        row = self.currentRow()
        if self._grows and 0 <= row < self.rowCount() - 1:
            self.removeRow(row)
            self.written.emit()
