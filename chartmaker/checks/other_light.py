"""Pairs of letters that read in the design's own light, and less well in another that the hat will be worn in."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts, PairAppraisal
from chartmaker.checks.finding import Finding, Place
from chartmaker.checks.mending import mend_in_lights
from chartmaker.model.settings import Viewing
from chartmaker.shade.elsewhere import LightContrast

NAME = "other-light"
GRADES = ("lost", "soft", "clear")
"""The worst first."""
CALLED = {
    "D65": "in daylight (D65)",
    "D50": "in warm daylight (D50)",
    "A": "by an incandescent lamp (A)",
    "LED-B3": "by a white LED (LED-B3)",
    "FL11": "by a fluorescent tube (FL11)",
}


def check(facts: Facts) -> Iterator[Finding]:
    """Report each pair along a drawn boundary whose grade gets worse in another light, the longest boundary first.

    Only pairs whose lots have spectra are known there; one that is lost already is told of as such.
    """
    for pair in sorted(facts.pairs, key=lambda pair: -pair.drawn_cm):
        worse = [there for there in pair.in_lights if GRADES.index(there.grade) < GRADES.index(pair.grade)]
        if pair.drawn_cm > 0 and worse:
            yield _finding(facts, pair, worse)


def _finding(facts: Facts, pair: PairAppraisal, worse: list[LightContrast]) -> Finding:
    first, second = pair.letters[0], pair.letters[1]
    viewing = facts.design.viewing
    worst = min(worse, key=lambda there: there.value_difference_low)
    lights = [Viewing(illuminant=there.illuminant, observer=viewing.observer) for there in worse]
    way_out = mend_in_lights(facts, pair, lights)
    return Finding(
        check=NAME,
        severity="warn" if worst.grade == "lost" else "note",
        place=Place(text=f"{first} with {second}", letters=pair.letters),
        message=(
            f"{facts.name_of(first)} and {facts.name_of(second)} are {pair.grade} {CALLED[viewing.illuminant]}, but "
            f"{worst.grade} {CALLED[worst.illuminant]}: {worst.value_difference_low:.1f} apart in value for certain, "
            f"in the place of {pair.value_difference_low:.1f}"
        ),
        remedy=way_out.text,
        remedy_lot=way_out.change,
    )
