"""The bath sheet: a stove card for each bath, then times and room for what really happened, then the cautions."""

from collections.abc import Iterator
from dataclasses import replace

from chartmaker.appraisal import Appraisal
from chartmaker.dye.dye_plan import BathCard, DyePlan
from chartmaker.dye.plan import Load
from chartmaker.dye.spoons import WEIGH_INSTEAD
from chartmaker.dye.timetable import Step
from chartmaker.model.units import METRIC, Units
from chartmaker.planning import plan_for
from chartmaker.sheets.bath_card import card_pages, dyestuff_name, warned
from chartmaker.sheets.boxes import Body, Bookmark, Box, Lines, Marks, Segment, Style, text_at
from chartmaker.sheets.cautions import DEFERS, cautions_for
from chartmaker.sheets.flow import (
    BODY,
    SMALL,
    Block,
    bulleted,
    flowed,
    heading,
    height_of,
    kept,
    line_height,
    paragraph,
    space,
    stacked,
)
from chartmaker.sheets.ink import ACCENT, BLACK
from chartmaker.sheets.marks import GRADE_MARKS, TICK_BOX, WARNING
from chartmaker.sheets.paper import Frame
from chartmaker.sheets.tables import CELL, CLOSE_PAD_MM, GUTTER_MM, Cell, Column, Drawn, scaled, table

PLAIN = Style(11.0)
WARNED = Style(8.0, bold=True)
NARROW_MM = 150.0
FILL_IN_MM = 12.0
"""From row to row of what is filled in by hand."""


def bath_pages(appraisal: Appraisal, units: Units = METRIC, *, frame: Frame) -> list[Body]:
    """Lay out the bath sheet: each card begins a page, and fills it."""
    plan = plan_for([appraisal])
    pages: list[Body] = []
    for card in plan.cards:
        mark = Bookmark(f"{dyestuff_name(card.plan.bath)}, bath {card.plan.bath.id}", level=1)
        made = card_pages(card, plan, units, frame=frame)
        pages += [Body(made[0], (mark,)), *(Body(boxes) for boxes in made[1:])]
    rest = [
        *([] if plan.cards else _no_baths(appraisal, frame.width)),
        *(block for card in plan.cards for block in _together(list(_days(card, frame.width)), frame)),
        *_without_recipe(appraisal, plan, units, frame.width),
        *_cautions(plan, frame.width),
    ]
    return [*pages, *(Body(boxes) for boxes in flowed(rest, frame))]


def _no_baths(appraisal: Appraisal, width: float) -> Iterator[Block]:
    yield heading("No bath to run", width=width)
    if any(item.requirement.short_g > 0 for item in appraisal.letters):
        return
    without = [item.letter for item in appraisal.letters if item.lot is None]
    if without:
        told = (
            f"No bath can be planned for letters without a lot: {', '.join(without)}. Give them lots and print again."
        )
        yield from paragraph(told, width=width, style=PLAIN)
        return
    yield from paragraph(
        "Nothing is short: there is enough of every lot on hand, the reserve included. Set the yarn of this hat aside "
        "together, and keep a tied sample of each lot with this sheet.",
        width=width,
        style=PLAIN,
    )


def _together(days: list[Block], frame: Frame) -> list[Block]:
    """Keep a bath's times and its record on one page, where one holds them."""
    return kept(days) if height_of(days) <= frame.height else days


def _days(card: BathCard, width: float) -> Iterator[Block]:
    """Give the times of one bath, what is good to know of it, and room to write down what the pot really did."""
    bath = card.plan.bath
    title = f"{dyestuff_name(bath)}, bath {bath.id}"
    yield heading(f"{title}: times and record", width=width)
    columns = scaled((Column("", 8), Column("from hour", 20, "right"), Column(f"bath {bath.id}", 150)), width)
    room = columns[-1].width - GUTTER_MM
    yield from table(columns, [_step(step, room) for step in card.timetable], pad=CLOSE_PAD_MM)
    yield space(1.5)
    notes = [line for text in _good_to_know(card) for line in paragraph(text, width=width, style=SMALL)]
    record = [_to_fill_in(load, width) for load in card.plan.loads]
    again = heading(f"{title}: record", width=width)
    yield from (replace(block, head=again) for block in (*notes, *record))
    yield space(3.0)


def _step(step: Step, room: float) -> list[Cell]:
    """Give a step with its box to tick, and below its words what the hand must mind there."""
    tick = Drawn(3.6, (Marks(TICK_BOX, ((1.6, 2.1),), 3.0, BLACK),))
    lines = paragraph(f"{step.text} ({step.source})", width=room, style=CELL)
    for words in step.cautions:
        lines += warned(words, 0.0, room, WARNED)
    return [tick, f"{step.starts_h:.1f}", Drawn(height_of(lines), tuple(stacked(lines)))]


def _good_to_know(card: BathCard) -> Iterator[str]:
    habits = card.plan.loads[0].habits
    yield (
        f"Fibre is weighed dry: what is short, {habits.scouring_loss_percent:g} % that scouring and "
        f"{habits.handling_loss_percent:g} % that handling cost, and a sample of {habits.sample_g:g} g a load."
    )
    yield f"{card.supply.text[:1].upper()}{card.supply.text[1:]}."
    yield f"Pot: {card.pot.text}."
    spoons = [f"{each.name}: {each.spoons.text}" for each in card.weighed if each.spoons]
    if spoons:
        yield f"{'; '.join(spoons)}. {WEIGH_INSTEAD}"
    yield from card.notes


def _to_fill_in(load: Load, width: float) -> Block:
    """Give room for what the pot really did with one load, in one row or on narrow pages in two."""
    names = (f"load {load.load}: date", "hottest, °C", "minutes", "pH", "dry weight after, g")
    in_row = len(names) if width >= NARROW_MM else 3
    cell = width / in_row
    boxes: list[Box] = []
    lines: list[Segment] = []
    y = 0.0
    for place, name in enumerate(names):
        x = place % in_row * cell
        y = 9.0 + place // in_row * FILL_IN_MM
        boxes.append(text_at(x, y + 3.4, name, SMALL, most=cell - 3))
        lines.append((x, y, x + cell - 4, y))
    return Block(y + 5.0, (*boxes, Lines(tuple(lines), 0.2, BLACK)))


def _without_recipe(appraisal: Appraisal, plan: DyePlan, units: Units, width: float) -> Iterator[Block]:
    """Name what is short and no bath gives: letters without a lot, and lots without a bath."""
    lots = {need.lot for need in plan.without_bath}
    missing = [
        item for item in appraisal.letters if item.requirement.short_g > 0 and (item.lot is None or item.lot.id in lots)
    ]
    if not missing:
        return
    yield heading("Short, but without a recipe", width=width)
    for item in missing:
        name = item.lot.name if item.lot else "no lot yet"
        short = units.weight.told(item.requirement.short_g)
        text = f"{item.letter}, {name}: short by {short}; no bath is known that gives it."
        yield from paragraph(text, width=width, style=PLAIN)


def _cautions(plan: DyePlan, width: float) -> Iterator[Block]:
    yield heading("With care", width=width)
    lines = [*_deferring(width), space(1.5)]
    names = tuple(weighed.name for card in plan.cards for weighed in card.weighed)
    for caution in cautions_for(names):
        bullet = [Marks(GRADE_MARKS["clear"], ((1.6, 2.5),), 1.6, ACCENT)]
        lines += [*bulleted(caution.text, width=width, bullet=bullet, indent=5.5), space(0.4)]
    yield from kept(lines)


def _deferring(width: float) -> list[Block]:
    sign: list[Box] = [Marks(WARNING, ((2.0, 0.5 * line_height(BODY)),), 4.0, BLACK)]
    return bulleted(DEFERS, width=width, bullet=sign, style=Style(BODY.size_pt, bold=True))
