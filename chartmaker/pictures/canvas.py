"""A picture in space: light and nearness of every pixel, where the nearest point wins."""

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.flat import grey_surround

Points = NDArray[np.float32]
Places = NDArray[np.intp]


@dataclass(slots=True, eq=False)
class Canvas:
    """Linear light of shape (height, width, 3) and the nearness that each pixel holds; it is painted into."""

    height_px: int
    width_px: int
    disc_px: float = 0.5
    """Distance of the points that a disc is painted with."""
    light: NDArray[np.float32] = field(init=False)
    nearness: NDArray[np.float32] = field(init=False)

    def __post_init__(self) -> None:
        self.light = grey_surround(self.height_px, self.width_px)
        self.nearness = np.full((self.height_px, self.width_px), -np.inf, dtype=np.float32)

    def claim(self, *, across: Points, down: Points, nearness: Points) -> tuple[Places, Places]:
        """Find the points, of flat arrays of one length, that are nearer than what is there; the others are hidden.

        Returns:
            Where in the flat picture they fall, and which of the points they are; both to be given to `paint`.
        """
        column, row = across.astype(np.int32), down.astype(np.int32)
        inside = (across >= 0) & (column < self.width_px) & (down >= 0) & (row < self.height_px)
        points = np.flatnonzero(inside)
        place = row[points].astype(np.intp) * self.width_px + column[points]
        near = nearness[points]
        held = self.nearness.reshape(-1)
        np.maximum.at(held, place, near)
        wins = np.flatnonzero(near == held[place])
        return place[wins], points[wins]

    def paint(self, places: Places, light: NDArray[np.float32]) -> None:
        """Put light, shape (points, 3), where points were claimed."""
        self.light.reshape(-1, 3)[places] = light
