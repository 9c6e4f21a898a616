"""A bath to run, on its card: loads, what goes into the pot, the days it takes, and what really happened."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chartmaker.app.bath_lines import Line, Lines, column_of, heading
from chartmaker.app.told import told
from chartmaker.app.words import grams, number, tr
from chartmaker.dye.cautions import DEFERS, cautions_at, cautions_of
from chartmaker.dye.fibre import REGAIN_PERCENT, bone_dry_g
from chartmaker.dye.spoons import WEIGH_INSTEAD

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QResizeEvent

    from chartmaker.app.dye_weights import Weigh
    from chartmaker.dye.dye_plan import BathCard, Weighed
    from chartmaker.dye.plan import Load
    from chartmaker.dye.timetable import Step
    from chartmaker.model.dyeing import DyeingHabits
    from chartmaker.model.palette import Palette

LEAST_LEFT_G = 0.5
"""Less than that is nothing to speak of."""
TWO_COLUMNS_FROM = 640
"""Pixels of width from which pot and days stand beside each other."""


class BathCardView(QWidget):
    """Everything about one bath to run; what is filled in after the dyeing is put below it by the page."""

    def __init__(self, card: BathCard, palette: Palette, weigh: Weigh, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._beside = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._beside.setSpacing(28)
        pot = column_of([_loads(card, palette, weigh), _pot(card, weigh)])
        self._beside.addWidget(pot, 1)
        self._beside.addWidget(column_of([_days(card)]), 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        self.to_record = QPushButton(tr("F&ill in what happened…"))
        top = QHBoxLayout()
        top.addWidget(_title(card), 1)
        top.addWidget(self.to_record)
        layout.addLayout(top)
        layout.addLayout(self._beside)
        layout.addWidget(_care(card))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Stand the two halves below each other where there is no room beside."""
        super().resizeEvent(event)
        is_wide = event.size().width() >= TWO_COLUMNS_FROM
        ways = QBoxLayout.Direction
        self._beside.setDirection(ways.LeftToRight if is_wide else ways.TopToBottom)


def bath_name(card: BathCard) -> str:
    """Name a bath by what is dyed with."""
    bath = card.plan.bath
    return " ".join(filter(None, (bath.dyestuff, bath.part)))


def duration(hours: float) -> str:
    """Tell hours as a dyer plans them."""
    if hours < 48:
        return tr("{0} h").format(number(hours, 1 if hours % 1 else 0))
    return tr("{0} days").format(number(hours / 24, 1))


def _title(card: BathCard) -> QWidget:
    plan = card.plan
    title = heading(tr("{0} (bath {1})").format(bath_name(card), plan.bath.id))
    font = title.font()
    font.setPointSizeF(font.pointSizeF() * 1.15)
    title.setFont(font)
    return title


def _loads(card: BathCard, palette: Palette, weigh: Weigh) -> Lines:
    lines = []
    for load, strength in zip(card.plan.loads, card.strengths, strict=True):
        names = [lot.name if (lot := palette.lot(lot_id)) else lot_id for lot_id, _ in load.lots]
        skeins = tr("1 skein") if load.skeins == 1 else tr("{0} skeins").format(load.skeins)
        more = [_what_for(load)]
        basis = tr("assumed") if strength.is_assumed else tr("by the lots measured")
        if load.load > 1:
            more.append(tr("takes up {0} of the first load's dye, {1}").format(number(strength.likely, 2), basis))
        name = f"{load.load}.  " + (", ".join(names) or tr("to stock"))
        value = weigh(load.fibre_g) + (f" · {skeins}" if load.skeins else "")
        lines.append(Line(name, value, tuple(more)))
    lines += [
        Line(
            tr("{0} of bath {1}").format(each.lot, each.bath),
            tr("load {0}").format(each.load),
            (tr("run alike: it comes from this pot, with {0} times its dye").format(number(each.times_as_strong, 2)),),
        )
        for each in card.plan.joined
    ]
    lines.append(_what_fibre_holds(card.plan.loads[0].habits, card.plan.fibre_g))
    return Lines(tr("Fibre to weigh out, dry"), lines)


def _what_for(load: Load) -> str:
    if not load.lots:
        return tr("nothing is short of it: it leads to the next, and goes to stock")
    if load.to_stock_g < LEAST_LEFT_G:
        return tr("{0} g short").format(grams(load.short_g))
    return tr("{0} g short; {1} g will be left over").format(grams(load.short_g), grams(load.to_stock_g))


def _what_fibre_holds(habits: DyeingHabits, fibre_g: float) -> Line:
    told_in = tr("In it: {0} % for scouring, {1} % for handling, and a sample of {2} g from each load.")
    text = told_in.format(
        f"{habits.scouring_loss_percent:g}", f"{habits.handling_loss_percent:g}", f"{habits.sample_g:g}"
    )
    air = tr("Weigh it as it lies in the room: about {0} g of it are water from the air (regain {1} %, ASTM D2118).")
    return Line(text, "", (air.format(number(fibre_g - bone_dry_g(fibre_g)), REGAIN_PERCENT),))


def _pot(card: BathCard, weigh: Weigh) -> Lines:
    plan = card.plan
    gathering = tuple(tr(each.short) for each in cautions_at("gathering"))
    lines = [
        Line(
            tr("{0} ({1})").format(plan.bath.dyestuff, tr(plan.bath.state)),
            weigh(plan.dyestuff_g),
            (_sentence(card.supply.text), *_shelf_words(card)),
            gathering,
        )
    ]
    advice = {each.portion.name: each.text for each in card.assists}
    lines += [_weighed(each, told(advice.get(each.name, "")), weigh) for each in card.weighed]
    if any(each.spoons for each in card.weighed):
        lines.append(Line(tr(WEIGH_INSTEAD)))
    hot = tuple(tr(each.short) for each in cautions_at("hot pot"))
    water = tr("{0} L").format(number(plan.water_l, 1))
    lines.append(Line(tr("water"), water, (_sentence(card.pot.text),), hot))
    lines += [Line(tr("{0}, not as usual").format(plan.bath.id), "", (_sentence(note),)) for note in card.notes]
    return Lines(tr("Into the pot"), [*lines, *_shared(card, weigh)])


def _shelf_words(card: BathCard) -> Iterator[str]:
    for each in card.supply.uncounted:
        told_of = tr("{0} g lie there {1}; write down what 100 g dry to, and they count.")
        yield told_of.format(grams(each.on_hand_g), tr(each.state))
    names = [name for name in card.supply.identified_by if name]
    if names:
        yield tr("identified by {0}").format(", ".join(names))
    elif card.supply.is_listed and card.supply.identified_by:
        yield tr("Nobody is named who identified it.")


def _weighed(each: Weighed, advice: str, weigh: Weigh) -> Line:
    more = [_sentence(text) for text in (advice, each.other.text if each.other else "") if text]
    if each.spoons:
        more.append(told(each.spoons.text))
    cautions = tuple(tr(caution.short) for caution in cautions_of(each.name))
    return Line(each.name, weigh(each.grams), tuple(more), cautions)


def _shared(card: BathCard, weigh: Weigh) -> Iterator[Line]:
    for each in card.mordantings:
        if len(each.baths) > 1 or len(each.turns) > 1:
            yield Line(
                tr("mordanted together"),
                weigh(each.fibre_g),
                (tr("with {0}; see Mordanting").format(", ".join(bath for bath, _ in each.baths)),),
            )


def _days(card: BathCard) -> Lines:
    title = tr("The days: {0} from weighing to dry yarn").format(duration(card.hours))
    seen: set[tuple[str, str]] = set()
    lines = []
    for step in card.timetable:
        fresh = tuple(each for each in step.cautions if (step.kind, each) not in seen)  # told once for all loads
        seen.update((step.kind, each) for each in fresh)
        lines.append(_step(step, fresh))
    return Lines(title, lines)


def _step(step: Step, cautions: tuple[str, ...]) -> Line:
    begins = tr("after {0}").format(duration(step.starts_h)) if step.starts_h else tr("at once")
    where_from = f"{begins}; {tr(step.source)}"
    return Line(told(step.text), duration(step.hours), (where_from,), tuple(map(tr, cautions)))


def _care(card: BathCard) -> Lines:
    lines = [Line(f"–  {tr(caution.text)}") for caution in card.cautions]
    return Lines(tr("With care"), [Line(tr(DEFERS)), *lines])


def _sentence(text: str) -> str:
    text = told(text)
    return f"{text[:1].upper()}{text[1:]}."
