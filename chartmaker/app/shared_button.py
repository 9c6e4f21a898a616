"""One button of a tool bar for several actions: it does the one that was done last, and its menu has them all."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QMenu, QToolButton, QWidget

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QAction


class SharedButton(QToolButton):
    """Shows the action of its own that is on, or the one that was on last; at first its first."""

    def __init__(self, actions: Sequence[QAction], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setPopupMode(QToolButton.ToolButtonPopupMode.MenuButtonPopup)
        self.setAutoRaise(True)
        self._choices = tuple(actions)
        menu = QMenu(self)
        for action in actions:
            menu.addAction(action)
            # A method of its own, so that Qt takes the button off the actions, which outlive it.
            action.toggled.connect(self._follow)
        self.setMenu(menu)
        self._show(actions[0])
        self._follow()

    def _follow(self) -> None:
        for action in self._choices:
            if action.isChecked():
                self._show(action)

    def _show(self, action: QAction) -> None:
        self.setDefaultAction(action)
        self.setAccessibleName(action.text().replace("&", ""))
