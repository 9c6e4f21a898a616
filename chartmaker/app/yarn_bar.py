"""What a letter needs against what is there, as a bar: the stock as a trough, the need on it, what is short beyond."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPalette, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtCore import QObject

SIDE, TROUGH, NEED = 6.0, 12.0, 6.0
"""Room at either side, and the heights of stock and need, in window units."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Amounts:
    """The weights of one bar, in grams."""

    low_g: float
    likely_g: float
    high_g: float
    planned_g: float
    on_hand_g: float

    @property
    def most_g(self) -> float:
        """What the scale must reach."""
        return max(self.planned_g, self.on_hand_g)


class BarDelegate(QStyledItemDelegate):
    """Paints the bars of a column; a row beyond the amounts has none."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._amounts: Sequence[Amounts] = ()
        self._most_g = 0.0

    def show_amounts(self, amounts: Sequence[Amounts], *, most_g: float) -> None:
        """Take the amounts of the rows, and what the whole width stands for."""
        self._amounts, self._most_g = amounts, most_g

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Paint the cell's ground and its bar."""
        super().paint(painter, option, index)
        if index.row() >= len(self._amounts) or self._most_g <= 0:
            return
        is_chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        role = QPalette.ColorRole.HighlightedText if is_chosen else QPalette.ColorRole.Text
        ink = option.palette.color(role)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_bar(painter, QRectF(option.rect), self._amounts[index.row()], ink)
        painter.restore()

    def _paint_bar(self, painter: QPainter, cell: QRectF, amounts: Amounts, ink: QColor) -> None:
        scale = (cell.width() - 2 * SIDE) / self._most_g
        left, middle = cell.left() + SIDE, cell.center().y()

        def strip(first_g: float, last_g: float, height: float) -> QRectF:
            return QRectF(left + first_g * scale, middle - height / 2, max(0.0, last_g - first_g) * scale, height)

        painter.setPen(QPen(_faint(ink, 150), 1))
        painter.setBrush(_faint(ink, 28))
        painter.drawRect(strip(0, amounts.on_hand_g, TROUGH))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(ink)
        painter.drawRect(strip(0, amounts.low_g, NEED))
        painter.setBrush(_faint(ink, 130))
        painter.drawRect(strip(amounts.low_g, amounts.high_g, NEED))
        painter.setBrush(_faint(ink, 60))
        painter.drawRect(strip(amounts.high_g, amounts.planned_g, NEED))
        if amounts.planned_g > amounts.on_hand_g:
            painter.setPen(QPen(ink, 1))
            painter.setBrush(QBrush(ink, Qt.BrushStyle.BDiagPattern))
            painter.drawRect(strip(amounts.on_hand_g, amounts.planned_g, TROUGH))


def _faint(ink: QColor, alpha: int) -> QColor:
    return QColor(ink.red(), ink.green(), ink.blue(), alpha)
