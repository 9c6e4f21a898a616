"""What another size, another colourway or a band left out would do to the yarn, and one click to do it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QPushButton, QVBoxLayout, QWidget

from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.app.yarn_letters import amount, figure

if TYPE_CHECKING:
    from PySide6.QtGui import QShowEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.knit.what_if import LetterChange, WhatIf
    from chartmaker.model.units import Units


class WhatIfPane(QWidget):
    """Nothing is computed while it is hidden."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self.units = document, units
        self._choices: tuple[WhatIf, ...] = ()
        self._is_stale = True
        self.choice = QComboBox()
        self.choice.setAccessibleName(tr("What is changed"))
        self.choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.choice.setMinimumContentsLength(18)
        self.table = ReadingTable([""] * 4, wide=0, name=tr("Yarn now and then"))
        self.sentence = QLabel()
        self.sentence.setWordWrap(True)
        self.sentence.setTextFormat(Qt.TextFormat.PlainText)
        self.do_it = QPushButton(tr("&Do it"))
        self.do_it.setToolTip(tr("Make this change to the design; it can be undone"))
        layout = QVBoxLayout(self)
        label = QLabel(tr("&If the hat had"))
        label.setBuddy(self.choice)
        for part in (label, self.choice, self.sentence):
            layout.addWidget(part)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.do_it, 0, Qt.AlignmentFlag.AlignLeft)
        self.choice.currentIndexChanged.connect(self._compare)
        self.do_it.clicked.connect(self._do)
        document.appraised.connect(self._turn_stale)
        units.changed.connect(self._turn_stale)

    def showEvent(self, event: QShowEvent) -> None:
        """Come up to date."""
        super().showEvent(event)
        if self._is_stale:
            self._refresh()

    def _turn_stale(self) -> None:
        self._is_stale = True
        if self.isVisible():
            self._refresh()

    def _refresh(self) -> None:
        """List the changes of the design as it stands; the same one stays chosen where it is still there."""
        from chartmaker.knit.what_if import what_ifs

        self._is_stale = False
        at = self.choice.currentIndex()
        chosen = self._choices[at].text if 0 <= at < len(self._choices) else ""
        self._choices = what_ifs(self.document.design)
        self.choice.blockSignals(True)
        self.choice.clear()
        self.choice.addItems([_words(one, self.units.units) for one in self._choices])
        self.choice.setCurrentIndex(next((at for at, one in enumerate(self._choices) if one.text == chosen), 0))
        self.choice.blockSignals(False)
        self._compare()

    def _compare(self) -> None:
        index = self.choice.currentIndex()
        has_one = 0 <= index < len(self._choices)
        for part in (self.choice, self.table, self.do_it):
            part.setEnabled(has_one)
        if not has_one:
            self.sentence.setText(tr("No other size, colourway or set of bands can be had from this design."))
            self.table.setRowCount(0)
            return
        from chartmaker.knit.what_if import changed_yarn

        changes = changed_yarn(self.document.design, self._choices[index].edit)
        weight = self.units.units.weight
        more = sum(change.likely_g for change in changes)
        self.sentence.setText(
            tr("It would likely take {0} more in all.").format(weight.told(more))
            if more >= 0
            else tr("It would likely take {0} less in all.").format(weight.told(-more))
        )
        heads = (tr("letter"), tr("now,"), tr("then,"), tr("short,"))
        self.table.setHorizontalHeaderLabels([heads[0], *(head + weight.unit for head in heads[1:])])
        self.table.show_rows([self._row(change) for change in changes])

    def _row(self, change: LetterChange) -> tuple[Cell, ...]:
        weight = self.units.units.weight
        likely = [amount(need.grams.likely, weight) if need else "–" for need in (change.now, change.then)]
        short = [need.short_g if need else 0.0 for need in (change.now, change.then)]
        then = f"! {amount(short[1], weight)}" if short[1] > 0 else "–"
        return (
            Cell(change.letter, is_strong=True),
            *(figure(text) for text in likely),
            figure(then, is_strong=short[1] > short[0]),
        )

    def _do(self) -> None:
        index = self.choice.currentIndex()
        if 0 <= index < len(self._choices):
            self.document.do(self._choices[index].edit)


def _words(one: WhatIf, units: Units) -> str:
    """Give a change as a line of the list."""
    text = told(one.text, units)
    if one.kind == "size":
        return text
    return tr("colourway {0}").format(text) if one.kind == "colourway" else tr("not the band {0}").format(text)
