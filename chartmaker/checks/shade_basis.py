"""Shades that rest on little: no reading, a single one, or a colour picked from a screen."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts, LetterAppraisal
from chartmaker.checks.finding import Finding, Place

NAME = "shade-basis"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each letter's lot whose shade cannot be trusted far."""
    for letter in facts.letters:
        if letter.lot is None:
            continue
        if letter.shade is None:
            reason = "is planned, not dyed, so it" if letter.lot.planned else "has no reading, so it"
            yield _finding(
                letter, "warn", f"{reason} has no shade and is left out of every contrast", "take readings of it"
            )
        elif letter.shade.rests_on == "approximate":
            yield _finding(
                letter,
                "note",
                f"rests on a screen colour; its value may be off by {letter.shade.deviation[0]:g} and more",
                "measure it with an instrument",
            )
        elif letter.shade.rests_on == "photo":
            yield _finding(
                letter,
                "note",
                f"rests on a photo; its spread is taken as {letter.shade.deviation[0]:g} in value",
                "measure it with an instrument where it must be sure",
            )
        elif letter.shade.is_lone:
            yield _finding(
                letter,
                "note",
                f"rests on one reading; its spread is taken as {letter.shade.deviation[0]:g} in value",
                "take two or three more readings, turning the card between them",
            )


def _finding(letter: LetterAppraisal, severity: str, message: str, remedy: str) -> Finding:
    lot = letter.lot
    name = f"{lot.name} ({lot.id})" if lot else letter.letter
    return Finding(
        check=NAME,
        severity=severity,
        place=Place(text=f"letter {letter.letter}", letters=letter.letter, page="lots"),
        message=f"{name} {message}",
        remedy=remedy,
    )
