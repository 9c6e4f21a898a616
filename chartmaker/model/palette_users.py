"""Who uses a lot, a bath or a yarn: asked before it is deleted, so that nothing loses its base unnoticed."""

from collections.abc import Iterable

from chartmaker.model.design import Design
from chartmaker.model.palette import Bath, Lot, Palette, Yarn

_MOST_NAMED = 4


def users_of(palette: Palette, thing: Lot | Bath | Yarn, *, design: Design | None = None) -> str:
    """Tell in one sentence, without its full stop, who uses a thing of a palette; empty where nobody does.

    Baths and yarns are used by lots of the palette, lots by letters of the design's colourways.
    """
    if isinstance(thing, Lot):
        return "; ".join(_letters_of(design, thing.id)) if design else ""
    if isinstance(thing, Yarn):
        lots = [lot.name for lot in palette.lots if lot.yarn == thing.id]
        return f"{_listed(lots)} {_are(lots)} of this yarn" if lots else ""
    dyed = [lot.name for lot in palette.lots if lot.bath == thing.id]
    planned = [lot.name for lot in palette.lots if lot.planned and lot.planned.bath == thing.id]
    told = [f"{_listed(dyed)} came from this bath"] if dyed else []
    return "; ".join([*told, f"{_listed(planned)} {_are(planned)} planned from it"] if planned else told)


def _letters_of(design: Design, lot_id: str) -> Iterable[str]:
    for colourway in design.colourways:
        letters = [letter for letter, lot in colourway.lots if lot == lot_id]
        if letters:
            what = "letter" if len(letters) == 1 else "letters"
            _named = f" of colourway {colourway.name}" if colourway.name else ""
            yield f"{what} {_listed(letters)}{_named} of the open design {_are(letters)} this lot"


def _are(names: list[str]) -> str:
    return "is" if len(names) == 1 else "are"


def _listed(names: list[str]) -> str:
    """Name a few things, and count the rest."""
    if len(names) > _MOST_NAMED:
        return f"{', '.join(names[:_MOST_NAMED])} and {len(names) - _MOST_NAMED} more"
    return f"{', '.join(names[:-1])} and {names[-1]}" if len(names) > 1 else names[0]
