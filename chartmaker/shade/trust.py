"""How far a lot's shade can be trusted: how its readings scatter, and which of them does not belong with the others.

A reading is an outlier by Grubbs' test (Grubbs 1969, Technometrics 11, 1-21, doi 10.1080/00401706.1969.10490657; the
same as in ASTM E178), two-sided, in each of L*, a* and b*; testing three coordinates is paid for by Bonferroni's rule.
The test is written here with the outlier's distance from the mean of the others in units of their scatter, which is
Student's t with n - 2 degrees of freedom: G and t say the same, t² = n (n - 2) G² / ((n - 1)² - n G²).
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.palette import Lot
from chartmaker.model.settings import Viewing
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shades_of
from chartmaker.shade.readings import lab_of_readings

COORDINATES = ("L*", "a*", "b*")
FEWEST_READINGS = 3
"""With two, each is as far from the other; nobody can say which one is wrong."""
CONFIDENCE = 0.95
"""From here on a reading is named."""
LEAST_DISTANCE = 1.0
"""An outlier closer than this to the others' mean (CIEDE2000) does no harm: common practice, no source."""
LEAST_SCATTER = 0.1
"""Standard deviation that the others have at least: readings that agree to the last digit say how they were rounded,
not how they scatter. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Outlier:
    """A reading that does not belong with the others."""

    index: int
    """Which of the lot's readings, from 0."""
    coordinate: str
    """One of `COORDINATES`: where it stands out most."""
    off: float
    """How far it is from the mean of the others there."""
    distance: float
    """CIEDE2000 from the mean of the others."""
    confidence: float
    """How surely such a distance is no chance, from `CONFIDENCE` to 1."""


@dataclass(frozen=True, slots=True)
class LotTrust:
    """A lot's shade with what its readings say of it."""

    shade: LotShade
    """Mean, standard deviation of each coordinate, and MCDM stand here."""
    distances: tuple[float, ...]
    """Of each reading, CIEDE2000 from the mean of the others; empty for a lone reading."""
    outlier: Outlier | None
    """None where every reading belongs, or where there are fewer than three."""


def trust_of(lot: Lot, viewing: Viewing) -> LotTrust | None:
    """Give how far a lot's shade can be trusted under `viewing`, or None where it has no reading."""
    return trusts_of((lot,), viewing)[0]


def trusts_of(lots: Sequence[Lot], viewing: Viewing) -> tuple[LotTrust | None, ...]:
    """Give the same of many lots, None for those without a reading."""
    return tuple(
        _trust(lot, shade, viewing) if shade and lot.readings else None
        for lot, shade in zip(lots, shades_of(lots, viewing), strict=True)
    )


def _trust(lot: Lot, shade: LotShade, viewing: Viewing) -> LotTrust:
    lab = lab_of_readings(lot.readings, viewing)
    return LotTrust(shade, tuple(distances_from_others(lab).tolist()), find_outlier(lab))


def distances_from_others(lab: ArrayLike) -> NDArray[np.float64]:
    """Give CIEDE2000 (n) of each of n readings (n × 3) from the mean of the others; nothing for a lone one."""
    lab = np.asarray(lab, dtype=float)
    return ciede2000(lab, _means_of_others(lab)) if len(lab) > 1 else np.empty(0)


def find_outlier(lab: ArrayLike) -> Outlier | None:
    """Give the reading, of n × 3 CIELAB, that most surely does not belong; None where none is surely so.

    Never one of fewer than `FEWEST_READINGS`, and never one that lies within `LEAST_DISTANCE` of the others.
    """
    lab = np.asarray(lab, dtype=float)
    if len(lab) < FEWEST_READINGS:
        return None
    off, t = _studentised(lab)
    index, coordinate = np.unravel_index(int(np.abs(t).argmax()), t.shape)
    chance = 3 * len(lab) * two_sided_tail(float(abs(t[index, coordinate])), len(lab) - 2)
    distance = float(distances_from_others(lab)[index])
    if 1 - chance < CONFIDENCE or distance < LEAST_DISTANCE:
        return None
    return Outlier(int(index), COORDINATES[coordinate], float(off[index, coordinate]), distance, 1 - chance)


def two_sided_tail(t: float, freedom: int) -> float:
    """Give the chance that Student's t of whole degrees of freedom (1 or more) is beyond ± t.

    Abramowitz and Stegun 1964, 26.7.3 and 26.7.4: the finite series of odd and of even degrees.
    """
    angle = math.atan(t / math.sqrt(freedom))
    square = math.cos(angle) ** 2
    is_odd = freedom % 2
    term = math.cos(angle) if is_odd else 1.0
    total = 0.0
    for step in range(freedom // 2):
        total += term
        term *= square * (2 * step + 1 + is_odd) / (2 * step + 2 + is_odd)
    within = 2 / math.pi * (angle + math.sin(angle) * total) if is_odd else math.sin(angle) * total
    return max(0.0, 1 - within)


def _means_of_others(lab: NDArray[np.float64]) -> NDArray[np.float64]:
    """Give for each of n readings the mean of the n - 1 others (n × 3)."""
    result: NDArray[np.float64] = (lab.sum(axis=0) - lab) / (len(lab) - 1)
    return result


def _studentised(lab: NDArray[np.float64]) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Give each reading's distance from the mean of the others (n × 3), plain and in units of their scatter.

    The unit is that of the difference of one reading from a mean of n - 1: s √(1 + 1/(n - 1)), s of the others.
    """
    number = len(lab)
    off = lab - _means_of_others(lab)
    squares = ((lab - lab.mean(axis=0)) ** 2).sum(axis=0) - off**2 * (number - 1) / number
    scatter = np.sqrt(np.maximum(squares, 0) / (number - 2))
    return off, off / (np.maximum(scatter, LEAST_SCATTER) * math.sqrt(number / (number - 1)))
