"""Colours for screens and paper: sRGB of IEC 61966-2-1:1999, with what a screen cannot show marked."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.shade.adaptation import adaptation_matrix
from chartmaker.shade.lab import xyz_of_lab

PRIMARIES_XY = ((0.64, 0.33), (0.30, 0.60), (0.15, 0.06))
"""Chromaticities of red, green and blue (IEC 61966-2-1:1999, table 1)."""
WHITE_XY = (0.3127, 0.3290)
"""Chromaticity of the white, D65 for the 2° observer (the same table)."""
SHOWN_TOLERANCE = 0.5 / 255
"""How far an encoded value may lie outside 0 to 1 and still be shown: rounding to 8 bits hides it."""


def _xyz_of_xy(x: float, y: float) -> NDArray[np.float64]:
    """Give XYZ with Y = 1 of a chromaticity."""
    return np.array([x / y, 1.0, (1 - x - y) / y])


def _matrix_from_primaries() -> NDArray[np.float64]:
    """Give the matrix from linear RGB to XYZ (Y 0 to 100) that the primaries and the white determine.

    The standard prints it to four decimals; unrounded, white comes back as exactly 255, 255, 255.
    """
    primaries = np.column_stack([_xyz_of_xy(x, y) for x, y in PRIMARIES_XY])
    return np.asarray(100 * primaries * np.linalg.solve(primaries, _xyz_of_xy(*WHITE_XY)))


SRGB_WHITE = 100 * _xyz_of_xy(*WHITE_XY)
"""XYZ of the screen's white, Y = 100."""
XYZ_OF_RGB = _matrix_from_primaries()
"""Linear RGB (0 to 1) to XYZ (0 to 100)."""
RGB_OF_XYZ = np.linalg.inv(XYZ_OF_RGB)
"""XYZ (0 to 100) to linear RGB (0 to 1)."""
for _kept in (SRGB_WHITE, XYZ_OF_RGB, RGB_OF_XYZ):
    _kept.flags.writeable = False


def encoded(linear: ArrayLike) -> NDArray[np.float64]:
    """Encode linear RGB (any shape, 1 is white) as the standard does; below 0 the straight line goes on."""
    linear = np.asarray(linear, dtype=float)
    curve = 1.055 * np.maximum(linear, 0.0031308) ** (1 / 2.4) - 0.055
    return np.where(linear <= 0.0031308, 12.92 * linear, curve)


def decoded(values: ArrayLike) -> NDArray[np.float64]:
    """Give the linear RGB of encoded values (any shape, 0 to 1)."""
    values = np.asarray(values, dtype=float)
    return np.where(values <= 0.04045, values / 12.92, ((np.maximum(values, 0.04045) + 0.055) / 1.055) ** 2.4)


def screen_of_lab(lab: ArrayLike, *, white: ArrayLike) -> tuple[NDArray[np.uint8], NDArray[np.bool_]]:
    """Give sRGB (… × 3, 0 to 255) of CIELAB (… × 3) under a white, and (…) whether a screen cannot show it.

    The colour is adapted to the screen's white by CAT16. What is out of gamut by more than `SHOWN_TOLERANCE` is
    clipped channel by channel and marked.
    """
    to_screen = RGB_OF_XYZ @ adaptation_matrix(from_white=white, to_white=SRGB_WHITE)
    values = encoded(xyz_of_lab(lab, white=white) @ to_screen.T)
    is_out = ((values < -SHOWN_TOLERANCE) | (values > 1 + SHOWN_TOLERANCE)).any(axis=-1)
    return np.rint(255 * np.clip(values, 0, 1)).astype(np.uint8), np.asarray(is_out)


def xyz_of_hex(text: str) -> NDArray[np.float64]:
    """Give XYZ (3, Y 0 to 100) of a colour "#rrggbb", seen on a screen: under `SRGB_WHITE`.

    Raises ValueError where the six digits are not hexadecimal.
    """
    rgb = np.frombuffer(bytes.fromhex(text.removeprefix("#")), dtype=np.uint8)
    xyz: NDArray[np.float64] = XYZ_OF_RGB @ decoded(rgb / 255)
    return xyz


def grey_of(value: ArrayLike) -> NDArray[np.uint8]:
    """Give the sRGB grey (any shape, 0 to 255) that has this value, CIE L* 0 to 100; beyond it, black or white."""
    lab = np.zeros((*np.shape(value), 3))
    lab[..., 0] = value
    luminance = xyz_of_lab(lab, white=SRGB_WHITE)[..., 1] / 100
    return np.rint(255 * np.clip(encoded(luminance), 0, 1)).astype(np.uint8)
