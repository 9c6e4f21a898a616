"""Takes what a hat used off the weights on hand: proposed from the appraisal, and changed by hand."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLabel,
    QRadioButton,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.amounts_table import WRITTEN_BY
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import tr
from chartmaker.model.palette_edits import shortfalls
from chartmaker.model.units import METRIC, Units

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from chartmaker.appraisal import Appraisal
    from chartmaker.model.palette import Palette

TAKEN = 4
"""The column that is written in."""
LONG_STORE_G = 100_000.0


def needs_of(appraisal: Appraisal, *, is_planned: bool) -> dict[str, float]:
    """Give the grams that a hat takes of each lot, likely or planned, to the tenth; letters of one lot are added."""
    needs: dict[str, float] = {}
    for entry in appraisal.letters:
        need = entry.requirement
        if need.lot is not None:
            needs[need.lot] = needs.get(need.lot, 0.0) + (need.planned_g if is_planned else need.grams.likely)
    return {lot: round(weight, 1) for lot, weight in needs.items()}


class UseUpDialog(QDialog):
    """A row for each lot of the palette that the hat uses."""

    def __init__(
        self,
        palette: Palette,
        needs: Sequence[Mapping[str, float]],
        take: Callable[[dict[str, float]], None],
        parent: QWidget | None = None,
        *,
        units: Units = METRIC,
    ) -> None:
        """Take the grams by lot, likely and planned, and what to do with those that are taken."""
        super().__init__(parent)
        self.setWindowTitle(tr("Take yarn off the stock"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(640, 360)
        self._palette = palette
        self._needs = needs
        self._take, self._weight = take, units.weight
        self._proposed: dict[str, tuple[str, float]] = {}
        """What stands in the column that is written in until it is written in: the text, and the exact grams."""
        self._lots = [lot for lot in palette.lots if lot.id in needs[0]]
        sentence = QLabel(
            tr("What this hat used is taken off the weights on hand. Write what you weighed, if you did.")
        )
        sentence.setWordWrap(True)
        self.likely = QRadioButton(tr("what is &likely"))
        self.planned = QRadioButton(tr("what was &planned, with the reserve"))
        self.likely.setChecked(True)
        self.table = ReadingTable(
            (tr("lot"), *(f"{name},{tr(units.weight.unit)}" for name in _columns())),
            wide=0,
            name=tr("Yarn taken off the stock"),
        )
        self.table.setEditTriggers(WRITTEN_BY)
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.told.setTextFormat(Qt.TextFormat.PlainText)
        self.told.setAccessibleName(tr("What comes of it"))
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        layout = QVBoxLayout(self)
        for part in (sentence, self.likely, self.planned):
            layout.addWidget(part)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.told)
        layout.addWidget(self.buttons)
        self.likely.toggled.connect(lambda _is_on: self._fill())
        self.table.cellChanged.connect(lambda _row, _column: self._tell())
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        self._fill()

    def taken(self) -> dict[str, float]:
        """Give the grams by lot. Raises ValueError, with a sentence, where one is no weight."""
        found = {}
        for row, lot in enumerate(self._lots):
            item = self.table.item(row, TAKEN)
            text = item.text().strip() if item else ""
            found[lot.id] = weight = self._grams_of(lot.id, text)
            if not 0 <= weight <= LONG_STORE_G:
                raise ValueError(tr("{0}: {1} is no weight").format(lot.name, text))
        return found

    def _grams_of(self, lot_id: str, text: str) -> float:
        """Read a weight, as exact as it was proposed where it is still that; −1 where it is no number."""
        proposed, exact = self._proposed[lot_id]
        if text == proposed:
            return exact
        try:
            return self._weight.metric(float(text.replace(",", ".") or 0))
        except ValueError:
            return -1.0

    def accept(self) -> None:
        """Take them, if all are weights."""
        try:
            grams_taken = self.taken()
        except ValueError:
            self.table.setFocus()
            return
        self._take(grams_taken)
        super().accept()

    def _fill(self) -> None:
        chosen = self._needs[1 if self.planned.isChecked() else 0]
        self._proposed = {lot.id: (self._weight.figure(chosen[lot.id]), chosen[lot.id]) for lot in self._lots}
        self.table.blockSignals(True)
        self.table.show_rows(
            [
                (
                    Cell(lot.name),
                    *(
                        Cell(text, is_number=True)
                        for text in (
                            self._weight.rough_figure(lot.on_hand_g),
                            *(self._weight.figure(needs[lot.id]) for needs in (*self._needs, chosen)),
                        )
                    ),
                )
                for lot in self._lots
            ]
        )
        for row in range(self.table.rowCount()):
            for column in range(TAKEN):
                self._lock(self.table.item(row, column))
        self.table.blockSignals(False)
        self.table.setCurrentCell(0, TAKEN)
        self._tell()

    def _tell(self) -> None:
        """Tell of lots that have less than is taken: they go to nothing, not below."""
        try:
            short = shortfalls(self._palette, self.taken())
        except ValueError as refusal:
            self.told.setText(f"! {refusal}")
            return
        lines = [
            tr("! {0} has {1} less than that: its weight becomes 0").format(lot.name, self._weight.rough(missing))
            for lot, missing in short
        ]
        self.told.setText("\n".join(lines))
        self.told.setVisible(bool(lines))

    def _lock(self, item: QTableWidgetItem | None) -> None:
        if item is not None:
            item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsEditable)


def _columns() -> tuple[str, ...]:
    return tr("on hand"), tr("likely"), tr("planned"), tr("taken")
