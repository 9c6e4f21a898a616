"""What the marks mean: a chip for each letter with its shade, its grey and its mark, and the signs of the chart."""

import math
from dataclasses import dataclass, replace

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.model.stitches import Shaping
from chartmaker.sheets.boxes import Box, Fills, Marks, Style, outline_of, text_at
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.ink import BLACK, HAIRLINE, fill_of, grey_fill, ink_on
from chartmaker.sheets.lines import MM_PER_PT, width_mm
from chartmaker.sheets.marks import PURL_BAR, SHAPING_MARKS, Mark, marks_by_letter
from chartmaker.sheets.paper import Frame

CHIP_MM = 5.0
"""Side of a chip."""
EDGE_MM = 0.18
ENTRY = Style(8.0)
MOST_IN_ROW, FEWEST_IN_ROW = 5, 4
"""Entries of the strip in a row: as many as leave every name whole, within these."""
NAME_INDENT_MM = 5.0
"""From the letter to the name of its lot."""
ROW_MM = 6.2

SIGN_WORDS = {
    Shaping.K2TOG: ("k2tog", "knit 2 together: leans right"),
    Shaping.SSK: ("ssk", "slip 2 singly as if to knit, knit them together through the back: leans left"),
    Shaping.CENTRED: (
        "centred double",
        "slip 2 together as if to knit, knit 1, pass both over it: 3 become 1, upright",
    ),
    Shaping.MAKE: ("make 1", "lift the strand before the next stitch, knit it through the back"),
}
"""Terms of the trade; how each is worked is common practice, no source."""
PURL_WORDS = ("purl", "purled, seen from the right side")


@dataclass(frozen=True, slots=True)
class Sign:
    """A sign of the chart, with what it says."""

    mark: Mark
    name: str
    words: str


def look_of(appraisal: Appraisal) -> Look:
    """Decide how the letters of a hat are shown."""
    marks = marks_by_letter({item.letter: item.requirement.stitches for item in appraisal.letters})
    return Look(marks, {item.letter: item.shade for item in appraisal.letters})


def signs_in(appraisal: Appraisal) -> list[Sign]:
    """List the signs that a hat's chart uses."""
    used = set[int]().union(*(line.shaping for _, line in appraisal.design.rounds()))
    signs = [Sign(SHAPING_MARKS[shape], *SIGN_WORDS[shape]) for shape in SIGN_WORDS if shape in used]
    is_textured = any("p" in band.texture for band in appraisal.design.bands)
    return [*signs, Sign(PURL_BAR, *PURL_WORDS)] if is_textured else signs


def chip(x: float, top: float, letter: LetterAppraisal, look: Look, *, side: float = CHIP_MM) -> list[Box]:
    """Give a letter's shade with its mark, as a cell of the chart shows them."""
    square = (x, top, side, side)
    mark = look.marks[letter.letter]
    boxes: list[Box] = [Fills((square,), fill_of(letter.shade)), outline_of(square, width=EDGE_MM, ink=HAIRLINE)]
    if mark.shapes:
        boxes.append(Marks(mark, ((x + side / 2, top + side / 2),), 0.62 * side, ink_on(letter.shade)))
    return boxes


def grey_chip(x: float, top: float, letter: LetterAppraisal, *, side: float = CHIP_MM) -> list[Box]:
    """Give the grey that has a letter's value; an empty frame where it has no shade."""
    square = (x, top, side, side)
    fill = grey_fill(letter.shade.value) if letter.shade else (1.0, 1.0, 1.0)
    return [Fills((square,), fill), outline_of(square, width=EDGE_MM, ink=HAIRLINE)]


def sign_chip(x: float, top: float, mark: Mark, *, side: float = CHIP_MM) -> list[Box]:
    """Give a sign in an empty cell."""
    square = (x, top, side, side)
    centre = (x + side / 2, top + side / 2)
    return [outline_of(square, width=EDGE_MM, ink=HAIRLINE), Marks(mark, (centre,), 0.84 * side, BLACK)]


def strip_height(appraisal: Appraisal, width: float) -> float:
    """Give the height of the strip that every page of the chart carries."""
    entries = len(appraisal.letters) + len(signs_in(appraisal))
    return math.ceil(entries / _in_row(appraisal, width)) * ROW_MM


def strip(appraisal: Appraisal, look: Look, frame: Frame) -> list[Box]:
    """Lay the strip out at the top of a frame: each letter with its lot, each sign with its name."""
    boxes: list[Box] = []
    in_row = _in_row(appraisal, frame.width)
    width = frame.width / in_row
    entries: tuple[LetterAppraisal | Sign, ...] = (*appraisal.letters, *signs_in(appraisal))
    for number, entry in enumerate(entries):
        x = frame.left + number % in_row * width
        top = frame.top + number // in_row * ROW_MM
        baseline = top + CHIP_MM / 2 + 0.35 * ENTRY.size_pt * MM_PER_PT
        if isinstance(entry, Sign):
            boxes.extend(sign_chip(x, top, entry.mark))
            boxes.append(
                text_at(x + CHIP_MM + 1.6, baseline, entry.name, ENTRY, most=_name_width(width) + NAME_INDENT_MM)
            )
            continue
        boxes.extend(chip(x, top, entry, look))
        boxes.append(text_at(x + CHIP_MM + 1.6, baseline, entry.letter, replace(ENTRY, bold=True)))
        name = text_at(x + CHIP_MM + NAME_INDENT_MM, baseline, lot_name(entry), ENTRY, most=_name_width(width))
        boxes.append(name)
    return boxes


def _in_row(appraisal: Appraisal, width: float) -> int:
    names = [lot_name(item)[:100] for item in appraisal.letters]
    longest = max((width_mm(name, size_pt=ENTRY.size_pt) for name in names), default=0.0)
    return MOST_IN_ROW if longest <= _name_width(width / MOST_IN_ROW) else FEWEST_IN_ROW


def _name_width(entry_width: float) -> float:
    return entry_width - CHIP_MM - NAME_INDENT_MM - 2.0


def lot_name(letter: LetterAppraisal) -> str:
    """Tell what a letter is."""
    return letter.lot.name if letter.lot else "no lot yet"


def mark_name(mark: Mark) -> str:
    """Tell a mark in words: what a cell of the letter shows."""
    return "bare" if not mark.shapes else mark.name
