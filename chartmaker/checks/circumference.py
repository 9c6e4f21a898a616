"""A hat that is wider or tighter than head and ease ask for."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place
from chartmaker.knit.fit import FITS, TIGHTEST_CM, TOO_TIGHT, fit, verdict
from chartmaker.model.units import Measured, Units

NAME = "circumference"


def check(facts: Facts) -> Iterator[Finding]:
    """Report a cast-on edge too far from the wanted circumference, or too tight to go on at all."""
    hat = facts.design.hat
    judged = verdict(facts.circumference_cm, hat)
    if judged == FITS:
        return
    yield Finding(
        check=NAME,
        severity="warn",
        place=Place(text="cast-on edge", round=0, page="hat"),
        message=Measured(lambda units: _message(facts, units) + (_too_tight(units) if judged == TOO_TIGHT else "")),
        remedy=_remedy(facts),
    )


def _message(facts: Facts, units: Units) -> str:
    hat, length = facts.design.hat, units.length
    return (
        f"{facts.cast_on_stitches} stitches are {length.told(facts.circumference_cm)} round; a head of "
        f"{length.brief(hat.head_cm)} with {hat.ease_percent:g} % ease asks for {length.told(hat.wanted_cm)}"
    )


def _too_tight(units: Units) -> str:
    return f", and more than {units.length.brief(TIGHTEST_CM)} under the head will not go on"


def _remedy(facts: Facts) -> str:
    found = fit(facts.design, most=1)
    if not found.candidates:
        return (
            f"about {found.target_stitches:.0f} stitches are asked for, but the bands allow no count: mend them first"
        )
    nearest = found.candidates[0]
    if nearest.stitches == facts.cast_on_stitches:
        return (
            f"no count that every band allows is nearer to {found.target_stitches:.0f} stitches: "
            "change a repeat, the gauge or the ease"
        )
    return Measured(
        lambda units: (
            f"cast on {nearest.stitches} stitches, {units.length.told(nearest.circumference_cm)} round, "
            "the nearest that every band allows, or change the gauge or the ease"
        )
    )
