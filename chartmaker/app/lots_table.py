"""The lots as a table, for reading figures down a column."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QItemSelectionModel, Signal
from PySide6.QtWidgets import QHeaderView

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.shades import colour_of
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtCore import QItemSelection
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.lots_lines import LotLine
    from chartmaker.model.units import Units


class LotsTable(ReadingTable):
    """One row a lot; two rows make a comparison, the one that was chosen first being the reference."""

    picked_changed = Signal(tuple)
    """The ids of the lots that are picked now, the reference first."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__([""] * 9, wide=7, name=tr("Lots"), parent=parent)
        # None is squeezed: where they do not all fit, the table scrolls sideways.
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.setSelectionMode(ReadingTable.SelectionMode.ExtendedSelection)
        self.picked: tuple[str, ...] = ()
        self._lines: list[LotLine] = []
        self._is_settling = False

    def show_lines(self, lines: Sequence[LotLine], units: Units) -> None:
        """Show these lots, the picked ones still picked."""
        self._is_settling = True
        self._lines = list(lines)
        self.setHorizontalHeaderLabels(_headings(units))
        self.show_rows([cells_of(line) for line in lines])
        self._is_settling = False
        self.pick(self.picked)

    def pick(self, lot_ids: Sequence[str]) -> None:
        """Pick these lots, without telling anybody."""
        self._is_settling = True
        self.picked = tuple(lot_ids)
        self.clearSelection()
        rows = [number for number, line in enumerate(self._lines) if line.lot.id in lot_ids]
        flags = QItemSelectionModel.SelectionFlag
        for row in rows:
            self.selectionModel().select(self.model().index(row, 1), flags.Select | flags.Rows)
        if rows:
            self.selectionModel().setCurrentIndex(self.model().index(rows[-1], 1), flags.NoUpdate)
        self._is_settling = False

    def selectionChanged(self, selected: QItemSelection, deselected: QItemSelection) -> None:
        """Keep two at most: the reference, and the last that was picked."""
        super().selectionChanged(selected, deselected)
        if self._is_settling:
            return
        now = [self._lines[index.row()].lot.id for index in self.selectionModel().selectedRows()]
        picked = [lot_id for lot_id in self.picked if lot_id in now]
        picked += [lot_id for lot_id in now if lot_id not in picked]
        if len(picked) > 2:
            self.pick((picked[0], picked[-1]))
        else:
            self.picked = tuple(picked)
        self.picked_changed.emit(self.picked)


def _headings(units: Units) -> list[str]:
    on_hand = tr("on hand,") + tr(units.weight.unit)
    names = [tr("shade"), tr("lot"), tr("letter"), tr("value"), tr("spread"), on_hand]
    return [*names, tr("rests on"), tr("dyestuff"), tr("load")]


def cells_of(line: LotLine) -> tuple[Cell, ...]:
    """Give a lot's row."""
    lot, shade = line.lot, line.shade
    return (
        Cell(
            tr("beyond the screen") if shade and shade.is_out_of_gamut else "",
            icon=patch_icon(colour_of(shade), width=30, height=18),
        ),
        Cell(lot.name),
        Cell(" ".join(line.letters), is_strong=True),
        Cell("–" if shade is None else number(shade.value, 1), is_number=True),
        Cell("–" if shade is None else f"± {number(shade.deviation[0], 1)}", is_number=True),
        Cell(line.units.weight.rough_figure(lot.on_hand_g), is_number=True),
        Cell(line.basis),
        Cell(line.dyestuff or (lot.source[0] if lot.source else "")),
        Cell(str(line.load) if line.load else "", is_number=True),
    )
