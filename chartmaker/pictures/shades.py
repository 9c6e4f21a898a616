"""The colour of each letter on the screen, in its shade or in the grey of its value."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.bounds import MOST_LETTERS
from chartmaker.shade.lot_shade import LotShade

SURROUND = 119
"""sRGB grey of value 50: the neutral surround that shades are judged against (ISO 3664 asks for a neutral one)."""
UNSHADED_GREYS = (212, 150, 92)
"""Greys of letters without a shade, in turn, so that the pattern shows although no colour is known."""


@dataclass(frozen=True, slots=True, eq=False)
class LetterColours:
    """What to paint each letter in, by its code."""

    rgb: NDArray[np.uint8]
    """sRGB of every letter code, shape (256, 3); codes that are no letter have the surround."""
    hatched: NDArray[np.bool_]
    """Whether the letter has no shade and is hatched, shape (256,)."""

    @property
    def linear(self) -> NDArray[np.float32]:
        """The same as linear light, 0 to 1, shape (256, 3)."""
        return decoded(self.rgb)


def shade_colours(shades: Mapping[str, LotShade | None]) -> LetterColours:
    """Take the screen colour of each letter's shade."""
    return _colours({letter: shade.srgb if shade else None for letter, shade in shades.items()})


def value_colours(shades: Mapping[str, LotShade | None]) -> LetterColours:
    """Take the neutral grey that has each letter's value."""
    return _colours({letter: (grey_of_value(shade.value),) * 3 if shade else None for letter, shade in shades.items()})


def grey_of_value(value: float) -> int:
    """Give the sRGB grey, 0 to 255, of CIE L* (inverse of CIE 15's L*; IEC 61966-2-1 for the coding)."""
    cube_root = (value + 16) / 116
    luminance = cube_root**3 if value > 8 else value * 27 / 24389
    return int(encoded(np.array([luminance], dtype=np.float32))[0])


def decoded(srgb: NDArray[np.uint8]) -> NDArray[np.float32]:
    """Turn sRGB, 0 to 255, into linear light, 0 to 1 (IEC 61966-2-1)."""
    coded = np.asarray(srgb, dtype=np.float32) / 255
    low = coded / np.float32(12.92)
    return np.where(coded <= 0.04045, low, ((coded + 0.055) / 1.055) ** 2.4).astype(np.float32)


def encoded(linear: NDArray[np.float32]) -> NDArray[np.uint8]:
    """Turn linear light, 0 to 1 and clipped to it, into sRGB, 0 to 255 (IEC 61966-2-1)."""
    light = np.clip(linear, 0, 1)
    coded = np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)
    return np.asarray(np.rint(coded * 255), dtype=np.uint8)


def _colours(known: Mapping[str, tuple[int, ...] | None]) -> LetterColours:
    rgb = np.full((256, 3), SURROUND, dtype=np.uint8)
    hatched = np.zeros(256, dtype=np.bool_)
    for code in range(MOST_LETTERS):
        srgb = known.get(chr(ord("A") + code))
        hatched[code] = srgb is None
        rgb[code] = (UNSHADED_GREYS[code % len(UNSHADED_GREYS)],) * 3 if srgb is None else srgb
    return LetterColours(rgb, hatched)
