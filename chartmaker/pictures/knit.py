"""The fabric flat, as knitting: every stitch the V of a knit stitch, or a bump where it is purled."""

import math

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.cells import NO_STITCH, FlatCells
from chartmaker.pictures.flat import averaged
from chartmaker.pictures.frame import Frame
from chartmaker.pictures.shades import SURROUND, LetterColours, encoded
from chartmaker.pictures.stitch import StitchTile, knit_tile, purl_tile

SAMPLES_PER_STITCH = 14
"""Samples across a stitch that the relief needs before they are averaged."""
MOST_PIECES = 4
SMALLEST_TILE, LARGEST_TILE = 8, 160
UNEVENNESS = 0.05
"""Spread of brightness from stitch to stitch, as hand knitting has it."""
ROWS_AT_ONCE = 32


def draw_knit(cells: FlatCells, colours: LetterColours, frame: Frame, *, height_per_width: float) -> NDArray[np.uint8]:
    """Paint the knitted surface, round 1 at the bottom and stitch 1 at the right; shape (height, width, 3)."""
    pieces = min(MOST_PIECES, max(1, math.ceil(SAMPLES_PER_STITCH / frame.cell_px)))
    seen = np.full((frame.height_px, frame.width_px, 3), SURROUND, dtype=np.uint8)
    fabric = seen[:, frame.left_px : frame.left_px + frame.fabric_px]
    surface = Surface(cells, colours, height_per_width=height_per_width, size=tile_size(frame.cell_px * pieces))
    columns, rounds = frame.columns - frame.columns_at(pieces), frame.rounds_at(pieces)
    for top in range(0, frame.height_px, ROWS_AT_ONCE):
        rows = rounds[top * pieces : (top + ROWS_AT_ONCE) * pieces]
        fabric[top : top + ROWS_AT_ONCE] = encoded(averaged(surface.light_at(rows[:, None], columns[None, :]), pieces))
    return seen


def tile_size(samples_per_stitch: float) -> int:
    """Give the pixels across that a stitch's relief is worked out at."""
    return min(LARGEST_TILE, max(SMALLEST_TILE, math.ceil(samples_per_stitch)))


class Surface:
    """The knitted surface, which can be asked for its light at any point."""

    def __init__(self, cells: FlatCells, colours: LetterColours, *, height_per_width: float, size: int) -> None:
        """Take the cells and their colours; `size` is the pixels across of a stitch's relief."""
        self._cells = cells
        self._linear = colours.linear
        tiles: tuple[StitchTile, StitchTile] = knit_tile(height_per_width, size), purl_tile(height_per_width, size)
        self._light = np.stack([tile.light for tile in tiles])
        self._is_above = np.stack([tile.is_above for tile in tiles])
        self._evenness = unevenness(cells.letters.shape)

    def light_at(
        self, up: NDArray[np.float64], leftwards: NDArray[np.float64], *, above: NDArray[np.intp] | None = None
    ) -> NDArray[np.float32]:
        """Give linear light at points of the fabric.

        Args:
            up: rounds up from the cast-on edge, with fractions.
            leftwards: stitches from the right edge, with fractions; broadcast against `up`.
            above: column of the stitch above each point, like `leftwards`; the same column where left out.

        Returns:
            Linear light, the broadcast shape with a last axis of 3.
        """
        rounds, columns = np.floor(up).astype(np.intp), np.floor(leftwards).astype(np.intp)
        _, tall, wide = self._light.shape
        row = ((up - rounds) * tall).astype(np.intp)
        column = wide - 1 - ((leftwards - columns) * wide).astype(np.intp)
        purl = self._cells.purl[rounds, columns].view(np.uint8)
        is_above = self._is_above[purl, row, column] & (rounds + 1 < len(self._cells.letters))
        top = rounds + is_above
        place = columns if above is None else np.where(is_above, above, columns)
        here, codes = self._cells.letters[rounds, columns], self._cells.letters[top, place]
        codes = np.where(codes == NO_STITCH, here, codes)
        light = self._light[purl, row, column] * self._evenness[top, place]
        light = np.where(here == NO_STITCH, np.float32(1), light)
        return np.asarray(self._linear[np.where(here == NO_STITCH, here, codes)] * light[..., None])


def unevenness(shape: tuple[int, ...]) -> NDArray[np.float32]:
    """Give each stitch a brightness of its own near 1; the same for the same shape."""
    return np.random.default_rng(1).normal(1, UNEVENNESS, shape).clip(0.8, 1.2).astype(np.float32)
