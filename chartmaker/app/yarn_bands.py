"""Where the yarn of a letter goes, band by band, the crown at the top as in the chart."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import tr
from chartmaker.app.yarn_letters import amount, figure, span

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtWidgets import QWidget

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.knit.interval import Interval
    from chartmaker.knit.yarn_by_band import PieceYarn


class BandsTable(ReadingTable):
    """Of one letter, or of all together."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__([""] * 6, wide=0, name=tr("Yarn of each band"), parent=parent)
        self.document, self.units = document, units
        self._letter = ""
        document.appraised.connect(self.refresh)
        units.changed.connect(self.refresh)
        self.refresh()

    def show_letter(self, letter: str) -> None:
        """Show one letter's yarn; that of all where none is named."""
        if letter != self._letter:
            self._letter = letter
            self.refresh()

    def refresh(self) -> None:
        """Follow the appraisal, the units and the letter."""
        from chartmaker.knit.yarn_by_band import yarn_by_band

        appraisal = self.document.appraisal
        if self._letter not in [entry.letter for entry in appraisal.letters]:
            self._letter = ""
        self._head()
        found = yarn_by_band(appraisal.design, appraisal.fabric, appraisal.floats, appraisal.loop)
        wanted = [one for one in found if self._letter in ("", one.letter)]
        names = list(enumerate(appraisal.design.bands))
        rows = [
            self._row(band.name or tr("band {0}").format(index + 1), [one for one in wanted if one.piece == index])
            for index, band in reversed(names)
        ]
        self.show_rows([*(row for row in rows if row), *self._rest()])

    def _head(self) -> None:
        yarn, weight = self.units.units.yarn.unit, self.units.units.weight.unit
        whose = tr("band, letter {0}").format(self._letter) if self._letter else tr("band, all letters")
        names = (tr("in stitches,"), tr("in floats,"), tr("in all,"))
        self.setHorizontalHeaderLabels(
            [whose, tr("stitches"), *(name + yarn for name in names), tr("in all,") + weight]
        )

    def _row(self, name: str, found: Sequence[PieceYarn]) -> tuple[Cell, ...]:
        if not found:
            return ()
        from chartmaker.knit.interval import NOTHING

        return self._cells(
            name,
            str(sum(one.stitches for one in found)),
            sum((one.stitch_m for one in found), start=NOTHING),
            sum((one.float_m for one in found), start=NOTHING),
            sum((one.grams for one in found), start=NOTHING),
        )

    def _cells(
        self, name: str, stitches: str, stitch_m: Interval, float_m: Interval, grams: Interval
    ) -> tuple[Cell, ...]:
        units = self.units.units
        return (
            Cell(name),
            figure(stitches),
            figure(amount(stitch_m.likely, units.yarn)),
            figure(amount(float_m.likely, units.yarn)),
            figure(span(stitch_m + float_m, units.yarn)),
            figure(span(grams, units.weight)),
        )

    def _rest(self) -> list[tuple[Cell, ...]]:
        """Give the row of what belongs to no band, and the row of all."""
        from chartmaker.knit.interval import NOTHING

        units = self.units.units
        needs = [entry.requirement for entry in self.document.appraisal.letters if self._letter in ("", entry.letter)]
        metres = sum((need.other_m for need in needs), start=NOTHING)
        grams = sum((need.other_m * (100 / need.metres_per_100g) for need in needs), start=NOTHING)
        what = ", ".join(dict.fromkeys(extra.what for need in needs for extra in need.extras))
        name = tr("the rest: {0}").format(what) if self._letter else tr("the rest")
        rest = (Cell(name), *(figure("") for _ in range(3)))
        everything = self._cells(
            tr("in all"),
            str(sum(need.stitches for need in needs)),
            sum((need.stitch_m for need in needs), start=NOTHING),
            sum((need.float_m for need in needs), start=NOTHING),
            sum((need.grams for need in needs), start=NOTHING),
        )
        every_metre = span(sum((need.metres for need in needs), start=NOTHING), units.yarn)
        strong = [replace(cell, is_strong=True) for cell in everything]
        strong[4] = figure(every_metre, is_strong=True)
        return [(*rest, figure(span(metres, units.yarn)), figure(span(grams, units.weight))), tuple(strong)]
