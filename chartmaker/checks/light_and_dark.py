"""The rule of the light and the dark: the darkest of the lights stays lighter than the lightest of the darks.

Source: M. Mucklestone, 200 Fair Isle Motifs (secondary).
"""

from collections.abc import Iterator
from statistics import fmean

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place
from chartmaker.model.band import Band

NAME = "light-and-dark"


def check(facts: Facts) -> Iterator[Finding]:
    """Report each band whose grounds and figures overlap in value; a letter that plays both takes no side."""
    first_round = 0
    for band in facts.design.bands:
        yield from _check_band(facts, band, first_round)
        first_round += len(band.rounds)


def _check_band(facts: Facts, band: Band, first_round: int) -> Iterator[Finding]:
    grounds, figures = _sides(band)
    values = {letter: shade.value for letter in grounds | figures if (shade := facts.shade_of(letter))}
    sides = [sorted(side & values.keys(), key=lambda letter: values[letter]) for side in (grounds, figures)]
    if not all(sides):
        return
    dark, light = sorted(sides, key=lambda side: fmean(values[letter] for letter in side))
    darkest_light, lightest_dark = light[0], dark[-1]
    if values[darkest_light] > values[lightest_dark]:
        return
    yield Finding(
        check=NAME,
        severity="warn",
        place=Place(
            text=f"band {band.name}" if band.name else f"rounds from {first_round + 1}",
            round=first_round,
            letters="".join(sorted((darkest_light, lightest_dark))),
        ),
        message=(
            f"{facts.name_of(darkest_light)}, among the lights, has a value of {values[darkest_light]:.0f}, and "
            f"{facts.name_of(lightest_dark)}, among the darks, of {values[lightest_dark]:.0f}: the sides overlap"
        ),
        remedy=f"lighten {darkest_light}, darken {lightest_dark}, or let one of them change sides",
    )


def _sides(band: Band) -> tuple[set[str], set[str]]:
    """Give the letters that only play ground and those that only play figure, in rounds where both are worked."""
    grounds: set[str] = set()
    figures: set[str] = set()
    for line in band.rounds:
        if 0 in line.cells and 1 in line.cells:
            grounds.add(line.letters[0])
            figures.add(line.letters[1])
    return grounds - figures, figures - grounds
