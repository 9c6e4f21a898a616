"""The crown made anew, where it is the crown that keeps a nearer stitch count away."""

from dataclasses import replace

from chartmaker.knit.crown import Crown, body_and_crown, with_crown
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
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.edits import with_bands


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
    if edit is None or rounds_not_meeting(made) - rounds_not_meeting(design):
        return None
    candidate = judged(stitches, design, times=tuple(band.times for band in edit.after))
    return Help(
        kind=CROWN,
        text=f"make the crown anew, {_like(crown_of(design))}: {comes_of(candidate)}",
        candidate=candidate,
        edit=edit,
    )


def closest_without_crown(design: Design) -> int | None:
    """Give the count nearest to the target that all bands below the crown allow; None where they allow none.

    Raises ValueError where the hat has nothing below its crown.
    """
    body, crown = body_and_crown(design)
    return closest(allowed(feet_of(body)), design) if crown else None


def with_crown_anew(design: Design, stitches: int) -> Design:
    """Give the hat for another stitch count, with a crown like its own made for it.

    Raises ValueError, with a sentence, where the bands below don't allow the count or the crown cannot be made.
    """
    body, crown = body_and_crown(design)
    if not crown:
        raise ValueError("nothing closes the hat yet, so that no crown can be made anew")
    moved = replace(design, bands=(*bands_for(body, stitches), *crown))
    edit = with_crown(moved, crown_of(design))
    return edit.applied_to(moved) if edit else moved


def _is_nearer(stitches: int, design: Design) -> bool:
    found = fit(design, most=1)
    if not found.candidates:
        return True
    target = found.target_stitches
    return abs(stitches - target) < abs(found.candidates[0].stitches - target)


def _like(crown: Crown) -> str:
    return f"{crown.profile} in {crown.sections} sections"
