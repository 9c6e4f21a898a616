"""The lots of the page as Qt's views take them: lines in their order, with headings between the groups."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QAbstractListModel, QMimeData, QModelIndex, QPersistentModelIndex, Qt

from chartmaker.app.lots_lines import LotLine
from chartmaker.app.words import plain_tip, tr

if TYPE_CHECKING:
    from collections.abc import Sequence

LOT_TYPE = "application/x-chartmaker-lot"
"""What a lot is called while it is dragged: its id, as UTF-8."""
Index = QModelIndex | QPersistentModelIndex
TOP = QModelIndex()


class LotsModel(QAbstractListModel):
    """Rows are lines, or texts that head a group; a heading cannot be chosen."""

    def __init__(self) -> None:
        super().__init__()
        self._rows: list[LotLine | str] = []

    def show_lines(self, lines: Sequence[LotLine], *, is_grouped: bool) -> None:
        """Take these lines, with a heading above each dyestuff where they are grouped."""
        rows: list[LotLine | str] = []
        heading = None
        for line in lines:
            group = line.dyestuff or tr("without a bath")
            if is_grouped and group != heading:
                rows.append(group)
                heading = group
            rows.append(line)
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def line(self, index: Index) -> LotLine | None:
        """Give the line at a place; None for a heading or for no place."""
        row = self._rows[index.row()] if index.isValid() else None
        return row if isinstance(row, LotLine) else None

    def heading(self, index: Index) -> str:
        """Give the heading at a place, or nothing."""
        row = self._rows[index.row()] if index.isValid() else None
        return row if isinstance(row, str) else ""

    def place_of(self, lot_id: str) -> QModelIndex:
        """Give where a lot stands; no place where it is not shown."""
        for number, row in enumerate(self._rows):
            if isinstance(row, LotLine) and row.lot.id == lot_id:
                return self.index(number)
        return QModelIndex()

    @property
    def lines(self) -> list[LotLine]:
        """The lines without the headings."""
        return [row for row in self._rows if isinstance(row, LotLine)]

    def rowCount(self, parent: Index = TOP) -> int:
        """Give how many lines and headings there are."""
        return 0 if parent.isValid() else len(self._rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Give a line's name, what is told of it beyond the name, and both as a tip."""
        row = self._rows[index.row()]
        if isinstance(row, str):
            return row if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole) else None
        match role:
            case Qt.ItemDataRole.DisplayRole | Qt.ItemDataRole.AccessibleTextRole:
                return row.lot.name
            case Qt.ItemDataRole.AccessibleDescriptionRole:
                return row.description
            case Qt.ItemDataRole.ToolTipRole:
                return plain_tip(f"{row.lot.name}: {row.description}")
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Let lots be chosen and dragged, and headings not even be passed."""
        if self.line(index) is None:
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemIsDragEnabled

    def mimeTypes(self) -> list[str]:
        """Give the one type that a lot is dragged as."""
        return [LOT_TYPE]

    def mimeData(self, indexes: Sequence[QModelIndex]) -> QMimeData:
        """Give the first of the dragged lots by its id."""
        data = QMimeData()
        line = next((line for line in map(self.line, indexes) if line), None)
        if line:
            data.setData(LOT_TYPE, line.lot.id.encode())
        return data
