"""Changes to a palette as values, each with the one that takes it back.

What would leave a lot without the yarn or the bath that it names is refused.

The law is that of the edits of a design: `edit.inverse().applied_to(edit.applied_to(palette)) == palette`.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Protocol, TypeVar

from chartmaker.model.palette import Bath, Lot, Palette, Yarn
from chartmaker.model.palette_users import users_of
from chartmaker.model.units import Measured

_T = TypeVar("_T")


class PaletteEdit(Protocol):
    """What every edit of a palette can do."""

    @property
    def text(self) -> str:
        """What the edit does, as an undo menu tells it."""

    def applied_to(self, palette: Palette) -> Palette:
        """Give the changed palette."""

    def inverse(self) -> "PaletteEdit":
        """Give the edit that takes this one back."""


@dataclass(frozen=True, slots=True)
class ReplacePalette:
    """Put another palette in the place of one; the two share every yarn, bath and lot that stays as it is."""

    before: Palette
    after: Palette
    text: str

    def applied_to(self, palette: Palette) -> Palette:
        """Give the palette that comes."""
        if palette != self.before:
            raise ValueError("the palette is not what the edit remembers")
        return self.after

    def inverse(self) -> "ReplacePalette":
        """Give the edit that puts the old palette back."""
        return replace(self, before=self.after, after=self.before)


def rename_palette(palette: Palette, name: str) -> ReplacePalette:
    """Make the edit that gives a palette another name."""
    return ReplacePalette(palette, replace(palette, name=name), "Rename the palette")


# --- lots


def add_lot(palette: Palette, lot: Lot) -> ReplacePalette:
    """Make the edit that adds a lot at the end.

    Raises ValueError where its id is taken, its yarn or bath is not there, or there are too many lots.
    """
    _require_sources(palette, lot)
    return ReplacePalette(palette, replace(palette, lots=(*palette.lots, lot)), f"Add lot {lot.name}")


def change_lot(palette: Palette, lot_id: str, lot: Lot) -> ReplacePalette:
    """Make the edit that puts another lot, which may have another id, in the place of one.

    Raises ValueError where there is no such lot, or the new one names what is not there.
    """
    _required(palette.lot(lot_id), "lot", lot_id)
    _require_sources(palette, lot)
    lots = tuple(lot if each.id == lot_id else each for each in palette.lots)
    baths = palette.baths if lot.id == lot_id else tuple(_noting(bath, lot_id, lot.id) for bath in palette.baths)
    return ReplacePalette(palette, replace(palette, baths=baths, lots=lots), f"Change lot {lot.name}")


def delete_lot(palette: Palette, lot_id: str) -> ReplacePalette:
    """Make the edit that takes a lot out; a design that uses it keeps its own copy.

    Raises ValueError where there is no such lot.
    """
    lot = _required(palette.lot(lot_id), "lot", lot_id)
    lots = tuple(each for each in palette.lots if each.id != lot_id)
    return ReplacePalette(palette, replace(palette, lots=lots), f"Delete lot {lot.name}")


def use_up(palette: Palette, grams: Mapping[str, float]) -> ReplacePalette:
    """Make the edit that takes grams, by lot id, off the weights on hand; none goes below 0, as `shortfalls` tells.

    Raises ValueError for a lot that is not there, and for grams that are no weight.
    """
    for lot_id, weight in grams.items():
        _required(palette.lot(lot_id), "lot", lot_id)
        if not 0 <= weight < float("inf"):
            raise ValueError(_no_weight(weight))
    lots = tuple(
        replace(lot, on_hand_g=round(max(0.0, lot.on_hand_g - grams[lot.id]), 3)) if grams.get(lot.id) else lot
        for lot in palette.lots
    )
    return ReplacePalette(palette, replace(palette, lots=lots), "Take yarn off the stock")


def shortfalls(palette: Palette, grams: Mapping[str, float]) -> tuple[tuple[Lot, float], ...]:
    """Give the lots that have less on hand than would be taken, each with the grams that are missing."""
    return tuple(
        (lot, grams[lot.id] - lot.on_hand_g) for lot in palette.lots if grams.get(lot.id, 0.0) - lot.on_hand_g > 1e-9
    )


# --- baths


def add_bath(palette: Palette, bath: Bath) -> ReplacePalette:
    """Make the edit that adds a bath at the end. Raises ValueError where its id is taken."""
    return ReplacePalette(palette, replace(palette, baths=(*palette.baths, bath)), f"Add bath {bath.id}")


def change_bath(palette: Palette, bath_id: str, bath: Bath) -> ReplacePalette:
    """Make the edit that puts another bath in the place of one; lots follow where its id is another.

    Raises ValueError where there is no such bath, or the new id is taken.
    """
    _required(palette.bath(bath_id), "bath", bath_id)
    baths = tuple(bath if each.id == bath_id else each for each in palette.baths)
    lots = palette.lots
    if bath.id != bath_id:
        lots = tuple(_following_bath(lot, bath_id, bath.id) for lot in lots)
    return ReplacePalette(palette, replace(palette, baths=baths, lots=lots), f"Change bath {bath.id}")


def delete_bath(palette: Palette, bath_id: str) -> ReplacePalette:
    """Make the edit that takes a bath out.

    Raises ValueError where there is no such bath, or lots came or are to come from it.
    """
    bath = _required(palette.bath(bath_id), "bath", bath_id)
    _require_unused(palette, bath)
    baths = tuple(each for each in palette.baths if each.id != bath_id)
    return ReplacePalette(palette, replace(palette, baths=baths), f"Delete bath {bath_id}")


# --- yarns


def add_yarn(palette: Palette, yarn: Yarn) -> ReplacePalette:
    """Make the edit that adds an undyed yarn at the end. Raises ValueError where its id is taken."""
    return ReplacePalette(palette, replace(palette, yarns=(*palette.yarns, yarn)), f"Add yarn {yarn.name}")


def change_yarn(palette: Palette, yarn_id: str, yarn: Yarn) -> ReplacePalette:
    """Make the edit that puts another yarn in the place of one; lots follow where its id is another.

    Raises ValueError where there is no such yarn, or the new id is taken.
    """
    _required(palette.yarn(yarn_id), "yarn", yarn_id)
    yarns = tuple(yarn if each.id == yarn_id else each for each in palette.yarns)
    lots, undyed = palette.lots, palette.undyed
    if yarn.id != yarn_id:
        lots = tuple(replace(lot, yarn=yarn.id) if lot.yarn == yarn_id else lot for lot in lots)
        undyed = tuple(replace(each, yarn=yarn.id) if each.yarn == yarn_id else each for each in undyed)
    after = replace(palette, yarns=yarns, lots=lots, undyed=undyed)
    return ReplacePalette(palette, after, f"Change yarn {yarn.name}")


def delete_yarn(palette: Palette, yarn_id: str) -> ReplacePalette:
    """Make the edit that takes a yarn out.

    Raises ValueError where there is no such yarn, or lots are of it.
    """
    yarn = _required(palette.yarn(yarn_id), "yarn", yarn_id)
    _require_unused(palette, yarn)
    yarns = tuple(each for each in palette.yarns if each.id != yarn_id)
    undyed = tuple(each for each in palette.undyed if each.yarn != yarn_id)
    return ReplacePalette(palette, replace(palette, yarns=yarns, undyed=undyed), f"Delete yarn {yarn.name}")


# --- the store and the habits


def change_stock(palette: Palette, stock: Palette) -> ReplacePalette:
    """Make the edit that takes dyestuffs, undyed yarn, pots and habits from another palette, all else as it was.

    Raises ValueError where undyed yarn is of a base that the palette does not have.
    """
    for each in stock.undyed:
        _required(palette.yarn(each.yarn), "yarn", each.yarn)
    after = replace(palette, dyestuffs=stock.dyestuffs, undyed=stock.undyed, pots=stock.pots, dyeing=stock.dyeing)
    return ReplacePalette(palette, after, "Change what is at hand for dyeing")


def free_id(name: str, taken: Iterable[str]) -> str:
    """Make an id of a name that none of those taken is: small letters, digits and dashes, a number where need be."""
    kept = "".join(char if char.isalnum() else "-" for char in name.lower())
    stem = "-".join(part for part in kept.split("-") if part)[:40] or "new"
    used = set(taken)
    number, proposed = 1, stem
    while proposed in used:
        number += 1
        proposed = f"{stem}-{number}"
    return proposed


def _following_bath(lot: Lot, before: str, after: str) -> Lot:
    if lot.planned and lot.planned.bath == before:
        return replace(lot, planned=replace(lot.planned, bath=after))
    return replace(lot, bath=after) if lot.bath == before else lot


def _noting(bath: Bath, before: str, after: str) -> Bath:
    """Let the record of a bath call one of its lots by another id."""
    record = bath.record
    if record is None or all(load.lot != before for load in record.loads):
        return bath
    loads = tuple(replace(load, lot=after) if load.lot == before else load for load in record.loads)
    return replace(bath, record=replace(record, loads=loads))


def _require_sources(palette: Palette, lot: Lot) -> None:
    if lot.yarn is not None:
        _required(palette.yarn(lot.yarn), "yarn", lot.yarn)
    if lot.source is not None:
        _required(palette.bath(lot.source[0]), "bath", lot.source[0])


def _require_unused(palette: Palette, thing: Bath | Yarn) -> None:
    users = users_of(palette, thing)
    if users:
        raise ValueError(f"{thing.id!r} cannot be deleted: {users}")


def _required(thing: _T | None, what: str, thing_id: str) -> _T:
    if thing is None:
        raise ValueError(f"there is no {what} {thing_id!r} in the palette")
    return thing


def _no_weight(grams: float) -> str:
    return Measured(lambda units: f"{units.weight.brief(grams)} cannot be taken off a weight on hand")
