"""How much yarn each letter takes, and how much of its lot there is."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.extras import Extra, extras
from chartmaker.knit.floats import Floats, find_floats
from chartmaker.knit.interval import NOTHING, Interval
from chartmaker.knit.layout import Fabric, lay_out
from chartmaker.knit.loop import LoopLength, loop_length
from chartmaker.model.bounds import MOST_LETTERS
from chartmaker.model.design import Design
from chartmaker.model.palette import Lot, Palette


@dataclass(frozen=True, slots=True, kw_only=True)
class Requirement:
    """What one letter takes, in metres and in grams, and what is missing of its lot."""

    letter: str
    lot: str | None
    """Id of the lot that the letter is; None while it has none."""
    stitches: int
    """All stitches of the hat worked in it, the cast-on not counted."""
    stitch_m: Interval
    float_m: Interval
    extras: tuple[Extra, ...]
    """The rest: cast-on, tails, carried strands, finish and trims."""
    metres_per_100g: float
    reserve_percent: float
    on_hand_g: float
    """Weight on hand of its lot."""
    taken_g: float = 0.0
    """What letters before it plan to take of the same lot."""

    @property
    def other_m(self) -> Interval:
        """The rest in metres."""
        return sum((extra.cm for extra in self.extras), start=NOTHING) * 0.01

    @property
    def metres(self) -> Interval:
        """Everything in metres."""
        return self.stitch_m + self.float_m + self.other_m

    @property
    def grams(self) -> Interval:
        """Everything in grams, by the grist of the letter's own lot."""
        return self.metres * (100 / self.metres_per_100g)

    @property
    def planned_g(self) -> float:
        """The high end and the reserve on top."""
        return self.grams.high * (1 + self.reserve_percent / 100)

    @property
    def short_g(self) -> float:
        """What the plan exceeds the weight on hand by, after what letters before it take; 0 when there is enough."""
        left = max(0.0, self.on_hand_g - self.taken_g)
        return max(0.0, self.planned_g - left)


def requirements(design: Design, fabric: Fabric, floats: Floats, loop: LoopLength) -> tuple[Requirement, ...]:
    """Work out what every letter in use takes, in alphabetical order.

    Where two letters are one lot, the first is served first and the second takes what is left.
    """
    stitches = np.bincount(fabric.letters, minlength=MOST_LETTERS)
    floated = _float_metres(design, floats.passed())
    beyond = extras(design, fabric, loop_cm=loop.cm)
    taken: dict[str, float] = {}
    found = []
    for letter in design.letters_in_use:
        code = ord(letter) - ord("A")
        lot = design.palette.lot(design.colourway.lot_of(letter) or "")
        requirement = Requirement(
            letter=letter,
            lot=lot.id if lot else None,
            stitches=int(stitches[code]),
            stitch_m=loop.cm * (int(stitches[code]) / 100),
            float_m=floated[code],
            extras=tuple(extra for extra in beyond if extra.letter == letter),
            metres_per_100g=grist(design, letter),
            reserve_percent=design.allowances.reserve_percent,
            on_hand_g=lot.on_hand_g if lot else 0.0,
            taken_g=taken.get(lot.id, 0.0) if lot else 0.0,
        )
        if lot:
            taken[lot.id] = requirement.taken_g + requirement.planned_g
        found.append(requirement)
    return tuple(found)


def grist(design: Design, letter: str) -> float:
    """Give the metres in 100 g of what a letter is knitted with: of its lot, else of its base, else the design's."""
    lot = design.palette.lot(design.colourway.lot_of(letter) or "")
    return (lot and grist_of(lot, design.palette)) or design.metres_per_100g


def grist_of(lot: Lot, palette: Palette) -> float | None:
    """Give the metres in 100 g of a lot: its own, else its base's; None where neither is known."""
    yarn = palette.yarn(lot.yarn)
    return lot.metres_per_100g or (yarn.metres_per_100g if yarn else None)


def float_factors(design: Design) -> Interval:
    """Give metres of float for each stitch passed: taut at the low end, with slack, with twice as much at the high."""
    width_m = design.gauge.stitch_width_cm / 100
    slack = design.allowances.float_slack_percent / 100
    return Interval(1.0, 1 + slack, 1 + 2 * slack) * width_m


def needs_of(design: Design) -> tuple[Requirement, ...]:
    """Work out what every letter of a design takes, from the design alone."""
    fabric = lay_out(design)
    return requirements(design, fabric, find_floats(fabric), loop_length(design))


def _float_metres(design: Design, passed: NDArray[np.intp]) -> list[Interval]:
    """Give metres of float by letter."""
    factors = float_factors(design)
    return [factors * count for count in passed.tolist()]
