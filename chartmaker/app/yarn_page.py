"""The yarn page: what each letter needs, band by band and in all; the swatches it rests on; what could be changed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QSplitter, QTabWidget, QWidget

from chartmaker.app.page_frame import PageFrame, titled
from chartmaker.app.words import number, tr
from chartmaker.app.yarn_bands import BandsTable
from chartmaker.app.yarn_letters import LettersTable
from chartmaker.app.yarn_relief import ReliefPane
from chartmaker.app.yarn_swatches import SwatchesPane
from chartmaker.app.yarn_what_if import WhatIfPane

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.checks.finding import Place


class YarnPage(PageFrame):
    """Letters above, the bands of the chosen one below them, and beside both what the figures rest on."""

    refused = Signal(str)
    """What cannot be done, as a sentence."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(tr("Yarn"), parent)
        self.document, self._units = document, units
        self.table = LettersTable(document, units)
        self.bands = BandsTable(document, units)
        self.swatches = SwatchesPane(document, units)
        self.what_if = WhatIfPane(document, units)
        self.relief = ReliefPane(document, units)
        self.swatches.refused.connect(self.refused)
        self.table.letter_chosen.connect(self.bands.show_letter)
        self.side = QTabWidget()
        self.side.setDocumentMode(True)
        self.side.setAccessibleName(tr("What the yarn rests on, and what could be changed"))
        for name, pane in (
            (tr("Swatches"), self.swatches),
            (tr("What if"), self.what_if),
            (tr("Where short"), self.relief),
        ):
            self.side.addTab(pane, name)
        self.content.addWidget(self._split(), 1)
        document.appraised.connect(self.refresh)
        units.changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Follow the appraisal."""
        loop, length = self.document.appraisal.loop, self._units.units.length
        reserve = self.document.design.allowances.reserve_percent
        self.note.setText(
            tr(
                "A stitch takes {0} of yarn ({1} to {2}); Swatches tells why. Planned is the high end and {3} % in "
                "reserve; the rest is cast-on, tails, strands carried up, finish and trims."
            ).format(
                length.fine(loop.cm.likely),
                length.fine_figure(loop.cm.low),
                length.fine_figure(loop.cm.high),
                number(reserve),
            )
        )

    def lead_to(self, place: Place) -> None:
        """Choose the row of the letter that a finding is about, and show what could relieve it."""
        if place.letters:
            self.table.choose_letter(place.letters[0])
        self.side.setCurrentWidget(self.relief)
        self.table.setFocus()

    def _split(self) -> QSplitter:
        left = QSplitter(Qt.Orientation.Vertical)
        left.addWidget(self.table)
        left.addWidget(titled(tr("Where in the hat it goes"), self.bands))
        left.setStretchFactor(0, 2)
        left.setStretchFactor(1, 3)
        both = QSplitter(Qt.Orientation.Horizontal)
        both.addWidget(left)
        both.addWidget(self.side)
        both.setStretchFactor(0, 1)
        both.setSizes([860, 310])
        for split in (left, both):
            split.setChildrenCollapsible(False)
        return both
