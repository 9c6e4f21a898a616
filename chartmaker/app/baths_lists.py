"""What all baths share: mordantings, and what is to be got."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.bath_lines import Line, Lines, column_of, narrow
from chartmaker.app.told import told
from chartmaker.app.words import grams, number, tr
from chartmaker.dye.cautions import DEFERS, cautions_at, cautions_of

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.dye_weights import Weigh
    from chartmaker.dye.dye_plan import DyePlan
    from chartmaker.dye.mordanting import Mordanting
    from chartmaker.dye.shopping import ShoppingItem


def mordanting_pane(plan: DyePlan, weigh: Weigh) -> QWidget:
    """Give each mordanting with its pot, its turns, and the cautions of what is in it."""
    parts = [_mordanting(each, weigh) for each in plan.mordantings]
    return narrow(column_of([*parts, Lines("", [Line(tr(DEFERS))])], spacing=16))


def shopping_pane(plan: DyePlan, weigh: Weigh) -> QWidget:
    """Give what is to be gathered, bought and wound."""
    kinds = {
        "yarn": tr("Undyed yarn"),
        "dyestuff": tr("Dyestuffs"),
        "mordant": tr("Mordants"),
        "assist": tr("Assists"),
    }
    parts = []
    for kind, title in kinds.items():
        items = [item for item in plan.shopping if item.kind == kind]
        if items:
            for_all = items[0].cautions if all(item.cautions == items[0].cautions for item in items) else ()
            lines = [_item(item, weigh, but=for_all) for item in items]
            parts.append(Lines(title, [*lines, *(Line("", "", (), tuple(map(tr, for_all))) for _ in for_all[:1])]))
    return narrow(column_of(parts, spacing=16))


def _mordanting(each: Mordanting, weigh: Weigh) -> Lines:
    shares = (tr("{0} {1} %").format(mordant.name, f"{mordant.percent_wof:g}") for mordant in each.mordants)
    names = tr("{0} of the fibre").format(", ".join(shares))
    baths = ", ".join(tr("{0}: {1} g").format(bath, grams(fibre)) for bath, fibre in each.baths)
    when = tr("after the dyeing, load by load") if each.metal else tr("before the dyeing, all together")
    lines = [Line(when, tr("{0} of fibre").format(weigh(each.fibre_g)), (baths, _sentence(each.pot.text)))]
    several = len(each.turns) > 1
    for number_, turn in enumerate(each.turns, start=1):
        if several:
            lines.append(Line(tr("turn {0}").format(number_), tr("{0} of fibre").format(weigh(turn.fibre_g))))
        for portion in turn.mordants:
            cautions = tuple(tr(caution.short) for caution in cautions_of(portion.name)) if number_ == 1 else ()
            lines.append(Line(portion.name, weigh(portion.grams), (), cautions))
        lines.append(Line(tr("water"), tr("{0} L").format(number(turn.water_l, 1))))
    general = tuple(tr(caution.short) for place in ("powder", "hot pot") for caution in cautions_at(place))
    lines.append(Line(tr("at the pot"), "", (), general))
    return Lines(names, lines)


def _item(item: ShoppingItem, weigh: Weigh, *, but: tuple[str, ...]) -> Line:
    """Give one thing with its cautions, `but` for those that stand below for all."""
    value = weigh(item.missing_g)
    if item.skeins:
        value += " · " + (tr("1 skein") if item.skeins == 1 else tr("{0} skeins").format(item.skeins))
    more: tuple[str, ...] = ()
    if item.at_hand_g:
        more = (tr("{0} g needed, {1} g at hand").format(grams(item.needed_g), grams(item.at_hand_g)),)
    if item.missing_g < 0.05 and item.at_hand_g is not None:
        value = tr("enough")
    return Line(item.name, value, more, () if but else tuple(map(tr, item.cautions)))


def _sentence(text: str) -> str:
    text = told(text)
    return f"{text[:1].upper()}{text[1:]}."
