"""The middle of the hat page: the measured side drawing, the turning hat, or both beside or above each other."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QSplitter, QToolButton, QVBoxLayout, QWidget

from chartmaker.app.hat_panel import HatPanel
from chartmaker.app.seeing import Seeing
from chartmaker.app.side_view import SideView
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QResizeEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting

WIDE, TALL = 800, 720
"""From these on there is room for both, side by side or one above the other."""
WAYS = ("drawing", "hat", "both")


class HatStage(QWidget):
    """Shows what there is room for, until the user chooses."""

    def __init__(
        self,
        document: OpenDesign,
        units: UnitsSetting,
        *,
        seeing: Callable[[], Seeing] = Seeing,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.drawing = SideView(document, units)
        self.panel = HatPanel(document, units, seeing=seeing)
        self._chosen = ""
        """What the user chose to see; empty while room decides."""
        self.buttons = {way: _way_button(text) for way, text in zip(WAYS, _texts(), strict=True)}
        self._split = QSplitter(Qt.Orientation.Vertical)
        self._split.setChildrenCollapsible(False)
        self._split.addWidget(self.drawing)
        self._split.addWidget(self.panel)
        self._split.setStretchFactor(0, 1)
        self._split.setStretchFactor(1, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(6, 0, 6, 0)
        layout.setSpacing(4)
        layout.addLayout(self._switch())
        layout.addWidget(self._split, 1)
        self._show_room()

    @property
    def way(self) -> str:
        """What is shown: drawing, hat or both."""
        if self._chosen:
            return self._chosen
        return "both" if self.width() >= WIDE or self.height() >= TALL else "hat"

    def choose(self, way: str) -> None:
        """Show one of `WAYS`, whatever the room."""
        self._chosen = way
        self._show_room()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lay both out as the room is."""
        super().resizeEvent(event)
        self._show_room()

    def _show_room(self) -> None:
        way = self.way
        self.buttons[way].setChecked(True)
        self.drawing.setVisible(way != "hat")
        self.panel.setVisible(way != "drawing")
        is_wide = self.width() >= max(WIDE, self.height())
        self._split.setOrientation(Qt.Orientation.Horizontal if is_wide else Qt.Orientation.Vertical)

    def _switch(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(4)
        group = QButtonGroup(self)
        for way, button in self.buttons.items():
            group.addButton(button)
            button.clicked.connect(lambda _checked=False, way=way: self.choose(way))
            row.addWidget(button)
        row.addStretch(1)
        return row


def _way_button(text: str) -> QToolButton:
    button = QToolButton()
    button.setText(text)
    button.setCheckable(True)
    button.setAutoRaise(True)
    button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    return button


def _texts() -> tuple[str, str, str]:
    return tr("Measured drawing"), tr("Turning hat"), tr("Both")
