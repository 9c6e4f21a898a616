"""Everything that gauge, head and ease move, done at once: the count, the crown where it must be, the plain rounds."""

from dataclasses import replace

from chartmaker.knit.depth import depth_of, parts_of
from chartmaker.knit.depth_edit import add_or_take_rounds, rounds_to_spare
from chartmaker.knit.fit import FITS, bands_for, circumference_cm, fit, target_of, verdict
from chartmaker.knit.fit_crown import closest_without_crown, with_crown_anew
from chartmaker.knit.layout import lay_out
from chartmaker.knit.profile import profile
from chartmaker.knit.repeat_folding import with_long_repeats, with_short_repeats
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands, with_bands


def refit(design: Design) -> ReplaceBands | None:
    """Make the one edit that fits a hat anew; None where it fits as well as it can.

    Its count becomes the nearest that the bands allow. Where that is not near enough, and only the crown or a round
    that changes the count keeps a nearer one away, these are made anew, and so is a crown that would pucker. Where a
    repeat longer than its drawing keeps a count that fits away, the repeat is shortened. Then plain rounds are added
    or taken out until the depth is the wanted one, as far as there are plain rounds to take.
    """
    fitted = _in_depth(_in_nearest_count(design))
    return with_bands(design, fitted.bands, "Fit the hat anew")


def _in_nearest_count(design: Design) -> Design:
    """Give the hat at the nearest count, with shorter repeats of the same pattern where those allow a nearer one."""
    kept = _in_count(design)
    if verdict(circumference_cm(cast_on(kept), design.gauge), design.hat) == FITS:
        return kept
    try:
        short = _in_count(with_short_repeats(design))
    except ValueError:
        return kept
    if _off(cast_on(short), design) >= _off(cast_on(kept), design):
        return kept
    return replace(short, bands=with_long_repeats(short.bands, design.bands))


def _in_count(design: Design) -> Design:
    """Give the hat at the count nearest to what is asked, with its own crown where that can stay as it is."""
    own = fit(design, most=1)
    nearest = own.candidates[0].stitches if own.candidates else None
    below = None if own.is_near_enough else _closest_without_crown(design)
    if below is not None and (nearest is None or _off(below, design) < _off(nearest, design)):
        anew = _with_crown_anew(design, below)
        if anew is not None:
            return anew
    if nearest is None:
        return design
    kept = replace(design, bands=bands_for(design.bands, nearest))
    if crown_puckers(kept):
        return _with_crown_anew(design, nearest) or kept
    return kept


def _closest_without_crown(design: Design) -> int | None:
    try:
        return closest_without_crown(design)
    except ValueError:
        return None


def _with_crown_anew(design: Design, stitches: int) -> Design | None:
    try:
        made = with_crown_anew(design, stitches)
    except ValueError:
        return None
    return made if len(rounds_not_meeting(made)) <= len(rounds_not_meeting(design)) else None


def _off(stitches: int, design: Design) -> float:
    return abs(stitches - target_of(design))


def _in_depth(design: Design) -> Design:
    depth = depth_of(design)
    rounds = depth.rounds_to_add if depth.has_crown else 0
    try:
        edit = add_or_take_rounds(design, max(rounds, -rounds_to_spare(design)))
    except ValueError:
        return design
    return edit.applied_to(design) if edit else design


def cast_on(design: Design) -> int:
    """Give the stitches that a design casts on."""
    return design.bands[0].stitches(0)


def crown_puckers(design: Design) -> bool:
    """Tell whether the crown draws in faster than the fabric can lie."""
    crown = parts_of(design).crown
    return any(profile(lay_out(design), design.gauge).puckers[crown:])
