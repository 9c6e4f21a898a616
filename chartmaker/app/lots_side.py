"""Beside the lots: the one that is picked, or the two that are compared, each in a column that scrolls."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QStackedWidget, QToolButton, QVBoxLayout, QWidget

from chartmaker.app.lots_card import LotCard
from chartmaker.app.lots_lines import lots_at_hand
from chartmaker.app.lots_pair import PairCard
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence
    from pathlib import Path

    from PySide6.QtGui import QAction

    from chartmaker.app.lots_lines import LotLine
    from chartmaker.app.open_design import OpenDesign

ON_A_LOT = ("lots.edit", "lots.edit_bath", "lots.type", "lots.delete")
"""Actions that work on the lot that is picked, by their ids; those that the window has stand above its card."""


class LotsSide(QStackedWidget):
    """Follows what is picked."""

    use_asked = Signal()
    swap_asked = Signal()
    plan_asked = Signal(str, int)
    """A bath, by its id, and the load that a lot is to be planned from."""
    pick_asked = Signal(str)
    """A lot, by its id, is to be picked."""

    def __init__(
        self,
        document: OpenDesign,
        actions: Mapping[str, QAction],
        folder: Callable[[], Path | None],
        parent: QWidget | None = None,
    ) -> None:
        """Take the window's actions by their ids, and what gives the folder of the palette's pictures."""
        super().__init__(parent)
        self.document = document
        self._folder = folder
        self.card = LotCard()
        self.pair = PairCard()
        self._nothing = QWidget()
        self._one = QWidget()
        column = QVBoxLayout(self._one)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(_buttons([actions[name] for name in ON_A_LOT if name in actions]))
        column.addWidget(scrolled(self.card, tr("The lot that is picked")))
        self._two = scrolled(self.pair, tr("Two lots compared"))
        for page in (self._nothing, self._one, self._two):
            self.addWidget(page)
        self.setAccessibleName(tr("What is picked"))
        self.setMinimumWidth(330)
        self.card.ladder.plan_asked.connect(self.plan_asked)
        self.card.tree.pick_asked.connect(self.pick_asked)
        self.card.use_asked.connect(self.use_asked)
        self.pair.swap_asked.connect(self.swap_asked)

    def sizeHint(self) -> QSize:
        """Ask for a column in which a curve can be read."""
        return QSize(390, 500)

    def show_lines(self, picked: Sequence[LotLine], every: Sequence[LotLine]) -> None:
        """Show the lots that are picked; `every` are all that are at hand."""
        viewing = self.document.design.viewing
        at_hand = lots_at_hand(self.document.design, self.document.palette)
        if len(picked) == 1:
            self.card.show_line(picked[0], every, at_hand, viewing=viewing, folder=self._folder())
            self.setCurrentWidget(self._one)
        elif len(picked) == 2:
            limits = self.document.design.limits
            self.pair.show_pair(picked[0], picked[1], at_hand, viewing=viewing, limits=limits)
            self.setCurrentWidget(self._two)
        else:
            self.setCurrentWidget(self._nothing)


def scrolled(inside: QWidget, name: str) -> QScrollArea:
    """Put a column into an area that scrolls up and down."""
    area = QScrollArea()
    area.setAccessibleName(name)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setWidget(inside)
    return area


def _buttons(actions: Sequence[QAction]) -> QHBoxLayout:
    row = QHBoxLayout()
    row.setContentsMargins(12, 0, 12, 0)
    row.setSpacing(4)
    for action in actions:
        button = QToolButton()
        button.setDefaultAction(action)
        button.setAccessibleName(action.text().replace("&", "").rstrip("…"))
        row.addWidget(button)
    row.addStretch(1)
    return row
