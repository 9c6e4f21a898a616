"""The way out of shades that do not read: the lot, or the letter, that mends it with the least change of hue."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from chartmaker.checks.facts import Facts, PairAppraisal
from chartmaker.model.palette import Lot
from chartmaker.model.settings import Viewing
from chartmaker.shade.least_change import Neighbour, least_change
from chartmaker.shade.lights import is_measured
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shades_of
from chartmaker.shade.spread import differences_and_bounds, spread_of


@dataclass(frozen=True, slots=True)
class WayOut:
    """What to do, as words, and where one lot does it as the letter and the lot's id."""

    text: str
    change: tuple[str, str] | None = None


@dataclass(frozen=True, slots=True)
class _Choice:
    letter: str
    shade: LotShade
    hue_change: float


def mend(facts: Facts, pair: PairAppraisal) -> WayOut:
    """Find the lot that makes a pair clear, or else lifts a lost one to soft, and leaves no other pair worse.

    Either letter of the pair may change; lots that other letters are already, and lots without a shade, are left out.
    """
    limits = facts.design.limits
    steps = [("clear", limits.value_clear)]
    if pair.grade == "lost":
        steps.append(("soft", limits.value_soft))
    for grade, wanted in steps:
        candidates = _candidates(facts)
        found = [_choose(facts, pair, letter, wanted, candidates) for letter in pair.letters]
        choices = [choice for choice in found if choice]
        if choices:
            best = min(choices, key=lambda choice: choice.hue_change)
            return WayOut(_text(facts, best, grade), (best.letter, best.shade.lot))
    return WayOut(_no_lot(facts, pair))


def mend_in_lights(facts: Facts, pair: PairAppraisal, lights: Sequence[Viewing]) -> WayOut:
    """Find the lot that keeps a pair's grade in some other lights too, and leaves no other pair worse in its own."""
    limits = facts.design.limits
    wanted = limits.value_clear if pair.grade == "clear" else limits.value_soft
    choices = []
    for letter in pair.letters:
        partner = facts.letter(pair.letters.replace(letter, "")).lot
        if partner is not None:
            choices.append(_choose(facts, pair, letter, wanted, _steady(facts, partner, wanted, lights)))
    fit = [choice for choice in choices if choice]
    if not fit:
        return WayOut(f"no lot at hand would stay {pair.grade} there; look at both in that light before you knit")
    best = min(fit, key=lambda choice: choice.hue_change)
    lot = facts.palette.lot(best.shade.lot)
    change = (best.letter, best.shade.lot)
    return WayOut(f"make {best.letter} {_called(lot)}, value {best.shade.value:.0f}: {pair.grade} there too", change)


def reshade(facts: Facts, letters: str) -> str:
    """Tell which letter of the design, in the place of one of a round's, would make the round clear.

    Of those that would, the one whose hue is nearest to the letter that it replaces.
    """
    clear = facts.design.limits.value_clear
    choices = []
    for letter in letters:
        current = facts.shade_of(letter)
        kept = [Neighbour(shade, clear) for other in letters if other != letter and (shade := facts.shade_of(other))]
        others = [item for item in facts.letters if item.letter not in letters and item.shade]
        shades = [item.shade for item in others if item.shade]
        found = least_change(current, shades, kept) if current else None
        if found:
            choices.append((found.hue_change, letter, others[found.index].letter))
    if not choices:
        return "no letter of the design would make it clear: give one of the letters another lot"
    _, letter, instead = min(choices)
    return f"work {instead} in the place of {letter}: the round becomes clear"


def _choose(
    facts: Facts, pair: PairAppraisal, letter: str, wanted: float, candidates: list[LotShade]
) -> _Choice | None:
    current = facts.shade_of(letter)
    if current is None or not candidates:
        return None
    neighbours = _neighbours(facts, letter, partner=pair.letters.replace(letter, ""), wanted=wanted)
    found = least_change(current, candidates, neighbours)
    return None if found is None else _Choice(letter, candidates[found.index], found.hue_change)


def _neighbours(facts: Facts, letter: str, *, partner: str, wanted: float) -> list[Neighbour]:
    """List what a new shade of the letter must differ from, and by how much: no pair may come out worse than it is."""
    limits = facts.design.limits
    kept = {"clear": limits.value_clear, "soft": limits.value_soft}
    found = []
    for pair in facts.pairs:
        if letter not in pair.letters or pair.drawn_cm == 0:
            continue
        other = pair.letters.replace(letter, "")
        shade = facts.shade_of(other)
        if shade is not None:
            found.append(Neighbour(shade, wanted if other == partner else kept.get(pair.grade, 0.0)))
    return found


def _candidates(facts: Facts) -> list[LotShade]:
    taken = {letter.lot.id for letter in facts.letters if letter.lot}
    lots = [lot for lot in facts.palette.lots if lot.id not in taken]
    return [shade for shade in shades_of(lots, facts.design.viewing) if shade]


def _steady(facts: Facts, partner: Lot, wanted: float, lights: Sequence[Viewing]) -> list[LotShade]:
    """List the candidates known by spectra that are far enough in value from a partner in each of some lights."""
    candidates = [shade for shade in _candidates(facts) if is_measured(shade)]
    by_id = {lot.id: lot for lot in facts.palette.lots}
    lots = [by_id[shade.lot] for shade in candidates]
    for light in lights:
        other = shades_of((partner,), light)[0]
        shades = [shade for shade in shades_of(lots, light) if shade]
        if other is None or not shades:
            return []
        _, low = differences_and_bounds(spread_of(shades), spread_of([other]))
        kept = np.flatnonzero(low >= wanted).tolist()
        candidates, lots = [candidates[index] for index in kept], [lots[index] for index in kept]
    return candidates


def _text(facts: Facts, choice: _Choice, grade: str) -> str:
    lot = facts.palette.lot(choice.shade.lot)
    return f"make {choice.letter} {_called(lot)}, value {choice.shade.value:.0f}: the pair becomes {grade}"


def _called(lot: Lot | None) -> str:
    return f"{lot.name} ({lot.id})" if lot else "another lot"


def _no_lot(facts: Facts, pair: PairAppraisal) -> str:
    first, second = pair.letters[0], pair.letters[1]
    shades = facts.shade_of(first), facts.shade_of(second)
    if None in shades:
        return ""
    low, high = sorted(shade.value for shade in shades if shade)
    apart = facts.design.limits.value_clear
    ways = []
    if low - apart > 0:
        ways.append(f"under {low - apart:.0f}")
    if high + apart < 100:
        ways.append(f"over {high + apart:.0f}")
    wanted = " or ".join(ways) if ways else "well away from both"
    return f"no lot at hand would mend it; dye one with a value {wanted}, or swap letters in those rounds"
