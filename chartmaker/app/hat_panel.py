"""The turning hat with its tints, the sides it is seen from, a tam's plate, and what is seen told in words."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QComboBox, QLabel, QToolButton, QVBoxLayout, QWidget

from chartmaker.app.flow_row import FlowRow
from chartmaker.app.grade_legend import GradeLegend
from chartmaker.app.hat_view import PLACES, HatView
from chartmaker.app.seeing import Seeing
from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.knit.tightness import tightness, tightness_words
from chartmaker.pictures.tints import TIGHTNESS

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QShowEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting

PLATE_TILT = 55.0
TINT_WORDS = {
    "shade": "as dyed",
    "value": "grey value",
    "lamplight": "by lamplight",
    "led": "by a white LED",
    "tube": "by a fluorescent tube",
    "protan": "colour vision: protan",
    "deutan": "colour vision: deutan",
    "tritan": "colour vision: tritan",
    TIGHTNESS: "how tight it sits",
}


class HatPanel(QWidget):
    """Puts them together; the hat itself is a file of its own."""

    def __init__(
        self,
        document: OpenDesign,
        units: UnitsSetting,
        *,
        seeing: Callable[[], Seeing] = Seeing,
        parent: QWidget | None = None,
    ) -> None:
        """Take what gives the severity of another colour vision, asked whenever the hat is shown anew."""
        super().__init__(parent)
        self._document, self._units, self._seeing = document, units, seeing
        self.view = HatView(document)
        self.view.failed.connect(self._say_why_not)
        self.tints = QComboBox()
        self.tints.setAccessibleName(tr("Tint of the turning hat"))
        for tint, words in TINT_WORDS.items():
            self.tints.addItem(tr(words), tint)
        self.tints.activated.connect(self._dress)
        self.plate = QCheckBox(tr("Flat on its plate"))
        self.plate.setToolTip(tr("As a tam dries, drawn over a plate"))
        self.plate.toggled.connect(self._lay)
        self.sides = {name: _side_button(text, key) for name, (text, key) in _sides().items()}
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setTextFormat(Qt.TextFormat.PlainText)
        self.legend = GradeLegend()
        self._lay_out()
        self.view.moved.connect(self._tell)
        document.appraised.connect(self.refresh)
        units.changed.connect(self._tell)
        self.refresh()

    def refresh(self) -> None:
        """Follow the design: only a tam lies on a plate."""
        is_tam = self._document.design.hat.shape == "tam"
        self.plate.setVisible(is_tam)
        if not is_tam and self.plate.isChecked():
            self.plate.setChecked(False)
        self.view.follow()
        self._tell()

    def showEvent(self, event: QShowEvent) -> None:
        """Take what was set elsewhere meanwhile."""
        super().showEvent(event)
        self._dress()

    def _dress(self) -> None:
        tint = self.tints.currentData()
        self.legend.setVisible(tint == TIGHTNESS)
        laid, severity = self.plate.isChecked(), self._seeing().severity
        self.view.wear(replace(self.view.dress, tint=tint, laid=laid, severity=severity))
        self._tell()

    def _say_why_not(self, error: Exception) -> None:
        """Say why there is no such hat; what nobody foresaw goes to the window's one dialog."""
        if isinstance(error, ValueError):
            self.words.setText(told(str(error)))
        else:
            self._document.failed.emit(error)

    def _lay(self, is_laid: bool) -> None:  # noqa: FBT001 - a signal's argument
        """Look down on a plate, of which little is seen from the side."""
        self._dress()
        if is_laid and self.view.place.tilt_degrees < PLATE_TILT:
            self.view.look_from(replace(self.view.place, tilt_degrees=PLATE_TILT))

    def _tell(self) -> None:
        """Say from where the hat is seen, and how it sits where that is what is shown."""
        words = [self.view.words()]
        if self.tints.currentData() == TIGHTNESS:
            appraisal = self._document.appraisal
            judged = tightness(appraisal.design, appraisal.fabric, appraisal.profile)
            self.legend.show_grades({one.grade for one in judged})
            words += [told(sentence) for sentence in tightness_words(judged, self._units.units.length)]
        self.words.setText("\n".join(words))

    def _lay_out(self) -> None:
        bar = FlowRow([self.tints, *self.sides.values(), self.plate])
        for name, button in self.sides.items():
            button.clicked.connect(lambda _checked=False, name=name: self.view.look_from_named(name))
        self.legend.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(bar)
        column.addWidget(self.view, 1)
        column.addWidget(self.legend)
        column.addWidget(self.words)


def _side_button(text: str, key: str) -> QToolButton:
    button = QToolButton()
    button.setText(text)
    button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    button.setToolTip(tr("{0} ({1} when the hat has the keys)").format(text, key))
    button.setAccessibleName(tr("See the hat from: {0}").format(text))
    return button


def _sides() -> dict[str, tuple[str, str]]:
    texts = (tr("Front"), tr("Side"), tr("Back"), tr("Above"))
    return dict(zip(PLACES, zip(texts, ("F", "S", "B", "A"), strict=True), strict=True))
