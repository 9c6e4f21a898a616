"""What other lights do to shades: how inconstant a lot is, and which pairs match in one light and part in another.

*Inconstancy* asks whether one lot keeps its colour. Its XYZ under a test light are adapted to the reference light, and
the difference from what it is there is what adaptation of the eye does not make up for. These are the steps of
CMCCON02 (Luo et al. 2003, Color. Technol. 119, 280-285; ISO 105-J05; cited from memory) with the adaptation and the
difference of this house, CAT16 and CIEDE2000, in the place of CMCCAT2000 and CMC: figures are near to it, not the same.

*Metamerism* asks whether two lots keep their likeness. Both are taken as CIELAB under each light, whose white is the
white of CIELAB, and compared there: the pairs of CIE 15:2018's special metamerism index, change in illuminant, but with
CIEDE2000, and told beside their difference in the other light in the place of a correction for it.

Only a spectrum knows what another light will do. Other readings are merely adapted, and whatever is told of them here
is marked as not measured.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.palette import Lot
from chartmaker.model.settings import Viewing
from chartmaker.shade.adaptation import adapted
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lab import lab_of_xyz, xyz_of_lab
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shades_of
from chartmaker.shade.weights import white_point

LIGHTS = ("D65", "A", "LED-B3", "FL11")
"""Daylight, an incandescent lamp, a white LED and a fluorescent tube, by the names of CIE 15."""
MATCHING = 2.0
"""Up to this CIEDE2000 two lots pass for one: common practice, no source."""
PARTED = 2 * MATCHING
"""Beyond this CIEDE2000 the same two lots are told apart at a glance: common practice, no source."""


@dataclass(frozen=True, slots=True)
class Inconstancy:
    """How far a lot's colour changes in one light."""

    illuminant: str
    shade: LotShade
    """What it is under that light, for the eye that is used to it."""
    ciede2000: float | None
    """From what it is under the reference light, once adapted to it; None where it cannot be known without spectra."""


@dataclass(frozen=True, slots=True)
class PairInLight:
    """How two lots differ in one light."""

    illuminant: str
    value_difference: float
    """|ΔL*|."""
    ciede2000: float


@dataclass(frozen=True, slots=True)
class MetamericPair:
    """Two lots that match in one light and part in another."""

    lots: tuple[str, str]
    """Their ids, in the order of the palette."""
    matching: PairInLight
    """The light in which they are nearest."""
    parted: PairInLight
    """The light in which they are farthest apart."""


class PairsInLights(NamedTuple):
    """Every lot of a list against every other in each of some lights: lights × n × n each."""

    value_difference: NDArray[np.float64]
    """|ΔL*|; not a number where a lot has no shade."""
    ciede2000: NDArray[np.float64]
    """ΔE00, the same."""
    is_measured: NDArray[np.bool_]
    """n × n: whether both lots have spectra, so that the lights can be told from one another."""


def is_measured(shade: LotShade | None) -> bool:
    """Tell whether a shade rests on spectra alone, so that other lights are no guess for it."""
    return shade is not None and shade.rests_on == "spectrum"


def other_lights(viewing: Viewing) -> tuple[Viewing, ...]:
    """Give the lights that a shade is tried in beside its own, with its own observer."""
    return tuple(
        Viewing(illuminant=light, observer=viewing.observer) for light in LIGHTS if light != viewing.illuminant
    )


def inconstancies_of(lot: Lot, viewing: Viewing) -> tuple[Inconstancy, ...]:
    """Give what each of the other lights does to a lot; nothing for one that has no shade. `viewing` is the reference.

    A lot without spectra has shades, merely adapted, and no figure.
    """
    return inconstancies_of_all((lot,), viewing)[0]


def inconstancies_of_all(lots: Sequence[Lot], viewing: Viewing) -> tuple[tuple[Inconstancy, ...], ...]:
    """Give the same of many lots at once."""
    references = shades_of(lots, viewing)
    found: list[list[Inconstancy]] = [[] for _ in lots]
    for light in other_lights(viewing):
        for mine, shade, reference in zip(found, shades_of(lots, light), references, strict=True):
            if shade is not None and reference is not None:
                change = inconstancy(shade, reference) if is_measured(reference) else None
                mine.append(Inconstancy(light.illuminant, shade, change))
    return tuple(tuple(mine) for mine in found)


def inconstancy(test: LotShade, reference: LotShade) -> float:
    """Give CIEDE2000 between a lot's shade under a test light, adapted to the reference light, and its shade there."""
    test_white, reference_white = white_point(test.viewing), white_point(reference.viewing)
    xyz = adapted(xyz_of_lab(test.lab, white=test_white), from_white=test_white, to_white=reference_white)
    return float(ciede2000(reference.lab, lab_of_xyz(xyz, white=reference_white)))


def pairs_in_lights(lots: Sequence[Lot], lights: Sequence[Viewing]) -> PairsInLights:
    """Compare every lot with every other in each of some lights."""
    columns = [shades_of(lots, light) for light in lights]
    missing = (np.nan,) * 3
    lab = np.array([[shade.lab if shade else missing for shade in column] for column in columns], dtype=float)
    lab = lab.reshape(len(lights), len(lots), 3)
    measured = np.array([is_measured(shade) for shade in columns[0]] if columns else [], dtype=bool)
    first, second = np.triu_indices(len(lots), 1)
    value, differences = (np.zeros((len(lights), len(lots), len(lots))) for _ in range(2))
    value[:, first, second] = np.abs(lab[:, first, 0] - lab[:, second, 0])
    differences[:, first, second] = ciede2000(lab[:, first], lab[:, second])
    return PairsInLights(
        value + value.transpose(0, 2, 1),
        differences + differences.transpose(0, 2, 1),
        measured[:, np.newaxis] & measured,
    )


def metameric_pairs(lots: Sequence[Lot], viewing: Viewing) -> tuple[MetamericPair, ...]:
    """List the pairs of lots with spectra that match in one light and part in another, the worst first.

    They match within `MATCHING` and part beyond `PARTED`. The lights are that of `viewing` and the others beside it.
    """
    lights = (viewing, *other_lights(viewing))
    table = pairs_in_lights(lots, lights)
    first, second = np.triu_indices(len(lots), 1)
    apart = table.ciede2000[:, first, second]
    found = table.is_measured[first, second] & (apart.min(axis=0) <= MATCHING) & (apart.max(axis=0) > PARTED)
    pairs = []
    for column in np.flatnonzero(found).tolist():
        row, other = int(first[column]), int(second[column])
        ends = [
            PairInLight(
                lights[light].illuminant,
                float(table.value_difference[light, row, other]),
                float(table.ciede2000[light, row, other]),
            )
            for light in (int(apart[:, column].argmin()), int(apart[:, column].argmax()))
        ]
        pairs.append(MetamericPair((lots[row].id, lots[other].id), ends[0], ends[1]))
    return tuple(sorted(pairs, key=lambda pair: pair.matching.ciede2000 - pair.parted.ciede2000))
