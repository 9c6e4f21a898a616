"""The ledger: what each round comes to, level with the round itself."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QHelpEvent, QMouseEvent, QPainter, QPalette
from PySide6.QtWidgets import QToolTip, QWidget

from chartmaker.app.round_column import LOWEST_TEXT, RoundColumn
from chartmaker.app.round_figures import RoundFigures
from chartmaker.app.signs import draw_stop, draw_strands
from chartmaker.app.words import number, plain_tip, tr

if TYPE_CHECKING:
    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.appraisal import RoundAppraisal

FULL_BAR = 60.0
"""Difference in value that fills the bar; larger ones fill it too and are told by their number."""
BAR_LEFT, BAR_WIDTH = 8, 76
NUMBER, SIGN, FLOAT, LETTERS, STITCHES = (86, 24), (110, 14), (126, 40), (168, 48), (218, 54)
"""Left and width of each column."""
WIDTH = 276
CENTRE = Qt.AlignmentFlag.AlignCenter
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
LATE_INK = 110
"""Opacity, of 255, of figures that a round had before it was drawn on."""
GRADE_SIGNS = {"lost": "!", "soft": "~"}
"""What stands beside a difference in value that is not clear."""


class LedgerColumn(RoundColumn):
    """Difference in value as a bar, longest float, letters and stitches."""

    def __init__(self, canvas: ChartCanvas, parent: QWidget | None = None) -> None:
        super().__init__(canvas, parent)
        self.figures = RoundFigures(self.document)
        self.setAccessibleName(tr("Ledger of the rounds"))
        self.setFixedWidth(WIDTH)
        self.headings = (
            (tr("|value|"), BAR_LEFT, BAR_WIDTH),
            (tr("float"), *FLOAT),
            (tr("letters"), *LETTERS),
            (tr("stitches"), *STITCHES),
        )
        for signal in (canvas.cursor_moved, canvas.units.changed):
            signal.connect(self._describe)
        self.document.appraised.connect(self._describe)

    def look_of(self, row: int) -> object:
        """Give the figures, and the limits that they are shown against."""
        return self.figures.at(row), self.document.design.limits

    def paint_row(self, painter: QPainter, row: int, box: QRectF) -> None:
        """Paint one round's figures; low rows keep the bar, and the sign of a count that does not meet."""
        figures = self.figures.at(row)
        if figures is None:
            return
        entry = figures.entry
        ink = self.palette().color(QPalette.ColorRole.WindowText)
        if figures.is_late:
            ink.setAlpha(LATE_INK)
        self._paint_bar(painter, entry, box, ink)
        if not entry.meets:
            draw_stop(painter, QPointF(STITCHES[0] + 3, box.center().y()), box.height(), ink)
        if len(entry.letters) > 2:
            draw_strands(painter, QPointF(LETTERS[0] - 4, box.center().y()), box.height(), ink)
        if box.height() < LOWEST_TEXT:
            return
        painter.setPen(ink)
        text = "?" if entry.grade == "" else ""
        if entry.value_difference is not None and entry.grade != "plain":
            text = number(entry.value_difference)
        _write(painter, _level(box, NUMBER), text, RIGHT)
        _write(painter, _level(box, SIGN), GRADE_SIGNS.get(entry.grade, ""), CENTRE, is_bold=True)
        if entry.longest_float_stitches:
            is_long = entry.longest_float_cm > self.document.design.limits.float_cm
            text = f"{entry.longest_float_stitches}{' !' if is_long else ''}"
            _write(painter, _level(box, FLOAT), text, CENTRE, is_bold=is_long)
        is_crowded = len(entry.letters) > 2
        _write(painter, _level(box, LETTERS), " ".join(entry.letters), CENTRE, is_bold=is_crowded)
        _write(painter, _level(box, STITCHES), str(entry.stitches), CENTRE, is_bold=not entry.meets)

    def _paint_bar(self, painter: QPainter, entry: RoundAppraisal, box: QRectF, ink: QColor) -> None:
        """Draw the difference in value: solid when clear, hatched when soft, hollow when lost; a tick at its bound."""
        height = max(1.0, min(box.height() - 2, 9.0))
        top = box.center().y() - height / 2
        faint = QColor(ink)
        faint.setAlpha(60 * ink.alpha() // 255)
        limits = self.document.design.limits
        for limit in (limits.value_soft, limits.value_clear):
            painter.fillRect(QRectF(_along(limit), box.top(), 1, box.height()), faint)
        if entry.value_difference is None or entry.grade == "plain":
            return
        bar = QRectF(BAR_LEFT, top, _along(entry.value_difference) - BAR_LEFT, height)
        solid = QColor(ink)
        solid.setAlpha(170 * ink.alpha() // 255)
        if entry.grade == "clear":
            painter.fillRect(bar, solid)
        elif height >= 4:
            painter.setPen(solid)
            # The hatching moves with its bar when the column is shifted.
            painter.setBrushOrigin(bar.topLeft())
            painter.setBrush(Qt.BrushStyle.BDiagPattern if entry.grade == "soft" else Qt.BrushStyle.NoBrush)
            painter.drawRect(bar.adjusted(0, 0, -1, -1))
        else:
            painter.fillRect(bar, faint)
        if entry.value_difference_low is not None and height >= 4:
            painter.fillRect(QRectF(_along(entry.value_difference_low) - 1, top - 2, 2, height + 4), ink)

    def words(self, row: int) -> str:
        """Tell a round's entry as a sentence, for tooltips and screen readers; empty until its figures are there."""
        if not self.document.is_appraised or row >= len(self.document.appraisal.rounds):
            return ""
        entry = self.document.appraisal.rounds[row]
        parts = [tr("Round {0} of {1}, {2} stitches").format(entry.number, entry.band_name, entry.stitches)]
        if not entry.meets:
            parts.append(self._break_words(row))
        if len(entry.letters) > 2:
            parts.append(tr("three strands at once: {0}").format(", ".join(entry.letters)))
        if entry.grade == "plain":
            parts.append(tr("plain, one letter"))
        elif entry.value_difference is not None and entry.value_difference_low is not None:
            parts.append(
                tr("value differs by {0}, at least {1}: {2}").format(
                    number(entry.value_difference, 1), number(entry.value_difference_low, 1), tr(entry.grade)
                )
            )
        else:
            parts.append(tr("? a shade is not known"))
        if entry.longest_float_stitches:
            parts.append(
                tr("longest float {0} stitches, {1}").format(
                    entry.longest_float_stitches, self.canvas.units.units.length.told(entry.longest_float_cm)
                )
            )
        return "; ".join(parts) + "."

    def _break_words(self, row: int) -> str:
        """Tell by how much a round misses the one below."""
        fabric = self.document.appraisal.fabric
        if row == 0:
            return tr("! shaped, though only the cast-on lies below")
        return tr("! eats {0} stitches, the round below has {1}").format(fabric.eaten[row], fabric.counts[row - 1])

    def event(self, event: QEvent) -> bool:
        """Tell the round under the pointer."""
        if isinstance(event, QHelpEvent):
            row = self.row_at(event.pos().y())
            if row is not None:
                QToolTip.showText(event.globalPos(), plain_tip(self.words(row)), self)
            return True
        return super().event(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Make the round under the pointer the current one; with Shift, choose all from the current one to it."""
        row = self.row_at(event.position().y())
        if row is None or (event.button() == Qt.MouseButton.RightButton and row in self.canvas.chosen):
            return
        if event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self.canvas.reach_to(row)
        else:
            self.canvas.go_to(row)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Choose the rounds that the pointer is dragged over."""
        row = self.row_at(event.position().y())
        if row is not None and event.buttons() & Qt.MouseButton.LeftButton:
            self.canvas.reach_to(row)

    def _describe(self) -> None:
        self.setAccessibleDescription(self.words(self.canvas.current[0]))


def _along(difference: float) -> float:
    return BAR_LEFT + BAR_WIDTH * min(difference, FULL_BAR) / FULL_BAR


def _level(box: QRectF, column: tuple[int, int]) -> QRectF:
    return QRectF(column[0], box.center().y() - 10, column[1], 20)


def _write(painter: QPainter, box: QRectF, text: str, align: Qt.AlignmentFlag, *, is_bold: bool = False) -> None:
    painter.save()
    if is_bold:
        font = painter.font()
        font.setBold(True)
        painter.setFont(font)
    painter.drawText(box, align, text)
    painter.restore()
