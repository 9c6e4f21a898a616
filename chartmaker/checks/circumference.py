"""A hat that is wider or tighter than head and ease ask for."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place
from chartmaker.knit.fit import FITS, TIGHTEST_CM, TOO_TIGHT, fit, verdict

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
        message=(
            f"{facts.cast_on_stitches} stitches are {facts.circumference_cm:.1f} cm round; "
            f"a head of {hat.head_cm:g} cm "
            f"with {hat.ease_percent:g} % ease asks for {hat.wanted_cm:.1f} cm"
            + (f", and more than {TIGHTEST_CM:g} cm under the head will not go on" if judged == TOO_TIGHT else "")
        ),
        remedy=_remedy(facts),
    )


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
    return (
        f"cast on {nearest.stitches} stitches, {nearest.circumference_cm:.1f} cm round, "
        "the nearest that every band allows, or change the gauge or the ease"
    )
