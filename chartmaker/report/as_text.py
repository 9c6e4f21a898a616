"""The report and the list of lots as text for a terminal."""

from collections.abc import Iterator, Sequence

from chartmaker.appraisal import Appraisal
from chartmaker.checks.finding import SEVERITIES, Finding
from chartmaker.dye.plan import BathPlan
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Viewing
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shades_of

Rows = list[tuple[str, ...]]


def report_as_text(appraisal: Appraisal) -> str:
    """Give the report as a terminal shows it."""
    design = appraisal.design
    lines = [
        design.title or "Untitled hat",
        f"colourway {design.colourway.name or '(none)'}",
        "",
        _size_line(appraisal),
        "",
        *_letter_lines(appraisal),
        "",
        *_pair_lines(appraisal),
        *_bath_lines(appraisal.baths),
        *_finding_lines(appraisal.findings),
    ]
    return "\n".join(lines)


def lots_as_text(palette: Palette, viewing: Viewing) -> str:
    """Give the lots of a palette as a terminal shows them, the lightest first, those without a shade last."""
    pairs = list(zip(palette.lots, shades_of(palette.lots, viewing), strict=True))
    pairs.sort(key=lambda pair: -pair[1].value if pair[1] else 1)
    rows: Rows = [("lot", "value", "±", "a*", "b*", "on hand", "rests on", "name")]
    rows.extend(_lot_row(lot, shade) for lot, shade in pairs)
    head = f"{palette.name or 'Palette'}: {len(palette.lots)} lots under {viewing.illuminant}, {viewing.observer}°"
    return "\n".join([head, "", *_table(rows, left={0, 6, 7})])


def _size_line(appraisal: Appraisal) -> str:
    return (
        f"Cast on {appraisal.cast_on_stitches}; {len(appraisal.rounds)} rounds; "
        f"{appraisal.circumference_cm:.1f} cm round, {appraisal.height_cm:.1f} cm high; "
        f"loop {appraisal.loop.cm.likely:.2f} cm from {appraisal.loop.source}"
    )


def _letter_lines(appraisal: Appraisal) -> Iterator[str]:
    rows = [("letter", "lot", "value", "stitches", "metres", "grams", "planned g", "on hand g", "short g")]
    for letter in appraisal.letters:
        need = letter.requirement
        rows.append(
            (
                letter.letter,
                need.lot or "none yet",
                f"{letter.shade.value:.1f}" if letter.shade else "–",
                str(need.stitches),
                f"{need.metres.low:.0f} – {need.metres.likely:.0f} – {need.metres.high:.0f}",
                f"{need.grams.low:.1f} – {need.grams.likely:.1f} – {need.grams.high:.1f}",
                f"{need.planned_g:.1f}",
                f"{need.on_hand_g:.1f}",
                f"{need.short_g:.1f}" if need.short_g else "–",
            )
        )
    yield from _table(rows, left={0, 1})


def _pair_lines(appraisal: Appraisal) -> Iterator[str]:
    pairs = sorted((pair for pair in appraisal.pairs if pair.drawn_cm > 0), key=lambda pair: -pair.drawn_cm)
    if not pairs:
        return
    rows: Rows = [("pair", "edge m", "ΔL*", "certain", "ΔE00", "grade")]
    for pair in pairs:
        figures = (pair.value_difference, pair.value_difference_low, pair.ciede2000)
        told = ["–" if figure is None else f"{figure:.1f}" for figure in figures]
        rows.append((" ".join(pair.letters), f"{pair.drawn_cm / 100:.1f}", *told, pair.grade or "no shade"))
    yield from _table(rows, left={0, 5})
    yield ""


def _bath_lines(baths: Sequence[BathPlan]) -> Iterator[str]:
    for plan in baths:
        loads = ", ".join(f"load {load.load} ({load.lot or 'to stock'}) {load.fibre_g:.0f} g" for load in plan.loads)
        weighed = "".join(f", {item.name} {item.grams:.1f} g" for item in (*plan.mordants, *plan.assists))
        yield f"Bath {plan.bath.id}: {loads}"
        yield f"  {plan.bath.dyestuff} {plan.dyestuff_g:.0f} g{weighed}, water {plan.water_l:.1f} l"
        yield ""


def _finding_lines(findings: Sequence[Finding]) -> Iterator[str]:
    if not findings:
        yield "No findings."
        return
    counts = ((severity, sum(finding.severity == severity for finding in findings)) for severity in SEVERITIES)
    yield "Findings: " + ", ".join(f"{count} {severity}" for severity, count in counts if count)
    for finding in findings:
        yield f"  {finding.severity}  {finding.place.text}: {finding.message}"
        if finding.remedy:
            yield f"        {finding.remedy}"


def _lot_row(lot: Lot, shade: LotShade | None) -> tuple[str, ...]:
    if shade is None:
        return (lot.id, "–", "–", "–", "–", f"{lot.on_hand_g:.0f} g", "nothing", lot.name)
    lightness, green_red, blue_yellow = (f"{value:.1f}" for value in shade.lab)
    spread = f"{shade.deviation[0]:.1f}"
    return (lot.id, lightness, spread, green_red, blue_yellow, f"{lot.on_hand_g:.0f} g", shade.rests_on, lot.name)


def _table(rows: Sequence[tuple[str, ...]], *, left: set[int]) -> Iterator[str]:
    """Set rows in columns; those in `left` lean left, figures right."""
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    for row in rows:
        cells = (
            cell.ljust(width) if column in left else cell.rjust(width)
            for column, (cell, width) in enumerate(zip(row, widths, strict=True))
        )
        yield "  ".join(cells).rstrip()
