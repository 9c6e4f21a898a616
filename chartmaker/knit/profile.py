"""The hat's outline from the side: how wide it is at each round and how much height the round gains."""

import math
from dataclasses import dataclass

from chartmaker.knit.layout import Fabric
from chartmaker.model.gauge import Gauge

SPREAD_ROUNDS, NARROWING_ROUNDS = 4, 12
"""A shaped round's change of width is taken up by itself and the plain rounds before it, at most this many in all.

About a centimetre of fabric at usual gauges where it widens, for the brim below holds it in; where it narrows, some
three, so that a crown whose decreases stand far apart rounds itself instead of standing in steps: common practice, no
source.
"""
GIVE = 1.05
"""How far a change of radius may pass the height of a round, again and again, before the fabric puckers: common
practice, no source."""
GIVE_ROUNDS = 1.0
"""By how many rounds' height more than that a stretch of fabric may be drawn in or out: decreases two and three rounds
apart by turns lie flat where every fifth half round would. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Profile:
    """Radius and rise of every round, from the cast-on edge up."""

    radius_cm: tuple[float, ...]
    """Stitches × stitch width / 2π."""
    run_cm: tuple[float, ...]
    """Change of radius from the round below, spread as the fabric spreads it; negative goes inwards."""
    rise_cm: tuple[float, ...]
    """Height gained: √(h² − run²), where a run of more than the round's height h is made up by the rounds after it."""
    puckers: tuple[bool, ...]
    """Whether the round stands in a stretch that runs further than the fabric can take lying flat."""

    @property
    def height_cm(self) -> float:
        """From the cast-on edge to the top."""
        return math.fsum(self.rise_cm)

    def height_above(self, rounds: int) -> float:
        """Give the height from above so many rounds to the top."""
        return math.fsum(self.rise_cm[rounds:])


def profile(fabric: Fabric, gauge: Gauge) -> Profile:
    """Work out the outline of the worn hat as a surface of revolution (design.md, section 5)."""
    height = gauge.round_height_cm
    radius = [count * gauge.stitch_width_cm / (2 * math.pi) for count in fabric.counts]
    run = _spread(radius, fabric)
    rise = [math.sqrt(max(0.0, height**2 - taken**2)) for taken in _taken_up(run, height)]
    return Profile(
        radius_cm=tuple(radius),
        run_cm=tuple(run),
        rise_cm=tuple(rise),
        puckers=_puckers(run, height),
    )


def flat_disc_decreases(gauge: Gauge) -> float:
    """Give the stitches that a flat disc loses in each round: 2π·h / w."""
    return 2 * math.pi * gauge.round_height_cm / gauge.stitch_width_cm


def hemisphere_stitches(gauge: Gauge, *, stitches: int, round_number: float) -> float:
    """Give the stitches at a round of a hemisphere that begins with `stitches`: S₀·cos(πk / 2N), N = (C/4)/h rounds."""
    quarter_cm = stitches * gauge.stitch_width_cm / 4
    rounds = quarter_cm / gauge.round_height_cm
    return stitches * math.cos(math.pi * round_number / (2 * rounds))


def _spread(radius: list[float], fabric: Fabric) -> list[float]:
    """Share each change of radius among the round that makes it and the plain rounds just before it."""
    run = [0.0] * len(radius)
    last_change = 0
    for index in range(1, len(radius)):
        if radius[index] == radius[index - 1]:
            continue
        most = NARROWING_ROUNDS if radius[index] < radius[index - 1] else SPREAD_ROUNDS
        sharing = min(most, index - last_change)
        change = radius[index] - radius[index - 1] if fabric.meets[index] else 0.0
        for place in range(index - sharing + 1, index + 1):
            run[place] = change / sharing
        last_change = index
    return run


def _taken_up(run: list[float], height: float) -> list[float]:
    """Give how much of the run each round takes up, no more than its height; what is over falls to those after it.

    They take over what `GIVE_ROUNDS` allows, as long as the fabric goes on inwards, or outwards. So decreases two and
    three rounds apart by turns lie flat, and in no steps.
    """
    taken, over = [], 0.0
    for index, change in enumerate(run):
        goes_on = index > 0 and change * run[index - 1] > 0
        wanted = abs(change) + (over if goes_on else 0.0)
        taken.append(min(wanted, height))
        over = min(wanted - taken[-1], GIVE_ROUNDS * height)
    return taken


def _puckers(run: list[float], height: float) -> tuple[bool, ...]:
    """Find the rounds of stretches that run further, inwards or outwards, than `GIVE` and `GIVE_ROUNDS` allow.

    A stretch begins and ends with rounds that run too far; between them may be some that do not.
    """
    found = [False] * len(run)
    for way in (-1, 1):
        start, peak, passed = 0, -1, 0.0
        worst = GIVE_ROUNDS + 1e-9
        for index, change in enumerate([*run, 0.0]):
            passed += way * change / height - GIVE
            if passed > worst:
                worst, peak = passed, index
            if passed <= 0 or index == len(run):
                found[start : peak + 1] = [True] * (peak + 1 - start)
                start, peak, passed, worst = index + 1, -1, 0.0, GIVE_ROUNDS + 1e-9
    return tuple(found)
