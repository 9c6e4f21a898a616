"""Where a hat narrows slowly: the long taper of a stocking cap, its decreases in lines and evenly spread."""

import math

from chartmaker.knit.crown import FEWEST_DRAWN, MOST_DRAWN
from chartmaker.knit.profile import GIVE, SPREAD_ROUNDS, flat_disc_decreases
from chartmaker.knit.wedge import SINGLE, narrowed, takes, widths
from chartmaker.model.band import Band
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round

USUAL_GAP = 2
"""Rounds from one decrease round to the next: two decreases every second round (published pattern note)."""


def taper_bands(  # noqa: PLR0913 - each says another thing, and most leave all but two alone
    below: int,
    above: int | None = None,
    *,
    gauge: Gauge,
    letter: str = "A",
    rounds: int | None = None,
    lines: int = 2,
    decrease: str = SINGLE,
) -> tuple[Band, ...]:
    """Make the band that eats `below` stitches and comes to `above`, its decreases standing in some lines.

    `above` None narrows to the fewest that can be drawn up, `rounds` None decreases every second round. The repeat is
    what stands between two lines; the last round decreases, and rounds between two decreases differ by one at most.
    Raises ValueError, with a sentence, where the lines do not divide the stitches, or the taper would pucker.
    """
    if below % lines:
        raise ValueError(f"{lines} lines of decreases do not divide {below} stitches")
    reached = [width * lines for width in widths(below // lines, decrease)]
    if above is None:
        above = min(
            (count for count in reached if count >= FEWEST_DRAWN and count != below),
            key=lambda count: (count > MOST_DRAWN, count),
            default=below,
        )
    if above not in reached[1:]:
        raise ValueError(f"{lines} lines that take {takes(decrease)} cannot make {above} stitches of {below}")
    ways = reached[1 : reached.index(above) + 1]
    rounds = len(ways) * USUAL_GAP if rounds is None else rounds
    _refuse_pucker(rounds, ways=len(ways), taken=lines * takes(decrease), gauge=gauge)
    ends = {(number + 1) * rounds // len(ways) for number in range(len(ways))}
    made, width = [], below // lines
    for number in range(1, rounds + 1):
        shaping = narrowed(width, decrease) if number in ends else b""
        width = len(shaping) or width
        made.append(Round(letter, bytes(width), shaping))
    return (Band(name="taper", times=lines, rounds=tuple(made)),)


def _refuse_pucker(rounds: int, *, ways: int, taken: int, gauge: Gauge) -> None:
    gap = min(rounds // ways, SPREAD_ROUNDS)
    lies_flat = GIVE * flat_disc_decreases(gauge)
    if not gap or taken / gap > lies_flat:
        few = f": take {math.floor(lies_flat * gap)} or fewer at once" if lies_flat * gap >= 1 else ""
        raise ValueError(
            f"a taper of {rounds} rounds is too short for {ways} rounds that take {taken} stitches each{few}"
        )
