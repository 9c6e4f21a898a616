"""Lines of a card for the pot: a name, what there is of it, and beneath it in a few words what to mind there."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

SMALLER = 0.9
WIDEST = 620
"""Pixels of a list that has the pane for itself."""


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a list."""

    name: str
    value: str = ""
    more: tuple[str, ...] = ()
    """Quieter sentences beneath it."""
    cautions: tuple[str, ...] = ()
    """What to mind, where the hand meets it."""


class Lines(QWidget):
    """Names to the left, what there is of them to the right, the rest across beneath each."""

    def __init__(self, title: str, lines: Iterable[Line], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(1)
        grid.setColumnStretch(0, 1)
        row = 0
        if title:
            grid.addWidget(heading(title), row, 0, 1, 2)
            row = 1
        for line in lines:
            if line.name:
                name = plain_label(line.name)
                name.setContentsMargins(0, 4, 0, 0)
                grid.addWidget(name, row, 0, 1, 1 if line.value else 2)
            if line.value:
                value = plain_label(line.value, wraps=False)
                value.setContentsMargins(0, 4, 0, 0)
                value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
                grid.addWidget(value, row, 1)
            row += 1
            for text in line.more:
                grid.addWidget(quiet(text), row, 0, 1, 2)
                row += 1
            for text in line.cautions:
                grid.addWidget(caution_label(text), row, 0, 1, 2)
                row += 1


def heading(text: str) -> QLabel:
    """Give the bold heading of a list."""
    label = plain_label(text)
    font = label.font()
    font.setBold(True)
    label.setFont(font)
    label.setContentsMargins(0, 4, 0, 2)
    return label


def quiet(text: str) -> QLabel:
    """Give a sentence that explains, indented and smaller; not paler, since it is read through steam."""
    label = plain_label(text)
    font = label.font()
    font.setPointSizeF(font.pointSizeF() * SMALLER)
    label.setFont(font)
    label.setContentsMargins(14, 0, 0, 0)
    return label


def caution_label(text: str) -> QLabel:
    """Give what to mind, marked by more than a colour."""
    label = plain_label(f"!  {text}")
    font = label.font()
    font.setBold(True)
    label.setFont(font)
    label.setContentsMargins(14, 0, 0, 0)
    return label


def plain_label(text: str, *, wraps: bool = True) -> QLabel:
    """Give a label in which nothing is markup, and which can be selected and copied."""
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(wraps)
    label.setAlignment(Qt.AlignmentFlag.AlignTop)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label


def narrow(pane: QWidget) -> QWidget:
    """Keep amounts near their names."""
    pane.setMaximumWidth(WIDEST)
    return pane


def column_of(parts: Sequence[QWidget], *, spacing: int = 10) -> QWidget:
    """Give widgets one below the other."""
    inside = QWidget()
    layout = QVBoxLayout(inside)
    layout.setContentsMargins(0, 0, 8, 0)
    layout.setSpacing(spacing)
    for part in parts:
        layout.addWidget(part)
    layout.addStretch(1)
    return inside
