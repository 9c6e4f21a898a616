"""From appraisals to one plan for the dye pot: what one design, or several together, are short of.

Yarn on hand is counted once, however many designs take of it.
"""

from collections.abc import Sequence

from chartmaker.appraisal import Appraisal
from chartmaker.dye.dye_plan import DyePlan, Need, whole_plan
from chartmaker.model.palette import Palette


def plan_for(appraisals: Sequence[Appraisal]) -> DyePlan:
    """Plan what must be dyed for these designs together.

    Recipes, pots and what is at hand are taken from the first design's palette, then from the others'. Where the
    designs' copies of a lot say different weights on hand, the smallest counts: better a skein too many.
    """
    palette = Palette()
    for appraisal in appraisals:
        palette = palette.followed_by(appraisal.palette)
    return whole_plan(palette, _needs(appraisals))


def _needs(appraisals: Sequence[Appraisal]) -> list[Need]:
    found: dict[str, Need] = {}
    for appraisal in appraisals:
        for entry in appraisal.letters:
            if entry.lot is None:
                continue
            before = found.get(entry.lot.id)
            need = entry.requirement
            titles = before.designs if before else ()
            found[entry.lot.id] = Need(
                lot=entry.lot.id,
                planned_g=need.planned_g + (before.planned_g if before else 0.0),
                on_hand_g=min(need.on_hand_g, before.on_hand_g) if before else need.on_hand_g,
                designs=tuple(dict.fromkeys((*titles, appraisal.design.title))),
            )
    return list(found.values())
