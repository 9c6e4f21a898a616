"""Colour measurements of a lot, each as the instrument or the eye gave it; `shade` makes CIELAB of them."""

import re
from dataclasses import dataclass
from typing import ClassVar

from chartmaker.model.bounds import require_one_of, require_within
from chartmaker.model.settings import Viewing

SOURCES = ("instrument", "photo")
"""What CIELAB may come from: an instrument, or a photo that was corrected by a target beside the lot."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Spectrum:
    """Reflectance factors at equal steps of wavelength."""

    kind: ClassVar[str] = "spectrum"
    start_nm: float
    step_nm: float
    reflectance: tuple[float, ...]
    """Factors, 1 for the perfect white; a whitened wool may pass it a little."""

    def __post_init__(self) -> None:
        require_within("start_nm", self.start_nm, 300, 500)
        require_within("step_nm", self.step_nm, 1, 20)
        if not 8 <= len(self.reflectance) <= 600:
            raise ValueError(f"a spectrum of {len(self.reflectance)} values is outside 8 to 600")
        for value in self.reflectance:
            require_within("a reflectance factor", value, 0, 2)
        if self.end_nm < 650 or self.end_nm > 900 or self.start_nm > 430:
            raise ValueError(f"a spectrum from {self.start_nm:g} to {self.end_nm:g} nm does not span 430 to 650 nm")

    @property
    def end_nm(self) -> float:
        """The last wavelength."""
        return self.start_nm + self.step_nm * (len(self.reflectance) - 1)


@dataclass(frozen=True, slots=True, kw_only=True)
class LabReading:
    """CIELAB under the viewing conditions that it was measured for."""

    kind: ClassVar[str] = "lab"
    lab: tuple[float, float, float]
    viewing: Viewing = Viewing()
    source: str = "instrument"
    """One of `SOURCES`."""

    def __post_init__(self) -> None:
        require_one_of("source", self.source, SOURCES)
        require_within("L*", self.lab[0], 0, 110)
        for name, value in zip(("a*", "b*"), self.lab[1:], strict=True):
            require_within(name, value, -200, 200)


@dataclass(frozen=True, slots=True, kw_only=True)
class XyzReading:
    """CIE tristimulus values, 0 to 100, under the viewing conditions that they were measured for."""

    kind: ClassVar[str] = "xyz"
    xyz: tuple[float, float, float]
    viewing: Viewing = Viewing()

    def __post_init__(self) -> None:
        for name, value in zip("XYZ", self.xyz, strict=True):
            require_within(name, value, 0, 200)


@dataclass(frozen=True, slots=True, kw_only=True)
class ScreenReading:
    """An sRGB colour (IEC 61966-2-1) picked from a screen: approximate, and marked so wherever it is shown."""

    kind: ClassVar[str] = "srgb"
    hex: str

    def __post_init__(self) -> None:
        if not re.fullmatch(r"#[0-9a-fA-F]{6}", self.hex):
            raise ValueError(f"hex is {self.hex!r}; it looks like '#8a3b2f'")


READING_KINDS = {cls.kind: cls for cls in (Spectrum, LabReading, XyzReading, ScreenReading)}
"""The reading classes by the word that the file uses."""

Reading = Spectrum | LabReading | XyzReading | ScreenReading
