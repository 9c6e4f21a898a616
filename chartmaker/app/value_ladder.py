"""The value ladder: letters at their height on the L* axis, joined as thickly as the boundary that they share."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QHelpEvent,
    QPainter,
    QPainterPath,
    QPainterPathStroker,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QToolTip, QWidget

from chartmaker.app import shades
from chartmaker.app.ladder_layout import Bow, Rung, bows, rungs
from chartmaker.app.letter_menu import patch
from chartmaker.app.views import view_named
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting

AXIS_LEFT = 30
PATCH_LEFT = 40
PATCH = (30, 17)
AIR = 16
LEAST_OPENING = 22
"""Between the two ends of a bow, in window units."""
GAP, MARK = 13.0, 7.5
"""Half of the gap that breaks a bow, and of the mark in it, in window units."""
INK = QColor(0, 0, 0)


class ValueLadder(QWidget):
    """Painted on the neutral surround, since shades are judged on it."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self._units = document, units
        self._view, self._severity = "shade", 1.0
        self.setAccessibleName(tr("Value ladder"))
        self.setMinimumHeight(150)
        for signal in (document.appraised, units.changed):
            signal.connect(self._follow)
        self._follow()

    def sizeHint(self) -> QSize:
        """Ask for room enough to tell ten steps of value apart."""
        return QSize(200, 260)

    def show_view(self, view: str, severity: float) -> None:
        """Show patches as a view of the chart does; grey where that shows no colour at all."""
        self._view = "value" if view_named(view).tint == "paper" else view
        self._severity = severity
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint axis, bows and letters."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), shades.SURROUND)
        self._paint_axis(painter)
        placed = self._rungs()
        if not placed:
            painter.setPen(INK)
            painter.drawText(
                self.rect().adjusted(AXIS_LEFT + 12, 8, -8, -8),
                Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap,
                tr("Letters stand here at the height of their value once they have lots with readings."),
            )
        for bow in bows(self.document.appraisal, placed):
            self._paint_bow(painter, bow)
        for rung in placed:
            colour = shades.letter_colour(
                self.document.appraisal, rung.letter, view=self._view, severity=self._severity
            )
            patch(painter, self._patch(rung), colour, rung.letter)

    def _rungs(self) -> tuple[Rung, ...]:
        return rungs(self.document.appraisal, height=self._axis_height(), least_gap=PATCH[1] + 2)

    def _axis_height(self) -> float:
        return self.height() - 2 * AIR

    def _y(self, value: float) -> float:
        return AIR + self._axis_height() * (1 - value / 100)

    def _patch(self, rung: Rung) -> QRectF:
        return QRectF(
            PATCH_LEFT + rung.lane * (PATCH[0] + 4) + 0.5, round(self._y(rung.value) - PATCH[1] / 2) + 0.5, *PATCH
        )

    def _paint_axis(self, painter: QPainter) -> None:
        painter.setPen(INK)
        painter.drawLine(QPointF(AXIS_LEFT, self._y(100)), QPointF(AXIS_LEFT, self._y(0)))
        small = painter.font()
        small.setPointSizeF(small.pointSizeF() * 0.88)
        painter.setFont(small)
        for value in range(0, 101, 10):
            y = self._y(value)
            is_named = value % 50 == 0 or (value % 20 == 0 and self._axis_height() > 180)
            painter.drawLine(QPointF(AXIS_LEFT - (5 if is_named else 3), y), QPointF(AXIS_LEFT, y))
            if is_named:
                box = QRectF(0, y - 8, AXIS_LEFT - 7, 16)
                painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, str(value))

    def _path(self, bow: Bow) -> QPainterPath:
        """Give the bow from one letter to the other, bulging to the right by the way that it spans."""
        high, low = self._patch(bow.high), self._patch(bow.low)
        # Letters of like value stand side by side; a bow that opens a little still shows between them.
        apart = max(0.0, (LEAST_OPENING - (low.center().y() - high.center().y())) / 2)
        start = QPointF(high.right() + 1, high.center().y() - apart)
        end = QPointF(low.right() + 1, low.center().y() + apart)
        span = abs(end.y() - start.y())
        room = self.width() - 14 - max(start.x(), end.x())
        bulge = max(start.x(), end.x()) + min(room, 30 + span * 0.6) * 4 / 3
        path = QPainterPath(start)
        path.cubicTo(QPointF(bulge, start.y()), QPointF(bulge, end.y()), end)
        return path

    def _paint_bow(self, painter: QPainter, bow: Bow) -> None:
        """Draw a bow whole when clear, dashed when soft, broken with a mark when lost."""
        path = self._path(bow)
        middle = path.pointAtPercent(0.5)
        painter.save()
        if bow.pair.grade == "lost":
            painter.setClipPath(self._all_but(middle))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        # An edge in the surround's grey keeps bows that cross apart.
        painter.setPen(QPen(shades.SURROUND, bow.thickness + 3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        painter.drawPath(path)
        pen = QPen(INK, bow.thickness, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap)
        if bow.pair.grade == "soft":
            pen.setDashPattern([max(1.0, 7 / bow.thickness), max(0.6, 3.5 / bow.thickness)])
        painter.setPen(pen)
        painter.drawPath(path)
        painter.restore()
        if bow.pair.grade == "lost":
            _paint_mark(painter, middle)

    def _all_but(self, middle: QPointF) -> QPainterPath:
        """Give the ladder without the gap that breaks a bow."""
        everything, gap = QPainterPath(), QPainterPath()
        everything.addRect(QRectF(self.rect()))
        gap.addEllipse(middle, GAP, GAP)
        return everything - gap

    def words(self, bow: Bow) -> str:
        """Tell a pair as a sentence."""
        low, high = bow.pair.value_difference_low, bow.pair.value_difference
        if low is None or high is None:
            return ""
        return tr("{0} and {1}: {2}, value differs by {3}, at least {4}; edge {5}").format(
            *bow.pair.letters,
            tr(bow.pair.grade),
            number(high, 1),
            number(low, 1),
            self._units.units.yarn.told(bow.pair.drawn_cm / 100),
        )

    def event(self, event: QEvent) -> bool:
        """Tell the letter or the pair under the pointer."""
        if isinstance(event, QHelpEvent):
            QToolTip.showText(event.globalPos(), self._words_at(QPointF(event.pos())), self)
            return True
        return super().event(event)

    def _words_at(self, point: QPointF) -> str:
        placed = self._rungs()
        for rung in placed:
            if self._patch(rung).contains(point):
                return tr("{0}: value {1}").format(rung.letter, number(rung.value, 1))
        for bow in bows(self.document.appraisal, placed):
            stroker = QPainterPathStroker()
            stroker.setWidth(bow.thickness + 6)
            if stroker.createStroke(self._path(bow)).contains(point):
                return self.words(bow)
        return ""

    def _follow(self) -> None:
        placed = self._rungs()
        letters = [tr("{0} at {1}").format(rung.letter, number(rung.value)) for rung in placed]
        pairs = [self.words(bow) for bow in bows(self.document.appraisal, placed)]
        self.setAccessibleDescription(". ".join([", ".join(letters), *pairs]))
        self.update()


def _paint_mark(painter: QPainter, middle: QPointF) -> None:
    """Set the mark of a lost pair into the gap of its bow; other bows may pass behind it."""
    painter.save()
    painter.setPen(QPen(INK, 1))
    painter.setBrush(shades.UNKNOWN)
    painter.drawEllipse(middle, MARK, MARK)
    font = painter.font()
    font.setBold(True)
    painter.setFont(font)
    painter.drawText(QRectF(middle.x() - 9, middle.y() - 9, 18, 18), Qt.AlignmentFlag.AlignCenter, "!")
    painter.restore()
