"""What measured samples would bring to the palette, shown before anything is done; each can be sent to another lot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QHeaderView,
    QLabel,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.shades import colour_of
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.told import told
from chartmaker.app.words import number, plain_tip, tr
from chartmaker.model.taking import LEFT_OUT, NEW_LOT, Choice, TakenLine, Taking, taking
from chartmaker.shade.lots import shades_of
from chartmaker.shade.readings import rests_on
from chartmaker.shade.stray import stray_note

if TYPE_CHECKING:
    from collections.abc import Sequence

    from chartmaker.model.measured import Measured
    from chartmaker.model.palette import Palette
    from chartmaker.model.settings import Viewing
    from chartmaker.shade.lot_shade import LotShade

_NAME, _GOES_TO = 1, 2
"""The columns of the samples' names and of the choice of lots."""


class TakingDialog(QDialog):
    """Shows a line for each sample; `taking` is what accepting it means."""

    def __init__(  # noqa: PLR0913 - what is taken, into what, and how it is seen, told by name
        self,
        measured: Sequence[Measured],
        *,
        source: str,
        notes: Sequence[str] = (),
        palette: Palette,
        viewing: Viewing,
        parent: QWidget | None = None,
    ) -> None:
        """Take the samples, what they come from ("shed.csv, CSV"), and the palette that they would go into."""
        super().__init__(parent)
        self.setWindowTitle(tr("Take readings"))
        self.resize(960, 480)
        self._measured = tuple(measured)
        self._palette = palette
        self._viewing = viewing
        self._choices: dict[int, Choice] = {}
        self.taking: Taking = taking(palette, self._measured)
        self._destinations = _destinations(palette)
        self._order: tuple[Choice, ...] = (NEW_LOT, LEFT_OUT, *(lot.id for lot in palette.lots))
        """What the entries of `_destinations` stand for."""
        self.heading = _words()
        self.heading.setText(_heading(self._measured, source, palette))
        self.notes = _words()
        self.notes.setText("\n".join(told(note[:1].upper() + note[1:]) + "." for note in notes))
        self.notes.setVisible(bool(notes))
        self.table = self._made_table()
        self.sum = _words()
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        self.take = self.buttons.addButton(tr("&Take them"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        for part in (self.heading, self.notes):
            layout.addWidget(part)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.sum)
        layout.addWidget(self.buttons)
        self._show()
        self.table.setFocus()

    def box(self, row: int) -> QComboBox:
        """Give the choice of lots in a row; 0 is the first."""
        box = self.table.cellWidget(row, _GOES_TO)
        assert isinstance(box, QComboBox)  # noqa: S101 - put there by `_made_table`
        return box

    # --- the table

    def _made_table(self) -> ReadingTable:
        headings = (
            tr("shade"),
            tr("in the file"),
            tr("goes to"),
            tr("readings"),
            tr("value"),
            tr("rests on"),
            tr("note"),
        )
        table = ReadingTable(headings, wide=len(headings) - 1, name=tr("What the samples bring"))
        table.show_rows([self._cells(line, None) for line in self.taking.lines])
        table.verticalHeader().setDefaultSectionSize(32)
        table.setIconSize(QSize(30, 18))
        table.horizontalHeader().setSectionResizeMode(_GOES_TO, QHeaderView.ResizeMode.Fixed)
        table.setColumnWidth(_GOES_TO, 230)
        # Names may be of any length, and are told in full by their tips.
        table.horizontalHeader().setSectionResizeMode(_NAME, QHeaderView.ResizeMode.Interactive)
        table.setColumnWidth(_NAME, min(200, max(100, table.sizeHintForColumn(_NAME) + 24)))
        for row, sample in enumerate(self._measured):
            table.setCellWidget(row, _GOES_TO, self._made_box(row, sample))
        return table

    def _made_box(self, row: int, sample: Measured) -> QComboBox:
        box = QComboBox()
        box.setModel(self._destinations)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(12)
        box.view().setMinimumWidth(300)
        box.setAccessibleName(tr("Lot that {0} goes to").format(sample.name))
        box.setCurrentIndex(self._order.index(self.taking.lines[row].choice))
        box.currentIndexChanged.connect(lambda index: self._choose(row, self._order[index]))
        return box

    def _choose(self, row: int, choice: Choice) -> None:
        """Send a sample elsewhere, and show what becomes of all of them then."""
        self._choices[row] = choice
        self.taking = taking(self._palette, self._measured, self._choices)
        self._show()

    def _show(self) -> None:
        lots = [line.lot for line in self.taking.lines]
        known = iter(shades_of([lot for lot in lots if lot is not None], self._viewing))
        shades = [next(known) if lot is not None else None for lot in lots]
        self.table.show_rows([self._cells(*pair) for pair in zip(self.taking.lines, shades, strict=True)])
        strayed = sum(bool(self._stray_of(line)) for line in self.taking.lines)
        far = tr("! Samples far from the shade that their lots had: {0}. Are they the same yarn?").format(strayed)
        self.sum.setText(_sum(self.taking) + (f"\n{far}" if strayed else ""))
        self.take.setEnabled(self.taking.added > 0)

    def _cells(self, line: TakenLine, shade: LotShade | None) -> tuple[Cell, ...]:
        kinds = ", ".join(dict.fromkeys(tr(rests_on(reading)) for reading in line.measured.readings))
        return (
            Cell("", icon=patch_icon(colour_of(shade), width=30, height=18)),
            Cell(line.measured.name),
            Cell(""),
            Cell(_counts(line)),
            Cell("–" if shade is None else number(shade.value, 1), is_number=True),
            Cell(kinds),
            Cell("; ".join(told(note) for note in self._notes_on(line))),
        )

    def _stray_of(self, line: TakenLine) -> str:
        earlier = self._palette.lot(line.lot.id) if line.lot else None
        return stray_note(line.measured.readings, earlier, self._viewing)

    def _notes_on(self, line: TakenLine) -> tuple[str, ...]:
        stray = self._stray_of(line)
        return (*line.notes, stray) if stray else line.notes


def _destinations(palette: Palette) -> QStandardItemModel:
    """Give what a sample may go to, as texts; one model serves every row."""
    model = QStandardItemModel()
    lots = (lot.name if lot.name == lot.id else f"{lot.name} ({lot.id})" for lot in palette.lots)
    for text in (tr("a new lot"), tr("nowhere: leave it out"), *lots):
        item = QStandardItem(text)
        item.setToolTip(plain_tip(text))
        model.appendRow(item)
    return model


def _heading(measured: Sequence[Measured], source: str, palette: Palette) -> str:
    count = sum(len(sample.readings) for sample in measured)
    into = palette.name or tr("the palette")
    return tr("{0}, for {3}. Samples: {1}; readings: {2}.").format(source, len(measured), count, into)


def _counts(line: TakenLine) -> str:
    if line.lot is None:
        return tr("left out")
    new = tr("{0} new").format(line.added)
    return tr("{0}, {1} known").format(new, line.known) if line.known else new


def _sum(taken: Taking) -> str:
    if not taken.added:
        return tr("Nothing new would be added.")
    lots = {line.lot.id for line in taken.lines if line.lot and line.added}
    fresh = {line.lot.id for line in taken.lines if line.lot and line.is_new}
    return tr("Readings to add: {0}. Lots that get them: {1}, of them new: {2}.").format(
        taken.added, len(lots), len(fresh)
    )


def _words() -> QLabel:
    label = QLabel()
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    return label
