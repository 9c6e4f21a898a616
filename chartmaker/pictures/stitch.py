"""One knitted stitch as relief: how much light each point of it sends back, and which yarn lies on top there.

Shapes and light are chosen by eye: a leg is a round two-ply strand, seen from the front with light from the upper left.
Lengths are in stitch widths.
"""

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

LIGHT = (-0.42, 0.50, 0.757)
"""Direction to the light: right, up, towards the eye; of length 1."""
AMBIENT, DIFFUSE, GAP = 0.46, 0.62, 0.24
"""Light from all round, light from the lamp, and what is left between the strands."""
MEAN_LIGHT = 0.86
"""Mean over a tile, so that the fabric stays near its shade, a little darker for its hollows."""
PLY_DEPTH, PLIES_PER_STITCH = 0.10, 2.6
"""How much the twist of the two plies darkens, and how many turns a stitch shows."""
LEG_FROM, LEG_TO, LEG_HALF = (0.085, -0.30), (0.300, 0.80), 0.215
"""A knit leg: from beside the middle, below its round, up and outwards; heights in round heights."""
LEAN = 0.36
"""How far a decrease leans aside over the height of its round."""
BUMP_HALF = 0.20
"""Half the thickness of a purl bump."""

Grid = NDArray[np.float64]
Lights = NDArray[np.float32]


@dataclass(frozen=True, slots=True, eq=False)
class StitchTile:
    """Relief of one cell, index (row from the bottom, column from the left)."""

    light: Lights
    """Factor on the linear light of the yarn."""
    is_above: NDArray[np.bool_]
    """Whether the yarn of the stitch above lies on top."""


@lru_cache(maxsize=16)
def knit_tile(height_per_width: float, size: int) -> StitchTile:
    """Make the cell of a knit stitch, a V of two legs that nests in the Vs above and below; `size` pixels across."""
    across, up = _grid(height_per_width, size)
    own = _leg(across, up, height_per_width)
    above = _leg(across, up - height_per_width, height_per_width)
    is_above = above[0] > own[0]
    relief, light = np.where(is_above, above, own)
    return StitchTile(_evened(np.where(relief > 0, light, GAP)), is_above)


@lru_cache(maxsize=16)
def purl_tile(height_per_width: float, size: int) -> StitchTile:
    """Make the cell of a purl stitch, a bump across the column over a flatter one that joins it to its neighbours."""
    across, up = _grid(height_per_width, size)
    bumps = [
        _bump(across, up - shift * height_per_width, height_per_width, lift=lift)
        for shift in (-1.0, 0.0, 1.0)
        for lift in (False, True)
    ]
    relief, light = bumps[0]
    for other_relief, other_light in bumps[1:]:
        light = np.where(other_relief > relief, other_light, light)
        relief = np.maximum(relief, other_relief)
    return StitchTile(_evened(np.where(relief > 0, light, GAP)), np.zeros(relief.shape, dtype=np.bool_))


@lru_cache(maxsize=16)
def leaning_tile(height_per_width: float, size: int, *, rightwards: bool) -> StitchTile:
    """Make the cell of a stitch that takes in its neighbour: a V that leans over it, set off from the Vs beside it."""
    across, up = _grid(height_per_width, size)
    lean = LEAN if rightwards else -LEAN
    over = across - lean * (up / height_per_width - 0.5)
    own = _leg(over, up, height_per_width)
    above = _leg(across, up - height_per_width, height_per_width)
    is_above = (above[0] > own[0]) & (up > 0.8 * height_per_width)
    relief, light = np.where(is_above, above, own)
    return StitchTile(_evened(np.where(relief > 0, light, GAP)), is_above)


def _grid(height_per_width: float, size: int) -> tuple[Grid, Grid]:
    rows = max(1, round(size * height_per_width))
    up = (np.arange(rows) + 0.5) * (height_per_width / rows)
    across = (np.arange(size) + 0.5) / size - 0.5
    return np.broadcast_to(across[None, :], (rows, size)), np.broadcast_to(up[:, None], (rows, size))


def _leg(across: Grid, up: Grid, height: float) -> tuple[Grid, Grid]:
    """Give relief (0 where the leg is not) and light of the two mirrored legs."""
    side = np.sign(across)
    x0, y0, x1, y1 = LEG_FROM[0], LEG_FROM[1] * height, LEG_TO[0], LEG_TO[1] * height
    length = math.hypot(x1 - x0, y1 - y0)
    ux, uy = (x1 - x0) / length, (y1 - y0) / length
    half = LEG_HALF * min(1.0, height)
    px, py = np.abs(across) - x0, up - y0
    along = np.clip(px * ux + py * uy, 0, length)
    off_x, off_y = px - along * ux, py - along * uy
    aside = (px * uy - py * ux) / half
    ply = 0.5 + 0.5 * np.cos(2 * math.pi * (PLIES_PER_STITCH * along / length + 0.42 * aside * side))
    return _strand(off_x * side, off_y, half, ply)


def _bump(across: Grid, up: Grid, height: float, *, lift: bool) -> tuple[Grid, Grid]:
    """Give relief and light of a purl bump: the raised arc over the column, or the sagging one between two columns."""
    half = BUMP_HALF * min(1.0, height)
    middle = np.abs(across) if lift else 0.5 - np.abs(across)
    arc = (0.66 - 1.5 * middle**2) * height if lift else (0.10 + 1.5 * middle**2) * height
    reach = np.clip(1.0 - (middle / 0.44) ** 6, 0, 1)
    ply = 0.5 + 0.5 * np.cos(2 * math.pi * PLIES_PER_STITCH * across)
    relief, light = _strand(np.zeros_like(across), up - arc, half, ply)
    return (relief * reach, light) if lift else (relief * reach * 0.6, light * 0.72)


def _strand(off_x: Grid, off_y: Grid, half: float, ply: Grid) -> tuple[Grid, Grid]:
    """Light a round strand by how far and which way a point lies from its middle line."""
    nx, ny = off_x / half, off_y / half
    relief = np.sqrt(np.clip(1 - nx * nx - ny * ny, 0, 1))
    lit = np.clip(nx * LIGHT[0] + ny * LIGHT[1] + relief * LIGHT[2], 0, 1)
    light = (AMBIENT + DIFFUSE * lit) * (0.55 + 0.45 * relief) * (1 - PLY_DEPTH * ply)
    return relief, light


def _evened(light: Grid) -> Lights:
    return np.asarray(light * (MEAN_LIGHT / light.mean()), dtype=np.float32)
