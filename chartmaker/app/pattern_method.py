"""How a picture's light becomes letters: two by a level of value, or those of the design by their shades."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QRadioButton,
    QSizePolicy,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.letter_menu import letter_words, letters_known, letters_to_offer, patch_icon
from chartmaker.app.pattern_wish import Look
from chartmaker.app.shades import colour_of, known_shade
from chartmaker.app.words import number, plain_tip, tr

if TYPE_CHECKING:
    from chartmaker.appraisal import Appraisal

LETTER = Qt.ItemDataRole.UserRole


class PatternMethod(QWidget):
    """Holds the look that is wished for; words have only its two letters and which of them is figure."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._appraisal: Appraisal | None = None
        self.by_value = QRadioButton(tr("Two letters, by &value"))
        self.by_shade = QRadioButton(tr("Letters of the &design, by shade"))
        methods = QButtonGroup(self)
        for button in (self.by_value, self.by_shade):
            methods.addButton(button)
        self.by_value.setChecked(True)
        self.ground = _letter_box(tr("Letter of the ground"))
        self.figure = _letter_box(tr("Letter of the figure"))
        self.level = QSlider(Qt.Orientation.Horizontal)
        self.level.setRange(0, 100)
        self.level.setValue(50)
        self.level.setPageStep(5)
        self.level.setAccessibleName(tr("Level of value that divides figure from ground, L*"))
        self.level.setToolTip(tr("What is darker than this value, L*, is figure"))
        self.level_shown = QLabel("50")
        self.level_shown.setMinimumWidth(self.level_shown.fontMetrics().horizontalAdvance("100"))
        self.finds = QCheckBox(tr("find the &level that divides best"))
        self.finds.setToolTip(tr("Otsu's method: the level with the largest variance between the two sides"))
        self.finds.setChecked(True)
        self.inverts = QCheckBox(tr("&Invert: light is figure"))
        self.taking_part = QListWidget()
        self.taking_part.setAccessibleName(tr("Letters that take part"))
        self.taking_part.setToolTip(tr("Letters whose shade is known; each round takes the two that suit it best"))
        self.taking_part.setIconSize(QSize(22, 16))
        self.taking_part.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.taking_part.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.dithers = QCheckBox(tr("Dit&her: scatter the stitches"))
        self.dithers.setToolTip(
            tr("For shades between: diffusion after Floyd and Steinberg: truer from afar, with more and shorter floats")
        )
        self._for_pictures: list[QWidget] = []
        self._lay_out()
        self._connect()
        self._show_state()

    # --- what it holds

    @property
    def letters(self) -> str:
        """Ground and figure."""
        return f"{self.ground.currentData() or 'A'}{self.figure.currentData() or 'B'}"

    def look(self) -> Look:
        """Give the look that is wished for."""
        return Look(
            method="shade" if self.by_shade.isChecked() else "value",
            letters=self.letters,
            level=None if self.finds.isChecked() else float(self.level.value()),
            inverts=self.inverts.isChecked(),
            dithers=self.dithers.isChecked(),
            shades=tuple(self._shades()),
        )

    def take_appraisal(self, appraisal: Appraisal, letters: str) -> None:
        """Offer the letters of a design; `letters` are ground and figure of the round at its cursor."""
        self._appraisal = appraisal
        offered = letters_to_offer(appraisal)
        if len(offered) < 2:
            offered = "".join(dict.fromkeys(offered + "AB"))
        for box, part in ((self.ground, 0), (self.figure, 1)):
            with QSignalBlocker(box):
                _fill(box, offered, appraisal)
                box.setCurrentIndex(box.findData(letters[part]) if part < len(letters) else -1)
        if self.figure.currentIndex() < 0:
            other = next(letter for letter in offered if letter != self.ground.currentData())
            with QSignalBlocker(self.figure):
                self.figure.setCurrentIndex(self.figure.findData(other))
        self._list_letters(appraisal)

    def show_level(self, level: float | None) -> None:
        """Show the level that was found."""
        if level is not None and self.finds.isChecked():
            with QSignalBlocker(self.level):
                self.level.setValue(round(level))
            self.level_shown.setText(number(level))

    def show_for(self, *, pictures: bool) -> None:
        """Show what matters for pictures, or for words."""
        for part in self._for_pictures:
            part.setVisible(pictures)
        self.inverts.setText(tr("&Invert: light is figure") if pictures else tr("&Invert: the words are ground"))
        self._show_state(is_for_words=not pictures)

    def _shades(self) -> list[tuple[str, tuple[float, float, float]]]:
        found = []
        for row in range(self.taking_part.count()):
            item = self.taking_part.item(row)
            letter = item.data(LETTER)
            shade = known_shade(self._appraisal, letter) if self._appraisal and letter else None
            if shade and item.checkState() == Qt.CheckState.Checked:
                found.append((str(letter), shade.lab))
        return found

    def _list_letters(self, appraisal: Appraisal) -> None:
        """List the letters whose shade is known; those that were left out before stay so."""
        left_out = {
            self.taking_part.item(row).data(LETTER)
            for row in range(self.taking_part.count())
            if self.taking_part.item(row).data(LETTER)
            and self.taking_part.item(row).checkState() != Qt.CheckState.Checked
        }
        with QSignalBlocker(self.taking_part):
            self.taking_part.clear()
            for letter in letters_known(appraisal):
                shade = known_shade(appraisal, letter)
                if shade is not None:
                    item = QListWidgetItem(patch_icon(colour_of(shade), letter), letter_words(appraisal, letter))
                    item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
                    item.setData(LETTER, letter)
                    item.setToolTip(plain_tip(item.text()))
                    item.setCheckState(Qt.CheckState.Unchecked if letter in left_out else Qt.CheckState.Checked)
                    self.taking_part.addItem(item)
            if not self.taking_part.count():
                self.taking_part.addItem(tr("No letter has a shade yet"))
                self.taking_part.item(0).setFlags(Qt.ItemFlag.NoItemFlags)
            self.taking_part.setCurrentRow(0)

    # --- upkeep

    def _connect(self) -> None:
        self.level.valueChanged.connect(self._take_level)
        self.finds.toggled.connect(lambda _on: self._tell())
        self.by_value.toggled.connect(lambda _on: self._tell())
        for box in (self.inverts, self.dithers):
            box.toggled.connect(lambda _on: self.changed.emit())
        for combo in (self.ground, self.figure):
            combo.currentIndexChanged.connect(lambda _index: self.changed.emit())
        self.taking_part.itemChanged.connect(lambda _item: self.changed.emit())

    def _take_level(self, level: int) -> None:
        self.level_shown.setText(number(level))
        with QSignalBlocker(self.finds):
            self.finds.setChecked(False)
        self.changed.emit()

    def _tell(self) -> None:
        self._show_state()
        self.changed.emit()

    def _show_state(self, *, is_for_words: bool = False) -> None:
        by_value = self.by_value.isChecked()
        for control in (self.ground, self.figure, self.inverts):
            control.setEnabled(by_value or is_for_words)
        self.level.setEnabled(by_value)
        self.finds.setEnabled(by_value)
        self.taking_part.setEnabled(not by_value)

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 8)
        layout.setSpacing(5)
        layout.addWidget(self.by_value)
        letters = QGridLayout()
        letters.setContentsMargins(0, 0, 0, 0)
        letters.setVerticalSpacing(4)
        for row, (word, box) in enumerate(((tr("&Ground"), self.ground), (tr("Fig&ure"), self.figure))):
            label = QLabel(word)
            label.setBuddy(box)
            letters.addWidget(label, row, 0)
            letters.addWidget(box, row, 1)
        letters.setColumnStretch(1, 1)
        layout.addLayout(letters)
        level = QWidget()
        line = QHBoxLayout(level)
        line.setContentsMargins(0, 0, 0, 0)
        caption = QLabel(tr("Level, L*"))
        caption.setBuddy(self.level)
        for each in (caption, self.level, self.level_shown):
            line.addWidget(each)
        for part in (level, self.finds, self.inverts):
            layout.addWidget(part)
        layout.addSpacing(6)
        layout.addWidget(self.by_shade)
        layout.addWidget(self.taking_part, 1)
        layout.addWidget(self.dithers)
        layout.addStretch(0)
        self._for_pictures = [self.by_value, level, self.finds, self.by_shade, self.taking_part, self.dithers]


def _letter_box(name: str) -> QComboBox:
    box = QComboBox()
    box.setAccessibleName(name)
    box.setToolTip(name)
    box.setIconSize(QSize(22, 16))
    box.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
    return box


def _fill(box: QComboBox, letters: str, appraisal: Appraisal) -> None:
    box.clear()
    for letter in letters:
        shade = known_shade(appraisal, letter)
        box.addItem(patch_icon(colour_of(shade), letter), letter_words(appraisal, letter), letter)
