"""Shows in what a design's copies of lots and the palette differ, and brings together those that are chosen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QPushButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.words import tr
from chartmaker.model.units import METRIC, Units, in_units

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from chartmaker.model.copies import StaleCopy
    from chartmaker.model.palette import Lot


class CopiesDialog(QDialog):
    """Two lists with a button each: copies that are stale, and lots that the palette does not have."""

    def __init__(  # noqa: PLR0913 - both lists, and what is done with each
        self,
        stale: Sequence[StaleCopy],
        missing: Sequence[Lot],
        *,
        refresh: Callable[[list[str]], None],
        add: Callable[[list[str]], None],
        units: Units = METRIC,
        parent: QWidget | None = None,
    ) -> None:
        """Take what there is to choose from, and what to do with the ids of those chosen."""
        super().__init__(parent)
        self.setWindowTitle(tr("Lots of the design and of the palette"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(680, 460)
        self._units = units
        self.stale = _tree((tr("lot"), tr("in the design"), tr("in the palette")), tr("Lots that differ"))
        self.missing = _tree((tr("lot"),), tr("Lots that the palette does not have"))
        self.refresh = QPushButton(tr("&Refresh the chosen copies"))
        self.add = QPushButton(tr("&Add the chosen to the palette"))
        for copy in stale:
            self._fill_copy(copy)
        for lot in missing:
            _checked(self.missing, lot)
        self.stale.expandAll()
        self._act(self.refresh, self.stale, refresh)
        self._act(self.add, self.missing, add)
        layout = QVBoxLayout(self)
        for label, tree, button, is_there in (
            (tr("These copies differ from the palette; refreshed, they are as it has them."), *self._upper(), stale),
            (tr("The palette does not have these lots of the design."), *self._lower(), missing),
        ):
            if is_there:
                layout.addWidget(_sentence(label))
                layout.addWidget(tree, 1)
                layout.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        if not stale and not missing:
            layout.addWidget(_sentence(tr("Every lot of the design is as the palette has it.")), 1)
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        close.rejected.connect(self.reject)
        layout.addWidget(close)

    def _upper(self) -> tuple[QTreeWidget, QPushButton]:
        return self.stale, self.refresh

    def _lower(self) -> tuple[QTreeWidget, QPushButton]:
        return self.missing, self.add

    def _fill_copy(self, copy: StaleCopy) -> None:
        item = _checked(self.stale, copy.lot)
        for difference in copy.differences:
            values = (in_units(text, self._units) for text in (difference.here, difference.there))
            QTreeWidgetItem(item, [tr(difference.what), *values])

    def _act(self, button: QPushButton, tree: QTreeWidget, act: Callable[[list[str]], None]) -> None:
        def run() -> None:
            self.accept()
            act(_chosen(tree))

        def follow() -> None:
            button.setEnabled(bool(_chosen(tree)))

        button.clicked.connect(run)
        tree.itemChanged.connect(lambda _item, _column: follow())
        follow()


def _tree(headings: Sequence[str], name: str) -> QTreeWidget:
    tree = QTreeWidget()
    tree.setAccessibleName(name)
    tree.setHeaderLabels(list(headings))
    tree.setTabKeyNavigation(False)
    if len(headings) > 1:
        for column in range(len(headings)):
            tree.header().setSectionResizeMode(column, QHeaderView.ResizeMode.Stretch)
    return tree


def _checked(tree: QTreeWidget, lot: Lot) -> QTreeWidgetItem:
    item = QTreeWidgetItem(tree, [lot.name])
    item.setData(0, Qt.ItemDataRole.UserRole, lot.id)
    item.setCheckState(0, Qt.CheckState.Checked)
    item.setFirstColumnSpanned(True)
    return item


def _chosen(tree: QTreeWidget) -> list[str]:
    items = [tree.topLevelItem(row) for row in range(tree.topLevelItemCount())]
    return [
        str(item.data(0, Qt.ItemDataRole.UserRole))
        for item in items
        if item is not None and item.checkState(0) == Qt.CheckState.Checked
    ]


def _sentence(text: str) -> QLabel:
    label = QLabel(text)
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    return label
