"""How many more readings would settle a pair's grade.

Readings scatter, so a pair is judged on the lower bound of its difference in value (`spread`), which may lie a grade
below the difference itself. More readings of the same spread bring the bound nearer; they move nothing else.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from chartmaker.model.bounds import MOST_READINGS
from chartmaker.model.settings import Limits
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.spread import Grade, differences_and_bounds, grade, spread_of, value_difference


@dataclass(frozen=True, slots=True)
class Settling:
    """What more readings would do to a pair's grade."""

    grade: Grade
    """As the pair is judged now, on the lower bound."""
    grade_of_mean: Grade
    """What the difference of the means would be judged: the best that readings of this spread can come to."""
    readings: int | None
    """How many readings each lot must have in all for that grade; None where no number that a lot can hold will do."""
    more: tuple[int, int]
    """How many more of the first and of the second lot that is; (0, 0) where it is settled, or never will be."""

    @property
    def is_settled(self) -> bool:
        """Whether the pair already has the grade of its means."""
        return self.grade == self.grade_of_mean


def settle(first: LotShade, second: LotShade, limits: Limits) -> Settling:
    """Tell how many readings of the same spread would bring a pair's lower bound into the grade of its means.

    The same number for both lots, or what a lot has where that is more; a lot holds `MOST_READINGS`. A spread that is
    assumed of a lone reading is taken for that of the readings to come; one of screen colours stays, however many.
    """
    judged = value_difference(first, second)
    now, best = grade(judged.low, limits), grade(judged.difference, limits)
    if now == best:
        return Settling(now, best, max(first.readings, second.readings), (0, 0))
    threshold = limits.value_clear if best == "clear" else limits.value_soft
    numbers = range(min(_least(first), _least(second)), MOST_READINGS + 1)
    bounds = differences_and_bounds(spread_of(_reread(first, numbers)), spread_of(_reread(second, numbers)))[1]
    enough = np.flatnonzero(bounds >= threshold)
    if not len(enough):
        return Settling(now, best, None, (0, 0))
    readings = numbers[int(enough[0])]
    return Settling(now, best, readings, (_more(first, readings), _more(second, readings)))


def _least(shade: LotShade) -> int:
    """Give from how many readings on a lot is reckoned with: what it has, and two where it has less."""
    return max(2, shade.readings)


def _reread(shade: LotShade, numbers: Sequence[int]) -> list[LotShade]:
    """Give the shade as it would be with each number of readings, none of those that it has taken away."""
    return [replace(shade, readings=max(number, shade.readings)) for number in numbers]


def _more(shade: LotShade, readings: int) -> int:
    return 0 if shade.rests_on in {"photo", "approximate"} else max(0, readings - shade.readings)
