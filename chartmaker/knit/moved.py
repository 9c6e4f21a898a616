"""What moves when gauge, head or ease are others: told in sentences, before anything is done about it."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from chartmaker.knit.depth import depth_of
from chartmaker.knit.fit import circumference_cm
from chartmaker.knit.refit import cast_on, refit
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands
from chartmaker.model.units import METRIC, Units


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """What another gauge, head or ease does to a hat, and the edit that fits it anew."""

    sentences: tuple[str, ...]
    """What is so now and what would mend it; empty where nothing moves."""
    edit: ReplaceBands | None
    """None where the hat fits as well as it can."""


def moved(before: Design, after: Design, units: Units = METRIC) -> Moved:
    """Compare two designs, of which the second has other measurements, with lengths told in some units."""
    edit = refit(after)
    told = (*_now(before, after, units), *(_then(after, edit.applied_to(after), units) if edit else ()))
    return Moved(sentences=told, edit=edit)


def have_measurements_moved(before: Design, after: Design) -> bool:
    """Tell whether anything differs that a hat is fitted by."""
    return _measurements(before) != _measurements(after)


def _measurements(design: Design) -> tuple[object, ...]:
    hat = design.hat
    return design.gauge, hat.head_cm, hat.ease_percent, hat.shape, hat.depth_cm


def _now(before: Design, after: Design, units: Units) -> Iterator[str]:
    told, count = units.length.told, cast_on(after)
    round_then, round_now = (circumference_cm(count, design.gauge) for design in (before, after))
    if told(round_then) != told(round_now):
        text = f"{count} stitches are {told(round_now)} round instead of {told(round_then)}"
        yield text
    if told(before.hat.wanted_cm) != told(after.hat.wanted_cm):
        text = f"head and ease ask for {told(after.hat.wanted_cm)} instead of {told(before.hat.wanted_cm)}"
        yield text
    was, now = depth_of(before), depth_of(after)
    if told(was.cm) != told(now.cm):
        text = f"{now.rounds} rounds are {told(now.cm)} deep instead of {told(was.cm)}"
        yield text
    is_asked_anew = before.hat != after.hat
    if is_asked_anew and told(was.wanted.wanted_cm) != told(now.wanted.wanted_cm):
        text = f"a depth of {told(now.wanted.wanted_cm)} is wanted instead of {told(was.wanted.wanted_cm)}"
        yield text


def _then(now: Design, fitted: Design, units: Units) -> Iterator[str]:
    count = cast_on(fitted)
    if count != cast_on(now):
        told = units.length.told(circumference_cm(count, fitted.gauge))
        text = f"cast on {count} instead of {cast_on(now)}, {told} round"
        yield text
    was, depth = depth_of(now), depth_of(fitted)
    for name in ("brim", "widening", "body", "crown"):
        more = depth.part(name).rounds - was.part(name).rounds
        if more:
            text = f"{abs(more)} round{'s' if abs(more) > 1 else ''} {'more' if more > 0 else 'fewer'} in the {name}"
            yield text
    repeats = _repeats(now, fitted)
    if repeats:
        yield "the pattern stays, its repeat is counted as " + ", ".join(repeats)
    times = _times(now, fitted)
    if times:
        yield "times round: " + ", ".join(times)
    if depth.off_cm:
        text = f"then {units.length.told(depth.cm)} deep, which is still {depth.verdict}: mend the patterns by hand"
        yield text


def _times(now: Design, fitted: Design) -> list[str]:
    """Tell which bands go round another number of times."""
    return _told_apart(now, fitted, lambda band: band.times)


def _repeats(now: Design, fitted: Design) -> list[str]:
    """Tell which bands that are not shaped have another repeat."""
    return _told_apart(now, fitted, lambda band: 0 if band.is_shaped else len(band.rounds[0]))


def _told_apart(now: Design, fitted: Design, number_of: Callable[[Band], int]) -> list[str]:
    """Tell a number of bands where it differs, those alike together; not where other bands stand there."""
    if [band.name for band in now.bands] != [band.name for band in fitted.bands]:
        return []
    names: dict[tuple[int, int], dict[str, None]] = {}
    for place, (old, new) in enumerate(zip(now.bands, fitted.bands, strict=True), start=1):
        if number_of(old) != number_of(new):
            names.setdefault((number_of(new), number_of(old)), {})[new.name.strip() or f"band {place}"] = None
    return [f"{new} instead of {old} ({', '.join(named)})" for (new, old), named in names.items()]
