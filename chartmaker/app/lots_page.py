"""The lots page: every lot at hand as a skein, and beside them what is known of the one or the two that are picked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings, Qt, Signal
from PySide6.QtWidgets import QSplitter, QStackedWidget, QVBoxLayout, QWidget

from chartmaker.app.letter_menu import letter_menu
from chartmaker.app.lots_bar import LotsBar
from chartmaker.app.lots_blank import LotsBlank
from chartmaker.app.lots_flow import LotsFlow
from chartmaker.app.lots_lines import LotLine, in_order, lot_lines, lots_at_hand, matching
from chartmaker.app.lots_rail import LettersRail
from chartmaker.app.lots_side import LotsSide
from chartmaker.app.lots_table import LotsTable
from chartmaker.app.page_frame import PageFrame
from chartmaker.app.words import tr
from chartmaker.model.edits import assign

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    from PySide6.QtGui import QAction, QShowEvent

    from chartmaker.app.lots_desk import LotsDesk
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.checks.finding import Place


class LotsPage(PageFrame):
    """The palette's lots and those that only the design has, as skeins or as a table."""

    chosen = Signal(str)
    """The id of the lot that is picked last; empty where none is."""
    refused = Signal(str)
    """What palette or design could not take, as a sentence."""

    def __init__(  # noqa: PLR0913 - what the page needs of its window
        self,
        document: OpenDesign,
        *,
        settings: QSettings,
        units: UnitsSetting,
        desk: LotsDesk,
        actions: Mapping[str, QAction],
        parent: QWidget | None = None,
    ) -> None:
        """Take the settings that keep the order, who works on the palette, and the window's actions by their ids."""
        super().__init__(tr("Lots"), parent)
        self.document, self._units = document, units
        self.desk = desk
        self.bar = LotsBar(settings)
        self.flow = LotsFlow()
        self.table = LotsTable()
        self.blank = LotsBlank(actions)
        self.rail = LettersRail(document)
        self.side = LotsSide(document, actions, self._pictures_folder)
        self._lines: dict[str, LotLine] = {}
        self._shown: tuple[object, ...] = ()
        self._awaited = ""
        """A lot that is to be picked as soon as it is here."""
        self._forms = QStackedWidget()
        for form in (self.flow, self.table, self.blank):
            self._forms.addWidget(form)
        self._lay_out()
        self._connect()
        self.refresh()

    @property
    def picked(self) -> tuple[str, ...]:
        """The ids of the lots that are picked, the reference first."""
        return self.flow.picked

    @property
    def _form(self) -> LotsFlow | LotsTable:
        return self.table if self.bar.table.isChecked() else self.flow

    def refresh(self) -> None:
        """Follow the design and its palette."""
        document = self.document
        design, palette = document.design, document.palette
        self.rail.refresh()
        now = (design.palette, palette, design.colourway, design.viewing, self._units.units)
        if now != self._shown or not self._lines:
            self._shown = now
            self._lines = {line.lot.id: line for line in lot_lines(document.appraisal, palette, self._units.units)}
            self._show_lines()
        if self._awaited in self._lines:
            lot_id, self._awaited = self._awaited, ""
            self.pick(lot_id)
        self._tell_count()

    def pick(self, *lot_ids: str) -> None:
        """Pick one lot, or a reference and a sample."""
        known = tuple(lot_id for lot_id in lot_ids if lot_id in self._lines)
        self.flow.pick(known)
        self.table.pick(known)
        self._follow_picked()

    def use_as_letter(self) -> None:
        """Ask which letter the lot is to be."""
        if self.picked:
            menu = letter_menu(self.document.appraisal, lambda letter: self.assign(letter, self.picked[-1]), self)
            menu.popup(self.side.mapToGlobal(self.side.rect().topLeft()))

    def assign(self, letter: str, lot_id: str) -> None:
        """Make a letter of the colourway in use this lot, as one step of the design's history."""
        design = self.document.design
        if lot_id in self._lines and design.colourway.lot_of(letter) != lot_id:
            try:
                self.document.do(assign(design, letter, lot_id, source=self.document.palette))
            except ValueError as refusal:
                self.refused.emit(str(refusal))

    def plan(self, bath_id: str, load: int) -> None:
        """Add a lot that is to come from a load of a bath to the palette, as one step, and pick it."""
        from chartmaker.app.lots_planning import with_planned

        palette = self.desk.open_palette
        at_hand = lots_at_hand(self.document.design, palette.palette)
        try:
            planned = with_planned(palette.palette, at_hand, bath_id, load)
        except ValueError as refusal:
            self.refused.emit(str(refusal))
            return
        self._awaited = planned.lots[-1].id
        palette.apply(planned, f"Plan lot {planned.lots[-1].name}")

    def lead_to(self, place: Place) -> None:
        """Pick the lot of the first letter that a finding is about."""
        lots = [self.document.design.colourway.lot_of(letter) for letter in place.letters]
        found = next((lot_id for lot_id in lots if lot_id in self._lines), None)
        if found:
            self.bar.search.clear()
            self.pick(found)
        self._form.setFocus()

    def _show_lines(self) -> None:
        """List what is looked for, in the order that is wished."""
        searched = self.bar.search.text().strip()
        order = self.bar.wanted_order
        lines = in_order(matching(self._lines.values(), searched), order)
        self.flow.show_lines(lines, is_grouped=order == "dyestuff")
        self.table.show_lines(lines, self._units.units)
        self.blank.show_reason(searched if self._lines else "")
        self._forms.setCurrentWidget(self._form if lines else self.blank)
        gone = tuple(lot_id for lot_id in self.picked if lot_id in self._lines)
        if gone != self.picked:
            self.pick(*gone)
        elif lines and not self.picked:
            self.pick(lines[0].lot.id)
        else:
            self._follow_picked()

    def _tell_count(self) -> None:
        viewing = self.document.design.viewing
        text = tr("{0} lots under CIE {1} with the {2}° observer. Ctrl or Shift picks a second to compare.")
        self.note.setText(text.format(len(self._lines), viewing.illuminant, viewing.observer))
        self.note.setVisible(bool(self._lines))

    def _take_picked(self, picked: tuple[str, ...], other: LotsFlow | LotsTable) -> None:
        """Let the other form follow the one that was worked on."""
        other.pick(picked)
        self._follow_picked()

    def _follow_picked(self) -> None:
        lines = [self._lines[lot_id] for lot_id in self.picked if lot_id in self._lines]
        self.side.show_lines(lines, tuple(self._lines.values()))
        self.chosen.emit(self.picked[-1] if self.picked else "")

    def _pictures_folder(self) -> Path | None:
        path = self.desk.open_palette.path or self.document.path
        return path.parent if path else None

    def showEvent(self, event: QShowEvent) -> None:
        """Give the lots the keys when the page is turned to."""
        super().showEvent(event)
        if not self.isAncestorOf(self.focusWidget() or self.window().focusWidget() or self):
            self._form.setFocus()

    def _swap(self) -> None:
        self.pick(*reversed(self.picked))

    def _show_letter(self, letter: str) -> None:
        lot_id = self.document.design.colourway.lot_of(letter)
        if lot_id:
            self.pick(lot_id)

    def _lay_out(self) -> None:
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 8, 0)
        column.setSpacing(6)
        column.addWidget(self.bar)
        column.addWidget(self._forms, 1)
        column.addWidget(self.rail)
        split = QSplitter(Qt.Orientation.Horizontal)
        split.setChildrenCollapsible(False)
        split.addWidget(left)
        split.addWidget(self.side)
        split.setStretchFactor(0, 1)
        split.setSizes([700, 380])
        self.content.addWidget(split, 1)

    def _connect(self) -> None:
        self.bar.changed.connect(self._show_lines)
        self.flow.picked_changed.connect(lambda picked: self._take_picked(picked, self.table))
        self.table.picked_changed.connect(lambda picked: self._take_picked(picked, self.flow))
        self.rail.dropped.connect(self.assign)
        self.rail.pressed.connect(self._show_letter)
        self.side.swap_asked.connect(self._swap)
        self.side.use_asked.connect(self.use_as_letter)
        self.side.pick_asked.connect(self.pick)
        self.side.plan_asked.connect(self.plan)
        self.document.appraised.connect(self.refresh)
        self._units.changed.connect(self.refresh)
