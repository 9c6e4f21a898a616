"""What comes of the answers, while they are given: the hat from the side, its bands, and what is wrong with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from chartmaker.app.blank import blank_design
from chartmaker.app.findings_strip import sentence
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.page_frame import words_label
from chartmaker.app.side_view import SideView
from chartmaker.app.told import told
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QResizeEvent

    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.appraisal import Appraisal
    from chartmaker.model.design import Design
    from chartmaker.model.palette import Palette

OF_THE_HAT = ("stitch-counts", "circumference", "crown-pucker", "float-length", "depth", "fold")
"""Findings that the answers can mend; lots and yarn come later."""
FEWEST_LINES = 5
"""Of text below the drawing, that there is always room for; more can be scrolled to."""
NARROWEST = 300


class StartPreview(QWidget):
    """Holds a document of its own, so that the window's is left alone."""

    def __init__(self, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document = OpenDesign(blank_design())
        self.document.setParent(self)
        self._palette: Palette | None = None
        self._units = units
        self.side = SideView(self.document, units)
        self.setMinimumWidth(NARROWEST)
        self.words, self.beware = _text(), _text()
        self._words = _ScrolledText(self.words)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(self.side, 1)
        layout.addWidget(self._words)
        layout.addWidget(self.beware)

    def show_design(self, design: Design | None, palette: Palette | None) -> None:
        """Show the hat; where there is none, the last one stays, greyed, since the hand is still typing."""
        self.side.setEnabled(design is not None)
        if design is None:
            self.words.setText(tr("No hat comes of these answers: what is wrong stands beside them."))
            self.beware.hide()
            return
        if design != self.document.design or palette is not self._palette:
            self._palette = palette
            self.document.replace(design, path=None, palette=palette)
        appraisal = self.document.appraisal
        self.words.setText("\n".join(_lines(appraisal)))
        self._words.updateGeometry()
        troubles = [
            sentence(told(found.message, self._units.units))
            for found in appraisal.findings
            if _is_told(found.check, found.severity)
        ]
        self.beware.setText("\n".join(f"! {trouble}" for trouble in troubles[:3]))
        self.beware.setVisible(bool(troubles))


class _ScrolledText(QScrollArea):
    """As high as its text where there is room."""

    def __init__(self, text: QLabel) -> None:
        super().__init__()
        self._text = text
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setWidget(text)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self.setAccessibleName(tr("What comes of the answers"))

    def sizeHint(self) -> QSize:
        """Ask for all of the text."""
        return QSize(NARROWEST, self._text.heightForWidth(max(NARROWEST, self.viewport().width())))

    def minimumSizeHint(self) -> QSize:
        """Need a few lines."""
        return QSize(NARROWEST, FEWEST_LINES * self.fontMetrics().lineSpacing())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Wrap anew."""
        super().resizeEvent(event)
        self.updateGeometry()


def _is_told(check: str, severity: str) -> bool:
    return severity != "note" and check in OF_THE_HAT


def _lines(appraisal: Appraisal) -> Iterator[str]:
    """Tell the hat in a line, then its bands as they stand, the top one first, and the lots that its letters are."""
    design = appraisal.design
    yield tr("{0} stitches cast on, {1} rounds:").format(appraisal.cast_on_stitches, len(appraisal.rounds))
    for band in reversed(design.bands):
        rounds, first, last = len(band.rounds), band.stitches(0), band.stitches(len(band.rounds) - 1)
        if first != last:
            yield tr("{0}: {1} rounds, {2} to {3} stitches").format(band.name, rounds, first, last)
        elif rounds == 1:
            yield tr("{0}: 1 round of {1} stitches").format(band.name, first)
        else:
            yield tr("{0}: {1} rounds of {2} stitches").format(band.name, rounds, first)
    for letter, lot_id in design.colourway.lots:
        lot = design.palette.lot(lot_id)
        yield f"{letter}: {lot.name if lot else lot_id}"


def _text() -> QLabel:
    label = words_label()
    label.setAlignment(Qt.AlignmentFlag.AlignTop)
    return label
