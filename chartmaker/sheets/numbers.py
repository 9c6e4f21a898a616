"""How quantities are written on paper: one figure after the point, and the unit in the head of the column."""

from chartmaker.model.gauge import Gauge
from chartmaker.model.units import Units


def one_place(value: float) -> str:
    """Write a quantity to a tenth."""
    return f"{value:.1f}"


def gauge_words(gauge: Gauge, units: Units) -> str:
    """Write a gauge: "28 stitches and 32 rounds in 10 cm"."""
    stitches, rounds = (units.gauge.shown(count) for count in (gauge.stitches_per_10cm, gauge.rounds_per_10cm))
    return f"{round(stitches, 1):g} stitches and {round(rounds, 1):g} rounds{units.gauge.unit}"


def or_dash(value: float | None) -> str:
    """Write a quantity to a tenth, or a dash for one that is not known."""
    return "–" if value is None else one_place(value)


def spans(numbers: list[int]) -> str:
    """Write rising whole numbers as spans: "3–7, 12"."""
    parts: list[str] = []
    first = last = numbers[0]
    for number in [*numbers[1:], -1]:
        if number == last + 1:
            last = number
            continue
        parts.append(f"{first}" if first == last else f"{first}–{last}")
        first = last = number
    return ", ".join(parts)


def count_of(number: int, noun: str) -> str:
    """Write a count with its noun: "1 stitch", "2 stitches"."""
    plural = noun + ("es" if noun.endswith(("ch", "sh", "s")) else "s")
    return f"{number} {noun if number == 1 else plural}"
