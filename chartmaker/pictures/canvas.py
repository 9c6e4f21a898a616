"""A picture in space: light and nearness of every pixel, where the nearest point wins."""

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.flat import grey_surround


@dataclass(slots=True, eq=False)
class Canvas:
    """Linear light of shape (height, width, 3) and the nearness that each pixel holds; it is painted into."""

    height_px: int
    width_px: int
    light: NDArray[np.float32] = field(init=False)
    nearness: NDArray[np.float32] = field(init=False)

    def __post_init__(self) -> None:
        self.light = grey_surround(self.height_px, self.width_px)
        self.nearness = np.full((self.height_px, self.width_px), -np.inf, dtype=np.float32)

    def splat(
        self,
        *,
        across: NDArray[np.float32],
        down: NDArray[np.float32],
        nearness: NDArray[np.float32],
        light: NDArray[np.float32],
    ) -> None:
        """Paint points, flat arrays of one length, where they are nearer than what is there; others are hidden."""
        column, row = np.floor(across).astype(np.intp), np.floor(down).astype(np.intp)
        inside = (column >= 0) & (column < self.width_px) & (row >= 0) & (row < self.height_px)
        place = (row * self.width_px + column)[inside]
        near = nearness[inside]
        held = self.nearness.reshape(-1)
        np.maximum.at(held, place, near)
        wins = near == held[place]
        self.light.reshape(-1, 3)[place[wins]] = light[inside][wins]
