"""Frames while the hat is turned: codes of the screen, without averaging, from tables that are made once."""

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.camera import Camera
from chartmaker.pictures.fabric_tiles import FabricTiles
from chartmaker.pictures.lamp import shadow
from chartmaker.pictures.shades import SURROUND, decoded, encoded
from chartmaker.pictures.shot import Shot

GAMMA, OFFSET = 1 / 2.4, 0.055
"""Of sRGB's curve above its foot (IEC 61966-2-1): light times k is code plus offset times k to the power of gamma."""
CELL_PX = 3
"""Pixels, each way, that have one shadow."""
STEPS = 4096
"""Levels of light of the table that codes it."""

Numbers = NDArray[np.float32]


@dataclass(slots=True, eq=False)
class CodedPicture:
    """A picture that trims are painted on at once, in the screen's codes."""

    pixels: NDArray[np.uint8]
    """Shape (height × width, 3)."""
    nearness: Numbers
    """Of each pixel, -inf where nothing is."""
    width_px: int
    disc_px: float = 1.0
    """Distance of the points that a disc is painted with."""

    def claim(self, *, across: Numbers, down: Numbers, nearness: Numbers) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
        """Find the points that are nearer than what is there: where they fall, and which they are."""
        height_px = len(self.pixels) // self.width_px
        inside = (across >= 0) & (across < self.width_px) & (down >= 0) & (down < height_px)
        points = np.flatnonzero(inside)
        place = down[points].astype(np.intp) * self.width_px + across[points].astype(np.intp)
        near = nearness[points]
        np.maximum.at(self.nearness, place, near)
        wins = np.flatnonzero(near == self.nearness[place])
        return place[wins], points[wins]

    def paint(self, places: NDArray[np.intp], light: Numbers) -> None:
        """Put linear light where points were claimed."""
        self.pixels[places] = coded(light)


@dataclass(frozen=True, slots=True, eq=False)
class QuickTiles:
    """The colours of tiles as codes with the offset of sRGB's curve, one array for each of red, green and blue."""

    tiles: FabricTiles
    planes: tuple[Numbers, Numbers, Numbers] = field(init=False)

    def __post_init__(self) -> None:
        raised = np.maximum(self.tiles.light, 0) ** np.float32(GAMMA) * np.float32(255 * (1 + OFFSET))
        red, green, blue = (np.ascontiguousarray(raised[:, part]) for part in range(3))
        object.__setattr__(self, "planes", (red, green, blue))

    def paint(self, pixels: NDArray[np.uint8], shot: Shot, *, turn: float) -> None:
        """Paint what a shot covers; `pixels` has the shape (height × width, 3)."""
        values, light = shot.values(turn, self.tiles)
        np.power(light, np.float32(GAMMA), out=light)
        for part, plane in enumerate(self.planes):
            code = plane.take(values)
            code *= light
            code -= np.float32(255 * OFFSET - 0.5)
            np.clip(code, 0, 255, out=code)
            pixels[shot.places, part] = code


def coded(light: Numbers) -> NDArray[np.uint8]:
    """Code linear light by a table, to about one step of the screen's in 256."""
    table: NDArray[np.uint8] = _TABLE[np.clip(light * np.float32(STEPS - 1), 0, STEPS - 1).astype(np.int32)]
    return table


def ground(view: Camera, radius_cm: float) -> NDArray[np.uint8]:
    """Give the surround with the shadow of a foot on it, shape (height × width, 3), worked out in coarse cells."""
    surround = decoded(np.array([SURROUND], dtype=np.uint8))[0]
    coarse = view.coarser(CELL_PX)
    cells = coded(shadow(coarse, radius_cm, slice(0, coarse.height_px)) * surround)
    rows = np.arange(view.height_px) // CELL_PX
    columns = np.repeat(np.arange(view.width_px) // CELL_PX, 3)
    return cells[:, columns][rows].reshape(view.height_px * view.width_px, 3)


_TABLE = encoded(np.linspace(0, 1, STEPS, dtype=np.float32))
