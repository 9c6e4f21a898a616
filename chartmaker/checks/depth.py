"""A hat that is shallower or deeper than its head and shape ask for."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place
from chartmaker.knit.depth import DEEP
from chartmaker.knit.depth_rules import TOLERANCE_CM
from chartmaker.model.units import Measured, Units

NAME = "depth"
SHORT_BY_MUCH_CM = 1.0
"""Beyond the tolerance: ears stay out, and nothing mends it once the hat is knitted. Common practice, no source."""
DEEP_BY_MUCH_CM = 4.0
"""Beyond the tolerance: less than this a hat can still wear turned up. Common practice, no source."""


def check(facts: Facts) -> Iterator[Finding]:
    """Report a depth outside what fits, with the rounds to add or take; without a crown there is none to judge.

    A little off is good to know; far off disappoints, and sooner where the hat is too short than where it is too deep.
    """
    depth = facts.depth
    if not depth.has_crown or not depth.off_cm:
        return
    limit = DEEP_BY_MUCH_CM if depth.verdict == DEEP else SHORT_BY_MUCH_CM
    yield Finding(
        check=NAME,
        severity="warn" if abs(depth.off_cm) > limit else "note",
        place=Place(text="depth", page="hat"),
        message=Measured(
            lambda units: (
                f"the hat is {depth.verdict}: {units.length.told(depth.cm)} along the fabric from the worn edge to the "
                f"middle of the top, where {_asked(facts, units)} is asked for"
            )
        ),
        remedy=_remedy(depth.rounds_to_add, facts),
    )


def _asked(facts: Facts, units: Units) -> str:
    wanted, length = facts.depth.wanted, units.length
    if wanted.highest_cm is None:
        span = f"{length.told(wanted.lowest_cm)} or more"
    elif wanted.highest_cm == wanted.lowest_cm:
        span = length.told(wanted.lowest_cm)
    else:
        span = length.span(wanted.lowest_cm, wanted.highest_cm)
    return f"{span}, within {length.brief(TOLERANCE_CM)},"


def _remedy(rounds: int, facts: Facts) -> str:
    verb = "add" if rounds > 0 else "take"
    where = "between brim and crown" if facts.depth.part("body").rounds else "below the crown"
    out = "" if rounds > 0 else " out"
    count = abs(rounds)
    return f"{verb} {count} round{'s' if count > 1 else ''}{out} {where}, or set the depth that is wanted"
