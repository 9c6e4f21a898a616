"""A row a letter: what it takes as numbers and as a bar against what is on hand, and the sum of all."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHeaderView

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.shades import colour_of
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import number, tr
from chartmaker.app.yarn_bar import Amounts, BarDelegate

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.appraisal import LetterAppraisal
    from chartmaker.knit.interval import Interval
    from chartmaker.model.units import Quantity

LOT, BAR, STITCHES, YARN = 1, 2, 3, 4
"""Columns that are treated apart."""
LOT_ROOM, BAR_ROOM = 120, 110
"""Width of the lots' names, at least, and of the bars."""


class LettersTable(ReadingTable):
    """The chosen row is a letter, or all of them together."""

    letter_chosen = Signal(str)
    """The letter whose row was chosen; empty for all."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__([""] * 9, wide=LOT, name=tr("Yarn of each letter"), parent=parent)
        self.document, self.units = document, units
        self.bars = BarDelegate(self)
        self.setItemDelegateForColumn(BAR, self.bars)
        self.currentCellChanged.connect(lambda *_cells: self.letter_chosen.emit(self.letter))
        document.appraised.connect(self.refresh)
        units.changed.connect(self.refresh)
        self.refresh()

    @property
    def letter(self) -> str:
        """The letter whose row is chosen; empty for the row of all, and where none is."""
        letters = [entry.letter for entry in self.document.appraisal.letters]
        row = self.currentRow()
        return letters[row] if 0 <= row < len(letters) else ""

    def choose_letter(self, letter: str) -> None:
        """Choose a letter's row; one that is not in use changes nothing."""
        letters = [entry.letter for entry in self.document.appraisal.letters]
        if letter in letters:
            self.setCurrentCell(letters.index(letter), 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep room for the names of lots."""
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        """Hide what stands with the bands too, as far as the names of lots would be cut short by it."""
        header = self.horizontalHeader()
        widths = [max(header.sectionSizeHint(place), self.sizeHintForColumn(place)) for place in range(header.count())]
        widths[LOT], widths[BAR] = LOT_ROOM, BAR_ROOM
        too_much = sum(widths) - self.viewport().width()
        for place in (STITCHES, YARN):
            self.setColumnHidden(place, too_much > 0)
            too_much -= widths[place]

    def refresh(self) -> None:
        """Follow the appraisal and the units."""
        appraisal = self.document.appraisal
        self._head()
        amounts = [_amounts(entry) for entry in appraisal.letters]
        most = max((amount.most_g for amount in amounts), default=0.0)
        self.bars.show_amounts(amounts, most_g=most)
        self.show_rows([*map(self._cells, appraisal.letters), self._sums()])
        for row, entry in enumerate(appraisal.letters):
            item = self.item(row, BAR)
            if item is not None:
                item.setToolTip(self._bar_words(entry))
        self.horizontalHeader().setSectionResizeMode(BAR, QHeaderView.ResizeMode.Fixed)
        self.setColumnWidth(BAR, BAR_ROOM)
        self._make_room()
        self.letter_chosen.emit(self.letter)

    def _head(self) -> None:
        yarn, weight = self.units.units.yarn.unit, self.units.units.weight.unit
        self.setHorizontalHeaderLabels(
            [
                tr("letter"),
                tr("lot"),
                tr("need on stock"),
                tr("stitches"),
                tr("in all,") + yarn,
                tr("in all,") + weight,
                tr("planned,") + weight,
                tr("on hand,") + weight,
                tr("left,") + weight,
            ]
        )

    def _cells(self, entry: LetterAppraisal) -> tuple[Cell, ...]:
        need, units = entry.requirement, self.units.units
        is_short = need.short_g > 0
        left = amount(max(0.0, need.on_hand_g - need.taken_g - need.planned_g), units.weight) if entry.lot else "–"
        return (
            Cell(entry.letter, icon=patch_icon(colour_of(entry.shade), width=30, height=18), is_strong=True),
            Cell(entry.lot.name if entry.lot else tr("no lot yet")),
            Cell(""),
            figure(str(need.stitches)),
            figure(span(need.metres, units.yarn)),
            figure(span(need.grams, units.weight)),
            figure(amount(need.planned_g, units.weight)),
            figure(amount(need.on_hand_g, units.weight)),
            figure(f"! {amount(-need.short_g, units.weight)}" if is_short else left, is_strong=is_short),
        )

    def _sums(self) -> tuple[Cell, ...]:
        from chartmaker.knit.interval import NOTHING

        units = self.units.units
        needs = [entry.requirement for entry in self.document.appraisal.letters]
        short = sum(need.short_g for need in needs)
        texts = (
            str(sum(need.stitches for need in needs)),
            span(sum((need.metres for need in needs), start=NOTHING), units.yarn),
            span(sum((need.grams for need in needs), start=NOTHING), units.weight),
            amount(sum(need.planned_g for need in needs), units.weight),
            "",
            f"! {amount(-short, units.weight)}" if short else "–",
        )
        figures = (figure(text, is_strong=True) for text in texts)
        return (Cell(""), Cell(tr("all letters"), is_strong=True), Cell(""), *figures)

    def _bar_words(self, entry: LetterAppraisal) -> str:
        need, weight = entry.requirement, self.units.units.weight
        return tr("{0}: {1} needed, {2} planned, {3} on hand").format(
            entry.letter,
            span(need.grams, weight) + weight.unit,
            weight.told(need.planned_g),
            weight.told(need.on_hand_g),
        )


def figure(text: str, *, is_strong: bool = False) -> Cell:
    """Give a cell of a number."""
    return Cell(text, is_number=True, is_strong=is_strong)


def amount(metric: float, quantity: Quantity) -> str:
    """Write an amount without its unit: whole from 10 on where the unit is fine enough, else to a tenth or finer."""
    value = quantity.shown(metric)
    return number(value, quantity.digits if 0 < abs(value) < 9.95 or quantity.digits > 1 else quantity.digits - 1)


def span(interval: Interval, quantity: Quantity) -> str:
    """Write low to high without the unit."""
    return f"{amount(interval.low, quantity)}–{amount(interval.high, quantity)}"


def _amounts(entry: LetterAppraisal) -> Amounts:
    need = entry.requirement
    return Amounts(
        low_g=need.grams.low,
        likely_g=need.grams.likely,
        high_g=need.grams.high,
        planned_g=need.planned_g,
        on_hand_g=max(0.0, need.on_hand_g - need.taken_g),
    )
