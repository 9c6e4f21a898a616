"""Shapes the crown anew: its profile, sections and decreases, with every round that comes of it before it is done."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.band_strip import CalmSpin
from chartmaker.app.crown_sketch import CrownSketch
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.knit.crown import (
    FEWEST_SECTIONS,
    FLAT,
    MOST_POINT_ROUNDS,
    MOST_SECTIONS,
    POINTED,
    ROUND,
    Crown,
    crown_start,
    stitches_below_crown,
    with_crown,
)
from chartmaker.knit.crown_reading import crown_of
from chartmaker.knit.fit_crown import is_taper
from chartmaker.knit.wedge import CENTRED, PAIRED, SINGLE
from chartmaker.knit.written import SHAPED_NAMES
from chartmaker.model.stitches import Shaping

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from PySide6.QtGui import QShowEvent

    from chartmaker.model.band import Band
    from chartmaker.model.design import Design
    from chartmaker.model.edits import ReplaceBands
    from chartmaker.model.units import Units


class CrownDialog(QDialog):
    """OK does it as one step; what cannot be made is told, and cannot be done."""

    def __init__(
        self, design: Design, units: Units, do: Callable[[ReplaceBands | None], object], parent: QWidget | None = None
    ) -> None:
        """Begin with the crown that the design has, and hand the edit to `do`."""
        super().__init__(parent)
        self.setWindowTitle(tr("Shape the crown"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(720, 460)
        self._design, self._units, self._do = design, units, do
        start = crown_start(design)
        self._has_crown = start is not None
        self._has_taper = start is not None and is_taper(design.bands[start:])
        self.profile = _box(
            tr("Profile of the crown"),
            {ROUND: tr("round, a hemisphere"), FLAT: tr("flat, a wheel"), POINTED: tr("pointed, a cone")},
        )
        self.sections = _box(tr("Sections of the crown"), dict(self._section_texts()))
        self.decrease = _box(
            tr("Decreases of the crown"),
            {
                PAIRED: tr("leaning pairs at the edges"),
                CENTRED: tr("a centred double in the middle"),
                SINGLE: tr("a single one at the left edge"),
            },
        )
        self.rounds = CalmSpin(tr("Rounds of a pointed crown"))
        self.rounds.setRange(0, MOST_POINT_ROUNDS)
        self.rounds.setSpecialValueText(tr("as usual"))
        self.keep = QCheckBox(tr("&Keep what is drawn on the crown"))
        self.keep.setChecked(True)
        self.keep.setEnabled(self._has_crown)
        self.table = ReadingTable(
            (tr("round"), tr("stitches"), tr("shaping")),
            wide=2,
            name=tr("Rounds of the crown, the first at the bottom"),
        )
        self.sketch = CrownSketch()
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.told.setTextFormat(Qt.TextFormat.PlainText)
        self.told.setAccessibleName(tr("What comes of it"))
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        self._lay_out()
        self._begin()
        self._connect()
        self._show()

    @property
    def crown(self) -> Crown:
        """What is asked for."""
        profile = self.profile.currentData()
        return Crown(
            profile=profile,
            sections=self.sections.currentData(),
            decrease=self.decrease.currentData(),
            rounds=(self.rounds.value() or None) if profile == POINTED else None,
        )

    @property
    def edit(self) -> ReplaceBands | None:
        """What OK would do; None where it would change nothing. Raises ValueError, with a sentence."""
        return with_crown(self._design, self.crown, keep_pattern=self.keep.isChecked())

    def showEvent(self, event: QShowEvent) -> None:
        """Begin the list of rounds at its foot, where the first is."""
        super().showEvent(event)
        self.table.scrollToBottom()

    def accept(self) -> None:
        """Do it, if it can be made."""
        try:
            edit = self.edit
        except ValueError:
            return
        self._do(edit)
        super().accept()

    def _section_texts(self) -> Iterator[tuple[int, str]]:
        stitches = stitches_below_crown(self._design)
        for count in range(FEWEST_SECTIONS, MOST_SECTIONS + 1):
            width, spare = divmod(stitches, count)
            text = tr("{0} of {1} stitches") if not spare else tr("{0} of {1}, after a round that takes {2} away")
            yield count, text.format(count, width, spare)

    def _begin(self) -> None:
        crown = crown_of(self._design)
        for box, value in (
            (self.profile, crown.profile),
            (self.sections, crown.sections),
            (self.decrease, crown.decrease),
        ):
            box.setCurrentIndex(box.findData(value))
        self.rounds.setValue(crown.rounds or 0)

    def _lay_out(self) -> None:
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.addRow(tr("&Profile"), self.profile)
        form.addRow(tr("&Sections"), self.sections)
        form.addRow(tr("&Decreases"), self.decrease)
        form.addRow(tr("&Rounds"), self.rounds)
        form.addRow(self.keep)
        side = QVBoxLayout()
        side.addLayout(form)
        side.addSpacing(8)
        side.addWidget(self.told)
        side.addWidget(self.sketch, 1)
        row = QHBoxLayout()
        row.addLayout(side, 3)
        row.addSpacing(8)
        row.addWidget(self.table, 2)
        layout = QVBoxLayout(self)
        layout.addLayout(row, 1)
        layout.addWidget(self.buttons)

    def _connect(self) -> None:
        for box in (self.profile, self.sections, self.decrease):
            box.currentIndexChanged.connect(lambda _index: self._show())
        self.rounds.valueChanged.connect(lambda _rounds: self._show())
        self.keep.toggled.connect(lambda _is_on: self._show())
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)

    def _show(self) -> None:
        self.rounds.setEnabled(self.profile.currentData() == POINTED)
        try:
            edit = self.edit
        except ValueError as refusal:
            self.table.show_rows([])
            self.sketch.show_crown(None)
            self._tell(f"! {told(str(refusal))}", is_possible=False)
            return
        after = edit.applied_to(self._design) if edit else self._design
        start = crown_start(after) or 0
        bands = after.bands[start:]
        self.table.show_rows(list(_rows(bands))[::-1])
        self.table.scrollToBottom()
        self.sketch.show_crown(after, sum(len(band.rounds) for band in after.bands[:start]))
        count = sum(len(band.rounds) for band in bands)
        text = tr("{0} rounds, {1} along the fabric; {2} stitches are drawn up at the top.")
        length = self._units.length.told(count * after.gauge.round_height_cm)
        last = bands[-1]
        words = text.format(count, length, last.stitches(len(last.rounds) - 1))
        if self._has_taper:
            words += " " + tr("It takes the place of the long taper.")
        self._tell(words, is_possible=True)

    def _tell(self, text: str, *, is_possible: bool) -> None:
        self.told.setText(text)
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(is_possible)


def _box(name: str, entries: dict[str, str] | dict[int, str]) -> QComboBox:
    box = QComboBox()
    box.setAccessibleName(name)
    for value, text in entries.items():
        box.addItem(text, value)
    return box


def _rows(bands: tuple[Band, ...]) -> Iterator[tuple[Cell, Cell, Cell]]:
    """Give the rounds as rows: number within the crown, stitches, and how often which decreases are worked."""
    number = 0
    for band in bands:
        for place, line in enumerate(band.rounds):
            number += 1
            names = ", ".join(SHAPED_NAMES[Shaping(code), "k"] for code in line.shaping if code)
            shaping = f"{band.times} × {names}" if names else ""
            yield (
                Cell(str(number), is_number=True),
                Cell(str(band.stitches(place)), is_number=True, is_strong=bool(names)),
                Cell(shaping),
            )
