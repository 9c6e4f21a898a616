"""Spoon measures beside grams, for whoever has no scale at the pot; a scale is better, and they say so."""

from dataclasses import dataclass

WEIGH_INSTEAD = "A scale is better: a spoonful differs with the grain, the damp and the hand."
_EISENMAN = "Eisenman, The Home Winemaker's Manual, appendix B, as a guild reprints it"
_MEMORY = "from memory, weigh instead"
LEVEL_SPOON_G = {
    "cream of tartar": (3.8, _EISENMAN),
    "citric acid": (4.9, _EISENMAN),
    "chalk": (2.6, _EISENMAN),
    "calcium carbonate": (2.6, _EISENMAN),
    "alum": (4.5, _MEMORY),
    "washing soda": (4.5, _MEMORY),
    "soda ash": (5.0, _MEMORY),
    "iron": (5.0, _MEMORY),
    "ferrous": (5.0, _MEMORY),
}
"""Grams in one level teaspoon of powder (metric, 5 ml), and where that stands."""
LEAST_SPOON = 0.125
"""Below an eighth of a teaspoon no spoon measures."""
MOST_SPOONS = 12.0
"""Beyond so many the count goes wrong before the scale does."""


@dataclass(frozen=True, slots=True)
class Spoonful:
    """A weight in level teaspoons of 5 ml."""

    spoons: float
    """To the nearest eighth below one, the nearest quarter above."""
    source: str

    @property
    def text(self) -> str:
        """Tell it shortly, with where it stands."""
        return f"about {_fraction(self.spoons)} level tsp ({self.source})"


def in_spoons(name: str, grams: float) -> Spoonful | None:
    """Give a weight in level teaspoons; None for what is not known here, or what no spoon measures."""
    known = name.casefold()
    if "acetate" in known:
        return None  # its powders are far lighter than those of the other salts
    for words, (spoon_g, source) in LEVEL_SPOON_G.items():
        if words in known:
            spoons = grams / spoon_g
            if not LEAST_SPOON <= spoons <= MOST_SPOONS:
                return None
            parts = 8 if spoons < 1 else 4
            return Spoonful(max(1, round(spoons * parts)) / parts, source)
    return None


def _fraction(value: float) -> str:
    whole, eighths = divmod(round(value * 8), 8)
    sign = {0: "", 1: "⅛", 2: "¼", 3: "⅜", 4: "½", 5: "⅝", 6: "¾", 7: "⅞"}[eighths]
    return f"{whole or ''}{sign}" or "0"
