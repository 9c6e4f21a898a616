"""The chart that is drawn on, by mouse and by keys: events become cells, and cells become the hand's gestures."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, Signal

from chartmaker.app.chart_view import ChartView
from chartmaker.app.hand import Hand
from chartmaker.app.words import tr
from chartmaker.model.stitches import Part

if TYPE_CHECKING:
    from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QWheelEvent
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.open_design import OpenDesign


@cache
def moves() -> dict[Qt.Key, tuple[int, int]]:
    """Give how many rounds and stitches a key moves the cursor by; knitting runs right to left.

    A function, since naming the first key makes Qt's whole list of them, which the start can do without.
    """
    return {
        Qt.Key.Key_Up: (1, 0),
        Qt.Key.Key_Down: (-1, 0),
        Qt.Key.Key_Left: (0, 1),
        Qt.Key.Key_Right: (0, -1),
        Qt.Key.Key_PageUp: (10, 0),
        Qt.Key.Key_PageDown: (-10, 0),
    }


class ChartCanvas(ChartView):
    """A chart view with a hand at it."""

    hovered = Signal(object)
    """The `(row, column)` under the pointer or the cursor, or None."""
    hand_changed = Signal()
    """Another part is drawn, or another tool is held."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(document, parent)
        self.hand = Hand()
        self._button = Qt.MouseButton.NoButton
        self.setAccessibleName(tr("Chart"))
        self.setAccessibleDescription(
            tr("Arrow keys move the cursor, Space or Enter draws, X draws ground, Escape drops a gesture.")
        )
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().setMouseTracking(True)
        self.viewport().setCursor(Qt.CursorShape.CrossCursor)
        document.replaced.connect(self.hand.cancel)

    def take_tool(self, name: str) -> None:
        """Hold another tool; a gesture under way is dropped."""
        self.drop()
        self.hand.take(name)
        self.hand_changed.emit()

    def take_part(self, part: Part) -> None:
        """Draw another part."""
        self.hand.part = part
        self.hand_changed.emit()

    def drop(self) -> None:
        """Drop the gesture under way: the chart is as it was."""
        self._button = Qt.MouseButton.NoButton
        self.hand.cancel()
        self.show_design(self.document.design)

    def draw_ground_here(self) -> None:
        """Draw one stitch of ground at the cursor."""
        self._begin(self.current, Part.GROUND)
        self._finish()

    def _begin(self, cell: tuple[int, int], part: Part) -> None:
        self.hand.press(cell, part)
        self.show_design(self.hand.preview(self.document.design, self._grid))

    def _go_on(self, cell: tuple[int, int]) -> None:
        self.hand.move(cell)
        self.show_design(self.hand.preview(self.document.design, self._grid))

    def _finish(self) -> None:
        self._button = Qt.MouseButton.NoButton
        edit = self.hand.release(self.document.design, self._grid)
        if edit is None:
            self.show_design(self.document.design)
            if not self.hand.paints:
                self.hand_changed.emit()
        else:
            self.document.do(edit)

    # --- Qt's own events

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin a gesture; another button during one drops it."""
        if self.hand.is_busy:
            self.drop()
            return
        cell = self.frame.cell_at(event.position())
        part = {Qt.MouseButton.LeftButton: self.hand.part, Qt.MouseButton.RightButton: self.hand.opposite}.get(
            event.button()
        )
        if part is None or not self.frame.area.contains(event.position()):
            return
        self._button = event.button()
        self._put_cursor_under(cell)
        self._begin(cell, part)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Tell what is under the pointer, and go on with a gesture."""
        cell = self.frame.cell_at(event.position())
        if self._button != Qt.MouseButton.NoButton:
            self._go_on(cell)
        self.hovered.emit(cell if self.frame.area.contains(event.position()) else None)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """End the gesture of the button that began it."""
        if event.button() == self._button and self.hand.is_busy:
            self._finish()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom at the pointer while Ctrl is held; otherwise scroll."""
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            if event.angleDelta().y():
                self.zoom(1 if event.angleDelta().y() > 0 else -1, event.position())
            event.accept()
        else:
            super().wheelEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move the cursor, draw at it, or drop a gesture."""
        key = Qt.Key(event.key())
        if key in moves() and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._step(*moves()[key])
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            row = self.current[0]
            self.go_to(row, 0 if key == Qt.Key.Key_Home else self._grid.rows[row].length - 1)
            self.hovered.emit(self.current)
        elif key in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self._draw_by_key()
        elif key == Qt.Key.Key_Escape and self.hand.is_busy:
            self.drop()
        else:
            super().keyPressEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """Forget what was under the pointer."""
        super().leaveEvent(event)
        self.hovered.emit(None)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show the cursor as the place where keys act."""
        super().focusInEvent(event)
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Show the cursor as resting."""
        super().focusOutEvent(event)
        self.viewport().update()

    def _step(self, rounds: int, stitches: int) -> None:
        """Move the cursor within the live repeat, and the far end of a gesture with it."""
        row = min(max(self.current[0] + rounds, 0), len(self._grid.rows) - 1)
        at = self._grid.rows[row]
        column = min(max(self.current[1] + stitches, at.offset), at.offset + at.length - 1)
        self._move_cursor((row, column))
        if self.hand.is_busy:
            self._go_on(self.current)
        self.hovered.emit(self.current)

    def _draw_by_key(self) -> None:
        """Draw one stitch; with the line tool, the first press begins and the second ends."""
        if self.hand.is_busy:
            self._finish()
            return
        self._begin(self.current, self.hand.part)
        if self.hand.tool.name != "line":
            self._finish()

    def _put_cursor_under(self, cell: tuple[int, int]) -> None:
        spot = self.spot_at(cell)
        if spot is not None:
            row = cell[0]
            self.current = (row, self._grid.column_of(row, spot.stitch))
            self._mark_current_row()
            self.cursor_moved.emit()
