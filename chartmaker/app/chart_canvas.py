"""The chart that is drawn on, by mouse and by keys: events become cells, and cells become the hand's gestures."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QContextMenuEvent

from chartmaker.app.block_desk import BlockDesk
from chartmaker.app.block_gestures import BlockGestures
from chartmaker.app.chart_view import ChartView
from chartmaker.app.chosen_rounds import rows_of_band
from chartmaker.app.control_keys import keys_of
from chartmaker.app.edge_scroll import EdgeScroll
from chartmaker.app.hand import Hand
from chartmaker.app.hover_preview import HoverPreview
from chartmaker.app.mirror_lines import paint_axes
from chartmaker.app.row_menu import row_menu
from chartmaker.app.words import tr
from chartmaker.model.stitches import Part

if TYPE_CHECKING:
    from PySide6.QtGui import QAction, QFocusEvent, QKeyEvent, QMouseEvent, QPaintEvent, QWheelEvent
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.stitches import Shaping


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
    refused = Signal(str)
    """What could not be done, as a sentence; nothing was changed."""
    told = Signal(str)
    """What drawing does from now on, as a sentence."""
    stamped = Signal(object)
    """The `(row, column)` at which a motif was set down."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(document, parent)
        self.units = units
        """What lengths are told in."""
        self.hand = Hand()
        self._button = Qt.MouseButton.NoButton
        self._frame_before, self._cursor_before = self.frame, self.current
        """What the hand's cells refer to, and where the cursor stood, when its gesture began."""
        self.is_choosing = False
        """Whether rounds are being chosen among their numbers."""
        self.row_actions: tuple[tuple[QAction, ...], ...] = ()
        """Groups of the menu of a round."""
        self.setAccessibleName(tr("Chart"))
        self.setWhatsThis("\n".join(f"{tr(entry.keys)}: {tr(entry.what)}" for entry in keys_of("The chart")))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().setMouseTracking(True)
        self.viewport().setCursor(Qt.CursorShape.CrossCursor)
        document.replaced.connect(self.hand.cancel)
        self.blocks = BlockDesk(self)
        BlockGestures(self.blocks)
        self.hover = HoverPreview(self)
        self.edge_scroll = EdgeScroll(self)

    def take_tool(self, name: str) -> None:
        """Hold another tool; a gesture under way is dropped."""
        self.drop()
        self.hand.take(name)
        self.hand_changed.emit()

    def take_part(self, part: Part) -> None:
        """Draw another part; a hand that shapes or stamps takes up drawing."""
        self.hand.part = part
        self.take_tool("draw" if self.hand.sign_held is not None or self.hand.holds_stamp else self.hand.tool.name)

    def take_sign(self, sign: Shaping) -> None:
        """Shape stitches, with this sign."""
        self.hand.sign = sign
        self.take_tool("shape")

    def drop(self) -> None:
        """Drop the gesture under way: the chart is as it was."""
        self._button = Qt.MouseButton.NoButton
        if self.hand.is_busy and self.hand.sign_held is not None:
            # Its preview may have moved the stitch that the cursor was on.
            self.current = self._cursor_before
        self.hand.cancel()
        self.blocks.cancel()
        self.show_design(self.document.design)

    def draw_ground_here(self) -> None:
        """Draw one stitch of ground at the cursor."""
        self.drop()
        self.document.do(self.hand.stitch_drawn(self.current, Part.GROUND, self.document.design, self._grid))

    def _begin(self, cell: tuple[int, int], *, is_second: bool = False) -> None:
        """Begin a gesture on the chart as it stands; its preview may move stitches, but not the cells it is given."""
        self._frame_before, self._cursor_before = self.frame, self.current
        if is_second:
            self.hand.press_second(cell)
        else:
            self.hand.press(cell)
        self._show_preview()

    def _go_on(self, cell: tuple[int, int]) -> None:
        self.hand.move(cell)
        self._show_preview()

    def _show_preview(self) -> None:
        self.show_design(self.hand.preview(self.document.design, self._frame_before.grid))

    def _finish(self) -> None:
        self._button = Qt.MouseButton.NoButton
        cells = self.hand.cells
        try:
            edit = self.hand.release(self.document.design, self._frame_before.grid)
        except ValueError as refusal:
            self.drop()
            self.refused.emit(str(refusal))
            return
        if edit is None:
            self.show_design(self.document.design)
            if not self.hand.paints:
                self.hand_changed.emit()
            return
        self.document.do(edit)
        if self.hand.holds_stamp:
            self.stamped.emit(cells[0])
        if self.hand.landed is not None:
            self.go_to(self._grid.row_of(self.hand.landed.band, self.hand.landed.index), self.hand.landed.stitch)
            self.hovered.emit(self.current)

    # --- Qt's own events

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the axes, and the line round the selected block, over the chart and its cursor."""
        super().paintEvent(event)
        paint_axes(self.viewport(), self.frame, self.hand.axes)
        self.blocks.paint()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin a gesture, or choose rounds beside the fabric; another button during a gesture drops it."""
        if self.hand.is_busy:
            self.drop()
            return
        if not self.frame.area.contains(event.position()):
            self._press_beside(event)
            return
        if event.button() not in (Qt.MouseButton.LeftButton, Qt.MouseButton.RightButton):
            return
        if event.button() == Qt.MouseButton.RightButton and self.hand.holds_stamp:
            self.take_tool("draw")
            return
        cell = self.frame.cell_at(event.position())
        self._button = event.button()
        self.put_cursor_under(cell)
        self._begin(cell, is_second=event.button() == Qt.MouseButton.RightButton)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Tell what is under the pointer, and go on with a gesture."""
        frame = self.frame
        if self._button != Qt.MouseButton.NoButton:
            before = self._frame_before
            self._go_on(replace(frame, grid=before.grid).cell_at(event.position()))
        elif self.is_choosing:
            self.reach_to(frame.cell_at(event.position())[0])
        self.hovered.emit(frame.cell_at(event.position()) if frame.area.contains(event.position()) else None)

    def _press_beside(self, event: QMouseEvent) -> None:
        """Choose the round at a number, more with Shift or by a drag, and a whole band at its name."""
        row = self.frame.row_beside(event.position())
        if row is None or (event.button() == Qt.MouseButton.RightButton and row in self.chosen):
            return
        if event.position().x() < self.frame.area.left():
            self.choose(rows_of_band(self._grid, row))
        elif event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self.reach_to(row)
        else:
            self.go_to(row, self._stitch_near())
        self.is_choosing = event.button() == Qt.MouseButton.LeftButton

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Offer what can be done with the round: beside the fabric, where the second button draws, or by its key."""
        if event.reason() == QContextMenuEvent.Reason.Keyboard:
            at = self.viewport().mapToGlobal(self.frame.box(*self.current).bottomLeft().toPoint())
            row_menu(self, self.row_actions).popup(at)
        elif self.frame.row_beside(QPointF(event.pos())) is not None:
            row_menu(self, self.row_actions).popup(event.globalPos())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """End the gesture of the button that began it."""
        self.is_choosing = False
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
        rounds, stitches = moves().get(key, (0, 0))
        if rounds and event.modifiers() & Qt.KeyboardModifier.ShiftModifier and not self.hand.is_busy:
            self.reach_to(self.current[0] + rounds)
            self.hovered.emit(self.current)
        elif key in moves() and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._step(rounds, stitches)
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            row = self.current[0]
            self.go_to(row, 0 if key == Qt.Key.Key_Home else self._grid.rows[row].length - 1)
            self.hovered.emit(self.current)
        elif key in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat():
            self._draw_by_key()
        elif key == Qt.Key.Key_Escape and self.hand.is_busy:
            self.drop()
        elif key == Qt.Key.Key_Escape and self.hand.holds_stamp:
            self.take_tool("draw")
        elif key == Qt.Key.Key_Escape and (self.is_choosing or len(self.chosen) > 1):
            self.is_choosing = False
            self.go_to(self.current[0], self._stitch_near())
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
        """Draw one stitch; with a tool of two ends, the first press begins and the second ends."""
        if self.hand.is_busy:
            self._finish()
            return
        self._begin(self.current)
        if not self.hand.tool.needs_two_presses:
            self._finish()

    def put_cursor_under(self, cell: tuple[int, int]) -> None:
        """Make the stitch that a cell shows the current one without scrolling; a cell without a stitch does nothing."""
        spot = self._grid.open_spot(*cell)
        if spot is not None:
            row = cell[0]
            self.current, self._anchor = (row, self._grid.column_of(row, spot.stitch)), None
            self._mark_cursor()
            self.cursor_moved.emit()
