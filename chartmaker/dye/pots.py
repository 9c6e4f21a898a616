"""Which pot holds a bath, and into how many turns it must be split where none does."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from chartmaker.model.dyeing import Pot

_ROUNDING = 1e-9


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
    least_l: float = 0.0
    """Liquor that one skein wants; 0 where fibre can be parted at will."""

    @property
    def is_held(self) -> bool:
        """Whether the pot takes all of it at once."""
        return self.pot is not None and self.litres <= self.pot.litres + _ROUNDING

    @property
    def is_too_small(self) -> bool:
        """Whether the pot takes not even one skein's liquor, so that no splitting helps."""
        return self.pot is not None and not self.is_held and self.least_l > self.pot.litres + _ROUNDING

    @property
    def text(self) -> str:
        """Tell it in a sentence, without the full stop."""
        needed = f"{self.litres:.1f} L"
        if self.pot is None and self.metal:
            return f"no pot is kept for {self.metal}: {needed} of liquor want one that is used for nothing else"
        if self.pot is None:
            return f"a dye pot that holds {needed} of liquor"
        if self.is_too_small:
            skein = f"{self.least_l:.1f} L of one skein"
            return f"no pot holds {needed}, nor the {skein}: {self.pot.name} ({self.pot.litres:.3g} L) is too small"
        if self.is_held:
            return f"{self.pot.name}, which holds {self.pot.litres:.3g} L, takes the {needed}"
        return f"no pot holds {needed}: split it into {self.turns} turns in {self.pot.name} ({self.pot.litres:.3g} L)"


def pot_for(pots: Sequence[Pot], litres: float, *, metal: str = "", least_l: float = 0.0) -> PotUse:
    """Choose the smallest pot that holds so much liquor, else the largest and how many turns of whole skeins it takes.

    Liquor with iron or copper goes only into a pot that is kept for it; all other liquor never does.
    """
    allowed = sorted((pot for pot in pots if _may_hold(pot, metal)), key=lambda pot: pot.litres)
    if not allowed:
        return PotUse(litres, None, 1, metal, least_l)
    fitting = [pot for pot in allowed if pot.litres >= litres - _ROUNDING]
    if fitting:
        return PotUse(litres, fitting[0], 1, metal, least_l)
    return PotUse(litres, allowed[-1], _turns(litres, allowed[-1].litres, least_l), metal, least_l)


def _turns(litres: float, held_l: float, least_l: float) -> int:
    """Give how often a pot is filled; with whole skeins, where it takes one at all."""
    at_once = math.floor(held_l / least_l + _ROUNDING) * least_l if least_l else held_l
    return math.ceil(litres / (at_once or held_l) - _ROUNDING)


def _may_hold(pot: Pot, metal: str) -> bool:
    kept_for = pot.kept_for.casefold().strip()
    return metal in kept_for if metal else not kept_for
