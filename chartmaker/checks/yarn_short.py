"""Lots of which there is not enough."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts, LetterAppraisal
from chartmaker.checks.finding import Finding, Place
from chartmaker.dye.fibre import tenths
from chartmaker.dye.plan import BathPlan, Load
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
                return _dye(load, which, plan)
    return "no bath is recorded for this lot, so nothing can be planned: choose another lot, or record its bath"


def _dye(load: Load, which: str, plan: BathPlan) -> str:
    return Measured(
        lambda units: (
            f"dye {at_the_pot(load.fibre_g, units)} of fibre as {which} of bath {plan.bath.id}, {_taking(load, plan)}"
        )
    )


def _taking(load: Load, plan: BathPlan) -> str:
    """Tell where the dye comes from: weighed in for the first load alone."""
    if plan.is_going_on:
        return "in the liquor that is there"
    if load.load > 1:
        return "in the liquor of the load before it"
    return f"{tenths(plan.dyestuff_g)} g of {plan.bath.dyestuff}"
