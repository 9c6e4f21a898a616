"""Two lots compared: how far apart they are, how much of it is strength, and how the colour itself moved.

The *strength* s of a sample is the factor on the reference's dye, F(undyed) + s · (F - F(undyed)), whose CIELAB comes
nearest to the sample's by CIEDE2000; the *shift* is what then remains, sample less best match. How sure that is comes
from the readings' scatter: both lots' spectra are drawn again with replacement (the bootstrap; Efron 1979, Ann.
Statist. 7, 1-26), from a fixed seed, and the whole is computed anew each time.

Beside it the sample's dye is split in K/S by least squares into the reference's dye and an absorber that is the same at
every wavelength: that is how a saddener such as iron shows, and how much dye there is under it.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.dye.recipe import RecipeRow, recipe_rows
from chartmaker.dye.undyed import undyed_of
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Viewing
from chartmaker.shade.difference import ciede2000, delta_h
from chartmaker.shade.lab import lch_of_lab
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shade_of
from chartmaker.shade.spread import t_95
from chartmaker.shade.strength import (
    absorption_of,
    common_bands,
    dye_of,
    dyed_reflectance,
    lab_of_reflectance,
    on_bands,
    reflectance_of,
    sensitivity_of,
    spectra_of,
)
from chartmaker.shade.weights import Bands

Floats = NDArray[np.float64]
Three = tuple[float, float, float]
Curve = tuple[float, ...]

LEAST_STRENGTH, MOST_STRENGTH = 0.02, 50.0
"""Between these factors the strength is looked for."""
DRAWS = 200
SEED = 20_050
LONE_SCATTER = 0.06
"""Relative standard deviation of K/S that a lone spectrum is given: common practice, no source."""
LEAST_SEEN = 1.0
"""A CIEDE2000 below this is not called a difference, however well it is measured: common practice, no source."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Strength:
    """How a sample's difference from the reference parts into strength and shift; curves are on `bands`."""

    factor: float
    """The sample's dye as a multiple of the reference's."""
    low: float
    """5 % of the draws give less."""
    high: float
    """5 % of the draws give more."""
    is_at_end: bool
    """Whether the best factor is an end of the range looked at, so that there may be no true match."""
    shift_ciede2000: float
    shift_lab: Three
    """Sample less best match, in L*, a*, b*."""
    shift_lch: Three
    """The same as ΔL*, ΔC* and Δh in degrees."""
    shift_delta_h: float
    """ΔH* of the same."""
    shift_limit: float
    """A shift below this CIEDE2000 is within the readings; at least `LEAST_SEEN`."""
    best_lab: Three
    own_dye: float
    """The sample's dye with a flat absorber set apart, as a multiple of the reference's."""
    grey: float
    """The flat absorber in K/S; below 0 where the reference has more of it."""
    grey_share: float
    """How much of what the reference's dye alone leaves unexplained the flat absorber explains, 0 to 1."""
    bands: Bands
    best_curve: Curve

    @property
    def has_shift(self) -> bool:
        """Whether the colour itself moved by more than the readings scatter."""
        return self.shift_ciede2000 > self.shift_limit


@dataclass(frozen=True, slots=True, kw_only=True)
class Comparison:
    """All that the readings and the records say of two lots."""

    reference: Lot
    sample: Lot
    reference_shade: LotShade | None
    sample_shade: LotShade | None
    ciede2000: float | None
    """None while either has no shade."""
    difference_lch: Three | None
    """ΔL*, ΔC*, ΔH*, sample less reference."""
    limit: float | None
    """A CIEDE2000 below this is within the readings; at least `LEAST_SEEN`."""
    strength: Strength | None
    why_no_strength: str
    """A sentence without its full stop; empty where there is a strength."""
    recipe: tuple[RecipeRow, ...]

    @property
    def recipe_differences(self) -> tuple[RecipeRow, ...]:
        """The rows of the recipes that differ."""
        return tuple(row for row in self.recipe if row.is_different)


def compare(palette: Palette, reference: Lot, sample: Lot, viewing: Viewing) -> Comparison:
    """Compare two lots under `viewing`; yarns and baths are looked up in the palette."""
    first, second = shade_of(reference, viewing), shade_of(sample, viewing)
    strength, why = _strength(palette, reference, sample, viewing)
    apart = first and second
    return Comparison(
        reference=reference,
        sample=sample,
        reference_shade=first,
        sample_shade=second,
        ciede2000=float(ciede2000(first.lab, second.lab)) if first and second else None,
        difference_lch=_difference_lch(first, second) if first and second else None,
        limit=_limit(first, second) if first and second else None,
        strength=strength,
        why_no_strength=why if apart or why else "",
        recipe=recipe_rows(palette, reference, sample),
    )


def _difference_lch(first: LotShade, second: LotShade) -> Three:
    before, after = lch_of_lab(first.lab), lch_of_lab(second.lab)
    return float(after[0] - before[0]), float(after[1] - before[1]), float(delta_h(first.lab, second.lab))


def _limit(first: LotShade, second: LotShade) -> float:
    """Give what the means of two lots of one shade stay within in 19 of 20 cases, as CIEDE2000 about the first."""
    variance = np.zeros(3)
    for shade in (first, second):
        variance += np.square(shade.deviation) / (1 if shade.has_assumed_spread else shade.readings)
    noise = np.random.default_rng(SEED).normal(0, np.sqrt(variance), (400, 3))
    return max(LEAST_SEEN, float(np.quantile(ciede2000(first.lab, np.asarray(first.lab) + noise), 0.95)))


def _strength(palette: Palette, reference: Lot, sample: Lot, viewing: Viewing) -> tuple[Strength | None, str]:
    """Give the strength, or why there is none."""
    spectra = [spectra_of(lot.readings) for lot in (reference, sample)]
    for lot, own in zip((reference, sample), spectra, strict=True):
        if not own:
            return None, f"{lot.name} has no spectrum, so strength cannot be told from shift"
    bases = [undyed_of(palette, lot) for lot in (reference, sample)]
    for lot, base in zip((reference, sample), bases, strict=True):
        if base is None:
            return None, f"the undyed yarn of {lot.name} has no spectrum, so what its dye adds is not known"
    undyed = [base for base in bases if base is not None]
    bands = common_bands([*spectra[0], *spectra[1], *undyed])
    base_r = on_bands(undyed, bands)
    random = np.random.default_rng(SEED)
    drawn = [_drawn(on_bands(own, bands), random) for own in spectra]
    dye = dye_of(drawn[0], base_r[0])
    if dye[0].max() < 0.02:
        return None, f"{reference.name} has hardly any dye on it, so nothing can be told as a multiple of it"
    return _parted(dye, drawn[1], base_r=base_r, bands=bands, viewing=viewing), ""


def _drawn(reflectance: Floats, random: np.random.Generator) -> Floats:
    """Give mean reflectance (1 + draws × bands): first that of the readings, then those of draws of them.

    A mean of draws scatters by √((n - 1) / n) too little, and a few readings know their own scatter badly: both are
    made up for about the mean, the latter by Student's t beside the normal distribution's 1.645.
    """
    count = len(reflectance)
    mean = reflectance.mean(axis=0)
    if count == 1:
        scattered = reflectance_of(absorption_of(mean) * (1 + random.normal(0, LONE_SCATTER, (DRAWS, 1))))
    else:
        picked = reflectance[random.integers(0, count, (DRAWS, count))].mean(axis=1)
        wider = np.sqrt(count / (count - 1)) * t_95(1 / (count - 1)) / 1.645
        scattered = mean + (picked - mean) * wider
    return np.vstack([mean, scattered])


def _parted(dye: Floats, sample: Floats, *, base_r: Floats, bands: Bands, viewing: Viewing) -> Strength:
    """Part each draw (rows of `dye` and `sample`); the first row is what was measured."""
    sample_lab = lab_of_reflectance(sample, bands=bands, viewing=viewing)
    factors = _best_factors(dye, sample_lab, undyed=base_r[1], bands=bands, viewing=viewing)
    best = dyed_reflectance(base_r[1], factors[:, np.newaxis] * dye)
    best_lab = lab_of_reflectance(best, bands=bands, viewing=viewing)
    shift = sample_lab - best_lab
    noise = ciede2000(sample_lab[0], best_lab[0] + shift[1:])
    before, after = lch_of_lab(best_lab[0]), lch_of_lab(sample_lab[0])
    turn = (after[2] - before[2] + 180) % 360 - 180
    own, grey, share = _set_apart(dye[0], dye_of(sample[0], base_r[1]), seen=sensitivity_of(sample[0]))
    low, high = np.quantile(factors[1:], (0.05, 0.95))
    return Strength(
        factor=float(factors[0]),
        low=float(min(low, factors[0])),
        high=float(max(high, factors[0])),
        is_at_end=bool(factors[0] < LEAST_STRENGTH * 1.01 or factors[0] > MOST_STRENGTH / 1.01),
        shift_ciede2000=float(ciede2000(best_lab[0], sample_lab[0])),
        shift_lab=_three(shift[0]),
        shift_lch=(float(after[0] - before[0]), float(after[1] - before[1]), float(turn)),
        shift_delta_h=float(delta_h(best_lab[0], sample_lab[0])),
        shift_limit=max(LEAST_SEEN, float(np.quantile(noise, 0.95))),
        best_lab=_three(best_lab[0]),
        own_dye=own,
        grey=grey,
        grey_share=share,
        bands=bands,
        best_curve=tuple(best[0].tolist()),
    )


def _best_factors(dye: Floats, target: Floats, *, undyed: Floats, bands: Bands, viewing: Viewing) -> Floats:
    """Give for each row the factor on its dye that comes nearest to its target (rows × 3) by CIEDE2000.

    The whole range is walked first, since there may be several minima (a saturated shade changes its hue and turns
    back); then the best place is looked at ever more closely.
    """
    walk = np.linspace(np.log(LEAST_STRENGTH), np.log(MOST_STRENGTH), 120)
    logs = np.broadcast_to(walk, (len(dye), len(walk)))
    step = walk[1] - walk[0]
    while True:
        f = np.exp(logs)[..., np.newaxis] * dye[:, np.newaxis, :]
        lab = lab_of_reflectance(dyed_reflectance(undyed, f), bands=bands, viewing=viewing)
        nearest = ciede2000(target[:, np.newaxis, :], lab).argmin(axis=1)
        best = logs[np.arange(len(logs)), nearest]
        if step < 1e-5:
            return np.asarray(np.exp(best))
        logs = np.clip(best[:, np.newaxis] + np.linspace(-step, step, 21), walk[0], walk[-1])
        step /= 10


def _set_apart(reference: Floats, sample: Floats, *, seen: Floats) -> tuple[float, float, float]:
    """Split the sample's dye into own · reference + grey, weighted by how well an instrument sees each band.

    Least squares of (dR/dF) · (F - …) over the bands; also gives which share of the squares that the reference's dye
    alone leaves the grey takes away.
    """
    columns = np.column_stack([reference, np.ones_like(reference)]) * seen[:, np.newaxis]
    wanted = sample * seen
    alone = columns[:, 0] @ wanted / (columns[:, 0] @ columns[:, 0])
    left_alone = float(np.sum((wanted - alone * columns[:, 0]) ** 2))
    solved = np.linalg.lstsq(columns, wanted, rcond=None)[0]
    left = float(np.sum((wanted - columns @ solved) ** 2))
    share = 1 - left / left_alone if left_alone > 1e-12 else 0.0
    return float(solved[0]), float(solved[1]), min(1.0, max(0.0, share))


def _three(row: Floats) -> Three:
    first, second, third = row.tolist()
    return first, second, third
