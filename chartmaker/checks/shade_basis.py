"""Shades that rest on little: no reading, a single one, or a colour picked from a screen."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts, LetterAppraisal
from chartmaker.checks.finding import Finding, Place
from chartmaker.dye.predicted import basis_of_prediction, missing_for_prediction
from chartmaker.model.palette import Lot

NAME = "shade-basis"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each letter's lot whose shade cannot be trusted far."""
    for letter in facts.letters:
        if letter.lot is None:
            continue
        if letter.shade is None:
            yield _without_shade(facts, letter, letter.lot)
        elif letter.shade.rests_on == "predicted":
            yield _finding(
                letter,
                "note",
                f"is planned, not dyed: value {letter.shade.value:.0f}, give or take "
                f"{1.645 * letter.shade.deviation[0]:.0f}, is predicted {_reckoned(facts, letter.lot)}",
                "dye it and take readings before knitting",
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


def _reckoned(facts: Facts, lot: Lot) -> str:
    return basis_of_prediction(facts.palette, lot.planned.bath) if lot.planned else ""


def _without_shade(facts: Facts, letter: LetterAppraisal, lot: Lot) -> Finding:
    left_out = "has no shade and is left out of every contrast"
    if lot.planned is None:
        return _finding(letter, "warn", f"has no reading, so it {left_out}", "take readings of it")
    missing = missing_for_prediction(facts.palette, lot)
    return _finding(
        letter,
        "warn",
        f"is planned, not dyed, and cannot be predicted, since {missing}: it {left_out}",
        "take spectra of a dyed load of its bath and of the undyed yarn, or readings of the lot once it is dyed",
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
