"""Shades a run of rounds in steps: which letters, in which order, and how they are spread, shown while it is chosen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.band_strip import CalmSpin
from chartmaker.app.chosen_rounds import rows_of_band
from chartmaker.app.letter_row import LetterRow
from chartmaker.app.shading_edits import letters_of, step_through, steps
from chartmaker.app.words import tr
from chartmaker.model.bounds import MOST_ROUNDS

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit


class StepsDialog(QDialog):
    """The chart shows what it would do; OK does it as one step, Escape leaves all as it was."""

    def __init__(self, canvas: ChartCanvas, part: int, parent: QWidget | None = None) -> None:
        """Begin with a part: 0 ground, 1 figure, 2 third."""
        super().__init__(parent)
        self._canvas = canvas
        self._document = canvas.document
        self.setWindowTitle(tr("Shade in steps"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.part = QComboBox()
        self.part.addItems([tr("ground"), tr("figure"), tr("third")][: self._parts()])
        self.part.setCurrentIndex(min(part, self._parts() - 1))
        self.chosen = QRadioButton()
        self.band = QRadioButton()
        self.letters = LetterRow(self._document.appraisal)
        self.evenly = QRadioButton(tr("evenly over the rounds"))
        self.by_count = QRadioButton(tr("in steps of so many rounds:"))
        self.each = CalmSpin(tr("Rounds for each letter"))
        self.each.setKeyboardTracking(True)
        self.each.setRange(1, MOST_ROUNDS)
        self.each.setValue(2)
        self.mirrored = QCheckBox(tr("up to the middle and back"))
        self.told = QLabel()
        self.told.setWordWrap(True)
        self.told.setTextFormat(Qt.TextFormat.PlainText)
        self.told.setAccessibleName(tr("What comes of it"))
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel,
        )
        self._name_runs()
        self._lay_out()
        self._connect()
        self._choose_letters()

    def show_beside(self) -> None:
        """Open at the window's left, so that the chart stays in sight."""
        parent = self.parentWidget()
        if parent is not None:
            self.move(parent.mapToGlobal(QPoint(8, 96)))
        self.open()
        self.letters.setFocus()
        self._show()

    @property
    def rows(self) -> range:
        """The rows that are stepped through, upwards."""
        return self._canvas.chosen if self.chosen.isChecked() else self._band_rows

    @property
    def edit(self) -> Edit | None:
        """What OK would do; None where it would change nothing."""
        letters = self.letters.chosen
        if not letters:
            return None
        each = self.each.value() if self.by_count.isChecked() else 0
        row = steps(letters, len(self.rows), each=each, mirrored=self.mirrored.isChecked())
        return step_through(
            self._document.design, self._canvas.grid, rows=self.rows, part=self.part.currentIndex(), letters=row
        )

    def done(self, result: int) -> None:
        """Show the design as it stands again, and do the edit where OK was chosen."""
        edit = self.edit if result == QDialog.DialogCode.Accepted else None
        self._canvas.show_design(self._document.design)
        self._document.do(edit)
        super().done(result)

    # --- making

    @property
    def _band_rows(self) -> range:
        return rows_of_band(self._canvas.grid, self._canvas.current[0])

    def _parts(self) -> int:
        """Give how many parts some round of the band has."""
        rows, design = self._band_rows, self._document.design
        return max(len(letters_of(design, self._canvas.grid, row)) for row in rows)

    def _name_runs(self) -> None:
        """Offer the rounds chosen where there are several, and always the band."""
        chosen, band = self._canvas.chosen, self._band_rows
        self.chosen.setText(tr("the chosen rounds, {0} to {1}").format(chosen[0] + 1, chosen[-1] + 1))
        self.band.setText(tr("the whole band, {0} to {1}").format(band[0] + 1, band[-1] + 1))
        self.chosen.setVisible(len(chosen) > 1)
        (self.chosen if len(chosen) > 1 else self.band).setChecked(True)
        self.evenly.setChecked(True)
        for pair in ((self.chosen, self.band), (self.evenly, self.by_count)):
            group = QButtonGroup(self)
            for button in pair:
                group.addButton(button)

    def _choose_letters(self) -> None:
        """Take the letters that play no other part in these rounds, or all where none is left."""
        part, others = self.part.currentIndex(), set[str]()
        for row in self.rows:
            letters = letters_of(self._document.design, self._canvas.grid, row)
            others.update(letter for place, letter in enumerate(letters) if place != part)
        self.letters.choose_all_but(others)

    def _lay_out(self) -> None:
        label = QLabel(tr("Letters, the lowest round's first"))
        label.setBuddy(self.letters)
        moves = QHBoxLayout()
        for button in (
            _button(tr("Earlier"), tr("Move the letter towards the lowest round (Alt+Up)"), self.letters.earlier),
            _button(tr("Later"), tr("Move the letter towards the highest round (Alt+Down)"), self.letters.later),
            _button(tr("Reverse"), tr("Begin with the last letter"), self.letters.reverse),
        ):
            moves.addWidget(button)
        each = QHBoxLayout()
        each.addWidget(self.by_count)
        each.addWidget(self.each)
        each.addStretch(1)
        form = QFormLayout(self)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
        form.addRow(tr("Part"), self.part)
        form.addRow(tr("Rounds"), _column(self.chosen, self.band))
        form.addRow(label)
        form.addRow(self.letters)
        form.addRow(moves)
        form.addRow(tr("Spread"), _column(self.evenly, each, self.mirrored))
        form.addRow(self.told)
        form.addRow(self.buttons)

    def _connect(self) -> None:
        self.part.currentIndexChanged.connect(self._choose_letters)
        for signal in (
            self.part.currentIndexChanged,
            self.chosen.toggled,
            self.letters.changed,
            self.by_count.toggled,
            self.each.valueChanged,
            self.mirrored.toggled,
        ):
            signal.connect(self._show)
        self.each.valueChanged.connect(lambda _value: self.by_count.setChecked(True))
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)

    def _show(self) -> None:
        """Show on the chart what OK would do, and tell what to beware of."""
        edit, design = self.edit, self._document.design
        after = edit.applied_to(design) if edit else design
        self._canvas.show_design(after)
        self.told.setText(self._words(after))
        ok = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        ok.setEnabled(bool(self.letters.chosen))

    def _words(self, after: Design) -> str:
        letters = self.letters.chosen
        if not letters:
            return tr("Tick at least one letter.")
        grid = self._canvas.grid
        lines = [after.bands[grid.rows[row].band].rounds[grid.rows[row].index] for row in self.rows]
        vanished = sum(len(line.letters_in_use) < len(set(line.cells)) for line in lines)
        if vanished:
            return tr("! In {0} of {1} rounds two parts would be one letter.").format(vanished, len(lines))
        return tr("{0} letters over {1} rounds.").format(len(letters), len(lines))


def _column(*pieces: QWidget | QHBoxLayout) -> QVBoxLayout:
    column = QVBoxLayout()
    column.setSpacing(2)
    for piece in pieces:
        if isinstance(piece, QWidget):
            column.addWidget(piece)
        else:
            column.addLayout(piece)
    return column


def _button(text: str, tip: str, do: Callable[[], None]) -> QPushButton:
    button = QPushButton(text)
    button.setToolTip(tip)
    button.setAutoDefault(False)
    button.clicked.connect(lambda _checked=False: do())
    return button
