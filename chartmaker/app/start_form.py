"""Questions in rows: a name, a control, where its answer comes from, and what cannot be."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from chartmaker.app.told import told

LABEL_WIDTH = 92
"""Of the names at the least."""
BESIDE_WIDTH = 158
"""Of controls that their sources stand beside."""
NARROWEST, SMALLER = 120, 0.88


@dataclass(frozen=True, slots=True)
class Row:
    """One question."""

    label: QLabel
    control: QWidget
    spoken: QWidget
    """The control, or what takes the keys in it: what is told here is told to a screen reader there."""
    source: QLabel
    """Quiet, below the control or beside it; hidden while it says nothing."""
    trouble: QLabel
    """What is wrong with the answer; hidden where nothing is."""

    def tell_source(self, text: str) -> None:
        """Say where the answer comes from, or what follows from it."""
        self.source.setText(text)
        self.source.setVisible(bool(text))
        self._describe()

    def tell_trouble(self, sentence: str) -> None:
        """Say in a sentence what cannot be; nothing where all is well."""
        text = told(sentence)
        self.trouble.setText(f"! {text[:1].upper()}{text[1:]}" if text else "")
        self.trouble.setVisible(bool(text))
        self._describe()

    def _describe(self) -> None:
        self.spoken.setAccessibleDescription(" ".join(filter(None, (self.trouble.text(), self.source.text()))))

    def show(self, *, is_shown: bool) -> None:
        """Show or hide the whole row."""
        for widget in (self.label, self.control):
            widget.setVisible(is_shown)
        self.source.setVisible(is_shown and bool(self.source.text()))
        self.trouble.setVisible(is_shown and bool(self.trouble.text()))


class StartForm(QWidget):
    """Rows below one another, by the name of the answer that each gives."""

    def __init__(self, *, is_beside: bool = False, parent: QWidget | None = None) -> None:
        """Let sources stand beside the controls, which are as narrow as each other then, or below them."""
        super().__init__(parent)
        self._is_beside = is_beside
        self.rows: dict[str, Row] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(8)
        self._grid.setColumnStretch(1, 1)

    @property
    def label_width(self) -> int:
        """What the longest name takes."""
        return max(LABEL_WIDTH, *(row.label.sizeHint().width() for row in self.rows.values()))

    def take_label_width(self, width: int) -> None:
        """Let names take so much, so that the controls of two forms stand in line."""
        self._grid.setColumnMinimumWidth(0, width)

    def add(self, name: str, label: str, control: QWidget, *, buddy: QWidget | None = None) -> Row:
        """Add a row; `buddy` takes the keys in place of a control that is made of several."""
        spoken = buddy or control
        caption = QLabel(label)
        caption.setBuddy(spoken)
        caption.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
        caption.setContentsMargins(0, 5, 0, 0)
        spoken.setAccessibleName(spoken.accessibleName() or label.replace("&", ""))
        row = self.rows[name] = Row(caption, control, spoken, _quiet_label(), _plain_label())
        line = self._grid.rowCount()
        self._grid.addWidget(caption, line, 0)
        self._grid.addLayout(self._column(row), line, 1)
        return row

    def _column(self, row: Row) -> QVBoxLayout:
        answer = QHBoxLayout() if self._is_beside else QVBoxLayout()
        answer.setSpacing(10 if self._is_beside else 2)
        if self._is_beside:
            row.control.setFixedWidth(BESIDE_WIDTH)
            row.source.setContentsMargins(0, 2, 0, 0)
            answer.addWidget(row.control, 0, Qt.AlignmentFlag.AlignTop)
            answer.addWidget(row.source, 1, Qt.AlignmentFlag.AlignTop)
        else:
            answer.addWidget(row.control)
            answer.addWidget(row.source)
        column = QVBoxLayout()
        column.setSpacing(2)
        column.addLayout(answer)
        column.addWidget(row.trouble)
        return column


def _plain_label() -> QLabel:
    label = QLabel()
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    label.setMinimumWidth(NARROWEST)  # a long word is cut off rather than all the questions made wider
    label.hide()
    return label


def _quiet_label() -> QLabel:
    label = _plain_label()
    font = label.font()
    font.setPointSizeF(font.pointSizeF() * SMALLER)
    label.setFont(font)
    label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
    return label
