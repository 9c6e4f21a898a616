"""The list of keys, made from the action table and from what the chart and its columns do with keys."""

from __future__ import annotations

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from chartmaker.app.actions import ACTIONS
from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import tr

OTHER_KEYS = (
    ("Chart", "Move the cursor", "Arrows, Page Up, Page Down, Home, End"),
    ("Chart", "Draw at the cursor; begin and end a line", "Space or Enter"),
    ("Chart", "Drop the gesture, or the choice of rounds", "Escape"),
    ("Chart", "Stamp the motif that is held; put it down", "Space or Enter; Escape or right button"),
    ("Motifs", "Go from the words on to the motifs; hold the one there", "Down; Enter or Space"),
    ("Chart", "Draw ground, or make a stitch plain, with the mouse", "Right button"),
    ("Selecting", "Mark a block; drop it", "Drag, or Shift and arrows; Escape or a click beside it"),
    ("Selecting", "Move the block; copy it", "Drag it; Ctrl and drag it"),
    ("Selecting", "Take the block up, move it, set it down; put it back", "Enter, arrows, Enter; Escape"),
    ("Selecting", "Set down what was pasted; drop it", "Click or Enter; Escape or right button"),
    ("Selecting", "What can be done with the block", "Right button or Menu"),
    ("Chart", "Choose a run of rounds", "Shift and up or down, or drag over round numbers"),
    ("Chart", "What can be done with the rounds chosen", "Menu, or right button on a round number"),
    ("Band", "Take a field and go back to the chart; leave it as it was", "Enter; Escape"),
    ("Chart", "Zoom at the pointer", "Ctrl and wheel"),
    ("Chart", "Go back to the chart from across the room", "Escape, or a double click"),
    ("Chart", "Draw out the bar that tells the screen's scale", "Left and right"),
    ("Shading", "Move among the chips", "Arrows"),
    ("Shading", "Set the letter of a chip", "A to Z"),
    ("Shading", "Carry the letter one round on", "Shift and up or down"),
    ("Shading", "Choose the letter from a menu", "Space or Enter"),
)
"""Keys that belong to a control rather than to an action."""


class KeysDialog(QDialog):
    """Every key in one table."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Keys"))
        self.resize(620, 560)
        table = ReadingTable((tr("where"), tr("what"), tr("keys")), wide=1, name=tr("Keys"))
        rows = [(action.menu, action.plain_text, native(action.keys)) for action in ACTIONS if action.keys]
        table.show_rows([tuple(Cell(tr(text)) for text in row) for row in (*rows, *OTHER_KEYS)])
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        layout = QVBoxLayout(self)
        layout.addWidget(table, 1)
        layout.addWidget(buttons)


def native(keys: tuple[str, ...]) -> str:
    """Write keys as the system does."""
    return ", ".join(QKeySequence(key).toString(QKeySequence.SequenceFormat.NativeText) for key in keys)
