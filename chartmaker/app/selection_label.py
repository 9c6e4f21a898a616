"""What is selected, at the foot of the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

if TYPE_CHECKING:
    from PySide6.QtWidgets import QStatusBar

    from chartmaker.app.block_desk import BlockDesk


class SelectionLabel(QLabel):
    """Stands at the right of a status bar, where messages leave it."""

    def __init__(self, desk: BlockDesk, bar: QStatusBar) -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setContentsMargins(16, 0, 8, 0)
        bar.addPermanentWidget(self)
        desk.changed.connect(lambda: self.setText(desk.words))
