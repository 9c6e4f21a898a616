"""The ladder of a bath: what each load comes out like, fitted to the loads measured, with those still to come.

Exhaust n has F(undyed) + A · q^(n-1), F being K/S for each band, A the dye of the first load and q the share that a
load leaves to the next. With D_i the dye measured on load n_i (F - F(undyed), the mean of its spectra), A and q are
those of least

    Σ_i Σ_bands w_i² · (D_i - A · q^(n_i - 1))²,   w = dR/dF = 2R² / (1 - R²)

so that a band weighs as much as an instrument sees of it; a dark band's K/S is large and hardly known. For each q the
best A is a weighted mean, so that q alone is looked for, from `LEAST_SHARE` to `MOST_SHARE`.

What a load scatters about the ladder is judged by its strength a_i = Σ w² A D_i / Σ w² A². The residuals of log a_i
from (n_i - 1) · log q give the variance, together with `KNOWN_FREEDOM` degrees of freedom of `LOAD_SCATTER`, since two
or three loads tell little of it. The interval for a further load is that of a straight line's prediction (NIST/SEMATECH
e-Handbook of Statistical Methods, 4.5.2.2), 90 % two-sided. With one load alone q is `ASSUMED_SHARE`, and the interval
runs from `ASSUMED_LOW` to `ASSUMED_HIGH`.
"""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.dye.undyed import undyed_of
from chartmaker.model.palette import Bath, Lot, Palette
from chartmaker.shade.spread import t_95
from chartmaker.shade.strength import common_bands, dye_of, on_bands, sensitivity_of, spectra_of
from chartmaker.shade.weights import Bands

Floats = NDArray[np.float64]

ASSUMED_SHARE, ASSUMED_LOW, ASSUMED_HIGH = 0.5, 0.3, 0.7
"""The share q taken where a single load is measured, and its range: common practice, no source."""
LOAD_SCATTER = 0.06
"""Standard deviation of log strength among loads of one recipe: common practice, no source."""
KNOWN_FREEDOM = 4
"""How many loads' worth of doubt the stated scatter counts as."""
LEAST_SHARE, MOST_SHARE = 0.02, 1.0


@dataclass(frozen=True, slots=True)
class MeasuredLoad:
    """The dye measured on one lot of a bath."""

    lot: Lot
    load: int
    dye: Floats
    """F - F(undyed) on the ladder's bands."""
    seen: Floats
    """dR/dF of each band."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ladder:
    """What a bath's loads were found to follow."""

    bath: Bath
    bands: Bands
    undyed: Floats
    """Reflectance factors of the undyed yarn of the lowest load measured."""
    dye: Floats
    """A: the dye of the first load, in K/S."""
    share: float
    """q: what a load leaves to the next."""
    share_low: float
    share_high: float
    """90 % interval of q, or the range stated for an assumed one."""
    is_assumed: bool
    """Whether a single load was measured, so that q is taken and not fitted."""
    measured: tuple[MeasuredLoad, ...]
    variance: float
    """Of the logarithm of a load's strength."""

    def strength(self, load: int) -> tuple[float, float, float]:
        """Give low, likely and high dye of a load, as multiples of the first load's on the ladder."""
        likely = self.share ** (load - 1)
        if self.is_assumed:
            beyond = load - self.measured[0].load
            ends = [likely * (share / self.share) ** beyond for share in (self.share_low, self.share_high)]
            scatter = np.exp(1.645 * np.sqrt(2 * self.variance))  # the load's own luck, and that of the one measured
            return min(ends) / float(scatter), likely, max(ends) * float(scatter)
        reach = _t(self.measured) * np.sqrt(self.variance * (1 + _doubt_of_line(self._steps, load - 1)))
        return float(likely * np.exp(-reach)), likely, float(likely * np.exp(reach))

    @property
    def _steps(self) -> Floats:
        return np.array([one.load - 1 for one in self.measured], dtype=float)


def ladder_of(palette: Palette, bath: Bath) -> Ladder | None:
    """Give the ladder of a bath, or None where no load of it has spectra and an undyed base (`why_no_ladder` tells)."""
    lots = [lot for lot in palette.lots if lot.bath == bath.id and spectra_of(lot.readings)]
    bases = [(lot, base) for lot in sorted(lots, key=lambda lot: lot.load) if (base := undyed_of(palette, lot))]
    if not bases:
        return None
    spectra = [spectrum for lot, _ in bases for spectrum in spectra_of(lot.readings)]
    bands = common_bands([*spectra, *(base for _, base in bases)])
    undyed = on_bands([base for _, base in bases], bands)
    measured = []
    for (lot, _), base in zip(bases, undyed, strict=True):
        mean = on_bands(spectra_of(lot.readings), bands).mean(axis=0)
        measured.append(MeasuredLoad(lot, lot.load, dye_of(mean, base), sensitivity_of(mean)))
    return fitted(bath, measured, bands=bands, undyed=undyed[0])


def why_no_ladder(palette: Palette, bath_id: str) -> str:
    """Tell what is missing for a bath's ladder, without a full stop; empty where nothing is."""
    bath = palette.bath(bath_id)
    if bath is None:
        return f"the recipe of bath {bath_id} is missing"
    lots = [lot for lot in palette.lots if lot.bath == bath_id]
    measured = [lot for lot in lots if spectra_of(lot.readings)]
    if not measured:
        return f"no load of bath {bath_id} has a spectrum yet"
    if all(undyed_of(palette, lot) is None for lot in measured):
        return f"the undyed yarn of {measured[0].name} has no spectrum"
    return ""


def fitted(bath: Bath, measured: Sequence[MeasuredLoad], *, bands: Bands, undyed: Floats) -> Ladder:
    """Fit the ladder to at least one measured load; loads of one number count side by side."""
    steps = np.array([one.load - 1 for one in measured])
    dye = np.array([one.dye for one in measured])
    weight = np.array([one.seen for one in measured]) ** 2
    is_assumed = len(set(steps.tolist())) < 2
    share = ASSUMED_SHARE if is_assumed else _best_share(steps, dye, weight)
    first = _first_dye(share, steps, dye, weight)[0]
    strength = np.sum(weight * first * dye, axis=1) / np.sum(weight * first * first, axis=1)
    residual = np.log(np.maximum(strength, 1e-6)) - steps * np.log(share)
    variance = _variance(residual, freedom=0 if is_assumed else len(steps) - 2)
    low, high = ASSUMED_LOW, ASSUMED_HIGH
    if not is_assumed:
        spread = float(np.sqrt(variance / np.sum((steps - steps.mean()) ** 2))) * _t(measured)
        low, high = share * float(np.exp(-spread)), share * float(np.exp(spread))
    return Ladder(
        bath=bath,
        bands=bands,
        undyed=undyed,
        dye=first,
        share=share,
        share_low=low,
        share_high=high,
        is_assumed=is_assumed,
        measured=tuple(measured),
        variance=variance,
    )


def _first_dye(shares: float | Floats, steps: NDArray[np.int_], dye: Floats, weight: Floats) -> Floats:
    """Give the best A (shares × bands) for each share q."""
    power = np.atleast_1d(shares)[:, np.newaxis] ** steps
    return np.asarray((power @ (weight * dye)) / (power**2 @ weight))


def _best_share(steps: NDArray[np.int_], dye: Floats, weight: Floats) -> float:
    """Walk the whole range of q, then ever more closely about the best."""
    lows, highs = LEAST_SHARE, MOST_SHARE
    for _ in range(6):
        shares = np.linspace(lows, highs, 61)
        first = _first_dye(shares, steps, dye, weight)
        model = first[:, np.newaxis, :] * (shares[:, np.newaxis] ** steps)[:, :, np.newaxis]
        best = float(shares[np.sum(weight * (dye - model) ** 2, axis=(1, 2)).argmin()])
        step = (highs - lows) / 60
        lows, highs = max(LEAST_SHARE, best - step), min(MOST_SHARE, best + step)
    return best


def _variance(residual: Floats, *, freedom: int) -> float:
    """Give the variance of log strength about the ladder, the stated scatter weighed in."""
    squares = float(np.sum((residual - residual.mean()) ** 2)) if freedom else 0.0
    return (KNOWN_FREEDOM * LOAD_SCATTER**2 + squares) / (KNOWN_FREEDOM + freedom)


def _t(measured: Sequence[MeasuredLoad]) -> float:
    return float(t_95(1 / (KNOWN_FREEDOM + len(measured) - 2)))


def _doubt_of_line(steps: Floats, step: float) -> float:
    """Give 1/n + (x - x̄)² / Σ (x - x̄)²: what the line's own doubt adds at a step, as a multiple of the variance."""
    mean = float(steps.mean())
    return 1 / len(steps) + (step - mean) ** 2 / float(np.sum((steps - mean) ** 2))
