"""Lots chosen for the letters of a new hat, so that it reads: a light ground and dark figures.

The first letter is the lightest lot that has a shade. Every further one is the lot whose value lies farthest from all
that are chosen already: the second is dark therefore. Lots that were dyed go before undyed fleece as long as one of
them is clear of the ground. The knitter changes what she likes otherwise.
"""

from collections.abc import Sequence

from chartmaker.model.design import Colourway
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Limits, Viewing
from chartmaker.shade.lots import shades_of

Valued = tuple[Lot, float]
"""A lot with its value, L*."""


def first_colourway(palette: Palette, letters: str, *, viewing: Viewing, limits: Limits) -> Colourway:
    """Choose a lot for each letter, as far as the palette has lots with a shade; the rest are left without."""
    shades = shades_of(palette.lots, viewing)
    left = [(lot, shade.value) for lot, shade in zip(palette.lots, shades, strict=True) if shade]
    chosen: list[Valued] = []
    for _ in letters[: len(left)]:
        best = _lightest(left) if not chosen else _farthest(left, chosen, clear=limits.value_clear)
        chosen.append(best)
        left.remove(best)
    return Colourway("first", tuple((letter, lot.id) for letter, (lot, _) in zip(letters, chosen, strict=False)))


def _lightest(lots: Sequence[Valued]) -> Valued:
    return max(lots, key=lambda one: one[1])


def _farthest(lots: Sequence[Valued], chosen: Sequence[Valued], *, clear: float) -> Valued:
    def distance(one: Valued) -> float:
        return min(abs(one[1] - value) for _, value in chosen)

    dyed = [one for one in lots if one[0].bath and abs(one[1] - chosen[0][1]) >= clear]
    return max(dyed or lots, key=distance)
