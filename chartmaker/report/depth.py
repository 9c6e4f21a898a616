"""The depth of a hat over its parts, for scripts and for a terminal."""

from collections.abc import Iterator
from typing import Any

from chartmaker.knit.depth import FITS, Depth
from chartmaker.model.units import METRIC, Units, in_units

Json = dict[str, Any]


def depth_as_json(depth: Depth) -> Json:
    """Give the budget as plain dicts and lists; `rounds_to_add` is negative for rounds to take out."""
    wanted = depth.wanted
    return {
        "rounds": depth.rounds,
        "folded_rounds": depth.folded_rounds,
        "parts": [{"part": part.name, "rounds": part.rounds, "cm": _figure(part.cm)} for part in depth.parts],
        "wanted_cm": _figure(wanted.wanted_cm),
        "lowest_cm": _figure(wanted.lowest_cm),
        "highest_cm": _figure(wanted.highest_cm),
        "rule": wanted.rule,
        "has_crown": depth.has_crown,
        "verdict": depth.verdict,
        "rounds_to_add": depth.rounds_to_add,
    }


def depth_lines(depth: Depth, units: Units = METRIC) -> Iterator[str]:
    """Tell the budget in two lines: what there is, and what is asked."""
    length = units.length
    parts = ", ".join(f"{part.name} {part.rounds} ({length.told(part.cm)})" for part in depth.parts)
    folded = f"; {depth.folded_rounds} folded rounds lie double" if depth.folded_rounds else ""
    yield f"Depth {length.told(depth.cm)} along the fabric, {depth.rounds} rounds{': ' if parts else ''}{parts}{folded}"
    wanted = depth.wanted
    if wanted.highest_cm is None:
        span = f"from {length.told(wanted.lowest_cm)}"
    elif wanted.highest_cm == wanted.lowest_cm:
        span = length.told(wanted.lowest_cm)
    else:
        span = length.span(wanted.lowest_cm, wanted.highest_cm)
    yield f"asked for {span}, {in_units(wanted.rule, units)}: {_verdict(depth)}"


def _verdict(depth: Depth) -> str:
    if not depth.has_crown:
        return "nothing closes the hat yet"
    if depth.verdict == FITS:
        return FITS
    rounds = depth.rounds_to_add
    return f"{depth.verdict}, {'add' if rounds > 0 else 'take'} {abs(rounds)} rounds{'' if rounds > 0 else ' out'}"


def _figure(value: float | None) -> float | None:
    """Drop the digits that floating point adds beyond the sixth decimal."""
    return None if value is None else round(float(value), 6)
