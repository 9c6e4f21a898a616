"""A bath that is on record: what was planned beside what happened, its lots, and the form to put it right."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from chartmaker.app.bath_lines import Line, Lines, heading, narrow
from chartmaker.app.bath_record_form import BathRecordForm, LoadAsked
from chartmaker.app.page_frame import rule
from chartmaker.app.words import grams, number, tr
from chartmaker.model.bath_record import BathRecord

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from chartmaker.app.baths_desk import BathsDesk
    from chartmaker.model.palette import Bath, Lot, Palette


class RecordedView(QWidget):
    """The record and its form."""

    def __init__(self, desk: BathsDesk, bath_id: str, put_away: Callable[[BathRecordForm], BathRecordForm]) -> None:
        """Take who records, the bath, and what gives the form in which something was written before, if any."""
        super().__init__()
        palette = desk.open_palette.palette
        bath = palette.bath(bath_id)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 8, 0)
        layout.setSpacing(10)
        self.form: BathRecordForm | None = None
        self.uses: list[QPushButton] = []
        """A button for each letter that one of these lots may follow."""
        if bath is None or bath.record is None:
            return
        layout.addWidget(heading(tr("{0} (bath {1})").format(bath.dyestuff, bath.id)))
        layout.addWidget(narrow(Lines(tr("Planned, and what happened"), _compared(bath, bath.record))))
        layout.addWidget(narrow(Lines(tr("Its lots"), _lots(palette, bath.record))))
        self.uses = [_use_button(desk, letter, lot) for letter, lot in desk.replaced_by(bath)]
        for button in self.uses:
            layout.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(rule())
        made = _form(palette, bath, bath.record)
        made.given.connect(lambda record, _takes_off: desk.complete(bath_id, record))
        self.form = put_away(made)
        layout.addWidget(self.form)
        layout.addStretch(1)


def _use_button(desk: BathsDesk, letter: str, lot: Lot) -> QPushButton:
    button = QPushButton(tr("Use {0} as letter {1}").format(lot.name.replace("&", "&&"), letter))
    button.setToolTip(tr("Its letter is another run of this bath now, which never comes out quite the same"))
    button.clicked.connect(lambda _checked=False: desk.use_as_letter(letter, lot.id))
    return button


def recorded_baths(palette: Palette) -> list[Bath]:
    """Give the baths that are on record, the latest first."""
    known = [(bath.record.dyed_on, bath) for bath in palette.baths if bath.record]
    return [bath for _, bath in sorted(known, key=lambda pair: str(pair[0] or ""), reverse=True)]


def _form(palette: Palette, bath: Bath, record: BathRecord) -> BathRecordForm:
    loads = [
        LoadAsked(load.load, lot.name if (lot := palette.lot(load.lot)) else tr("no lot yet"), load.fibre_g, load)
        for load in record.loads
    ]
    planned = BathRecord(
        dyestuff_g=_planned_g(bath, record),
        water_l=_planned_l(bath, record),
        ph_start=bath.ph_start,
        ph_end=bath.ph_end,
        hottest_c=bath.hottest_c,
        minutes=bath.minutes,
    )
    return BathRecordForm(loads, planned, record)


def _compared(bath: Bath, record: BathRecord) -> Iterator[Line]:
    rows = (
        (tr("dyestuff weighed, g"), _planned_g(bath, record), record.dyestuff_g, 0),
        (tr("water, L"), _planned_l(bath, record), record.water_l, 1),
        (tr("pH at the start"), bath.ph_start, record.ph_start, 1),
        (tr("pH at the end"), bath.ph_end, record.ph_end, 1),
        (tr("hottest, °C"), bath.hottest_c, record.hottest_c, 0),
        (tr("minutes"), bath.minutes, record.minutes, 0),
    )
    for name, planned, happened, digits in rows:
        if planned is not None or happened is not None:
            yield Line(name, f"{_told(planned, digits)}  →  {_told(happened, digits)}")
    if record.notes:
        yield Line(record.notes)


def _planned_g(bath: Bath, record: BathRecord) -> float | None:
    """Give the dyestuff that the recipe asks for the first load that went in."""
    first = record.of_load(1)
    return bath.ratio * first.fibre_g if first else None


def _planned_l(bath: Bath, record: BathRecord) -> float:
    """Give the liquor that the recipe asks for the heaviest load that went in."""
    return bath.liquor_l_per_100g / 100 * max((load.fibre_g for load in record.loads), default=0.0)


def _lots(palette: Palette, record: BathRecord) -> Iterator[Line]:
    for load in record.loads:
        lot = palette.lot(load.lot)
        name = lot.name if lot else tr("load {0}, not weighed dry yet").format(load.load)
        out = tr("{0} g in").format(grams(load.fibre_g))
        if load.dry_g is not None:
            out += ", " + tr("{0} g out").format(grams(load.dry_g))
        more = () if lot is None or lot.readings else (tr("not measured yet: readings are taken on the Lots page"),)
        yield Line(name, out, more)


def _told(value: float | None, digits: int) -> str:
    return "–" if value is None else number(value, digits)
