"""The ladder of a bath told load by load, and which load comes nearest to a shade that is wanted."""

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from chartmaker.dye.ladder import Ladder
from chartmaker.dye.predicted import predicted_shade, rung_labs
from chartmaker.model.palette import Lot, Planned
from chartmaker.model.settings import Viewing
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shade_of
from chartmaker.shade.strength import dyed_reflectance, lab_of_reflectance

Three = tuple[float, float, float]

FURTHER_LOADS = 3
"""Loads beyond the last one measured that a ladder shows."""
MOST_LOADS = 12
"""As many loads as a lot may be numbered with."""
MOST_REACHED = 2.0
"""Beyond this multiple of the recipe's ratio, dye proportional to ratio is an extrapolation."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rung:
    """One load of a bath."""

    load: int
    lot: Lot | None
    """The lot measured; None for a load to come."""
    basis: str
    """`measured`; `predicted` by a fitted ladder; `assumed` where its share is taken."""
    shade: LotShade
    """Measured where there is a lot, else the ladder's."""
    weak_lab: Three
    strong_lab: Three
    """CIELAB at the ends of the ladder's 90 % interval."""
    strength: float
    """The ladder's dye as a multiple of the first load's."""
    strength_low: float
    strength_high: float


@dataclass(frozen=True, slots=True, kw_only=True)
class TargetAnswer:
    """How near a bath comes to a shade that is wanted."""

    load: int
    ciede2000: float
    """Of the nearest load from the target."""
    is_measured: bool
    ratio: float
    """Grams of dyestuff to one of fibre by which the first load would come nearest to the target."""
    ratio_ciede2000: float
    """What would remain: the colour itself is another."""
    factor: float
    """That ratio as a multiple of the recipe's."""
    is_extrapolated: bool
    """Whether it is more than twice the recipe's, or so that no ratio reaches it."""
    text: str


def rungs_of(ladder: Ladder, viewing: Viewing, *, further: int = FURTHER_LOADS) -> tuple[Rung, ...]:
    """Give the rungs from the first load to `further` loads beyond the last one measured, several where lots are."""
    last = min(MOST_LOADS, max(one.load for one in ladder.measured) + further)
    found: list[Rung] = []
    for load in range(1, last + 1):
        lots: list[Lot | None] = [one.lot for one in ladder.measured if one.load == load]
        found.extend(_rung(ladder, load, lot, viewing) for lot in lots or [None])
    return tuple(found)


def _rung(ladder: Ladder, load: int, lot: Lot | None, viewing: Viewing) -> Rung:
    weak, _, strong = rung_labs(ladder, ladder.undyed, load, viewing)
    low, likely, high = ladder.strength(load)
    measured = shade_of(lot, viewing) if lot else None
    name = f"{ladder.bath.id}-{load}"
    to_come = Lot(id=name, name=name, planned=Planned(ladder.bath.id, load))
    return Rung(
        load=load,
        lot=lot,
        basis="measured" if measured else ("assumed" if ladder.is_assumed else "predicted"),
        shade=measured or predicted_shade(ladder, to_come, ladder.undyed, load, viewing),
        weak_lab=_three(weak),
        strong_lab=_three(strong),
        strength=likely,
        strength_low=low,
        strength_high=high,
    )


def answer_to(ladder: Ladder, target: Three, viewing: Viewing) -> TargetAnswer:
    """Tell which load comes nearest to a CIELAB, and which ratio would bring the first load nearest to it."""
    rungs = rungs_of(ladder, viewing, further=MOST_LOADS)
    apart = ciede2000(np.array([rung.shade.lab for rung in rungs]), target)
    nearest = rungs[int(apart.argmin())]
    factors = np.exp(np.linspace(np.log(0.02), np.log(20), 1400))
    r = dyed_reflectance(ladder.undyed, factors[:, np.newaxis] * ladder.dye)
    left = ciede2000(lab_of_reflectance(r, bands=ladder.bands, viewing=viewing), target)
    best = int(left.argmin())
    answer = TargetAnswer(
        load=nearest.load,
        ciede2000=float(apart.min()),
        is_measured=nearest.basis == "measured",
        ratio=float(factors[best]) * ladder.bath.ratio,
        ratio_ciede2000=float(left[best]),
        factor=float(factors[best]),
        is_extrapolated=bool(factors[best] > MOST_REACHED),
        text="",
    )
    return _with_text(answer, ladder)


def _with_text(answer: TargetAnswer, ladder: Ladder) -> TargetAnswer:
    basis = "as measured" if answer.is_measured else ("with an assumed share" if ladder.is_assumed else "predicted")
    text = (
        f"Load {answer.load} comes nearest, {basis}: CIEDE2000 {answer.ciede2000:.1f} away. "
        f"A first load with {answer.ratio:.2g} g of {ladder.bath.dyestuff} to 1 g of fibre, "
        f"{answer.factor:.2g} times the recipe's, would come to {answer.ratio_ciede2000:.1f}."
    )
    if answer.is_extrapolated:
        text += f" Beyond {MOST_REACHED:g} times the recipe this is an extrapolation: dye need not follow the ratio."
    return replace(answer, text=text)


def _three(row: NDArray[np.float64]) -> Three:
    first, second, third = row.tolist()
    return first, second, third
