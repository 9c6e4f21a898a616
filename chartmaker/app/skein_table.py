"""The skeins marked on a photo, a row each: the corrected shade, what is doubtful, and the lot that it is read for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QComboBox

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.photo_words import skein_words
from chartmaker.app.shades import UNKNOWN
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import number, tr
from chartmaker.model.measured import Measured, name_key
from chartmaker.model.taking import LEFT_OUT, NEW_LOT, Choice
from chartmaker.shade.screen import screen_of_lab
from chartmaker.shade.weights import white_point

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from chartmaker.model.palette import Lot, Palette
    from chartmaker.model.reading import Reading
    from chartmaker.pictures.target_photo import SkeinReading

LOT_COLUMN = 1
LONGEST_NAME = 120


class SkeinTable(ReadingTable):
    """Rows follow the boxes; what was chosen for a box stays with it."""

    changed = Signal()
    """Another lot was chosen or typed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        headings = (tr("skein"), tr("lot"), "L*", "a*", "b*", tr("spread"), tr("to note"))
        super().__init__(headings, wide=6, name=tr("Skeins on the photo"), parent=parent)
        self.setColumnWidth(LOT_COLUMN, 210)
        self.horizontalHeader().setSectionResizeMode(LOT_COLUMN, self.horizontalHeader().ResizeMode.Interactive)
        self.setColumnWidth(LOT_COLUMN, 230)
        self.verticalHeader().setDefaultSectionSize(32)
        self._lots: tuple[Lot, ...] = ()
        self._boxes: list[QComboBox] = []

    def take_palette(self, palette: Palette) -> None:
        """Take the lots to choose from, and forget what was chosen."""
        self._lots = palette.lots
        self._resize_to(0)

    def show_skeins(self, skeins: tuple[SkeinReading | None, ...], *, is_sound: bool) -> None:
        """Show what the boxes come to; their shades are left out where the target gives none to rely on."""
        for line in range(len(self._boxes), len(skeins)):
            self._boxes.append(self._lot_box(line))
        self._resize_to(len(skeins))
        self.show_rows([self._cells(line, skein, is_sound=is_sound) for line, skein in enumerate(skeins)])
        for line, box in enumerate(self._boxes):
            if self.cellWidget(line, LOT_COLUMN) is not box:
                self.setCellWidget(line, LOT_COLUMN, box)

    def remove(self, line: int) -> None:
        """Take a row out, with what was chosen for it; the rows below keep theirs."""
        texts = [box.currentText() for box in self._boxes]
        del texts[line]
        self._resize_to(len(texts))
        for box, text in zip(self._boxes, texts, strict=True):
            with QSignalBlocker(box):
                box.setCurrentText(text)

    def lot_box(self, line: int) -> QComboBox:
        """Give the control of a row in which its lot is chosen or typed."""
        return self._boxes[line]

    def samples(self, skeins: tuple[SkeinReading | None, ...]) -> tuple[list[Measured], dict[int, Choice]]:
        """Give what is taken, one sample for each lot, and the lot each goes to: a chosen one, or one by its name."""
        readings: dict[tuple[str, str], list[Reading]] = {}
        names: dict[tuple[str, str], str] = {}
        for box, skein in zip(self._boxes, skeins, strict=True):
            choice = self._choice(box)
            if skein is not None and choice is not LEFT_OUT:
                key = choice, name_key(self._name(box)) if choice == NEW_LOT else ""
                readings.setdefault(key, []).append(skein.reading)
                names.setdefault(key, self._name(box))
        samples = [Measured(names[key], tuple(found)) for key, found in readings.items()]
        return samples, {index: choice for index, (choice, _) in enumerate(readings)}

    def _choice(self, box: QComboBox) -> Choice:
        """Give the lot chosen, a new one for a name that no lot has, or that it is left out."""
        text = self._name(box)
        if not text or text == box.itemText(0):
            return LEFT_OUT
        lot_id = box.currentData()
        if lot_id and text == box.itemText(box.currentIndex()):
            return str(lot_id)
        return next((lot.id for lot in self._lots if name_key(lot.name) == name_key(text)), NEW_LOT)

    def _name(self, box: QComboBox) -> str:
        return " ".join(box.currentText().split())[:LONGEST_NAME]

    def _lot_box(self, line: int) -> QComboBox:
        box = QComboBox()
        box.setEditable(True)
        box.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        box.addItem(tr("(leave out)"), "")
        for lot in self._lots:
            box.addItem(lot.name, lot.id)
        taken = {each.currentText() for each in self._boxes}
        number_ = next(n for n in range(line + 1, line + 1000) if tr("Skein {0}").format(n) not in taken)
        box.setCurrentIndex(-1)
        box.setCurrentText(tr("Skein {0}").format(number_))
        box.setAccessibleName(tr("Lot of skein {0}").format(line + 1))
        box.setToolTip(tr("Choose a lot, or type the name of a new one"))
        box.currentTextChanged.connect(lambda _text: self.changed.emit())
        return box

    def _resize_to(self, count: int) -> None:
        del self._boxes[count:]
        self.setRowCount(min(self.rowCount(), count))

    def _cells(self, line: int, skein: SkeinReading | None, *, is_sound: bool) -> tuple[Cell, ...]:
        if skein is None or not is_sound:
            dash = Cell("–", is_number=True)
            icon = patch_icon(UNKNOWN, width=30, height=18)
            note = skein_words(skein) if is_sound else ""
            return (Cell(str(line + 1), icon=icon), Cell(""), dash, dash, dash, dash, Cell(note))
        rgb, is_out = screen_of_lab(skein.lab, white=white_point(skein.viewing))
        notes = [tr("beyond the screen")] if bool(is_out) else []
        notes += [words] if (words := skein_words(skein)) else []
        return (
            Cell(str(line + 1), icon=patch_icon(QColor(*rgb.tolist()), width=30, height=18)),
            Cell(""),
            *(Cell(number(value, 1), is_number=True) for value in skein.lab),
            Cell(number(skein.spread, 1), is_number=True),
            Cell(", ".join(notes)),
        )
