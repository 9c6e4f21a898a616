"""How many stitches a pattern's repeat has: typed, or taken from the counts that go round a whole number of times."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QSizePolicy, QSpinBox, QWidget

from chartmaker.app.words import tr
from chartmaker.model.bounds import MOST_STITCHES


class RepeatField(QWidget):
    """A number, and beside it what it comes to round the hat."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.spin = QSpinBox()
        self.spin.setRange(1, MOST_STITCHES)
        self.spin.setAccessibleName(tr("Stitches of the repeat"))
        self.spin.setToolTip(tr("Stitches of the repeat"))
        self.times = QComboBox()
        self.times.setAccessibleName(tr("Counts that go round the hat a whole number of times"))
        self.times.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.times.setMinimumContentsLength(12)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.spin)
        layout.addWidget(self.times, 1)
        self.setFocusProxy(self.spin)
        self.spin.valueChanged.connect(self._follow)
        self.times.activated.connect(lambda index: self.spin.setValue(self.times.itemData(index)))

    @property
    def stitches(self) -> int:
        """Stitches of the repeat."""
        return self.spin.value()

    def take_round(self, stitches: int) -> None:
        """Offer the counts that divide a round of so many stitches."""
        self.times.clear()
        self.times.setPlaceholderText(tr("does not divide {0}").format(stitches))
        self.times.setToolTip(tr("Counts that divide the {0} stitches of the band at the cursor").format(stitches))
        for count in range(2, min(stitches, MOST_STITCHES) + 1):
            if stitches % count == 0:
                self.times.addItem(tr("{0} × {1} times").format(count, stitches // count), count)
        self._show_times()

    def show_stitches(self, stitches: int) -> None:
        """Show a count that follows from something else: nothing is told of it."""
        self.spin.blockSignals(True)
        self.spin.setValue(stitches)
        self.spin.blockSignals(False)
        self._show_times()

    def _follow(self) -> None:
        self._show_times()
        self.changed.emit()

    def _show_times(self) -> None:
        self.times.setCurrentIndex(self.times.findData(self.spin.value(), Qt.ItemDataRole.UserRole))
