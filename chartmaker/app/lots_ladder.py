"""What the loads of a bath come out like: each on the value axis with its interval, and how the ladder was got."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPalette, QPen
from PySide6.QtWidgets import (
    QComboBox,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSizePolicy,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.shades import colour_of
from chartmaker.app.told import told
from chartmaker.app.words import number, plain_tip, tr
from chartmaker.dye.ladder import ladder_of, why_no_ladder
from chartmaker.dye.rungs import answer_to, rungs_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtCore import QModelIndex, QPersistentModelIndex

    from chartmaker.app.lots_lines import LotLine
    from chartmaker.dye.ladder import Ladder
    from chartmaker.dye.rungs import Rung
    from chartmaker.model.palette import Palette
    from chartmaker.model.settings import Viewing

RUNG = Qt.ItemDataRole.UserRole
ROW, AXIS = 40, 13
BASIS_WORDS = {"measured": "measured", "predicted": "predicted", "assumed": "assumed"}


class LadderPanel(QWidget):
    """The loads of one bath, a lot planned from one of them, and which comes nearest to a shade that is wanted."""

    plan_asked = Signal(str, int)
    """A bath, by its id, and the load that a lot is to be planned from."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.title = QLabel(tr("Loads of this bath, on the value axis from 0 to 100"))
        self.words = QLabel()
        self.rungs = QListWidget()
        self.plan = QPushButton(tr("&Plan a lot from this load"))
        self.target = QComboBox()
        self.lab = QLineEdit()
        self.answer = QLabel()
        self._ladder: Ladder | None = None
        self._viewing: Viewing | None = None
        self._targets: dict[str, tuple[float, float, float]] = {}
        self.rungs.setAccessibleName(tr("Loads of the bath"))
        self.rungs.setItemDelegate(RungDelegate(self.rungs))
        self.rungs.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.rungs.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.rungs.setIconSize(QSize(26, 16))
        self.target.setAccessibleName(tr("Lot whose shade is wanted"))
        self.target.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.lab.setAccessibleName(tr("Shade that is wanted, as L* a* b*"))
        self.lab.setPlaceholderText(tr("or a shade as L* a* b*: 45 30 20"))
        self.plan.clicked.connect(self._ask_plan)
        self.rungs.currentItemChanged.connect(lambda *_: self._show_plan())
        self.target.currentIndexChanged.connect(lambda _: self._answer())
        self.lab.textChanged.connect(lambda _: self._answer())
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        for label in (self.title, self.words, self.answer):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        for widget in (self.title, self.rungs, self.words, self.plan, self.target, self.lab, self.answer):
            layout.addWidget(widget)

    def show_bath(self, line: LotLine, every: Sequence[LotLine], palette: Palette, viewing: Viewing) -> None:
        """Show the ladder of the bath that a lot came or is to come from; without one, what it wants for."""
        self.setVisible(line.bath is not None)
        if line.bath is None:
            return
        self._ladder, self._viewing = ladder_of(palette, line.bath), viewing
        has_ladder = self._ladder is not None
        for widget in (self.title, self.rungs, self.plan, self.target, self.lab, self.answer):
            widget.setVisible(has_ladder)
        self._show_rungs(line)
        if self._ladder is None:
            why = told(why_no_ladder(palette, line.bath.id))
            self.words.setText(tr("Its further loads cannot be foretold: {0}.").format(why))
        else:
            self.words.setText(_share_words(self._ladder))
            self._offer(every)
            self._answer()

    def _show_rungs(self, line: LotLine) -> None:
        self.rungs.clear()
        found = rungs_of(self._ladder, self._viewing) if self._ladder and self._viewing else ()
        for rung in found:
            item = QListWidgetItem(patch_icon(colour_of(rung.shade), width=26), _rung_words(rung))
            item.setData(RUNG, rung)
            item.setToolTip(plain_tip(item.text()))
            self.rungs.addItem(item)
            if rung.load == line.load and (rung.lot is None or rung.lot.id == line.lot.id):
                self.rungs.setCurrentItem(item)
        self.rungs.setFixedHeight(max(1, len(found)) * ROW + 4)
        self._show_plan()

    def _show_plan(self) -> None:
        rung = self._rung()
        self.plan.setEnabled(rung is not None and rung.basis != "measured")
        self.plan.setToolTip(tr("The lot can be used in the design at once; its shade is marked as predicted"))

    def _rung(self) -> Rung | None:
        item = self.rungs.currentItem()
        rung: Rung | None = item.data(RUNG) if item else None
        return rung

    def _ask_plan(self) -> None:
        rung = self._rung()
        if rung and self._ladder:
            self.plan_asked.emit(self._ladder.bath.id, rung.load)

    def _offer(self, every: Sequence[LotLine]) -> None:
        wanted = self.target.currentData()
        self._targets = {line.lot.id: line.shade.lab for line in every if line.shade}
        self.target.blockSignals(True)
        self.target.clear()
        self.target.addItem(tr("Which load comes nearest to …"), "")
        for line in every:
            if line.shade:
                self.target.addItem(patch_icon(colour_of(line.shade)), line.lot.name, line.lot.id)
        self.target.setCurrentIndex(max(0, self.target.findData(wanted)))
        self.target.blockSignals(False)

    def _answer(self) -> None:
        target = lab_of_text(self.lab.text()) or self._targets.get(str(self.target.currentData()))
        if self.lab.text().strip() and not lab_of_text(self.lab.text()):
            self.answer.setText(tr("A shade is three numbers: L* from 0 to 100, a* and b* from −128 to 128."))
        elif target and self._ladder and self._viewing:
            self.answer.setText(told(answer_to(self._ladder, target, self._viewing).text))
        else:
            self.answer.clear()


class RungDelegate(QStyledItemDelegate):
    """Paints a load's words, and below them its value and interval on an axis from 0 to 100."""

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        """Give room for a line of words and an axis."""
        return QSize(min(120, super().sizeHint(option, index).width()), ROW)

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Paint the words as Qt does, then the axis: a dot where it was measured, a ring where it is foretold."""
        rung: Rung = index.data(RUNG)
        box = QRectF(option.rect)
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(box, option.palette.color(QPalette.ColorRole.AlternateBase))
            painter.fillRect(QRectF(box.left(), box.top(), 3, box.height()), option.palette.highlight())
        words = QStyleOptionViewItem(option)
        words.rect = option.rect.adjusted(4, 2, -4, -AXIS)
        words.state &= ~QStyle.StateFlag.State_Selected
        super().paint(painter, words, index)
        axis = QRectF(box.left() + 36, box.bottom() - AXIS, box.width() - 48, AXIS - 4)
        ink = option.palette.color(QPalette.ColorRole.Text)
        quiet = QColor(ink)
        quiet.setAlphaF(0.3)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(quiet, 1))
        middle = axis.center().y()
        painter.drawLine(QPointF(axis.left(), middle), QPointF(axis.right(), middle))
        low, high = sorted((rung.weak_lab[0], rung.strong_lab[0]))
        painter.setPen(QPen(ink, 3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        painter.drawLine(QPointF(_x(axis, low), middle), QPointF(_x(axis, high), middle))
        painter.setPen(QPen(ink, 1.4))
        painter.setBrush(ink if rung.basis == "measured" else option.palette.color(QPalette.ColorRole.Base))
        painter.drawEllipse(QPointF(_x(axis, rung.shade.value), middle), 4, 4)
        painter.restore()


def lab_of_text(text: str) -> tuple[float, float, float] | None:
    """Read three numbers as CIELAB, with commas, semicolons or blanks between them; None where it is none."""
    try:
        lightness, a, b = (float(part.replace("−", "-")) for part in text.replace(",", " ").replace(";", " ").split())
    except ValueError:
        return None
    return (lightness, a, b) if 0 <= lightness <= 100 and abs(a) <= 128 and abs(b) <= 128 else None


def _x(axis: QRectF, value: float) -> float:
    return axis.left() + axis.width() * min(100.0, max(0.0, value)) / 100


def _rung_words(rung: Rung) -> str:
    low, high = sorted((rung.weak_lab[0], rung.strong_lab[0]))
    if rung.lot is not None:
        return tr("load {0}, measured: value {1}, {2}").format(rung.load, number(rung.shade.value), rung.lot.name)
    text = tr("load {0}, {1}: value {2} ({3} to {4})")
    basis = tr(BASIS_WORDS[rung.basis])
    return text.format(rung.load, basis, number(rung.shade.value), number(low), number(high))


def _share_words(ladder: Ladder) -> str:
    """Tell q and how it was got."""
    share = tuple(number(100 * part) for part in (ladder.share, ladder.share_low, ladder.share_high))
    if ladder.is_assumed:
        return tr(
            "Each load leaves {0} % of the dye to the next ({1} to {2} %): assumed, one load is measured."
        ).format(*share)
    text = tr("Each load leaves {0} % of the dye to the next ({1} to {2} %), fitted to {3} lots measured.")
    return text.format(*share, len(ladder.measured))
