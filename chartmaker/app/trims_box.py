"""What is sewn on the hat: a line for each pompom and tassel, and buttons that add one."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QHBoxLayout, QPushButton, QToolButton, QVBoxLayout, QWidget

from chartmaker.app.hat_fields import LETTERS
from chartmaker.app.number_boxes import CalmWheel, MeasureBox
from chartmaker.app.words import tr
from chartmaker.model.edits import ReplaceSetting
from chartmaker.model.hat import TRIM_KINDS, Trim

if TYPE_CHECKING:
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.design import Design
    from chartmaker.model.hat import Hat

USUAL_CM = {"pompom": 6.0, "tassel": 10.0}
"""Sizes of a new one: common practice, no source."""


class TrimsBox(QWidget):
    """Follows the hat; each change is one edit."""

    wished = Signal(object)
    """An edit of the design."""

    def __init__(self, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._units = units
        self._calm = CalmWheel(self)
        self._hat: Hat | None = None
        self._design: Design | None = None
        self.lines: list[_Line] = []
        self._grid = QGridLayout()
        self._grid.setColumnStretch(2, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self._grid)
        buttons = QHBoxLayout()
        self.adders = {kind: _adder(text) for kind, text in zip(TRIM_KINDS, _adding(), strict=True)}
        for kind, button in self.adders.items():
            button.clicked.connect(lambda _checked=False, kind=kind: self._add(kind))
            buttons.addWidget(button)
        layout.addLayout(buttons)
        units.changed.connect(self._show_units)

    def show_design(self, design: Design) -> None:
        """Show what is sewn on."""
        self._design, hat = design, design.hat
        if self._hat is not None and hat.trims == self._hat.trims:
            return
        self._hat = hat
        while len(self.lines) > len(hat.trims):
            self.lines.pop().leave()
        while len(self.lines) < len(hat.trims):
            self._add_line()
        for line, trim in zip(self.lines, hat.trims, strict=True):
            line.show_trim(trim)
        self._show_units()

    def _add_line(self) -> None:
        number = len(self.lines)
        line = _Line(number)
        line.changed.connect(lambda trim: self._put(number, (trim,), "Change what is sewn on"))
        line.removed.connect(lambda: self._put(number, (), "Take off what is sewn on"))
        for column, widget in enumerate(line.widgets):
            widget.installEventFilter(self._calm)
            self._grid.addWidget(widget, number, column)
        self.lines.append(line)

    def _add(self, kind: str) -> None:
        if self._design is not None:
            letter = self._design.hat.finish.letter
            new = Trim(kind=kind, letter=letter, size_cm=USUAL_CM[kind])
            self._put(len(self.lines), (new,), f"Sew on a {kind}")

    def _put(self, number: int, trims: tuple[Trim, ...], text: str) -> None:
        if self._design is not None:
            hat = self._design.hat
            after = replace(hat, trims=(*hat.trims[:number], *trims, *hat.trims[number + 1 :]))
            if after != hat:
                self.wished.emit(ReplaceSetting("hat", hat, after, text))

    def _show_units(self) -> None:
        for line in self.lines:
            line.size.show_in(self._units.units.length)


class _Line(QObject):
    """The controls of one trim; they stand in the grid of the box."""

    changed = Signal(object)
    removed = Signal()

    def __init__(self, number: int) -> None:
        super().__init__()
        self.kind, self.letter = QComboBox(), QComboBox()
        self.kind.addItems([tr(kind) for kind in TRIM_KINDS])
        self.letter.addItems(LETTERS)
        self.size = MeasureBox(lowest=1, highest=40, step=0.5)
        self.size.setToolTip(tr("Diameter of a pompom, length of a tassel"))
        self.remove = QToolButton()
        self.remove.setText("×")
        self.remove.setToolTip(tr("Take it off"))
        for widget, name in zip(
            self.widgets,
            (tr("kind of trim {0}"), tr("letter of trim {0}"), tr("size of trim {0}"), tr("take off trim {0}")),
            strict=True,
        ):
            widget.setAccessibleName(name.format(number + 1))
            widget.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.kind.activated.connect(self._change)
        self.letter.activated.connect(self._change)
        self.size.taken.connect(self._change)
        self.remove.clicked.connect(self.removed)

    @property
    def widgets(self) -> tuple[QWidget, ...]:
        """The controls from left to right."""
        return self.kind, self.letter, self.size, self.remove

    def show_trim(self, trim: Trim) -> None:
        """Show one."""
        self.kind.setCurrentIndex(TRIM_KINDS.index(trim.kind))
        self.letter.setCurrentIndex(LETTERS.index(trim.letter))
        self.size.show_metric(trim.size_cm)

    def leave(self) -> None:
        """Take the controls out of the grid."""
        for widget in self.widgets:
            widget.hide()
            widget.deleteLater()
        self.deleteLater()

    def _change(self) -> None:
        kind, letter = TRIM_KINDS[self.kind.currentIndex()], LETTERS[self.letter.currentIndex()]
        self.changed.emit(Trim(kind=kind, letter=letter, size_cm=self.size.number))


def _adding() -> tuple[str, str]:
    return tr("Add a pompom"), tr("Add a tassel")


def _adder(text: str) -> QPushButton:
    button = QPushButton(text)
    button.setAutoDefault(False)
    return button
