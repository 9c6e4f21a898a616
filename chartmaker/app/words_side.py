"""The words that a pattern is made of, and their lettering."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QRadioButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.pattern_wish import WordsWish
from chartmaker.app.repeat_field import RepeatField
from chartmaker.app.words import tr
from chartmaker.model.bounds import MOST_ROUNDS

TALLEST_SCALE = 20
FIRST_ROUNDS = 11


class WordsSide(QWidget):
    """Holds the words, the face, its height, and the room that the repeat gives them."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.text = QLineEdit()
        self.text.setAccessibleName(tr("Words to knit"))
        self.text.setPlaceholderText(tr("Words to knit"))
        self.text.setClearButtonEnabled(True)
        self.stitched = QRadioButton(tr("Letters drawn &stitch by stitch"))
        self.typeset = QRadioButton(tr("A &typeface, any script"))
        faces = QButtonGroup(self)
        for button in (self.stitched, self.typeset):
            faces.addButton(button)
        self.stitched.setChecked(True)
        self.scale = QSpinBox()
        self.scale.setRange(1, TALLEST_SCALE)
        self.scale.setSuffix(tr(" × 7 rounds"))
        self.scale.setAccessibleName(tr("How many times their size the letters are worked"))
        self.rounds = QSpinBox()
        self.rounds.setRange(1, MOST_ROUNDS)
        self.rounds.setValue(FIRST_ROUNDS)
        self.rounds.setSuffix(tr(" rounds"))
        self.rounds.setAccessibleName(tr("Rounds of the words"))
        self.repeat = RepeatField()
        self.follows = QCheckBox(tr("as &wide as the words"))
        self.follows.setToolTip(tr("Otherwise ground is put beside the words, so that the repeat goes round the hat"))
        self.follows.setChecked(True)
        self._height_per_width = 1.0
        self._lay_out()
        for signal in (
            self.text.textChanged,
            self.stitched.toggled,
            self.scale.valueChanged,
            self.rounds.valueChanged,
            self.follows.toggled,
        ):
            signal.connect(self._tell)
        self.repeat.changed.connect(self._take_repeat)
        self._show_state()

    def take_band(self, stitches: int, height_per_width: float) -> None:
        """Take the round that the repeat shall divide, and the proportion of a stitch."""
        self._height_per_width = height_per_width
        self.repeat.take_round(stitches)

    def wish(self, *, letters: str, inverts: bool) -> WordsWish:
        """Give what is wished for."""
        return WordsWish(
            text=self.text.text(),
            is_stitched=self.stitched.isChecked(),
            scale=self.scale.value(),
            rounds=self.rounds.value(),
            height_per_width=self._height_per_width,
            stitches=None if self.follows.isChecked() else self.repeat.stitches,
            letters=letters,
            inverts=inverts,
        )

    def show_width(self, stitches: int) -> None:
        """Show how wide the words came out, where the repeat follows them."""
        if self.follows.isChecked():
            self.repeat.show_stitches(stitches)

    def _tell(self) -> None:
        self._show_state()
        self.changed.emit()

    def _take_repeat(self) -> None:
        """A repeat that is chosen no longer follows the words."""
        if self.follows.isChecked():
            self.follows.setChecked(False)
        else:
            self.changed.emit()

    def _show_state(self) -> None:
        self.scale.setEnabled(self.stitched.isChecked())
        self.rounds.setEnabled(self.typeset.isChecked())

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 8, 8, 8)
        layout.setSpacing(6)
        layout.addWidget(self.text)
        layout.addSpacing(6)
        faces = QGridLayout()
        faces.setVerticalSpacing(4)
        faces.setColumnMinimumWidth(0, 20)
        for row, control in enumerate((self.stitched, self.scale, self.typeset, self.rounds)):
            if isinstance(control, QRadioButton):
                faces.addWidget(control, row, 0, 1, 3)
            else:
                faces.addWidget(control, row, 1)
        faces.setColumnStretch(2, 1)
        layout.addLayout(faces)
        layout.addSpacing(6)
        size = QGridLayout()
        size.setVerticalSpacing(4)
        label = QLabel(tr("&Repeat"))
        label.setBuddy(self.repeat)
        size.addWidget(label, 0, 0)
        size.addWidget(self.repeat, 0, 1)
        size.addWidget(self.follows, 1, 1)
        size.setColumnStretch(1, 1)
        layout.addLayout(size)
        layout.addStretch(1)
