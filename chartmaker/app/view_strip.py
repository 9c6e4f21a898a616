"""The line above the chart of those views that need a word, or need to know something."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QDoubleSpinBox, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QWidget

from chartmaker.app.number_boxes import MeasureBox
from chartmaker.app.scale_bar import ScaleBar
from chartmaker.app.seeing import FARTHEST_EYE_CM, FARTHEST_M, NEAREST_EYE_CM, NEAREST_M, Seeing
from chartmaker.app.views import KINDS_OF_EYES, View
from chartmaker.app.words import plain_tip, tr

if TYPE_CHECKING:
    from chartmaker.app.units_setting import UnitsSetting


class ViewStrip(QWidget):
    """Shows the fields of the view at hand, and its sentence."""

    changed = Signal(object)
    """Another `Seeing` was set."""

    def __init__(self, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._units = units
        self.seeing = Seeing()
        self.distance = MeasureBox(lowest=NEAREST_M, highest=FARTHEST_M, step=0.5)
        self.eye = MeasureBox(lowest=NEAREST_EYE_CM, highest=FARTHEST_EYE_CM, step=5)
        self.severity = QDoubleSpinBox()
        self.severity.setDecimals(0)
        self.severity.setRange(0, 100)
        self.severity.setSuffix(tr(" %"))
        self.severity.setSingleStep(10)
        self.severity.setKeyboardTracking(False)
        for field, name in (
            (self.distance, tr("Distance to the hat")),
            (self.eye, tr("Your eye's distance from this screen")),
            (self.severity, tr("Severity")),
        ):
            field.setAccessibleName(name)
            field.setToolTip(name)
        self.bar = ScaleBar()
        self.screens_word = QPushButton(tr("Reset"))
        self.screens_word.setToolTip(tr("Take the scale that the screen itself tells"))
        self._words = QLabel()
        self._words.setTextFormat(Qt.TextFormat.PlainText)
        self._words.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 2, 8, 3)
        row.setSpacing(6)
        self._bar_words = QLabel()
        self._of_far = [
            *_labelled(tr("Distance"), self.distance),
            *_labelled(tr("Eye to screen"), self.eye),
            self._bar_words,
            self.bar,
            self.screens_word,
        ]
        self._of_vision = _labelled(tr("Severity"), self.severity)
        for widget in (*self._of_far, *self._of_vision):
            row.addWidget(widget)
        row.addWidget(self._words, 1)
        self._bar_words.setBuddy(self.bar)
        self._connect()
        self._show_units()

    def _connect(self) -> None:
        self.distance.taken.connect(lambda metric: self._set(distance_m=metric))
        self.eye.taken.connect(lambda metric: self._set(eye_cm=metric))
        self._units.changed.connect(self._show_units)
        self.severity.valueChanged.connect(lambda value: self._set(severity=value / 100))
        self.bar.drawn.connect(lambda value: self._set(units_per_cm=value))
        self.screens_word.clicked.connect(lambda: self._set(units_per_cm=0.0))

    def show_view(self, view: View, seeing: Seeing, *, units_per_cm: float, words: str) -> None:
        """Show what belongs to a view; `units_per_cm` is the scale in use."""
        self.seeing = seeing
        self.distance.show_metric(seeing.distance_m)
        self.eye.show_metric(seeing.eye_cm)
        with QSignalBlocker(self.severity):
            self.severity.setValue(100 * seeing.severity)
        self.bar.show_scale(units_per_cm)
        self.screens_word.setEnabled(seeing.units_per_cm > 0)
        for widget in self._of_far:
            widget.setVisible(view.surface == "far")
        for widget in self._of_vision:
            widget.setVisible(view.tint in KINDS_OF_EYES)
        self._words.setText(words)
        self._words.setToolTip(plain_tip(words))
        self.setVisible(view.has_strip)

    def _show_units(self) -> None:
        units = self._units.units
        self.distance.show_in(units.room)
        self.eye.show_in(units.length)
        self.bar.show_in(units)
        self._bar_words.setText(tr("Draw this bar to {0}").format(self.bar.length_words))

    def _set(self, **changes: float) -> None:
        self.seeing = replace(self.seeing, **changes)
        self.changed.emit(self.seeing)


def _labelled(text: str, widget: QWidget) -> list[QWidget]:
    label = QLabel(text)
    label.setBuddy(widget)
    return [label, widget]
