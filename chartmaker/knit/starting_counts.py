"""The stitch counts that a new hat is begun with: near what head and ease ask for, and divisible in many ways."""

import math
from dataclasses import dataclass

from chartmaker.knit.fit import NEAR_ENOUGH, TIGHTEST_CM, TOLERANCE_CM
from chartmaker.model.bounds import MOST_STITCHES
from chartmaker.model.gauge import Gauge
from chartmaker.model.units import Measured, Units

USUAL_REPEATS = {4: 8, 6: 12, 8: 20, 10: 14, 12: 18, 14: 3, 16: 8, 18: 5, 20: 4, 24: 3}
"""Repeats that motifs have, with how many in a hundred of the program's own have them."""
FEWEST_STITCHES = 24
"""Fewer make no hat."""
LONGEST_REPEAT = 36
"""Stitches of the longest repeat that a plain band is given, so that its chart can be taken in."""
RIM_TOLERANCE = 0.04
"""How far a tam's rim may be from the widening asked for, as a share of it: common practice, no source."""
FULLER = 0.05
"""How much wider than what was asked a body may be above its brim, as a share of it: common practice, no source."""
CHANGE_COSTS = 8
"""A round in which stitches are made or taken, told in the motifs of a hundred that make up for it."""
CM_COSTS = 2
"""The same for each cm off what was asked, within the tolerance."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """What the counts of a hat must come near to."""

    head_cm: float
    wanted_cm: float
    gauge: Gauge
    brim_repeat: int
    sections: int
    """Of the crown; 1 where it takes any count."""
    motif_repeat: int | None
    widen_percent: float | None
    """None where body and brim are as wide as each other."""

    @property
    def target(self) -> float:
        """Stitches that head and ease ask for, not yet whole."""
        return self.wanted_cm / self.gauge.stitch_width_cm


@dataclass(frozen=True, slots=True)
class StartingCounts:
    """The counts that a new hat is begun with."""

    brim: int
    body: int
    """Of a tam, at its rim."""


def starting_counts(asked: Asked) -> StartingCounts:
    """Choose the counts: a brim as near as can be, and a body hardly wider that has room for the most motifs.

    Raises ValueError, with a sentence, where no count will do.
    """
    _require_knittable(asked)
    if asked.widen_percent is None:
        off = TOLERANCE_CM / asked.gauge.stitch_width_cm
        bodies = _between(asked.target - off, asked.target + max(off, FULLER * asked.target))
    else:
        rim = asked.target * (1 + asked.widen_percent / 100)
        if rim > MOST_STITCHES:
            raise ValueError(f"a rim of {rim:.0f} stitches is more than {MOST_STITCHES}: widen it less")
        bodies = _between(rim * (1 - RIM_TOLERANCE), rim * (1 + RIM_TOLERANCE))
    pairs = [StartingCounts(brim, body) for body in bodies for brim in _brims(asked, body)]
    if not pairs:
        raise ValueError(_no_multiple(asked))
    return max(
        pairs,
        key=lambda counts: (
            _holds_motif(asked, counts.body),
            _is_near(asked, counts),
            counts.body >= counts.brim,  # a brim holds a hat on: nothing above it is tighter if that can be
            _worth(asked, counts),
        ),
    )


def motifs_in(stitches: int) -> int:
    """Tell how many motifs in a hundred close up round a count."""
    return sum(share for repeat, share in USUAL_REPEATS.items() if stitches % repeat == 0)


def repeat_for(stitches: int, motif_repeat: int | None) -> int:
    """Choose a plain band's repeat on so many stitches: the motif's where it fits, else the one most motifs fit in."""
    if motif_repeat and stitches % motif_repeat == 0:
        return motif_repeat
    whole = [count for count in range(1, LONGEST_REPEAT + 1) if stitches % count == 0]
    return max(whole, key=lambda count: (motifs_in(count), -count))


def _require_knittable(asked: Asked) -> None:
    if asked.target < FEWEST_STITCHES:
        raise ValueError(
            Measured(
                lambda units: f"{_comes_to(asked, units)}, and a hat has at least {FEWEST_STITCHES}: take a finer gauge"
            )
        )
    if asked.target > MOST_STITCHES:
        raise ValueError(
            Measured(lambda units: f"{_comes_to(asked, units)}, more than {MOST_STITCHES}: take a coarser gauge")
        )
    if asked.head_cm - asked.wanted_cm > TIGHTEST_CM:
        raise ValueError(
            Measured(
                lambda units: (
                    f"a hat of {units.length.told(asked.wanted_cm)} is too tight for a head of "
                    f"{units.length.brief(asked.head_cm)}: more than {units.length.brief(TIGHTEST_CM)} under the head "
                    "will not go on"
                )
            )
        )


def _comes_to(asked: Asked, units: Units) -> str:
    head = units.length.brief(asked.head_cm)
    return f"a head of {head} at {_gauge(asked, units)} comes to {asked.target:.0f} stitches"


def _gauge(asked: Asked, units: Units) -> str:
    return f"{units.gauge.brief_figure(asked.gauge.stitches_per_10cm)} stitches{units.gauge.unit}"


def _no_multiple(asked: Asked) -> str:
    return Measured(
        lambda units: (
            f"no multiple of {asked.brim_repeat} stitches comes within {units.length.brief(TOLERANCE_CM)} of "
            f"{units.length.told(asked.wanted_cm)} at {_gauge(asked, units)}: choose another brim, or a finer gauge"
        )
    )


def _between(lowest: float, highest: float) -> list[int]:
    """Give the whole counts from one number to another, up to the most that a round may have."""
    return list(range(max(1, math.ceil(lowest)), min(MOST_STITCHES, math.floor(highest)) + 1))


def _brims(asked: Asked, body: int) -> list[int]:
    """Give the counts of a brim below a body: its own where the brim's repeat divides it, and those next to the target.

    Only those that fit the head.
    """
    repeat = asked.brim_repeat
    below = repeat * int(asked.target // repeat)
    counts = {below, below + repeat} | ({body} if body % repeat == 0 and asked.widen_percent is None else set())
    return [count for count in sorted(counts) if _fits(asked, count)]


def _fits(asked: Asked, brim: int) -> bool:
    """Whether a brim is within the tolerance, and goes on."""
    goes_on = asked.head_cm - brim * asked.gauge.stitch_width_cm <= TIGHTEST_CM
    return 0 < brim <= MOST_STITCHES and goes_on and _off_cm(asked, brim) <= TOLERANCE_CM


def _off_cm(asked: Asked, stitches: float) -> float:
    return abs(stitches - asked.target) * asked.gauge.stitch_width_cm


def _holds_motif(asked: Asked, body: int) -> bool:
    return asked.motif_repeat is not None and body % asked.motif_repeat == 0


def _is_near(asked: Asked, counts: StartingCounts) -> bool:
    """Whether the brim, which holds the hat on, is as near as counts should be; the body need but fit."""
    return _off_cm(asked, counts.brim) <= NEAR_ENOUGH * asked.head_cm


def _worth(asked: Asked, counts: StartingCounts) -> float:
    """Weigh counts: motifs that fit speak for them, rounds to change in and every cm off against them."""
    rim = 1 if asked.widen_percent is None else 1 + asked.widen_percent / 100
    changes = (asked.widen_percent is None and counts.brim != counts.body) + (counts.body % asked.sections > 0)
    off = _off_cm(asked, counts.brim) + _off_cm(asked, counts.body / rim)
    return motifs_in(counts.body) - CHANGE_COSTS * changes - CM_COSTS * off
