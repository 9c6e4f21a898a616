"""Colours for how tight a round is, told apart by their lightness, so that every kind of eyes can tell them."""

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.tightness import GRADES, Grade, RoundTightness
from chartmaker.pictures.shades import SURROUND, LetterColours

RAMP: dict[Grade, tuple[int, int, int]] = {
    "free": (236, 233, 224),
    "easy": (176, 212, 232),
    "snug": (104, 170, 190),
    "tight": (232, 150, 50),
    "too tight": (164, 70, 20),
    "gathers": (122, 96, 160),
    "puckers": (58, 24, 92),
}
"""Pale and blue where it is easy, orange to brown where it presses, violet where the shaping is too fast."""


SHAPED = (196, 178, 222)
"""Where a round above the head changes as fast as fabric lies flat; slower ones lie between this and `RAMP["free"]`."""
STEPS = 16
"""Colours from one to the other."""


def grade_codes(judged: Sequence[RoundTightness]) -> NDArray[np.uint8]:
    """Give a code for each round: its grade's place in `GRADES`, or past them one for how fast a free one changes."""
    codes = [
        len(GRADES) + min(STEPS - 1, int(abs(one.run_per_height) * STEPS))
        if one.grade == "free"
        else GRADES.index(one.grade)
        for one in judged
    ]
    return np.array(codes, dtype=np.uint8)


def grade_colours() -> LetterColours:
    """Give the colour of each such code."""
    rgb = np.full((256, 3), SURROUND, dtype=np.uint8)
    rgb[: len(GRADES)] = [RAMP[grade] for grade in GRADES]
    part = np.linspace(0, 1, STEPS)[:, None] ** 2
    between = (1 - part) * np.array(RAMP["free"]) + part * np.array(SHAPED)
    rgb[len(GRADES) : len(GRADES) + STEPS] = np.rint(between)
    return LetterColours(rgb, np.zeros(256, dtype=np.bool_))
