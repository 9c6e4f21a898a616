"""From yarn that is needed to fibre that is weighed out: a sample, what is lost on the way, and whole skeins."""

import math

from chartmaker.model.dyeing import DyeingHabits

REGAIN_PERCENT, MOISTURE_PERCENT = 13.64, 12.0
"""Wool in standard air: water to bone dry fibre, and to the fibre with its water (ASTM D2118)."""
_ROUNDING = 1e-9


def fibre_for(need_g: float, habits: DyeingHabits) -> float:
    """Give the grams of fibre to weigh out, dry, so that `need_g` of yarn are left when all is done.

    A sample is kept of the load; what scouring and handling take is put on top; then it is rounded up to whole skeins.
    """
    fibre = (need_g + habits.sample_g) / habits.kept
    return skeins_for(fibre, habits) * habits.skein_g if habits.skein_g else fibre


def skeins_for(fibre_g: float, habits: DyeingHabits) -> int:
    """Give the least count of skeins that weigh so much; 0 where fibre is not wound in skeins of one weight."""
    return math.ceil(fibre_g / habits.skein_g - _ROUNDING) if habits.skein_g else 0


def tenths(grams: float) -> str:
    """Write grams to the tenth that a scale shows, without a tenth that is none: 12.5, 25."""
    return f"{round(grams, 1):.10g}"


def bone_dry_g(fibre_g: float) -> float:
    """Give what fibre weighs without the water that it holds in room air: 100/113.64 of it."""
    return fibre_g / (1 + REGAIN_PERCENT / 100)
