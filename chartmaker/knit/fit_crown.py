"""The crown made anew, where it is the crown that keeps a nearer stitch count away."""

from collections.abc import Sequence
from dataclasses import replace

from chartmaker.knit.changing_band import changing_band
from chartmaker.knit.crown import (
    FEWEST_SECTIONS,
    FLAT,
    MOST_POINT_ROUNDS,
    Crown,
    body_and_crown,
    crown_counts,
    stitches_below_crown,
    with_crown,
)
from chartmaker.knit.crown_pattern import carried
from chartmaker.knit.crown_reading import crown_of
from chartmaker.knit.fit import (
    CROWN,
    Help,
    allowed,
    bands_for,
    closest,
    comes_of,
    feet_of,
    fit,
    is_near,
    judged,
)
from chartmaker.knit.fit_groups import bands_in_groups, is_grouped, lowest_counts
from chartmaker.knit.taper import taper_bands
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.edits import with_bands
from chartmaker.model.gauge import Gauge
from chartmaker.model.units import Measured

NEARLY_A_WHEEL = 1.25
"""A cone of no more times the rounds of a wheel was one, at another gauge."""


def crown_help(design: Design) -> Help | None:
    """Find the help that makes the crown anew; None where the crown hinders no count nearer than the bands allow."""
    try:
        stitches = closest_without_crown(design)
        if stitches is None or not is_near(stitches, design) or not _is_nearer(stitches, design):
            return None
        made = with_crown_anew(design, stitches)
        edit = with_bands(design, made.bands, "Make the crown anew and fit the hat")
    except ValueError:
        return None
    if edit is None or rounds_not_meeting(made):
        return None
    candidate = judged(stitches, design, times=tuple(band.times for band in edit.after))
    return Help(
        kind=CROWN,
        text=Measured(lambda units: f"make {_like(design, stitches, made)}: {comes_of(candidate, units)}"),
        candidate=candidate,
        edit=edit,
    )


def closest_without_crown(design: Design) -> int | None:
    """Give the count nearest to the target that all bands below the crown allow; None where they allow none.

    Where none of theirs is near enough, a round among them that changes the count may be made anew with the crown.
    Raises ValueError where the hat has nothing below its crown.
    """
    body, crown = body_and_crown(design)
    if not crown:
        return None
    rigid = closest(allowed(feet_of(body)), design)
    if (rigid is not None and is_near(rigid, design)) or not is_grouped(body):
        return rigid
    return closest(lowest_counts(body), design)


def with_crown_anew(design: Design, stitches: int) -> Design:
    """Give the hat for another stitch count, with a crown like its own made for it.

    Raises ValueError, with a sentence, where the bands below don't allow the count or the crown cannot be made.
    """
    body, crown = body_and_crown(design)
    if not crown:
        raise ValueError("nothing closes the hat yet, so that no crown can be made anew")
    body = bands_for(body, stitches) if stitches in allowed(feet_of(body)).all else bands_in_groups(body, stitches)
    if is_taper(crown):
        return replace(design, bands=(*body, *_taper_anew(crown, body[-1], design.gauge)))
    moved = replace(design, bands=(*body, *crown))
    edit = with_crown(moved, _crown_like(design, below=body[-1].stitches(len(body[-1].rounds) - 1)))
    return edit.applied_to(moved) if edit else moved


def _crown_like(design: Design, *, below: int) -> Crown:
    """Give a crown like a design's for another count below it: a cone as steep as it was, or else a wheel."""
    like, old = crown_of(design), stitches_below_crown(design)
    if like.rounds is None:
        return like
    wheel = replace(like, profile=FLAT, rounds=None)
    cone = replace(like, rounds=min(max(round(like.rounds * below / old), 1), MOST_POINT_ROUNDS))
    try:
        flattest = len(crown_counts(wheel, stitches=old - old % like.sections, gauge=design.gauge))
        crown_counts(cone, stitches=below - below % like.sections, gauge=design.gauge)
    except ValueError:
        return wheel
    return wheel if like.rounds <= NEARLY_A_WHEEL * flattest else cone


def is_taper(crown: Sequence[Band]) -> bool:
    """Tell whether a long taper closes a hat: its decreases stand in fewer lines than a crown has sections."""
    return crown[-1].times < FEWEST_SECTIONS and crown[-1].is_shaped


def _taper_anew(crown: Sequence[Band], below: Band, gauge: Gauge) -> tuple[Band, ...]:
    """Make a taper like another for other stitches: as many lines, as many rounds to a decrease, and what was drawn."""
    old, last = crown[-1], below.rounds[-1]
    stitches, lines = below.stitches(len(below.rounds) - 1), old.times
    spare = stitches % lines
    (usual,) = taper_bands(stitches - spare, gauge=gauge, lines=lines)
    gap = max(1, round(len(old.rounds) / sum(line.is_shaped for line in old.rounds)))
    rounds = gap * sum(line.is_shaped for line in usual.rounds)
    (made,) = taper_bands(stitches - spare, gauge=gauge, lines=lines, rounds=rounds, letter=last.letters[0])
    before = (changing_band(below=stitches, above=stitches - spare, letter=last.letters[0]),) if spare else ()
    return (*before, replace(carried([old], made), name=old.name))


def _is_nearer(stitches: int, design: Design) -> bool:
    found = fit(design, most=1)
    if not found.candidates:
        return True
    target = found.target_stitches
    return abs(stitches - target) < abs(found.candidates[0].stitches - target)


def _like(design: Design, stitches: int, made: Design) -> str:
    body, crown = body_and_crown(design)
    also = "" if stitches in allowed(feet_of(body)).all else ", and the round that changes the count"
    if is_taper(crown):
        return f"the taper anew, decreasing in {crown[-1].times} lines{also}"
    like = _crown_like(design, below=stitches_below_crown(made))
    return f"the crown anew, {like.profile} in {like.sections} sections{also}"
