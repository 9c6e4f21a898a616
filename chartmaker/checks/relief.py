"""Where a lot is short: which rounds could be worked in another lot that has enough, and what that costs in contrast.

This is worked out when it is asked for, not with every edit.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from chartmaker.checks.facts import Facts, LetterAppraisal
from chartmaker.knit.yarn import grist_of
from chartmaker.knit.yarn_by_band import yarn_by_round
from chartmaker.model.band import Band
from chartmaker.model.edits import ALPHABET, Edit, Together, assign, with_bands
from chartmaker.model.palette import Lot
from chartmaker.model.round import Round
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shades_of
from chartmaker.shade.spread import grade, value_difference

MOST_RELIEFS = 4
"""Ways that are given for one letter, the least costly first."""
_STEPS = {"clear": 0, "soft": 1, "lost": 2}


@dataclass(frozen=True, slots=True, kw_only=True)
class Relief:
    """Consecutive rounds of one letter that another lot could take."""

    letter: str
    """The letter whose lot is short."""
    lot: Lot
    """What the rounds would be worked in instead."""
    instead: str
    """The letter that this lot is, or would be."""
    first: int
    last: int
    """The rounds, by index in the whole hat; those between that do not use the letter stay as they are."""
    spared_g: float
    """What the short lot is planned to give less, reserve and all."""
    taken_g: float
    """What the other lot gives for it, with the tails of a strand more."""
    grade: str
    """The worst grade that comes of it in these rounds; empty where the letter stands alone in all of them."""
    grade_before: str
    """The worst grade in them as they are."""
    value_difference_low: float | None
    """Lower bound of |ΔL*| of the worst pair there would be; None where the letter stands alone."""
    seen_apart: float
    """CIEDE2000 between the two lots: how much the change itself shows."""
    edit: Edit

    @property
    def cost(self) -> tuple[int, float, int]:
        """What to sort by: grades that are lost, how much the change shows, and how many rounds it takes."""
        worse = max(0, _STEPS.get(self.grade, 0) - _STEPS.get(self.grade_before, 0))
        return worse, self.seen_apart, self.last - self.first


@dataclass(frozen=True, slots=True)
class _Stock:
    """A lot that could help: what it is called in the chart, its shade, and what of it is spare."""

    lot: Lot
    letter: str
    shade: LotShade
    spare_g: float
    grams_for_a_gram: float
    """How much of it does for a gram of the short lot, by their grists."""
    strand_g: float
    """What it may take more, once it is begun anew or carried up."""


@dataclass(frozen=True, slots=True)
class _Use:
    """A round in which the short letter is worked, and the planned grams that it takes of it."""

    index: int
    line: Round
    grams: float


def reliefs(facts: Facts) -> tuple[Relief, ...]:
    """Find for every letter that is short the rounds that another lot could take, the least costly first."""
    found: list[Relief] = []
    for letter in facts.letters:
        if letter.lot and letter.shade and letter.requirement.short_g > 0:
            found += sorted(_of_letter(facts, letter), key=lambda one: one.cost)[:MOST_RELIEFS]
    return tuple(found)


def _of_letter(facts: Facts, letter: LetterAppraisal) -> Iterator[Relief]:
    uses = _uses(facts, letter.letter)
    wanted_g = letter.requirement.short_g + _strand_g(facts, letter.requirement.metres_per_100g)
    for stock in _stocks(facts, letter):
        windows = [
            made for window in _windows(uses, stock.letter, wanted_g) if (made := _relief(facts, letter, stock, window))
        ]
        if windows:
            yield min(windows, key=lambda one: one.cost)


def _uses(facts: Facts, letter: str) -> list[_Use]:
    design = facts.design
    reserve = 1 + design.allowances.reserve_percent / 100
    lines = [line for _, line in design.rounds()]
    return [
        _Use(one.piece, lines[one.piece], one.grams.high * reserve)
        for one in yarn_by_round(design, facts.fabric, facts.floats, facts.loop)
        if one.letter == letter
    ]


def _stocks(facts: Facts, letter: LetterAppraisal) -> Iterator[_Stock]:
    """Give the lots that have yarn to spare, under the letter that each is or could be."""
    planned: dict[str, float] = {}
    letters: dict[str, str] = {}
    for one in facts.letters:
        if one.requirement.lot:
            planned[one.requirement.lot] = planned.get(one.requirement.lot, 0.0) + one.requirement.planned_g
            letters.setdefault(one.requirement.lot, one.letter)
    taken = facts.design.letters_in_use + "".join(name for name, _ in facts.design.colourway.lots)
    free = next((name for name in ALPHABET if name not in taken), "")
    lots = [lot for lot in facts.palette.lots if lot.id != letter.requirement.lot and lot.planned is None]
    for lot, shade in zip(lots, shades_of(lots, facts.design.viewing), strict=True):
        spare = lot.on_hand_g - planned.get(lot.id, 0.0)
        name = letters.get(lot.id, free)
        if shade and spare > 0 and name:
            grist = grist_of(lot, facts.palette) or facts.design.metres_per_100g
            strand_g = _strand_g(facts, grist)
            yield _Stock(lot, name, shade, spare, letter.requirement.metres_per_100g / grist, strand_g)


def _strand_g(facts: Facts, metres_per_100g: float) -> float:
    """Give the planned grams of two tails, or of a strand carried up for as long as any is: a window costs either."""
    allowances = facts.design.allowances
    carried_cm = allowances.carry_up_rounds * facts.design.gauge.round_height_cm
    reserve = 1 + allowances.reserve_percent / 100
    return max(2 * allowances.tail_cm, carried_cm) / metres_per_100g * reserve


def _windows(uses: Sequence[_Use], instead: str, wanted_g: float) -> Iterator[Sequence[_Use]]:
    """Give, from each round on, the fewest consecutive uses that take as much as wanted; none has `instead` yet."""
    for start in range(len(uses)):
        taken = 0.0
        for end in range(start, len(uses)):
            if instead in uses[end].line.letters:
                break
            taken += uses[end].grams
            if taken >= wanted_g:
                yield uses[start : end + 1]
                break


def _relief(facts: Facts, letter: LetterAppraisal, stock: _Stock, window: Sequence[_Use]) -> Relief | None:
    spared = sum(use.grams for use in window)
    taken = spared * stock.grams_for_a_gram + stock.strand_g
    if taken > stock.spare_g or letter.shade is None:
        return None
    after, low = _worst(facts, letter.letter, stock.shade, window)
    before, _ = _worst(facts, letter.letter, letter.shade, window)
    edit = _edit(facts, letter.letter, stock, window)
    if edit is None:
        return None
    return Relief(
        letter=letter.letter,
        lot=stock.lot,
        instead=stock.letter,
        first=window[0].index,
        last=window[-1].index,
        spared_g=spared,
        taken_g=taken,
        grade=after,
        grade_before=before,
        value_difference_low=low,
        seen_apart=float(ciede2000(letter.shade.lab, stock.shade.lab)),
        edit=edit,
    )


def _worst(facts: Facts, letter: str, shade: LotShade, window: Sequence[_Use]) -> tuple[str, float | None]:
    """Judge a shade in a letter's place against whatever else is worked in its rounds."""
    others = {other for use in window for other in use.line.letters_in_use if other != letter}
    lows = [value_difference(shade, other).low for name in sorted(others) if (other := facts.shade_of(name))]
    if not lows:
        return "", None
    return grade(min(lows), facts.design.limits), min(lows)


def _edit(facts: Facts, letter: str, stock: _Stock, window: Sequence[_Use]) -> Edit | None:
    """Make the edit that works the rounds in the other lot: its letter in their place, and the lot if it is new."""
    design = facts.design
    text = f"Work {letter} as {stock.lot.name} in rounds {window[0].index + 1} to {window[-1].index + 1}"
    changed = with_bands(design, _reworked(facts, letter, stock.letter, window), text)
    if changed is None or design.colourway.lot_of(stock.letter) == stock.lot.id:
        return changed
    try:
        return Together((assign(design, stock.letter, stock.lot.id, source=facts.palette), changed), text)
    except ValueError:
        return None


def _reworked(facts: Facts, letter: str, instead: str, window: Sequence[_Use]) -> tuple[Band, ...]:
    chosen = {use.index for use in window}
    bands, number = [], 0
    for band in facts.design.bands:
        rounds = []
        for line in band.rounds:
            letters = line.letters.replace(letter, instead) if number in chosen else line.letters
            rounds.append(replace(line, letters=letters))
            number += 1
        bands.append(replace(band, rounds=tuple(rounds)))
    return tuple(bands)
