"""A design's copies of lots beside the palette they came from: what differs, and the edits that mend it."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, fields, is_dataclass, replace
from functools import partial
from itertools import chain
from typing import TypeVar

from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceSetting
from chartmaker.model.palette import Bath, Lot, Palette, Yarn
from chartmaker.model.palette_edits import ReplacePalette
from chartmaker.model.reading import READING_KINDS
from chartmaker.model.units import Measured, Quantity, Units

_T = TypeVar("_T", Yarn, Bath)

FIELD_WORDS = {
    "name": "name",
    "yarn": "yarn",
    "bath": "bath",
    "load": "load",
    "dyed_on": "dyed on",
    "on_hand_g": "on hand",
    "metres_per_100g": "grist",
    "planned": "planned",
    "readings": "readings",
    "notes": "notes",
    "picture": "picture",
}
"""What the fields of a lot are called where they differ."""
BATH_WORDS = {
    "dyestuff": "dyestuff",
    "ratio": "ratio",
    "part": "part",
    "state": "dry or fresh",
    "mordants": "mordants",
    "assists": "assists",
    "liquor_l_per_100g": "liquor, l to 100 g",
    "ph_start": "pH at the start",
    "ph_end": "pH at the end",
    "hottest_c": "hottest",
    "minutes": "minutes",
    "notes": "notes of the bath",
    "record": "record of the dyeing",
}
"""What the fields of a lot's bath are called where they differ."""
YARN_WORDS = {"name": "name of the yarn", "metres_per_100g": "grist of the yarn", "reading": "reading of the yarn"}
"""What the fields of a lot's yarn are called where they differ."""
MEASURES: dict[str, Callable[[Units], Quantity]] = {
    "on_hand_g": lambda units: units.weight,
    "metres_per_100g": lambda units: units.grist,
    "hottest_c": lambda units: units.heat,
}
"""What fields are measured in."""
NOTHING = "–"
"""Stands for an empty field."""
LONGEST_SHOWN = 60


@dataclass(frozen=True, slots=True)
class Difference:
    """One thing in which a copy and its lot in the palette are not alike."""

    what: str
    """One of the words above."""
    here: str
    """As the design has it; long texts and readings are only counted."""
    there: str
    """As the palette has it."""


@dataclass(frozen=True, slots=True)
class StaleCopy:
    """A lot of a design that is another in the palette by now."""

    lot: Lot
    """The design's copy."""
    differences: tuple[Difference, ...]
    """At least one."""


def stale_copies(design: Design, palette: Palette) -> tuple[StaleCopy, ...]:
    """Compare a design's copies with the palette: themselves, their yarns and their baths."""
    found = []
    for lot in design.palette.lots:
        differences = tuple(_differences(lot, design.palette, palette))
        if differences:
            found.append(StaleCopy(lot, differences))
    return tuple(found)


def lots_not_in(palette: Palette, design: Design) -> tuple[Lot, ...]:
    """Give the lots of a design that a palette does not have."""
    return tuple(lot for lot in design.palette.lots if palette.lot(lot.id) is None)


def refresh_copies(design: Design, palette: Palette, lot_ids: Iterable[str]) -> ReplaceSetting | None:
    """Make the edit that copies lots, with their yarns and baths, from the palette anew; None where all are alike.

    Raises ValueError for a lot that is not in the palette.
    """
    chosen = set(lot_ids)
    fresh = Palette()
    for lot_id in sorted(chosen):
        fresh = fresh.with_lot_from(palette, lot_id)
    kept = design.palette
    after = replace(
        kept,
        yarns=_renewed(kept.yarns, fresh.yarns),
        baths=_renewed(kept.baths, fresh.baths),
        lots=tuple(fresh.lot(lot.id) or lot for lot in kept.lots),
    )
    if after == kept:
        return None
    text = "Refresh a copy" if len(chosen) == 1 else f"Refresh {len(chosen)} copies"
    return ReplaceSetting("palette", kept, after, text)


def add_copies(palette: Palette, design: Design, lot_ids: Iterable[str]) -> ReplacePalette:
    """Make the edit that adds lots of a design, with the yarns and baths that they name, to the palette.

    Raises ValueError for a lot that is not in the design.
    """
    after = palette
    for lot_id in lot_ids:
        after = after.with_lot_from(design.palette, lot_id)
    return ReplacePalette(palette, after, "Add lots of the design")


def _renewed(kept: tuple[_T, ...], fresh: tuple[_T, ...]) -> tuple[_T, ...]:
    """Put the fresh ones in the places of those of the same id, and the rest behind them."""
    by_id: dict[str, _T] = {thing.id: thing for thing in fresh}
    placed: tuple[_T, ...] = tuple(by_id.pop(thing.id, thing) for thing in kept)
    return tuple(chain(placed, by_id.values()))


def _differences(lot: Lot, own: Palette, palette: Palette) -> Iterator[Difference]:
    other = palette.lot(lot.id)
    if other is None:
        return
    yield from _between(lot, other, FIELD_WORDS)
    if lot.yarn is not None and lot.yarn == other.yarn:
        yield from _between(own.yarn(lot.yarn), palette.yarn(lot.yarn), YARN_WORDS)
    if lot.source and other.source and lot.source[0] == other.source[0]:
        yield from _between(own.bath(lot.source[0]), palette.bath(lot.source[0]), BATH_WORDS)


def _between(
    here: Lot | Bath | Yarn | None, there: Lot | Bath | Yarn | None, words: dict[str, str]
) -> Iterator[Difference]:
    if here is None or there is None:
        return
    for field, word in words.items():
        before, after = getattr(here, field), getattr(there, field)
        if before != after:
            shown = partial(_measure, MEASURES[field]) if field in MEASURES else _shown
            yield Difference(word, shown(before, after), shown(after, before))


def _measure(quantity_in: Callable[[Units], Quantity], value: float | None, other: float | None) -> str:
    """Write a measure with its unit; one that cannot be told apart from the other that way is marked."""
    if value is None:
        return NOTHING

    def tell(units: Units) -> str:
        quantity = quantity_in(units)
        text = quantity.brief(value)
        is_like = other is not None and text == quantity.brief(other)
        return f"{text} (another)" if is_like else text

    return Measured(tell)


def _shown(value: object, other: object) -> str:
    """Write a value shortly; one that cannot be told apart from the other that way is marked."""
    text = _short(value)
    return text if text != _short(other) else f"{text} (another)"


def _short(value: object) -> str:
    if value is None or (isinstance(value, str | tuple) and not value):
        return NOTHING
    if isinstance(value, float):
        return f"{value:g}"
    if isinstance(value, tuple):
        is_measured = isinstance(value[0], tuple(READING_KINDS.values()))
        return str(len(value)) if is_measured else ", ".join(map(_short, value))
    text = str(value)
    if is_dataclass(value) and not isinstance(value, type):
        kind = getattr(value, "kind", "")
        text = kind or " ".join(_short(getattr(value, field.name)) for field in fields(value))
    return text if len(text) <= LONGEST_SHOWN else f"{text[: LONGEST_SHOWN - 1]}…"
