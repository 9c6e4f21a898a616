"""The cover: the hat's picture, and what a knitter asks first: how large, at which gauge, of which yarn."""

from collections.abc import Iterator

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.sheets.boxes import Box, Picture, Pixels, Style, text_at
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.flow import BODY, Block, fact, flowed, heading, paragraph, space
from chartmaker.sheets.furniture import UNTITLED
from chartmaker.sheets.hat_outline import hat_outline
from chartmaker.sheets.ink import ACCENT, QUIET
from chartmaker.sheets.legend import CHIP_MM, chip, look_of, lot_name
from chartmaker.sheets.lines import MM_PER_PT, wrapped
from chartmaker.sheets.numbers import count_of, one_place
from chartmaker.sheets.paper import Frame
from chartmaker.sheets.tables import CELL_STRONG, CLOSE_PAD_MM, Cell, Column, Drawn, scaled, table

GREAT_PT, SMALL_GREAT_PT = 26.0, 20.0
"""The title's size, and on narrow pages."""
GREAT_LEADING = 1.15
COLOURWAY = Style(12.0, ink=ACCENT)
WIDE_SHARE = 1.15
"""Pages wider than this share of their height have the picture beside the facts."""
MOST_PICTURE_SHARE = 0.46
"""Of the page's height, where the facts stand below it."""
NAME_MM = 24.0
MOST_TITLE_LINES = 3
SHAPE_WORDS = {"cap": "close cap", "tam": "tam", "stocking": "stocking cap"}


def cover_pages(appraisal: Appraisal, *, frame: Frame, picture: Pixels | None) -> list[tuple[Box, ...]]:
    """Lay out the cover; what its first page cannot hold goes to a second."""
    gutter = 10.0
    if frame.width > WIDE_SHARE * frame.height:
        half = (frame.width - gutter) / 2
        words = Frame(frame.left + half + gutter, frame.top, frame.right, frame.bottom)
        image = _picture(appraisal, picture, half, frame.height)
        top = frame.top + (frame.height - image.height) / 2
        placed = tuple(box.moved(frame.left, top) for box in image.boxes)
        pages = flowed(_words(appraisal, words.width), words)
        return [(*placed, *pages[0]), *pages[1:]]
    image = _picture(appraisal, picture, frame.width, MOST_PICTURE_SHARE * frame.height)
    title, facts = _title(appraisal, frame.width), _facts(appraisal, frame.width)
    return flowed([*title, space(3.0), image, space(2.0), *facts], frame)


def _picture(appraisal: Appraisal, picture: Pixels | None, width: float, most: float) -> Block:
    """Give the picture in the middle of the width, as large as fits; the outline where there is no picture."""
    if picture is None:
        wide = min(width, 110.0)
        outline = hat_outline(appraisal, width=wide, tallest=max(20.0, most - 16.0))
        shift = (width - wide) / 2
        return Block(outline.height, tuple(box.moved(shift, 0) for box in outline.boxes))
    scale = min(width / picture.width, most / picture.height)
    wide, high = picture.width * scale, picture.height * scale
    return Block(high, (Picture(((width - wide) / 2, 0.0, wide, high), picture),))


def _words(appraisal: Appraisal, width: float) -> list[Block]:
    return [*_title(appraisal, width), *_facts(appraisal, width)]


def _title(appraisal: Appraisal, width: float) -> Iterator[Block]:
    design = appraisal.design
    style = Style(GREAT_PT if width > 140 else SMALL_GREAT_PT, bold=True)
    height = style.size_pt * GREAT_LEADING * MM_PER_PT
    title = design.title.strip() or UNTITLED
    lines = wrapped(title, most_mm=width, size_pt=style.size_pt, bold=True, most_lines=MOST_TITLE_LINES)
    for line in lines:
        yield Block(height, (text_at(0, 0.8 * height, line, style),), keeps_next=True)
    if design.colourway.name.strip():
        yield Block(7.0, (text_at(0, 4.6, design.colourway.name, COLOURWAY, most=width),), keeps_next=True)


def _facts(appraisal: Appraisal, width: float) -> Iterator[Block]:
    yield heading("Size", width=width)
    for name, text in _sizes(appraisal):
        yield from fact(name, text, width=width, name_width=NAME_MM)
    yield heading("Yarn", width=width)
    yield from _yarn(appraisal, look_of(appraisal), width)
    notes = appraisal.design.notes.strip()
    if notes:
        yield space(2.0)
        yield from paragraph(notes, width=width, style=Style(BODY.size_pt, ink=QUIET), most_lines=5)


def _sizes(appraisal: Appraisal) -> Iterator[tuple[str, str]]:
    design = appraisal.design
    gauge, hat = design.gauge, design.hat
    yield "Shape", f"{SHAPE_WORDS[hat.shape]}, {len(appraisal.rounds)} rounds in {count_of(len(design.bands), 'band')}"
    yield "To fit", f"a head of {hat.head_cm:g} cm, with {hat.ease_percent:+g} % ease"
    stitches = count_of(appraisal.cast_on_stitches, "stitch")
    around = f"{one_place(appraisal.circumference_cm)} cm round ({stitches})"
    yield "Measures", f"{around}, {one_place(appraisal.height_cm)} cm high"
    yield "Gauge", f"{gauge.stitches_per_10cm:g} stitches and {gauge.rounds_per_10cm:g} rounds in 10 cm, stranded"


def _yarn(appraisal: Appraisal, look: Look, width: float) -> list[Block]:
    columns = scaled(
        (
            Column("", 7, style=CELL_STRONG),
            Column("", 10),
            Column("lot", 68),
            Column("m, likely", 20, "right"),
            Column("g to have", 20, "right", CELL_STRONG),
        ),
        width,
    )
    return table(columns, [_row(item, look) for item in appraisal.letters], pad=CLOSE_PAD_MM)


def _row(item: LetterAppraisal, look: Look) -> list[Cell]:
    need = item.requirement
    return [
        item.letter,
        Drawn(CHIP_MM, tuple(chip(0, 0, item, look))),
        lot_name(item),
        one_place(need.metres.likely),
        one_place(need.planned_g),
    ]
