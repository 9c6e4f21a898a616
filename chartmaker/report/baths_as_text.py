"""The plan of the dye pot as lines for the terminal."""

from collections.abc import Iterator

from chartmaker.dye.cautions import DEFERS, cautions_of
from chartmaker.dye.dye_plan import BathCard, DyePlan
from chartmaker.dye.fibre import REGAIN_PERCENT, bone_dry_g, tenths
from chartmaker.dye.mordanting import Mordanting
from chartmaker.dye.shopping import ShoppingItem
from chartmaker.dye.spoons import WEIGH_INSTEAD


def baths_as_text(plan: DyePlan) -> str:
    """Give baths, shared mordantings, the shopping list, then the cautions."""
    return "\n".join(_lines(plan))


def _lines(plan: DyePlan) -> Iterator[str]:
    if not plan.needs:
        yield "Nothing is short: no bath is needed."
        return
    for card in plan.cards:
        yield from _card(card, plan)
        yield ""
    if plan.mordantings:
        yield "Mordanting, all skeins of a mordant together"
        for each in plan.mordantings:
            yield from _mordanting(each)
        yield ""
    for need in plan.without_bath:
        yield f"Short by {tenths(need.short_g)} g, but no bath is known that gives it: {need.lot}"
    yield "To be got"
    yield from map(_item, plan.shopping)
    yield ""
    yield DEFERS
    for text in dict.fromkeys(caution.text for card in plan.cards for caution in card.cautions):
        yield f"- {text}"


def _card(card: BathCard, plan: DyePlan) -> Iterator[str]:
    bath = card.plan.bath
    yield f"Bath {bath.id}: {' '.join(filter(None, (bath.dyestuff, bath.part)))} ({bath.state})"
    for load, strength in zip(card.plan.loads, card.strengths, strict=True):
        lots = ", ".join(f"{lot} short by {grams:.0f} g" for lot, grams in load.lots) or "to stock, leads on"
        skeins = f" in {_skeins(load.skeins)}" if load.skeins else ""
        basis = "assumed" if strength.is_assumed else "by the lots measured"
        yield (
            f"  load {load.load}: {tenths(load.fibre_g)} g of fibre{skeins}, {lots}; "
            f"dye {strength.likely:.2f} of the first load's ({basis})"
        )
    habits = plan.palette.dyeing
    yield (
        f"  fibre includes {habits.scouring_loss_percent:g} % for scouring, {habits.handling_loss_percent:g} % for "
        f"handling and a sample of {habits.sample_g:g} g a load"
    )
    water = card.plan.fibre_g - bone_dry_g(card.plan.fibre_g)
    yield f"  weigh it as it lies in the room: {water:.0f} g of it are water (regain {REGAIN_PERCENT} %, ASTM D2118)"
    for each in card.plan.joined:
        strong = f"{each.times_as_strong:.2f} times its dye"
        yield f"  {each.lot}, of bath {each.bath}, comes from load {each.load}, {strong}"
    yield f"  {card.supply.text}"
    for there in card.supply.uncounted:
        yield f"  {tenths(there.on_hand_g)} g lie there {there.state}; write down what 100 g dry to, and they count"
    if card.supply.is_listed and not all(card.supply.identified_by):
        yield "  nobody is named who identified it"
    yield f"  water {card.plan.water_l:.1f} L: {card.pot.text}"
    for one in card.weighed:
        helps = [each.text for each in (one.spoons, one.other) if each]
        yield "; ".join((f"  {one.name} {one.grams:.1f} g", *helps))
        yield from (f"    ! {caution.short}" for caution in cautions_of(one.name))
    if any(one.spoons for one in card.weighed):
        yield f"  {WEIGH_INSTEAD}"
    yield from (f"  {advice.text}" for advice in card.assists)
    yield from (f"  note: {note}" for note in card.notes)
    for step in card.timetable:
        yield f"  {step.starts_h:5.1f} h  {step.text} ({step.source})"
        yield from (f"           ! {caution}" for caution in step.cautions)


def _mordanting(each: Mordanting) -> Iterator[str]:
    names = ", ".join(f"{portion.name} {portion.grams:.1f} g" for portion in each.portions)
    baths = ", ".join(f"{bath} {tenths(fibre)} g" for bath, fibre in each.baths)
    yield f"  {names} for {tenths(each.fibre_g)} g ({baths}): {each.pot.text}"
    if len(each.turns) > 1:
        for number, turn in enumerate(each.turns, start=1):
            told = ", ".join(f"{portion.name} {portion.grams:.1f} g" for portion in turn.mordants)
            yield f"    turn {number}: {tenths(turn.fibre_g)} g in {turn.water_l:.1f} L, {told}"


def _item(item: ShoppingItem) -> str:
    skeins = f", {_skeins(item.skeins)}" if item.skeins else ""
    there = "" if not item.at_hand_g else f" ({tenths(item.needed_g)} g less {tenths(item.at_hand_g)} g at hand)"
    return f"  {item.name}: {item.missing_g:.1f} g{skeins}{there}"


def _skeins(count: int) -> str:
    return "1 skein" if count == 1 else f"{count} skeins"
