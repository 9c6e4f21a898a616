"""A colour is typed for one lot; what it is understood as is shown while it is typed."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.shades import UNKNOWN, colour_of
from chartmaker.app.told import told
from chartmaker.app.words import number, tr
from chartmaker.files.measurements.typed import LONGEST_LINE, typed_reading
from chartmaker.files.problems import UserProblem
from chartmaker.model.reading import LabReading, Reading, ScreenReading, XyzReading
from chartmaker.shade.lots import shade_of

if TYPE_CHECKING:
    from chartmaker.model.palette import Lot
    from chartmaker.model.settings import Viewing
    from chartmaker.shade.lot_shade import LotShade

_PATCH = 48


class TypedDialog(QDialog):
    """One line to type in; `reading` is what it says, None while it says nothing."""

    def __init__(self, lot: Lot, viewing: Viewing, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Type a reading"))
        self._lot = lot
        self._viewing = viewing
        self.reading: Reading | None = None
        self.line = QLineEdit()
        self.line.setMaxLength(LONGEST_LINE)
        self.line.setPlaceholderText(tr("38.2 41 27.5, LCh 50 30 270 or #8a3b2f"))
        label = _words(tr("&Reading of {0}:").format(lot.name.replace("&", "&&")), wraps=True)
        label.setBuddy(self.line)
        self.patch = QLabel()
        self.patch.setFixedSize(_PATCH, _PATCH)
        self.readout = _words("", wraps=True)
        self.readout.setMinimumSize(360, 3 * self.fontMetrics().lineSpacing())
        self.readout.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        self.add = self.buttons.addButton(tr("&Add it"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        shown = QHBoxLayout()
        shown.addWidget(self.patch, 0, Qt.AlignmentFlag.AlignTop)
        shown.addWidget(self.readout, 1)
        layout = QVBoxLayout(self)
        layout.addWidget(label)
        layout.addWidget(self.line)
        layout.addLayout(shown)
        layout.addWidget(self.buttons)
        self.line.textChanged.connect(lambda _text: self._read())
        self._read()

    def _read(self) -> None:
        self.reading, words, colour = None, "", UNKNOWN
        if self.line.text().strip():
            try:
                self.reading = typed_reading(self.line.text())
            except UserProblem as problem:
                words = told(str(problem)[:1].upper() + str(problem)[1:]) + "."
            else:
                words, colour = self._words(self.reading), colour_of(self._shade(self.reading))
        else:
            words = tr("L*, a* and b* under CIE D65 with the 10° observer; (D50/2) after them tells another light.")
        self.readout.setText(words)
        self.patch.setPixmap(patch_icon(colour, width=_PATCH, height=_PATCH).pixmap(_PATCH, _PATCH))
        self.add.setEnabled(self.reading is not None)

    def _words(self, reading: Reading) -> str:
        match reading:
            case LabReading():
                kind, values, viewing = "L* a* b*", reading.lab, reading.viewing
            case XyzReading():
                kind, values, viewing = "X Y Z", reading.xyz, reading.viewing
            case _:
                hexadecimal = reading.hex if isinstance(reading, ScreenReading) else ""
                return tr("{0}, a colour of a screen: it counts as approximate.").format(hexadecimal)
        numbers = " ".join(number(value, 1) for value in values)
        text = tr("{0} {1} under CIE {2} with the {3}° observer.")
        return text.format(kind, numbers, viewing.illuminant, viewing.observer)

    def _shade(self, reading: Reading) -> LotShade | None:
        return shade_of(replace(self._lot, readings=(reading,), planned=None), self._viewing)


def _words(text: str, *, wraps: bool = False) -> QLabel:
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(wraps)
    return label
