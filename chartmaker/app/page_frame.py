"""What pages of tables and forms have alike: a heading, a line of explanation, and their content below."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QVBoxLayout, QWidget

if TYPE_CHECKING:
    from chartmaker.checks.finding import Place


class PageFrame(QWidget):
    """A page with a heading; `note` stands under it and may change."""

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.content = QVBoxLayout(self)
        self.content.setContentsMargins(20, 14, 20, 12)
        self.content.setSpacing(6)
        heading = QLabel(title)
        font = heading.font()
        font.setPointSizeF(font.pointSizeF() * 1.35)
        heading.setFont(font)
        self.note = QLabel()
        self.note.setWordWrap(True)
        self.note.setTextFormat(Qt.TextFormat.PlainText)
        self.content.addWidget(heading)
        self.content.addWidget(self.note)
        self.content.addSpacing(4)

    def lead_to(self, place: Place) -> None:
        """Show the place of a finding; a page as a whole is its own place."""


def titled(title: str, inside: QWidget) -> QWidget:
    """Give a column with its name above it, as the chart's ladder and letters have."""
    outside = QWidget()
    layout = QVBoxLayout(outside)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(0)
    label = QLabel(title)
    label.setContentsMargins(8, 5, 8, 4)
    layout.addWidget(label)
    layout.addWidget(inside, 1)
    return outside


def words_label(text: str = "", *, is_strong: bool = False) -> QLabel:
    """Give a label of words that wrap and are never taken for markup."""
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    if is_strong:
        font = label.font()
        font.setBold(True)
        label.setFont(font)
    return label


def rule() -> QFrame:
    """Give a thin line across."""
    line = QFrame()
    line.setFrameShape(QFrame.Shape.HLine)
    line.setFrameShadow(QFrame.Shadow.Plain)
    line.setEnabled(False)
    line.setFixedHeight(1)
    return line
