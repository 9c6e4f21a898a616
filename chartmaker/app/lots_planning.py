"""A lot that is planned from a load of a bath, before it is dyed."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from chartmaker.model.palette import Lot, Planned
from chartmaker.model.palette_edits import add_lot, free_id

if TYPE_CHECKING:
    from chartmaker.model.palette import Palette


def with_planned(palette: Palette, at_hand: Palette, bath_id: str, load: int) -> Palette:
    """Give a palette with a lot planned from a load; what it rests on is taken from `at_hand` where it is not here.

    Raises ValueError where the bath is in neither, or the palette is full.
    """
    bath = at_hand.bath(bath_id)
    if bath is None:
        raise ValueError(f"there is no bath {bath_id!r}")
    dyed = [lot for lot in at_hand.lots if lot.bath == bath_id]
    yarn = dyed[0].yarn if dyed else None
    name = f"{bath.dyestuff[:1].upper()}{bath.dyestuff[1:]}, load {load}, planned"
    lot = Lot(
        id=free_id(f"{bath_id}-{load}", [each.id for each in at_hand.lots]),
        name=name,
        yarn=yarn,
        planned=Planned(bath_id, load),
    )
    if palette.bath(bath_id) is None:
        whole = replace(at_hand, lots=(*at_hand.lots, lot))
        return palette.with_lot_from(whole, lot.id)
    return add_lot(palette, lot).after
