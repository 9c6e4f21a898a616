"""The recipes of two lots side by side: every key that either records, and whether the two differ in it."""

import datetime as dt
from collections.abc import Iterator
from dataclasses import dataclass

from chartmaker.model.palette import Lot, Palette

Recorded = str | float | int | None


@dataclass(frozen=True, slots=True)
class RecipeRow:
    """One key of two recipes."""

    key: str
    """As in the palette's file, `ratio`; mordants and assists by their name: `mordant: alum` (% WOF), `assist: chalk`
    (g to 100 g)."""
    reference: Recorded
    """None where it is not recorded, or was not used."""
    sample: Recorded

    @property
    def words(self) -> str:
        """The key in words, with its unit."""
        return _WORDS.get(self.key, self.key)

    @property
    def is_different(self) -> bool:
        """Whether the records differ."""
        return self.reference != self.sample


_BATH_KEYS = ("dyestuff", "part", "state", "ratio", "liquor_l_per_100g", "ph_start", "ph_end", "hottest_c", "minutes")
_WORDS = {
    "liquor_l_per_100g": "liquor, L to 100 g",
    "ph_start": "pH at the start",
    "ph_end": "pH at the end",
    "hottest_c": "hottest, °C",
    "dyed_on": "dyed on",
}
"""Other keys are words already."""


def recipe_rows(palette: Palette, reference: Lot, sample: Lot) -> tuple[RecipeRow, ...]:
    """Give the recipes of two lots side by side, in the file's order; keys that neither records are left out."""
    first, second = dict(_recipe(palette, reference)), dict(_recipe(palette, sample))
    keys = dict.fromkeys((*_BATH_KEYS[:4], *_additions(first), *_additions(second), *_BATH_KEYS[4:], *first, *second))
    rows = (RecipeRow(key, first.get(key), second.get(key)) for key in keys)
    return tuple(row for row in rows if row.reference is not None or row.sample is not None)


def _additions(recipe: dict[str, Recorded]) -> list[str]:
    return [key for key in recipe if ": " in key]


def _recipe(palette: Palette, lot: Lot) -> Iterator[tuple[str, Recorded]]:
    source = lot.source
    bath = palette.bath(source[0]) if source else None
    if bath:
        bath = bath.as_run
        for key in _BATH_KEYS:
            yield key, getattr(bath, key) or None if key == "part" else getattr(bath, key)
        yield from ((f"mordant: {item.name}", item.percent_wof) for item in bath.mordants)
        yield from ((f"assist: {item.name}", item.grams) for item in bath.assists)
    if source:
        yield "bath", source[0]
        yield "load", source[1]
    yield "yarn", lot.yarn
    yield "dyed_on", lot.dyed_on.isoformat() if isinstance(lot.dyed_on, dt.date) else None
