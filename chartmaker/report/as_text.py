"""The report and the list of lots as text for a terminal."""

from collections.abc import Iterator, Sequence

from chartmaker.appraisal import Appraisal, PairAppraisal
from chartmaker.checks.finding import SEVERITIES, Finding
from chartmaker.dye.fibre import tenths
from chartmaker.dye.plan import BathPlan
from chartmaker.knit.interval import Interval
from chartmaker.model.palette import Palette
from chartmaker.model.settings import Viewing
from chartmaker.model.units import METRIC, Units, at_the_pot, in_units
from chartmaker.report.depth import depth_lines
from chartmaker.report.lots import ListedLot, listed
from chartmaker.shade.lights import metameric_pairs

Rows = list[tuple[str, ...]]

YARN_HEADS = {"metric": ("metres", "grams"), "imperial": ("yards", "ounces")}
MOST_PAIRS = 12
"""How many pairs that other lights part are told before it says how many more there are."""


def report_as_text(appraisal: Appraisal, units: Units = METRIC) -> str:
    """Give the report as a terminal shows it."""
    design = appraisal.design
    lines = [
        design.title or "Untitled hat",
        f"colourway {design.colourway.name or '(none)'}",
        "",
        _size_line(appraisal, units),
        *depth_lines(appraisal.depth, units),
        "",
        *_letter_lines(appraisal, units),
        "",
        *_pair_lines(appraisal, units),
        *_bath_lines(appraisal.baths, units),
        *_finding_lines(appraisal.findings, units),
    ]
    return "\n".join(lines)


def lots_as_text(palette: Palette, viewing: Viewing, units: Units = METRIC) -> str:
    """Give the lots of a palette as a terminal shows them, the lightest first, those without a shade last.

    A line of figures for each, with how far its colour changes in the light that changes it most (CIEDE2000); its name,
    and a reading that does not belong, on a line below. Last come pairs that match in one light and part in another.
    """
    lots = sorted(listed(palette, viewing), key=lambda item: -item.shade.value if item.shade else 1)
    weight = YARN_HEADS[units.name][1]
    rows: Rows = [("lot", "value", "±", "a*", "b*", weight, "rests on", "by light", "in words")]
    rows.extend(_lot_row(item, units) for item in lots)
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


def _size_line(appraisal: Appraisal, units: Units) -> str:
    length = units.length
    return (
        f"Cast on {appraisal.cast_on_stitches}; {len(appraisal.rounds)} rounds; "
        f"{length.told(appraisal.circumference_cm)} round, {length.told(appraisal.height_cm)} high; "
        f"loop {length.fine(appraisal.loop.cm.likely)} from {appraisal.loop.source}"
    )


def _letter_lines(appraisal: Appraisal, units: Units) -> Iterator[str]:
    yarn, weight = units.yarn, units.weight
    amounts = [f"{name}{weight.unit}" for name in ("planned", "on hand", "short")]
    rows: Rows = [("letter", "lot", "value", "stitches", *YARN_HEADS[units.name], *amounts)]
    for letter in appraisal.letters:
        need = letter.requirement
        rows.append(
            (
                letter.letter,
                need.lot or "none yet",
                f"{letter.shade.value:.1f}" if letter.shade else "–",
                str(need.stitches),
                " – ".join(f"{yarn.shown(part):.0f}" for part in _three(need.metres)),
                " – ".join(weight.figure(part) for part in _three(need.grams)),
                weight.figure(need.planned_g),
                weight.figure(need.on_hand_g),
                weight.figure(need.short_g) if need.short_g else "–",
            )
        )
    yield from _table(rows, left={0, 1})


def _three(interval: Interval) -> tuple[float, float, float]:
    return interval.low, interval.likely, interval.high


def _whole(grams: float, units: Units) -> str:
    """Write a weight in whole grams, or in hundredths of an ounce."""
    return f"{grams:.0f}" if units is METRIC else units.weight.figure(grams)


def _pair_lines(appraisal: Appraisal, units: Units) -> Iterator[str]:
    pairs = sorted((pair for pair in appraisal.pairs if pair.drawn_cm > 0), key=lambda pair: -pair.drawn_cm)
    if not pairs:
        return
    rows: Rows = [("pair", f"edge{units.yarn.unit}", "ΔL*", "certain", "ΔE00", "grade")]
    for pair in pairs:
        figures = (pair.value_difference, pair.value_difference_low, pair.ciede2000)
        told = ["–" if figure is None else f"{figure:.1f}" for figure in figures]
        rows.append((" ".join(pair.letters), units.yarn.figure(pair.drawn_cm / 100), *told, _judged(pair)))
    yield from _table(rows, left={0, 5})
    yield ""


def _judged(pair: PairAppraisal) -> str:
    if not pair.grade:
        return "no shade"
    return f"{pair.grade}, predicted" if pair.rests_on == "predicted" else pair.grade


def _bath_lines(baths: Sequence[BathPlan], units: Units) -> Iterator[str]:
    for plan in baths:
        loads = ", ".join(
            f"load {load.load} ({load.lot or 'to stock'}) {at_the_pot(load.fibre_g, units)}" for load in plan.loads
        )
        weighed = "".join(f", {item.name} {item.grams:.1f} g" for item in (*plan.mordants, *plan.assists))
        yield f"Bath {plan.bath.id}: {loads}"
        yield "  to weigh out, dry: what is short with its sample, losses and whole skeins"
        yield f"  {plan.bath.dyestuff} {tenths(plan.dyestuff_g)} g{weighed}, water {plan.water_l:.1f} l"
        yield ""


def _finding_lines(findings: Sequence[Finding], units: Units) -> Iterator[str]:
    if not findings:
        yield "No findings."
        return
    counts = ((severity, sum(finding.severity == severity for finding in findings)) for severity in SEVERITIES)
    yield "Findings: " + ", ".join(f"{count} {severity}" for severity, count in counts if count)
    for finding in findings:
        yield f"  {finding.severity}  {finding.place.text}: {in_units(finding.message, units)}"
        if finding.remedy:
            yield f"        {in_units(finding.remedy, units)}"


def _lot_row(item: ListedLot, units: Units) -> tuple[str, ...]:
    on_hand = _whole(item.lot.on_hand_g, units)
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
