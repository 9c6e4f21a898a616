"""The mouse and the keys at the chart while the tool that selects is held: events become cells of the block tool."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QMouseEvent

from chartmaker.app.row_menu import row_menu

if TYPE_CHECKING:
    from chartmaker.app.block_desk import BlockDesk
    from chartmaker.model.shapes import Cell


class BlockGestures(QObject):
    """Watches a canvas, and takes what concerns blocks before the canvas does."""

    def __init__(self, desk: BlockDesk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._canvas = desk.canvas
        self._tool = desk.tool
        self._is_pressed = False
        """Whether the first button is down over the fabric."""
        self._is_menu_due = True
        """Whether the second button asks for the menu: not where it dropped a gesture."""
        self._canvas.hovered.connect(self._hover)
        self._canvas.hand_changed.connect(self._shape_pointer)
        self._canvas.installEventFilter(self)
        self._canvas.viewport().installEventFilter(self)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Tell whether an event is dealt with here."""
        kind = event.type()
        if kind == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            return self._takes_key(event)
        if not self._desk.is_held:
            return False
        if kind == QEvent.Type.ContextMenu and isinstance(event, QContextMenuEvent):
            return self._takes_menu(event)
        if kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonDblClick) and isinstance(event, QMouseEvent):
            return self._takes_press(event)
        if kind == QEvent.Type.MouseMove and isinstance(event, QMouseEvent):
            self._move(self._canvas.frame.cell_at(event.position()))
        if kind == QEvent.Type.MouseButtonRelease and isinstance(event, QMouseEvent):
            self._release(event)
        return False

    # --- the mouse

    def _takes_press(self, event: QMouseEvent) -> bool:
        canvas, tool = self._canvas, self._tool
        is_first = event.button() == Qt.MouseButton.LeftButton
        is_on_fabric = canvas.frame.area.contains(event.position())
        self._is_menu_due = not tool.is_busy
        if not is_first or not is_on_fabric or self._is_pressed:
            was_busy, self._is_pressed = tool.is_busy, False
            canvas.drop()
            return was_busy or is_on_fabric
        cell = canvas.frame.cell_at(event.position())
        is_copy = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        canvas.put_cursor_under(cell)
        tool.press(cell, self._desk.document.design, canvas.grid, is_copy=is_copy)
        self._is_pressed = True
        self._desk.show()
        self._shape_pointer(cell)
        return True

    def _move(self, cell: Cell) -> None:
        if self._is_pressed:
            self._tool.move(cell, self._canvas.grid)
            self._desk.show()
        self._shape_pointer(cell)

    def _shape_pointer(self, cell: Cell | None = None) -> None:
        """Let the pointer tell whether a press would mark a block or take one up."""
        is_over = self._desk.is_held and cell is not None and self._tool.holds(cell, self._canvas.grid)
        if self._tool.load is not None:
            shape = Qt.CursorShape.ClosedHandCursor
        else:
            shape = Qt.CursorShape.OpenHandCursor if is_over else Qt.CursorShape.CrossCursor
        if self._canvas.viewport().cursor().shape() != shape:
            self._canvas.viewport().setCursor(shape)

    def _release(self, event: QMouseEvent) -> None:
        if not self._is_pressed or event.button() != Qt.MouseButton.LeftButton:
            return
        self._is_pressed = False
        if self._tool.is_marking:
            self._tool.end_mark()
            self._desk.show()
        elif self._tool.load is not None:
            self._desk.set_down()
        self._shape_pointer(self._canvas.frame.cell_at(event.position()))

    def _hover(self, cell: Cell | None) -> None:
        """Let a pasted piece follow the pointer."""
        load = self._tool.load
        if cell is not None and load is not None and load.source is None and not self._is_pressed:
            self._tool.move(cell, self._canvas.grid)
            self._desk.show()

    def _takes_menu(self, event: QContextMenuEvent) -> bool:
        canvas = self._canvas
        if event.reason() == QContextMenuEvent.Reason.Keyboard:
            at = canvas.viewport().mapToGlobal(canvas.frame.box(*canvas.current).bottomLeft().toPoint())
        elif canvas.frame.area.contains(event.pos().toPointF()):
            at = event.globalPos()
        else:
            return False
        if self._is_menu_due:
            row_menu(canvas, self._desk.actions).popup(at)
        self._is_menu_due = True
        return True

    # --- the keys

    def _takes_key(self, event: QKeyEvent) -> bool:
        if event.key() == Qt.Key.Key_Escape:
            return self._takes_escape()
        if not self._desk.is_held:
            return False
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            if not event.isAutoRepeat():
                self._act_at_cursor()
            return True
        from chartmaker.app.chart_canvas import moves

        step = moves().get(Qt.Key(event.key()))
        if step is None or event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            return False
        if self._tool.load is not None:
            self._tool.carry(step, self._canvas.grid)
        elif event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self._tool.grow(self._canvas.current, step, self._canvas.grid)
        else:
            self._desk.forget()
            return False
        self._bring_cursor(self._tool.at)
        self._desk.show()
        return True

    def _takes_escape(self) -> bool:
        """Drop the gesture, or else select nothing; tell whether there was either."""
        hand, tool = self._canvas.hand, self._tool
        if tool.is_busy:
            self._is_pressed = False
            self._canvas.drop()
        elif tool.block is not None and not hand.is_busy and not hand.holds_stamp:
            self._desk.forget()
        else:
            return False
        return True

    def _act_at_cursor(self) -> None:
        """Set down what is carried, or take the block up; where nothing is selected, select the stitch there."""
        canvas, tool = self._canvas, self._tool
        if tool.load is not None:
            self._desk.set_down()
        elif tool.block is not None:
            row = canvas.grid.row_of(tool.block.band, tool.block.first)
            tool.lift((row, tool.block.column), self._desk.document.design, canvas.grid)
            self._bring_cursor(tool.at)
            self._desk.show()
        else:
            tool.grow(canvas.current, (0, 0), canvas.grid)
            self._desk.show()

    def _bring_cursor(self, cell: Cell) -> None:
        """Put the cursor where a cell shows, in the live repeat."""
        row = self._canvas.grid.rows[cell[0]]
        self._canvas.go_to(cell[0], cell[1] % row.width - row.offset)
