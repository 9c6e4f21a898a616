"""The first page of the chart: how to knit the hat, what each letter and sign is, and the bands from the edge up."""

from collections.abc import Iterator
from dataclasses import replace

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.model.band import Band
from chartmaker.model.hat import Trim
from chartmaker.model.units import METRIC, Units, in_units
from chartmaker.sheets.boxes import Box, Fills, Lines, Style, text_at
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.chart_layout import band_title
from chartmaker.sheets.flow import (
    BODY,
    SMALL,
    STRONG,
    Block,
    beside,
    bulleted,
    heading,
    height_of,
    kept,
    line_height,
    paragraph,
    space,
)
from chartmaker.sheets.hat_outline import hat_outline
from chartmaker.sheets.ink import ACCENT, BLACK, WASH
from chartmaker.sheets.legend import CHIP_MM, chip, grey_chip, look_of, mark_name, sign_chip, signs_in
from chartmaker.sheets.numbers import count_of, gauge_words, one_place
from chartmaker.sheets.paper import Frame
from chartmaker.sheets.tables import CELL_STRONG, CLOSE_PAD_MM, Cell, Column, Drawn, scaled, table

OUTLINE_MM = 58.0
"""Width of the drawing of the hat, beside the steps."""
STEP = Style(9.5, bold=True, ink=ACCENT)
NARROW_MM = 150.0
"""Narrower pages have the drawing below the steps."""
SPLIT_MM = 110.0
"""Steps that reach further down than this stand below the drawing, not beside it."""
MOST_NOTE_LINES = 30
MOST_STOPS = 4
"""Findings that forbid knitting are told here up to this many; the contrast sheet has them all."""


def key_blocks(appraisal: Appraisal, units: Units = METRIC, *, frame: Frame) -> list[Block]:
    """Lay out everything that a knitter reads before the first stitch."""
    look, width = look_of(appraisal), frame.width
    is_narrow = width < NARROW_MM
    steps_width = width if is_narrow else width - OUTLINE_MM - 6
    steps = [
        block
        for number, step in enumerate(_steps(appraisal, units), start=1)
        for block in _step(number, step, steps_width)
    ]
    steps += paragraph(_reading_notes(appraisal), width=steps_width, style=SMALL)
    notes = appraisal.design.notes.strip()
    if notes:
        steps += [space(1.5), *paragraph(f"Notes: {notes}", width=steps_width, most_lines=MOST_NOTE_LINES)]
    blocks = [*_warning(appraisal, units, width), heading("How to knit it", width=width)]
    aside = [hat_outline(appraisal, units, width=OUTLINE_MM), *_signs(appraisal, OUTLINE_MM)]
    if is_narrow or height_of(aside) > frame.height - 20:
        signs = list(_signs(appraisal, width - OUTLINE_MM - 6))
        blocks += [*steps, *_beside_outline(appraisal, units, signs, frame)]
    else:
        beside_outline, below_outline = _split(steps, min(SPLIT_MM, frame.height - 20))
        blocks += [beside(beside_outline, aside, right_x=width - OUTLINE_MM), *below_outline]
    blocks += [heading("Letters", width=width), *_letters(appraisal, look, width)]
    return [*blocks, *kept([heading("Bands, from the edge up", width=width), *_bands(appraisal, width)])]


def _beside_outline(appraisal: Appraisal, units: Units, signs: list[Block], frame: Frame) -> list[Block]:
    """Set the outline at the left and the signs beside it, as far as they reach; the others follow below."""
    outline = hat_outline(appraisal, units, width=OUTLINE_MM)
    first, others = _split(signs, min(1.2 * outline.height, frame.height - 10))
    return [beside([outline], first, right_x=OUTLINE_MM + 6), *others]


def _split(blocks: list[Block], most: float) -> tuple[list[Block], list[Block]]:
    """Split blocks where they pass a height."""
    height = 0.0
    for place, block in enumerate(blocks):
        height += block.height
        if height > most:
            return blocks[:place], blocks[place:]
    return blocks, []


def _warning(appraisal: Appraisal, units: Units, width: float) -> list[Block]:
    """Say so, set apart, where something forbids knitting."""
    stops = [finding for finding in appraisal.findings if finding.severity == "stop"]
    if not stops:
        return []
    told = "1 finding" if len(stops) == 1 else f"{len(stops)} findings"
    lines = paragraph(f"Not ready to knit: {told} must be mended first.", width=width - 8, style=STRONG)
    for finding in stops[:MOST_STOPS]:
        lines += paragraph(f"{finding.place.text}: {in_units(finding.message, units)}", width=width - 8, most_lines=2)
    height = line_height(BODY) * len(lines) + 4
    boxes: list[Box] = [Fills(((0, 0, width, height),), WASH), Lines(((0.4, 0, 0.4, height),), 0.8, BLACK)]
    y = 2.0
    for line in lines:
        boxes.extend(box.moved(4, y) for box in line.boxes)
        y += line.height
    return [Block(height + 2, tuple(boxes))]


def _steps(appraisal: Appraisal, units: Units) -> Iterator[str]:
    design = appraisal.design
    hat, gauge, tail = design.hat, design.gauge, units.length.brief(design.allowances.tail_cm)
    yield (
        f"Gauge: {gauge_words(gauge, units)} of stranded fabric knitted in the round, washed and dried. Choose the "
        "needles that give it."
    )
    yield (
        f"Cast on {count_of(appraisal.cast_on_stitches, 'stitch')} with {appraisal.name_of(hat.cast_on.letter)}, "
        f"{hat.cast_on.method} cast-on. Join into a ring without a twist; mark the beginning of the round."
    )
    yield (
        "Work the bands in their order, each chart from the bottom up and every round from right to left; work the "
        "bracketed repeat as often as the bracket says."
    )
    yield (
        "Carry the letter that rests loosely behind the work, and catch it where it passes more than "
        f"{units.length.brief(design.limits.float_cm)}. Cut a letter that rests for more than "
        f"{count_of(design.allowances.carry_up_rounds, 'round')}; leave {tail} at each end."
    )
    yield (
        f"After the last round cut the yarn, draw {appraisal.name_of(hat.finish.letter)} twice through the remaining "
        f"{count_of(appraisal.fabric.counts[-1], 'stitch')}, pull the top closed and fasten off inside."
    )
    yield "Weave in the ends, wash, and dry over a form of the head's size."
    for trim in hat.trims:
        yield _trim_step(appraisal, trim, units)


def _trim_step(appraisal: Appraisal, trim: Trim, units: Units) -> str:
    measure = "across" if trim.kind == "pompom" else "long"
    letter = appraisal.name_of(trim.letter)
    return f"Make a {trim.kind} {units.length.brief(trim.size_cm)} {measure} of {letter}, and sew it to the top."


def _step(number: int, text: str, width: float) -> list[Block]:
    label = text_at(0, 0.76 * line_height(BODY), f"{number}", STEP)
    blocks = bulleted(text, width=width, bullet=[label])
    return [*blocks, space(1.0)]


def _letters(appraisal: Appraisal, look: Look, width: float) -> list[Block]:
    columns = scaled(
        (
            Column("", 8, style=CELL_STRONG),
            Column("cell", 12),
            Column("value", 14),
            Column("lot", 66, most_lines=3),
            Column("id", 38),
            Column("L*", 18, "right"),
            Column("mark", 26),
        ),
        width,
    )
    return table(columns, [_letter_row(item, look) for item in appraisal.letters], pad=CLOSE_PAD_MM)


def _letter_row(item: LetterAppraisal, look: Look) -> list[Cell]:
    return [
        item.letter,
        Drawn(CHIP_MM, tuple(chip(0, 0, item, look))),
        Drawn(CHIP_MM, tuple(grey_chip(0, 0, item))),
        item.lot.name if item.lot else "no lot yet",
        item.lot.id if item.lot else "–",
        one_place(item.shade.value) if item.shade else "–",
        mark_name(look.marks[item.letter]),
    ]


def _bands(appraisal: Appraisal, width: float) -> list[Block]:
    columns = scaled(
        (
            Column("band", 62, style=CELL_STRONG),
            Column("rounds", 26),
            Column("repeat", 36),
            Column("stitches in the round", 36),
            Column("letters", 26),
        ),
        width,
    )
    rows = []
    done = 0
    for number, band in enumerate(appraisal.design.bands):
        end = done + len(band.rounds)
        rows.append(_band_row(appraisal, number, band, done, end))
        done = end
    return table(columns, rows, pad=CLOSE_PAD_MM)


def _band_row(appraisal: Appraisal, number: int, band: Band, done: int, end: int) -> list[Cell]:
    lengths = (len(band.rounds[0]), len(band.rounds[-1]))
    counts = (appraisal.rounds[done].stitches, appraisal.rounds[end - 1].stitches)
    letters = sorted({letter for line in band.rounds for letter in line.letters_in_use})
    return [
        band_title(appraisal, number),
        f"{done + 1}" if end == done + 1 else f"{done + 1}–{end}",
        f"{_from_to(*lengths)} × {band.times}",
        _from_to(*counts),
        " ".join(letters),
    ]


def _from_to(first: int, last: int) -> str:
    return f"{first}" if first == last else f"{first} to {last}"


def _signs(appraisal: Appraisal, width: float) -> Iterator[Block]:
    for sign in signs_in(appraisal):
        x = CHIP_MM + 2.5
        words = paragraph(sign.words, width=width - x, style=SMALL)
        name = text_at(x, 3.2, sign.name, replace(SMALL, bold=True, ink=BLACK))
        below = [box.moved(x, 3.8 + place * line.height) for place, line in enumerate(words) for box in line.boxes]
        yield Block(3.8 + height_of(words) + 1.6, (*sign_chip(0, 0.4, sign.mark), name, *below))


def _reading_notes(appraisal: Appraisal) -> str:
    notes = [
        (
            "At the right of each round stand its number in the whole hat and its letters, ground first; at the left, "
            "where it changes, the number of stitches in the whole round."
        )
    ]
    if any(band.is_shaped for band in appraisal.design.bands):
        notes.append(
            "In shaped bands the numbers below count columns of the chart; blank room beside the cells is no stitch."
        )
    if signs_in(appraisal):
        notes.append("A cell with a sign shows its letter's mark small, in the corner that the sign leaves.")
    return " ".join(notes)
