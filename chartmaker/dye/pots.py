"""Which pot holds a bath, and into how many turns it must be split where none does."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from chartmaker.model.dyeing import Pot


@dataclass(frozen=True, slots=True)
class PotUse:
    """The pot for a bath or a mordanting."""

    litres: float
    """Liquor to be held, all in all."""
    pot: Pot | None
    """None where no pot is known that may be used."""
    turns: int
    """1 where the pot holds it; else into so many turns, or so many such pots, it is split."""
    metal: str = ""
    """Iron or copper, where the liquor holds it."""

    @property
    def text(self) -> str:
        """Tell it in a sentence, without the full stop."""
        needed = f"{self.litres:.1f} L"
        if self.pot is None and self.metal:
            return f"no pot is kept for {self.metal}: {needed} of liquor want one that is used for nothing else"
        if self.pot is None:
            return f"a dye pot that holds {needed} of liquor"
        if self.turns == 1:
            return f"{self.pot.name}, which holds {self.pot.litres:.3g} L, takes the {needed}"
        return f"no pot holds {needed}: split it into {self.turns} turns in {self.pot.name} ({self.pot.litres:.3g} L)"


def pot_for(pots: Sequence[Pot], litres: float, *, metal: str = "") -> PotUse:
    """Choose the smallest pot that holds so much liquor, else the largest and how many turns it takes.

    Liquor with iron or copper goes only into a pot that is kept for it; all other liquor never does.
    """
    allowed = sorted((pot for pot in pots if _may_hold(pot, metal)), key=lambda pot: pot.litres)
    if not allowed:
        return PotUse(litres, None, 1, metal)
    fitting = [pot for pot in allowed if pot.litres >= litres - 1e-9]
    if fitting:
        return PotUse(litres, fitting[0], 1, metal)
    return PotUse(litres, allowed[-1], math.ceil(litres / allowed[-1].litres - 1e-9), metal)


def _may_hold(pot: Pot, metal: str) -> bool:
    kept_for = pot.kept_for.casefold().strip()
    return metal in kept_for if metal else not kept_for
