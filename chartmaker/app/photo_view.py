"""The photo in the dialog: corners are dragged onto the target, boxes drawn on skeins; by the keyboard too."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt, Signal
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget

from chartmaker.app.photo_drawing import draw_magnified, draw_marks
from chartmaker.app.photo_marks import CORNERS, Grip, Marks, Point, first_marks
from chartmaker.app.shades import SURROUND
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPaintEvent

    from chartmaker.app.photo_reading import OpenedPhoto, PhotoRead

REACH = 12.0
"""How near to a corner the pointer takes hold of it, in window units."""
MARGIN = 8.0
STEPS = {
    Qt.Key.Key_Left: (-1.0, 0.0),
    Qt.Key.Key_Right: (1.0, 0.0),
    Qt.Key.Key_Up: (0.0, -1.0),
    Qt.Key.Key_Down: (0.0, 1.0),
}
FAR = 10.0
"""How much farther an arrow key goes with Shift."""
SHAPES = {
    "corner": Qt.CursorShape.CrossCursor,
    "target": Qt.CursorShape.SizeAllCursor,
    "skein": Qt.CursorShape.SizeAllCursor,
    "stretch": Qt.CursorShape.SizeFDiagCursor,
    "draw": Qt.CursorShape.CrossCursor,
}


class PhotoView(QWidget):
    """Shows a photo with what is marked on it. One thing is in hand: a corner of the target or a skein's box."""

    changed = Signal()
    """Something is marked elsewhere; it may still be on its way."""
    chosen = Signal(int)
    """A skein is in hand, counted from 0; -1 for a corner."""
    removed = Signal(int)
    """The box of a skein, counted from 0, was taken away."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._photo: OpenedPhoto | None = None
        self._image = QImage()
        self.marks: Marks | None = None
        """What is marked; None without a photo."""
        self._read: PhotoRead | None = None
        self._in_hand = 0
        self._grip: Grip | None = None
        self._pressed: Point = (0.0, 0.0)
        self._before: Marks | None = None
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(300, 220)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(tr("Photo with the target's corners and the skeins' boxes"))

    # --- what is marked

    @property
    def is_busy(self) -> bool:
        """Whether a drag is under way."""
        return self._grip is not None

    @property
    def in_hand(self) -> int:
        """What the keys move: 0 to 3 the corners, then the boxes."""
        return self._in_hand

    @property
    def has_box(self) -> bool:
        """Whether a skein's box is in hand, not a corner."""
        return self._in_hand >= CORNERS

    def take_photo(self, photo: OpenedPhoto) -> None:
        """Show another photo, with nothing marked but corners that wait to be dragged."""
        self._photo, self._read, self._grip = photo, None, None
        height, width = photo.shown.shape[:2]
        data = photo.shown.tobytes()  # held until it is copied: Qt only looks at it
        self._image = QImage(data, width, height, 3 * width, QImage.Format.Format_RGB888).copy()
        self.marks = first_marks(photo.size)
        self._hold(0)
        self.changed.emit()

    def show_read(self, read: PhotoRead | None) -> None:
        """Show what the marks come to: how the target lies, and which patches do not fit."""
        self._read = read
        self.update()

    def hold_skein(self, index: int) -> None:
        """Take a skein's box in hand."""
        if self.marks is not None and 0 <= index < len(self.marks.skeins):
            self._hold(CORNERS + index)

    def add_box(self) -> None:
        """Mark a box in the photo's middle, to be moved by the keys."""
        if self.marks is None:
            return
        width, height = self.marks.size
        box = (0.45 * width, 0.8 * height, 0.55 * width, 0.9 * height)
        self._take(self.marks.with_skein(len(self.marks.skeins), box))
        self._hold(self.marks.things - 1)
        self.setFocus()

    def remove_box(self) -> None:
        """Take away the box that is in hand."""
        if self.marks is None or not self.has_box:
            return
        skein = self._in_hand - CORNERS
        self.removed.emit(skein)
        self._take(self.marks.without_skein(skein))
        self._hold(min(self._in_hand, self.marks.things - 1))

    def drop(self) -> None:
        """Drop the drag under way: all is where it was."""
        if self._grip is not None and self._before is not None:
            self._grip = None
            self._take(self._before)
            self._hold(min(self._in_hand, self._before.things - 1))

    # --- from the photo to the window and back

    @property
    def scale(self) -> float:
        """Window units to a pixel of the photo."""
        return self._area.width() / self.marks.size[0] if self.marks else 1.0

    @property
    def _area(self) -> QRectF:
        room = QRectF(self.rect()).adjusted(MARGIN, MARGIN, -MARGIN, -MARGIN)
        size = QSizeF(*self.marks.size) if self.marks else room.size()
        size = size.scaled(room.size(), Qt.AspectRatioMode.KeepAspectRatio)
        middle = room.center()
        return QRectF(QPointF(middle.x() - size.width() / 2, middle.y() - size.height() / 2), size)

    def place(self, at: Point) -> QPointF:
        """Give where a point of the photo stands in this control."""
        corner = self._area.topLeft()
        return QPointF(corner.x() + at[0] * self.scale, corner.y() + at[1] * self.scale)

    def _point(self, at: QPointF) -> Point:
        corner = self._area.topLeft()
        return (at.x() - corner.x()) / self.scale, (at.y() - corner.y()) / self.scale

    # --- Qt's own events

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take something in hand, or begin a box; another button during a drag drops it."""
        if self._grip is not None:
            self.drop()
        elif event.button() == Qt.MouseButton.LeftButton and self.marks is not None:
            self._pressed, self._before = self._point(event.position()), self.marks
            self._grip = self.marks.grip_at(self._pressed, REACH / self.scale)
            if self._grip.kind == "corner":
                self._hold(self._grip.index)
            elif self._grip.kind in {"skein", "stretch"}:
                self._hold(CORNERS + self._grip.index)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag what is held, or show what would be held here."""
        if self.marks is None:
            return
        at = self._point(event.position())
        if self._grip is None or self._before is None:
            self.setCursor(SHAPES[self.marks.grip_at(at, REACH / self.scale).kind])
            return
        self._take(self._before.dragged(self._grip, self._pressed, at))
        if self._grip.kind == "draw":
            self._hold(CORNERS + self._grip.index)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go; a box that is but a slip of the hand makes no mark."""
        if event.button() != Qt.MouseButton.LeftButton or self._grip is None or self.marks is None:
            return
        grip, self._grip = self._grip, None
        is_box = grip.kind in {"draw", "stretch"} and grip.index < len(self.marks.skeins)
        if is_box and self.marks.is_too_small(grip.index) and self._before is not None:
            self._take(self._before)
            self._hold(min(self._in_hand, self._before.things - 1))
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Nudge what is in hand, with Shift farther, with Ctrl a box's size; Del takes a box away."""
        step = STEPS.get(Qt.Key(event.key()))
        if self.marks is None or (step is None and event.key() != Qt.Key.Key_Delete):
            super().keyPressEvent(event)
        elif step is None:
            self.remove_box()
        else:
            modifiers = event.modifiers()
            length = (FAR if modifiers & Qt.KeyboardModifier.ShiftModifier else 1.0) / self.scale
            by = step[0] * length, step[1] * length
            if modifiers & Qt.KeyboardModifier.ControlModifier and self._in_hand >= CORNERS:
                self._take(self.marks.widened(self._in_hand - CORNERS, by))
            else:
                self._take(self.marks.nudged(self._in_hand, by))

    def focusNextPrevChild(self, forward: bool) -> bool:  # noqa: FBT001 - Qt's own signature
        """Let Tab go from corner to corner and on to the boxes, and leave after the last."""
        following = self._in_hand + (1 if forward else -1)
        if self.marks is None or not 0 <= following < self.marks.things:
            return super().focusNextPrevChild(forward)
        self._hold(following)
        return True

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Take the first corner in hand when Tab comes, the last thing when it comes backwards."""
        if self.marks is not None and event.reason() == Qt.FocusReason.TabFocusReason:
            self._hold(0)
        elif self.marks is not None and event.reason() == Qt.FocusReason.BacktabFocusReason:
            self._hold(self.marks.things - 1)
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Show that the keys go elsewhere."""
        super().focusOutEvent(event)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the photo, the marks on it, and what is in hand magnified."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), SURROUND)
        if self.marks is None or self._photo is None:
            painter.setPen(QColor(255, 255, 255))
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, tr("No photo yet"))
            return
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(self._area, self._image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        draw_marks(painter, self.marks, self._read, place=self.place, in_hand=self._in_hand)
        is_dragged = self._grip is not None and self._grip.kind == "corner"
        if self._in_hand < CORNERS and (is_dragged or self.hasFocus()):
            corner = self.marks.corners[self._in_hand]
            draw_magnified(
                painter, self._photo, corner, rect=QRectF(self.rect()), at=self.place(corner), scale=self.scale
            )

    # --- upkeep

    def _take(self, marks: Marks) -> None:
        if marks != self.marks:
            self.marks = marks
            self.update()
            self.changed.emit()

    def _hold(self, thing: int) -> None:
        self._in_hand = thing
        self.setAccessibleDescription(self._hand_words())
        self.chosen.emit(thing - CORNERS if thing >= CORNERS else -1)
        self.update()

    def _hand_words(self) -> str:
        if self._in_hand < CORNERS:
            return tr("Corner {0} of the target is in hand").format(self._in_hand + 1)
        return tr("The box of skein {0} is in hand").format(self._in_hand - CORNERS + 1)
