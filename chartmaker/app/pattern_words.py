"""What there is to say of a pattern before it is used, in a few words. No Qt here."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.words import tr
from chartmaker.model.units import METRIC, Units

if TYPE_CHECKING:
    from chartmaker.app.pattern_wish import Made
    from chartmaker.appraisal import Appraisal


def longest_allowed(appraisal: Appraisal) -> int:
    """Give the longest float in stitches that the design lets lie; its limit is in cm, and is met as the check does."""
    design = appraisal.design
    return int(design.limits.float_cm * (1 + 1e-9) / design.gauge.stitch_width_cm)


def pattern_words(made: Made, appraisal: Appraisal, units: Units = METRIC) -> str:
    """Tell size, longest float against the design's limit, and rounds with more than two letters, a line each."""
    lines = made.pattern.rounds
    size = tr("{0} stitches × {1} rounds").format(len(lines[0]), len(lines))
    many = sum(len(line.letters_in_use) > 2 for line in lines)
    letters = (
        tr("! more than two letters in {0} of {1} rounds").format(many, len(lines))
        if many
        else tr("two letters a round at most")
    )
    return f"{size}  ·  {letters}\n{_float_words(made, appraisal, units)}"


def _float_words(made: Made, appraisal: Appraisal, units: Units) -> str:
    design, longest = appraisal.design, max(made.longest)
    if not longest:
        return tr("no floats")
    length = units.length.told(longest * design.gauge.stitch_width_cm)
    told = tr("longest float {0} stitches, {1}").format(longest, length)
    over = sum(length > longest_allowed(appraisal) for length in made.longest)
    limit = units.length.brief(design.limits.float_cm)
    if over:
        return tr("! {0}\n! over the limit of {1} in {2} of {3} rounds").format(told, limit, over, len(made.longest))
    return tr("{0}  ·  within the limit of {1}").format(told, limit)
