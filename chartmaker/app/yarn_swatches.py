"""The swatches that the loop length rests on: each in the way it was told, their mean, and how sure it is."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QMenu, QPushButton, QToolButton, QVBoxLayout, QWidget

from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.app.yarn_letters import figure
from chartmaker.model.units import reason

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.gauge import Swatch

YARN = 1
"""The column that tells how a swatch was measured and knitted."""
PADDING, LEAST_HEIGHT = 26, 28
"""Room at both sides of a cell's words, and the height of a row with one line."""


class SwatchesPane(QWidget):
    """Each change is one step that can be undone."""

    refused = Signal(str)
    """What the design's rules refuse, as a sentence."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self.units = document, units
        self.table = ReadingTable([""] * 3, wide=1, name=tr("Swatches"))
        self.table.setWordWrap(True)
        self.table.horizontalHeader().sectionResized.connect(lambda *_sizes: self._fit_rows())
        self.sentence = QLabel()
        self.sentence.setWordWrap(True)
        self.sentence.setTextFormat(Qt.TextFormat.PlainText)
        self.add = QToolButton()
        self.add.setText(tr("&Add"))
        self.add.setToolTip(tr("Tell of a swatch: weighed, unravelled and measured, or by its ball"))
        self.add.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.add.setMenu(self._menu())
        self.change = QPushButton(tr("&Change…"))
        self.remove = QPushButton(tr("&Remove"))
        self.change.clicked.connect(self._change)
        self.remove.clicked.connect(self._remove)
        self.table.cellDoubleClicked.connect(lambda _row, _column: self._change())
        self.table.currentCellChanged.connect(lambda *_cells: self._enable())
        buttons = QHBoxLayout()
        for button in (self.add, self.change, self.remove):
            buttons.addWidget(button)
        buttons.addStretch(1)
        layout = QVBoxLayout(self)
        layout.addWidget(self.table, 1)
        layout.addLayout(buttons)
        layout.addWidget(self.sentence)
        document.appraised.connect(self.refresh)
        units.changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Follow the design."""
        design = self.document.design
        self.table.show_rows([self._row(swatch) for swatch in design.swatches])
        self._fit_rows()
        loop = self.document.appraisal.loop
        length = self.units.units.length
        told_mean = tr("A stitch takes {0}, {1} to {2}.").format(
            length.fine(loop.cm.likely), length.fine_figure(loop.cm.low), length.fine_figure(loop.cm.high)
        )
        self.table.setHorizontalHeaderLabels([tr("stitches"), tr("yarn"), tr("a stitch,") + tr(length.unit)])
        self.sentence.setText("\n".join([told_mean, told(loop.why, self.units.units), *self._troubles()]))
        self._enable()

    def _fit_rows(self) -> None:
        """Give each row the height of its words, within the padding of the table's cells, which Qt leaves out."""
        width = self.table.columnWidth(YARN) - PADDING
        for row in range(self.table.rowCount()):
            item = self.table.item(row, YARN)
            words = item.text() if item else ""
            lines = self.table.fontMetrics().boundingRect(0, 0, width, 1000, Qt.TextFlag.TextWordWrap, words)
            self.table.setRowHeight(row, max(LEAST_HEIGHT, lines.height() + 8))

    def _row(self, swatch: Swatch) -> tuple[Cell, ...]:
        from chartmaker.knit.loop import swatch_loop_cm

        try:
            loop = self.units.units.length.fine_figure(swatch_loop_cm(swatch, self.document.design))
        except ValueError:
            loop = "!"
        return (
            figure(str(swatch.stitches)),
            Cell(_with_floats(self._yarn_of(swatch), swatch)),
            figure(loop, is_strong=loop == "!"),
        )

    def _yarn_of(self, swatch: Swatch) -> str:
        units = self.units.units
        if swatch.metres is not None:
            return tr("{0} unravelled").format(units.yarn.told(swatch.metres))
        told_weight = units.weight.told(swatch.weight_g or 0.0)
        if swatch.ball_before_g is not None:
            return tr("{0}, by the ball").format(told_weight)
        return tr("{0} weighed").format(told_weight)

    def _troubles(self) -> list[str]:
        from chartmaker.knit.loop import swatch_loop_cm

        found = []
        for swatch in self.document.design.swatches:
            try:
                swatch_loop_cm(swatch, self.document.design)
            except ValueError as refusal:
                found.append(f"! {told(reason(refusal), self.units.units)}")
        return found

    def _menu(self) -> QMenu:
        menu = QMenu(self)
        for way, text in (
            ("grams", tr("&Weighed…")),
            ("metres", tr("&Unravelled and measured…")),
            ("ball", tr("By its &ball, before and after…")),
        ):
            menu.addAction(text, partial(self._ask, way, None))
        return menu

    def _enable(self) -> None:
        has_one = 0 <= self.table.currentRow() < len(self.document.design.swatches)
        for button in (self.change, self.remove):
            button.setEnabled(has_one)

    def _change(self) -> None:
        row = self.table.currentRow()
        swatches = self.document.design.swatches
        if 0 <= row < len(swatches):
            from chartmaker.app.swatch_form import way_of

            self._ask(way_of(swatches[row]), row)

    def _remove(self) -> None:
        row = self.table.currentRow()
        swatches = self.document.design.swatches
        if 0 <= row < len(swatches):
            self._set((*swatches[:row], *swatches[row + 1 :]), "Remove a swatch")

    def _ask(self, way: str, row: int | None) -> None:
        """Show the form of a swatch that is new, or is changed."""
        from chartmaker.app.swatch_form import SwatchForm

        swatches = self.document.design.swatches
        SwatchForm(
            way,
            None if row is None else swatches[row],
            self.document.appraisal,
            lambda swatch: self._take(row, swatch),
            units=self.units.units,
            parent=self.window(),
        ).open()

    def _take(self, row: int | None, swatch: Swatch) -> None:
        swatches = self.document.design.swatches
        if row is None:
            self._set((*swatches, swatch), "Add a swatch")
        else:
            self._set((*swatches[:row], swatch, *swatches[row + 1 :]), "Change a swatch")

    def _set(self, swatches: tuple[Swatch, ...], text: str) -> None:
        from chartmaker.model.edits import ReplaceSetting

        edit = ReplaceSetting("swatches", self.document.design.swatches, swatches, text)
        edit.applied_to(self.document.design)  # refuses, with a sentence, what the design's rules do
        self.document.do(edit)


def _with_floats(words: str, swatch: Swatch) -> str:
    """Say too how a swatch was knitted."""
    if not swatch.passed:
        return tr("{0}, plain").format(words)
    share = round(100 * swatch.passed / swatch.stitches)
    return tr("{0}, floats past {1} %").format(words, share)
