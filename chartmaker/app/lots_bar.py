"""Above the lots: what is looked for, the order, and whether skeins or a table are shown."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QLineEdit, QPushButton, QWidget

from chartmaker.app.lots_lines import ORDER_WORDS, ORDERS
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings

ORDER_KEY, TABLE_KEY = "lots/order", "lots/table"


class LotsBar(QWidget):
    """Holds the page's choices; order and form are kept in the settings."""

    changed = Signal()
    """Something else is looked for, or another order or form is wished."""

    def __init__(self, settings: QSettings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        self.search = QLineEdit()
        self.search.setAccessibleName(tr("Look for lots"))
        self.search.setPlaceholderText(tr("Name, dyestuff, part, notes"))
        self.search.setClearButtonEnabled(True)
        self.order = QComboBox()
        self.order.setAccessibleName(tr("Order of the lots"))
        for name in ORDERS:
            self.order.addItem(tr(ORDER_WORDS[name]), name)
        self.order.setCurrentIndex(max(0, self.order.findData(str(settings.value(ORDER_KEY, "")))))
        self.table = QPushButton(tr("&Table"))
        self.table.setCheckable(True)
        self.table.setChecked(str(settings.value(TABLE_KEY, "")) == "yes")
        self.table.setToolTip(tr("Show the lots as a table of figures, or as skeins again"))
        self.search.textChanged.connect(self.changed)
        self.order.currentIndexChanged.connect(self._keep)
        self.table.toggled.connect(self._keep)
        label = QLabel(tr("&Order"))
        label.setBuddy(self.order)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        row.addWidget(self.search, 1)
        row.addWidget(label, 0, Qt.AlignmentFlag.AlignRight)
        row.addWidget(self.order)
        row.addWidget(self.table)

    @property
    def wanted_order(self) -> str:
        """One of `ORDERS`."""
        return str(self.order.currentData())

    def _keep(self) -> None:
        self._settings.setValue(ORDER_KEY, self.wanted_order)
        self._settings.setValue(TABLE_KEY, "yes" if self.table.isChecked() else "no")
        self.changed.emit()
