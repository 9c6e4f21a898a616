"""The stitch counts that every band of a hat allows, and what each would be like to wear.

A band goes round a whole number of times where what its repeat eats divides the stitches below it. What each band
leaves is what the next one eats, so that every band's times are a fixed share of the stitches cast on: a count is
allowed where all of these shares of it are whole. All of it is exact arithmetic.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from math import lcm

from chartmaker.model.band import Band
from chartmaker.model.bounds import MOST_STITCHES
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands, with_bands
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import Hat
from chartmaker.model.units import Units

FITS, SNUG, LOOSE, TOO_TIGHT = "fits", "snug", "loose", "too tight"
REPEAT, SPACER, PLAIN_ROUND, CROWN = "repeat", "spacer", "plain-round", "crown"
"""Kinds of help."""
TOLERANCE_CM = 1.5
"""How far a hat may be from what was asked and still fit: common practice, no source."""
TIGHTEST_CM = 10.0
"""How much smaller than the head a stranded hat may be and still go on (The Knitter, 2019)."""
NEAR_ENOUGH = 0.02
"""How far the nearest count may be from what was asked, as a share of the head: common practice, no source."""
USUAL_COUNT = 7
"""Candidates that are given where no other number is asked for; at least five are promised."""


@dataclass(frozen=True, slots=True)
class Foot:
    """What a band asks of the rounds below it and leaves to those above, in stitches of one repeat."""

    eaten: int
    """Of the round below; of the first band, what is cast on."""
    left: int
    """In its last round."""
    widest: int
    """In its widest round."""


@dataclass(frozen=True, slots=True)
class Counts:
    """Which counts some bands allow: the multiples of `step` up to `most`; none where `step` is 0."""

    step: int
    most: int

    @property
    def all(self) -> range:
        """Every count allowed, the smallest first."""
        return range(self.step, self.most + 1, self.step) if self.step else range(0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Candidate:
    """A stitch count that the bands allow."""

    stitches: int
    circumference_cm: float
    ease_percent: float
    """How much wider than the head; negative is smaller."""
    off_cm: float
    """How much wider than what head and ease ask for; negative is smaller."""
    verdict: str
    """One of fits, snug, loose, too tight."""
    times: tuple[int, ...]
    """How many times each band's repeat goes round, from the cast-on edge up; empty for a count that is no such one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """What head, ease and gauge ask for, and the counts nearest to it."""

    target_stitches: float
    wanted_cm: float
    counts: Counts
    candidates: tuple[Candidate, ...]
    """Nearest to the target first; of two equally near the smaller first."""
    is_near_enough: bool
    """Whether the nearest is within `NEAR_ENOUGH` of the head from what was asked."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Help:
    """One thing to do, and the stitch count that it makes possible."""

    kind: str
    """One of repeat, spacer, plain-round, crown."""
    text: str
    """What to do and what comes of it, as a sentence."""
    candidate: Candidate
    edit: ReplaceBands
    """Does it, and gives every band its times for the new count."""


def fit(design: Design, *, most: int = USUAL_COUNT) -> Fit:
    """Find the counts that every band allows, `most` of them at most; fewer where the limits leave no more.

    Rounds within a band that do not meet are left as they are: no count mends them.
    """
    feet = feet_of(design.bands)
    counts, target = allowed(feet), target_of(design)
    nearest = sorted(counts.all, key=lambda count: (abs(count - target), count))[:most]
    shares = shares_of(feet)
    candidates = tuple(judged(count, design, times=tuple(int(count * share) for share in shares)) for count in nearest)
    return Fit(
        target_stitches=target,
        wanted_cm=design.hat.wanted_cm,
        counts=counts,
        candidates=candidates,
        is_near_enough=bool(candidates) and is_near(nearest[0], design),
    )


def target_of(design: Design) -> float:
    """Give the stitches that head, ease and gauge ask for, not yet whole: head × (1 + ease) × gauge."""
    return design.hat.wanted_cm / design.gauge.stitch_width_cm


def judged(stitches: int, design: Design, *, times: tuple[int, ...] = ()) -> Candidate:
    """Tell what a count would be like to wear."""
    circumference = circumference_cm(stitches, design.gauge)
    hat = design.hat
    return Candidate(
        stitches=stitches,
        circumference_cm=circumference,
        ease_percent=100 * (circumference / hat.head_cm - 1),
        off_cm=circumference - hat.wanted_cm,
        verdict=verdict(circumference, hat),
        times=times,
    )


def circumference_cm(stitches: int, gauge: Gauge) -> float:
    """Give how far some stitches reach round."""
    return stitches * gauge.stitch_width_cm


def verdict(circumference: float, hat: Hat) -> str:
    """Judge a circumference in cm against what was asked, and against what goes on at all."""
    if hat.head_cm - circumference > TIGHTEST_CM:
        return TOO_TIGHT
    off = circumference - hat.wanted_cm
    if abs(off) <= TOLERANCE_CM:
        return FITS
    return SNUG if off < 0 else LOOSE


def is_near(stitches: int, design: Design) -> bool:
    """Tell whether a count is as near to what was asked as stitch counts should be."""
    off = circumference_cm(stitches, design.gauge) - design.hat.wanted_cm
    return abs(off) <= NEAR_ENOUGH * design.hat.head_cm


def closest(counts: Counts, design: Design) -> int | None:
    """Give the count nearest to the target, of two the smaller; None where none is allowed."""
    target = target_of(design)
    if not counts.step:
        return None
    below = int(min(target, counts.most) // counts.step) * counts.step
    near = [count for count in (below, below + counts.step) if count in counts.all]
    return min(near, key=lambda count: abs(count - target), default=None)


def nearest_near(counts: Counts, design: Design) -> int | None:
    """Give the count nearest to the target; None where that is not near enough."""
    count = closest(counts, design)
    return count if count is not None and is_near(count, design) else None


def comes_of(candidate: Candidate, units: Units) -> str:
    """Tell what a help makes possible, to put after what to do."""
    return f"then {candidate.stitches} can be cast on, {units.length.told(candidate.circumference_cm)} round"


def feet_of(bands: Sequence[Band]) -> tuple[Foot, ...]:
    """Give what each band asks and leaves, from the cast-on edge up."""
    return tuple(
        Foot(
            eaten=band.rounds[0].eaten if index else len(band.rounds[0]),
            left=len(band.rounds[-1]),
            widest=max(map(len, band.rounds)),
        )
        for index, band in enumerate(bands)
    )


def shares_of(feet: Sequence[Foot]) -> tuple[Fraction, ...]:
    """Give how often each band goes round for each stitch cast on; empty where one eats nothing at all."""
    shares = []
    below = Fraction(1)
    for foot in feet:
        if not foot.eaten:
            return ()
        share = below / foot.eaten
        shares.append(share)
        below = share * foot.left
    return tuple(shares)


def allowed(feet: Sequence[Foot]) -> Counts:
    """Give the counts that all the bands allow, none of whose rounds is too wide."""
    shares = shares_of(feet)
    if not shares:
        return Counts(0, 0)
    step = lcm(*(share.denominator for share in shares))
    most = min(int(MOST_STITCHES / (share * foot.widest)) for share, foot in zip(shares, feet, strict=True))
    return Counts(step, most)


def bands_for(bands: Sequence[Band], stitches: int) -> tuple[Band, ...]:
    """Give bands that all go round as often as so many stitches cast on ask for.

    Raises ValueError for a count that they do not allow.
    """
    feet = feet_of(bands)
    counts = allowed(feet)
    if stitches not in counts.all:
        raise ValueError(f"the bands do not allow {stitches} stitches")
    times = [int(stitches * share) for share in shares_of(feet)]
    return tuple(replace(band, times=count) for band, count in zip(bands, times, strict=True))


def cast_on_edit(design: Design, stitches: int) -> ReplaceBands | None:
    """Make the edit that lets every band go round as often as another stitch count asks for.

    Raises ValueError for a count that the bands do not allow.
    """
    return with_bands(design, bands_for(design.bands, stitches), f"Cast on {stitches} stitches")
