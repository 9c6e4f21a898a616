"""The baths page: to the left what is to be dyed, to be got, and was dyed; to the right the one that is chosen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QFrame, QListWidget, QListWidgetItem, QScrollArea, QSplitter, QWidget

from chartmaker.app.bath_card import BathCardView, bath_name, duration
from chartmaker.app.bath_lines import column_of
from chartmaker.app.bath_record_form import BathRecordForm, LoadAsked
from chartmaker.app.bath_recorded import RecordedView, recorded_baths
from chartmaker.app.baths_lists import mordanting_pane, shopping_pane
from chartmaker.app.baths_together import BathsTogether
from chartmaker.app.dye_weights import weigher
from chartmaker.app.page_frame import PageFrame, rule
from chartmaker.app.stock_pane import StockPane
from chartmaker.app.words import grams, tr
from chartmaker.model.bath_record import BathRecord

if TYPE_CHECKING:
    from PySide6.QtGui import QShowEvent

    from chartmaker.app.baths_desk import BathsDesk
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.appraisal import Appraisal
    from chartmaker.checks.finding import Place
    from chartmaker.dye.dye_plan import BathCard, DyePlan

KEY = Qt.ItemDataRole.UserRole
"""Which pane an entry stands for: `bath`, `mordanting`, `shopping`, `stock` or `record`, and for baths the id."""
Key = tuple[str, str]


class BathsPage(PageFrame):
    """A pane is made anew only where what it shows is another, so that nothing that was typed is lost."""

    told = Signal(str)
    """What was done, as a sentence."""

    def __init__(self, desk: BathsDesk, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(tr("Baths"), parent)
        self.desk, self.units = desk, units
        self.document = desk.document
        self.together = BathsTogether(desk)
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Baths, what they share, and what is at hand"))
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.pane = QScrollArea()
        self.pane.setAccessibleName(tr("What is chosen"))
        self.pane.setWidgetResizable(True)
        self.pane.setFrameShape(QFrame.Shape.NoFrame)
        self.form: BathRecordForm | None = None
        """What is filled in of the bath in sight; None where none is."""
        self._kept: dict[Key, BathRecordForm] = {}
        """Forms with something written in them, whose bath is not in sight."""
        self._plan: DyePlan | None = None
        self._shown: tuple[str, str, object] = ("", "", None)
        self._is_stale = True
        self._lay_out()
        self.list.currentItemChanged.connect(lambda *_items: self._show_chosen())
        self.document.appraised.connect(self.refresh)
        desk.open_palette.changed.connect(self.refresh)
        desk.changed.connect(self.refresh)
        units.changed.connect(self.refresh)
        desk.recorded.connect(self._show_recorded)
        self.refresh()

    @property
    def key(self) -> Key:
        """Which entry is chosen."""
        item = self.list.currentItem()
        kind, thing = item.data(KEY) if item else ("stock", "")
        return kind, thing

    def choose(self, kind: str, thing: str = "") -> None:
        """Choose an entry; where there is none of it any more, the first."""
        rows = [row for row in range(self.list.count()) if tuple(self.list.item(row).data(KEY) or ()) == (kind, thing)]
        self.list.setCurrentRow(rows[0] if rows else 0)

    def refresh(self) -> None:
        """Follow design, palette and companions; a page that is not in sight does so when it is turned to."""
        if not self.isVisible() and self._plan is not None:
            self._is_stale = True
            return
        self._is_stale = False
        plan = self.desk.plan()
        self._plan = plan
        self.together.refresh()
        self.note.setText(_note(plan, self.document.appraisal))
        self._list_entries(plan)
        self._show_chosen()

    def lead_to(self, _place: Place) -> None:
        """Show the first bath."""
        self.list.setCurrentRow(0)
        self.list.setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        """Bring the page up to date, and give the list the keys."""
        super().showEvent(event)
        if self._is_stale:
            self.refresh()
        if not self.isAncestorOf(self.focusWidget() or self.window().focusWidget() or self):
            self.list.setFocus()

    # --- the list

    def _list_entries(self, plan: DyePlan) -> None:
        chosen = self.key if self.list.count() else None
        entries = [*_entries(plan), *_record_entries(self.desk)]
        self.list.blockSignals(True)
        self.list.clear()
        for key, text in entries:
            item = QListWidgetItem(text)
            item.setData(KEY, key)
            if key[0] == "title":
                item.setFlags(Qt.ItemFlag.NoItemFlags)
                font = QFont(self.list.font())
                font.setBold(True)
                item.setFont(font)
            self.list.addItem(item)
        self.list.blockSignals(False)
        keys = [key for key, _ in entries]
        self.choose(*(chosen if chosen in keys else next(key for key in keys if key[0] != "title")))

    # --- the pane

    def _show_chosen(self) -> None:
        """Show what is chosen, unless it is in sight as it is."""
        if self._plan is None:
            return
        kind, thing = self.key
        now = (kind, thing, (self._value_of(kind, thing), self.units.units))
        if now == self._shown:
            stock = self.pane.widget()
            if isinstance(stock, StockPane):
                stock.refresh()
            return
        self._put_away()
        self._shown = now
        self.form = None
        self.pane.setWidget(self._made(kind, thing))
        self.pane.verticalScrollBar().setValue(0)

    def _put_away(self) -> None:
        """Keep a form in which something was written until its bath is chosen again."""
        if self.form is not None and self.form.is_touched:
            self.form.setParent(None)
            self._kept[self._shown[0], self._shown[1]] = self.form

    def _form_for(self, key: Key, form: BathRecordForm) -> BathRecordForm:
        """Give the form that was put away for a bath, if it still asks for the same loads, else the new one."""
        kept = self._kept.pop(key, None)
        if kept is not None and kept.asks_as(form):
            form.deleteLater()
            return kept
        if kept is not None:
            kept.deleteLater()
        return form

    def _value_of(self, kind: str, thing: str) -> object:
        """Give what a pane shows, to be compared with what it showed."""
        plan = self._plan
        if plan is None or kind == "stock":
            return None
        if kind == "bath":
            return plan.card(thing)
        if kind == "record":
            bath = self.desk.open_palette.palette.bath(thing)
            return bath, self.desk.replaced_by(bath) if bath else []
        return plan.mordantings if kind == "mordanting" else plan.shopping

    def _made(self, kind: str, thing: str) -> QWidget:
        plan = self._plan
        if plan is None or kind == "stock":
            return StockPane(self.desk)
        if kind == "bath":
            return self._bath(plan.card(thing))
        if kind == "record":
            view = RecordedView(self.desk, thing, lambda form: self._form_for((kind, thing), form))
            self.form = view.form
            return view
        pane = mordanting_pane if kind == "mordanting" else shopping_pane
        return pane(plan, weigher(self.units.units))

    def _bath(self, card: BathCard) -> QWidget:
        plan = card.plan
        at_hand = self.desk.at_hand
        names = {load.load: lot.name if (lot := at_hand.lot(load.lot)) else tr("to stock") for load in plan.loads}
        loads = [LoadAsked(load.load, names[load.load], load.fibre_g) for load in plan.loads]
        bath = plan.bath
        planned = BathRecord(
            dyestuff_g=round(plan.dyestuff_g, 1),
            water_l=round(plan.water_l, 2),
            ph_start=bath.ph_start,
            ph_end=bath.ph_end,
            hottest_c=bath.hottest_c,
            minutes=bath.minutes,
        )
        made = BathRecordForm(loads, planned)
        made.given.connect(lambda record, takes_off: self._record(bath.id, record, takes_off=takes_off))
        self.form = form = self._form_for(("bath", bath.id), made)
        view = BathCardView(card, at_hand, weigher(self.units.units))
        view.to_record.clicked.connect(lambda _checked=False: self._lead_to_form(form))
        return column_of([view, rule(), form])

    def _record(self, bath_id: str, record: BathRecord, *, takes_off: bool) -> None:
        """Write down a bath by the plan as it is now, which may be another than when the form was begun."""
        if self._plan is not None:
            self.desk.record(self._plan.card(bath_id).plan, record, takes_off=takes_off)

    def _show_recorded(self, bath_id: str, sentence: str) -> None:
        self.choose("record", bath_id)
        self.told.emit(sentence)

    def _lead_to_form(self, form: BathRecordForm) -> None:
        """Bring the whole form into sight, and give its first empty field the keys."""
        bar = self.pane.verticalScrollBar()
        bar.setValue(bar.maximum())
        form.rows[0].dry.setFocus()

    def _lay_out(self) -> None:
        split = QSplitter(Qt.Orientation.Horizontal)
        split.setChildrenCollapsible(False)
        split.addWidget(self.list)
        split.addWidget(self.pane)
        split.setStretchFactor(1, 1)
        split.setSizes([210, 800])
        self.list.setMinimumWidth(160)
        self.list.setStyleSheet(
            "QListWidget::item { padding: 4px 6px; } QListWidget::item:disabled { color: palette(text); }"
        )
        self.pane.setViewportMargins(14, 0, 0, 0)
        self.content.addWidget(self.together)
        self.content.addWidget(split, 1)


def _note(plan: DyePlan, appraisal: Appraisal) -> str:
    without = _without_bath(plan, appraisal)
    if not plan.cards and not without:
        return tr("Nothing is short: no bath is needed.")
    text = tr("What is short, as baths to run.") if plan.cards else tr("No bath can be planned.")
    if without:
        text += " " + tr("Short without a bath to plan from: {0}.").format(", ".join(without))
    return text


def _without_bath(plan: DyePlan, appraisal: Appraisal) -> list[str]:
    """Name what is short and comes from no bath: by its letter where this design has one, which may have no lot yet."""
    lots = [need.lot for need in plan.without_bath]
    found = []
    for entry in appraisal.letters:
        if entry.lot is None and entry.requirement.short_g > 0:
            found.append(entry.letter)
        elif entry.lot is not None and entry.lot.id in lots:
            found.append(f"{entry.letter} ({entry.lot.name})")
    own = {entry.lot.id for entry in appraisal.letters if entry.lot}
    others = [lot_id for lot_id in lots if lot_id not in own]
    return [*found, *(lot.name if (lot := plan.palette.lot(lot_id)) else lot_id for lot_id in others)]


def _entries(plan: DyePlan) -> list[tuple[Key, str]]:
    entries: list[tuple[Key, str]] = []
    if plan.cards:
        entries.append((("title", "plan"), tr("To dye")))
    entries += [(("bath", card.plan.bath.id), _entry(card)) for card in plan.cards]
    if plan.mordantings:
        entries.append((("mordanting", ""), tr("Mordanting, all together")))
    if plan.shopping:
        entries.append((("shopping", ""), tr("To be got")))
    return [*entries, (("title", "stock"), tr("At hand")), (("stock", ""), tr("Dyestuffs, yarn, pots, habits"))]


def _entry(card: BathCard) -> str:
    name = bath_name(card)
    text = f"{name[:1].upper()}{name[1:]}\n" + tr("{0} g, {1}").format(grams(card.plan.fibre_g), duration(card.hours))
    if not card.supply.is_enough and card.supply.is_listed:
        text += "\n" + tr("!  {0} g of dyestuff missing").format(grams(card.supply.missing_g))
    if card.pot.pot is not None and not card.pot.is_held:
        text += "\n" + tr("!  no pot holds it")
    return text


def _record_entries(desk: BathsDesk) -> list[tuple[Key, str]]:
    baths = recorded_baths(desk.open_palette.palette)
    if not baths:
        return []
    found = [(("title", "record"), tr("Dyed"))]
    for bath in baths:
        day = bath.record.dyed_on if bath.record else None
        found.append((("record", bath.id), ", ".join(filter(None, (bath.dyestuff, day.isoformat() if day else "")))))
    return found
