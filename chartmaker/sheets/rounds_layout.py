"""The rounds sheet: the whole hat in words, each round with its number and a box to tick, in columns."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from chartmaker.appraisal import Appraisal
from chartmaker.knit.written import Instruction, WrittenBand, written
from chartmaker.model.units import METRIC, Units, in_units
from chartmaker.sheets.boxes import Box, Style, moved, outline_of, text_at
from chartmaker.sheets.flow import (
    BODY,
    SMALL,
    STRONG,
    Block,
    flowed_into,
    height_of,
    kept,
    line_height,
    paragraph,
    space,
)
from chartmaker.sheets.ink import ACCENT, QUIET
from chartmaker.sheets.legend import CHIP_MM, chip, look_of, lot_name
from chartmaker.sheets.lines import MM_PER_PT, width_mm
from chartmaker.sheets.paper import Frame

LINE = Style(8.8)
NUMBER = Style(8.8, bold=True)
BAND = Style(10.0, bold=True, ink=ACCENT)
GUTTER_MM = 7.0
"""Between columns."""
TICK_MM = 2.6
"""Side of the box to tick."""
TICK_ROOM_MM = 4.4
HEAD_ROOM_MM = 12.0
"""For the name of a band above the first round of a page."""
LINE_GAP_MM = 1.1
"""Below each instruction."""
NARROWEST_COLUMN_MM = 78.0
MOST_LINES_IN_COLUMN = 8
"""An instruction that needs more lines in a column asks for wider ones."""
LETTER_MM = 55.0
"""Room of a letter and its lot, at least."""
BREAKS = re.compile(r" (?![A-Z]\b|\*|more\b)(?<!\* )(?<!\] )(?<!rep )(?<!\d (?=times|sts?\b))")
"""Spaces at which a line may end: never between a stitch and its letter, a number and what it counts, or within the
words that repeat."""


@dataclass(frozen=True, slots=True)
class _Columns:
    """How the page is divided."""

    count: int
    frame: Frame

    @property
    def width(self) -> float:
        return (self.frame.width - (self.count - 1) * GUTTER_MM) / self.count

    def frames(self, first_top: float) -> Iterator[Frame]:
        """Walk the columns of page after page, those of the first page beginning lower."""
        top = first_top
        while True:
            for place in range(self.count):
                left = self.frame.left + place * (self.width + GUTTER_MM)
                yield Frame(left=left, top=top, right=left + self.width, bottom=self.frame.bottom)
            top = self.frame.top


def rounds_pages(appraisal: Appraisal, units: Units = METRIC, *, frame: Frame) -> list[tuple[Box, ...]]:
    """Lay out the pages of the rounds sheet, in page coordinates."""
    hat = written(appraisal.design)
    instructions = [one for band in hat.bands for one in band.instructions]
    label = max(width_mm(_numbers(one), size_pt=NUMBER.size_pt, bold=True) for one in instructions)
    columns = _columns(instructions, frame, label)
    intro = [*_letters(appraisal, frame.width), *_abbreviations(hat.abbreviations, frame.width), space(1.5)]
    *rounds, last = (
        block for number, band in enumerate(hat.bands, start=1) for block in _band(number, band, columns, label)
    )
    finish = [block for text in hat.finish for block in paragraph(in_units(text, units), width=columns.width)]
    body = [*paragraph(hat.cast_on, width=columns.width), *rounds, *kept([last, space(2.0), *finish])]
    parts = flowed_into(body, columns.frames(frame.top + height_of(intro)), most=frame.height)
    pages = [
        tuple(box for part in parts[start : start + columns.count] for box in part)
        for start in range(0, len(parts), columns.count)
    ]
    return [(*_placed(intro, frame), *pages[0]), *pages[1:]]


def _columns(instructions: Sequence[Instruction], frame: Frame, label: float) -> _Columns:
    """Take as many columns as the page is wide for, fewer where an instruction is too long for one."""
    longest = max(width_mm(one.text, size_pt=LINE.size_pt) for one in instructions)
    for count in range(max(1, int(frame.width // NARROWEST_COLUMN_MM)), 1, -1):
        columns = _Columns(count, frame)
        if longest <= MOST_LINES_IN_COLUMN * (columns.width - TICK_ROOM_MM - label - 2):
            return columns
    return _Columns(1, frame)


def _placed(blocks: Sequence[Block], frame: Frame) -> Iterator[Box]:
    y = frame.top
    for block in blocks:
        yield from moved(block.boxes, frame.left, y)
        y += block.height


def _letters(appraisal: Appraisal, width: float) -> Iterator[Block]:
    """Give each letter with its shade and its lot, some in a row."""
    in_row = max(1, int(width // LETTER_MM))
    look, room = look_of(appraisal), width / in_row
    baseline = CHIP_MM / 2 + 0.35 * BODY.size_pt * MM_PER_PT
    for start in range(0, len(appraisal.letters), in_row):
        boxes: list[Box] = []
        for place, item in enumerate(appraisal.letters[start : start + in_row]):
            x = place * room
            boxes += chip(x, 0, item, look)
            boxes.append(text_at(x + CHIP_MM + 1.8, baseline, item.letter, STRONG))
            boxes.append(text_at(x + CHIP_MM + 6.2, baseline, lot_name(item), BODY, most=room - CHIP_MM - 8.5))
        yield Block(CHIP_MM + 1.2, tuple(boxes))


def _abbreviations(meanings: Sequence[tuple[str, str]], width: float) -> Iterator[Block]:
    """Explain the abbreviations in use, and how the lines are read."""
    indent = 15.0
    yield space(1.0)
    for name, words in meanings:
        title = text_at(0, 0.76 * line_height(SMALL), name, replace(SMALL, bold=True))
        first, *others = paragraph(words, width=width, style=SMALL, indent=indent)
        yield replace(first, boxes=(title, *first.boxes))
        yield from others
    yield space(0.8)
    yield from paragraph(
        "Work what stands between * and the semicolon, then again as often as is said; what stands in [ ] as often as "
        "is said after it. k2 A: knit 2 sts in A. The number in ( ) is what is on the needles after the round; the "
        "bold number is the round's.",
        width=width,
        style=SMALL,
    )


def _band(number: int, band: WrittenBand, columns: _Columns, label: float) -> list[Block]:
    """Give a band: kept together where that leaves no half column empty, else begun anew under its name."""
    first, last = band.instructions[0].first, band.instructions[-1].last
    numbers = f"rnd {first}" if first == last else f"rnds {first}–{last}"
    title = f"{number}  {band.title}".rstrip()
    head = _band_heading(title, numbers, columns.width)
    again = _band_heading(title, f"{numbers}, continued", columns.width)
    lines = [block for one in band.instructions for block in _instruction(one, columns, label)]
    whole = [head, *lines]
    if height_of(whole) <= columns.frame.height / 2:
        return kept(whole)
    return [head, *(replace(block, head=again) for block in lines)]


def _band_heading(title: str, numbers: str, width: float) -> Block:
    height = line_height(BAND)
    baseline = height + 1.8
    side = text_at(width, baseline, numbers, SMALL, align="right")
    name = text_at(0, baseline, title, BAND, most=width - side.width - 3)
    return Block(height + 4.0, (name, side), keeps_next=True, gap=2.6)


def _instruction(one: Instruction, columns: _Columns, label: float) -> Iterator[Block]:
    """Give a round as one block: its box, its number and its text do not part.

    The longest that there can be, 600 decreases that do not fold, fits a large page; on a small one it goes on over.
    """
    width = columns.width
    indent = TICK_ROOM_MM + label + 2
    lines = [(line, LINE) for line in _broken(one.text, most=width - indent, style=LINE)]
    lines += [(line, NUMBER) for line in _broken(one.trouble, most=width - indent, style=NUMBER)]
    height = line_height(LINE)
    number = text_at(TICK_ROOM_MM, 0.76 * height, _numbers(one), NUMBER)
    tick = outline_of((0.2, 0.76 * height - TICK_MM + 0.2, TICK_MM, TICK_MM), width=0.25, ink=QUIET)
    most = max(1, int((columns.frame.height - HEAD_ROOM_MM) // height))
    for start in range(0, len(lines), most):
        part = lines[start : start + most]
        texts = [text_at(indent, (place + 0.76) * height, line, style) for place, (line, style) in enumerate(part)]
        yield Block(len(part) * height + LINE_GAP_MM, (*((tick, number) if not start else ()), *texts))


def _broken(text: str, *, most: float, style: Style) -> list[str]:
    """Break an instruction into lines, at `BREAKS` alone; every piece is shorter than a line."""
    lines: list[list[str]] = []
    space_mm = width_mm(" ", size_pt=style.size_pt, bold=style.bold)
    end = most
    for piece in BREAKS.split(text) if text else ():
        piece_mm = width_mm(piece, size_pt=style.size_pt, bold=style.bold)
        end += space_mm + piece_mm
        if end > most:
            lines.append([])
            end = piece_mm
        lines[-1].append(piece)
    return [" ".join(pieces) for pieces in lines]


def _numbers(one: Instruction) -> str:
    """Write the number, or the first and the last, as the column of numbers has them."""
    return f"{one.first}" if one.first == one.last else f"{one.first}–{one.last}"
