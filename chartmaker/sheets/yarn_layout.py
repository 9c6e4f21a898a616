"""The yarn sheet: what each letter takes, where it goes, and what the figures rest on."""

from collections.abc import Iterator, Sequence

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.knit.interval import Interval
from chartmaker.knit.yarn_by_band import yarn_by_band
from chartmaker.sheets.boxes import Box, Marks
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.chart_layout import band_title
from chartmaker.sheets.flow import SMALL, Block, bulleted, fact, heading, paragraph, space
from chartmaker.sheets.ink import ACCENT
from chartmaker.sheets.legend import CHIP_MM, chip, look_of, lot_name
from chartmaker.sheets.marks import OUT_OF_GAMUT
from chartmaker.sheets.numbers import one_place
from chartmaker.sheets.tables import CELL_STRONG, CLOSE_PAD_MM, Cell, Column, Drawn, scaled, table

NARROW_MM = 150.0
"""Narrower pages have metres and grams apart."""
MEASURE_MM = 190.0
"""Lines of running text are no wider."""
ON_HAND = 8
"""Place of the figure that is not summed: two letters may be one lot."""
HOW_TO_READ = (
    "Low is a hat knitted tight with nothing wasted, likely is what to expect, high is loose knitting and generous "
    "ends. Have the planned grams ready: the high end, and {reserve:g} % in reserve. Short is what the planned grams "
    "exceed the weight on hand by."
)
BASIS_WORDS = {
    "photo": "rests on a patch of a photo",
    "approximate": "rests on a colour picked from a screen, which is approximate",
    "predicted": "is predicted: the lot is not dyed yet",
    "nothing": "has no reading",
}
"""What is said of shades that rest on less than a measurement, by the words of the report."""


def yarn_blocks(appraisal: Appraisal, *, width: float) -> list[Block]:
    """Lay out the yarn sheet."""
    look = look_of(appraisal)
    reserve = appraisal.design.allowances.reserve_percent
    return [
        heading("What each letter takes", width=width),
        *_needs(appraisal, look, width),
        space(2.5),
        *paragraph(HOW_TO_READ.format(reserve=reserve), width=min(width, MEASURE_MM)),
        *_shade_notes(appraisal, width),
        heading("Where it goes, likely metres", width=width),
        *table(_use_columns(width), [_use_row(item, look) for item in appraisal.letters], pad=CLOSE_PAD_MM),
        heading("Band by band, likely grams", width=width),
        *_bands(appraisal, width),
        heading("What the figures rest on", width=width),
        *(block for name, text in _facts(appraisal) for block in fact(name, text, width=width)),
    ]


def _needs(appraisal: Appraisal, look: Look, width: float) -> list[Block]:
    """Give what each letter takes: one table, or on narrow pages one in metres and one in grams."""
    metres = [Column(title, 14, "right") for title in ("m, low", "m, likely", "m, high")]
    grams = [Column(title, 14, "right") for title in ("g, low", "g, likely", "g, high")]
    to_have = [
        Column("g, planned", 18, "right", CELL_STRONG),
        Column("g, on hand", 18, "right"),
        Column("g, short", 13.5, "right", CELL_STRONG),
    ]
    stitches = Column("stitches", 16, "right")
    if width >= NARROW_MM:
        return _need_table(appraisal, look, [stitches, *metres, *grams, *to_have], list(range(10)), width)
    return [
        *_need_table(appraisal, look, [stitches, *metres], [0, 1, 2, 3], width),
        space(3.0),
        *_need_table(appraisal, look, [*grams, *to_have], [4, 5, 6, 7, 8, 9], width),
    ]


def _need_table(
    appraisal: Appraisal, look: Look, columns: Sequence[Column], places: Sequence[int], width: float
) -> list[Block]:
    """Give a table of some of the figures, and below it their sums."""
    named = scaled((Column("", 6, style=CELL_STRONG), Column("", 10), Column("lot", 32, most_lines=3), *columns), width)
    rows: list[list[Cell]] = []
    for item in appraisal.letters:
        figures = _figures([item])
        rows.append([item.letter, _chip(item, look), lot_name(item), *(figures[place] for place in places)])
    sums = _figures(appraisal.letters)
    sums[ON_HAND] = ""
    rows.append(["", "", "all letters", *(sums[place] for place in places)])
    return table(named, rows, pad=CLOSE_PAD_MM)


def _figures(items: Sequence[LetterAppraisal]) -> list[str]:
    """Give the ten figures of letters together."""
    needs = [item.requirement for item in items]
    nothing = Interval(0.0, 0.0, 0.0)
    return [
        str(sum(need.stitches for need in needs)),
        *_three(sum((need.metres for need in needs), start=nothing)),
        *_three(sum((need.grams for need in needs), start=nothing)),
        one_place(sum(need.planned_g for need in needs)),
        one_place(sum(need.on_hand_g for need in needs)),
        one_place(sum(need.short_g for need in needs)),
    ]


def _bands(appraisal: Appraisal, width: float) -> list[Block]:
    """Give each band's likely grams by letter; tails and edges belong to none."""
    pieces = yarn_by_band(appraisal.design, appraisal.fabric, appraisal.floats, appraisal.loop)
    found: dict[int, list[str]] = {}
    for piece in pieces:
        found.setdefault(piece.piece, []).append(f"{piece.letter} {one_place(piece.grams.likely)}")
    columns = scaled((Column("band", 60, style=CELL_STRONG), Column("letters and grams", 120, most_lines=6)), width)
    rows: list[list[Cell]] = [
        [band_title(appraisal, number), "   ".join(words)] for number, words in sorted(found.items())
    ]
    return table(columns, rows, pad=CLOSE_PAD_MM)


def _three(interval: Interval) -> tuple[str, str, str]:
    return one_place(interval.low), one_place(interval.likely), one_place(interval.high)


def _chip(item: LetterAppraisal, look: Look) -> Drawn:
    boxes: list[Box] = list(chip(0, 0, item, look))
    if item.shade and item.shade.is_out_of_gamut:
        boxes.append(Marks(OUT_OF_GAMUT, ((CHIP_MM + 1.3, 1.2),), 2.2, ACCENT))
    return Drawn(CHIP_MM, tuple(boxes))


def _use_columns(width: float) -> tuple[Column, ...]:
    return scaled(
        (
            Column("", 6, style=CELL_STRONG),
            Column("", 8),
            Column("in stitches", 20, "right"),
            Column("in floats", 18, "right"),
            Column("in the rest", 18, "right"),
            Column("the rest is", 112, most_lines=3),
        ),
        width,
    )


def _use_row(item: LetterAppraisal, look: Look) -> list[Cell]:
    need = item.requirement
    rest = ", ".join(f"{extra.what} {extra.cm.likely:.0f} cm" for extra in need.extras)
    return [
        item.letter,
        _chip(item, look),
        one_place(need.stitch_m.likely),
        one_place(need.float_m.likely),
        one_place(need.other_m.likely),
        rest or "nothing",
    ]


def _shade_notes(appraisal: Appraisal, width: float) -> Iterator[Block]:
    """Say of which letters the patch is not quite the lot's measured colour, and why."""
    shaded = [(item.letter, item.shade) for item in appraisal.letters if item.shade]
    outside = [letter for letter, shade in shaded if shade.is_out_of_gamut]
    if outside:
        bullet = [Marks(OUT_OF_GAMUT, ((1.6, 2.0),), 2.4, ACCENT)]
        text = f"{', '.join(outside)}: outside what paper and screen can show; the patch is the nearest to it."
        yield from bulleted(text, width=width, bullet=bullet, style=SMALL)
    bases: dict[str, list[str]] = {}
    for letter, shade in shaded:
        lone = "rests on one reading, so that its spread is assumed" if shade.is_lone else ""
        bases.setdefault(BASIS_WORDS.get(shade.rests_on, lone), []).append(letter)
    for words, letters in bases.items():
        if words:
            yield from paragraph(f"{', '.join(letters)}: the shade {words}.", width=width, style=SMALL)


def _facts(appraisal: Appraisal) -> Iterator[tuple[str, str]]:
    design = appraisal.design
    gauge, hat, allowances = design.gauge, design.hat, design.allowances
    loop = appraisal.loop
    sources = {"swatch": "from the swatch", "gauge": "from gauge, by Munden's relation for wool"}
    span = f"({loop.cm.low:.3f} to {loop.cm.high:.3f})"
    yield "Loop length", f"{loop.cm.likely:.3f} cm a stitch {span}, {sources[loop.source]}"
    yield "Gauge", f"{gauge.stitches_per_10cm:g} stitches and {gauge.rounds_per_10cm:g} rounds in 10 cm"
    yield "Head and ease", f"{hat.head_cm:g} cm, {hat.ease_percent:+g} % wanted: {one_place(hat.wanted_cm)} cm"
    around = f"{one_place(appraisal.circumference_cm)} cm round ({appraisal.cast_on_stitches} stitches)"
    yield "Size", f"{around}, {one_place(appraisal.height_cm)} cm high"
    yield "Grist", "; ".join(_grists(appraisal))
    yield "Tails", f"{allowances.tail_cm:g} cm at each start and each end of a strand"
    yield "Floats", f"{allowances.float_slack_percent:g} % longer than the stitches that they pass"
    yield "Strands", f"carried up behind at most {allowances.carry_up_rounds} rounds of rest, else cut and joined anew"
    yield "Reserve", f"{allowances.reserve_percent:g} % on top of the high end"


def _grists(appraisal: Appraisal) -> Iterator[str]:
    by_grist: dict[float, list[str]] = {}
    for item in appraisal.letters:
        by_grist.setdefault(item.requirement.metres_per_100g, []).append(item.letter)
    for grist, letters in by_grist.items():
        yield f"{grist:g} m in 100 g ({', '.join(letters)})"
