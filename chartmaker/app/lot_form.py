"""The form of a lot: what it is, where it came from, how much is on hand, its readings, notes and picture."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDateEdit,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QPlainTextEdit,
    QPushButton,
    QSizePolicy,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.lot_picture import PictureField
from chartmaker.app.thing_form import MeasureLine, ThingForm, grist_label, labelled, link_id
from chartmaker.app.words import tr
from chartmaker.model.palette import Lot, Planned
from chartmaker.model.units import METRIC, Units

if TYPE_CHECKING:
    import datetime as dt
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.app.questions import Questions
    from chartmaker.model.palette import Palette
    from chartmaker.model.reading import Reading

MOST_LOADS = 12


class LotForm(ThingForm):
    """All that is written of a lot."""

    def __init__(  # noqa: PLR0913 - what the form needs of its window
        self,
        lot: Lot | None,
        palette: Palette,
        take: Callable[[Any], None],
        *,
        place: Path | None,
        questions: Questions,
        units: Units = METRIC,
        parent: QWidget | None = None,
    ) -> None:
        """Take the lot to be changed, or None for a new one, and the palette's file, which pictures are beside."""
        shown = lot or Lot(id="new", name="new")
        super().__init__(
            tr("New lot") if lot is None else tr("Lot {0}").format(lot.id), shown, take, parent, units=units
        )
        self.resize(560, 640)
        name, lot_id = QLineEdit("" if lot is None else shown.name), QLineEdit("" if lot is None else shown.id)
        self.add("name", tr("name"), name, name.text, changed=name.editingFinished)
        hint = tr("Short and lasting: designs name their lots by it")
        self.add("id", tr("id"), lot_id, lot_id.text, changed=lot_id.editingFinished, hint=hint)
        if lot is None:
            link_id(name, lot_id, [each.id for each in palette.lots])
        self.yarn = _choices([(yarn.id, yarn.name) for yarn in palette.yarns], shown.yarn)
        self.add("yarn", tr("yarn"), self.yarn, self.yarn.currentData)
        self.source = SourceField(shown, palette)
        self.add("load", tr("bath"), self.source, lambda: shown.load)
        self.dyed_on = DateField(shown.dyed_on)
        self.add("dyed_on", tr("dyed on"), self.dyed_on, self.dyed_on.date)
        weight, label = MeasureLine(shown.on_hand_g, units.weight), labelled(tr("on hand"), units.weight)
        self.add("on_hand_g", label, weight, weight.required, changed=weight.editingFinished)
        grist, label = MeasureLine(shown.metres_per_100g, units.grist), grist_label(units)
        hint = tr("Dyeing changes it: measure the dyed yarn. Left empty, that of its yarn serves")
        self.add("metres_per_100g", label, grist, grist.number, changed=grist.editingFinished, hint=hint)
        self.readings = ReadingsField(shown.readings)
        self.add("readings", tr("readings"), self.readings, self.readings.readings)
        notes = QPlainTextEdit(shown.notes)
        notes.setTabChangesFocus(True)
        notes.setMinimumHeight(60)
        self.add("notes", tr("notes"), notes, notes.toPlainText)
        self.picture = PictureField(shown.picture, place, questions.over(self))
        self.add("picture", tr("picture"), self.picture, self.picture.name, changed=self.picture.changed)
        name.setFocus()

    def made(self) -> Lot:
        """Give the lot with its bath or its plan, which one field stands for."""
        read = {row.field: row.read() for row in self._rows}
        made: Lot = replace(self.value, **{**read, **self.source.fields()})
        return made


class SourceField(QWidget):
    """The bath and load that a lot came from, or is planned from."""

    def __init__(self, lot: Lot, palette: Palette) -> None:
        super().__init__()
        self._lot = lot
        source = lot.source
        self.bath = _choices([(each.id, each.id) for each in palette.baths], source[0] if source else None)
        self.bath.setAccessibleName(tr("Bath"))
        self.load = QSpinBox()
        self.load.setAccessibleName(tr("Load of the bath"))
        self.load.setToolTip(tr("1 is the first load, 2 the first exhaust, and so on"))
        self.load.setRange(1, MOST_LOADS)
        self.load.setValue(source[1] if source else lot.load)
        self.planned = QCheckBox(tr("planned, not dyed yet"))
        self.planned.setChecked(lot.planned is not None)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.bath, 1)
        layout.addWidget(QLabel(tr("load")))
        layout.addWidget(self.load)
        layout.addWidget(self.planned)
        self.setFocusProxy(self.bath)
        self.bath.currentIndexChanged.connect(lambda _index: self._follow())
        self._follow()

    def fields(self) -> dict[str, Any]:
        """Give the lot's fields `bath`, `load` and `planned`."""
        bath, load = self.bath.currentData(), self.load.value()
        if bath and self.planned.isChecked():
            return {"bath": None, "load": self._lot.load, "planned": Planned(bath, load)}
        return {"bath": bath, "load": load if bath else self._lot.load, "planned": None}

    def _follow(self) -> None:
        """A load and a plan are of a bath: without one there is neither."""
        has_bath = self.bath.currentData() is not None
        self.load.setEnabled(has_bath)
        self.planned.setEnabled(has_bath)


class DateField(QWidget):
    """A day, chosen from a calendar, or none."""

    def __init__(self, day: dt.date | None) -> None:
        super().__init__()
        self.known = QCheckBox(tr("known"))
        self.known.setAccessibleName(tr("The day of dyeing is known"))
        self.known.setChecked(day is not None)
        self.edit = QDateEdit(QDate.currentDate() if day is None else QDate(day.year, day.month, day.day))
        self.edit.setMinimumDate(QDate(1, 1, 1))
        self.edit.setAccessibleName(tr("Day of dyeing"))
        self.edit.setCalendarPopup(True)
        self.edit.setDisplayFormat("yyyy-MM-dd")
        self.edit.setEnabled(day is not None)
        self.known.toggled.connect(self.edit.setEnabled)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.known)
        layout.addWidget(self.edit)
        layout.addStretch(1)
        self.setFocusProxy(self.known)

    def date(self) -> dt.date | None:
        """Give the day; None where it is not known."""
        import datetime as dt

        day = self.edit.date()
        return dt.date(day.year(), day.month(), day.day()) if self.known.isChecked() else None


class ReadingsField(QWidget):
    """The readings of a lot, each of which can be taken off it."""

    def __init__(self, readings: tuple[Reading, ...]) -> None:
        super().__init__()
        self._readings = list(readings)
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Readings"))
        self.list.setFixedHeight(84)
        self.remove = QPushButton(tr("Remo&ve the reading"))
        self.remove.clicked.connect(self._remove)
        self.none = QLabel(tr("none yet"))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self.list)
        layout.addWidget(self.remove, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(self.none)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self.setFocusProxy(self.list)
        self._show()

    def readings(self) -> tuple[Reading, ...]:
        """Give those that are left."""
        return tuple(self._readings)

    def _show(self) -> None:
        self.list.clear()
        for number, reading in enumerate(self._readings, start=1):
            self.list.addItem(f"{number}  {reading_words(reading)}")
        self.list.setCurrentRow(0)
        for part in (self.list, self.remove):
            part.setVisible(bool(self._readings))
        self.none.setVisible(not self._readings)

    def _remove(self) -> None:
        row = self.list.currentRow()
        if row >= 0:
            del self._readings[row]
            self._show()


def reading_words(reading: Reading) -> str:
    """Tell a reading in a line."""
    from chartmaker.model.reading import LabReading, ScreenReading, Spectrum

    if isinstance(reading, Spectrum):
        text = tr("spectrum, {0} to {1} nm, every {2} nm")
        return text.format(f"{reading.start_nm:g}", f"{reading.end_nm:g}", f"{reading.step_nm:g}")
    if isinstance(reading, ScreenReading):
        return tr("screen colour {0}, approximate").format(reading.hex)
    values = reading.lab if isinstance(reading, LabReading) else reading.xyz
    name = "L*a*b*" if isinstance(reading, LabReading) else "XYZ"
    where = f"{reading.viewing.illuminant}, {reading.viewing.observer}°"
    return f"{name} {', '.join(f'{value:.1f}' for value in values)} ({where})"


def _choices(entries: list[tuple[str, str]], chosen: str | None) -> QComboBox:
    box = QComboBox()
    box.addItem("–", None)
    for thing_id, name in entries:
        box.addItem(name, thing_id)
    box.setCurrentIndex(max(0, box.findData(chosen)) if chosen else 0)
    return box
