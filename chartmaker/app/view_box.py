"""Chooses how the chart is seen: every view with its key."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QWidget

from chartmaker.app.views import VIEWS
from chartmaker.app.words import tr


class ViewBox(QWidget):
    """A word and a list of the views."""

    chosen = Signal(str)
    """The id of the view that was chosen."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.list = QComboBox()
        self.list.setAccessibleName(tr("View"))
        self.list.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        for view in VIEWS:
            self.list.addItem(f"{view.key}   {tr(view.words)}", view.id)
        self.list.setToolTip(tr("How the chart is seen; each view has the key beside it."))
        self.list.setMaxVisibleItems(len(VIEWS))
        self.list.activated.connect(lambda line: self.chosen.emit(self.list.itemData(line)))
        label = QLabel(tr("View"))
        label.setBuddy(self.list)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 6, 0)
        row.setSpacing(6)
        row.addWidget(label)
        row.addWidget(self.list)

    def show_view(self, name: str) -> None:
        """Mark the view that is shown."""
        self.list.setCurrentIndex(self.list.findData(name))
