"""What the marks mean: a chip for each letter with its shade, its grey and its mark, and the signs of the chart."""

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.model.stitches import Shaping
from chartmaker.sheets.boxes import Box, Fills, Marks, Style, outline_of, text_at
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.ink import BLACK, HAIRLINE, fill_of, grey_fill, ink_on
from chartmaker.sheets.lines import MM_PER_PT, width_mm
from chartmaker.sheets.marks import CATCH, PURL_BAR, SHAPING_MARKS, Mark, marks_by_letter
from chartmaker.sheets.paper import Frame

CHIP_MM = 5.0
"""Side of a chip."""
EDGE_MM = 0.18
ENTRY_PT = 8.0
MOST_IN_ROW, FEWEST_IN_ROW = 6, 2
"""Entries of the strip in a row: as many as leave every name whole, within these."""
NAME_INDENT_MM = 5.0
"""From the letter to the name of its lot."""
ROW_MM = 6.2
MOST_STRIP_SHARE = 0.2
"""Of the page's height: a strip that would take more leaves the lots' names to the key."""
BARE_ENTRY_MM = 13.0
"""Width of a letter without a name."""

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
CATCH_WORDS = ("catch", "a long float: lay the resting strand in behind this stitch")


@dataclass(frozen=True, slots=True)
class Sign:
    """A sign of the chart, with what it says."""

    mark: Mark
    name: str
    words: str


def look_of(appraisal: Appraisal, *, is_bare: bool = False) -> Look:
    """Decide how the letters of a hat are shown; bare, no cell is filled, and their marks alone tell them apart."""
    marks = marks_by_letter({item.letter: item.requirement.stitches for item in appraisal.letters})
    shades = {item.letter: None if is_bare else item.shade for item in appraisal.letters}
    return Look(marks, shades, catches_of(appraisal))


def catches_of(appraisal: Appraisal) -> dict[tuple[int, int], frozenset[int]]:
    """Give where long floats are caught, by band and round in the band, as stitches of the repeat.

    The repeats of a round have the same floats, so those that begin in the first repeat speak for all.
    """
    found: dict[tuple[int, int], set[int]] = {}
    for one in appraisal.long_floats:
        line = appraisal.rounds[one.round]
        length = len(appraisal.design.bands[line.band].rounds[line.index_in_band])
        if one.start < length:
            caught = found.setdefault((line.band, line.index_in_band), set())
            caught.update(stitch % length for stitch in one.catches)
    return {place: frozenset(stitches) for place, stitches in found.items()}


def signs_in(appraisal: Appraisal) -> list[Sign]:
    """List the signs that a hat's chart uses."""
    used = set[int]().union(*(line.shaping for _, line in appraisal.design.rounds()))
    signs = [Sign(SHAPING_MARKS[shape], *SIGN_WORDS[shape]) for shape in SIGN_WORDS if shape in used]
    if any("p" in band.texture for band in appraisal.design.bands):
        signs.append(Sign(PURL_BAR, *PURL_WORDS))
    if appraisal.long_floats:
        signs.append(Sign(CATCH, *CATCH_WORDS))
    return signs


def chip(x: float, top: float, letter: LetterAppraisal, look: Look, *, side: float = CHIP_MM) -> list[Box]:
    """Give a letter's shade with its mark, as a cell of the chart shows them."""
    square = (x, top, side, side)
    mark = look.marks[letter.letter]
    shade = look.shades[letter.letter]
    boxes: list[Box] = [Fills((square,), fill_of(shade)), outline_of(square, width=EDGE_MM, ink=HAIRLINE)]
    if mark.shapes:
        boxes.append(Marks(mark, ((x + side / 2, top + side / 2),), 0.62 * side, ink_on(shade)))
    return boxes


def grey_chip(x: float, top: float, letter: LetterAppraisal, *, side: float = CHIP_MM) -> list[Box]:
    """Give the grey that has a letter's value; an empty frame where it has no shade."""
    square = (x, top, side, side)
    fill = grey_fill(letter.shade.value) if letter.shade else (1.0, 1.0, 1.0)
    return [Fills((square,), fill), outline_of(square, width=EDGE_MM, ink=HAIRLINE)]


def sign_chip(x: float, top: float, mark: Mark, *, side: float = CHIP_MM) -> list[Box]:
    """Give a sign in an empty cell."""
    square = (x, top, side, side)
    centre, share = (x + side / 2, top + side / 2), 0.84
    if mark is CATCH:
        centre, share = (x + 0.16 * side, top + side / 2), 0.32
    return [outline_of(square, width=EDGE_MM, ink=HAIRLINE), Marks(mark, (centre,), share * side, BLACK)]


@dataclass(frozen=True, slots=True)
class Strip:
    """The strip that every page of the chart carries at its top: each letter with its lot, each sign with its name."""

    boxes: tuple[Box, ...]
    height: float


def strip(appraisal: Appraisal, look: Look, frame: Frame, *, scale: float = 1.0) -> Strip:
    """Lay the strip out at the top of a frame, as large as is wished where that leaves the page to the chart."""
    entries: tuple[LetterAppraisal | Sign, ...] = (*appraisal.letters, *signs_in(appraisal))
    most = MOST_STRIP_SHARE * frame.height
    for size in (scale, 1.0):
        named = frame.width / _in_row(appraisal, frame.width, size)
        places, height = _places(entries, frame.width, named=named, signed=_sign_width(size), scale=size)
        if height <= most:
            break
    else:
        size = 1.0
        places, height = _places(entries, frame.width, named=BARE_ENTRY_MM, signed=_sign_width(size), scale=size)
    boxes = [
        box
        for entry, (x, row, wide) in zip(entries, places, strict=True)
        for box in _entry(entry, look, (frame.left + x, frame.top + row * ROW_MM * size), wide=wide, scale=size)
    ]
    return Strip(tuple(boxes), height)


def _places(
    entries: Sequence[LetterAppraisal | Sign], width: float, *, named: float, signed: float, scale: float
) -> tuple[list[tuple[float, int, float]], float]:
    """Give offset, row and width of each entry, letters and signs having a width each; and the height of all."""
    places: list[tuple[float, int, float]] = []
    x, row = 0.0, 0
    signs = sum(isinstance(entry, Sign) for entry in entries)
    a_row = max(1, math.floor(width / signed + 1e-6))
    for number, entry in enumerate(entries):
        wide = min(signed if isinstance(entry, Sign) else named, width)
        is_first_sign = number == len(entries) - signs
        here = math.floor((width - x) / signed + 1e-6)
        begins_signs = is_first_sign and x > 0 and here < signs <= a_row  # all beside each other, with no row more
        if x + wide > width + 1e-6 or begins_signs:
            x, row = 0.0, row + 1
        places.append((x, row, wide))
        x += wide
    return places, (row + 1) * ROW_MM * scale


def _sign_width(scale: float) -> float:
    """Give the width that the signs have, whichever a hat uses, so that they stand alike on all."""
    names = (*(name for name, _ in SIGN_WORDS.values()), PURL_WORDS[0], CATCH_WORDS[0])
    longest = max(width_mm(name, size_pt=ENTRY_PT * scale) for name in names)
    return longest + (CHIP_MM + 7.0) * scale


def _entry(
    entry: LetterAppraisal | Sign, look: Look, place: tuple[float, float], *, wide: float, scale: float
) -> Iterator[Box]:
    x, top = place
    side, style = CHIP_MM * scale, Style(ENTRY_PT * scale)
    baseline = top + side / 2 + 0.35 * style.size_pt * MM_PER_PT
    words_x = x + side + 1.6 * scale
    if isinstance(entry, Sign):
        yield from sign_chip(x, top, entry.mark, side=side)
        yield text_at(words_x, baseline, entry.name, style, most=wide - side - 3.0 * scale)
        return
    yield from chip(x, top, entry, look, side=side)
    yield text_at(words_x, baseline, entry.letter, replace(style, bold=True))
    if wide > BARE_ENTRY_MM:
        room = _name_width(wide, scale)
        yield text_at(x + side + NAME_INDENT_MM * scale, baseline, lot_name(entry), style, most=room)


def _in_row(appraisal: Appraisal, width: float, scale: float) -> int:
    names = [lot_name(item)[:100] for item in appraisal.letters]
    longest = max((width_mm(name, size_pt=ENTRY_PT * scale) for name in names), default=0.0)
    fits = (count for count in range(MOST_IN_ROW, FEWEST_IN_ROW, -1) if longest <= _name_width(width / count, scale))
    return next(fits, FEWEST_IN_ROW)


def _name_width(entry_width: float, scale: float) -> float:
    return entry_width - (CHIP_MM + NAME_INDENT_MM + 2.0) * scale


def lot_name(letter: LetterAppraisal) -> str:
    """Tell what a letter is."""
    return letter.lot.name if letter.lot else "no lot yet"


def mark_name(mark: Mark) -> str:
    """Tell a mark in words: what a cell of the letter shows."""
    return "bare" if not mark.shapes else mark.name
