"""Number boxes of forms: without idle zeros, in the units of the window, and such as may be left empty."""

from __future__ import annotations

from math import log
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import QDoubleSpinBox, QLineEdit, QWidget

from chartmaker.app.words import tr
from chartmaker.model.units import IMPERIAL, METRIC, Quantity

if TYPE_CHECKING:
    from PySide6.QtGui import QKeyEvent

STEPS = (0.05, 0.1, 0.25, 0.5, 1.0, 5.0)
"""What arrows go on by, whatever the units."""
AS_IT_IS = Quantity(1.0, "")


class CalmWheel(QObject):
    """Keeps the wheel from changing a number that the pointer merely passes while the page scrolls."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Hold back wheel events of a control that has not the keys."""
        if event.type() == QEvent.Type.Wheel and isinstance(watched, QWidget) and not watched.hasFocus():
            event.ignore()
            return True
        return False


class PlainNumberBox(QDoubleSpinBox):
    """A number without the zeros that say nothing."""

    def textFromValue(self, value: float) -> str:
        """Write up to two places after the point."""
        text = self.locale().toString(value, "f", 2)
        return text.rstrip("0").removesuffix(self.locale().decimalPoint())


class MeasureBox(PlainNumberBox):
    """A metric number shown and typed in other units; it is handed over only when the user changes what is shown."""

    taken = Signal(float)
    """The metric number that was set."""

    def __init__(self, *, lowest: float, highest: float, step: float, parent: QWidget | None = None) -> None:
        """Take bounds and step of the metric number."""
        super().__init__(parent)
        self._lowest, self._highest, self._step = lowest, highest, step
        self._metric = lowest
        self.setDecimals(2)
        self.setKeyboardTracking(False)
        self.quantity = AS_IT_IS
        self.show_in(AS_IT_IS)
        self.valueChanged.connect(self._take)

    @property
    def number(self) -> float:
        """The metric number that it stands for, as exact as it was given."""
        return self._metric

    def show_in(self, quantity: Quantity) -> None:
        """Show the same number in other units."""
        self.quantity = quantity
        self.blockSignals(True)
        self.setRange(quantity.shown(self._lowest), quantity.shown(self._highest))
        self.setSingleStep(_round_step(quantity.shown(self._step)))
        self.setSuffix(tr(quantity.unit))
        self.setValue(quantity.shown(self._metric))
        self.blockSignals(False)

    def show_metric(self, metric: float) -> None:
        """Show a metric number."""
        self._metric = metric
        self.blockSignals(True)
        self.setValue(self.quantity.shown(metric))
        self.blockSignals(False)

    def _take(self, shown: float) -> None:
        # Bounds are rounded when they are shown, so that the box might let through what lies just outside.
        self._metric = min(max(self.quantity.metric(shown), self._lowest), self._highest)
        self.taken.emit(self._metric)


class OptionalLengthLine(QLineEdit):
    """A length that may be left empty; then it tells what it is unasked, and the arrow keys go on from there."""

    taken = Signal(object)
    """The metric number that was set, None where it was emptied."""

    def __init__(self, *, lowest: float, highest: float, step: float, parent: QWidget | None = None) -> None:
        """Take bounds and step of the metric number."""
        super().__init__(parent)
        self._lowest, self._highest, self._step = lowest, highest, step
        self._metric: float | None = None
        self._unasked, self._words = lowest, "{0}"
        self.quantity = AS_IT_IS
        self.editingFinished.connect(self._take)

    def show_in(self, quantity: Quantity) -> None:
        """Show in other units what it has, and what it is unasked."""
        self.quantity = quantity
        self.show_metric(self._metric, unasked=self._unasked, words=self._words)

    def show_metric(self, metric: float | None, *, unasked: float, words: str) -> None:
        """Show a number, or nothing and faintly what it is unasked, set into words."""
        self._metric, self._unasked, self._words = metric, unasked, words
        self.setPlaceholderText(words.format(self.quantity.told(unasked)))
        self.setText(self._shown)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Step with up and down."""
        steps = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}.get(Qt.Key(event.key()))
        if steps is None:
            super().keyPressEvent(event)
            return
        stepped = (self._unasked if self._metric is None else self._metric) + steps * self._step
        self.taken.emit(min(max(stepped, self._lowest), self._highest))

    @property
    def _shown(self) -> str:
        return "" if self._metric is None else self._told(self._metric)

    def _told(self, metric: float) -> str:
        text = self.locale().toString(self.quantity.shown(metric), "f", 2)
        return text.rstrip("0").removesuffix(self.locale().decimalPoint()) + tr(self.quantity.unit)

    def _take(self) -> None:
        """Hand over what was typed; what is no number, or changes nothing, is put back."""
        text = self.text().strip()
        if text == self._shown:
            return
        if not text:
            self.taken.emit(None)
            return
        metric = self._read(text)
        if metric is None or metric == self._metric:
            self.setText(self._shown)
        else:
            self.taken.emit(metric)

    def _read(self, text: str) -> float | None:
        """Read a length in the units that stand behind it, else in those shown; None where it is no number."""
        for quantity in (METRIC.length, IMPERIAL.length, self.quantity):
            unit = tr(quantity.unit).strip()
            number, is_number = self.locale().toDouble(text.removesuffix(unit).strip())
            if is_number and (text.endswith(unit) or quantity is self.quantity):
                return min(max(quantity.metric(number), self._lowest), self._highest)
        return None


def _round_step(step: float) -> float:
    return min(STEPS, key=lambda usual: abs(log(usual / step)))
