"""How far two values are surely apart: readings scatter, so contrast is judged on the lower bound of |ΔL*|.

The bound is one-sided, at 95 %: |ΔL*| - t · SE with SE = √(s₁²/n₁ + s₂²/n₂), and the degrees of freedom ν of Welch and
Satterthwaite (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.3). The deviation that a lone reading is given
counts as known: it brings its variance but no doubt about it, so ν is infinite for it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal, NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.settings import Limits
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import LotShade

Grade = Literal["clear", "soft", "lost"]
Floats = NDArray[np.float64]

_T_95: dict[float, float] = {
    **dict(enumerate((6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812), start=1)),
    **dict(enumerate((1.796, 1.782, 1.771, 1.761, 1.753, 1.746, 1.740, 1.734, 1.729, 1.725), start=11)),
    **dict(enumerate((1.721, 1.717, 1.714, 1.711, 1.708, 1.706, 1.703, 1.701, 1.699, 1.697), start=21)),
    40: 1.684,
    60: 1.671,
    100: 1.660,
    np.inf: 1.645,
}
"""0.95 quantile of Student's t by degrees of freedom (NIST/SEMATECH e-Handbook, table 1.3.6.7.2)."""
_RECIPROCALS = np.array([1 / freedom for freedom in reversed(_T_95)])
_LOGARITHMS = np.log(np.array(list(reversed(_T_95.values()))))


@dataclass(frozen=True, slots=True)
class ValueDifference:
    """How far two shades are apart in value."""

    difference: float
    """|ΔL*| of the means."""
    low: float
    """Its lower one-sided 95 % bound, never below 0; the figure that is judged."""


class Spread(NamedTuple):
    """Values of some shades (n each) with what is known of their scatter."""

    value: Floats
    """Mean L*."""
    variance: Floats
    """Variance of that mean, s²/n."""
    reciprocal_freedom: Floats
    """1/ν of that variance; 0 where the deviation counts as known."""


class ContrastTable(NamedTuple):
    """Every shade of a list against every other: n × n each, symmetric, 0 on the diagonal, read-only."""

    difference: Floats
    """|ΔL*| of the means."""
    low: Floats
    """Its lower one-sided 95 % bound."""
    ciede2000: Floats
    """ΔE00 of the means."""


def value_difference(first: LotShade, second: LotShade) -> ValueDifference:
    """Give |ΔL*| of two shades and its lower one-sided 95 % bound."""
    difference, low = differences_and_bounds(spread_of([first]), spread_of([second]))
    return ValueDifference(float(difference[0]), float(low[0]))


def grade(low: float, limits: Limits) -> Grade:
    """Judge a lower bound of |ΔL*|: clear from `limits.value_clear` on, soft from `value_soft` on, else lost."""
    if low >= limits.value_clear:
        return "clear"
    return "soft" if low >= limits.value_soft else "lost"


def contrast_table(shades: Sequence[LotShade]) -> ContrastTable:
    """Compare every shade with every other: |ΔL*|, its lower 95 % bound and CIEDE2000, n × n each."""
    upper = _pairs(len(shades))
    spread = spread_of(shades)
    lab = np.array([shade.lab for shade in shades]).reshape(-1, 3)
    first, second = (Spread(*(column[side] for column in spread)) for side in upper)
    difference, low = differences_and_bounds(first, second)
    halves = (difference, low, ciede2000(lab[upper[0]], lab[upper[1]]))
    return ContrastTable(*(_mirrored(half, upper, len(shades)) for half in halves))


def spread_of(shades: Sequence[LotShade]) -> Spread:
    """Gather the values of shades and their scatter; one with an assumed spread counts as one reading."""
    rows = [(shade.lab[0], shade.deviation[0], 1 if shade.has_assumed_spread else shade.readings) for shade in shades]
    value, deviation, readings = np.array(rows, dtype=np.float64).reshape(-1, 3).T
    variance = deviation**2 / readings
    freedom = np.where(readings > 1, readings - 1, np.inf)
    return Spread(value, variance, 1 / freedom)


def differences_and_bounds(first: Spread, second: Spread) -> tuple[Floats, Floats]:
    """Give |ΔL*| and its lower 95 % bound, both of the broadcast shape of the two spreads' columns."""
    difference = np.abs(first.value - second.value)
    variance = first.variance + second.variance
    # Equation of Welch and Satterthwaite, upside down: each side adds its 1/ν by the square of its share.
    reciprocal = np.zeros_like(variance)
    for side in (first, second):
        share = np.divide(side.variance, variance, out=np.zeros_like(variance), where=variance > 0)
        reciprocal += share * share * side.reciprocal_freedom
    low = np.maximum(0, difference - t_95(reciprocal) * np.sqrt(variance))
    return difference, low


def t_95(reciprocal_freedom: ArrayLike) -> Floats:
    """Give the 0.95 quantile of Student's t (any shape) for 1/ν, from 0 (the normal distribution) to 1.

    Between the rows of the table log t runs straight in 1/ν. That errs on the cautious side: by up to 0.09 between
    1 and 2 degrees of freedom, 0.008 between 2 and 3, and less than 0.002 from there on.
    """
    return np.asarray(np.exp(np.interp(np.asarray(reciprocal_freedom, dtype=float), _RECIPROCALS, _LOGARITHMS)))


@lru_cache(maxsize=32)
def _pairs(count: int) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Give row and column of every pair above the diagonal."""
    rows, columns = np.triu_indices(count, 1)
    return rows, columns


def _mirrored(half: Floats, upper: tuple[NDArray[np.intp], NDArray[np.intp]], count: int) -> Floats:
    """Lay the values of the pairs out as a symmetric table."""
    table = np.zeros((count, count))
    table[upper] = half
    table.T[upper] = half
    table.flags.writeable = False
    return table
