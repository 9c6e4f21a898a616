"""The shade of a lot that is planned, not dyed: from the ladder of its bath, with an interval of its own.

`shade_in` is what everybody asks who has a palette at hand: the readings' shade where there are readings.
"""

from dataclasses import dataclass, field
from threading import Lock

import numpy as np
from numpy.typing import NDArray

from chartmaker.dye.ladder import ASSUMED_SHARE, Ladder, ladder_of, why_no_ladder
from chartmaker.dye.undyed import undyed_of
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Viewing
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import LONE_DEVIATION, shade_of, shades_of
from chartmaker.shade.screen import screen_of_lab
from chartmaker.shade.strength import dyed_reflectance, lab_of_reflectance, on_bands, spectra_of
from chartmaker.shade.weights import white_point

Floats = NDArray[np.float64]


def shade_in(palette: Palette, lot: Lot, viewing: Viewing) -> LotShade | None:
    """Give a lot's shade under `viewing`: of its readings, or, where it is planned, predicted from its palette."""
    if lot.planned is None:
        return shade_of(lot, viewing)
    return _memo.shade(palette, lot, viewing)


def shades_in(palette: Palette, viewing: Viewing) -> tuple[LotShade | None, ...]:
    """Give the shades of all lots of a palette, in their order: measured, predicted, or None."""
    measured = shades_of(palette.lots, viewing)
    return tuple(
        _memo.shade(palette, lot, viewing) if lot.planned else shade
        for lot, shade in zip(palette.lots, measured, strict=True)
    )


def missing_for_prediction(palette: Palette, lot: Lot) -> str:
    """Tell what a planned lot's shade cannot be predicted for want of, without a full stop; empty where it can."""
    if lot.planned is None:
        return f"{lot.name} is not planned"
    return why_no_ladder(palette, lot.planned.bath)


def basis_of_prediction(palette: Palette, bath_id: str) -> str:
    """Tell what a bath's predicted shades are reckoned from, for a bath that has a ladder."""
    lots = [lot for lot in palette.lots if lot.bath == bath_id and spectra_of(lot.readings) and undyed_of(palette, lot)]
    numbers = {lot.load for lot in lots}
    if len(numbers) > 1:
        return f"from {len(numbers)} measured loads of its bath"
    return (
        f"from one measured load of its bath; that a load leaves {ASSUMED_SHARE:.0%} of the dye to the next is assumed"
    )


def rung_labs(ladder: Ladder, undyed: Floats, load: int, viewing: Viewing) -> tuple[Floats, Floats, Floats]:
    """Give CIELAB (3 each) of a load, at the weak end, likely and at the strong end, on an undyed yarn."""
    dye = np.array(ladder.strength(load))[:, np.newaxis] * ladder.dye
    weak, likely, strong = lab_of_reflectance(dyed_reflectance(undyed, dye), bands=ladder.bands, viewing=viewing)
    return weak, likely, strong


def predicted_shade(ladder: Ladder, lot: Lot, undyed: Floats, load: int, viewing: Viewing) -> LotShade:
    """Give the shade of a load to come; its deviation is that of a lone reading and what the ladder leaves open.

    The ladder's 90 % interval is 2 · 1.645 standard deviations wide.
    """
    weak, likely, strong = rung_labs(ladder, undyed, load, viewing)
    deviation = np.hypot(np.abs(weak - strong) / (2 * 1.645), LONE_DEVIATION)
    srgb, is_clipped = screen_of_lab(likely[np.newaxis], white=white_point(viewing))
    return LotShade(
        lot=lot.id,
        viewing=viewing,
        lab=_three(likely),
        deviation=_three(deviation),
        mcdm=0.0,
        readings=0,
        rests_on="predicted",
        is_adapted=False,
        srgb=tuple(srgb[0].tolist()),
        is_out_of_gamut=bool(is_clipped[0]),
    )


def _predicted(palette: Palette, lot: Lot, viewing: Viewing) -> LotShade | None:
    if lot.planned is None or (bath := palette.bath(lot.planned.bath)) is None:
        return None
    ladder = ladder_of(palette, bath)
    if ladder is None:
        return None
    base = undyed_of(palette, lot)
    undyed = on_bands([base], ladder.bands)[0] if base else ladder.undyed
    return predicted_shade(ladder, lot, undyed, lot.planned.load, viewing)


@dataclass(frozen=True, slots=True)
class _Memo:
    """Predicted shades by the lot itself and all that its palette holds, so that an edit of the chart costs nothing.

    A palette is told from another by its yarns, baths and lots, each held by the entry, so that no `id` is used anew.
    """

    most: int = 512
    entries: dict[tuple[int, ...], tuple[Lot, Palette, Viewing, LotShade | None]] = field(default_factory=dict)
    lock: Lock = field(default_factory=Lock)

    def shade(self, palette: Palette, lot: Lot, viewing: Viewing) -> LotShade | None:
        parts = (lot, *palette.yarns, *palette.baths, *palette.lots)
        key = (hash(viewing), len(palette.yarns), len(palette.baths), *map(id, parts))
        found = self.entries.get(key)
        if found is not None and found[2] == viewing:
            return found[3]
        shade = _predicted(palette, lot, viewing)
        with self.lock:
            while len(self.entries) >= self.most:
                del self.entries[next(iter(self.entries))]
            self.entries[key] = (lot, palette, viewing, shade)
        return shade


_memo = _Memo()


def _three(row: Floats) -> tuple[float, float, float]:
    first, second, third = row.tolist()
    return first, second, third
