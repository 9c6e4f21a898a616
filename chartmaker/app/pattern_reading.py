"""Pictures read for a pattern: brought to a size at which every setting answers at once. No Qt: it runs in a thread."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from chartmaker.pictures.scaling import working_copy
from chartmaker.pictures.source import read_picture

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.pictures.source import Pixels

LONGEST_SIDE = 1600
"""Pixels of a working copy along its longer side: more than twice the stitches that a round may have."""


@dataclass(frozen=True, slots=True, eq=False)
class WorkingCopy:
    """A picture as it is worked with."""

    path: Path
    size: tuple[int, int]
    """Width and height of the picture itself."""
    pixels: Pixels
    side: int
    """Pixels of the picture that one of these stands for, along a side."""


def read_working_copy(path: Path, step: Callable[[int, int], None]) -> WorkingCopy:
    """Read a picture and make it small enough; `step` may end the work in between.

    Raises UserProblem, one sentence, for whatever is no picture.
    """
    pixels = read_picture(path)
    step(0, 0)
    height, width = pixels.shape[:2]
    copy, side = working_copy(pixels, longest=LONGEST_SIDE)
    return WorkingCopy(path, (int(width), int(height)), copy, side)
