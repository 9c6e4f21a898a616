"""What really happened in the pot, filled in after the dyeing: weights and days of the loads, pH, heat, time, notes."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDateEdit,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.bath_lines import caution_label, heading, quiet
from chartmaker.app.thing_form import NumberLine
from chartmaker.app.told import told
from chartmaker.app.words import grams, tr
from chartmaker.model.bath_record import BathRecord, LoadRecord

if TYPE_CHECKING:
    from collections.abc import Sequence

NARROW = 84
"""Pixels for a weight or a pH."""


@dataclass(frozen=True, slots=True)
class LoadAsked:
    """One load that is asked for."""

    load: int
    name: str
    planned_g: float
    """Fibre that was to be weighed in; what stands in the field at first."""
    noted: LoadRecord | None = None
    """What is on record already."""


@dataclass(frozen=True, slots=True)
class LoadRow:
    """The fields of one load."""

    asked: LoadAsked
    fibre: NumberLine
    dry: NumberLine
    day: QDateEdit
    notes: QLineEdit

    def read(self) -> LoadRecord | None:
        """Give what stands there; None for a load that was left out. Raises ValueError, with a sentence."""
        fibre, dry = self.fibre.number(), self.dry.number()
        if not fibre and dry is None:
            return None
        day = self.day.date()
        return LoadRecord(
            load=self.asked.load,
            fibre_g=fibre or 0.0,
            dry_g=dry,
            lot=self.asked.noted.lot if self.asked.noted else "",
            dyed_on=dt.date(day.year(), day.month(), day.day()),
            notes=self.notes.text(),
        )


class BathRecordForm(QWidget):
    """Fields that were not noted stay empty; beside them stands what was planned."""

    given = Signal(object, bool)
    """The `BathRecord`, and whether its fibre and dyestuff are to be taken off the store."""

    def __init__(
        self,
        loads: Sequence[LoadAsked],
        planned: BathRecord,
        noted: BathRecord | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """Take the loads, what was planned of the bath as a whole, and what is on record of it already."""
        super().__init__(parent)
        self._noted = noted
        shown = noted or BathRecord(dyestuff_g=planned.dyestuff_g)
        self.rows = [_load_row(asked) for asked in loads]
        self.numbers = {name: NumberLine(getattr(shown, name)) for name in _NUMBERS}
        self.notes = QPlainTextEdit(shown.notes)
        self.notes.setTabChangesFocus(True)
        self.notes.setFixedHeight(64)
        self.notes.setAccessibleName(tr("notes of the dyeing"))
        self.takes_off = QCheckBox(tr("&Take fibre and dyestuff off what is at hand"))
        self.takes_off.setChecked(noted is None)
        if noted is not None:
            self.takes_off.hide()  # it was, or was not, when the bath was recorded
        self.button = QPushButton(tr("Record the b&ath") if noted is None else tr("&Change the record"))
        self.trouble = caution_label("")
        self.trouble.hide()
        self.button.clicked.connect(lambda _checked=False: self.give())
        self._lay_out(planned)

    @property
    def is_touched(self) -> bool:
        """Whether something was written that is not on record yet, so that it must not be lost."""
        edits = (*(each for row in self.rows for each in (row.fibre, row.dry, row.notes)), *self.numbers.values())
        return any(each.isModified() for each in edits) or self.notes.document().isModified()

    def asks_as(self, other: BathRecordForm) -> bool:
        """Whether it asks for the loads that another asks for, and rests on the same record."""
        mine, others = ([row.asked.load for row in form.rows] for form in (self, other))
        return mine == others and self._noted == other._noted

    def record(self) -> BathRecord:
        """Give what stands there. Raises ValueError, with a sentence, where something is no number or cannot be."""
        loads = tuple(filter(None, (row.read() for row in self.rows)))
        if not loads:
            raise ValueError(tr("no load has a weight: weigh at least one"))
        days = [load.dyed_on for load in loads if load.dyed_on]
        return BathRecord(
            dyed_on=min(days) if days else None,
            loads=loads,
            notes=self.notes.toPlainText(),
            **{name: line.number() for name, line in self.numbers.items()},
        )

    def give(self) -> None:
        """Hand the record on, or tell what is wrong with it."""
        try:
            record = self.record()
        except ValueError as refusal:
            text = told(str(refusal))
            self.trouble.setText(f"!  {text[:1].upper()}{text[1:]}.")
            self.trouble.show()
            return
        self.trouble.hide()
        self._settle()
        self.given.emit(record, self.takes_off.isChecked() and self.takes_off.isVisibleTo(self))

    def _settle(self) -> None:
        """Forget that something was written: it is handed on."""
        for row in self.rows:
            for line in (row.fibre, row.dry, row.notes):
                line.setModified(False)
        for line in self.numbers.values():
            line.setModified(False)
        self.notes.document().setModified(False)

    def _lay_out(self, planned: BathRecord) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(heading(tr("What really happened")))
        words = tr("Weigh each load dry before and after. A load that is still wet gets its lot when you weigh it.")
        layout.addWidget(quiet(words))
        layout.addLayout(self._grid_of_loads())
        layout.addLayout(self._grid_of_numbers(planned))
        layout.addWidget(_buddy(tr("Notes"), self.notes))
        layout.addWidget(self.notes)
        layout.addWidget(self.takes_off)
        layout.addWidget(self.trouble)
        foot = QHBoxLayout()
        foot.addWidget(self.button)
        foot.addStretch(1)
        layout.addLayout(foot)

    def _grid_of_loads(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(10)
        grid.setVerticalSpacing(4)
        titles = (tr("load"), tr("fibre in, g"), tr("dry after, g"), tr("dyed on"), tr("notes"))
        for column, title in enumerate(titles):
            head = quiet(title)
            head.setContentsMargins(0, 0, 0, 0)
            grid.addWidget(head, 0, column)
        for line, row in enumerate(self.rows, start=1):
            name = QLabel(f"{row.asked.load}.  {row.asked.name}")
            name.setWordWrap(True)
            grid.addWidget(name, line, 0)
            for column, control in enumerate((row.fibre, row.dry, row.day, row.notes), start=1):
                grid.addWidget(control, line, column)
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(4, 2)
        return grid

    def _grid_of_numbers(self, planned: BathRecord) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(10)
        grid.setVerticalSpacing(4)
        for place, (name, label) in enumerate(_labels().items()):
            line = self.numbers[name]
            line.setAccessibleName(label)
            line.setFixedWidth(NARROW)
            value = getattr(planned, name)
            was = tr("planned {0}").format(f"{value:.3g}") if value is not None else tr("nothing planned")
            row, column = divmod(place, 2)
            grid.addWidget(_buddy(_capital(label), line), row, 3 * column)
            grid.addWidget(line, row, 3 * column + 1)
            beside = quiet(was)
            beside.setAlignment(Qt.AlignmentFlag.AlignVCenter)
            beside.setContentsMargins(0, 0, 0, 0)
            grid.addWidget(beside, row, 3 * column + 2)
        grid.setColumnStretch(2, 1)
        grid.setColumnStretch(5, 1)
        return grid


_NUMBERS = ("dyestuff_g", "water_l", "ph_start", "ph_end", "hottest_c", "minutes")


def _labels() -> dict[str, str]:
    return {
        "dyestuff_g": tr("dyestuff weighed, g"),
        "water_l": tr("water, L"),
        "ph_start": tr("pH at the start"),
        "ph_end": tr("pH at the end"),
        "hottest_c": tr("hottest, °C"),
        "minutes": tr("minutes"),
    }


def _load_row(asked: LoadAsked) -> LoadRow:
    noted = asked.noted
    fibre = NumberLine(round(noted.fibre_g if noted else asked.planned_g, 1))
    dry = NumberLine(noted.dry_g if noted else None)
    dry.setPlaceholderText(tr("wet yet"))
    day = QDateEdit(QDate.currentDate())
    day.setCalendarPopup(True)
    if noted and noted.dyed_on:
        day.setDate(QDate(noted.dyed_on.year, noted.dyed_on.month, noted.dyed_on.day))
    notes = QLineEdit(noted.notes if noted else "")
    for control, name in (
        (fibre, tr("fibre of load {0}, g")),
        (dry, tr("dry weight of load {0}, g")),
        (day, tr("day of load {0}")),
        (notes, tr("notes on load {0}")),
    ):
        control.setAccessibleName(name.format(asked.load))
    fibre.setToolTip(tr("{0} g were planned").format(grams(asked.planned_g)))
    for line in (fibre, dry):
        line.setFixedWidth(NARROW)
    return LoadRow(asked, fibre, dry, day, notes)


def _buddy(text: str, control: QWidget) -> QLabel:
    label = QLabel(text)
    label.setBuddy(control)
    return label


def _capital(text: str) -> str:
    """Begin large, unless it begins as pH does."""
    return text if text[1:2].isupper() else text[:1].upper() + text[1:]
