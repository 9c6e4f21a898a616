"""Shaping faster than the fabric can lie flat: a crown that puckers, an increase that gathers."""

from collections.abc import Iterator
from itertools import groupby

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place
from chartmaker.knit.profile import flat_disc_decreases

NAME = "crown-pucker"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each run of rounds that draws in, or widens, faster than a flat disc.

    A tam is meant to gather where it widens from its brim, so there only its decreases are judged.
    """
    judged = enumerate(zip(facts.profile.puckers, facts.profile.run_cm, strict=True))
    for key, group in groupby(judged, key=lambda item: (item[1][0], item[1][1] > 0)):
        puckers, widens = key
        if puckers and not (widens and facts.design.hat.shape == "tam"):
            indexes = [index for index, _ in group]
            yield _finding(facts, indexes[0], indexes[-1], widens=widens)


def _finding(facts: Facts, first: int, last: int, *, widens: bool) -> Finding:
    before = facts.fabric.counts[max(first - 1, 0)]
    change = facts.fabric.counts[last] - before
    most = flat_disc_decreases(facts.design.gauge)
    verb, what = ("widens", "gathers") if widens else ("draws in", "puckers")
    span = f"round {first + 1}" if first == last else f"rounds {first + 1}–{last + 1}"
    return Finding(
        check=NAME,
        severity="note" if widens else "warn",
        place=Place(text=span, round=first, page="chart"),
        message=(
            f"the fabric {verb} by {abs(change)} stitches in {last - first + 1} round(s) and {what}; "
            f"a flat disc changes by {most:.1f} a round at the most"
        ),
        remedy="spread the shaping over more rounds, with plain rounds between",
    )
