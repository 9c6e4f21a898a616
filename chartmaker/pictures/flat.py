"""The fabric flat, each stitch one even cell: in its shade, or in the grey of its value."""

import math

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.cells import FlatCells
from chartmaker.pictures.frame import Frame
from chartmaker.pictures.shades import SURROUND, LetterColours, decoded, encoded

CLEAN_CELL_PX = 3.0
"""Cells narrower than this are drawn larger and averaged, so that none is skipped."""
MOST_PIECES = 8
HATCH_PX = 6
"""From one line of the hatching of a letter without a shade to the next."""
ROWS_AT_ONCE = 64


def draw_flat(cells: FlatCells, colours: LetterColours, frame: Frame) -> NDArray[np.uint8]:
    """Paint the cells, round 1 at the bottom and stitch 1 at the right; shape (height, width, 3)."""
    pieces = min(MOST_PIECES, max(1, math.ceil(CLEAN_CELL_PX / frame.cell_px)))
    seen = np.full((frame.height_px, frame.width_px, 3), SURROUND, dtype=np.uint8)
    fabric = seen[:, frame.left_px : frame.left_px + frame.fabric_px]
    columns = frame.columns - 1 - frame.columns_at(pieces).astype(np.intp)
    rounds = frame.rounds_at(pieces).astype(np.intp)
    linear = colours.linear
    for top in range(0, frame.height_px, ROWS_AT_ONCE):
        rows = rounds[top * pieces : (top + ROWS_AT_ONCE) * pieces]
        codes = cells.letters[rows[:, None], columns[None, :]]
        part = fabric[top : top + ROWS_AT_ONCE]
        part[:] = colours.rgb[codes] if pieces == 1 else encoded(averaged(linear[codes], pieces))
        if pieces == 1:
            _hatch(part, colours.hatched[codes], top)
    return seen


def averaged(linear: NDArray[np.float32], pieces: int) -> NDArray[np.float32]:
    """Average blocks of `pieces` × `pieces`: (h·pieces, w·pieces, 3) to (h, w, 3)."""
    height, width = linear.shape[0] // pieces, linear.shape[1] // pieces
    blocks = linear.reshape(height, pieces, width, pieces, 3)
    return np.asarray(blocks.mean(axis=(1, 3), dtype=np.float32))


def _hatch(part: NDArray[np.uint8], hatched: NDArray[np.bool_], top: int) -> None:
    """Draw slanting lines, darker than a light letter and lighter than a dark one, over hatched cells."""
    if not hatched.any():
        return
    rows, columns = np.indices(hatched.shape)
    lines = hatched & ((rows + top + columns) % HATCH_PX < 1)
    part[lines] = np.where(part[lines] > SURROUND, part[lines] - 70, part[lines] + 70)


def grey_surround(height_px: int, width_px: int) -> NDArray[np.float32]:
    """Give a picture of nothing but the surround, as linear light."""
    light = decoded(np.array([SURROUND], dtype=np.uint8))[0]
    return np.full((height_px, width_px, 3), light, dtype=np.float32)
