"""The contrast sheet: the grey strip, the pairs of letters that touch, rounds that do not read, and the findings."""

from collections.abc import Iterator, Sequence

from chartmaker.appraisal import Appraisal, PairAppraisal, RoundAppraisal
from chartmaker.checks.finding import SEVERITIES, Finding
from chartmaker.model.units import METRIC, Units, in_units
from chartmaker.sheets.boxes import Box, Marks, Style, text_at
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.elsewhere_layout import elsewhere_blocks
from chartmaker.sheets.flow import SMALL, STRONG, Block, bulleted, heading, kept, line_height, paragraph, space
from chartmaker.sheets.ink import ACCENT, BLACK
from chartmaker.sheets.legend import CHIP_MM, chip, look_of
from chartmaker.sheets.marks import GRADE_MARKS
from chartmaker.sheets.numbers import one_place, or_dash, spans
from chartmaker.sheets.tables import CELL, CELL_STRONG, CLOSE_PAD_MM, Cell, Column, Drawn, scaled, table
from chartmaker.sheets.value_strip import value_strip

SEVERITY_WORDS = {
    "stop": "Must be mended before knitting",
    "warn": "Will disappoint unless mended",
    "note": "Good to know",
}
MOST_FINDINGS = 40
"""Of one severity; the report of the command line has them all."""
GRADE_ORDER = {"lost": 0, "soft": 1, "": 2, "clear": 3, "plain": 4}
WHAT_STRIP_SHOWS = (
    "Each letter stands at its value, its shade at the left and at the right the grey of the same value: what a "
    "black-and-white photograph would show. Letters whose greys look alike will not be told apart across a room."
)


def contrast_blocks(appraisal: Appraisal, units: Units = METRIC, *, width: float) -> list[Block]:
    """Lay out the contrast sheet."""
    look = look_of(appraisal)
    return [
        heading("The letters by value", width=width),
        space(1.0),
        value_strip(appraisal, width=width),
        *paragraph(WHAT_STRIP_SHOWS, width=width, style=SMALL),
        *_pairs(appraisal, look, units, width),
        *elsewhere_blocks(appraisal, look, units, width),
        *_rounds(appraisal, look, width),
        *_findings(appraisal.findings, units, width),
    ]


def _pairs(appraisal: Appraisal, look: Look, units: Units, width: float) -> Iterator[Block]:
    unit = units.length.unit.strip()
    yield heading("Pairs that touch", width=width)
    if not appraisal.pairs:
        yield from paragraph("The hat is worked in one letter alone; no pair touches.", width=width)
        return
    columns = scaled(
        (
            Column("pair", 15, style=CELL_STRONG),
            Column("", 18),
            Column(f"edge they share, {unit}", 30, "right"),
            Column(f"of it drawn, {unit}", 26, "right"),
            Column("value apart", 22, "right"),
            Column("at least", 20, "right", CELL_STRONG),
            Column("CIEDE2000", 26, "right"),
            Column("", 6),
            Column("grade", 26),
        ),
        width,
    )
    pairs = sorted(appraisal.pairs, key=lambda pair: (GRADE_ORDER[pair.grade], -pair.boundary_cm, pair.letters))
    *rows, last = table(columns, [_pair_row(appraisal, pair, look, units) for pair in pairs], pad=CLOSE_PAD_MM)
    limits = appraisal.design.limits
    note = paragraph(
        "Judged by the value apart that can be relied on, given how far readings scatter ('at least', one-sided 95 %). "
        f"Clear from {limits.value_clear:g}, soft from {limits.value_soft:g}, lost below. 'Drawn' is the edge where "
        "one letter is ground and the other figure: the pattern depends on it.",
        width=width,
        style=SMALL,
    )
    yield from (*rows, *kept([last, space(2.0), *note]))


def _pair_row(appraisal: Appraisal, pair: PairAppraisal, look: Look, units: Units) -> list[Cell]:
    first, second = (appraisal.letter(letter) for letter in pair.letters)
    chips = (*chip(0, 0, first, look), *chip(CHIP_MM, 0, second, look))
    return [
        " ".join(pair.letters),
        Drawn(CHIP_MM, chips),
        one_place(units.length.shown(pair.boundary_cm)),
        one_place(units.length.shown(pair.drawn_cm)),
        or_dash(pair.value_difference),
        or_dash(pair.value_difference_low),
        or_dash(pair.ciede2000),
        Drawn(CHIP_MM, tuple(_grade_mark(pair.grade, 1.6, 2.2))),
        _told_grade(pair.grade, pair.rests_on) or "no shade yet",
    ]


def _told_grade(grade: str, rests_on: str) -> str:
    """Tell a grade, and whether it is only predicted since a lot is not dyed yet."""
    return f"{grade}, predicted" if grade and rests_on == "predicted" else grade


def _grade_mark(grade: str, x: float, y: float) -> list[Box]:
    return [Marks(GRADE_MARKS[grade], ((x, y),), 3.2, BLACK)] if grade in GRADE_MARKS else []


def _rounds(appraisal: Appraisal, look: Look, width: float) -> Iterator[Block]:
    """Group the rounds that do not read by their letters."""
    yield heading("Rounds that read badly", width=width)
    groups: dict[tuple[str, str], list[RoundAppraisal]] = {}
    for line in appraisal.rounds:
        if line.grade in ("lost", "soft"):
            groups.setdefault((line.grade, line.letters), []).append(line)
    if not groups:
        unknown = any(not line.grade for line in appraisal.rounds)
        text = "None that can be judged; some letters have no shade yet." if unknown else "None: every round reads."
        yield from paragraph(text, width=width)
        return
    columns = scaled(
        (
            Column("", 6),
            Column("grade", 28, style=CELL_STRONG),
            Column("letters", 20),
            Column("", 18),
            Column("value apart", 22, "right"),
            Column("at least", 20, "right", CELL_STRONG),
            Column("rounds", 72, most_lines=4),
        ),
        width,
    )
    rows = [
        _round_row(appraisal, look, grade, letters, lines)
        for (grade, letters), lines in sorted(groups.items(), key=lambda item: (GRADE_ORDER[item[0][0]], item[0][1]))
    ]
    yield from table(columns, rows)


def _round_row(
    appraisal: Appraisal, look: Look, grade: str, letters: str, lines: Sequence[RoundAppraisal]
) -> list[Cell]:
    chips = [
        box for place, letter in enumerate(letters) for box in chip(place * CHIP_MM, 0, appraisal.letter(letter), look)
    ]
    return [
        Drawn(CHIP_MM, tuple(_grade_mark(grade, 1.6, 2.2))),
        _told_grade(grade, lines[0].rests_on),
        " ".join(letters),
        Drawn(CHIP_MM, tuple(chips)),
        or_dash(lines[0].value_difference),
        or_dash(lines[0].value_difference_low),
        spans([line.number for line in lines]),
    ]


def _findings(findings: Sequence[Finding], units: Units, width: float) -> Iterator[Block]:
    yield heading("Findings", width=width)
    if not findings:
        yield from paragraph("None: nothing was noticed that needs mending.", width=width)
    for severity in SEVERITIES:
        found = [finding for finding in findings if finding.severity == severity]
        if not found:
            continue
        title = f"{SEVERITY_WORDS[severity]} ({len(found)})"
        height = line_height(STRONG)
        yield Block(height + 2, (text_at(0, height - 0.4, title, Style(9.5, bold=True, ink=ACCENT)),), keeps_next=True)
        for finding in found[:MOST_FINDINGS]:
            yield from _finding(finding, units, width)
        if len(found) > MOST_FINDINGS:
            more = len(found) - MOST_FINDINGS
            yield from paragraph(f"and {more} more, which the report on the screen lists.", width=width, style=SMALL)
        yield space(0.8)


def _finding(finding: Finding, units: Units, width: float) -> list[Block]:
    bullet = [Marks(GRADE_MARKS["clear"], ((1.4, 2.3),), 1.4, ACCENT)]
    text = f"{finding.place.text}: {in_units(finding.message, units)}"
    blocks = bulleted(text, width=width, bullet=bullet, style=CELL, indent=5.0)
    if finding.remedy:
        blocks += paragraph(f"Way out: {in_units(finding.remedy, units)}", width=width, style=SMALL, indent=5.0)
    return [*kept(blocks), space(0.6)]
