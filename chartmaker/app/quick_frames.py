"""Frames of the turning hat while it moves: as fine as the time for one allows.

Turning alone is cheap at any size. Another tilt, zoom or hat asks the surface to be worked out anew, and then a frame
is made of fewer pixels where all of them would hold the hand up.
"""

from __future__ import annotations

import time
from math import sqrt
from typing import TYPE_CHECKING

from chartmaker.pictures.turning import FRAMES

if TYPE_CHECKING:
    from chartmaker.pictures.turning import Pixels, TurningHat
    from chartmaker.pictures.viewpoint import Viewpoint

AFFORDED_S = 0.024
"""For a frame whose surface is worked out anew: with painting it still makes thirty of them a second."""
LEAST_SHARE = 0.35
"""A frame has at least this share of its pixels each way."""


class QuickFrames:
    """Makes one frame after another, and learns from each how long it takes."""

    def __init__(self) -> None:
        self._surface: object = None
        self._share = 1.0
        self._seconds_whole = 0.0
        """What a frame of all pixels would take, as the last ones told."""

    @property
    def share(self) -> float:
        """The part of the pixels each way that the last frame had."""
        return self._share

    def rest(self) -> None:
        """Take the next frame for one that only turns: the hat has come to rest."""
        self._surface = None

    def frame(self, hat: TurningHat, place: Viewpoint, width: int, height: int) -> Pixels:
        """Make a frame that is to be shown `width` × `height` large, of so many pixels or fewer."""
        surface = (id(hat), place.tilt_degrees, place.zoom, width, height)
        is_anew = surface != self._surface
        if is_anew:
            self._share = 1.0 if self._surface is None else self._afforded()
        self._surface = surface
        began = time.perf_counter()
        pixels = hat.frame(place, frame_side(width * self._share), frame_side(height * self._share))
        if is_anew:
            self._learn(time.perf_counter() - began)
        return pixels

    def _afforded(self) -> float:
        if self._seconds_whole <= AFFORDED_S:
            return 1.0
        return max(LEAST_SHARE, sqrt(AFFORDED_S / self._seconds_whole))

    def _learn(self, seconds: float) -> None:
        whole = seconds / self._share**2
        self._seconds_whole = whole if not self._seconds_whole else 0.5 * (self._seconds_whole + whole)


def frame_side(pixels: float) -> int:
    """Round a side to pixels that a frame may have."""
    return min(max(round(pixels), FRAMES[0]), FRAMES[1])
