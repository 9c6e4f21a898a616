"""The hat page: what the knitter wants and allows for, and what the bands come to."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QFrame,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QScrollArea,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.hat_fields import GROUPS, NOTES, Field
from chartmaker.app.page_frame import PageFrame
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QFocusEvent

    from chartmaker.app.open_design import OpenDesign

Control = QLineEdit | QComboBox | QDoubleSpinBox | QSpinBox


class NotesBox(QPlainTextEdit):
    """Notes of several lines; they are taken when the box is left."""

    left = Signal()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Say that the box was left."""
        super().focusOutEvent(event)
        self.left.emit()


class PlainNumberBox(QDoubleSpinBox):
    """A number without the zeros that say nothing."""

    def textFromValue(self, value: float) -> str:
        """Write up to two places after the point."""
        text = self.locale().toString(value, "f", 2)
        return text.rstrip("0").removesuffix(self.locale().decimalPoint())


class CalmWheel(QObject):
    """Keeps the wheel from changing a number that the pointer merely passes while the page scrolls."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Hold back wheel events of a control that has not the keys."""
        if event.type() == QEvent.Type.Wheel and isinstance(watched, QWidget) and not watched.hasFocus():
            event.ignore()
            return True
        return False


class HatPage(PageFrame):
    """A form whose every change is one step that can be undone."""

    refused = Signal(str)
    """A value that the design's rules refuse, as a sentence; the old one is back."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(tr("Hat"), parent)
        self.document = document
        self._controls: dict[Field, Control] = {}
        self._calm = CalmWheel(self)
        self.notes = NotesBox()
        self.notes.setAccessibleName(tr("notes"))
        self.notes.setTabChangesFocus(True)
        self.notes.setPlaceholderText(tr("Anything worth keeping with the design"))
        self.notes.left.connect(lambda: self._take(NOTES, self.notes.toPlainText()))
        self.content.addWidget(self._form(), 1)
        document.appraised.connect(self.refresh)
        self.refresh()

    def control(self, *path: str) -> Control:
        """Give the control of a setting."""
        return next(control for field, control in self._controls.items() if field.path == path)

    def finish_typing(self) -> None:
        """Take what is being typed, as leaving the control would."""
        focused = self.focusWidget()
        if focused is not None and focused.hasFocus():
            focused.clearFocus()
            focused.setFocus()

    def refresh(self) -> None:
        """Follow the design."""
        design, appraisal = self.document.design, self.document.appraisal
        for field, control in self._controls.items():
            _show(control, field.of(design))
        if self.notes.toPlainText() != design.notes:
            self.notes.setPlainText(design.notes)
        self.note.setText(
            tr(
                "{0} stitches cast on, {1} rounds; {2} cm round and {3} cm high. Head and ease ask for {4} cm, "
                "{5} stitches."
            ).format(
                appraisal.cast_on_stitches,
                len(appraisal.rounds),
                number(appraisal.circumference_cm, 1),
                number(appraisal.height_cm, 1),
                number(design.hat.wanted_cm, 1),
                number(design.hat.wanted_cm / design.gauge.stitch_width_cm, 1),
            )
        )

    def _form(self) -> QScrollArea:
        inside = QWidget()
        columns = QHBoxLayout(inside)
        columns.setContentsMargins(0, 0, 0, 0)
        columns.setSpacing(16)
        for groups, has_notes in ((GROUPS[:1], True), (GROUPS[1:], False)):
            column = QVBoxLayout()
            column.setSpacing(10)
            for title, fields in groups:
                column.addWidget(self._group(tr(title), fields))
            if has_notes:
                box = QGroupBox(tr("Notes"))
                layout = QVBoxLayout(box)
                layout.addWidget(self.notes)
                column.addWidget(box, 1)
            else:
                column.addStretch(1)
            columns.addLayout(column, 1)
        area = QScrollArea()
        area.setAccessibleName(tr("Settings of the hat"))
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidgetResizable(True)
        inside.setMaximumWidth(940)
        area.setWidget(inside)
        return area

    def _group(self, title: str, fields: tuple[Field, ...]) -> QGroupBox:
        box = QGroupBox(title)
        form = QFormLayout(box)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
        form.setHorizontalSpacing(14)
        form.setVerticalSpacing(5)
        for field in fields:
            control = _control(field, partial(self._take, field))
            control.setAccessibleName(tr(field.label))
            control.setToolTip(tr(field.hint))
            control.installEventFilter(self._calm)
            control.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            label = tr(field.label)
            form.addRow(QLabel(label[:1].upper() + label[1:]), control)
            self._controls[field] = control
        return box

    def _take(self, field: Field, value: Any) -> None:
        try:
            edit = field.edit(self.document.design, value)
        except ValueError as error:
            self.refused.emit(str(error))
            self.refresh()
        else:
            self.document.do(edit)


def _control(field: Field, take: Callable[[Any], None]) -> Control:
    """Make the control of a setting; it hands over its value when it was changed and left, or Enter was pressed."""
    if field.choices:
        box = QComboBox()
        box.addItems([tr(choice) for choice in field.choices])
        box.activated.connect(lambda index: take(field.choices[index]))
        return box
    if field.is_number:
        spin = QSpinBox() if field.is_whole else PlainNumberBox()
        if isinstance(spin, QDoubleSpinBox):
            spin.setDecimals(2)
            spin.setRange(field.lowest, field.highest)
            spin.setSingleStep(field.step)
        else:
            spin.setRange(int(field.lowest), int(field.highest))
        spin.setSuffix(tr(field.unit))
        spin.setKeyboardTracking(False)
        spin.valueChanged.connect(take)
        return spin
    line = QLineEdit()
    line.editingFinished.connect(lambda: take(line.text()))
    return line


def _show(control: Control, value: Any) -> None:
    control.blockSignals(True)
    if isinstance(control, QComboBox):
        control.setCurrentIndex(control.findText(tr(value)))
    elif isinstance(control, QLineEdit):
        if control.text() != value:
            control.setText(value)
    elif control.value() != value:
        control.setValue(value)
    control.blockSignals(False)
