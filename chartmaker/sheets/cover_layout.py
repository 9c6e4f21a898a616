"""The cover: the hat's picture, and what a knitter asks first: how large, at which gauge, of which yarn."""

from collections.abc import Iterator

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.model.units import Units
from chartmaker.sheets.boxes import Box, Picture, Pixels, Style, moved, text_at
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.flow import BODY, Block, fact, flowed, heading, height_of, paragraph, space
from chartmaker.sheets.furniture import UNTITLED
from chartmaker.sheets.ink import ACCENT, QUIET
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.legend import CHIP_MM, chip, look_of, lot_name
from chartmaker.sheets.lines import MM_PER_PT, wrapped
from chartmaker.sheets.numbers import count_of, gauge_words
from chartmaker.sheets.paper import Frame
from chartmaker.sheets.side_drawing import side_drawing
from chartmaker.sheets.tables import CELL_STRONG, CLOSE_PAD_MM, Cell, Column, Drawn, scaled, table

GREAT_PT, SMALL_GREAT_PT = 26.0, 20.0
"""The title's size, and on narrow pages."""
GREAT_LEADING = 1.15
COLOURWAY = Style(12.0, ink=ACCENT)
GUTTER_MM = 8.0
WIDE_SHARE = 1.15
"""Pages wider than this share of their height have the pictures beside the facts."""
MOST_PICTURE_SHARE, LEAST_PICTURE_SHARE = 0.48, 0.3
"""Of the page's height, where the facts stand below them."""
SIDE_BY_SIDE_SHARE = 1.0
"""Rooms wider than this share of their height have picture and drawing beside each other."""
PICTURE_PART = 0.48
"""Of the width, where the drawing stands beside it."""
NAME_MM = 24.0
MOST_TITLE_LINES = 3
SHAPE_WORDS = {"cap": "close cap", "tam": "tam", "stocking": "stocking cap"}


def cover_pages(appraisal: Appraisal, job: PrintJob) -> list[tuple[Box, ...]]:
    """Lay out the cover; what its first page cannot hold goes to a second."""
    frame = job.sheet.cover_frame
    if frame.width > WIDE_SHARE * frame.height:
        half = (frame.width - GUTTER_MM) / 2
        words = Frame(frame.left + half + GUTTER_MM, frame.top, frame.right, frame.bottom)
        images = _images(appraisal, job, half, frame.height)
        placed = moved(images.boxes, frame.left, frame.top + (frame.height - images.height) / 2)
        pages = flowed([*_title(appraisal, words.width), *_facts(appraisal, job.units, words.width)], words)
        return [(*placed, *pages[0]), *pages[1:]]
    title, facts = [*_title(appraisal, frame.width)], [*_facts(appraisal, job.units, frame.width)]
    left = frame.height - height_of([*title, *facts]) - 8.0
    most = min(MOST_PICTURE_SHARE * frame.height, max(left, LEAST_PICTURE_SHARE * frame.height))
    return flowed([*title, space(3.0), _images(appraisal, job, frame.width, most), space(2.0), *facts], frame)


def _images(appraisal: Appraisal, job: PrintJob, width: float, most: float) -> Block:
    """Give the picture and the measured drawing: beside each other, or below, as fills the room better."""
    if job.picture is None:
        return side_drawing(appraisal, job.units, width=width, height=min(most, 0.8 * width))
    if width > SIDE_BY_SIDE_SHARE * most:
        wide = (width - GUTTER_MM) * PICTURE_PART
        picture = _picture(job.picture, wide, most)
        drawing = side_drawing(appraisal, job.units, width=width - wide - GUTTER_MM, height=min(most, 1.1 * wide))
        height = max(picture.height, drawing.height)
        boxes = [
            *moved(picture.boxes, 0.0, (height - picture.height) / 2),
            *moved(drawing.boxes, wide + GUTTER_MM, (height - drawing.height) / 2),
        ]
        return Block(height, tuple(boxes))
    picture = _picture(job.picture, width, 0.58 * most)
    drawing = side_drawing(appraisal, job.units, width=width, height=0.38 * most)
    below = picture.height + 0.04 * most
    return Block(below + drawing.height, (*picture.boxes, *moved(drawing.boxes, 0.0, below)))


def _picture(pixels: Pixels, width: float, most: float) -> Block:
    """Give the picture in the middle of the width, as large as fits."""
    scale = min(width / pixels.width, most / pixels.height)
    wide, high = pixels.width * scale, pixels.height * scale
    return Block(high, (Picture(((width - wide) / 2, 0.0, wide, high), pixels),))


def _title(appraisal: Appraisal, width: float) -> Iterator[Block]:
    design = appraisal.design
    style = Style(GREAT_PT if width > 140 else SMALL_GREAT_PT, bold=True)
    height = style.size_pt * GREAT_LEADING * MM_PER_PT
    title = design.title.strip() or UNTITLED
    lines = wrapped(title, most_mm=width, size_pt=style.size_pt, bold=True, most_lines=MOST_TITLE_LINES)
    for line in lines:
        yield Block(height, (text_at(0, 0.8 * height, line, style),), keeps_next=True)
    if design.colourway.name.strip():
        yield Block(
            7.0, (text_at(0, 4.6, f"Colourway: {design.colourway.name}", COLOURWAY, most=width),), keeps_next=True
        )


def _facts(appraisal: Appraisal, units: Units, width: float) -> Iterator[Block]:
    yield heading("Size", width=width)
    for name, text in _sizes(appraisal, units):
        yield from fact(name, text, width=width, name_width=NAME_MM)
    yield heading("Yarn", width=width)
    yield from _yarn(appraisal, units, width)
    notes = appraisal.design.notes.strip()
    if notes:
        yield space(2.0)
        yield from paragraph(notes, width=width, style=Style(BODY.size_pt, ink=QUIET), most_lines=5)


def _sizes(appraisal: Appraisal, units: Units) -> Iterator[tuple[str, str]]:
    design, told = appraisal.design, units.length.told
    gauge, hat = design.gauge, design.hat
    yield "Shape", f"{SHAPE_WORDS[hat.shape]}, {len(appraisal.rounds)} rounds in {count_of(len(design.bands), 'band')}"
    yield "To fit", f"a head of {told(hat.head_cm)}, with {hat.ease_percent:+g} % ease"
    stitches = count_of(appraisal.cast_on_stitches, "stitch")
    yield "Measures", f"{told(appraisal.circumference_cm)} round ({stitches}), {told(appraisal.height_cm)} high"
    yield "Gauge", f"{gauge_words(gauge, units)}, stranded"


def _yarn(appraisal: Appraisal, units: Units, width: float) -> list[Block]:
    look, yarn, weight = look_of(appraisal), units.yarn.unit.strip(), units.weight.unit.strip()
    columns = scaled(
        (
            Column("", 7, style=CELL_STRONG),
            Column("", 10),
            Column("lot", 68),
            Column(f"{yarn}, likely", 20, "right"),
            Column(f"{weight} to have", 20, "right", CELL_STRONG),
        ),
        width,
    )
    return table(columns, [_row(item, look, units) for item in appraisal.letters], pad=CLOSE_PAD_MM)


def _row(item: LetterAppraisal, look: Look, units: Units) -> list[Cell]:
    need = item.requirement
    return [
        item.letter,
        Drawn(CHIP_MM, tuple(chip(0, 0, item, look))),
        lot_name(item),
        units.yarn.figure(need.metres.likely),
        units.weight.figure(need.planned_g),
    ]
