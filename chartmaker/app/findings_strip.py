"""The findings at the bottom of every page: how many and how bad, each leading to its place, some with a way out."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QPainter, QPalette, QPixmap, QPolygonF
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QSizePolicy,
    QToolButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.told import told
from chartmaker.app.words import plain_tip, tr
from chartmaker.checks.finding import SEVERITIES, Finding

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting

LEAST_HEIGHT, HEIGHT = 96, 136
"""At first, by how much there is to tell; the line above it can be dragged."""
WIDEST_PLACE = 230
"""A place told at greater length, in window units, is cut short, so that the message keeps its room."""
COUNT_WORDS = {"stop": ("stop", "stops"), "warn": ("warning", "warnings"), "note": ("note", "notes")}


class FindingsStrip(QWidget):
    """A line that counts, and below it the list with what would mend the chosen one."""

    led = Signal(object)
    """The `Place` that the chosen finding leads to."""
    folded = Signal(bool)

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self._units = document, units
        self._findings: tuple[Finding, ...] = ()
        self.fold = QToolButton()
        self.fold.setAutoRaise(True)
        self.fold.setArrowType(Qt.ArrowType.DownArrow)
        self.fold.setAccessibleName(tr("Show or hide the list of findings"))
        self.fold.setToolTip(tr("Show or hide the list"))
        self.fold.clicked.connect(self.toggle)
        self.counts = QLabel()
        self.counts.setAccessibleName(tr("Findings"))
        self.list = self._make_list()
        self.remedy = QLabel()
        self.remedy.setWordWrap(True)
        self.remedy.setTextFormat(Qt.TextFormat.PlainText)
        self.remedy.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.mend = QPushButton()
        self.mend.clicked.connect(self.apply_remedy)
        self._lay_out()
        document.appraised.connect(self.refresh)
        units.changed.connect(self._show_units)
        if document.is_appraised:
            self.refresh()
        else:
            self.counts.setText(tr("Findings: …"))
            self.mend.hide()

    def sizeHint(self) -> QSize:
        """Ask for the counts and a few lines, for less where there is little to tell."""
        return QSize(600, self.wanted_height)

    @property
    def wanted_height(self) -> int:
        """How high it is at first: as many lines as there are findings, but room for what would mend one."""
        lines = len(self._findings) * (self.list.sizeHintForRow(0) + 1) if self._findings else 0
        return min(HEIGHT, max(LEAST_HEIGHT, self.counts.sizeHint().height() + 12 + lines))

    def refresh(self, *, is_anew: bool = False) -> None:
        """Follow the appraisal; the chosen finding stays chosen where it is still there.

        The list is left alone where it would be the same, unless it `is_anew`.
        """
        findings = self.document.appraisal.findings
        if findings == self._findings and not is_anew and self.list.topLevelItemCount():
            return
        chosen = self.chosen
        self._findings = findings
        self.counts.setText(counted(findings))
        self.list.blockSignals(True)
        self.list.clear()
        icons = {severity: severity_icon(severity, self.palette()) for severity in SEVERITIES}
        for finding in findings:
            place = self.fontMetrics().elidedText(told(finding.place.text), Qt.TextElideMode.ElideRight, WIDEST_PLACE)
            message = told(finding.message, self._units.units)
            item = QTreeWidgetItem([tr(finding.severity), place, message])
            item.setIcon(0, icons[finding.severity])
            for column in range(3):
                item.setToolTip(column, plain_tip(f"{told(finding.place.text)}: {message}"))
            self.list.addTopLevelItem(item)
        self.list.blockSignals(False)
        if chosen in findings:
            self._choose(findings.index(chosen))
        self._show_remedy()

    def _show_units(self) -> None:
        if self.document.has_appraisal:
            self.refresh(is_anew=True)

    @property
    def chosen(self) -> Finding | None:
        """The finding that is chosen in the list, or None."""
        index = self._chosen_index()
        return self._findings[index] if 0 <= index < len(self._findings) else None

    @property
    def has_remedy(self) -> bool:
        """Whether the chosen finding can be mended by giving one letter another lot."""
        return self.chosen is not None and self.chosen.remedy_lot is not None

    def go(self, steps: int) -> None:
        """Choose the next finding, or with -1 the one before, and lead to its place."""
        count = len(self._findings)
        if not count:
            return
        at = self._chosen_index()
        at = (at + steps) % count if at >= 0 else (0 if steps > 0 else count - 1)
        self._choose(at)
        self._lead()

    def apply_remedy(self) -> None:
        """Give the letter the lot that would mend the chosen finding, if that still stands."""
        self.document.appraise_now()
        finding = self.chosen
        if finding is not None and finding.remedy_lot is not None:
            letter, lot = finding.remedy_lot
            from chartmaker.model.edits import assign

            self.document.do(assign(self.document.design, letter, lot, source=self.document.palette))

    def toggle(self) -> None:
        """Show or hide the list; the counts stay."""
        self._body.setVisible(self._body.isHidden())
        self.fold.setArrowType(Qt.ArrowType.UpArrow if self._body.isHidden() else Qt.ArrowType.DownArrow)
        self.folded.emit(self._body.isHidden())

    def _chosen_index(self) -> int:
        """Give the line of the list that is chosen, -1 where none is."""
        item = self.list.currentItem()
        return self.list.indexOfTopLevelItem(item) if item else -1

    def _choose(self, index: int) -> None:
        item = self.list.topLevelItem(index)
        if item is not None:
            self.list.setCurrentItem(item)

    def _make_list(self) -> QTreeWidget:
        table = QTreeWidget()
        table.setAccessibleName(tr("List of findings"))
        table.setColumnCount(3)
        table.setHeaderHidden(True)
        table.setRootIsDecorated(False)
        table.setUniformRowHeights(True)
        table.setAllColumnsShowFocus(True)
        table.setMinimumHeight(40)
        table.setStyleSheet("QTreeView::item { padding: 1px 6px; }")
        table.setFrameShape(QTreeWidget.Shape.NoFrame)
        table.setIconSize(QSize(14, 14))
        table.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        table.header().setStretchLastSection(True)
        table.header().setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        table.header().setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        table.itemClicked.connect(lambda _item, _column: self._lead())
        table.itemActivated.connect(lambda _item, _column: self._lead())
        table.currentItemChanged.connect(lambda _now, _before: self._show_remedy())
        return table

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        top.setContentsMargins(10, 3, 6, 3)
        top.addWidget(self.counts, 1)
        top.addWidget(self.fold)
        side = QWidget()
        side_layout = QVBoxLayout(side)
        side_layout.setContentsMargins(10, 4, 12, 8)
        side_layout.addWidget(self.remedy, 1)
        side_layout.addWidget(self.mend)
        side.setFixedWidth(290)
        self._body = QWidget()
        body = QHBoxLayout(self._body)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(0)
        body.addWidget(self.list, 1)
        body.addWidget(side)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addLayout(top)
        layout.addWidget(self._body, 1)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)

    def _lead(self) -> None:
        finding = self.chosen
        if finding is not None:
            self.led.emit(finding.place)

    def _show_remedy(self) -> None:
        finding = self.chosen
        hint = tr("A click leads to the place of a finding; what would mend it stands here.")
        if not self._findings:
            hint = tr("Nothing noticed.")
        self.remedy.setText(hint if finding is None else sentence(told(finding.remedy, self._units.units)))
        self.remedy.setToolTip(plain_tip(self.remedy.text()))
        has_lot = finding is not None and finding.remedy_lot is not None
        self.mend.setVisible(has_lot)
        if finding is not None and finding.remedy_lot is not None:
            letter, lot = finding.remedy_lot
            text = tr("Give {0} the lot {1}").format(letter, self._lot_name(lot))
            room = self.mend.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, 235)
            self.mend.setText(room.replace("&", "&&"))
            self.mend.setAccessibleName(text)
            self.mend.setToolTip(text)

    def _lot_name(self, lot_id: str) -> str:
        for palette in (self.document.design.palette, self.document.palette):
            lot = palette.lot(lot_id) if palette else None
            if lot is not None:
                return lot.name
        return lot_id


def counted(findings: tuple[Finding, ...]) -> str:
    """Tell how many findings there are of each severity."""
    parts = []
    for severity in SEVERITIES:
        count = sum(finding.severity == severity for finding in findings)
        if count:
            one, many = COUNT_WORDS[severity]
            parts.append(f"{count} {tr(one if count == 1 else many)}")
    return tr("Findings: {0}").format(", ".join(parts)) if parts else tr("Findings: none")


def sentence(text: str) -> str:
    """Begin a text with a capital and end it with a stop."""
    return f"{text[:1].upper()}{text[1:]}{'' if text.endswith(('.', '!', '?')) else '.'}" if text else ""


def severity_icon(severity: str, palette: QPalette) -> QIcon:
    """Give a sign for a severity that differs by its form: a filled square, a triangle, a ring."""
    side = 28
    pixmap = QPixmap(side, side)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    ink = palette.color(QPalette.ColorRole.WindowText)
    pen = painter.pen()
    pen.setColor(ink)
    pen.setWidthF(2.6)
    painter.setPen(pen)
    if severity == "stop":
        painter.setBrush(ink)
        painter.drawRect(QRectF(4, 4, 20, 20))
        painter.fillRect(QRectF(8, 12, 12, 4), palette.color(QPalette.ColorRole.Base))
    elif severity == "warn":
        painter.drawPolygon(QPolygonF([QPointF(14, 3), QPointF(26, 24), QPointF(2, 24)]))
        painter.drawLine(QPointF(14, 11), QPointF(14, 16))
        painter.drawPoint(QPointF(14, 20))
    else:
        painter.drawEllipse(QRectF(6, 6, 16, 16))
    painter.end()
    pixmap.setDevicePixelRatio(2)
    return QIcon(pixmap)
