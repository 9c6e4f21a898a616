"""Lots of which there is not enough."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts, LetterAppraisal
from chartmaker.checks.finding import Finding, Place

NAME = "yarn-short"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each letter whose plan exceeds what is on hand of its lot."""
    for letter in facts.letters:
        if letter.lot and letter.requirement.short_g > 0:
            yield _finding(facts, letter)


def _finding(facts: Facts, letter: LetterAppraisal) -> Finding:
    need = letter.requirement
    on_hand = f"{need.on_hand_g:.0f} g on hand"
    if need.taken_g:
        on_hand += f", of which other letters take {min(need.taken_g, need.on_hand_g):.0f} g"
    return Finding(
        check=NAME,
        severity="warn",
        place=Place(text=f"letter {letter.letter}, lot {need.lot}", letters=letter.letter, page="yarn"),
        message=(
            f"{facts.name_of(letter.letter)}: {need.planned_g:.0f} g planned, {on_hand}: {need.short_g:.0f} g short"
        ),
        remedy=_remedy(facts, letter),
    )


def _remedy(facts: Facts, letter: LetterAppraisal) -> str:
    for plan in facts.baths:
        for load in plan.loads:
            if letter.lot and letter.lot.id in dict(load.lots):
                which = "the first load" if load.load == 1 else f"exhaust {load.load - 1}"
                return (
                    f"dye {load.fibre_g:.0f} g of fibre as {which} of bath {plan.bath.id}, {plan.dyestuff_g:.0f} g of "
                    f"{plan.bath.dyestuff}"
                )
    return "no bath is recorded for this lot, so nothing can be planned: choose another lot, or record its bath"
