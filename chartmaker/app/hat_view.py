"""The hat turning under the mouse or the keys, with its real fabric, on the neutral surround of ISO 3664."""

from __future__ import annotations

from dataclasses import replace
from math import copysign
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QImage, QPainter, QPen
from PySide6.QtWidgets import QWidget

from chartmaker.app.hat_maker import HatMaker
from chartmaker.app.quick_frames import QuickFrames, frame_side
from chartmaker.app.shades import SURROUND
from chartmaker.app.words import number, tr
from chartmaker.pictures.turning import Dress
from chartmaker.pictures.viewpoint import Viewpoint

if TYPE_CHECKING:
    from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent, QResizeEvent, QShowEvent, QWheelEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.pictures.turning import Pixels

DEGREES_PER_UNIT = 0.5
"""Turned and tilted for each unit of the window that the pointer moves."""
LEVEL_UNITS = 8.0
"""Up or down by less, a drag only turns."""
TURN_STEP, TILT_STEP = 15.0, 10.0
"""By an arrow key."""
ZOOM_STEP, NEAREST = 1.25, 4.0
STILL_AFTER_MS = 160
"""A hat that rests is painted finely after this time."""
PLACES = {
    "front": Viewpoint(),
    "side": Viewpoint(turn_degrees=90),
    "back": Viewpoint(turn_degrees=180),
    "above": Viewpoint(tilt_degrees=90),
}
"""Viewpoints that have a button and a key."""
KEYS = {
    Qt.Key.Key_Home: "front",
    Qt.Key.Key_F: "front",
    Qt.Key.Key_S: "side",
    Qt.Key.Key_B: "back",
    Qt.Key.Key_A: "above",
}
MOVES = {
    Qt.Key.Key_Left: (-TURN_STEP, 0.0),
    Qt.Key.Key_Right: (TURN_STEP, 0.0),
    Qt.Key.Key_Up: (0.0, -TILT_STEP),
    Qt.Key.Key_Down: (0.0, TILT_STEP),
}


class HatView(QWidget):
    """Quick frames while it moves, a fine one when it rests; nothing at all while it is hidden."""

    moved = Signal()
    """It is seen from elsewhere."""
    failed = Signal(object)
    """The exception that kept the hat from being made."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self.dress = Dress()
        self.place = PLACES["front"]
        self.maker = HatMaker(self)
        self._grip: tuple[QPointF, Viewpoint] | None = None
        """Where the hat was taken hold of, and how it was seen then."""
        self._shown: tuple[object, QImage] | None = None
        self._quick = QuickFrames()
        self._still = QTimer(self, singleShot=True, interval=STILL_AFTER_MS)
        self._still.timeout.connect(self._ask_fine)
        self.setAccessibleName(tr("The turning hat"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setMinimumSize(180, 160)
        self.maker.ready.connect(self._forget)
        self.maker.painted.connect(self._take_fine)
        self.maker.failed.connect(self.failed)
        self._tell()

    def sizeHint(self) -> QSize:
        """Ask for a square."""
        return QSize(420, 420)

    def follow(self) -> None:
        """Show the design as it stands."""
        self._ask()

    def wear(self, dress: Dress) -> None:
        """Show it in another tint, or laid flat."""
        self.dress = dress
        self._ask()

    def look_from(self, place: Viewpoint) -> None:
        """See it from elsewhere."""
        if place != self.place:
            self.place = place
            self._tell()
            self._refresh()
            self.moved.emit()

    def look_from_named(self, name: str) -> None:
        """See it from one of `PLACES`, as near as it is."""
        self.look_from(replace(PLACES[name], zoom=self.place.zoom))

    def finish(self) -> None:
        """Make nothing more."""
        self._still.stop()
        self.maker.finish()

    def words(self) -> str:
        """Tell from where it is seen."""
        turn = (self.place.turn_degrees + 180) % 360 - 180
        if abs(turn) < 0.5:
            facing = tr("front")
        elif abs(turn) > 179.5:
            facing = tr("back")
        elif turn > 0:
            facing = tr("turned {0}° to the right").format(number(turn))
        else:
            facing = tr("turned {0}° to the left").format(number(-turn))
        tilt = self.place.tilt_degrees
        height = tr("from {0}° above") if tilt >= 0 else tr("from {0}° below")
        return f"{facing}, {height.format(number(abs(tilt)))}"

    # --- making frames

    @property
    def _pixels(self) -> tuple[int, int]:
        """Width and height in pixels of the screen, within what a frame may have."""
        ratio = self.devicePixelRatioF()
        return frame_side(self.width() * ratio), frame_side(self.height() * ratio)

    def _ask(self) -> None:
        if self.isVisible():
            look = (self.place, frame_side(self.width()), frame_side(self.height()))
            self.maker.make(self._document.appraisal, self.dress, look)

    def _forget(self) -> None:
        self._shown = None
        self._quick.rest()
        self._refresh()

    def _refresh(self) -> None:
        self.maker.paint_finely(None)
        self.update()
        if self.isVisible():
            self._still.start()

    def _ask_fine(self) -> None:
        if not self.isVisible() or self.maker.hat is None:
            return
        if self._quick.share < 1:  # all pixels at once first: a fine frame may take long on a busy machine
            self._quick.rest()
            self._shown = None
            self.update()
        if self._grip is None:
            self.maker.paint_finely((self.place, *self._pixels))
        else:
            self._still.start()

    def _take_fine(self, look: object, pixels: Pixels) -> None:
        if look == (self.place, *self._pixels):
            self._shown = self._key, _image(pixels, self.devicePixelRatioF())
            self._quick.rest()
            self.update()

    @property
    def _key(self) -> object:
        return id(self.maker.hat), self.place, self._pixels

    def _picture(self) -> QImage | None:
        """Give the frame as it is seen now: the fine one where there is one, else one made at once."""
        hat = self.maker.hat
        if hat is None:
            return None
        if self._shown is None or self._shown[0] != self._key:
            # In units of the window, which a fine screen has several pixels in.
            self._shown = self._key, _image(self._quick.frame(hat, self.place, self.width(), self.height()), 1.0)
        return self._shown[1]

    # --- events

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the frame; a thin line inside the edge tells that it has the keys."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), SURROUND)
        picture = self._picture()
        if picture is not None:
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            painter.drawImage(self.rect(), picture)
        else:
            painter.setPen(QColor(235, 235, 235))
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, tr("The hat is being made ready"))
        if self.hasFocus():
            painter.setPen(QPen(self.palette().highlight().color(), 2))
            painter.drawRect(self.rect().adjusted(1, 1, -1, -1))

    def showEvent(self, event: QShowEvent) -> None:
        """Bring the hat up to date."""
        super().showEvent(event)
        self._ask()
        self._refresh()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Paint it anew."""
        super().resizeEvent(event)
        self._refresh()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of the hat."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._grip = event.position(), self.place
            self.setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Turn it with the pointer, and tilt it."""
        if self._grip is not None:
            at, place = self._grip
            way = event.position() - at
            upright = copysign(max(0.0, abs(way.y()) - LEVEL_UNITS), way.y())
            self._turn(place, DEGREES_PER_UNIT * way.x(), DEGREES_PER_UNIT * upright)

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        """Let go."""
        self._let_go()

    def mouseDoubleClickEvent(self, _event: QMouseEvent) -> None:
        """Go back to the front."""
        self.look_from(PLACES["front"])

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Go nearer with Ctrl; a bare wheel is the page's."""
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier and event.angleDelta().y():
            self._zoom(ZOOM_STEP ** (event.angleDelta().y() / 120))
        else:
            event.ignore()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Turn and tilt with the arrows, go to a side by its letter, nearer and away."""
        key = Qt.Key(event.key())
        if key == Qt.Key.Key_Escape and self._grip is not None:
            place = self._grip[1]
            self._let_go()
            self.look_from(place)
        elif key in MOVES:
            self._turn(self.place, *MOVES[key])
        elif key in KEYS and not event.modifiers():
            self.look_from_named(KEYS[key])
        elif event.text() in ("+", "-"):
            self._zoom(ZOOM_STEP if event.text() == "+" else 1 / ZOOM_STEP)
        else:
            super().keyPressEvent(event)

    def _turn(self, start: Viewpoint, turn: float, tilt: float) -> None:
        turned = (start.turn_degrees + turn + 180) % 360 - 180
        tilted = min(90.0, max(-90.0, start.tilt_degrees + tilt))
        self.look_from(replace(start, turn_degrees=turned, tilt_degrees=tilted))

    def _zoom(self, times: float) -> None:
        self.look_from(replace(self.place, zoom=min(NEAREST, max(1.0, self.place.zoom * times))))

    def _let_go(self) -> None:
        self._grip = None
        self.setCursor(Qt.CursorShape.OpenHandCursor)

    def _tell(self) -> None:
        self.setAccessibleDescription(self.words())


def _image(pixels: Pixels, ratio: float) -> QImage:
    rgb = np.ascontiguousarray(pixels)
    height, width, _ = rgb.shape
    image = QImage(rgb.data, width, height, 3 * width, QImage.Format.Format_RGB888).copy()
    image.setDevicePixelRatio(ratio)
    return image
