"""The stitch counts that the bands allow, as JSON (`chartmaker-fit`, version 1: keys may be added) and as text."""

from collections.abc import Iterator
from typing import Any

from chartmaker.knit.fit import Candidate, Fit, Help, fit
from chartmaker.knit.fit_help import helps_beside
from chartmaker.knit.moved import moved
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.units import METRIC, Units, in_units

Json = dict[str, Any]


def fit_as_json(design: Design) -> Json:
    """Give the counts, nearest first, and what would help where none is near enough, as plain dicts and lists."""
    found = fit(design)
    names = band_names(design)
    return {
        "format": "chartmaker-fit",
        "version": 1,
        "target_stitches": _figure(found.target_stitches),
        "wanted_cm": _figure(found.wanted_cm),
        "every_stitches": found.counts.step or None,
        "is_near_enough": found.is_near_enough,
        "candidates": [
            {**_measures(candidate), "is_current": _is_current(candidate, design), "times": _times(names, candidate)}
            for candidate in found.candidates
        ],
        "helps": [{"kind": one.kind, "text": one.text, **_measures(one.candidate)} for one in _helps(design, found)],
    }


def fit_as_text(design: Design, units: Units = METRIC) -> str:
    """Give the counts as a terminal shows them: what is asked, each count, how often each repeat goes round."""
    found = fit(design)
    lines = [*_asked_lines(design, found, units)]
    if found.candidates:
        lines += ["", *_candidate_lines(design, found, units), "", *_times_lines(design, found)]
    lines += _help_lines(design, found, units)
    return "\n".join(lines)


def band_names(design: Design) -> tuple[str, ...]:
    """Name the bands so that no two are alike: the second "rest" is "rest 2", one without a name "band 3"."""
    names: list[str] = []
    for number, band in enumerate(design.bands, start=1):
        stem = name = band.name.strip() or f"band {number}"
        again = 2
        while name in names:
            name, again = f"{stem} {again}", again + 1
        names.append(name)
    return tuple(names)


def _helps(design: Design, found: Fit) -> tuple[Help, ...]:
    return helps_beside(design, found)


def _measures(candidate: Candidate) -> Json:
    return {
        "stitches": candidate.stitches,
        "circumference_cm": _figure(candidate.circumference_cm),
        "ease_percent": _figure(candidate.ease_percent),
        "off_cm": _figure(candidate.off_cm),
        "verdict": candidate.verdict,
    }


def _times(names: tuple[str, ...], candidate: Candidate) -> dict[str, int]:
    return dict(zip(names, candidate.times, strict=True))


def _is_current(candidate: Candidate, design: Design) -> bool:
    return candidate.times == tuple(band.times for band in design.bands)


def _asked_lines(design: Design, found: Fit, units: Units) -> Iterator[str]:
    hat, length, gauge = design.hat, units.length, units.gauge
    yield (
        f"A head of {length.brief(hat.head_cm)} with {hat.ease_percent:g} % ease asks for "
        f"{length.told(found.wanted_cm)}: {found.target_stitches:.1f} stitches at "
        f"{gauge.brief(design.gauge.stitches_per_10cm)}."
    )
    if found.candidates:
        every = found.counts.step
        yield f"All the bands together allow {'any count' if every == 1 else f'every {every} stitches'}."
    else:
        yield "No stitch count within the limits lets every band go round a whole number of times."
    if rounds_not_meeting(design):
        yield "As the design stands its rounds do not meet everywhere; `report` tells where."


def _candidate_lines(design: Design, found: Fit, units: Units) -> Iterator[str]:
    length, unit = units.length, units.length.unit.strip()
    yield f"  cast on  {unit} round  ease %  off {unit}  verdict"
    for candidate in found.candidates:
        around = length.figure(candidate.circumference_cm)
        yield (
            f"  {candidate.stitches:>7}  {around:>8}  {candidate.ease_percent:>+6.1f}"
            f"  {length.shown(candidate.off_cm):>+6.{length.digits}f}  {candidate.verdict}"
            + (", as the design is now" if _is_current(candidate, design) else "")
        )


def _times_lines(design: Design, found: Fit) -> Iterator[str]:
    names = band_names(design)
    width = max(len("times round, for"), *map(len, names))
    yield "times round, for".ljust(width) + "".join(f"{candidate.stitches:>6}" for candidate in found.candidates)
    for index, name in enumerate(names):
        yield name.ljust(width) + "".join(f"{candidate.times[index]:>6}" for candidate in found.candidates)


def _help_lines(design: Design, found: Fit, units: Units) -> Iterator[str]:
    offered = _helps(design, found)
    anew = () if found.is_near_enough else moved(design, design, units).sentences
    if found.is_near_enough and not offered:
        return
    yield ""
    if not offered and not anew:
        yield "None is near, and no small change of one repeat brings one near: change the gauge or the ease."
    if offered:
        yield "One would be nearer:" if found.is_near_enough else "None is near. What would help:"
        for one in offered:
            yield f"  {in_units(one.text, units)}"
    if anew:
        yield "What fitting anew would do, which the Hat page does:"
        for text in anew:
            yield f"  {in_units(text, units)}"


def _figure(value: float) -> float:
    """Drop the digits that floating point adds beyond the sixth decimal."""
    return round(float(value), 6)
