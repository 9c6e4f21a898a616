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
from chartmaker.model.stitches import Shaping
from chartmaker.pictures.cells import NO_STITCH, purl_of_repeat
from chartmaker.pictures.knit import unevenness
from chartmaker.pictures.stitch import StitchTile, knit_tile, leaning_tile, purl_tile
from chartmaker.pictures.stitch_tiles import KNIT, LEANS_LEFT, LEANS_RIGHT, PURL, shown_light

RIGHT, WRONG = 0, 1
"""The faces of the fabric."""
LARGEST = 64
"""Most pixels of a tile, each way."""
PIECES = 4
"""Samples of the relief for a pixel of a tile, each way."""

Numbers = NDArray[np.float32]

_LIES = np.full(max(Shaping) + 1, KNIT, dtype=np.uint8)
_LIES[Shaping.K2TOG], _LIES[Shaping.SSK] = LEANS_RIGHT, LEANS_LEFT


@dataclass(frozen=True, slots=True, eq=False)
class FlushCells:
    """Every round flush, stitch 1 in column 0: arrays of shape (rounds, stitches of the widest)."""

    codes: NDArray[np.uint8]
    """Which colour each stitch has, by letter if not otherwise; `NO_STITCH` beyond the last of a round."""
    lies: NDArray[np.uint8]
    """How each lies on the right side, as `stitch_tiles` numbers it."""
    counts: NDArray[np.intp]
    """Stitches of each round."""


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

    def __init__(self, cells: FlushCells, linear: Numbers, *, relief: "Relief", stitch_cm: float) -> None:
        """Take the stitches and the linear light of each code, shape (256, 3)."""
        self.stitch_cm = stitch_cm
        rows = len(cells.counts)
        above = _above(cells)
        keys = _keys(cells, above)
        kinds, slots = np.unique(keys, return_inverse=True)
        self.slots: NDArray[np.int32] = slots.reshape(-1).astype(np.int32)
        self.rows, self.columns = rows, cells.codes.shape[1]
        even = unevenness(cells.codes.shape) if relief.is_knitted else np.ones(cells.codes.shape, dtype=np.float32)
        self.evenness: Numbers = np.tile(even.reshape(-1), 2)
        tiles, is_above = _tiles(kinds, linear, relief)
        cell = above.reshape(-1).astype(np.int32)
        self.above: NDArray[np.int32] = np.concatenate([cell, cell + np.int32(cells.codes.size)])
        """Where in `evenness` the stitch above each one stands, whose legs reach into its tile."""
        self.wide_levels = int(math.log2(tiles.shape[2])) + 1
        self.tall_levels = int(math.log2(tiles.shape[1])) + 1
        self.relief = relief
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


def flush_cells(design: Design, fabric: Fabric) -> FlushCells:
    """Set a hat's stitches flush, coded by their letters."""
    shape = (fabric.rounds, max(fabric.counts))
    codes = np.full(shape, NO_STITCH, dtype=np.uint8)
    lies = np.full(shape, KNIT, dtype=np.uint8)
    for number, (band, line) in enumerate(design.rounds()):
        count = fabric.counts[number]
        codes[number, :count] = fabric.letters[fabric.round(number)]
        purl = np.tile(purl_of_repeat(band.texture, len(line)), band.times)
        lies[number, :count] = np.where(purl, PURL, _LIES[fabric.shaping[fabric.round(number)]])
    return FlushCells(codes, lies, np.array(fabric.counts))


def _above(cells: FlushCells) -> NDArray[np.intp]:
    """Give the flat place of the stitch above each cell, of the cell itself where there is none: (rounds, columns)."""
    counts = cells.counts
    rows, columns = cells.codes.shape
    next_row = np.minimum(np.arange(rows) + 1, rows - 1)
    share = (np.arange(columns) + 0.5)[None, :] / counts[:, None]
    column = np.minimum((share * counts[next_row][:, None]).astype(np.intp), columns - 1)
    place = next_row[:, None] * columns + column
    itself = np.arange(rows * columns).reshape(rows, columns)
    return np.where(cells.codes.reshape(-1)[place] == NO_STITCH, itself, place)


def _keys(cells: FlushCells, above: NDArray[np.intp]) -> NDArray[np.int32]:
    """Give a number to what each cell looks like, on the right face and on the wrong one: (2, rounds, columns)."""
    codes = cells.codes.reshape(-1)[above].astype(np.int32) * 256 + cells.codes
    lies = np.stack([cells.lies, np.where(cells.lies == PURL, KNIT, PURL)]).astype(np.int32)
    return lies * 65536 + codes


def _tiles(kinds: NDArray[np.int32], linear: Numbers, relief: Relief) -> tuple[Numbers, NDArray[np.bool_]]:
    """Draw a tile for each kind of cell, lines from the bottom up.

    Returns:
        Its linear light, (kinds, height, width, 3), and where the stitch above lies on top, (kinds, height, width).
    """
    lies, above, code = kinds // 65536, kinds // 256 % 256, kinds % 256
    if not relief.is_knitted:
        return linear[code][:, None, None, :].astype(np.float32), np.zeros((len(kinds), 1, 1), dtype=np.bool_)
    size = relief.width * PIECES
    drawn = _drawn(relief.height_per_width, size)
    tall = relief.height * PIECES
    lines = ((np.arange(tall) + 0.5) / tall * drawn[0].light.shape[0]).astype(np.intp)
    light = np.stack([tile.light[lines] for tile in drawn])[lies]
    is_above = np.stack([tile.is_above[lines] for tile in drawn])[lies]
    yarn = np.where(is_above[..., None], linear[above][:, None, None], linear[code][:, None, None])
    seen = yarn * shown_light(light, yarn)[..., None]
    middle = slice(PIECES // 2, None, PIECES)
    return _averaged(seen.astype(np.float32), PIECES, PIECES), is_above[:, middle, middle]


def _drawn(height_per_width: float, size: int) -> tuple[StitchTile, ...]:
    """Draw each way in which a stitch lies, in the order of their numbers."""
    made = {
        KNIT: knit_tile(height_per_width, size),
        PURL: purl_tile(height_per_width, size),
        LEANS_RIGHT: leaning_tile(height_per_width, size, rightwards=True),
        LEANS_LEFT: leaning_tile(height_per_width, size, rightwards=False),
    }
    return tuple(made[lies] for lies in sorted(made))


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
