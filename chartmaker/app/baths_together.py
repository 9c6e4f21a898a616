"""The line above the baths: which designs they are planned for, with others to add and to leave out."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QHBoxLayout, QMenu, QPushButton, QToolButton, QWidget

from chartmaker.app.bath_lines import plain_label
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.baths_desk import BathsDesk, Companion


class BathsTogether(QWidget):
    """Names the designs."""

    def __init__(self, desk: BathsDesk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.names = plain_label("")
        self.add = QPushButton(tr("&Plan another design along…"))
        self.add.clicked.connect(lambda _checked=False: desk.add_design())
        self.leave = QToolButton()
        self.leave.setText(tr("Leave &out"))
        self.leave.setAccessibleName(tr("Leave out a design that is planned along"))
        self.leave.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self.leave.setMenu(QMenu(self.leave))
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 4)
        layout.addWidget(self.names, 1)
        layout.addWidget(self.leave)
        layout.addWidget(self.add)
        desk.changed.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Follow the desk."""
        own = self._desk.document.design.title or tr("this design")
        others = [_name(each) for each in self._desk.companions]
        self.names.setText(tr("For {0}").format(", ".join((own, *others))))
        self.leave.setVisible(bool(others))
        menu = self.leave.menu()
        menu.clear()
        for each in self._desk.companions:
            menu.addAction(_name(each).replace("&", "&&"), partial(self._desk.leave_out, each))


def _name(companion: Companion) -> str:
    return companion.design.title or companion.path.name
