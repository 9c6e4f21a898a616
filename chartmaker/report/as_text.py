"""The report and the list of lots as text for a terminal."""

from collections.abc import Iterator, Sequence

from chartmaker.appraisal import Appraisal, PairAppraisal
from chartmaker.checks.finding import SEVERITIES, Finding
from chartmaker.dye.plan import BathPlan
from chartmaker.model.palette import Palette
from chartmaker.model.settings import Viewing
from chartmaker.report.depth import depth_lines
from chartmaker.report.lots import ListedLot, listed
from chartmaker.shade.lights import metameric_pairs

Rows = list[tuple[str, ...]]

MOST_PAIRS = 12
"""How many pairs that other lights part are told before it says how many more there are."""


def report_as_text(appraisal: Appraisal) -> str:
    """Give the report as a terminal shows it."""
    design = appraisal.design
    lines = [
        design.title or "Untitled hat",
        f"colourway {design.colourway.name or '(none)'}",
        "",
        _size_line(appraisal),
        *depth_lines(appraisal.depth),
        "",
        *_letter_lines(appraisal),
        "",
        *_pair_lines(appraisal),
        *_bath_lines(appraisal.baths),
        *_finding_lines(appraisal.findings),
    ]
    return "\n".join(lines)


def lots_as_text(palette: Palette, viewing: Viewing) -> str:
    """Give the lots of a palette as a terminal shows them, the lightest first, those without a shade last.

    A line of figures for each, with how far its colour changes in the light that changes it most (CIEDE2000); its name,
    and a reading that does not belong, on a line below. Last come pairs that match in one light and part in another.
    """
    lots = sorted(listed(palette, viewing), key=lambda item: -item.shade.value if item.shade else 1)
    rows: Rows = [("lot", "value", "±", "a*", "b*", "grams", "rests on", "by light", "in words")]
    rows.extend(_lot_row(item) for item in lots)
    figures, *table = _table(rows, left={0, 6, 7, 8})
    head = f"{palette.name or 'Palette'}: {len(palette.lots)} lots under {viewing.illuminant}, {viewing.observer}°"
    names = (f"  {item.lot.name}{_outlier(item)}" for item in lots)
    below = [line for pair in zip(table, names, strict=True) for line in pair]
    return "\n".join([head, "", figures, *below, *_metameric_lines(palette, viewing)])


def _outlier(item: ListedLot) -> str:
    outlier = item.trust.outlier if item.trust else None
    if outlier is None:
        return ""
    sure = min(99.9, 100 * outlier.confidence)  # nothing is quite certain
    return (
        f": reading {outlier.index + 1} stands apart from the others, {outlier.coordinate} {outlier.off:+.1f}, "
        f"{sure:.4g} % sure"
    )


def _metameric_lines(palette: Palette, viewing: Viewing) -> Iterator[str]:
    pairs = metameric_pairs(palette.lots, viewing)
    if pairs:
        yield ""
        yield "These match in one light and part in another:"
    for pair in pairs[:MOST_PAIRS]:
        near, far = (f"ΔE00 {one.ciede2000:.1f} under {one.illuminant}" for one in (pair.matching, pair.parted))
        yield f"  {' and '.join(pair.lots)}: {near}, {far}"
    if len(pairs) > MOST_PAIRS:
        yield f"  and {len(pairs) - MOST_PAIRS} more pairs"


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
        rows.append((" ".join(pair.letters), f"{pair.drawn_cm / 100:.1f}", *told, _judged(pair)))
    yield from _table(rows, left={0, 5})
    yield ""


def _judged(pair: PairAppraisal) -> str:
    if not pair.grade:
        return "no shade"
    return f"{pair.grade}, predicted" if pair.rests_on == "predicted" else pair.grade


def _bath_lines(baths: Sequence[BathPlan]) -> Iterator[str]:
    for plan in baths:
        loads = ", ".join(f"load {load.load} ({load.lot or 'to stock'}) {load.fibre_g:.0f} g" for load in plan.loads)
        weighed = "".join(f", {item.name} {item.grams:.1f} g" for item in (*plan.mordants, *plan.assists))
        yield f"Bath {plan.bath.id}: {loads}"
        yield "  to weigh out, dry: what is short with its sample, losses and whole skeins"
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


def _lot_row(item: ListedLot) -> tuple[str, ...]:
    on_hand = f"{item.lot.on_hand_g:.0f}"
    if item.shade is None or item.words is None:
        return (item.lot.id, "–", "–", "–", "–", on_hand, "nothing", "–", "")
    lightness, green_red, blue_yellow = (f"{value:.1f}" for value in item.shade.lab)
    spread, worst = f"{item.shade.deviation[0]:.1f}", item.least_constant
    light = f"{worst[0]:.1f} {worst[1]}" if worst else "–"
    rests_on = item.shade.rests_on
    return (item.lot.id, lightness, spread, green_red, blue_yellow, on_hand, rests_on, light, item.words.text)


def _table(rows: Sequence[tuple[str, ...]], *, left: set[int]) -> Iterator[str]:
    """Set rows in columns; those in `left` lean left, figures right."""
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    for row in rows:
        cells = (
            cell.ljust(width) if column in left else cell.rjust(width)
            for column, (cell, width) in enumerate(zip(row, widths, strict=True))
        )
        yield "  ".join(cells).rstrip()
