"""A bar that is drawn as long as a ruler held to the screen says, so that the program knows the screen's scale."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPalette, QPen
from PySide6.QtWidgets import QWidget

from chartmaker.app.seeing import LEAST_UNITS_PER_CM, MOST_UNITS_PER_CM
from chartmaker.app.words import number, tr
from chartmaker.model.units import METRIC, Units

if TYPE_CHECKING:
    from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent

LENGTHS = {"metric": 5, "imperial": 2}
"""That the bar shall have on the screen, in cm or in inches."""
LEFT, AIR = 4.5, 10


class ScaleBar(QWidget):
    """Its right end follows the pointer, and the arrow keys a unit at a time."""

    drawn = Signal(float)
    """Window units to the centimetre."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.units_per_cm = 38.0
        self._length, self._tick_cm = LENGTHS[METRIC.name], 1.0
        self._unit = METRIC.length.unit
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.SizeHorCursor)
        self.show_in(METRIC)

    @property
    def length_cm(self) -> float:
        """That the bar shall have on the screen."""
        return self._length * self._tick_cm

    @property
    def length_words(self) -> str:
        """The same, as a ruler of these units shows it."""
        return f"{self._length}{tr(self._unit)}"

    def show_in(self, units: Units) -> None:
        """Be as long as a few whole units of a ruler, with a tick at each."""
        self._length, self._tick_cm, self._unit = LENGTHS[units.name], units.length.metric(1), units.length.unit
        self.setAccessibleName(tr("Bar of {0}").format(self.length_words))
        self.setToolTip(
            tr(
                "Hold a ruler to the screen, and draw the bar's right end to {0}, or use the left and right keys."
            ).format(self.length_words)
        )
        self.show_scale(self.units_per_cm)

    def show_scale(self, units_per_cm: float) -> None:
        """Draw the bar at a scale."""
        self.units_per_cm = units_per_cm
        told = tr("{0} units of the window to 1{1}").format(number(units_per_cm * self._tick_cm, 1), tr(self._unit))
        self.setAccessibleDescription(told)
        self.setMinimumWidth(self.sizeHint().width())
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Ask for the bar and a little more, so that it can be drawn out."""
        return QSize(round(self.length_cm * self.units_per_cm) + 2 * AIR, 20)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint a line with an end at both sides and a tick each centimetre or inch."""
        painter = QPainter(self)
        role = QPalette.ColorRole.Highlight if self.hasFocus() else QPalette.ColorRole.WindowText
        painter.setPen(QPen(self.palette().color(role), 1))
        middle = self.height() // 2 + 0.5
        painter.drawLine(QPointF(LEFT, middle), QPointF(LEFT + self.length_cm * self.units_per_cm, middle))
        for tick in range(self._length + 1):
            x, half = LEFT + tick * self._tick_cm * self.units_per_cm, 7 if tick in (0, self._length) else 3
            painter.drawLine(QPointF(x, middle - half), QPointF(x, middle + half))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take the right end."""
        self.mouseMoveEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Draw it to the pointer."""
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._take((event.position().x() - LEFT) / self.length_cm)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Draw it a unit longer or shorter."""
        step = {Qt.Key.Key_Right: 1, Qt.Key.Key_Left: -1}.get(Qt.Key(event.key()), 0)
        if step:
            self._take(self.units_per_cm + step / self.length_cm)
        else:
            super().keyPressEvent(event)

    def _take(self, units_per_cm: float) -> None:
        units_per_cm = min(max(units_per_cm, LEAST_UNITS_PER_CM), MOST_UNITS_PER_CM)
        self.show_scale(units_per_cm)
        self.drawn.emit(units_per_cm)
