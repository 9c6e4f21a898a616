"""The menu of a round: groups of actions from the table, a line between groups."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu, QWidget

if TYPE_CHECKING:
    from PySide6.QtGui import QAction


def row_menu(parent: QWidget, groups: tuple[tuple[QAction, ...], ...]) -> QMenu:
    """Make the menu; it goes when it is closed."""
    menu = QMenu(parent)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    for group in groups:
        if menu.actions():
            menu.addSeparator()
        menu.addActions(list(group))
    return menu
