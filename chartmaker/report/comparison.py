"""Two lots compared, as JSON (`chartmaker-comparison`, version 1: keys may be added) and as text for a terminal."""

from collections.abc import Iterator
from typing import Any

from chartmaker.dye.causes import CauseReading, is_saddened, read_causes
from chartmaker.dye.comparison import Comparison, Strength

Json = dict[str, Any]


def comparison_as_json(comparison: Comparison) -> Json:
    """Give a comparison as plain dicts and lists; what cannot be told is null, and `why_no_strength` says why."""
    reading = read_causes(comparison)
    strength = comparison.strength
    return {
        "format": "chartmaker-comparison",
        "version": 1,
        "reference": comparison.reference.id,
        "sample": comparison.sample.id,
        "ciede2000": _figure(comparison.ciede2000),
        "difference_lch": _figures(comparison.difference_lch),
        "strength": _figure(strength.factor) if strength else None,
        "strength_interval": _figures((strength.low, strength.high)) if strength else None,
        "why_no_strength": comparison.why_no_strength or None,
        "is_saddened": is_saddened(strength) if strength else None,
        "dye_under_grey": _figure(strength.own_dye) if strength else None,
        "shift_ciede2000": _figure(strength.shift_ciede2000) if strength else None,
        "shift_lab": _figures(strength.shift_lab) if strength else None,
        "shift_lch": _figures(strength.shift_lch) if strength else None,
        "shift_limit": _figure(strength.shift_limit) if strength else None,
        "recipe_differences": [
            {"key": row.key, "reference": row.reference, "sample": row.sample} for row in comparison.recipe_differences
        ],
        "suspects": [
            {"cause": line.cause, "standing": line.standing, "evidence": line.evidence, "source": line.source}
            for line in reading.suspects
        ],
        "reading": reading.text,
    }


def comparison_as_text(comparison: Comparison) -> str:
    """Give a comparison as a terminal shows it: the figures, the reading, the recipes side by side."""
    reading = read_causes(comparison)
    lines = [f"{comparison.sample.name} ({comparison.sample.id}) beside {comparison.reference.name}"]
    lines[0] += f" ({comparison.reference.id}), which is the reference"
    lines += ["", *_figure_lines(comparison), "", *_reading_lines(reading), "", *_recipe_lines(comparison)]
    return "\n".join(lines)


def _figure_lines(comparison: Comparison) -> Iterator[str]:
    if comparison.ciede2000 is not None and comparison.difference_lch is not None:
        lightness, chroma, hue = comparison.difference_lch
        yield f"apart     ΔE00 {comparison.ciede2000:.1f}; ΔL* {lightness:+.1f}, ΔC* {chroma:+.1f}, ΔH* {hue:+.1f}"
    if comparison.strength is None:
        yield f"strength  cannot be told: {comparison.why_no_strength}"
        return
    yield from _strength_lines(comparison.strength)


def _strength_lines(strength: Strength) -> Iterator[str]:
    lightness, chroma, turn = strength.shift_lch
    counted = "; the dullness is counted as dye" if is_saddened(strength) else ""
    span = f"{strength.low:.2f} to {strength.high:.2f}, 90 %"
    yield f"strength  {strength.factor:.2f} of the reference's dye ({span}){counted}"
    yield (
        f"shift     ΔE00 {strength.shift_ciede2000:.1f}, of which readings may give {strength.shift_limit:.1f}; "
        f"ΔL* {lightness:+.1f}, ΔC* {chroma:+.1f}, hue {turn:+.0f}°"
    )


def _reading_lines(reading: CauseReading) -> Iterator[str]:
    yield from (line for line in (reading.strength, reading.shift, reading.how_sure) if line)
    if not reading.suspects:
        return
    yield ""
    for line in reading.suspects:
        evidence = f": {line.evidence}" if line.evidence else ""
        yield f"  {line.cause}; {line.standing}{evidence}"
        yield f"      source: {line.source}"


def _recipe_lines(comparison: Comparison) -> Iterator[str]:
    rows = [(row.words, _cell(row.reference), _cell(row.sample)) for row in comparison.recipe]
    rows.insert(0, ("", "reference", "sample"))
    marks = [False, *(row.is_different for row in comparison.recipe)]
    widths = [max(len(row[column]) for row in rows) for column in range(3)]
    for (key, first, second), is_different in zip(rows, marks, strict=True):
        mark = "≠" if is_different else " "
        yield f"{mark} {key.ljust(widths[0])}  {first.rjust(widths[1])}  {second.rjust(widths[2])}".rstrip()


def _cell(value: str | float | None) -> str:
    return "–" if value is None else str(value)


def _figures(values: tuple[float, ...] | None) -> list[float | None] | None:
    return None if values is None else [_figure(value) for value in values]


def _figure(value: float | None) -> float | None:
    """Drop the digits that floating point adds beyond the sixth decimal."""
    return None if value is None else round(float(value), 6)
