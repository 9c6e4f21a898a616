"""The form of a lot, a bath or a yarn: fields, each with what the model says of it beside it; OK takes the whole."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QFrame,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.page_frame import words_label
from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.model.bounds import OutOfRange
from chartmaker.model.palette_edits import free_id
from chartmaker.model.units import METRIC, Quantity, Units, reason

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from PySide6.QtCore import SignalInstance


@dataclass(frozen=True, slots=True)
class Row:
    """One field of the form."""

    field: str
    """Its name in the model."""
    label: str
    control: QWidget
    read: Callable[[], Any]
    """Gives the value that stands there; raises ValueError with a sentence where it is none."""
    trouble: QLabel
    """What is wrong with it; hidden where nothing is."""


class ThingForm(QDialog):
    """Nothing is taken before all of it can be; Escape leaves everything as it was.

    A field is judged when it was left or OK was pressed: a form that is still empty complains of nothing.
    """

    def __init__(
        self,
        title: str,
        stand_in: Any,
        take: Callable[[Any], None],
        parent: QWidget | None = None,
        *,
        units: Units = METRIC,
    ) -> None:
        """Take a valid value, whose fields the form's replace, and what to do with the value that comes of it.

        `take` raises ValueError, with a sentence, where the palette refuses the value.
        """
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.value = stand_in
        """What stands in for fields that the form does not show."""
        self._take, self._units = take, units
        self._rows: list[Row] = []
        self._form = QFormLayout()
        self._form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        self._form.setHorizontalSpacing(14)
        self._form.setVerticalSpacing(6)
        self.trouble = _trouble_label()
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        self._lay_out()

    def add(  # noqa: PLR0913 - one row of the form
        self,
        field: str,
        label: str,
        control: QWidget,
        read: Callable[[], Any],
        *,
        changed: SignalInstance | None = None,
        hint: str = "",
    ) -> None:
        """Add a row; `changed` is the control's signal that its value was changed and is to be judged."""
        control.setAccessibleName(label)
        control.setToolTip(hint)
        trouble = _trouble_label()
        column = QVBoxLayout()
        column.setSpacing(2)
        column.addWidget(control)
        column.addWidget(trouble)
        caption = QLabel(_capital(label))
        caption.setBuddy(control)
        self._form.addRow(caption, column)
        row = Row(field, label, control, read, trouble)
        self._rows.append(row)
        if changed is not None:
            changed.connect(lambda *_value: self._judge(row))

    def control(self, field: str) -> QWidget:
        """Give the control of a field."""
        return next(row.control for row in self._rows if row.field == field)

    def trouble_with(self, field: str) -> str:
        """Give what is told beside a field; empty where nothing is wrong."""
        return next(row.trouble.text() for row in self._rows if row.field == field)

    def accept(self) -> None:
        """Take the value if all of it can be; else tell what is wrong and go to the first such field."""
        wrong = [row for row in self._rows if not self._judge(row)]
        self.trouble.hide()
        if wrong:
            wrong[0].control.setFocus()
            return
        try:
            self._take(self.made())
        except ValueError as refusal:
            _tell(self.trouble, told(reason(refusal), self._units))
        else:
            super().accept()

    def made(self) -> Any:
        """Give the value that the form stands for. Raises ValueError where the model refuses it."""
        return replace(self.value, **{row.field: row.read() for row in self._rows})

    def _judge(self, row: Row) -> bool:
        try:
            replace(self.value, **{row.field: row.read()})
        except ValueError as refusal:
            _tell(row.trouble, self._trouble_words(row, refusal))
            return False
        row.trouble.clear()
        row.trouble.hide()
        return True

    def _trouble_words(self, row: Row, refusal: ValueError) -> str:
        """Tell what is wrong with a field by its label, and in the units that it is typed in."""
        if isinstance(refusal, OutOfRange) and isinstance(row.control, MeasureLine):
            numbers = [*map(row.control.quantity.brief_figure, refusal.numbers)]
            if numbers[0] == numbers[1]:  # the least that can be is less than the figures show
                return tr("{0} is {1}, which is too little").format(row.label, numbers[0])
            return tr("{0} is {1}, outside {2} to {3}").format(row.label, *numbers)
        sentence = told(reason(refusal), self._units)
        if sentence.startswith(f"{row.field} "):  # the file's word for it
            return row.label + sentence.removeprefix(row.field)
        return sentence

    def _lay_out(self) -> None:
        inside = QWidget()
        inside.setLayout(self._form)
        area = QScrollArea()
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidgetResizable(True)
        area.setWidget(inside)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        layout = QVBoxLayout(self)
        layout.addWidget(area, 1)
        layout.addWidget(self.trouble)
        layout.addWidget(self.buttons)


class NumberLine(QLineEdit):
    """A number that may be left out, typed with a point or a comma."""

    def __init__(self, value: float | None, *, is_whole: bool = False) -> None:
        super().__init__("" if value is None else f"{value:.12g}")
        self._is_whole = is_whole
        self.setMaximumWidth(140)

    def number(self) -> float | None:
        """Give the number, None where nothing stands there. Raises ValueError, with a sentence, where it is none."""
        text = self.text().strip().replace("−", "-")
        if not text:
            return None
        try:
            value = float(text.replace(",", "."))
        except ValueError:
            raise ValueError(f"{text!r} is not a number") from None
        if self._is_whole:
            if value != round(value):
                raise ValueError(f"{text!r} is not a whole number")
            return int(value)
        return value

    def required(self) -> float:
        """Give the number. Raises ValueError, with a sentence, where there is none."""
        value = self.number()
        if value is None:
            raise ValueError("a number is missing here")
        return value


class MeasureLine(NumberLine):
    """A metric number shown and typed in other units; it stays as exact as it was until another is typed."""

    def __init__(self, metric: float | None, quantity: Quantity) -> None:
        shown = None if metric is None else quantity.shown(metric)
        if shown is not None and shown != metric:
            shown = round(shown, quantity.digits + 1)
        super().__init__(shown)
        self.quantity = quantity
        self._metric, self._first = metric, self.text()

    def number(self) -> float | None:
        """Give the metric number, None where nothing stands there. Raises ValueError, with a sentence, otherwise."""
        typed = super().number()
        if typed is None or self.text() == self._first:
            return self._metric if typed is not None else None
        return self.quantity.metric(typed)


def labelled(what: str, quantity: Quantity) -> str:
    """Give the label of a measure with its unit: "on hand, g"."""
    return f"{what},{tr(quantity.unit)}"


def grist_label(units: Units) -> str:
    """Give the label of a grist."""
    return tr("metres to 100 g") if units is METRIC else tr("yards to 1 oz")


def link_id(name: QLineEdit, thing_id: QLineEdit, taken: Iterable[str]) -> None:
    """Propose an id that is free while a name is typed, until the id is written by hand."""
    used = tuple(taken)

    def propose(text: str) -> None:
        if not thing_id.isModified():
            thing_id.setText(free_id(text, used))

    name.textEdited.connect(propose)


def _trouble_label() -> QLabel:
    label = words_label()
    label.hide()
    return label


def _tell(label: QLabel, sentence: str) -> None:
    label.setText(f"! {_capital(told(sentence))}")
    label.show()


def _capital(text: str) -> str:
    """Begin large, unless it begins as pH does."""
    return text if text[1:2].isupper() else text[:1].upper() + text[1:]
