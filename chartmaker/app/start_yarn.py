"""The yarn that a hat is knitted in: its grist, typed or that of a yarn of the palette."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from chartmaker.app.start_boxes import QuantityBox
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.model.palette import Palette
    from chartmaker.model.units import Units

TYPED = 0
"""Place of what is no yarn in the list."""


class YarnBox(QWidget):
    """A list of the palette's yarns, which is there when the palette has any, and the grist."""

    changed = Signal()

    def __init__(self, palette: Palette | None, units: Units, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.yarns = QComboBox()
        self.yarns.setAccessibleName(tr("Yarn of the palette"))
        self.yarns.setMinimumContentsLength(14)
        self.yarns.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.yarns.addItem(tr("another yarn"))
        for yarn in palette.yarns if palette else ():
            if yarn.metres_per_100g is not None:
                self.yarns.addItem(yarn.name, yarn)
        self.yarns.setVisible(self.yarns.count() > 1)
        self.grist = QuantityBox(tr("Grist"), 420.0, units.grist, step=5.0)
        self.setFocusProxy(self.yarns if self.yarns.count() > 1 else self.grist)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(self.yarns, 1)
        row.addWidget(self.grist)
        row.addStretch(0 if self.yarns.count() > 1 else 1)
        self.yarns.currentIndexChanged.connect(self._take_yarn)
        self.grist.changed.connect(self._take_grist)

    @property
    def metres_per_100g(self) -> float:
        """The grist."""
        return self.grist.exact

    @property
    def first_grist(self) -> float | None:
        """The grist of the palette's first yarn; None where it has none."""
        return self.yarns.itemData(1).metres_per_100g if self.yarns.count() > 1 else None

    def show_grist(self, metres_per_100g: float) -> None:
        """Show a grist, and the first yarn of the palette that has it; nothing is told of it."""
        places = range(1, self.yarns.count())
        same = (place for place in places if self.yarns.itemData(place).metres_per_100g == metres_per_100g)
        self.grist.show_answer(metres_per_100g)
        with QSignalBlocker(self.yarns):
            self.yarns.setCurrentIndex(next(same, TYPED))

    def source(self) -> str:
        """Tell where the grist comes from."""
        if self.yarns.currentIndex() > TYPED:
            return tr("As the palette has it")
        return tr("As its label says")

    def _take_yarn(self) -> None:
        yarn = self.yarns.currentData()
        if yarn is not None:
            self.grist.show_answer(yarn.metres_per_100g)
        self.changed.emit()

    def _take_grist(self) -> None:
        with QSignalBlocker(self.yarns):
            self.yarns.setCurrentIndex(TYPED)
        self.changed.emit()
