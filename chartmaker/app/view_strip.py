"""The line above the chart of those views that need a word, or need to know something."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDoubleSpinBox, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from chartmaker.app.scale_bar import LENGTH_CM, ScaleBar
from chartmaker.app.seeing import FARTHEST_EYE_CM, FARTHEST_M, NEAREST_EYE_CM, NEAREST_M, Seeing
from chartmaker.app.views import KINDS_OF_EYES, View
from chartmaker.app.words import plain_tip, tr


class ViewStrip(QWidget):
    """Shows the fields of the view at hand, and its sentence."""

    changed = Signal(object)
    """Another `Seeing` was set."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.seeing = Seeing()
        self.distance = _field(tr("Distance to the hat"), NEAREST_M, FARTHEST_M, tr(" m"), step=0.5)
        self.eye = _field(
            tr("Your eye's distance from this screen"), NEAREST_EYE_CM, FARTHEST_EYE_CM, tr(" cm"), step=5
        )
        self.severity = _field(tr("Severity"), 0, 100, tr(" %"), step=10)
        self.bar = ScaleBar()
        self.screens_word = QPushButton(tr("Reset"))
        self.screens_word.setToolTip(tr("Take the length of a centimetre that the screen itself tells"))
        self._words = QLabel()
        self._words.setTextFormat(Qt.TextFormat.PlainText)
        self._words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 2, 8, 3)
        row.setSpacing(6)
        self._of_far = [
            *_labelled(tr("Distance"), self.distance),
            *_labelled(tr("Eye to screen"), self.eye),
            *_labelled(tr("Draw this bar to {0} cm").format(LENGTH_CM), self.bar),
            self.screens_word,
        ]
        self._of_vision = _labelled(tr("Severity"), self.severity)
        for widget in (*self._of_far, *self._of_vision):
            row.addWidget(widget)
        row.addWidget(self._words, 1)
        self._connect()

    def _connect(self) -> None:
        self.distance.valueChanged.connect(lambda value: self._set(distance_m=value))
        self.eye.valueChanged.connect(lambda value: self._set(eye_cm=value))
        self.severity.valueChanged.connect(lambda value: self._set(severity=value / 100))
        self.bar.drawn.connect(lambda value: self._set(units_per_cm=value))
        self.screens_word.clicked.connect(lambda: self._set(units_per_cm=0.0))

    def show_view(self, view: View, seeing: Seeing, *, units_per_cm: float, words: str) -> None:
        """Show what belongs to a view; `units_per_cm` is the scale in use."""
        self.seeing = seeing
        for field, value in (
            (self.distance, seeing.distance_m),
            (self.eye, seeing.eye_cm),
            (self.severity, 100 * seeing.severity),
        ):
            field.blockSignals(True)
            field.setValue(value)
            field.blockSignals(False)
        self.bar.show_scale(units_per_cm)
        self.screens_word.setEnabled(seeing.units_per_cm > 0)
        for widget in self._of_far:
            widget.setVisible(view.surface == "far")
        for widget in self._of_vision:
            widget.setVisible(view.tint in KINDS_OF_EYES)
        self._words.setText(words)
        self._words.setToolTip(plain_tip(words))
        self.setVisible(view.has_strip)

    def _set(self, **changes: float) -> None:
        self.seeing = replace(self.seeing, **changes)
        self.changed.emit(self.seeing)


def _field(name: str, low: float, high: float, unit: str, *, step: float) -> QDoubleSpinBox:
    field = QDoubleSpinBox()
    field.setDecimals(1 if high < 100 else 0)
    field.setRange(low, high)
    field.setSuffix(unit)
    field.setSingleStep(step)
    field.setKeyboardTracking(False)
    field.setAccessibleName(name)
    field.setToolTip(name)
    return field


def _labelled(text: str, widget: QWidget) -> list[QWidget]:
    label = QLabel(text)
    label.setBuddy(widget)
    return [label, widget]
