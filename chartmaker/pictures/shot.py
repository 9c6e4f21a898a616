"""A map of what pixels show, made ready for any turn: which round's stitches each takes, and from what size of tile."""

import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.camera import Camera
from chartmaker.pictures.fabric_tiles import FabricTiles, Texels
from chartmaker.pictures.seen_map import SeenMap

Numbers = NDArray[np.float32]
EDGE_ON = 0.03
"""Cosine below which a surface counts as turned no farther from the eye."""
LARGE = 32
"""Values across a tile from which it shows whose yarn has which brightness."""


@dataclass(frozen=True, slots=True, eq=False)
class Shot:
    """Arrays of one entry for each covered pixel."""

    places: NDArray[np.int32]
    """Where in the flat picture."""
    share: Numbers
    """Part of the round from stitch 1 leftwards, when the hat is not turned."""
    count: Numbers
    """Stitches of the round."""
    cells: NDArray[np.int32]
    """Where its stitches begin."""
    texels: Texels
    light: Numbers

    def mirrored(self, seen: SeenMap, light: Numbers) -> "Shot":
        """Give the other half of a picture, whose map is alike but for its places, angles and light."""
        return replace(self, places=seen.places, share=_share(seen), light=light)

    def values(self, turn: float, tiles: FabricTiles) -> tuple[NDArray[np.int32], Numbers]:
        """Give where each pixel's colour stands among the tiles' values, and its light, turned by a part of a turn."""
        around = self.share + np.float32(turn)
        around -= np.floor(around)
        around *= self.count
        stitch = around.astype(np.int32)
        np.minimum(stitch, self.count.astype(np.int32) - 1, out=stitch)
        around -= stitch
        around *= self.texels.across
        stitch += self.cells
        values = tiles.slots.take(stitch)
        values *= self.texels.step
        values += self.texels.start
        # Stitches run leftwards, tiles from the left.
        values += (self.texels.across - around).astype(np.int32).clip(0, self.texels.across.astype(np.int32) - 1)
        if tiles.relief.width >= LARGE:
            # Values past the whole tiles are of halved ones, too small for it to show whose yarn it is.
            is_above = tiles.is_above.take(values, mode="clip") & (values < len(tiles.is_above))
            stitch = np.where(is_above, tiles.above.take(stitch), stitch)
        light = tiles.evenness.take(stitch)
        light *= self.light
        return values, light


def shot_of(seen: SeenMap, view: Camera, tiles: FabricTiles, counts: NDArray[np.intp], *, light: Numbers) -> Shot:
    """Make a map ready; `counts` are the stitches of the rounds."""
    row = seen.row.astype(np.int32)
    part = seen.row - row
    np.minimum(row, np.int32(len(counts) - 1), out=row)
    wide, tall = _covered(seen, view)
    stitch_px = np.float32(tiles.stitch_cm * view.px_per_cm)
    texels = tiles.texels(
        part, wide=wide / stitch_px, tall=tall / (stitch_px * np.float32(tiles.relief.height_per_width))
    )
    return Shot(
        places=seen.places,
        share=_share(seen),
        count=counts.astype(np.float32)[row],
        cells=tiles.cell_rows(row, ~seen.shows_right),
        texels=texels,
        light=light,
    )


def _share(seen: SeenMap) -> Numbers:
    return np.asarray(np.float32(0.5) - seen.angle * np.float32(0.5 / math.pi), dtype=np.float32)


def _covered(seen: SeenMap, view: Camera) -> tuple[Numbers, Numbers]:
    """Give how many pixels' worth of fabric, along the round and up it, a pixel covers: 1 where it faces the eye."""
    sine, cosine = np.float32(math.sin(view.tilt)), np.float32(math.cos(view.tilt))
    aside, ahead = np.sin(seen.angle), np.cos(seen.angle)
    round_across, round_down = ahead, aside * sine
    up_across = -seen.upwards * aside
    up_down = seen.outwards * cosine + seen.upwards * ahead * sine
    facing = np.maximum(np.abs(round_across * up_down - up_across * round_down), np.float32(EDGE_ON))
    return np.hypot(up_down, up_across) / facing, np.hypot(round_across, round_down) / facing
