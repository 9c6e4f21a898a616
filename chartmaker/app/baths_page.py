"""The baths page: a card for each bath that what is short asks for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from chartmaker.app.page_frame import PageFrame
from chartmaker.app.words import grams, number, tr
from chartmaker.sheets.cautions import DEFERS, cautions_for

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.dye.plan import BathPlan


class BathsPage(PageFrame):
    """Cards in the order of the palette's baths."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(tr("Baths"), parent)
        self.document = document
        self._area = QScrollArea()
        self._area.setAccessibleName(tr("Baths to run"))
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setAccessibleName(tr("Bath cards"))
        self.content.addWidget(self._area, 1)
        document.appraised.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Follow the appraisal."""
        appraisal = self.document.appraisal
        planned = {load.lot for plan in appraisal.baths for load in plan.loads}
        short = [entry for entry in appraisal.letters if entry.requirement.short_g > 0]
        without = [entry for entry in short if entry.lot is None or entry.lot.id not in planned]
        self.note.setText(_note(len(appraisal.baths), [entry.letter for entry in without]))
        inside = QWidget()
        layout = QVBoxLayout(inside)
        layout.setContentsMargins(0, 0, 6, 0)
        layout.setSpacing(12)
        for plan in appraisal.baths:
            layout.addWidget(self._card(plan))
        if appraisal.baths:
            layout.addWidget(_cautions(appraisal.baths))
        layout.addStretch(1)
        self._area.setWidget(inside)

    def _card(self, plan: BathPlan) -> QFrame:
        card = QFrame()
        card.setFrameShape(QFrame.Shape.StyledPanel)
        grid = QGridLayout(card)
        grid.setContentsMargins(14, 10, 14, 12)
        grid.setHorizontalSpacing(28)
        grid.setVerticalSpacing(3)
        bath = plan.bath
        title = QLabel(" ".join(word for word in (bath.dyestuff, bath.part, f"({bath.id})") if word))
        font = title.font()
        font.setBold(True)
        title.setFont(font)
        title.setTextFormat(Qt.TextFormat.PlainText)
        grid.addWidget(title, 0, 0, 1, 3)
        grid.addWidget(_listing(tr("Loads"), self._loads(plan)), 1, 0)
        grid.addWidget(_listing(tr("Into the pot"), _recipe(plan)), 1, 1)
        grid.addWidget(_listing(tr("How it was run"), _running(plan)), 1, 2)
        grid.setColumnStretch(2, 1)
        return card

    def _loads(self, plan: BathPlan) -> list[tuple[str, str]]:
        palette = self.document.design.palette
        rows = []
        for load in plan.loads:
            lot = palette.lot(load.lot) if load.lot else None
            short = tr(", for {0} g short").format(grams(load.short_g)) if load.short_g else tr(", to stock")
            name = lot.name if lot else tr("leads on")
            rows.append((f"{load.load}. {name}", tr("{0} g fibre").format(grams(load.fibre_g)) + short))
        return rows


def _cautions(plans: tuple[BathPlan, ...]) -> QWidget:
    """Give the cautions that the printed bath sheet has too, for all that goes into these baths."""
    used = tuple(item.name for plan in plans for item in (*plan.mordants, *plan.assists))
    inside = QWidget()
    layout = QVBoxLayout(inside)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(4)
    for text in (tr(DEFERS), *(f"–  {tr(caution.text)}" for caution in cautions_for(used))):
        line = QLabel(text)
        line.setWordWrap(True)
        layout.addWidget(line)
    return inside


def _note(count: int, without: list[str]) -> str:
    if not count and not without:
        return tr("Nothing is short: no bath is needed.")
    text = tr("What is short, as baths to run.") if count else tr("No bath can be planned.")
    if without:
        text += " " + tr("Short without a bath to plan from: {0}.").format(", ".join(without))
    return text


def _recipe(plan: BathPlan) -> list[tuple[str, str]]:
    weighed = [(plan.bath.dyestuff, plan.dyestuff_g), *((item.name, item.grams) for item in plan.mordants)]
    weighed += [(item.name, item.grams) for item in plan.assists]
    rows = [(name, tr("{0} g").format(grams(weight))) for name, weight in weighed]
    return [*rows, (tr("water"), tr("{0} L").format(number(plan.water_l, 1)))]


def _running(plan: BathPlan) -> list[tuple[str, str]]:
    bath = plan.bath
    known = (
        (tr("dyestuff weighed"), tr(bath.state)),
        (tr("hottest"), "" if bath.hottest_c is None else tr("{0} °C").format(number(bath.hottest_c))),
        (tr("time"), "" if bath.minutes is None else tr("{0} min").format(number(bath.minutes))),
        (tr("pH at start"), "" if bath.ph_start is None else number(bath.ph_start, 1)),
        (tr("pH at end"), "" if bath.ph_end is None else number(bath.ph_end, 1)),
        (tr("notes"), bath.notes),
    )
    return [(name, value) for name, value in known if value]


def _listing(title: str, rows: list[tuple[str, str]]) -> QWidget:
    inside = QWidget()
    grid = QGridLayout(inside)
    grid.setContentsMargins(0, 4, 0, 0)
    grid.setHorizontalSpacing(12)
    grid.setVerticalSpacing(2)
    heading = QLabel(title)
    heading.setForegroundRole(QPalette.ColorRole.PlaceholderText)
    grid.addWidget(heading, 0, 0, 1, 2)
    for line, (name, value) in enumerate(rows, start=1):
        for place, text in enumerate((name, value)):
            label = QLabel(text)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(len(text) > 40)
            label.setAlignment(Qt.AlignmentFlag.AlignTop)
            grid.addWidget(label, line, place)
    grid.setColumnStretch(1, 1)
    grid.setRowStretch(len(rows) + 1, 1)
    return inside
