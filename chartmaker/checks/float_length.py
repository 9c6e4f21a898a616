"""Floats longer than the knitter lets lie, with the stitches behind which to catch them."""

from collections.abc import Iterator
from itertools import groupby

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place
from chartmaker.knit.floats import LongFloat
from chartmaker.model.units import Measured

NAME = "float-length"
MOST_NAMED = 6
"""How many stitches a message names before it says how many more there are."""


def check(facts: Facts) -> Iterator[Finding]:
    """Report the long floats of each round and letter together."""
    for (index, letter), group in groupby(
        sorted(facts.long_floats, key=lambda item: (item.round, item.letter)),
        key=lambda item: (item.round, item.letter),
    ):
        yield _finding(facts, index, letter, list(group))


def _finding(facts: Facts, index: int, letter: str, found: list[LongFloat]) -> Finding:
    longest = max(found, key=lambda item: item.length)
    count = f"{len(found)} floats" if len(found) > 1 else "a float"
    repeat = len(facts.design.bands[facts.rounds[index].band].rounds[facts.rounds[index].index_in_band])
    return Finding(
        check=NAME,
        severity="warn",
        place=Place(text=facts.round_place(index), round=index, stitch=longest.start % repeat, letters=letter),
        message=Measured(
            lambda units: (
                f"{letter} makes {count} of up to {longest.length} stitches, {units.length.told(longest.length_cm)}; "
                f"the limit is {units.length.brief(facts.design.limits.float_cm)}"
            )
        ),
        remedy=f"catch {letter} behind {_stitches(found)}",
    )


def _stitches(found: list[LongFloat]) -> str:
    numbers = sorted({stitch + 1 for item in found for stitch in item.catches})
    named = ", ".join(str(number) for number in numbers[:MOST_NAMED])
    more = f" and {len(numbers) - MOST_NAMED} more" if len(numbers) > MOST_NAMED else ""
    return f"{'stitch' if len(numbers) == 1 else 'stitches'} {named}{more}"
