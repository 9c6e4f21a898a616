"""What would help where no stitch count that the bands allow is near enough: edits, each told in a sentence.

Four ways: the repeats that hinder drawn in fewer stitches, a spacer stitch in them, a plain round between two bands
that changes the count, or the crown made anew (`fit_crown`). Each edit makes the whole hat meet at a count near enough
to what was asked.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import lcm

from chartmaker.knit.changing_band import changing_band
from chartmaker.knit.depth import Parts, parts_of, starts_of
from chartmaker.knit.fit import (
    FITS,
    PLAIN_ROUND,
    REPEAT,
    SPACER,
    TOO_TIGHT,
    Counts,
    Fit,
    Foot,
    Help,
    allowed,
    bands_for,
    circumference_cm,
    comes_of,
    feet_of,
    is_near,
    judged,
    nearest_near,
    shares_of,
    target_of,
    verdict,
)
from chartmaker.knit.fit_crown import crown_help
from chartmaker.knit.repeat_folding import copies_in, drawn_once
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.edits import with_bands
from chartmaker.model.repeat_edits import change_repeat
from chartmaker.model.units import Measured

MOST_OF_A_KIND = 2
"""Helps of one kind that are given, the smallest changes first."""
MOST_SPACERS = 3
"""Stitches that a repeat is widened or narrowed by: a motif stands apart by as much and still reads as one pattern."""
MOST_CHANGE = 0.1
"""The share of its stitches that one round may gain or lose: common practice, no source."""


@dataclass(frozen=True, slots=True)
class _Trial:
    """A change of repeats: of which bands, and how."""

    members: tuple[int, ...]
    change: int
    """Stitches that are added; 0 for folding."""


def helps(design: Design) -> tuple[Help, ...]:
    """Find what lets a count be near enough, the smallest changes of each kind first."""
    feet = feet_of(design.bands)
    trials = [trial for members in hindering(feet) for trial in _trials(design.bands, members)]
    found: list[Help] = []
    for kind, wanted in (
        (REPEAT, [trial for trial in trials if trial.change <= 0]),
        (SPACER, [trial for trial in trials if trial.change > 0]),
    ):
        made = (_helped(design, feet, kind, trial) for trial in sorted(wanted, key=lambda one: abs(one.change)))
        found += _first(made)
    crown = crown_help(design)
    return (*found, *_first(_plain_rounds(design, feet)), *((crown,) if crown else ()))


def helps_beside(design: Design, found: Fit) -> tuple[Help, ...]:
    """Find what helps beside the counts of a fit: anything where none is near enough, else a crown for a nearer one."""
    if not found.is_near_enough:
        return helps(design)
    crown = crown_help(design)
    return (crown,) if crown else ()


def hindering(feet: Sequence[Foot]) -> list[tuple[int, ...]]:
    """Give the bands, by index, whose repeat keeps counts away that the others would allow; those alike together."""
    shares = shares_of(feet)
    step = lcm(*(share.denominator for share in shares)) if shares else 0
    groups: dict[int, list[int]] = {}
    for index, foot in enumerate(feet):
        groups.setdefault(foot.eaten, []).append(index)
    found = []
    for members in groups.values():
        others = [share.denominator for index, share in enumerate(shares) if index not in members]
        if shares and lcm(*others) < step:
            found.append(tuple(members))
    return found


def _first(made: Iterator[Help | None]) -> list[Help]:
    kept: list[Help] = []
    for one in made:
        if one is not None:
            kept.append(one)
        if len(kept) == MOST_OF_A_KIND:
            break
    return kept


def _trials(bands: Sequence[Band], members: tuple[int, ...]) -> Iterator[_Trial]:
    texture = lcm(*(len(bands[index].texture) or 1 for index in members))
    copied = tuple(index for index in members if copies_in(bands[index]) > 1)
    if copied:
        yield _Trial(copied, 0)
    for change in sorted({*range(1, MOST_SPACERS + 1), texture}):
        if change % texture == 0:
            yield _Trial(members, change)
            yield _Trial(members, -change)


def _helped(design: Design, feet: Sequence[Foot], kind: str, trial: _Trial) -> Help | None:
    """Make the help of a trial; None where it does not help."""
    if trial.change:
        # Most trials come to nothing; those are known by their feet, before any round is made.
        count = nearest_near(allowed(_changed_feet(feet, trial)), design)
        if count is None:
            return None
    try:
        bands = _changed_bands(design, trial)
        count = nearest_near(allowed(feet_of(bands)), design)
        edit = count and with_bands(design, bands_for(bands, count), _edit_text(trial))
    except ValueError:
        return None
    if not count or not edit or not rounds_not_meeting(edit.applied_to(design)) <= rounds_not_meeting(design):
        return None
    candidate = judged(count, design, times=tuple(band.times for band in edit.after))
    doing = _what(design, bands, trial)
    text = Measured(lambda units: f"{doing}: {comes_of(candidate, units)}")
    return Help(kind=kind, text=text, candidate=candidate, edit=edit)


def _changed_feet(feet: Sequence[Foot], trial: _Trial) -> list[Foot]:
    change = trial.change
    return [
        Foot(max(foot.eaten + change, 0), max(foot.left + change, 1), max(foot.widest + change, 1))
        if index in trial.members
        else foot
        for index, foot in enumerate(feet)
    ]


def _changed_bands(design: Design, trial: _Trial) -> tuple[Band, ...]:
    """Give the bands with their repeats changed, each going round once; ValueError where that cannot be."""
    once = replace(design, bands=tuple(replace(band, times=1) for band in design.bands))
    bands = list(once.bands)
    for index in trial.members:
        if not trial.change:
            bands[index] = drawn_once(bands[index])
        elif edit := change_repeat(once, band=index, by=trial.change, side="left"):
            bands[index] = edit.after[index]
    return tuple(bands)


def _plain_rounds(design: Design, feet: Sequence[Foot]) -> Iterator[Help]:
    """Make the helps that put a round between two bands, the one that changes fewest stitches first.

    Each stands as high as it can, so that as much of the hat as may be has the count that fits.
    """
    near: list[tuple[int, int, float, int, int]] = []
    target = target_of(design)
    starts, parts = starts_of(design.bands), parts_of(design)
    shares = shares_of(feet)
    for place in range(1, len(shares)):
        upper = allowed(feet[place:])
        leaves = shares[place - 1] * feet[place - 1].left
        for cast_on in allowed(feet[:place]).all:
            below = int(cast_on * leaves)
            above = _nearest_to(upper, below)
            is_small = above and 0 < abs(above - below) <= MOST_CHANGE * below
            if is_near(cast_on, design) and is_small and _wears(design, above, starts[place], parts):
                near.append((abs(above - below), -place, abs(cast_on - target), cast_on, above))
    told: set[tuple[int, int]] = set()
    for change, lowered, _, cast_on, above in sorted(near):
        if (cast_on, change) not in told:
            told.add((cast_on, change))
            yield from _with_plain_round(design, -lowered, cast_on, above)


def _wears(design: Design, stitches: int, start: int, parts: Parts) -> bool:
    """Whether a count that begins at a round can be worn there: a brim holds the hat on, a body has to go on."""
    judgement = verdict(circumference_cm(stitches, design.gauge), design.hat)
    if start < parts.body:
        return judgement == FITS
    return start >= parts.crown or judgement != TOO_TIGHT


def _nearest_to(counts: Counts, below: int) -> int:
    """Give the count nearest to what stands below, 0 where there is none."""
    if not counts.step:
        return 0
    under = below // counts.step * counts.step
    near = [count for count in (under, under + counts.step) if count in counts.all]
    return min(near, key=lambda count: abs(count - below), default=0)


def _with_plain_round(design: Design, place: int, cast_on: int, above: int) -> Iterator[Help]:
    lower = bands_for(design.bands[:place], cast_on)
    below = lower[-1].stitches(len(lower[-1].rounds) - 1)
    change = changing_band(below=below, above=above, letter=lower[-1].rounds[-1].letters[0])
    shares = shares_of(feet_of(design.bands)[place:])
    upper = tuple(
        replace(band, times=int(above * share)) for band, share in zip(design.bands[place:], shares, strict=True)
    )
    try:
        edit = with_bands(design, (*lower, change, *upper), "Put in a round that changes the count")
    except ValueError:
        return
    if edit:
        candidate = judged(cast_on, design, times=tuple(band.times for band in edit.after))
        verb = "makes" if above > below else "takes away"
        text = Measured(
            lambda units: (
                f"put a plain round that {verb} {_stitches(abs(above - below))}, evenly, above "
                f"{_name(design, place - 1)}, so that {_name(design, place)} has {above}, "
                f"{units.length.told(circumference_cm(above, design.gauge))}: {comes_of(candidate, units)}"
            )
        )
        yield Help(kind=PLAIN_ROUND, text=text, candidate=candidate, edit=edit)


def _edit_text(trial: _Trial) -> str:
    if not trial.change:
        return "Draw the repeat once and fit the hat"
    return "Put spacer stitches in a repeat" if trial.change > 0 else "Take stitches out of a repeat"


def _what(design: Design, bands: Sequence[Band], trial: _Trial) -> str:
    names = _names(design, trial.members)
    old = len(design.bands[trial.members[0]].rounds[0])
    new = len(bands[trial.members[0]].rounds[0])
    if not trial.change:
        return f"count the repeat of {names} as {new} instead of {old}, the pattern stays as it is"
    stitches = _stitches(abs(trial.change))
    if trial.change > 0:
        return f"put {stitches} of ground between the repeats of {names}, {new} instead of {old}"
    return f"draw the repeat of {names} in {new} instead of {old}, {stitches} fewer"


def _stitches(count: int) -> str:
    return f"{count} stitch{'es' if count > 1 else ''}"


def _names(design: Design, members: Sequence[int]) -> str:
    names = list(dict.fromkeys(_name(design, index) for index in members))
    return " and ".join([", ".join(names[:-1]), names[-1]]) if len(names) > 1 else names[0]


def _name(design: Design, index: int) -> str:
    return design.bands[index].name.strip() or f"band {index + 1}"
