"""The undyed base of a lot: the spectrum from which what its dye adds is reckoned."""

from chartmaker.model.palette import Lot, Palette
from chartmaker.model.reading import Spectrum
from chartmaker.shade.strength import common_bands, on_bands, spectra_of


def undyed_of(palette: Palette, lot: Lot) -> Spectrum | None:
    """Give the spectrum of a lot's undyed yarn, or None where none was measured.

    It is the yarn's reading; else the mean of a lot of the same yarn that saw no bath. A lot that names no yarn takes
    the only one of the palette that has a spectrum.
    """
    if lot.yarn is None:
        measured = [yarn.reading for yarn in palette.yarns if isinstance(yarn.reading, Spectrum)]
        return measured[0] if len(measured) == 1 else None
    yarn = palette.yarn(lot.yarn)
    if yarn is not None and isinstance(yarn.reading, Spectrum):
        return yarn.reading
    for other in palette.lots:
        if other.yarn == lot.yarn and other.source is None and (spectra := spectra_of(other.readings)):
            return mean_spectrum(spectra)
    return None


def mean_spectrum(spectra: tuple[Spectrum, ...]) -> Spectrum:
    """Give the mean of at least one spectrum, on their common bands."""
    bands = common_bands(spectra)
    mean = on_bands(spectra, bands).mean(axis=0)
    return Spectrum(start_nm=bands.start_nm, step_nm=bands.step_nm, reflectance=tuple(mean.tolist()))
