"""Knitted stitches as small ready pictures, so that a whole chart of them is put together by picking, not by drawing.

Each tile is one cell: the stitch's own yarn, and over it the yarn of the stitch above where that lies on top. A tile is
made when it is first asked for; averages are taken in linear light, so that stitches of any size keep their shade.
"""

import math

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.shades import decoded, encoded
from chartmaker.pictures.stitch import knit_tile, leaning_tile, purl_tile

KNIT, PURL, LEANS_RIGHT, LEANS_LEFT = range(4)
"""How a stitch lies; the numbers are a part of the tiles' keys."""
SAMPLES_ACROSS = 14
"""Samples across a stitch that its relief needs before they are averaged."""
SETTLING_TURNS = 4
"""How often what was cut off a white yarn's highlights is given to the rest of its stitch."""
OPAQUE = np.uint32(0xFF000000)


class StitchTiles:
    """The tiles of one size under one set of colours."""

    def __init__(self, rgb: NDArray[np.uint8], *, width: int, height: int, bare: int, relief: float = 1.0) -> None:
        """Take sRGB by code, shape (codes, 3), and the size of a cell in pixels.

        `bare` is the code of no stitch; a `relief` below 1 flattens light and shade.
        """
        self._rgb = rgb
        self._linear = decoded(rgb)
        self._bare = bare
        self._shape = height, width
        pieces = max(1, math.ceil(SAMPLES_ACROSS / width))
        ratio = height / width
        size = width * pieces
        tiles = (
            knit_tile(ratio, size),
            purl_tile(ratio, size),
            leaning_tile(ratio, size, rightwards=True),
            leaning_tile(ratio, size, rightwards=False),
        )
        rows = height * pieces
        # From the bottom up in the relief, from the top down on a screen.
        light = np.stack([tile.light[:rows][::-1] for tile in tiles])
        self._light = np.float32(1 - relief) + np.float32(relief) * light
        self._is_above = np.stack([tile.is_above[:rows][::-1] for tile in tiles])
        self._pieces = pieces
        codes = len(rgb)
        self._slots = np.full(len(tiles) * codes * codes, -1, dtype=np.int32)
        self._tiles = np.empty((0, height, width), dtype=np.uint32)

    def picture(
        self, codes: NDArray[np.uint8], above: NDArray[np.uint8], lies: NDArray[np.uint8]
    ) -> NDArray[np.uint32]:
        """Put cells together, all three of shape (lines, places): the stitch, the one above it, and how it lies.

        Returns:
            Pixels as 0xffRRGGBB, shape (lines × height, places × width).
        """
        count = len(self._rgb)
        over = np.where(above == self._bare, codes, above)
        keys = (lies.astype(np.int32) * count + over) * count + codes
        slots = self._slots[keys]
        if slots.size and slots.min() < 0:
            self._make(np.unique(keys[slots < 0]))
            slots = self._slots[keys]
        lines, places = codes.shape
        height, width = self._shape
        cells = self._tiles[slots]
        return np.ascontiguousarray(cells.transpose(0, 2, 1, 3)).reshape(lines * height, places * width)

    def _make(self, keys: NDArray[np.int32]) -> None:
        """Make the tiles of keys that have none yet."""
        count = len(self._rgb)
        rest, codes = np.divmod(keys, count)
        lies, above = np.divmod(rest, count)
        light = np.where((codes == self._bare)[:, None, None], np.float32(1), self._light[lies])
        is_above = self._is_above[lies] & (codes != self._bare)[:, None, None]
        yarn = np.where(is_above[..., None], self._linear[above][:, None, None], self._linear[codes][:, None, None])
        light = shown_light(light, yarn)
        height, width = self._shape
        pieces = self._pieces
        parts = (yarn * light[..., None]).reshape(len(keys), height, pieces, width, pieces, 3)
        made = packed(encoded(parts.mean(axis=(2, 4), dtype=np.float32)))
        self._slots[keys] = len(self._tiles) + np.arange(len(keys), dtype=np.int32)
        self._tiles = np.concatenate([self._tiles, made])


def shown_light(light: NDArray[np.float32], yarn: NDArray[np.float32]) -> NDArray[np.float32]:
    """Ease the highlights of light yarns so that nothing is brighter than a screen can show, each tile's mean kept.

    Args:
        light: of each sample, shape (tiles, rows, columns).
        yarn: linear light of the yarn there, the same shape with a last axis of 3.
    """
    headroom = np.maximum(1 / np.maximum(yarn.max(axis=3), np.float32(1e-3)) - 1, np.float32(1e-3))
    excess = np.maximum(light - 1, 0)
    eased = np.where(light > 1, 1 + headroom * (1 - np.exp(-excess / headroom)), light)
    wanted = light.mean(axis=(1, 2), keepdims=True)
    for _ in range(SETTLING_TURNS):
        eased = np.minimum(eased * (wanted / eased.mean(axis=(1, 2), keepdims=True)), 1 + headroom)
    return np.asarray(eased, dtype=np.float32)


def packed(rgb: NDArray[np.uint8]) -> NDArray[np.uint32]:
    """Give sRGB (… × 3) as 0xffRRGGBB."""
    wide = rgb.astype(np.uint32)
    return np.asarray(OPAQUE | wide[..., 0] << 16 | wide[..., 1] << 8 | wide[..., 2], dtype=np.uint32)
