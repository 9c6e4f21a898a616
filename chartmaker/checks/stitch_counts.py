"""Rounds that do not eat exactly what the round below holds: the hat cannot be knitted so."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place

NAME = "stitch-counts"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each round whose count does not meet, the first one where it is not all plain."""
    for index, meets in enumerate(facts.fabric.meets):
        if not meets:
            yield _finding(facts, index)


def _finding(facts: Facts, index: int) -> Finding:
    line = facts.rounds[index]
    cells = len(facts.design.bands[line.band].rounds[line.index_in_band])
    times = facts.design.bands[line.band].times
    if index == 0:
        message = "the first round is shaped, but there is nothing below it except the cast-on edge"
        remedy = "make the first round all plain and shape in the next"
    else:
        below = facts.fabric.counts[index - 1]
        eaten = facts.fabric.eaten[index]
        message = f"{cells} cells × {times} eat {eaten} stitches, the round below has {below}"
        remedy = _remedy(eaten=eaten // times, times=times, below=below)
    return Finding(
        check=NAME,
        severity="stop",
        place=Place(text=facts.round_place(index), round=index, stitch=0),
        message=message,
        remedy=remedy,
    )


def _remedy(*, eaten: int, times: int, below: int) -> str:
    if eaten and below % eaten == 0:
        return f"work the repeat {below // eaten} times"
    if below % times == 0:
        difference = below // times - eaten
        return f"let each repeat eat {abs(difference)} {'more' if difference > 0 else 'fewer'}"
    return f"no whole number of these repeats makes {below}: change the repeat or the rounds below"
