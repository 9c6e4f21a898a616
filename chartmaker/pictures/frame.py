"""How large a flat picture is: cells at true stitch proportion in a picture of a given width."""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

NARROWEST_PX, WIDEST_PX = 16, 8000
"""Widths of a picture that are accepted."""
TALLEST_PX = 16_000
MOST_PIXELS = 64_000_000
"""Past either the fabric is drawn smaller in its frame, to spare memory; 600 × 600 stitches 8000 wide pass."""


@dataclass(frozen=True, slots=True)
class Frame:
    """A picture of `width_px` × `height_px` with the fabric `fabric_px` wide in its middle."""

    width_px: int
    height_px: int
    fabric_px: int
    columns: int
    rounds: int

    @property
    def left_px(self) -> int:
        """Surround to the left of the fabric."""
        return (self.width_px - self.fabric_px) // 2

    @property
    def cell_px(self) -> float:
        """Width of one stitch."""
        return self.fabric_px / self.columns

    def columns_at(self, pieces: int = 1) -> NDArray[np.float64]:
        """Give where each pixel's middle lies across the fabric, in stitches from its left edge.

        With `pieces` each pixel is cut into as many; shape (fabric_px × pieces,).
        """
        count = self.fabric_px * pieces
        return np.asarray((np.arange(count) + 0.5) * (self.columns / count), dtype=np.float64)

    def rounds_at(self, pieces: int = 1) -> NDArray[np.float64]:
        """Give how many rounds up from the cast-on edge each pixel's middle lies, top row first."""
        count = self.height_px * pieces
        return np.asarray(self.rounds - (np.arange(count) + 0.5) * (self.rounds / count), dtype=np.float64)


def require_width(width_px: int) -> None:
    """Refuse a width outside `NARROWEST_PX` to `WIDEST_PX`, with a ValueError."""
    if not NARROWEST_PX <= width_px <= WIDEST_PX:
        raise ValueError(f"a picture {width_px} px wide is outside {NARROWEST_PX} to {WIDEST_PX}")


def frame(columns: int, rounds: int, *, height_per_width: float, width_px: int) -> Frame:
    """Fit a grid of cells into a picture.

    Args:
        columns: cells across.
        rounds: cells up.
        height_per_width: height of a round over width of a stitch.
        width_px: width of the picture; ValueError outside what is accepted.
    """
    require_width(width_px)
    tall = rounds * height_per_width / columns
    tallest_px = tallest(width_px)
    fabric_px = max(1, min(width_px, math.floor(tallest_px / tall)))
    height_px = min(max(1, round(fabric_px * tall)), tallest_px)
    return Frame(width_px, height_px, fabric_px, columns, rounds)


def tallest(width_px: int) -> int:
    """Give how tall a picture of this width may be."""
    return min(TALLEST_PX, MOST_PIXELS // width_px)
