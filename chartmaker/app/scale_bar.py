"""A bar that is drawn as long as a ruler held to the screen says, so that the program knows the screen's scale."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPalette, QPen
from PySide6.QtWidgets import QWidget

from chartmaker.app.seeing import LEAST_UNITS_PER_CM, MOST_UNITS_PER_CM
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent

LENGTH_CM = 5
"""That the bar shall have on the screen."""
LEFT, AIR = 4.5, 10


class ScaleBar(QWidget):
    """Its right end follows the pointer, and the arrow keys a unit at a time."""

    drawn = Signal(float)
    """Window units to the centimetre."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.units_per_cm = 38.0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(tr("Bar of {0} cm").format(LENGTH_CM))
        self.setToolTip(
            tr(
                "Hold a ruler to the screen, and draw the bar's right end to {0} cm, or use the left and right keys."
            ).format(LENGTH_CM)
        )
        self.setCursor(Qt.CursorShape.SizeHorCursor)

    def show_scale(self, units_per_cm: float) -> None:
        """Draw the bar at a scale."""
        self.units_per_cm = units_per_cm
        self.setAccessibleDescription(tr("{0} units of the window to the centimetre").format(number(units_per_cm, 1)))
        self.setMinimumWidth(self.sizeHint().width())
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Ask for the bar and a little more, so that it can be drawn out."""
        return QSize(round(LENGTH_CM * self.units_per_cm) + 2 * AIR, 20)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint a line with an end at both sides and a tick each centimetre."""
        painter = QPainter(self)
        role = QPalette.ColorRole.Highlight if self.hasFocus() else QPalette.ColorRole.WindowText
        painter.setPen(QPen(self.palette().color(role), 1))
        middle = self.height() // 2 + 0.5
        painter.drawLine(QPointF(LEFT, middle), QPointF(LEFT + LENGTH_CM * self.units_per_cm, middle))
        for tick in range(LENGTH_CM + 1):
            x, half = LEFT + tick * self.units_per_cm, 7 if tick in (0, LENGTH_CM) else 3
            painter.drawLine(QPointF(x, middle - half), QPointF(x, middle + half))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the right end."""
        self.mouseMoveEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Draw it to the pointer."""
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._take((event.position().x() - LEFT) / LENGTH_CM)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Draw it a unit longer or shorter."""
        step = {Qt.Key.Key_Right: 1, Qt.Key.Key_Left: -1}.get(Qt.Key(event.key()), 0)
        if step:
            self._take(self.units_per_cm + step / LENGTH_CM)
        else:
            super().keyPressEvent(event)

    def _take(self, units_per_cm: float) -> None:
        units_per_cm = min(max(units_per_cm, LEAST_UNITS_PER_CM), MOST_UNITS_PER_CM)
        self.show_scale(units_per_cm)
        self.drawn.emit(units_per_cm)
