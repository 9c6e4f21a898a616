"""The fabric of a hat as small pictures of its stitches, in every size that a turned surface may need.

A stitch that is seen aslant covers fewer pixels than one in front: each tile is kept halved again and again, across and
upwards apart, so that every pixel takes one value of about its own size, and nothing flickers or makes moiré.
"""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.layout import Fabric
from chartmaker.model.design import Design
from chartmaker.pictures.cells import NO_STITCH, FlatCells, purl_of_repeat
from chartmaker.pictures.knit import unevenness
from chartmaker.pictures.stitch import knit_tile, purl_tile
from chartmaker.pictures.stitch_tiles import shown_light

RIGHT, WRONG = 0, 1
"""The faces of the fabric."""
LARGEST = 64
"""Most pixels of a tile, each way."""
PIECES = 4
"""Samples of the relief for a pixel of a tile, each way."""

Numbers = NDArray[np.float32]


@dataclass(frozen=True, slots=True, eq=False)
class Texels:
    """Where pixels find their colour: parts of a tile that hold whichever stitch comes there."""

    start: NDArray[np.int32]
    """Place of the first value of tile 0, in the row of values that is wanted."""
    step: NDArray[np.int32]
    """Values to a tile."""
    across: Numbers
    """Values in a row of it."""


class FabricTiles:
    """The stitches of a hat under one set of colours, in tiles of one size and its halves."""

    def __init__(
        self, cells: FlatCells, counts: NDArray[np.intp], linear: Numbers, *, relief: "Relief", stitch_cm: float
    ) -> None:
        """Take rounds set flush (`flush_cells`), their counts, and the linear light of each code, shape (256, 3)."""
        self.stitch_cm = stitch_cm
        rows = len(counts)
        above = _above(cells, counts)
        keys = _keys(cells, above)
        kinds, slots = np.unique(keys, return_inverse=True)
        self.slots: NDArray[np.int32] = slots.reshape(-1).astype(np.int32)
        self.rows, self.columns = rows, cells.letters.shape[1]
        even = unevenness(cells.letters.shape) if relief.is_knitted else np.ones(cells.letters.shape, dtype=np.float32)
        self.evenness: Numbers = np.tile(even.reshape(-1), 2)
        tiles, is_above = _tiles(kinds, linear, relief)
        cell = above.reshape(-1).astype(np.int32)
        self.above: NDArray[np.int32] = np.concatenate([cell, cell + np.int32(cells.letters.size)])
        """Where in `evenness` the stitch above each one stands, whose legs reach into its tile."""
        self.wide_levels = int(math.log2(tiles.shape[2])) + 1
        self.tall_levels = int(math.log2(tiles.shape[1])) + 1
        self.relief = relief
        self._kinds = len(kinds)
        levels = [_halved(tiles, up, across) for up in range(self.tall_levels) for across in range(self.wide_levels)]
        sizes = [level.shape[0] * level.shape[1] * level.shape[2] for level in levels]
        self._starts = np.concatenate([[0], np.cumsum(sizes)[:-1]]).astype(np.int32)
        self.light: Numbers = np.concatenate([level.reshape(-1, 3) for level in levels])
        """Linear light of every value of every tile."""
        self.is_above: NDArray[np.bool_] = is_above.reshape(-1)
        """Whether the yarn of the stitch above lies on top; of the values of whole tiles, which come first."""

    def cell_rows(self, row: NDArray[np.int32], is_wrong: NDArray[np.bool_]) -> NDArray[np.int32]:
        """Give where the stitches of rounds begin in `slots` and `evenness`, on either face."""
        return np.asarray((row + is_wrong * np.int32(self.rows)) * np.int32(self.columns), dtype=np.int32)

    def texels(self, part: Numbers, *, wide: Numbers, tall: Numbers) -> Texels:
        """Choose the size of tile for pixels.

        Args:
            part: how far up its round each pixel is, 0 to 1.
            wide: stitch widths that it covers.
            tall: round heights that it covers.
        """
        across = _level(wide * np.float32(self.relief.width), self.wide_levels)
        up = _level(tall * np.float32(self.relief.height), self.tall_levels)
        width = np.int32(self.relief.width) >> across
        height = np.int32(self.relief.height) >> up
        line = np.minimum((part * height).astype(np.int32), height - 1)
        start = self._starts[up * np.int32(self.wide_levels) + across] + line * width
        return Texels(start.astype(np.int32), width * height, width.astype(np.float32))


@dataclass(frozen=True, slots=True)
class Relief:
    """How finely a stitch is drawn: values across and up, both powers of 2, and whether its yarn shows."""

    width: int
    height: int
    height_per_width: float
    is_knitted: bool

    @classmethod
    def of(cls, stitch_px: float, *, height_per_width: float, is_knitted: bool) -> "Relief":
        """Choose what a stitch of so many pixels needs."""
        if not is_knitted:
            return cls(1, 1, height_per_width, is_knitted=False)
        return cls(_power(stitch_px), _power(stitch_px * height_per_width), height_per_width, is_knitted=True)


def flush_cells(design: Design, fabric: Fabric) -> FlatCells:
    """Set every round flush, stitch 1 in column 0, with nothing beyond its last stitch."""
    shape = (fabric.rounds, max(fabric.counts))
    letters = np.full(shape, NO_STITCH, dtype=np.uint8)
    purl = np.zeros(shape, dtype=np.bool_)
    for number, (band, line) in enumerate(design.rounds()):
        count = fabric.counts[number]
        letters[number, :count] = fabric.letters[fabric.round(number)]
        purl[number, :count] = np.tile(purl_of_repeat(band.texture, len(line)), band.times)
    return FlatCells(letters, purl)


def _above(cells: FlatCells, counts: NDArray[np.intp]) -> NDArray[np.intp]:
    """Give the flat place of the stitch above each cell, of the cell itself where there is none: (rounds, columns)."""
    rows, columns = cells.letters.shape
    next_row = np.minimum(np.arange(rows) + 1, rows - 1)
    share = (np.arange(columns) + 0.5)[None, :] / counts[:, None]
    column = np.minimum((share * counts[next_row][:, None]).astype(np.intp), columns - 1)
    place = next_row[:, None] * columns + column
    itself = np.arange(rows * columns).reshape(rows, columns)
    return np.where(cells.letters.reshape(-1)[place] == NO_STITCH, itself, place)


def _keys(cells: FlatCells, above: NDArray[np.intp]) -> NDArray[np.int32]:
    """Give a number to what each cell looks like, on the right face and on the wrong one: (2, rounds, columns)."""
    codes = cells.letters.reshape(-1)[above].astype(np.int32) * 256 + cells.letters
    purl = cells.purl.astype(np.int32)
    return np.stack([purl * 65536 + codes, (1 - purl) * 65536 + codes])


def _tiles(kinds: NDArray[np.int32], linear: Numbers, relief: Relief) -> tuple[Numbers, NDArray[np.bool_]]:
    """Draw a tile for each kind of cell, lines from the bottom up.

    Returns:
        Its linear light, (kinds, height, width, 3), and where the stitch above lies on top, (kinds, height, width).
    """
    purl, above, code = kinds // 65536, kinds // 256 % 256, kinds % 256
    if not relief.is_knitted:
        return linear[code][:, None, None, :].astype(np.float32), np.zeros((len(kinds), 1, 1), dtype=np.bool_)
    size = relief.width * PIECES
    drawn = [make(relief.height_per_width, size) for make in (knit_tile, purl_tile)]
    tall = relief.height * PIECES
    lines = ((np.arange(tall) + 0.5) / tall * drawn[0].light.shape[0]).astype(np.intp)
    light = np.stack([tile.light[lines] for tile in drawn])[purl]
    is_above = np.stack([tile.is_above[lines] for tile in drawn])[purl]
    yarn = np.where(is_above[..., None], linear[above][:, None, None], linear[code][:, None, None])
    seen = yarn * shown_light(light, yarn)[..., None]
    middle = slice(PIECES // 2, None, PIECES)
    return _averaged(seen.astype(np.float32), PIECES, PIECES), is_above[:, middle, middle]


def _halved(tiles: Numbers, up: int, across: int) -> Numbers:
    return _averaged(tiles, 2**up, 2**across)


def _averaged(tiles: Numbers, up: int, across: int) -> Numbers:
    count, height, width, _ = tiles.shape
    blocks = tiles.reshape(count, height // up, up, width // across, across, 3)
    return np.asarray(blocks.mean(axis=(2, 4), dtype=np.float32))


def _level(values: Numbers, levels: int) -> NDArray[np.int32]:
    """Give how often a tile is halved so that a pixel covers about one of its values."""
    wanted = np.log2(np.maximum(values, np.float32(1))) + np.float32(0.4)
    return np.minimum(wanted.astype(np.int32), np.int32(levels - 1))


def _power(pixels: float) -> int:
    return int(2 ** min(math.log2(LARGEST), max(0, math.ceil(math.log2(max(pixels, 1)) - 0.2))))
