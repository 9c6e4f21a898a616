"""The shopping list: what is to be wound, gathered or bought before the first bath, each thing with a box to tick."""

from collections.abc import Iterator, Sequence

from chartmaker.appraisal import Appraisal
from chartmaker.dye.shopping import ShoppingItem
from chartmaker.planning import plan_for
from chartmaker.sheets.boxes import Marks, Style
from chartmaker.sheets.flow import SMALL, Block, heading, paragraph, space
from chartmaker.sheets.ink import BLACK
from chartmaker.sheets.marks import TICK_BOX
from chartmaker.sheets.numbers import one_place
from chartmaker.sheets.tables import Cell, Column, Drawn, scaled, table

LIST = Style(12.0)
LIST_STRONG = Style(12.0, bold=True)
HEADINGS = {
    "yarn": "Undyed yarn",
    "dyestuff": "To gather or buy: dyestuffs",
    "mordant": "Mordants",
    "assist": "For the liquor",
}
"""By the kinds of things, in the order of the list."""
UNCOUNTED = "Nobody keeps count of mordants and assists: look on the shelf first."


def shopping_blocks(appraisal: Appraisal, *, width: float) -> list[Block]:
    """Lay out the list, by kinds of things."""
    items = plan_for([appraisal]).shopping
    if not items:
        words = "Nothing has to be got: no bath is needed for this hat."
        return [heading("Shopping list", width=width), *paragraph(words, width=width, style=LIST)]
    blocks: list[Block] = []
    for kind, title in HEADINGS.items():
        found = [item for item in items if item.kind == kind]
        if found:
            blocks += [heading(title, width=width), *_table(found, width), *_cautions(found, width)]
    if any(item.at_hand_g is None for item in items):
        blocks += [space(2.0), *paragraph(UNCOUNTED, width=width, style=SMALL)]
    return blocks


def _table(items: Sequence[ShoppingItem], width: float) -> list[Block]:
    columns = scaled(
        (
            Column("", 9),
            Column("", 76, style=LIST_STRONG, most_lines=3),
            Column("to get, g", 26, "right", LIST_STRONG),
            Column("skeins", 18, "right", LIST),
            Column("needed, g", 26, "right", LIST),
            Column("at hand, g", 26, "right", LIST),
        ),
        width,
    )
    return table(columns, [_row(item) for item in items], pad=1.4)


def _row(item: ShoppingItem) -> list[Cell]:
    return [
        Drawn(5.0, (Marks(TICK_BOX, ((2.4, 2.9),), 4.2, BLACK),)),
        item.name,
        one_place(item.missing_g),
        str(item.skeins) if item.skeins else "",
        one_place(item.needed_g),
        "–" if item.at_hand_g is None else one_place(item.at_hand_g),
    ]


def _cautions(items: Sequence[ShoppingItem], width: float) -> Iterator[Block]:
    """Give each caution once, with what it is about."""
    told: dict[str, list[str]] = {}
    for item in items:
        for words in item.cautions:
            told.setdefault(words, []).append(item.name)
    for words, names in told.items():
        yield from paragraph(f"{', '.join(names)}: {words}", width=width, style=SMALL)
