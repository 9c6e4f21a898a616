"""Photos opened and read for the dialog, whatever is marked on them. No Qt: it runs in a thread."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PIL import Image

from chartmaker.app.photo_marks import box_points
from chartmaker.pictures.source import read_picture
from chartmaker.pictures.target_photo import read_skein, read_target

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.app.photo_marks import Marks
    from chartmaker.model.settings import Viewing
    from chartmaker.pictures.source import Pixels
    from chartmaker.pictures.target_photo import SkeinReading, TargetReading

LONGEST_SIDE = 1600
"""Pixels of the copy that is shown, along its longer side; what is read is the photo itself."""


@dataclass(frozen=True, slots=True, eq=False)
class OpenedPhoto:
    """A photo at hand."""

    path: Path
    pixels: Pixels
    shown: Pixels
    """A smaller copy (height × width × 3)."""

    @property
    def size(self) -> tuple[int, int]:
        """Width and height of the photo itself."""
        height, width = self.pixels.shape[:2]
        return int(width), int(height)


@dataclass(frozen=True, slots=True, eq=False)
class PhotoRead:
    """What the marks on a photo come to."""

    marks: Marks
    target: TargetReading | None
    """None where the corners give none; `problem` says why."""
    problem: str
    """A sentence for what keeps shades from being taken; empty where all is well."""
    skeins: tuple[SkeinReading | None, ...]
    """In the order of the boxes; None for one that cannot be read."""


def open_photo(path: Path, step: Callable[[int, int], None]) -> OpenedPhoto:
    """Read a photo and make the copy that is shown; `step` may end the work in between.

    Raises UserProblem, one sentence, for whatever is no picture.
    """
    step(0, 2)
    pixels = read_picture(path)
    step(1, 2)
    side = -(-max(pixels.shape[:2]) // LONGEST_SIDE)
    shown = Image.fromarray(pixels).convert("RGB").reduce(side)
    step(2, 2)
    import numpy as np

    return OpenedPhoto(path, pixels, np.asarray(shown))


def read_marks(
    photo: OpenedPhoto, marks: Marks, *, edition: str, viewing: Viewing, step: Callable[[int, int], None]
) -> PhotoRead:
    """Read the target between the corners, and each skein by it; `step` may end the work in between."""
    total = 1 + len(marks.skeins)
    step(0, total)
    try:
        target = read_target(photo.pixels, marks.corners, edition=edition, viewing=viewing)
    except ValueError as problem:
        return PhotoRead(marks, None, str(problem), (None,) * len(marks.skeins))
    skeins: list[SkeinReading | None] = []
    for done, box in enumerate(marks.skeins, start=1):
        step(done, total)
        try:
            skeins.append(read_skein(photo.pixels, box_points(box), target))
        except ValueError:  # a box being drawn is too narrow at first
            skeins.append(None)
    return PhotoRead(marks, target, target.refusal, tuple(skeins))
