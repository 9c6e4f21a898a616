"""Stands where the chart page will be until that is loaded: the same places, empty, in the same colours.

It imports neither the chart nor what is computed for it, so that the window is there at once.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QMargins, Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QScrollBar,
    QSpinBox,
    QSplitter,
    QToolBar,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.chart_frame import BOTTOM, LEFT, RIGHT, TOP
from chartmaker.app.page_frame import titled
from chartmaker.app.shades import SURROUND
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

SIDE_WIDTH, LADDER_HEIGHT, LETTERS_HEIGHT = 256, 300, 220
SHADING_WIDTH, LEDGER_WIDTH = 100, 276
"""As the chart page and its columns have them, which load too much to be asked; a test holds the two together."""


class Surround(QWidget):
    """The neutral grey that shades will be judged against, and nothing on it."""

    painted = Signal()

    def __init__(self, margins: QMargins | None = None) -> None:
        super().__init__()
        self._margins = margins or QMargins()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Fill all but the margins."""
        QPainter(self).fillRect(self.rect().marginsRemoved(self._margins), SURROUND)
        self.painted.emit()


class WaitingPage(QWidget):
    """The chart page without its chart; it holds the keys for the chart, and does nothing with them."""

    def __init__(self) -> None:
        super().__init__()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.tools = QToolBar(tr("Chart tools"))
        self.tools.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonIconOnly)
        self.ladder = Surround()
        self.canvas = Surround(QMargins(LEFT, TOP, RIGHT, BOTTOM))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.tools)
        layout.addWidget(_band_strip())
        columns = QSplitter(Qt.Orientation.Horizontal)
        columns.addWidget(self._left_side())
        columns.addWidget(self._right_side())
        columns.setStretchFactor(1, 1)
        columns.setSizes([SIDE_WIDTH, 1000])
        layout.addWidget(columns, 1)

    def _left_side(self) -> QSplitter:
        side = QSplitter(Qt.Orientation.Vertical)
        side.addWidget(titled(tr("Value, L*"), self.ladder))
        side.addWidget(titled(tr("Letters and lots"), QWidget()))
        side.setStretchFactor(0, 3)
        side.setStretchFactor(1, 2)
        side.setSizes([LADDER_HEIGHT, LETTERS_HEIGHT])
        side.setMinimumWidth(SIDE_WIDTH)
        return side

    def _right_side(self) -> QWidget:
        inside = QWidget()
        row = QHBoxLayout(inside)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.canvas, 1)
        row.addSpacing(SHADING_WIDTH + LEDGER_WIDTH)
        row.addWidget(QScrollBar(Qt.Orientation.Vertical))
        return inside


def _band_strip() -> QWidget:
    """Keep the place of the line that shows the band at the cursor."""
    strip = QWidget()
    row = QHBoxLayout(strip)
    row.setContentsMargins(8, 2, 8, 3)
    row.setSpacing(6)
    row.addWidget(QLabel(tr("Band")))
    name = QLineEdit()
    name.setReadOnly(True)
    name.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    name.setMaximumWidth(260)
    # The line will be as high as the highest control in it, which counts stitches.
    name.setMinimumHeight(QSpinBox().sizeHint().height())
    row.addWidget(name, 3)
    row.addStretch(2)
    return strip
