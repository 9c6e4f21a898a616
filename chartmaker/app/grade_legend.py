"""The colours of how tight the hat sits, each with its word."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QColor, QPainter
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QWidget

from chartmaker.app.flow_row import FlowRow
from chartmaker.app.words import tr
from chartmaker.knit.tightness import GRADES
from chartmaker.pictures.tightness_ramp import RAMP

if TYPE_CHECKING:
    from collections.abc import Set as AbstractSet

    from PySide6.QtGui import QPaintEvent

SIDE = 14


class GradeLegend(FlowRow):
    """Those grades that the hat has."""

    def __init__(self, parent: QWidget | None = None) -> None:
        self._entries = {grade: _Entry(QColor(*RAMP[grade]), tr(grade)) for grade in GRADES}
        super().__init__(list(self._entries.values()), parent)

    def show_grades(self, grades: AbstractSet[str]) -> None:
        """Show these."""
        for grade, entry in self._entries.items():
            entry.setVisible(grade in grades)


class _Entry(QWidget):
    def __init__(self, colour: QColor, word: str) -> None:
        super().__init__()
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 10, 0)
        row.setSpacing(5)
        row.addWidget(_Swatch(colour))
        row.addWidget(QLabel(word))


class _Swatch(QWidget):
    def __init__(self, colour: QColor) -> None:
        super().__init__()
        self._colour = colour
        self.setFixedSize(SIDE, SIDE)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.palette().windowText().color())
        painter.fillRect(self.rect().adjusted(1, 1, -1, -1), self._colour)
