"""Rounds that need more than two strands at once."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place

NAME = "letters-in-round"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each round in which more than two letters are worked."""
    for index, line in enumerate(facts.rounds):
        if len(line.letters) > 2:
            yield Finding(
                check=NAME,
                severity="warn",
                place=Place(text=facts.round_place(index), round=index, letters=line.letters),
                message=f"three letters are worked in one round: {', '.join(line.letters)}",
                remedy="draw the third in ground or figure, or work it afterwards in duplicate stitch",
            )
