"""A hat that is wider or tighter than head and ease ask for."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place

NAME = "circumference"
TOLERANCE_CM = 1.5
"""How far the cast-on edge may be from what was asked: common practice, no source."""
TIGHTEST_CM = 10.0
"""How much smaller than the head a stranded hat may be and still go on (The Knitter, 2019)."""


def check(facts: Facts) -> Iterator[Finding]:
    """Report a cast-on edge too far from the wanted circumference, or too tight to go on at all."""
    hat = facts.design.hat
    off = facts.circumference_cm - hat.wanted_cm
    too_tight = hat.head_cm - facts.circumference_cm > TIGHTEST_CM
    if abs(off) <= TOLERANCE_CM and not too_tight:
        return
    wanted = hat.wanted_cm / facts.design.gauge.stitch_width_cm
    yield Finding(
        check=NAME,
        severity="warn",
        place=Place(text="cast-on edge", round=0, page="hat"),
        message=(
            f"{facts.cast_on_stitches} stitches are {facts.circumference_cm:.1f} cm round; "
            f"a head of {hat.head_cm:g} cm "
            f"with {hat.ease_percent:g} % ease asks for {hat.wanted_cm:.1f} cm"
            + (f", and more than {TIGHTEST_CM:g} cm under the head will not go on" if too_tight else "")
        ),
        remedy=f"cast on about {wanted:.0f} stitches, or change the gauge or the ease",
    )
