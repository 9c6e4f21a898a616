"""What a new hat came out as, in plain sentences, and the named sizes as a terminal shows them."""

from collections.abc import Collection, Iterator

from chartmaker.knit.answers import Answers, sources_for
from chartmaker.knit.body_plan import HEIGHTS
from chartmaker.knit.depth import depth_of
from chartmaker.knit.sizes import sizes, us_hat_size_text
from chartmaker.knit.starting_counts import USUAL_REPEATS
from chartmaker.model.design import Design
from chartmaker.model.units import CM_PER_INCH, METRIC, Units, in_units


def new_hat_as_text(design: Design, answers: Answers, *, given: Collection[str], units: Units = METRIC) -> str:
    """Tell counts, depth, bands and lots of a hat that was made from answers; `given` are those the knitter gave."""
    bands = (*_band_lines(design, units), *_repeat_lines(design, answers), "")
    lines = [*_size_lines(design, units), *bands, *_lot_lines(design), *_source_lines(answers, given, units)]
    return "\n".join(lines)


def sizes_as_text(units: Units = METRIC) -> str:
    """List the named sizes, those of one source under each other."""
    lines, last = [], ""
    for size in sizes():
        if size.source != last:
            lines.append(f"{size.source}:")
            last = size.source
        lines.append(f"  {size.name:<24} {units.length.told(size.head_cm):>8}   US {us_hat_size_text(size.head_cm)}")
    return "\n".join(lines)


def _size_lines(design: Design, units: Units) -> Iterator[str]:
    hat, gauge, length = design.hat, design.gauge, units.length
    count = design.bands[0].stitches(0)
    around = count * gauge.stitch_width_cm
    yield (
        f"A {_called(hat.shape)} for a head of {length.brief(hat.head_cm)} ({_other_way(hat.head_cm, units)}, US size "
        f"{us_hat_size_text(hat.head_cm)}), at {units.gauge.brief_figure(gauge.stitches_per_10cm)} stitches and "
        f"{units.gauge.brief_figure(gauge.rounds_per_10cm)} rounds{units.gauge.unit}."
    )
    yield (
        f"{count} stitches are cast on, {length.told(around)} round: {100 * (around / hat.head_cm - 1):+.1f} % ease, "
        f"{hat.ease_percent:+g} % was asked for."
    )
    depth = depth_of(design)
    parts = ", ".join(f"{part.name} {length.told(part.cm)}" for part in depth.parts)
    deep = length.told(depth.cm)
    yield f"From the worn edge to the top it is {deep} along the fabric, {depth.rounds} rounds: {parts}."
    if hat.fold:
        ways = {"up": "are turned up", "in": "are sewn down inside", "roll": "roll up by themselves"}
        yield f"The first {hat.fold.rounds} rounds {ways[hat.fold.way]}."


def _other_way(head_cm: float, units: Units) -> str:
    """Tell a head in the other system too: sizes are sold in both."""
    return f"{head_cm / CM_PER_INCH:.1f} in" if units is METRIC else METRIC.length.told(head_cm)


def _called(shape: str) -> str:
    return "stocking cap" if shape == "stocking" else shape


def _band_lines(design: Design, units: Units) -> Iterator[str]:
    width = max(len(band.name) for band in design.bands)
    yield ""
    yield f"  {'band':<{width}}  rounds  {units.length.unit.strip():>5}  stitches"
    for band in design.bands:
        first, last = band.stitches(0), band.stitches(len(band.rounds) - 1)
        height = units.length.figure(len(band.rounds) * design.gauge.round_height_cm)
        stitches = f"{first}" if first == last else f"{first} to {last}"
        yield f"  {band.name:<{width}}  {len(band.rounds):>6}  {height:>5}  {stitches}" + _room(band.name, first)


def _room(name: str, stitches: int) -> str:
    """Tell which repeats close up round a band that a motif is meant for; empty for others."""
    if name not in HEIGHTS:
        return ""
    repeats = [str(repeat) for repeat in USUAL_REPEATS if stitches % repeat == 0]
    return f"; a motif's repeat may be {', '.join(repeats)}" if repeats else ""


def _repeat_lines(design: Design, answers: Answers) -> Iterator[str]:
    """Tell of a repeat that was asked for and closes up round no count near enough."""
    repeats = {len(band.rounds[0]) for band in design.bands if band.name in HEIGHTS}
    if answers.motif_repeat and answers.motif_repeat not in repeats:
        yield ""
        yield f"A repeat of {answers.motif_repeat} closes up round no count that comes near enough, so none is held."


def _lot_lines(design: Design) -> Iterator[str]:
    names = {lot.id: lot.name for lot in design.palette.lots}
    if design.colourway.lots:
        told = ", ".join(f"{letter} is {names[lot]} ({lot})" for letter, lot in design.colourway.lots)
        yield f"{told}: the lightest for the ground, then what lies farthest from it in value."
    without = [letter for letter in design.letters_in_use if design.colourway.lot_of(letter) is None]
    if without:
        yield f"{' and '.join(without)} {'have' if len(without) > 1 else 'has'} no lot yet."


def _source_lines(answers: Answers, given: Collection[str], units: Units) -> Iterator[str]:
    taken = [one for one in sources_for(answers.shape) if one.field not in given]
    if taken:
        yield "What was not said rests on this:"
    for one in taken:
        yield f"  {in_units(one.source, units)}."
