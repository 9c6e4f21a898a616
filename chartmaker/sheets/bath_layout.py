"""The bath sheet: a card for each bath to run, to be ticked off at the pot, and the cautions that go with it."""

from collections.abc import Iterator

from chartmaker.appraisal import Appraisal
from chartmaker.dye.plan import BathPlan, Load, Portion
from chartmaker.model.palette import Bath
from chartmaker.sheets.boxes import Lines, Marks, Style, text_at
from chartmaker.sheets.cautions import DEFERS, cautions_for
from chartmaker.sheets.flow import SMALL, Block, bulleted, heading, line_height, paragraph, space
from chartmaker.sheets.ink import ACCENT, BLACK, QUIET
from chartmaker.sheets.marks import GRADE_MARKS, TICK_BOX
from chartmaker.sheets.numbers import one_place

CARD = Style(11.0)
"""Larger than the other sheets: it is read at arm's length, through steam."""
CARD_TITLE = Style(15.0, bold=True)
POT_PER_LIQUOR = 1.5
"""Volume of a pot to that of its liquor, so that fibre moves and nothing boils over: common practice, no source."""
MOST_NOTE_LINES = 12
WEIGHTS = (
    "The fibre is what the hat is short of, the reserve included; add what scouring, winding and a sample for your "
    "records will take."
)


def bath_blocks(appraisal: Appraisal, *, width: float) -> list[Block]:
    """Lay out the bath sheet: the cards, then what no bath can be planned for, then the cautions."""
    blocks: list[Block] = []
    if not appraisal.baths:
        blocks += _no_baths(appraisal, width)
    for plan in appraisal.baths:
        blocks += _card(appraisal, plan, width)
    blocks += _without_recipe(appraisal, width)
    return [*blocks, *_cautions(appraisal, width)]


def _no_baths(appraisal: Appraisal, width: float) -> Iterator[Block]:
    yield heading("No bath to run", width=width)
    if any(item.requirement.short_g > 0 for item in appraisal.letters):
        return
    without = [item.letter for item in appraisal.letters if item.lot is None]
    if without:
        told = (
            f"No bath can be planned for letters without a lot: {', '.join(without)}. Give them lots and print again."
        )
        yield from paragraph(told, width=width, style=CARD)
        return
    yield from paragraph(
        "Nothing is short: there is enough of every lot on hand, the reserve included. Set the yarn of this hat aside "
        "together, and keep a tied sample of each lot with this sheet.",
        width=width,
        style=CARD,
    )


def _card(appraisal: Appraisal, plan: BathPlan, width: float) -> Iterator[Block]:
    bath = plan.bath
    height = line_height(CARD_TITLE)
    title = text_at(0, height + 1.0, f"{_dyestuff(bath)}", CARD_TITLE, most=0.66 * width)
    name = text_at(width, height + 1.0, f"bath {bath.id}", Style(10.0, ink=QUIET), align="right", most=0.3 * width)
    rule = Lines(((0, height + 3.2, width, height + 3.2),), 0.5, ACCENT)
    yield Block(height + 5.2, (title, name, rule), keeps_next=True)
    for step in _steps(appraisal, plan):
        yield from _ticked(step, width)
    if bath.notes.strip():
        yield from paragraph(f"Notes: {bath.notes}", width=width, style=CARD, most_lines=MOST_NOTE_LINES)
    for load in plan.loads:
        yield _to_fill_in(load, width)
    yield from paragraph(WEIGHTS, width=width, style=SMALL)
    yield space(5.0)


def _dyestuff(bath: Bath) -> str:
    parts = [bath.dyestuff, bath.part, f"({bath.state})"]
    return " ".join(part for part in parts if part.strip())


def _steps(appraisal: Appraisal, plan: BathPlan) -> Iterator[str]:
    bath = plan.bath
    for load in plan.loads:
        yield f"Weigh fibre, dry, for load {load.load}: {one_place(load.fibre_g)} g, {_purpose(appraisal, load)}"
    yield f"Wet out all {one_place(plan.fibre_g)} g until no air is left in it"
    if plan.mordants:
        yield f"Mordant all loads together: {_portions(plan.mordants)}"
    yield f"Dyestuff, {_dyestuff(bath)}: {one_place(plan.dyestuff_g)} g"
    yield (
        f"Water: {one_place(plan.water_l)} l; a pot of at least {one_place(POT_PER_LIQUOR * plan.water_l)} l takes it"
    )
    if plan.assists:
        yield f"Into the liquor: {_portions(plan.assists)}"
    if _run(bath):
        yield _run(bath)
    for load in plan.loads[1:]:
        yield f"Lift the fibre out, and put load {load.load} ({one_place(load.fibre_g)} g) into the same liquor"
    yield "Let it cool, rinse, dry in the shade; tie a label with bath and load to every skein"


def _portions(portions: tuple[Portion, ...]) -> str:
    return ", ".join(f"{portion.name} {one_place(portion.grams)} g" for portion in portions)


def _purpose(appraisal: Appraisal, load: Load) -> str:
    lot = appraisal.design.palette.lot(load.lot)
    name = lot.name if lot else (load.lot or "no lot of this load is known")
    if load.short_g > 0:
        return f"for {name} (short by {one_place(load.short_g)} g)"
    return f"goes to stock: {name}; it leads to the next load"


def _run(bath: Bath) -> str:
    parts = []
    if bath.hottest_c is not None:
        parts.append(f"no hotter than {bath.hottest_c:g} °C")
    if bath.minutes is not None:
        parts.append(f"{bath.minutes:g} minutes")
    if bath.ph_start is not None:
        parts.append(f"pH {bath.ph_start:g} at the start")
    if bath.ph_end is not None:
        parts.append(f"pH {bath.ph_end:g} at the end")
    return f"Each load: {', '.join(parts)}" if parts else ""


def _ticked(text: str, width: float) -> list[Block]:
    middle = 0.76 * line_height(CARD) - 1.3
    bullet = [Marks(TICK_BOX, ((1.9, middle),), 3.4, BLACK)]
    return [*bulleted(text, width=width, bullet=bullet, style=CARD, indent=7.0), space(1.6)]


def _to_fill_in(load: Load, width: float) -> Block:
    """Give room for what the pot really did with one load."""
    names = (f"load {load.load}: date", "hottest, °C", "minutes", "pH", "dry weight after, g")
    cell = width / len(names)
    y = 9.0
    boxes = [text_at(place * cell, y + 3.4, name, SMALL, most=cell - 3) for place, name in enumerate(names)]
    lines = Lines(tuple((place * cell, y, (place + 1) * cell - 4, y) for place in range(len(names))), 0.2, BLACK)
    return Block(y + 5.0, (*boxes, lines))


def _without_recipe(appraisal: Appraisal, width: float) -> Iterator[Block]:
    planned = {load.lot for plan in appraisal.baths for load in plan.loads if load.short_g > 0}
    missing = [
        item
        for item in appraisal.letters
        if item.requirement.short_g > 0 and (item.lot is None or not _is_planned(appraisal, item.lot.id, planned))
    ]
    if not missing:
        return
    yield heading("Short, but without a recipe", width=width)
    for item in missing:
        name = item.lot.name if item.lot else "no lot yet"
        text = (
            f"{item.letter}, {name}: short by {one_place(item.requirement.short_g)} g; no bath is known that gives it."
        )
        yield from paragraph(text, width=width, style=CARD)


def _is_planned(appraisal: Appraisal, lot_id: str, planned: set[str]) -> bool:
    """Tell whether a lot, or another of the same bath and load, is dyed by some load that is planned."""
    palette = appraisal.design.palette
    lot = palette.lot(lot_id)
    sources = {found.source for found in map(palette.lot, planned) if found}
    return lot_id in planned or (lot is not None and lot.source is not None and lot.source in sources)


def _cautions(appraisal: Appraisal, width: float) -> Iterator[Block]:
    yield heading("With care", width=width)
    yield from paragraph(DEFERS, width=width)
    yield space(1.5)
    names = tuple(portion.name for plan in appraisal.baths for portion in (*plan.mordants, *plan.assists))
    for caution in cautions_for(names):
        bullet = [Marks(GRADE_MARKS["clear"], ((1.6, 2.5),), 1.6, ACCENT)]
        yield from bulleted(caution.text, width=width, bullet=bullet, indent=5.5)
        yield space(0.8)
