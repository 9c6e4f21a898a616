"""How the crown that a hat has may have been made: which of our crowns comes nearest to it."""

from collections.abc import Sequence
from dataclasses import replace

from chartmaker.knit.crown import (
    FEWEST_SECTIONS,
    FLAT,
    MOST_POINT_ROUNDS,
    MOST_SECTIONS,
    POINTED,
    PROFILES,
    Crown,
    body_and_crown,
    crown_counts,
    prepares,
)
from chartmaker.knit.wedge import CENTRED, PAIRED, SINGLE
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.stitches import Shaping


def crown_of(design: Design) -> Crown:
    """Give the crown that a design's own is most like; the usual one where it has none.

    Sections and decreases are those of its last band that closes; the profile is the one whose counts are nearest,
    round by round. A cone that is no longer than a wheel is one: the wheel of another gauge.
    """
    body, bands = body_and_crown(design)
    closing = [band for band in bands if not prepares(band)]
    if not closing:
        return Crown()
    sections = next((band.times for band in reversed(closing) if band.is_shaped), 0)
    likely = Crown(
        sections=sections if FEWEST_SECTIONS <= sections <= MOST_SECTIONS else Crown().sections,
        decrease=_decrease(closing),
    )
    counts = [band.stitches(place) for band in closing for place in range(len(band.rounds))]
    below = [*body, *(band for band in bands if prepares(band))][-1]
    stitches = below.stitches(len(below.rounds) - 1)
    nearest = min(
        (
            Crown(
                profile=profile,
                sections=likely.sections,
                decrease=likely.decrease,
                rounds=min(len(counts), MOST_POINT_ROUNDS) if profile == POINTED else None,
            )
            for profile in PROFILES
        ),
        key=lambda crown: _distance(crown, counts, stitches=stitches, design=design),
    )
    wheel = replace(nearest, profile=FLAT, rounds=None)
    is_wheel = nearest.profile == POINTED and len(counts) <= len(_counts(wheel, stitches=stitches, design=design))
    return wheel if is_wheel else nearest


def _decrease(bands: Sequence[Band]) -> str:
    """Tell the decreases by the first round that has any: a section's, where the repeat is one."""
    for band in bands:
        for line in band.rounds:
            if Shaping.CENTRED in line.shaping:
                return CENTRED
            if line.eaten > len(line):
                return PAIRED if line.eaten - len(line) > 1 else SINGLE
    return PAIRED


def _distance(crown: Crown, counts: Sequence[int], *, stitches: int, design: Design) -> float:
    """Add up by how many stitches the rounds of two crowns differ; one that is at an end has none."""
    ours = _counts(crown, stitches=stitches, design=design)
    if not ours:
        return float("inf")
    most = max(len(ours), len(counts))
    here, there = ([*some, *[0] * (most - len(some))] for some in (ours, counts))
    return sum(abs(one - other) for one, other in zip(here, there, strict=True))


def _counts(crown: Crown, *, stitches: int, design: Design) -> tuple[int, ...]:
    """Give the counts of a crown on this design's gauge; none where it cannot be made."""
    try:
        return crown_counts(crown, stitches=stitches - stitches % crown.sections, gauge=design.gauge)
    except ValueError:
        return ()
