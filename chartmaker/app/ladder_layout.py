"""Where the letters of the value ladder stand, and the bows that join them. No Qt here."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chartmaker.appraisal import Appraisal, PairAppraisal

THICKEST, THINNEST = 9.0, 1.5


@dataclass(frozen=True, slots=True)
class Rung:
    """A letter at its height."""

    letter: str
    value: float
    lane: int
    """0 stands at the axis; letters of like value stand in further lanes, so that none hides another."""


@dataclass(frozen=True, slots=True)
class Bow:
    """A pair of letters whose stitches draw the pattern against each other."""

    pair: PairAppraisal
    high: Rung
    low: Rung
    thickness: float
    """As the boundary that they share, the longest of the design being `THICKEST`."""


def rungs(appraisal: Appraisal, *, height: float, least_gap: float) -> tuple[Rung, ...]:
    """Give the letters that have a shade, lightest first, on an axis that is `height` long for 100 in L*."""
    shaded = [(entry.shade.value, entry.letter) for entry in appraisal.letters if entry.shade is not None]
    placed: list[Rung] = []
    for value, letter in sorted(shaded, key=lambda item: (-item[0], item[1])):
        taken = {rung.lane for rung in placed if abs(rung.value - value) * height / 100 < least_gap}
        lane = next(number for number in range(27) if number not in taken)
        placed.append(Rung(letter, value, lane))
    return tuple(placed)


def bows(appraisal: Appraisal, placed: tuple[Rung, ...]) -> tuple[Bow, ...]:
    """Give the pairs that draw against each other, the longest boundary first, but lost ones last, on top of all."""
    by_letter = {rung.letter: rung for rung in placed}
    drawn = [
        pair
        for pair in appraisal.pairs
        if pair.drawn_cm > 0 and all(letter in by_letter for letter in pair.letters) and pair.grade
    ]
    longest = max((pair.drawn_cm for pair in drawn), default=1.0)
    return tuple(
        _bow(pair, by_letter, longest)
        for pair in sorted(drawn, key=lambda pair: (pair.grade == "lost", -pair.drawn_cm, pair.letters))
    )


def _bow(pair: PairAppraisal, by_letter: dict[str, Rung], longest: float) -> Bow:
    high, low = sorted((by_letter[letter] for letter in pair.letters), key=lambda rung: -rung.value)
    return Bow(pair, high, low, max(THINNEST, THICKEST * pair.drawn_cm / longest))
