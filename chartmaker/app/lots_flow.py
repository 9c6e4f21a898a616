"""Lots as skeins on the neutral surround, in rows that break where the room ends."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QItemSelection, QItemSelectionModel, QPoint, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QDrag, QPainter, QPalette, QPen, QPixmap, QPolygonF
from PySide6.QtWidgets import QListView, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from chartmaker.app.lots_model import Index, LotsModel
from chartmaker.app.lots_skein import skein_pixmap
from chartmaker.app.shades import SURROUND, UNKNOWN
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtCore import QEvent, QModelIndex
    from PySide6.QtGui import QResizeEvent

    from chartmaker.app.lots_lines import LotLine

TILE = QSize(158, 108)
SKEIN = QSize(132, 50)
HEADING_HEIGHT = 30
INK = QColor(0, 0, 0)
MOST_PICKED = 2


class LotsFlow(QListView):
    """One view that paints all skeins; one lot is picked, or two with Ctrl or Shift, the first being the reference."""

    picked_changed = Signal(tuple)
    """The ids of the lots that are picked now, the reference first."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.lots = LotsModel()
        self.picked: tuple[str, ...] = ()
        self._is_settling = False
        self.setModel(self.lots)
        self.setItemDelegate(SkeinDelegate(self))
        self.setAccessibleName(tr("Lots as skeins"))
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setSelectionMode(QListView.SelectionMode.ExtendedSelection)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.verticalScrollBar().setSingleStep(TILE.height() // 3)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setDragEnabled(True)
        self.setFrameShape(QListView.Shape.NoFrame)
        colours = self.palette()
        colours.setColor(QPalette.ColorRole.Base, SURROUND)
        self.setPalette(colours)

    def show_lines(self, lines: Sequence[LotLine], *, is_grouped: bool) -> None:
        """Show these lots; those that were picked stay so where they are still shown."""
        current = self.lots.line(self.currentIndex())
        self._is_settling = True
        self.lots.show_lines(lines, is_grouped=is_grouped)
        self._select(self.picked)
        place = self.lots.place_of(current.lot.id) if current else self.lots.index(-1)
        if place.isValid():
            self.selectionModel().setCurrentIndex(place, QItemSelectionModel.SelectionFlag.NoUpdate)
        self._is_settling = False

    def pick(self, lot_ids: Sequence[str]) -> None:
        """Pick these lots, without telling anybody, and bring the last of them into sight."""
        self._is_settling = True
        self.picked = tuple(lot_ids)
        self._select(self.picked)
        self._is_settling = False
        place = self.lots.place_of(lot_ids[-1]) if lot_ids else self.lots.index(-1)
        if place.isValid():
            self.selectionModel().setCurrentIndex(place, QItemSelectionModel.SelectionFlag.NoUpdate)
            self.scrollTo(place)
        self.viewport().update()

    def _select(self, lot_ids: Sequence[str]) -> None:
        chosen = QItemSelection()
        for place in map(self.lots.place_of, lot_ids):
            if place.isValid():
                chosen.select(place, place)
        self.selectionModel().select(chosen, QItemSelectionModel.SelectionFlag.ClearAndSelect)

    def selectionCommand(self, index: Index, event: QEvent | None = None) -> QItemSelectionModel.SelectionFlag:
        """Pick one lot alone, or a second with Ctrl or Shift: never the lots between them."""
        flags = QItemSelectionModel.SelectionFlag
        command = super().selectionCommand(index, event)
        if command & flags.Current or (command & flags.Select and not command & flags.Clear):
            return flags.Select
        return command & ~flags.Current

    def selectionChanged(self, selected: QItemSelection, deselected: QItemSelection) -> None:
        """Keep two at most: the reference, and the last that was picked."""
        super().selectionChanged(selected, deselected)
        if self._is_settling:
            return
        lines = [line for line in map(self.lots.line, self.selectedIndexes()) if line]
        now = {line.lot.id for line in lines}
        kept = [lot_id for lot_id in self.picked if lot_id in now]
        picked = kept + [line.lot.id for line in lines if line.lot.id not in kept]
        if len(picked) > MOST_PICKED:
            picked = [picked[0], picked[-1]]
            self._is_settling = True
            self._select(picked)
            self._is_settling = False
        self.picked = tuple(picked)
        self.viewport().update()
        self.picked_changed.emit(self.picked)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let headings be as wide as the view."""
        super().resizeEvent(event)
        self.scheduleDelayedItemsLayout()

    def startDrag(self, supported: Qt.DropAction) -> None:
        """Drag the lot under the pointer as a skein."""
        line = self.lots.line(self.currentIndex())
        if line is None:
            return
        drag = QDrag(self)
        drag.setMimeData(self.lots.mimeData([self.currentIndex()]))
        drag.setPixmap(pixmap_of(line, self.devicePixelRatioF()))
        drag.setHotSpot(QPoint(SKEIN.width() // 2, SKEIN.height() // 2))
        drag.exec(supported, Qt.DropAction.CopyAction)


class SkeinDelegate(QStyledItemDelegate):
    """Paints one skein with its name and what it rests on, or the heading of a group."""

    def __init__(self, flow: LotsFlow) -> None:
        super().__init__(flow)
        self._flow = flow

    def sizeHint(self, _option: QStyleOptionViewItem, index: QModelIndex | Index) -> QSize:
        """Give every skein the same room, and a heading a row of its own."""
        if self._flow.lots.heading(index):
            return QSize(max(1, self._flow.viewport().width() - 2), HEADING_HEIGHT)
        width = self._flow.viewport().width() - 2
        return QSize(max(TILE.width(), width // max(1, width // TILE.width())), TILE.height())

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | Index) -> None:
        """Paint a line in its box."""
        painter.save()
        box: QRect = option.rect
        line = self._flow.lots.line(index)
        if line is None:
            font = painter.font()
            font.setBold(True)
            painter.setFont(font)
            painter.setPen(INK)
            inside = box.adjusted(12, 0, -6, -3)
            painter.drawText(
                inside, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom), self._flow.lots.heading(index)
            )
        else:
            is_current = index == self._flow.currentIndex() and self._flow.hasFocus()
            self._paint_line(painter, box, line, is_current=is_current)
        painter.restore()

    def _paint_line(self, painter: QPainter, box: QRect, line: LotLine, *, is_current: bool) -> None:
        picked = self._flow.picked
        frame = QRectF(box).adjusted(3.5, 3.5, -3.5, -3.5)
        if line.lot.id in picked:
            painter.setPen(QPen(INK, 1))
            painter.drawRect(frame)
            painter.setPen(QPen(QColor(255, 255, 255), 2))
            painter.drawRect(frame.adjusted(1.5, 1.5, -1.5, -1.5))
        if is_current:
            painter.setPen(QPen(INK, 1, Qt.PenStyle.DotLine))
            painter.drawRect(frame.adjusted(4, 4, -4, -4))
        left = box.left() + (box.width() - SKEIN.width()) // 2
        painter.drawPixmap(QPoint(left, box.top() + 11), pixmap_of(line, painter.device().devicePixelRatioF()))
        _write(painter, QRectF(box.left() + 10, box.top() + 64, box.width() - 20, 17), line.lot.name, is_strong=True)
        words = line.basis if line.shade is None else f"{number(line.shade.value)}  {line.basis}"
        _write(painter, QRectF(box.left() + 10, box.top() + 81, box.width() - 20, 17), words)
        if line.letters:
            _plate(
                painter,
                QRectF(box.right() - 12 - 10 * len(line.letters), box.top() + 7, 8 + 9 * len(line.letters), 16),
                line.letters,
            )
        if len(picked) == MOST_PICKED and line.lot.id in picked:
            _plate(painter, QRectF(box.left() + 7, box.top() + 7, 16, 16), str(picked.index(line.lot.id) + 1))
        if line.shade and line.shade.is_out_of_gamut:
            draw_beyond(painter, QRectF(box.right() - 24, box.top() + 48, 14, 12))


def pixmap_of(line: LotLine, ratio: float) -> QPixmap:
    """Give a lot's skein."""
    rgb = QColor(*line.shade.srgb).rgb() if line.shade else None
    is_planned = line.lot.planned is not None
    return skein_pixmap(rgb, SKEIN.width(), SKEIN.height(), ratio, is_planned=is_planned)


def draw_beyond(painter: QPainter, box: QRectF) -> None:
    """Draw the sign of a shade that the screen cannot show: a triangle with a stroke in it."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(INK, 1.2))
    painter.setBrush(UNKNOWN)
    top = box.center()
    top.setY(box.top())
    painter.drawPolygon(QPolygonF([box.bottomLeft(), top, box.bottomRight()]))
    painter.fillRect(QRectF(top.x() - 0.8, box.top() + 4, 1.6, box.height() - 6), INK)
    painter.restore()


def _plate(painter: QPainter, box: QRectF, text: str) -> None:
    painter.setPen(QPen(INK, 1))
    painter.setBrush(QColor(250, 250, 250))
    painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    font = painter.font()
    font.setPixelSize(11)
    font.setBold(True)
    painter.setFont(font)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def _write(painter: QPainter, box: QRectF, text: str, *, is_strong: bool = False) -> None:
    font = painter.font()
    font.setPixelSize(12 if is_strong else 11)
    font.setBold(is_strong)
    painter.setFont(font)
    painter.setPen(INK)
    shown = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, int(box.width()))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, shown)
