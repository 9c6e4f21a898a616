"""The yarn page: what each letter needs, what is on hand, and what is short."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.page_frame import PageFrame
from chartmaker.app.shades import colour_of
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import grams, number, tr

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.appraisal import LetterAppraisal
    from chartmaker.checks.finding import Place
    from chartmaker.knit.interval import Interval


class YarnPage(PageFrame):
    """A row a letter, and the sum of all."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(tr("Yarn"), parent)
        self.document = document
        headings = (
            tr("letter"),
            tr("lot"),
            tr("stitches"),
            tr("stitches, m"),
            tr("floats, m"),
            tr("other, m"),
            tr("metres"),
            tr("grams"),
            tr("planned, g"),
            tr("on hand, g"),
            tr("short, g"),
        )
        self.table = ReadingTable(headings, wide=1, name=tr("Yarn of each letter"))
        self.content.addWidget(self.table, 1)
        document.appraised.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Follow the appraisal."""
        appraisal = self.document.appraisal
        source = tr("a swatch") if appraisal.loop.source == "swatch" else tr("the gauge")
        reserve = self.document.design.allowances.reserve_percent
        self.note.setText(
            tr(
                "A stitch takes {0} cm of yarn ({1} to {2}), by {3}. Metres and grams run from low to high; "
                "planned is the high end and {4} % in reserve; other is cast-on, tails, strands "
                "carried up, finish and trims."
            ).format(
                number(appraisal.loop.cm.likely, 2),
                number(appraisal.loop.cm.low, 2),
                number(appraisal.loop.cm.high, 2),
                source,
                number(reserve),
            )
        )
        self.table.show_rows([*map(_cells, appraisal.letters), self._sums()])

    def lead_to(self, place: Place) -> None:
        """Choose the row of the letter that a finding is about."""
        letters = [entry.letter for entry in self.document.appraisal.letters]
        if place.letters and place.letters[0] in letters:
            self.table.setCurrentCell(letters.index(place.letters[0]), 0)
        self.table.setFocus()

    def _sums(self) -> tuple[Cell, ...]:
        needs = [entry.requirement for entry in self.document.appraisal.letters]
        numbers = (
            str(sum(need.stitches for need in needs)),
            number(sum(need.stitch_m.likely for need in needs), 1),
            number(sum(need.float_m.likely for need in needs), 1),
            number(sum(need.other_m.likely for need in needs), 1),
            f"{sum(need.metres.low for need in needs):.0f}–{sum(need.metres.high for need in needs):.0f}",
            f"{sum(need.grams.low for need in needs):.0f}–{sum(need.grams.high for need in needs):.0f}",
            number(sum(need.planned_g for need in needs)),
            "",
            grams(sum(need.short_g for need in needs)),
        )
        return (Cell(""), Cell(tr("all letters"), is_strong=True), *(_figure(text, is_strong=True) for text in numbers))


def _cells(entry: LetterAppraisal) -> tuple[Cell, ...]:
    need = entry.requirement
    is_short = need.short_g > 0
    return (
        Cell(entry.letter, icon=patch_icon(colour_of(entry.shade), width=30, height=18), is_strong=True),
        Cell(entry.lot.name if entry.lot else tr("no lot yet")),
        _figure(str(need.stitches)),
        _figure(number(need.stitch_m.likely, 1)),
        _figure(number(need.float_m.likely, 1)),
        _figure(number(need.other_m.likely, 1)),
        _figure(_range(need.metres)),
        _figure(f"{grams(need.grams.low)}–{grams(need.grams.high)}"),
        _figure(grams(need.planned_g)),
        _figure(grams(need.on_hand_g)),
        _figure(f"! {grams(need.short_g)}" if is_short else "–", is_strong=is_short),
    )


def _figure(text: str, *, is_strong: bool = False) -> Cell:
    return Cell(text, is_number=True, is_strong=is_strong)


def _range(interval: Interval) -> str:
    return f"{number(interval.low)}–{number(interval.high)}"
