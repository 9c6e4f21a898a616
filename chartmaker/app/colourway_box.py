"""Chooses the colourway in use."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QComboBox, QWidget

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign


class ColourwayBox(QComboBox):
    """Lists the colourways by name, whichever is in use chosen; choosing another is a step that can be undone."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document = document
        self.setAccessibleName(tr("Colourway in use"))
        self.setMinimumContentsLength(16)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.activated.connect(self._choose)
        document.appraised.connect(self.refresh)
        if document.is_here:
            self.refresh()

    def refresh(self) -> None:
        """Follow the design."""
        colourways = self.document.design.colourways
        order = sorted(range(len(colourways)), key=lambda index: (colourways[index].name, index))
        self.blockSignals(True)
        self.clear()
        for index in order:
            self.addItem(colourways[index].name, index)
        if not colourways:
            self.addItem(tr("none yet"), None)
        self.setCurrentIndex(max(0, self.findData(0)))
        self.setEnabled(len(colourways) > 1)
        self.setToolTip(self.currentText())
        self.blockSignals(False)

    def _choose(self, line: int) -> None:
        colourways = self.document.design.colourways
        index = self.itemData(line)
        if index:
            from chartmaker.model.edits import ReplaceSetting

            chosen = colourways[index]
            after = (chosen, *colourways[:index], *colourways[index + 1 :])
            self.document.do(ReplaceSetting("colourways", colourways, after, f"Use colourway {chosen.name}"))
