"""Letters that are worked but have no lot yet."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place

NAME = "letter-without-lot"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each such letter."""
    for letter in facts.letters:
        if letter.lot is None:
            yield Finding(
                check=NAME,
                severity="stop",
                place=Place(text=f"letter {letter.letter}", letters=letter.letter),
                message=f"{letter.letter} is worked in {letter.requirement.stitches} stitches but is no lot yet",
                remedy=f"choose a lot for {letter.letter}",
            )
