"""The lots that a letter can be: those of the design and of its palette, by value, each with its patch."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from chartmaker.app.words import number, tr
from chartmaker.dye.predicted import shades_in
from chartmaker.model.units import METRIC, Units

if TYPE_CHECKING:
    from chartmaker.model.design import Design
    from chartmaker.model.palette import Lot, Palette
    from chartmaker.shade.lot_shade import LotShade


@dataclass(frozen=True, slots=True)
class LotEntry:
    """One lot as it is offered and listed."""

    lot: Lot
    shade: LotShade | None
    is_in_design: bool
    """Whether the design holds a copy of it."""
    units: Units
    """What its weight is told in."""

    @property
    def words(self) -> str:
        """Value, name and weight in one line."""
        value = "–" if self.shade is None else number(self.shade.value)
        planned = tr(", planned") if self.lot.planned else ""
        return tr("{0}   {1}, {2}{3}").format(
            value, self.lot.name, self.units.weight.rough(self.lot.on_hand_g), planned
        )


def lot_entries(design: Design, palette: Palette | None, units: Units = METRIC) -> tuple[LotEntry, ...]:
    """Give every lot at hand once, the lightest first, those without a shade last; the design's own copy wins."""
    own = {lot.id for lot in design.palette.lots}
    at_hand = design.palette.followed_by(palette)
    shades = shades_in(at_hand, design.viewing)
    entries = [LotEntry(lot, shade, lot.id in own, units) for lot, shade in zip(at_hand.lots, shades, strict=True)]
    return tuple(sorted(entries, key=lambda entry: (-(entry.shade.value if entry.shade else -1), entry.lot.name)))
