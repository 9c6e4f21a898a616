"""Pairs of letters that draw the pattern against each other, but whose values are too close to read."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts, PairAppraisal
from chartmaker.checks.finding import Finding, Place
from chartmaker.checks.mending import mend
from chartmaker.model.units import Measured

NAME = "pair-contrast"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each lost and soft pair that shares a drawn boundary, the longest boundary first.

    Letters that only follow each other in one part, as grounds do that are shaded round by round, may be close.
    """
    for pair in sorted(facts.pairs, key=lambda pair: -pair.drawn_cm):
        if pair.drawn_cm > 0 and pair.grade in ("lost", "soft"):
            yield _finding(facts, pair)


def _finding(facts: Facts, pair: PairAppraisal) -> Finding:
    first, second = pair.letters[0], pair.letters[1]
    way_out = mend(facts, pair)
    return Finding(
        check=NAME,
        severity="warn" if pair.grade == "lost" else "note",
        place=Place(text=f"{first} with {second}", letters=pair.letters, round=_first_round(facts, pair.letters)),
        message=Measured(
            lambda units: (
                f"{facts.name_of(first)} and {facts.name_of(second)} differ by {pair.value_difference:.1f} in value, "
                f"{pair.value_difference_low:.1f} for certain: {pair.grade} along "
                f"{units.yarn.told(pair.drawn_cm / 100)} of edge{facts.predicted_words(pair.letters)}"
            )
        ),
        remedy=way_out.text,
        remedy_lot=way_out.change,
    )


def _first_round(facts: Facts, letters: str) -> int | None:
    """Give the first round in which the two stand side by side, if there is one."""
    return next((line.number - 1 for line in facts.rounds if set(letters) <= set(line.letters)), None)
