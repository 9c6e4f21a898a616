"""The choice among the three shapes of a hat, each with its picture."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QPainter, QPalette, QPen
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QSizePolicy, QToolButton, QWidget

from chartmaker.app.start_pictures import HEIGHT, WIDTH, shape_icon
from chartmaker.app.words import plain_tip, tr

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QPaintEvent

FRAME = 2.5


def _words() -> Iterator[tuple[str, str, str]]:
    """Give each shape with its name and what it is."""
    yield "cap", tr("&Close cap"), tr("It follows the head, and closes over it")
    yield "tam", tr("&Tam"), tr("It widens above the brim, and its crown lies flat as a plate")
    yield "stocking", tr("Stoc&king cap"), tr("Long, and narrower all the way to its tip")


class ShapeTiles(QWidget):
    """One of three buttons is down; the arrows go from one to the next."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Shape"))
        self._group = QButtonGroup(self)
        self.tiles: dict[str, ShapeTile] = {}
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        for shape, name, what in _words():
            tile = self.tiles[shape] = ShapeTile(name, what)
            self._group.addButton(tile)
            row.addWidget(tile, 1)
        self.tiles["cap"].setChecked(True)
        self._recolour()
        self._group.buttonToggled.connect(lambda _tile, is_on: self.changed.emit() if is_on else None)

    @property
    def shape(self) -> str:
        """The shape that is chosen, as the model calls it."""
        return next(shape for shape, tile in self.tiles.items() if tile.isChecked())

    def choose(self, shape: str) -> None:
        """Choose a shape; one that there is not leaves it as it is."""
        if shape in self.tiles:
            self.tiles[shape].setChecked(True)

    def take_keys(self) -> None:
        """Give the keys to the tile that is down."""
        self.tiles[self.shape].setFocus()

    def changeEvent(self, event: QEvent) -> None:
        """Follow the system from light to dark and back."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self._recolour()

    def _recolour(self) -> None:
        for shape, tile in self.tiles.items():
            tile.setIcon(shape_icon(shape, self.palette(), ratio=self.devicePixelRatioF()))


class ShapeTile(QToolButton):
    """A picture with its name below it; the chosen one is framed, and its name is bold."""

    def __init__(self, name: str, what: str) -> None:
        super().__init__()
        self.setText(name)
        self.setToolTip(plain_tip(what))
        self.setAccessibleName(name.replace("&", ""))
        self.setAccessibleDescription(what)
        self.setCheckable(True)
        self.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextUnderIcon)
        self.setIconSize(QSize(WIDTH, HEIGHT))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.toggled.connect(self._show_chosen)

    def sizeHint(self) -> QSize:
        """Take as much room chosen as not."""
        bold = self.font()
        bold.setBold(True)
        wide = QFontMetrics(bold).horizontalAdvance(self.text().replace("&", "")) + 16
        return super().sizeHint().expandedTo(QSize(wide, 0))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the button, and the frame of the chosen one."""
        super().paintEvent(event)
        if self.isChecked():
            painter = QPainter(self)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(self.palette().color(QPalette.ColorRole.Highlight), FRAME))
            half = FRAME / 2
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(half, half, -half, -half), 3, 3)

    def _show_chosen(self) -> None:
        font = self.font()
        font.setBold(self.isChecked())
        self.setFont(font)
