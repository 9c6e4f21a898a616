"""The fabric as it is seen from far away, at its true angular size: the eye's own average, taken in linear light."""

import math

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.cells import FlatCells
from chartmaker.pictures.shades import SURROUND, LetterColours, decoded, encoded


def size_on_screen_cm(size_cm: float, *, distance_cm: float, eye_cm: float) -> float:
    """Give the size that a thing must be drawn, on a screen `eye_cm` away, to fill the angle that it fills far away."""
    return size_cm * eye_cm / distance_cm


def half_round(cells: FlatCells) -> NDArray[np.uint8]:
    """Give the letters of the half of the round that is seen at once, the middle of the cells laid flat."""
    columns = cells.letters.shape[1]
    seen = math.ceil(columns / 2)
    right = (columns - seen) // 2
    return cells.letters[:, right : right + seen]


def light_from_afar(
    letters: NDArray[np.uint8], colours: LetterColours, *, stitch_px: tuple[float, float]
) -> NDArray[np.float64]:
    """Give linear light (height × width × 3) of stitches of any size, fractions of a pixel too.

    Args:
        letters: letter codes, index (round, column) from the lower right.
        colours: what each letter is painted in.
        stitch_px: width and height of a stitch in pixels.

    Returns:
        As many pixels as the fabric touches from its top left corner on; each is the mean of what it covers, by
        area, the surround where the fabric ends within it. So no light is lost or made.
    """
    seen = letters[::-1, ::-1]
    around = float(decoded(np.array([SURROUND], dtype=np.uint8))[0])
    down, across = _shares(seen.shape[0], stitch_px[1]), _shares(seen.shape[1], stitch_px[0])
    light = colours.linear.astype(float)[seen] - around
    return np.stack([around + down @ light[..., channel] @ across.T for channel in range(3)], axis=-1)


def draw_from_afar(
    letters: NDArray[np.uint8], colours: LetterColours, *, stitch_px: tuple[float, float]
) -> NDArray[np.uint8]:
    """Paint `light_from_afar` as sRGB, shape (height, width, 3)."""
    return encoded(light_from_afar(letters, colours, stitch_px=stitch_px).astype(np.float32))


def _shares(cells: int, size_px: float) -> NDArray[np.float64]:
    """Give how much of each pixel each cell in a line covers, shape (pixels, cells)."""
    pixels = np.arange(max(1, math.ceil(cells * size_px - 1e-9)))[:, None]
    edges = np.arange(cells + 1)[None, :] * size_px
    low, high = np.maximum(pixels, edges[:, :-1]), np.minimum(pixels + 1, edges[:, 1:])
    return np.asarray(np.clip(high - low, 0, None))
