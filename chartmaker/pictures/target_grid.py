"""Where the patches of the 24-patch target lie between its corners, whichever way it is turned."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.pictures.quadrilateral import UNIT_SQUARE, homography, mapped
from chartmaker.shade.target import COLUMNS, ROWS

Floats = NDArray[np.float64]

GAP = 0.15
"""Between two patches, in patches: measured off no target, from memory. What is read of a patch bears 0 to 0.4."""
INNER = 0.5
"""Share of a patch's side that is read, about its middle."""


@dataclass(frozen=True, slots=True)
class Position:
    """How the target lies in the picture."""

    turns: int = 0
    """Quarter turns clockwise from where its greys lie below."""
    is_mirrored: bool = False

    def corners_of(self, corners: Floats) -> Floats:
        """Give the picture's corners (4 × 2, clockwise) as the target's own, from its upper left on."""
        if self.is_mirrored:
            corners = corners[[1, 0, 3, 2]]
            return np.roll(corners, self.turns, axis=0)
        return np.roll(corners, -self.turns, axis=0)


POSITIONS = tuple(Position(turns, is_mirrored) for is_mirrored in (False, True) for turns in range(4))
"""Every way that it can lie."""


def patch_outlines(corners: Floats, position: Position, *, inner: float = 1.0) -> Floats:
    """Give the outlines (24 × 4 × 2) of the patches in the picture, or of the share `inner` of their sides."""
    left_top = _middles()[:, None, :] + (UNIT_SQUARE - 0.5) * inner * _patch_size()
    return mapped(homography(position.corners_of(corners)), left_top)


def patch_points(corners: Floats, position: Position, *, per_side: int) -> Floats:
    """Give the points (24 × per_side² × 2) of the picture at which each patch's inside is read."""
    steps = (np.arange(per_side) + 0.5) / per_side - 0.5
    inside = np.stack(np.meshgrid(steps, steps), axis=-1).reshape(-1, 2) * INNER * _patch_size()
    return mapped(homography(position.corners_of(corners)), _middles()[:, None, :] + inside)


def _patch_size() -> Floats:
    """Give width and height of a patch, the target's being 1 and 1 from the first patch's edge to the last one's."""
    return 1 / (np.array([COLUMNS, ROWS]) + GAP * np.array([COLUMNS - 1, ROWS - 1]))


def _middles() -> Floats:
    rows, columns = np.divmod(np.arange(ROWS * COLUMNS), COLUMNS)
    return np.stack((columns, rows), axis=-1) * (1 + GAP) * _patch_size() + _patch_size() / 2
