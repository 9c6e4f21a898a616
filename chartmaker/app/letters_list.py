"""The letters of a design with their lots: each can be made another lot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QComboBox, QFormLayout, QLabel, QScrollArea, QSizePolicy, QWidget

from chartmaker.app.letter_menu import letters_known, patch_icon
from chartmaker.app.lot_choice import LotEntry, lot_entries
from chartmaker.app.shades import lot_colour
from chartmaker.app.views import view_named
from chartmaker.app.words import tr
from chartmaker.model.edits import assign

if TYPE_CHECKING:
    from collections.abc import Mapping

    from PySide6.QtGui import QColor

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting


class LotBox(QComboBox):
    """Chooses one letter's lot; the wheel passes by, since a lot should not change while scrolling."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setIconSize(QSize(20, 16))
        self.setMinimumContentsLength(8)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def wheelEvent(self, event: object) -> None:
        """Leave the wheel to the list around it."""
        event.ignore()  # type: ignore[attr-defined]

    def offer(self, entries: tuple[LotEntry, ...], chosen: str | None, colours: Mapping[str, QColor]) -> None:
        """List lots with their colours, by id, and mark the one that the letter is."""
        self.blockSignals(True)
        self.clear()
        self.addItem(tr("no lot yet"), None)
        for entry in entries:
            self.addItem(patch_icon(colours[entry.lot.id]), entry.words, entry.lot.id)
            self.setItemData(self.count() - 1, entry.words, Qt.ItemDataRole.ToolTipRole)
        self.setCurrentIndex(max(0, self.findData(chosen)))
        self.setToolTip(self.currentText())
        self.view().setTextElideMode(Qt.TextElideMode.ElideRight)
        self.view().setMinimumWidth(min(460, self.view().sizeHintForColumn(0) + 30))
        self.blockSignals(False)


class LettersList(QScrollArea):
    """One line a letter: the letter and a box of lots."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self._units = document, units
        self._boxes: dict[str, LotBox] = {}
        self._view, self._severity = "shade", 1.0
        self._shown: tuple[object, ...] = ()
        self.setAccessibleName(tr("Letters and their lots"))
        self.setWidgetResizable(True)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        document.appraised.connect(self.refresh)
        units.changed.connect(self.refresh)
        self.refresh()

    def box(self, letter: str) -> LotBox:
        """Give the box of a letter's lots."""
        return self._boxes[letter]

    def show_letter(self, letter: str) -> None:
        """Bring a letter's box into sight and give it the keys."""
        if letter in self._boxes:
            self.ensureWidgetVisible(self._boxes[letter])
            self._boxes[letter].setFocus()

    def show_view(self, view: str, severity: float) -> None:
        """Show lots as a view of the chart does; as dyed where that shows no colour at all."""
        self._view = "shade" if view_named(view).tint == "paper" else view
        self._severity = severity
        self.refresh()

    def refresh(self) -> None:
        """Follow the design; boxes are made anew only where letters come or go."""
        design, palette, units = self.document.design, self.document.palette, self._units.units
        letters = letters_known(self.document.appraisal)
        now = (letters, design.colourway, design.palette, palette, design.viewing, self._view, self._severity, units)
        if now == self._shown:
            return
        if letters != "".join(self._boxes):
            self._rebuild(letters)
        self._shown = now
        entries = lot_entries(design, palette, units)
        at_hand = design.palette.followed_by(palette)
        colours = {
            entry.lot.id: lot_colour(entry.lot, design.viewing, at_hand, view=self._view, severity=self._severity)
            for entry in entries
        }
        for letter, box in self._boxes.items():
            box.offer(entries, design.colourway.lot_of(letter), colours)

    def _rebuild(self, letters: str) -> None:
        self._boxes = {}
        inside = QWidget()
        form = QFormLayout(inside)
        form.setContentsMargins(8, 4, 6, 8)
        form.setHorizontalSpacing(6)
        form.setVerticalSpacing(4)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        for letter in letters:
            box = LotBox()
            box.setAccessibleName(tr("Lot of letter {0}").format(letter))
            box.activated.connect(lambda _index, letter=letter: self._choose(letter))
            label = QLabel(letter)
            label.setBuddy(box)
            form.addRow(label, box)
            self._boxes[letter] = box
        self.setWidget(inside)

    def _choose(self, letter: str) -> None:
        lot = self._boxes[letter].currentData()
        if lot != self.document.design.colourway.lot_of(letter):
            self.document.do(assign(self.document.design, letter, lot, source=self.document.palette))
