"""Lots of which there is not enough."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts, LetterAppraisal
from chartmaker.checks.finding import Finding, Place
from chartmaker.dye.plan import BathPlan
from chartmaker.knit.yarn import Requirement
from chartmaker.model.units import Measured, Units, at_the_pot

NAME = "yarn-short"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each letter whose plan exceeds what is on hand of its lot."""
    for letter in facts.letters:
        if letter.lot and letter.requirement.short_g > 0:
            yield _finding(facts, letter)


def _finding(facts: Facts, letter: LetterAppraisal) -> Finding:
    need = letter.requirement
    return Finding(
        check=NAME,
        severity="warn",
        place=Place(text=f"letter {letter.letter}, lot {need.lot}", letters=letter.letter, page="yarn"),
        message=Measured(lambda units: f"{facts.name_of(letter.letter)}: {_amounts(need, units)}"),
        remedy=_remedy(facts, letter),
    )


def _amounts(need: Requirement, units: Units) -> str:
    weight = units.weight.rough
    on_hand = f"{weight(need.on_hand_g)} on hand"
    if need.taken_g:
        on_hand += f", of which other letters take {weight(min(need.taken_g, need.on_hand_g))}"
    return f"{weight(need.planned_g)} planned, {on_hand}: {weight(need.short_g)} short"


def _remedy(facts: Facts, letter: LetterAppraisal) -> str:
    for plan in facts.baths:
        for load in plan.loads:
            if letter.lot and letter.lot.id in dict(load.lots):
                which = "the first load" if load.load == 1 else f"exhaust {load.load - 1}"
                return _dye(load.fibre_g, which, plan)
    return "no bath is recorded for this lot, so nothing can be planned: choose another lot, or record its bath"


def _dye(fibre_g: float, which: str, plan: BathPlan) -> str:
    return Measured(
        lambda units: (
            f"dye {at_the_pot(fibre_g, units)} of fibre as {which} of bath {plan.bath.id}, {plan.dyestuff_g:.0f} g of "
            f"{plan.bath.dyestuff}"
        )
    )
