"""What the lots page shows while there are no lots: what to do first, as buttons."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Mapping

    from PySide6.QtGui import QAction

FIRST_STEPS = ("file.palette", "lots.new_palette", "lots.take", "lots.photo", "lots.new")
"""Actions that bring lots, by their ids; those that the window has are offered."""


class LotsBlank(QWidget):
    """A sentence and a button for each way to come by lots."""

    def __init__(self, actions: Mapping[str, QAction], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        layout = QVBoxLayout(self)
        layout.setAlignment(Qt.AlignmentFlag.AlignCenter)
        layout.setSpacing(8)
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setTextFormat(Qt.TextFormat.PlainText)
        self.words.setMaximumWidth(420)
        self.words.setMinimumWidth(320)
        layout.addWidget(self.words)
        self.buttons = [_button(actions[name]) for name in FIRST_STEPS if name in actions]
        for button in self.buttons:
            layout.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)

    def show_reason(self, searched: str) -> None:
        """Tell why nothing is here: no lot at all, or none that was looked for."""
        self.words.setText(
            tr("No lot has “{0}” in its name, dyestuff, part or notes.").format(searched)
            if searched
            else tr(
                "No lots yet. Open a palette, or begin one: take the readings of a measurement file or of a photo, "
                "or add a lot and type its reading. Each lot then stands here as a skein in its shade."
            )
        )
        for button in self.buttons:
            button.setVisible(not searched)


def _button(action: QAction) -> QPushButton:
    button = QPushButton(action.text())
    button.setToolTip(action.toolTip())
    button.setMinimumWidth(220)
    button.setEnabled(action.isEnabled())
    button.clicked.connect(action.trigger)
    action.enabledChanged.connect(button.setEnabled)
    return button
