"""From pixels to stitches: each stitch takes the mean light of the area that it covers, at the gauge's proportion."""

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.bounds import MOST_ROUNDS, MOST_STITCHES, require_within
from chartmaker.pictures.source import Pixels
from chartmaker.shade.screen import decoded, encoded

STRIP_ROWS = 64
"""Rows of pixels that are turned into light at a time, so that a large picture needs little more memory than it has."""
_LIGHT_OF = decoded(np.arange(256) / 255).astype(np.float32)
"""Linear light of each 8-bit value of sRGB (IEC 61966-2-1)."""


def working_copy(pixels: Pixels, *, longest: int) -> tuple[Pixels, int]:
    """Make a smaller copy of a large picture: squares of pixels become their mean light, on white by their opacity.

    Returns:
        The copy (height, width, 3), its longer side at most `longest`, and how many pixels each of its stands for
        along a side; squares at the right and lower edge may stand for fewer.
    """
    height, width = (int(size) for size in pixels.shape[:2])
    side = -(-max(height, width) // longest)
    across = np.arange(0, width, side)
    count = np.minimum(across + side, width) - across
    made = np.empty((-(-height // side), len(across), 3), dtype=np.uint8)
    for row, top in enumerate(range(0, height, side)):
        lines = _light(pixels[top : top + side]).mean(axis=0)
        light = np.add.reduceat(lines, across, axis=0) / count[:, None]
        made[row] = np.rint(255 * encoded(light))
    return made, side


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """The stitches that a picture shall fill."""

    stitches: int
    rounds: int
    height_per_width: float
    """Height of a round by the width of a stitch, from the gauge."""
    crops: bool = False
    """Whether the picture fills the block and loses what juts out; else all of it shows, with white beside it."""

    def __post_init__(self) -> None:
        require_within("stitches", self.stitches, 1, MOST_STITCHES)
        require_within("rounds", self.rounds, 1, MOST_ROUNDS)
        require_within("height_per_width", self.height_per_width, 0.05, 20)


def rounds_for(pixels: Pixels, *, stitches: int, height_per_width: float) -> int:
    """Give the rounds that a picture takes when it is this many stitches wide: from 1 to the most a hat may have."""
    height, width = pixels.shape[:2]
    rounds = round(stitches * int(height) / int(width) / height_per_width)
    return min(max(rounds, 1), MOST_ROUNDS)


def stitch_light(pixels: Pixels, block: Block) -> NDArray[np.float64]:
    """Give the linear sRGB light of each stitch, shape (rounds, stitches, 3), 1 is white; (0, 0) is the lower right.

    The picture keeps its proportions and stands in the middle; white lies under it and beside it, but no sliver of it:
    it is cropped by what would leave less than one round or stitch in all.
    """
    height, width = pixels.shape[:2]
    stitches_per_pixel = _scale(height, width, block)
    step_x, step_y = 1 / stitches_per_pixel, block.height_per_width / stitches_per_pixel
    edges_x = (np.arange(block.stitches + 1) - block.stitches / 2) * step_x + width / 2
    edges_y = (np.arange(block.rounds + 1) - block.rounds / 2) * step_y + height / 2
    across = _shares(edges_x, width)
    light = np.empty((block.rounds, block.stitches, 3))
    for row, (top, bottom) in enumerate(pairwise(edges_y.tolist())):
        light[row] = _row_of_stitches(pixels, top=top, bottom=bottom, across=across)
    return light[::-1, ::-1]


def _scale(height: int, width: int, block: Block) -> float:
    """Choose the size of a pixel in stitches."""
    across, up = block.stitches / width, block.rounds * block.height_per_width / height
    smaller, larger = min(across, up), max(across, up)
    idle_stitches = block.stitches - width * smaller
    idle_rounds = block.rounds - height * smaller / block.height_per_width
    return larger if block.crops or max(idle_stitches, idle_rounds) < 1 else smaller


@dataclass(frozen=True, slots=True, eq=False)
class _Shares:
    """What each cell along one axis takes of the pixels: from `start` to `stop`, in pixels and clipped to them."""

    start: NDArray[np.float64]
    stop: NDArray[np.float64]
    step: float

    def mean(self, row: NDArray[np.float64]) -> NDArray[np.float64]:
        """Give the mean of a row (pixels, 3) over each cell (cells, 3); what lies outside the picture is white."""
        sums = np.concatenate([np.zeros((1, 3)), np.cumsum(row, axis=0)])
        taken = _at(sums, self.stop) - _at(sums, self.start)
        outside = self.step - (self.stop - self.start)
        return np.asarray((taken + outside[:, None]) / self.step)


def _shares(edges: NDArray[np.float64], pixels: int) -> _Shares:
    inside = np.clip(edges, 0, pixels)
    return _Shares(inside[:-1], inside[1:], float(edges[1] - edges[0]))


def _at(sums: NDArray[np.float64], place: NDArray[np.float64]) -> NDArray[np.float64]:
    """Read running sums (pixels + 1, 3) between two pixels."""
    left = np.minimum(place.astype(np.intp), len(sums) - 2)
    return np.asarray(sums[left] + (place - left)[:, None] * (sums[left + 1] - sums[left]))


def _row_of_stitches(pixels: Pixels, *, top: float, bottom: float, across: _Shares) -> NDArray[np.float64]:
    height, width = pixels.shape[:2]
    first, last = max(top, 0.0), min(bottom, float(height))
    total = np.full((width, 3), bottom - top)  # all white, of which each row of pixels below takes its share
    for start in range(int(first), int(np.ceil(last)), STRIP_ROWS):
        rows = np.arange(start, min(start + STRIP_ROWS, int(np.ceil(last))))
        shares = np.minimum(rows + 1, last) - np.maximum(rows, first)
        total += np.tensordot(shares, _light(pixels[rows[0] : rows[-1] + 1]) - 1, axes=1)
    return across.mean(total / (bottom - top))


def _light(pixels: Pixels) -> NDArray[np.float32]:
    """Turn pixels (…, 3 or 4) into linear light (…, 3), on white by their opacity."""
    light = _LIGHT_OF[pixels[..., :3]]
    if pixels.shape[-1] == 3:
        return light
    opacity = pixels[..., 3:].astype(np.float32) / 255
    return np.asarray(1 + opacity * (light - 1))
