"""The back of stranded work: floats drawn over the purl bumps, the ground's above, the figure's below.

Lines are laid over cells that are there already, by picking from small ready shapes as `stitch_tiles` does.
"""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.strands import FROM_BEFORE, LONG_FROM_BEFORE, LONG_TO_NEXT, TO_NEXT
from chartmaker.pictures.stitch_tiles import OPAQUE

CAUGHT = 16
"""Added to the signs of `strands_behind` where a long float is caught behind the stitch."""
SIGNS = 32
HEIGHTS = (0.30, 0.72, 0.51)
"""Where the strand of each part runs, as a share of the round's height from its top: ground, figure, third."""
THICKNESS = 0.19
"""Of a strand, as a share of the round's height."""
EDGE, LONG_EDGE, MARK = (
    (OPAQUE | np.uint32(live), OPAQUE | np.uint32(faded))
    for live, faded in ((0x505050, 0x676767), (0x000000, 0x454545), (0xFFFFFF, 0xB0B0B0))
)
"""Beside a strand; beside one that is too long; and across it where it is caught: as such, and faded into value 50."""
LOWEST_EDGED_PX = 18
"""Rounds lower than this have no edge beside a strand that is short enough."""
NOTHING, STRAND, EDGED, EDGED_HEAVILY, MARKED = range(5)


def lay_strands(  # noqa: PLR0913 - what is drawn, and how large, by name
    pixels: NDArray[np.uint32],
    *,
    signs: NDArray[np.uint8],
    colours: NDArray[np.uint32],
    is_faded: NDArray[np.bool_],
    width: int,
    height: int,
) -> None:
    """Draw the strands of cells into a picture of them, in place.

    Args:
        pixels: 0xffRRGGBB, shape (lines × height, places × width).
        signs: those of `strands_behind` and `CAUGHT`, left and right as on the chart, shape (lines, places, parts).
        colours: of the yarn carried, as pixels, shape (lines, places, parts).
        is_faded: whether edges and ties are faded too, as the colours given are, shape (lines, places).
        width: of a cell in pixels.
        height: of a cell in pixels.
    """
    lines, places, parts = signs.shape
    cells = pixels.reshape(lines, height, places, width)
    for part in range(parts):
        of_part = signs[..., part]
        if not of_part.any():
            continue
        top, shapes = strand_shapes(width, height, part)
        tall = shapes.shape[1]
        drawn = shapes[of_part].transpose(0, 2, 1, 3)
        target = cells[:, top : top + tall]
        np.copyto(target, colours[:, None, :, None, part], where=drawn == STRAND)
        for shape, inks in ((EDGED, EDGE), (EDGED_HEAVILY, LONG_EDGE), (MARKED, MARK)):
            where = drawn == shape
            if where.any():
                ink = np.where(is_faded, inks[1], inks[0])
                np.copyto(target, ink[:, None, :, None], where=where)


@lru_cache(maxsize=32)
def strand_shapes(width: int, height: int, part: int) -> tuple[int, NDArray[np.uint8]]:
    """Give what each sum of signs draws, shape (`SIGNS`, tall, width), and the row of the cell where it begins."""
    thick = max(1, round(THICKNESS * height))
    edge = 1 if height >= LOWEST_EDGED_PX else 0
    heavy = max(1, round(0.07 * height)) if height >= 4 else 0
    middle = round(HEIGHTS[part] * height - thick / 2)
    top = max(0, middle - heavy - edge)
    bottom = min(height, middle + thick + heavy + edge)
    shapes = np.zeros((SIGNS, bottom - top, width), dtype=np.uint8)
    rows = np.arange(top, bottom)
    for signs in range(SIGNS):
        for half, run, is_long in (
            (slice(width // 2, width), FROM_BEFORE, LONG_FROM_BEFORE),
            (slice(0, width - width // 2), TO_NEXT, LONG_TO_NEXT),
        ):
            if signs & run:
                reach = heavy + edge if signs & is_long else edge
                beside = (rows >= middle - reach) & (rows < middle + thick + reach)
                shapes[signs, beside, half] = EDGED_HEAVILY if signs & is_long else EDGED
                shapes[signs, (rows >= middle) & (rows < middle + thick), half] = STRAND
        if signs & CAUGHT:
            _mark(shapes[signs], width)
    shapes.flags.writeable = False
    return top, shapes


def _mark(shape: NDArray[np.uint8], width: int) -> None:
    """Draw a tie across the strand, white within black."""
    wide = max(1, round(0.14 * width))
    left = (width - wide) // 2
    shape[:, max(0, left - 1) : left + wide + 1] = EDGED_HEAVILY
    shape[:, left : left + wide] = MARKED
