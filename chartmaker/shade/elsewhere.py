"""How the letters of a design differ otherwise than in its own light and to ordinary eyes.

In other lights, as far as their lots have spectra; and to eyes that lack a cone (`vision`), which is computed for all.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.palette import Lot
from chartmaker.model.settings import Limits, Viewing
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lights import is_measured, other_lights
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shades_of
from chartmaker.shade.spread import ContrastTable, contrast_table, grade
from chartmaker.shade.vision import KINDS, lab_seen_by
from chartmaker.shade.weights import white_point


@dataclass(frozen=True, slots=True)
class LightContrast:
    """How two shades differ in another light than the design's own."""

    illuminant: str
    value_difference: float
    """|ΔL*|."""
    value_difference_low: float
    """Its lower one-sided 95 % bound, which is judged."""
    ciede2000: float
    grade: str
    """Either clear, soft or lost."""


@dataclass(frozen=True, slots=True)
class EyesContrast:
    """How two shades differ to eyes that lack a cone."""

    kind: str
    """Which cone: one of `vision.KINDS`."""
    value_difference: float
    """|ΔL*|."""
    ciede2000: float


class _Seen(NamedTuple):
    """Differences to one kind of eyes, n × n each."""

    value_difference: NDArray[np.float64]
    ciede2000: NDArray[np.float64]


class Elsewhere(NamedTuple):
    """Every one of n lots against every other, in other lights and to other eyes."""

    viewings: tuple[Viewing, ...]
    lights: tuple[ContrastTable, ...]
    """A table for each of `viewings`."""
    is_measured: tuple[bool, ...]
    """Which of the lots have spectra."""
    eyes: tuple[_Seen, ...]
    """A table for each of `vision.KINDS`."""

    def in_lights(self, first: int, second: int, limits: Limits) -> tuple[LightContrast, ...]:
        """Give how two of the lots differ in each of the lights; nothing where one of them has no spectra."""
        if not (self.is_measured[first] and self.is_measured[second]):
            return ()
        found = []
        for viewing, table in zip(self.viewings, self.lights, strict=True):
            difference, low, apart = (float(column[first, second]) for column in table)
            found.append(LightContrast(viewing.illuminant, difference, low, apart, grade(low, limits)))
        return tuple(found)

    def to_eyes(self, first: int, second: int) -> tuple[EyesContrast, ...]:
        """Give how two of the lots differ to each kind of eyes."""
        return tuple(
            EyesContrast(kind, float(seen.value_difference[first, second]), float(seen.ciede2000[first, second]))
            for kind, seen in zip(KINDS, self.eyes, strict=True)
        )


def elsewhere(lots: Sequence[Lot], shades: Sequence[LotShade]) -> Elsewhere:
    """Compare lots, whose shades under the design's own viewing are given; the same ones again cost next to nothing."""
    if not shades:
        return Elsewhere((), (), (), ())
    viewings = other_lights(shades[0].viewing)
    # One that is known in its own light alone, because it is foretold, stands for itself: it counts as not measured.
    seen = tuple(
        tuple(there or own for there, own in zip(shades_of(lots, viewing), shades, strict=True)) for viewing in viewings
    )
    return _compared(viewings, seen, tuple(shades))


@lru_cache(maxsize=16)
def _compared(
    viewings: tuple[Viewing, ...], seen: tuple[tuple[LotShade, ...], ...], shades: tuple[LotShade, ...]
) -> Elsewhere:
    white = white_point(shades[0].viewing)
    lab = np.array([shade.lab for shade in shades])
    eyes = tuple(_to_eyes(lab_seen_by(lab, kind, white=white)) for kind in KINDS)
    return Elsewhere(
        viewings, tuple(contrast_table(row) for row in seen), tuple(is_measured(one) for one in shades), eyes
    )


def _to_eyes(lab: NDArray[np.float64]) -> _Seen:
    return _Seen(np.abs(lab[:, np.newaxis, 0] - lab[:, 0]), ciede2000(lab[:, np.newaxis], lab))
