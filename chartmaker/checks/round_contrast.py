"""Rounds whose ground and figure are too close in value to read."""

from collections.abc import Iterator
from itertools import groupby

from chartmaker.checks.facts import Facts, RoundAppraisal
from chartmaker.checks.finding import Finding, Place
from chartmaker.checks.mending import reshade

NAME = "round-contrast"


def check(facts: Facts) -> Iterator[Finding]:
    """Report lost and soft rounds; neighbouring rounds of one band with the same letters are told together."""
    remedies: dict[str, str] = {}  # the way out is the same wherever the same letters meet
    for _, group in groupby(facts.rounds, key=lambda line: (line.band, line.letters, line.grade)):
        lines = list(group)
        if lines[0].grade in ("lost", "soft"):
            letters = lines[0].letters
            if letters not in remedies:
                remedies[letters] = reshade(facts, letters)
            yield _finding(lines, remedies[letters], facts.predicted_words(letters))


def _finding(lines: list[RoundAppraisal], remedy: str, basis: str) -> Finding:
    first, last = lines[0], lines[-1]
    where = f"round {first.number}" if first is last else f"rounds {first.number}–{last.number}"
    band = f", {first.band_name}" if first.band_name else ""
    return Finding(
        check=NAME,
        severity="warn" if first.grade == "lost" else "note",
        place=Place(text=where + band, round=first.number - 1, letters=first.letters),
        message=(
            f"{' and '.join(first.letters)} are {first.grade} here: {first.value_difference:.1f} apart in value, "
            f"{first.value_difference_low:.1f} for certain{basis}"
        ),
        remedy=remedy,
    )
