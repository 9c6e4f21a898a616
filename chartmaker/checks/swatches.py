"""Swatches that cannot be right: floats that would take all the yarn, or a stitch far from what the gauge allows."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place
from chartmaker.knit.loop import loop_from_gauge, swatch_loop_cm
from chartmaker.model.units import Measured, reason

NAME = "swatch"
FAR_OFF = 0.3
"""How far, as a share of it, a swatch may be from what the gauge says of plain wool: common practice, no source.

Munden's three relaxed states differ by a tenth; a miscount, a wrong grist or floats that were not told differ by more.
"""


def check(facts: Facts) -> Iterator[Finding]:
    """Report each swatch that is passed over, and each that disagrees with the gauge beyond what wool does."""
    by_gauge = loop_from_gauge(facts.design.gauge).cm.likely
    for number, swatch in enumerate(facts.design.swatches, start=1):
        try:
            loop_cm = swatch_loop_cm(swatch, facts.design)
        except ValueError as trouble:
            remedy = "count its stitches and floats again; it is passed over meanwhile"
            yield _finding(number, "warn", reason(trouble), remedy)
            continue
        if abs(loop_cm / by_gauge - 1) > FAR_OFF:
            yield _finding(
                number, "note", _unlike(loop_cm, by_gauge), "check its count, its floats and the grist, or the gauge"
            )


def _unlike(loop_cm: float, by_gauge_cm: float) -> str:
    return Measured(
        lambda units: (
            f"it gives {units.length.fine(loop_cm)} of yarn to a stitch, "
            f"where the gauge asks for about {units.length.fine(by_gauge_cm)}"
        )
    )


def _finding(number: int, severity: str, message: str, remedy: str) -> Finding:
    place = Place(text=f"swatch {number}", page="yarn")
    return Finding(check=NAME, severity=severity, place=place, message=message, remedy=remedy)
