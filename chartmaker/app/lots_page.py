"""The lots page: every lot at hand with its shade, how far that can be trusted, and its weight."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.lot_choice import LotEntry, lot_entries
from chartmaker.app.page_frame import PageFrame
from chartmaker.app.shades import colour_of
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import grams, number, tr

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.checks.finding import Place


class LotsPage(PageFrame):
    """The design's own lots and those of its palette, lightest first."""

    chosen = Signal(str)
    """The id of the lot whose row is chosen; empty where none is."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(tr("Lots"), parent)
        self.document = document
        headings = (
            tr("shade"),
            tr("lot"),
            tr("letter"),
            tr("value"),
            tr("spread"),
            tr("on hand, g"),
            tr("rests on"),
            tr("dyestuff"),
            tr("load"),
        )
        self.table = ReadingTable(headings, wide=1, name=tr("Lots"))
        self.content.addWidget(self.table, 1)
        self._entries: tuple[LotEntry, ...] = ()
        self.table.currentCellChanged.connect(lambda *_cells: self._tell_chosen())
        document.appraised.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Follow the design and its palette."""
        design, palette = self.document.design, self.document.palette
        self._entries = lot_entries(design, palette)
        self.table.show_rows([self._cells(entry) for entry in self._entries])
        viewing = design.viewing
        where = tr("from the design and the palette {0}").format(palette.name) if palette else tr("from the design")
        text = tr("{0} lots {1}, lightest first, under CIE {2} with the {3}° observer.")
        if not self._entries:
            text = tr("No lots yet. Open a palette from the File menu to choose from its lots.")
        self.note.setText(text.format(len(self._entries), where, viewing.illuminant, viewing.observer))

    def _tell_chosen(self) -> None:
        row = self.table.currentRow()
        self.chosen.emit(self._entries[row].lot.id if 0 <= row < len(self._entries) else "")

    def lead_to(self, place: Place) -> None:
        """Choose the row of the first letter that a finding is about."""
        lots = {self.document.design.colourway.lot_of(letter) for letter in place.letters}
        for line, entry in enumerate(self._entries):
            if entry.lot.id in lots:
                self.table.setCurrentCell(line, 1)
                break
        self.table.setFocus()

    def _cells(self, entry: LotEntry) -> tuple[Cell, ...]:
        lot, shade = entry.lot, entry.shade
        pairs = self.document.design.colourway.lots
        letters = " ".join(letter for letter, lot_id in pairs if lot_id == lot.id)
        source = lot.source
        bath = self._bath_name(source[0]) if source else ""
        readings = "" if shade is None else f"{tr(shade.rests_on)}, {shade.readings} ×"
        return (
            Cell(
                tr("beyond the screen") if shade and shade.is_out_of_gamut else "",
                icon=patch_icon(colour_of(shade), width=30, height=18),
            ),
            Cell(lot.name),
            Cell(letters, is_strong=True),
            Cell("–" if shade is None else number(shade.value, 1), is_number=True),
            Cell("–" if shade is None else f"± {number(shade.deviation[0], 1)}", is_number=True),
            Cell(grams(lot.on_hand_g), is_number=True),
            Cell(readings or (tr("planned, not dyed") if lot.planned else tr("no reading"))),
            Cell(bath),
            Cell(str(source[1]) if source else "", is_number=True),
        )

    def _bath_name(self, bath_id: str) -> str:
        for palette in (self.document.design.palette, self.document.palette):
            bath = palette.bath(bath_id) if palette else None
            if bath is not None:
                return f"{bath.dyestuff} {bath.part}".strip()
        return bath_id
