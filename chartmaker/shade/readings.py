"""Readings to CIELAB under one viewing: spectra integrated, Lab, XYZ and screen colours adapted where they must be."""

from collections.abc import Hashable, Sequence
from typing import assert_never

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.reading import LabReading, Reading, ScreenReading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing
from chartmaker.shade.adaptation import adapted
from chartmaker.shade.lab import lab_of_xyz, xyz_of_lab
from chartmaker.shade.screen import SRGB_WHITE, xyz_of_hex
from chartmaker.shade.weights import Bands, white_point, xyz_of_spectra

SCREEN_VIEWING = Viewing(illuminant="D65", observer="2")
"""What sRGB is defined for (IEC 61966-2-1:1999)."""
_RESTS_ON_OF_KIND = {"spectrum": "spectrum", "lab": "lab", "xyz": "xyz", "srgb": "approximate"}


def lab_of_readings(readings: Sequence[Reading], viewing: Viewing) -> NDArray[np.float64]:
    """Give L*, a*, b* (n × 3) of n readings under `viewing`, in their order; readings of one form go in one stack."""
    stacks: dict[Hashable, list[int]] = {}
    for index, reading in enumerate(readings):
        stacks.setdefault(_form(reading), []).append(index)
    lab = np.empty((len(readings), 3))
    for indices in stacks.values():
        lab[indices] = _lab_of_stack([readings[index] for index in indices], viewing)
    return lab


def rests_on(reading: Reading) -> str:
    """Give what a reading lets a shade rest on, a word of `RESTS_ON`."""
    is_photo = isinstance(reading, LabReading) and reading.source == "photo"
    return "photo" if is_photo else _RESTS_ON_OF_KIND[reading.kind]


def is_adapted(reading: Reading, viewing: Viewing) -> bool:
    """Tell whether a reading was taken under other conditions than `viewing`; a spectrum fits any."""
    match reading:
        case Spectrum():
            return False
        case LabReading() | XyzReading():
            return reading.viewing != viewing
        case ScreenReading():
            return viewing != SCREEN_VIEWING
    assert_never(reading)


def _form(reading: Reading) -> Hashable:
    """Give what readings must share to be computed in one stack."""
    match reading:
        case Spectrum():
            return Bands(reading.start_nm, reading.step_nm, len(reading.reflectance))
        case LabReading() | XyzReading():
            return reading.kind, reading.viewing
        case ScreenReading():
            return reading.kind
    assert_never(reading)


def _lab_of_stack(stack: Sequence[Reading], viewing: Viewing) -> NDArray[np.float64]:
    """Give L*, a*, b* (n × 3) of readings of one form."""
    match stack[0]:
        case Spectrum() as first:
            bands = Bands(first.start_nm, first.step_nm, len(first.reflectance))
            spectra = np.array([reading.reflectance for reading in stack if isinstance(reading, Spectrum)])
            xyz = xyz_of_spectra(spectra, bands=bands, viewing=viewing)
            return lab_of_xyz(xyz, white=white_point(viewing))
        case LabReading() as first:
            lab = np.array([reading.lab for reading in stack if isinstance(reading, LabReading)], dtype=float)
            if first.viewing == viewing:
                return lab
            white = white_point(first.viewing)
            return _seen_under(viewing, xyz_of_lab(lab, white=white), from_white=white)
        case XyzReading() as first:
            xyz = np.array([reading.xyz for reading in stack if isinstance(reading, XyzReading)], dtype=float)
            return _seen_under(viewing, xyz, from_white=white_point(first.viewing))
        case ScreenReading():
            xyz = np.array([xyz_of_hex(reading.hex) for reading in stack if isinstance(reading, ScreenReading)])
            return _seen_under(viewing, xyz, from_white=SRGB_WHITE)
    assert_never(stack[0])


def _seen_under(viewing: Viewing, xyz: NDArray[np.float64], *, from_white: ArrayLike) -> NDArray[np.float64]:
    """Give L*, a*, b* (n × 3) of XYZ that was taken under a white, adapted to the white of `viewing`."""
    white = white_point(viewing)
    return lab_of_xyz(adapted(xyz, from_white=from_white, to_white=white), white=white)
