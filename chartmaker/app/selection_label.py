"""What is selected, at the foot of the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

if TYPE_CHECKING:
    from PySide6.QtWidgets import QStatusBar

    from chartmaker.app.block_desk import BlockDesk

TOLD_MS = 8000


class SelectionLabel(QLabel):
    """Stands at the right of a status bar, where messages leave it, and tells there what the desk tells."""

    def __init__(self, desk: BlockDesk, bar: QStatusBar) -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setContentsMargins(8, 0, 8, 0)
        bar.addPermanentWidget(self)
        desk.changed.connect(lambda: self.setText(desk.words))
        desk.told.connect(lambda text: bar.showMessage(text, TOLD_MS))
