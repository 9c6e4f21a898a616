"""The depth of a hat as a bar that stands on its brim: its parts stacked, what is wanted marked beside."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPalette, QPen
from PySide6.QtWidgets import QWidget

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from chartmaker.knit.depth import Depth, Part
    from chartmaker.knit.depth_rules import WantedDepth
    from chartmaker.model.units import Units

BAR_WIDTH, AIR, GAP = 34.0, 8.0, 8.0
TINTS = {"brim": 0.62, "widening": 0.46, "body": 0.28, "crown": 0.46}
"""How much of the text's ink each part's fill has: neighbours differ in value, and no hue tells anything."""
PART_WORDS = {"brim": "brim", "widening": "widening", "body": "body", "crown": "crown"}


def wanted_words(wanted: WantedDepth, units: Units) -> str:
    """Tell what depth is wanted; of a hat that any deeper one is as good as, the least."""
    if wanted.highest_cm is None:
        return tr("at least {0} wanted").format(units.length.told(wanted.lowest_cm))
    return tr("{0} wanted").format(units.length.told(wanted.wanted_cm))


class DepthBar(QWidget):
    """Shows a `Depth`; its words are told to screen readers too."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._depth: Depth | None = None
        self._units: Units | None = None
        self.setAccessibleName(tr("Depth budget"))
        self.setMinimumHeight(150)

    def sizeHint(self) -> QSize:
        """Ask for room for four parts with a line of words each."""
        return QSize(260, 180)

    def show_depth(self, depth: Depth, units: Units) -> None:
        """Show another depth."""
        self._depth, self._units = depth, units
        spoken = [self.words_of(part) for part in depth.parts]
        self.setAccessibleDescription("; ".join([*spoken, self._wanted_words()]))
        self.update()

    def words_of(self, part: Part) -> str:
        """Tell one part: "brim 12 rounds, 3.5 cm"."""
        if self._units is None:
            return ""
        length = self._units.length.told(part.cm)
        text = tr("{0} 1 round, {2}") if part.rounds == 1 else tr("{0} {1} rounds, {2}")
        return text.format(tr(PART_WORDS[part.name]), part.rounds, length)

    def _wanted_words(self) -> str:
        if self._depth is None or self._units is None:
            return ""
        return wanted_words(self._depth.wanted, self._units)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the stack from the worn edge up, the mark across it, and beside it the words of each."""
        if self._depth is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        bottom, scale = self.height() - AIR, self._scale()
        words: list[tuple[float, str]] = []
        for part in self._depth.parts:
            box = QRectF(AIR, bottom - part.cm * scale, BAR_WIDTH, part.cm * scale)
            self._paint_part(painter, part, box)
            words.append((box.center().y(), self.words_of(part)))
            bottom = box.top()
        words.append((self._paint_wanted(painter, scale), "◂ " + self._wanted_words()))
        self._paint_words(painter, words)

    def _scale(self) -> float:
        """Give window units to the cm, so that the hat and what is wanted both have room."""
        if self._depth is None:
            return 1.0
        tallest = max(self._depth.cm, self._depth.wanted.highest_cm or self._depth.wanted.wanted_cm, 1.0)
        return (self.height() - 2 * AIR - self.fontMetrics().height() / 2) / tallest

    def _paint_part(self, painter: QPainter, part: Part, box: QRectF) -> None:
        ink = QColor(self.palette().color(QPalette.ColorRole.WindowText))
        fill = QColor(ink)
        fill.setAlphaF(TINTS[part.name])
        painter.setPen(QPen(ink, 1))
        painter.setBrush(fill)
        painter.drawRect(box)

    def _paint_wanted(self, painter: QPainter, scale: float) -> float:
        """Mark what is wanted by a line across, what fits by one along the bar; give the height of the mark."""
        if self._depth is None:
            return 0.0
        wanted, floor = self._depth.wanted, self.height() - AIR
        highest = self._depth.cm if wanted.highest_cm is None else wanted.highest_cm
        y = floor - (wanted.lowest_cm if wanted.highest_cm is None else wanted.wanted_cm) * scale
        right = AIR + BAR_WIDTH + 4
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.Highlight), 2))
        painter.drawLine(QPointF(AIR - 5, y), QPointF(right, y))
        painter.drawLine(
            QPointF(right, floor - wanted.lowest_cm * scale),
            QPointF(right, floor - max(highest, wanted.lowest_cm) * scale),
        )
        return y

    def _paint_words(self, painter: QPainter, words: list[tuple[float, str]]) -> None:
        """Write lines beside the bar from below, each moved up where another one stands already."""
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.WindowText), 1))
        line, left = QFontMetricsF(self.font()).height(), AIR + BAR_WIDTH + GAP
        below = float(self.height()) + line / 2
        for middle, text in sorted(words, reverse=True):
            below = min(middle, below - line)
            box = QRectF(left, below - line / 2, self.width() - left, line)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft), text)
