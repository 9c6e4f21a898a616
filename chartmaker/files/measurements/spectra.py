"""Columns of numbers to reflectance factors: equal steps, percent or factor, and small slips of instruments."""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

LARGEST_FACTOR = 1.2
"""Factors above it are none: even a brightened white stays below; values above it are percent. Common practice, no
source: a yarn that reflects at most 1.2 % in every band would be taken for a factor."""
MOST_BELOW_ZERO = 0.02
"""A dark sample may read a little below nothing; a factor further below is refused. Common practice, no source."""
_STEP_SLACK_NM = 0.02
"""How far wavelengths may stand off equal steps, being rounded in a heading."""


@dataclass(frozen=True, slots=True)
class Scale:
    """What stands for the perfect white, and why that is thought."""

    white: float
    sentence: str


def equal_steps(wavelengths_nm: Sequence[float]) -> tuple[float, float]:
    """Give the first wavelength and the step. Raises ValueError where the steps are not equal."""
    start_nm = wavelengths_nm[0]
    step_nm = (wavelengths_nm[-1] - start_nm) / (len(wavelengths_nm) - 1)
    for index, nm in enumerate(wavelengths_nm):
        if abs(nm - start_nm - index * step_nm) > _STEP_SLACK_NM * max(1, index):
            begin = ", ".join(f"{each:g}" for each in wavelengths_nm[max(0, index - 2) : index + 2])
            raise ValueError(f"the wavelengths do not stand at equal steps: … {begin} …")
    return start_nm, round(step_nm, 6)


def scale_of(spectra: Iterable[Sequence[float]], *, norm: float | None, largest: float = LARGEST_FACTOR) -> Scale:
    """Decide between percent and factor for a table's spectra, by what the file says, else by the largest value."""
    if norm is not None:
        return Scale(norm, _told_norm(norm))
    highest = max(max(values) for values in spectra)
    return Scale(100.0, _percent(highest)) if highest > largest else Scale(1.0, _factor(highest))


def _told_norm(norm: float) -> str:
    return f"reflectance is told to be {norm:g} for the perfect white"


def _percent(highest: float) -> str:
    return f"reflectance is taken for percent: the largest value is {highest:.4g}"


def _factor(highest: float) -> str:
    return f"reflectance is taken for a factor: the largest value is {highest:.4g}"


def factors_from(values: Sequence[float], white: float) -> tuple[tuple[float, ...], str]:
    """Give reflectance factors, those a little below 0 as 0, with a sentence where there are such.

    Raises ValueError where one is further below 0.
    """
    factors = [round(value / white, 9) for value in values]
    lowest = min(factors)
    if lowest < -MOST_BELOW_ZERO:
        raise ValueError(f"a reflectance factor is {lowest:g}, below 0")
    sentence = "reflectance a little below 0 is taken for 0" if lowest < 0 else ""
    return tuple(max(0.0, factor) for factor in factors), sentence


def lab_of_lch(lightness: float, chroma: float, hue_degrees: float) -> tuple[float, float, float]:
    """Give L*, a*, b* of L*, C*ab and the hue angle, in degrees (CIE 15). Raises ValueError for a negative chroma."""
    if chroma < 0:
        raise ValueError(f"C* is {chroma:g}, below 0")
    turned = math.radians(hue_degrees)
    return lightness, round(chroma * math.cos(turned), 9) + 0.0, round(chroma * math.sin(turned), 9) + 0.0
