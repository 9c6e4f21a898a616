"""All skeins of one mordant are mordanted together, in as many turns as the pots make of it."""

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from chartmaker.dye.cautions import metal_in
from chartmaker.dye.plan import BathPlan, Portion
from chartmaker.dye.pots import PotUse, pot_for
from chartmaker.model.dyeing import DyeingHabits, Pot
from chartmaker.model.palette import Mordant

MORDANT_L_PER_100G = 4.0
"""Litres of mordant liquor to 100 g of fibre: the middle of the trade's 3 to 5 (trade pages)."""

MOST_TURNS = 12
"""Beyond so many turns nobody mordants on: a larger pot is wanted, and the whole is told in one."""


@dataclass(frozen=True, slots=True)
class Turn:
    """What goes into the pot at once."""

    fibre_g: float
    water_l: float
    mordants: tuple[Portion, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Mordanting:
    """One mordant, or a mordant and its companions, for all fibre of all baths that ask for just that."""

    mordants: tuple[Mordant, ...]
    baths: tuple[tuple[str, float], ...]
    """Ids of the baths whose loads are in it, each with its fibre in grams."""
    metal: str
    """Iron or copper, which sadden a shade after the dyeing; empty for what goes before it."""
    pot: PotUse
    turns: tuple[Turn, ...]

    @property
    def fibre_g(self) -> float:
        """All fibre in it."""
        return sum(fibre for _, fibre in self.baths)

    @property
    def water_l(self) -> float:
        """All its liquor."""
        return sum(turn.water_l for turn in self.turns)

    @property
    def portions(self) -> tuple[Portion, ...]:
        """What is weighed in all."""
        return _portions(self.mordants, self.fibre_g)


def mordantings(plans: Sequence[BathPlan], pots: Sequence[Pot], habits: DyeingHabits) -> tuple[Mordanting, ...]:
    """Gather the mordantings of all baths, in the order in which the baths first ask for them; metals apart."""
    groups: dict[tuple[Mordant, ...], dict[str, float]] = {}
    for plan in plans:
        for mordants in _apart(plan.bath.mordants):
            group = groups.setdefault(_like(mordants, groups), {})
            group[plan.bath.id] = group.get(plan.bath.id, 0.0) + plan.fibre_g
    return tuple(_mordanting(mordants, baths, pots, habits) for mordants, baths in groups.items())


def _apart(mordants: Sequence[Mordant]) -> list[tuple[Mordant, ...]]:
    """Give what goes before the dyeing, then each metal by itself."""
    before = tuple(each for each in mordants if not metal_in(each.name))
    after = [(each,) for each in mordants if metal_in(each.name)]
    return [before, *after] if before else [*after]


def _like(mordants: tuple[Mordant, ...], groups: dict[tuple[Mordant, ...], dict[str, float]]) -> tuple[Mordant, ...]:
    wanted = _key(mordants)
    return next((known for known in groups if _key(known) == wanted), mordants)


def _key(mordants: tuple[Mordant, ...]) -> frozenset[tuple[str, float]]:
    return frozenset((each.name.casefold(), each.percent_wof) for each in mordants)


def _mordanting(
    mordants: tuple[Mordant, ...], baths: dict[str, float], pots: Sequence[Pot], habits: DyeingHabits
) -> Mordanting:
    fibre = sum(baths.values())
    metal = metal_in(mordants[0].name)
    skein_l = habits.skein_g / 100 * MORDANT_L_PER_100G
    pot = pot_for(pots, fibre / 100 * MORDANT_L_PER_100G, metal=metal, least_l=skein_l)
    weights = _split(fibre, pot, habits.skein_g)
    return Mordanting(
        mordants=mordants,
        baths=tuple(baths.items()),
        metal=metal,
        pot=pot if pot.turns > MOST_TURNS else replace(pot, turns=len(weights)),
        turns=tuple(Turn(one, one / 100 * MORDANT_L_PER_100G, _portions(mordants, one)) for one in weights),
    )


def _split(fibre_g: float, pot: PotUse, skein_g: float) -> list[float]:
    """Part the fibre as evenly as whole skeins allow; a pot too small for one skein still takes one at a time."""
    if pot.pot is None or pot.turns == 1:
        return [fibre_g]
    if not skein_g:
        return [fibre_g / pot.turns] * pot.turns if pot.turns <= MOST_TURNS else [fibre_g]
    skeins = round(fibre_g / skein_g)
    at_once = max(1, math.floor(pot.pot.litres / MORDANT_L_PER_100G * 100 / skein_g + 1e-9))
    turns = math.ceil(skeins / at_once)
    if turns > MOST_TURNS:
        return [fibre_g]
    return [(skeins // turns + (place < skeins % turns)) * skein_g for place in range(turns)]


def _portions(mordants: Sequence[Mordant], fibre_g: float) -> tuple[Portion, ...]:
    return tuple(Portion(each.name, each.percent_wof / 100 * fibre_g) for each in mordants)
