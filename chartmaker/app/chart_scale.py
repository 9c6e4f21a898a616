"""How large a stitch is drawn: whole pixels of the screen, in the proportion that the gauge gives. No Qt here."""

from bisect import bisect_left, bisect_right
from dataclasses import dataclass

from chartmaker.model.gauge import Gauge

WIDTHS = (2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24, 28, 32, 40, 48, 56, 64)
"""Stitch widths that zooming steps through, in screen pixels; one more or less is taken where it fits better."""


@dataclass(frozen=True, slots=True)
class CellSize:
    """Width and height of a drawn stitch, in pixels of the screen."""

    width: int
    height: int


def cell_sizes(gauge: Gauge) -> tuple[CellSize, ...]:
    """Give the sizes that zooming steps through, smallest first, each the best proportion near its step."""
    ratio = gauge.round_height_cm / gauge.stitch_width_cm
    sizes = (_best_near(width, ratio) for width in WIDTHS)
    return tuple(dict.fromkeys(sizes))


def _best_near(width: int, ratio: float) -> CellSize:
    nearby = (width,) if width < 8 else (width, width - 1, width + 1)
    candidates = [CellSize(w, max(1, round(w * ratio))) for w in nearby]
    return min(
        candidates, key=lambda size: (round(abs(size.height / size.width / ratio - 1), 3), abs(size.width - width))
    )


def size_near(width_px: float, ratio: float) -> CellSize:
    """Give the size whose width is nearest, at least a pixel; `ratio` is a stitch's height by its width."""
    width = max(1, round(width_px))
    return CellSize(width, max(1, round(width_px * ratio)))


def next_size(sizes: tuple[CellSize, ...], size: CellSize, steps: int) -> CellSize:
    """Give the size so many steps larger, or smaller below 0; from between two, the first step is to the next."""
    widths = [each.width for each in sizes]
    if steps == 0:
        return size
    start = bisect_right(widths, size.width) - 1 if steps > 0 else bisect_left(widths, size.width)
    return sizes[min(max(start + steps, 0), len(sizes) - 1)]
