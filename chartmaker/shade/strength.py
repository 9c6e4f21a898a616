"""Depth of dye from spectra: Kubelka and Munk's F = K/S = (1 - R)² / 2R for each band, and spectra on common bands.

HunterLab Application Note 18-7 (2008) gives the relation and the worked value R 0.55, F 0.184. What dye adds is
F - F(undyed), and is taken as proportional to the dye on the fibre.
"""

from collections.abc import Sequence

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.reading import Reading, Spectrum
from chartmaker.model.settings import Viewing
from chartmaker.shade.lab import lab_of_xyz
from chartmaker.shade.weights import Bands, white_point, xyz_of_spectra

Floats = NDArray[np.float64]

LEAST_REFLECTANCE = 0.002
"""Below it F would grow without bound; no wool and no instrument goes lower: common practice, no source."""


def absorption_of(reflectance: ArrayLike) -> Floats:
    """Give F = K/S (…) of reflectance factors (…), those below `LEAST_REFLECTANCE` or above 1 taken as these ends.

    A whitened wool may reflect more than 1; the relation knows no such thing, and F is 0 there.
    """
    r = np.clip(np.asarray(reflectance, dtype=float), LEAST_REFLECTANCE, 1.0)
    return np.asarray((1 - r) ** 2 / (2 * r))


def reflectance_of(absorption: ArrayLike) -> Floats:
    """Give reflectance factors (…) of F = K/S (…): R = 1 + F - √(F² + 2F), the root below 1; F below 0 counts as 0.

    Computed as 1 / (1 + F + √(F² + 2F)), which is the same and loses no digits where F is large.
    """
    f = np.maximum(np.asarray(absorption, dtype=float), 0.0)
    return np.asarray(1 / (1 + f + np.sqrt(f * f + 2 * f)))


def sensitivity_of(reflectance: ArrayLike) -> Floats:
    """Give |dR/dF| = 2R² / (1 - R²) (…): how much of a change of F an instrument sees; R above 0.95 counts as 0.95."""
    r = np.clip(np.asarray(reflectance, dtype=float), LEAST_REFLECTANCE, 0.95)
    return np.asarray(2 * r * r / (1 - r * r))


def spectra_of(readings: Sequence[Reading]) -> tuple[Spectrum, ...]:
    """Give those of the readings that are spectra."""
    return tuple(reading for reading in readings if isinstance(reading, Spectrum))


def bands_of(spectrum: Spectrum) -> Bands:
    """Give where the values of a spectrum stand."""
    return Bands(spectrum.start_nm, spectrum.step_nm, len(spectrum.reflectance))


def common_bands(spectra: Sequence[Spectrum]) -> Bands:
    """Give bands within the range that all spectra share, by the widest step among them; nothing is extrapolated.

    Spectra with the same bands keep them. Any others share at least 430-650 nm, which every spectrum spans.
    """
    forms = {bands_of(spectrum) for spectrum in spectra}
    if len(forms) == 1:
        return forms.pop()
    step = max(bands.step_nm for bands in forms)
    first = max(bands.start_nm for bands in forms)
    last = min(bands.end_nm for bands in forms)
    return Bands(first, step, int((last - first) / step + 1e-9) + 1)


def on_bands(spectra: Sequence[Spectrum], bands: Bands) -> Floats:
    """Give reflectance factors (spectra × bands), straight between the values measured where the bands are others."""
    points = bands.wavelengths_nm
    rows = [
        spectrum.reflectance
        if bands_of(spectrum) == bands
        else np.interp(points, bands_of(spectrum).wavelengths_nm, spectrum.reflectance)
        for spectrum in spectra
    ]
    return np.array(rows, dtype=float).reshape(-1, bands.number)


def mean_spectrum(readings: Sequence[Reading]) -> Spectrum | None:
    """Give the mean of those readings that are spectra, on the bands that they share; None where none is one."""
    spectra = spectra_of(readings)
    if not spectra:
        return None
    bands = common_bands(spectra)
    mean = on_bands(spectra, bands).mean(axis=0)
    return Spectrum(start_nm=bands.start_nm, step_nm=bands.step_nm, reflectance=tuple(mean.tolist()))


def dye_of(reflectance: ArrayLike, undyed: ArrayLike) -> Floats:
    """Give what dye adds, F - F(undyed) (… × bands), of reflectance factors of the dyed and the undyed yarn.

    It may fall a little below 0 where readings scatter, and is left so: cutting it off would make pale lots stronger.
    """
    return np.asarray(absorption_of(reflectance) - absorption_of(undyed))


def dyed_reflectance(undyed: ArrayLike, dye: ArrayLike) -> Floats:
    """Give reflectance factors (… × bands) of an undyed yarn (reflectance factors) with dye (F) on it."""
    return reflectance_of(absorption_of(undyed) + np.asarray(dye, dtype=float))


def lab_of_reflectance(reflectance: ArrayLike, *, bands: Bands, viewing: Viewing) -> Floats:
    """Give CIELAB (… × 3) of reflectance factors (… × bands) under `viewing`."""
    return lab_of_xyz(xyz_of_spectra(reflectance, bands=bands, viewing=viewing), white=white_point(viewing))
