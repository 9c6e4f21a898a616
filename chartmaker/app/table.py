"""A table to read: rows of text, numbers to the right, patches where there is a shade."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QHeaderView, QTableWidget, QTableWidgetItem, QWidget

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QIcon


@dataclass(frozen=True, slots=True)
class Cell:
    """What one cell shows."""

    text: str
    is_number: bool = False
    is_strong: bool = False
    icon: QIcon | None = None


class ReadingTable(QTableWidget):
    """Rows can be chosen and read out, not edited."""

    def __init__(self, headings: Sequence[str], *, wide: int, name: str, parent: QWidget | None = None) -> None:
        """Make an empty table; column `wide` takes what room is left."""
        super().__init__(0, len(headings), parent)
        self.setHorizontalHeaderLabels(list(headings))
        self.setAccessibleName(name)
        self.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QTableWidget.SelectionBehavior.SelectRows)
        self.setSelectionMode(QTableWidget.SelectionMode.SingleSelection)
        self.setShowGrid(False)
        self.setAlternatingRowColors(True)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setFrameShape(QTableWidget.Shape.NoFrame)
        self.setIconSize(QSize(30, 18))
        # Room between the columns, and a heading as quiet as the rest.
        self.setStyleSheet(
            "QTableView::item { padding: 0 8px; }"
            "QHeaderView { background: palette(base); }"
            "QHeaderView::section { padding: 4px 8px; border: 0; background: palette(base); }"
        )
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(28)
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(wide, QHeaderView.ResizeMode.Stretch)
        header.setMinimumSectionSize(44)

    def show_rows(self, rows: Sequence[Sequence[Cell]]) -> None:
        """Show these rows in place of what is there; the chosen row stays chosen."""
        chosen = self.currentRow()
        header = self.horizontalHeader()
        modes = [header.sectionResizeMode(place) for place in range(self.columnCount())]
        # Columns as wide as their contents would be measured anew for every cell: seconds for a full palette.
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.setRowCount(len(rows))
        for line, cells in enumerate(rows):
            for place, cell in enumerate(cells):
                self.setItem(line, place, _item(cell))
        for place, mode in enumerate(modes):
            header.setSectionResizeMode(place, mode)
        for place in range(self.columnCount()):
            align = _alignment(is_number=bool(rows) and rows[0][place].is_number)
            heading = self.horizontalHeaderItem(place)
            if heading is not None:
                heading.setTextAlignment(align)
        self.setCurrentCell(min(chosen, len(rows) - 1), 0)


def _item(cell: Cell) -> QTableWidgetItem:
    item = QTableWidgetItem(cell.text)
    item.setTextAlignment(_alignment(is_number=cell.is_number))
    item.setToolTip(cell.text)
    if cell.icon is not None:
        item.setIcon(cell.icon)
    if cell.is_strong:
        font = item.font()
        font.setBold(True)
        item.setFont(font)
    return item


def _alignment(*, is_number: bool) -> Qt.AlignmentFlag:
    side = Qt.AlignmentFlag.AlignRight if is_number else Qt.AlignmentFlag.AlignLeft
    return side | Qt.AlignmentFlag.AlignVCenter
