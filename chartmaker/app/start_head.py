"""The head that a hat is for: measured, or of a named size with the table that it stands in."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from chartmaker.app.start_boxes import QuantityBox
from chartmaker.app.words import tr
from chartmaker.knit.sizes import Size, sizes, us_hat_size_text

if TYPE_CHECKING:
    from chartmaker.model.units import Units

MEASURED = 0
"""Place of what is no size in the list."""


class HeadBox(QWidget):
    """A list of sizes, and the girth, which can be typed in its place."""

    changed = Signal()

    def __init__(self, units: Units, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.size_box, self.girth = QComboBox(), QuantityBox(tr("Girth of the head"), 56.0, units.length, step=0.5)
        self.size_box.setAccessibleName(tr("Head"))
        self.size_box.setMinimumContentsLength(18)
        self.size_box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.size_box.addItem(tr("measured"))
        for _, group in groupby(sizes(), key=lambda size: size.source.split(":")[0]):
            self.size_box.insertSeparator(self.size_box.count())
            for size in group:
                self.size_box.addItem(f"{tr(size.name)}, {units.length.told(size.head_cm)}", size)
        self.setFocusProxy(self.size_box)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(self.size_box, 1)
        row.addWidget(self.girth)
        self.size_box.currentIndexChanged.connect(self._take_size)
        self.girth.changed.connect(self._take_girth)

    @property
    def head_cm(self) -> float:
        """The girth."""
        return self.girth.exact

    @property
    def size_name(self) -> str:
        """The size that is chosen; "" where the head was measured."""
        size = self._size
        return size.name if size else ""

    def show_head(self, head_cm: float, size_name: str = "") -> None:
        """Show a girth, or a size where there is one of that name; nothing is told of it."""
        listed = self._all()
        place = next((place for place, size in enumerate(listed) if size and size.name == size_name), MEASURED)
        with QSignalBlocker(self.size_box):
            self.size_box.setCurrentIndex(place)
        size = listed[place]
        self.girth.show_answer(size.head_cm if size else head_cm)

    def source(self) -> str:
        """Tell where the girth comes from."""
        size = self._size
        if size is not None:
            return tr(size.source)
        return tr("Measured round the widest place; US hat size {0}").format(us_hat_size_text(self.head_cm))

    @property
    def _size(self) -> Size | None:
        chosen = self.size_box.currentData()
        return chosen if isinstance(chosen, Size) else None

    def _all(self) -> list[Size | None]:
        given = (self.size_box.itemData(place) for place in range(self.size_box.count()))
        return [size if isinstance(size, Size) else None for size in given]

    def _take_size(self) -> None:
        size = self._size
        if size is not None:
            self.girth.show_answer(size.head_cm)
        self.changed.emit()

    def _take_girth(self) -> None:
        with QSignalBlocker(self.size_box):
            self.size_box.setCurrentIndex(MEASURED)
        self.changed.emit()
