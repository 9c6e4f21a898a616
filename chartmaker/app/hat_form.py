"""The settings of the hat as a form in the units of the window; every change is one step that can be undone."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QFrame,
    QGroupBox,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QScrollArea,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.hat_fields import GROUPS, NOTES, Field, FoldRoundsField, OptionalField, depth_unasked
from chartmaker.app.number_boxes import AS_IT_IS, CalmWheel, MeasureBox, OptionalLengthLine
from chartmaker.app.told import told
from chartmaker.app.trims_box import TrimsBox
from chartmaker.app.words import tr
from chartmaker.model.units import reason

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QFocusEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.units import Quantity

Control = QLineEdit | QComboBox | MeasureBox | QSpinBox
LEAST_WIDTH = 250


class NotesBox(QPlainTextEdit):
    """Notes of several lines; they are taken when the box is left."""

    left = Signal()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Say that the box was left."""
        super().focusOutEvent(event)
        self.left.emit()


class HatForm(QScrollArea):
    """One column of groups that scrolls where it is longer than the page."""

    refused = Signal(str)
    """A value that the design's rules refuse, as a sentence; the old one is back."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self._units = document, units
        self.controls: dict[Field, Control] = {}
        self._rows: dict[Field, QFormLayout] = {}
        self._inside = QWidget()
        self._calm = CalmWheel(self)
        self.notes = NotesBox()
        self.notes.setAccessibleName(tr("notes"))
        self.notes.setTabChangesFocus(True)
        self.notes.setPlaceholderText(tr("Anything worth keeping with the design"))
        self.notes.setMinimumHeight(90)
        self.notes.left.connect(lambda: self.take(NOTES, self.notes.toPlainText()))
        self.trims = TrimsBox(units)
        self.trims.wished.connect(document.do)
        self._lay_out()
        units.changed.connect(self._show_units)
        self._show_units()

    def refresh(self) -> None:
        """Follow the design."""
        design = self.document.design
        for field, control in self.controls.items():
            if isinstance(control, OptionalLengthLine):
                unasked, is_rule = depth_unasked(design)
                words = tr("{0} by rule") if is_rule else tr("{0} as it is")
                control.show_metric(field.of(design), unasked=unasked, words=words)
            else:
                _show(field, control, field.of(design))
            if isinstance(field, FoldRoundsField):
                self._rows[field].setRowVisible(control, design.hat.fold is not None)
        self.trims.show_design(design)
        if self.notes.toPlainText() != design.notes:
            self.notes.setPlainText(design.notes)

    def take(self, field: Field, value: Any) -> None:
        """Set a field, or say why not."""
        try:
            edit = field.edit(self.document.design, value)
        except ValueError as error:
            self.refused.emit(told(reason(error), self._units.units))
            self.refresh()
        else:
            self.document.do(edit)

    def _show_units(self) -> None:
        for field, control in self.controls.items():
            if field.kind and isinstance(control, MeasureBox | OptionalLengthLine):
                control.show_in(self._quantity(field))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Be as wide as the controls inside are, whenever they are laid out anew."""
        if watched is self._inside and event.type() == QEvent.Type.LayoutRequest:
            self._keep_width()
        return super().eventFilter(watched, event)

    def _keep_width(self) -> None:
        bar = self.verticalScrollBar().sizeHint().width()
        self.setMinimumWidth(max(LEAST_WIDTH, self._inside.minimumSizeHint().width() + bar))

    def _quantity(self, field: Field) -> Quantity:
        units = self._units.units
        return {"": AS_IT_IS, "length": units.length, "gauge": units.gauge, "grist": units.grist}[field.kind]

    # --- making

    def _lay_out(self) -> None:
        column = QVBoxLayout(self._inside)
        column.setContentsMargins(0, 0, 10, 0)
        column.setSpacing(8)
        for title, fields in GROUPS[:1]:
            column.addWidget(self._group(tr(title), fields))
        column.addWidget(_boxed(tr("Sewn on"), self.trims))
        for title, fields in GROUPS[1:]:
            column.addWidget(self._group(tr(title), fields))
        column.addWidget(_boxed(tr("Notes"), self.notes), 1)
        self.setAccessibleName(tr("Settings of the hat"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidgetResizable(True)
        self.setWidget(self._inside)
        self._keep_width()

    def _group(self, title: str, fields: tuple[Field, ...]) -> QGroupBox:
        box = QGroupBox(title)
        form = QFormLayout(box)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
        form.setHorizontalSpacing(10)
        form.setVerticalSpacing(5)
        for field in fields:
            control = _control(field, partial(self.take, field))
            control.setAccessibleName(tr(field.label))
            control.setToolTip(tr(field.hint))
            control.installEventFilter(self._calm)
            control.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            label = tr(field.label)
            form.addRow(QLabel(label[:1].upper() + label[1:]), control)
            self.controls[field], self._rows[field] = control, form
        return box


def _boxed(title: str, inside: QWidget) -> QGroupBox:
    box = QGroupBox(title)
    layout = QVBoxLayout(box)
    layout.addWidget(inside)
    return box


def _control(field: Field, take: Callable[[Any], None]) -> Control:
    """Make the control of a setting; it hands over its value when it was changed and left, or Enter was pressed."""
    if field.choices:
        box = QComboBox()
        box.addItems([tr(choice) for choice in field.spoken_choices])
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.activated.connect(lambda index: take(field.choices[index]))
        return box
    if field.is_whole:
        whole = QSpinBox()
        whole.setRange(int(field.lowest), int(field.highest))
        whole.setSuffix(tr(field.unit))
        whole.setKeyboardTracking(False)
        whole.valueChanged.connect(take)
        return whole
    if isinstance(field, OptionalField):
        optional = OptionalLengthLine(lowest=field.lowest, highest=field.highest, step=field.step)
        optional.taken.connect(take)
        return optional
    if field.is_number:
        measure = MeasureBox(lowest=field.lowest, highest=field.highest, step=field.step)
        measure.setSuffix(tr(field.unit))
        measure.taken.connect(take)
        return measure
    line = QLineEdit()
    line.editingFinished.connect(lambda: take(line.text()))
    return line


def _show(field: Field, control: Control, value: Any) -> None:
    control.blockSignals(True)
    if isinstance(control, QComboBox):
        control.setCurrentIndex(field.choices.index(value))
    elif isinstance(control, QLineEdit):
        if control.text() != value:
            control.setText(value)
    elif isinstance(control, MeasureBox):
        control.show_metric(value)
    elif control.value() != value:
        control.setValue(value)
    control.blockSignals(False)
