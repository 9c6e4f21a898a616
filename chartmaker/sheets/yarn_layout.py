"""The yarn sheet: what each letter takes, where it goes, and what the figures rest on."""

from collections.abc import Iterator, Sequence

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.knit.interval import Interval
from chartmaker.knit.yarn_by_band import yarn_by_band
from chartmaker.model.units import METRIC, Quantity, Units
from chartmaker.sheets.boxes import Box, Marks
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.chart_layout import band_title
from chartmaker.sheets.flow import SMALL, Block, bulleted, fact, heading, kept, paragraph, space
from chartmaker.sheets.ink import ACCENT
from chartmaker.sheets.legend import CHIP_MM, chip, look_of, lot_name
from chartmaker.sheets.marks import OUT_OF_GAMUT
from chartmaker.sheets.numbers import gauge_words
from chartmaker.sheets.tables import CELL_STRONG, CLOSE_PAD_MM, Cell, Column, Drawn, scaled, table

NARROW_MM = 150.0
"""Narrower pages have metres and grams apart."""
MEASURE_MM = 190.0
"""Lines of running text are no wider."""
ON_HAND = 8
"""Place of the figure that is not summed: two letters may be one lot."""
HOW_TO_READ = (
    "Low is a hat knitted tight with nothing wasted, likely is what to expect, high is loose knitting and generous "
    "ends. Have the planned {weight} ready: the high end, and {reserve:g} % in reserve. Short is what the planned "
    "{weight} exceed the weight on hand by."
)
YARN_WORDS = {"metric": "metres", "imperial": "yards"}
WEIGHT_WORDS = {"metric": "grams", "imperial": "ounces"}
BASIS_WORDS = {
    "photo": "rests on a patch of a photo",
    "approximate": "rests on a colour picked from a screen, which is approximate",
    "predicted": "is predicted: the lot is not dyed yet",
    "nothing": "has no reading",
}
"""What is said of shades that rest on less than a measurement, by the words of the report."""


def yarn_blocks(appraisal: Appraisal, units: Units = METRIC, *, width: float) -> list[Block]:
    """Lay out the yarn sheet."""
    look, yarn, weight = look_of(appraisal), YARN_WORDS[units.name], WEIGHT_WORDS[units.name]
    reserve = appraisal.design.allowances.reserve_percent
    return [
        heading("What each letter takes", width=width),
        *_needs(appraisal, units, width),
        space(2.5),
        *paragraph(HOW_TO_READ.format(reserve=reserve, weight=weight), width=min(width, MEASURE_MM)),
        *_shade_notes(appraisal, width),
        heading(f"Where it goes, likely {yarn}", width=width),
        *table(_use_columns(width), [_use_row(item, look, units) for item in appraisal.letters], pad=CLOSE_PAD_MM),
        heading(f"Band by band, likely {weight}", width=width),
        *_bands(appraisal, units, width),
        heading("What the figures rest on", width=width),
        *kept([block for name, text in _facts(appraisal, units) for block in fact(name, text, width=width)]),
    ]


def _needs(appraisal: Appraisal, units: Units, width: float) -> list[Block]:
    """Give what each letter takes: one table, or on narrow pages one in metres and one in grams."""
    yarn, weight = units.yarn.unit.strip(), units.weight.unit.strip()
    metres = [Column(f"{yarn}, {title}", 14, "right") for title in ("low", "likely", "high")]
    grams = [Column(f"{weight}, {title}", 13, "right") for title in ("low", "likely", "high")]
    to_have = [
        Column(f"{weight}, planned", 18, "right", CELL_STRONG),
        Column(f"{weight}, on hand", 18, "right"),
        Column(f"{weight}, short", 13.5, "right", CELL_STRONG),
    ]
    stitches = Column("stitches", 14, "right")
    if width >= NARROW_MM:
        return _need_table(appraisal, units, [stitches, *metres, *grams, *to_have], list(range(10)), width)
    return [
        *_need_table(appraisal, units, [stitches, *metres], [0, 1, 2, 3], width),
        space(3.0),
        *_need_table(appraisal, units, [*grams, *to_have], [4, 5, 6, 7, 8, 9], width),
    ]


def _need_table(
    appraisal: Appraisal, units: Units, columns: Sequence[Column], places: Sequence[int], width: float
) -> list[Block]:
    """Give a table of some of the figures, and below it their sums."""
    look = look_of(appraisal)
    named = scaled(
        (Column("", 5.5, style=CELL_STRONG), Column("", 8.3), Column("lot", 39.8, most_lines=3), *columns), width
    )
    rows: list[list[Cell]] = []
    for item in appraisal.letters:
        figures = _figures([item], units)
        rows.append([item.letter, _chip(item, look), lot_name(item), *(figures[place] for place in places)])
    sums = _figures(appraisal.letters, units)
    sums[ON_HAND] = ""
    rows.append(["", "", "all letters", *(sums[place] for place in places)])
    return table(named, rows, pad=CLOSE_PAD_MM)


def _figures(items: Sequence[LetterAppraisal], units: Units) -> list[str]:
    """Give the ten figures of letters together."""
    needs = [item.requirement for item in items]
    nothing = Interval(0.0, 0.0, 0.0)
    return [
        str(sum(need.stitches for need in needs)),
        *_three(sum((need.metres for need in needs), start=nothing), units.yarn),
        *_three(sum((need.grams for need in needs), start=nothing), units.weight),
        units.weight.figure(sum(need.planned_g for need in needs)),
        units.weight.figure(sum(need.on_hand_g for need in needs)),
        units.weight.figure(sum(need.short_g for need in needs)),
    ]


def _bands(appraisal: Appraisal, units: Units, width: float) -> list[Block]:
    """Give each band's likely grams by letter; tails and edges belong to none."""
    pieces = yarn_by_band(appraisal.design, appraisal.fabric, appraisal.floats, appraisal.loop)
    found: dict[int, list[str]] = {}
    for piece in pieces:
        found.setdefault(piece.piece, []).append(f"{piece.letter} {units.weight.figure(piece.grams.likely)}")
    columns = scaled(
        (Column("band", 60, style=CELL_STRONG), Column(f"letters and {WEIGHT_WORDS[units.name]}", 120, most_lines=6)),
        width,
    )
    rows: list[list[Cell]] = [
        [band_title(appraisal, number), "   ".join(words)] for number, words in sorted(found.items())
    ]
    return table(columns, rows, pad=CLOSE_PAD_MM)


def _three(interval: Interval, quantity: Quantity) -> tuple[str, str, str]:
    return quantity.figure(interval.low), quantity.figure(interval.likely), quantity.figure(interval.high)


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


def _use_row(item: LetterAppraisal, look: Look, units: Units) -> list[Cell]:
    need = item.requirement
    rest = ", ".join(f"{extra.what} {_whole(extra.cm.likely, units)}" for extra in need.extras)
    return [
        item.letter,
        _chip(item, look),
        units.yarn.figure(need.stitch_m.likely),
        units.yarn.figure(need.float_m.likely),
        units.yarn.figure(need.other_m.likely),
        rest or "nothing",
    ]


def _whole(cm: float, units: Units) -> str:
    """Tell a length of yarn that is cut by eye."""
    return f"{cm:.0f} cm" if units is METRIC else f"{units.length.shown(cm):.0f}{units.length.unit}"


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


def _facts(appraisal: Appraisal, units: Units) -> Iterator[tuple[str, str]]:
    design = appraisal.design
    gauge, hat, allowances = design.gauge, design.hat, design.allowances
    loop, length = appraisal.loop, units.length
    sources = {"swatch": "from the swatch", "gauge": "from gauge, by Munden's relation for wool"}
    span = f"({length.fine_figure(loop.cm.low)} to {length.fine_figure(loop.cm.high)})"
    yield "Loop length", f"{length.fine(loop.cm.likely)} a stitch {span}, {sources[loop.source]}"
    yield "Gauge", gauge_words(gauge, units)
    yield "Head and ease", f"{length.brief(hat.head_cm)}, {hat.ease_percent:+g} % wanted: {length.told(hat.wanted_cm)}"
    around = f"{length.told(appraisal.circumference_cm)} round ({appraisal.cast_on_stitches} stitches)"
    yield "Size", f"{around}, {length.told(appraisal.height_cm)} high"
    yield "Grist", "; ".join(_grists(appraisal, units))
    yield "Tails", f"{length.brief(allowances.tail_cm)} at each start and each end of a strand"
    yield "Floats", f"{allowances.float_slack_percent:g} % longer than the stitches that they pass"
    yield "Strands", f"carried up behind at most {allowances.carry_up_rounds} rounds of rest, else cut and joined anew"
    yield "Reserve", f"{allowances.reserve_percent:g} % on top of the high end"


def _grists(appraisal: Appraisal, units: Units) -> Iterator[str]:
    by_grist: dict[float, list[str]] = {}
    for item in appraisal.letters:
        by_grist.setdefault(item.requirement.metres_per_100g, []).append(item.letter)
    for grist, letters in by_grist.items():
        yield f"{units.grist.told(grist)} ({', '.join(letters)})"
