"""Boxes for numbers in the units of the window, and a count over a length as a knitter takes it from a swatch."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtGui import QValidator
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QWidget

from chartmaker.app.number_boxes import PlainNumberBox
from chartmaker.app.words import tr
from chartmaker.model.units import IMPERIAL, SYSTEMS, Quantity

if TYPE_CHECKING:
    from collections.abc import Mapping

    from chartmaker.model.units import Units

MOST = 9999.0
"""Of what can be typed; what can be knitted the model says."""
UNCOUNTED, WHOLE = Quantity(1.0, "", 2), Quantity(1.0, "", 0)
"""Numbers that are the same in every system."""
USUAL_WIDTH = 88
NUMBER_AND_UNIT = re.compile(r"\s*([\d.,]+)\s*([a-z]+)\s*")


class QuantityBox(PlainNumberBox):
    """Shows a metric number in the units of the window; a length may be typed with the other system's unit, too."""

    changed = Signal()
    """The user gave another number."""

    def __init__(self, name: str, metric: float, quantity: Quantity = UNCOUNTED, *, step: float = 1.0) -> None:
        """Take what a screen reader calls it, and a quantity; one without places after the point is a whole number."""
        super().__init__()
        self._quantity, self._metric = quantity, metric
        self.setDecimals(2 if quantity.digits else 0)
        self.setRange(-MOST, MOST)
        self.setSingleStep(step / 2 if quantity is IMPERIAL.length else step)
        self.setSuffix(tr(quantity.unit))
        self.setAccessibleName(name)
        self.setToolTip(name)
        self.setMinimumWidth(USUAL_WIDTH)
        self.show_answer(metric)
        self.valueChanged.connect(self._take)

    @property
    def exact(self) -> float:
        """The number in the files' own unit; what was not typed stays exact."""
        return self._metric

    @property
    def answer(self) -> float:
        """The same, as the answer to a question: whole where only whole numbers can be."""
        return round(self._metric) if self._quantity is WHOLE else self._metric

    def show_answer(self, metric: float) -> None:
        """Show another number; nothing is told of it."""
        self._metric = metric
        shown = round(self._quantity.shown(metric), 2)
        if shown != self.value():
            with QSignalBlocker(self):
                self.setValue(shown)

    def told(self, metric: float) -> str:
        """Write a number as this box would show it."""
        return self.textFromValue(self._quantity.shown(metric)) + self.suffix()

    def validate(self, text: str, place: int) -> tuple[QValidator.State, str, int]:
        """Let the other system's unit of length stand there, and be typed letter by letter."""
        found = self._elsewhere(text)
        if found is None:
            return super().validate(text, place)
        state = QValidator.State.Acceptable if found[2] == found[1].unit.strip() else QValidator.State.Intermediate
        return state, text, place

    def valueFromText(self, text: str) -> float:
        """Take a number with its unit, or with that of the other system."""
        found = self._elsewhere(text)
        if found is None:
            return super().valueFromText(text)
        return round(self._quantity.shown(found[1].metric(found[0])), 2)

    def _elsewhere(self, text: str) -> tuple[float, Quantity, str] | None:
        """Give the number and the unit, as far as it is typed, of a length of the other system; None for any other."""
        lengths = [system.length for system in SYSTEMS]
        found = NUMBER_AND_UNIT.fullmatch(text.removesuffix(self.suffix()))
        if self._quantity not in lengths or found is None:
            return None
        number, is_one = self.locale().toDouble(found[1])
        other = next(length for length in lengths if length is not self._quantity)
        return (number, other, found[2]) if is_one and other.unit.strip().startswith(found[2]) else None

    def _take(self, shown: float) -> None:
        self._metric = self._quantity.metric(shown)
        self.changed.emit()


class ChoiceBox(QComboBox):
    """One answer of several."""

    changed = Signal()

    def __init__(self, name: str, words: Mapping[Any, str]) -> None:
        """Take what a screen reader calls it, and each answer with what it is called."""
        super().__init__()
        self._words = dict(words)
        for answer, called in words.items():
            self.addItem(tr(called), answer)
        self.setAccessibleName(name)
        self.setMinimumContentsLength(12)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.activated.connect(lambda _place: self.changed.emit())

    @property
    def answer(self) -> Any:
        """What is chosen."""
        return self.currentData()

    def show_answer(self, answer: Any) -> None:
        """Show another answer; nothing is told of it."""
        if answer in self._words:
            self.setCurrentIndex(list(self._words).index(answer))

    def told(self, answer: Any) -> str:
        """Write an answer as the list has it."""
        called = self._words.get(answer, "")
        return tr(called)


class CountOver(QWidget):
    """Two numbers; a count over 10 cm is the gauge itself."""

    changed = Signal()

    def __init__(self, *, what: str, over: str, units: Units, parent: QWidget | None = None) -> None:
        """Take what is counted, and what a screen reader calls the length that it is counted over."""
        super().__init__(parent)
        self.count, self.over = QuantityBox(what, 30.0), QuantityBox(over, 10.0, units.length)
        self.setFocusProxy(self.count)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        for part in (self.count, QLabel(tr("over")), self.over):
            row.addWidget(part)
        row.addStretch(1)
        for box in (self.count, self.over):
            box.changed.connect(self.changed)

    def show_count(self, count: float, over_cm: float) -> None:
        """Show another count; nothing is told of it."""
        self.count.show_answer(count)
        self.over.show_answer(over_cm)
