"""How the body of a new hat is divided into bands that motifs can be stamped into, with plain rounds between.

The heights are the trade's classes: a peerie has one to seven rounds, a border nine to thirteen, a large motif fifteen
to seventeen (a class sheet). That bands alternate, and that two plain rounds part them, is common practice, no source.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

REST, PEERIE, BORDER, LARGE = "rest", "peerie", "border", "large motif"
HEIGHTS = {PEERIE: (1, 3, 5, 7), BORDER: (9, 11, 13), LARGE: (15, 17)}
"""Odd, so that there is a middle round."""
GAP_ROUNDS = 2
"""Plain rounds between two bands, and at both ends of a body that is not low."""
LOW_ROUNDS = 15
"""Bands and gaps that come to fewer rounds are content with one plain round at each end."""
FEWEST_BODY_ROUNDS = 4
"""Rounds of the lowest body: the crown's first decreases are taken up by plain rounds below them."""
LEAST_STEP = 4
"""Rounds that a large band is higher than the peeries beside it."""
MOST_PAIRS = 24
BAND_COSTS = 0.5
"""Rounds of motif that one band more must bring."""


@dataclass(frozen=True, slots=True)
class Stretch:
    """Rounds of a body that belong together."""

    name: str
    rounds: int

    @property
    def is_for_a_motif(self) -> bool:
        """Whether it is meant to be drawn on."""
        return self.name != REST


@lru_cache(maxsize=128)
def body_plan(rounds: int) -> tuple[Stretch, ...]:
    """Divide so many rounds, the lowest first: as many as can be for motifs, alike above and below the middle."""
    layouts = [heights for heights in _layouts() if _room(heights) <= rounds]
    if not layouts:
        return (Stretch(REST, rounds),) if rounds else ()
    heights = max(layouts, key=lambda heights: sum(heights) - BAND_COSTS * len(heights))
    return tuple(_parted(heights, spare=rounds - sum(heights)))


def class_of(rounds: int) -> str:
    """Give the class of a motif by its height."""
    return next(name for name, heights in HEIGHTS.items() if rounds <= heights[-1])


def _layouts() -> Iterator[tuple[int, ...]]:
    """Give the heights of every layout: a band alone, or large ones with peeries below, between and above."""
    for alone in (*HEIGHTS[PEERIE], *HEIGHTS[BORDER], *HEIGHTS[LARGE]):
        yield (alone,)
    for pairs in range(1, MOST_PAIRS):
        for large in (*HEIGHTS[BORDER], *HEIGHTS[LARGE]):
            for peerie in HEIGHTS[PEERIE][1:]:
                if large - peerie >= LEAST_STEP:
                    yield (peerie, *(large, peerie) * pairs)


def _room(heights: tuple[int, ...]) -> int:
    """Give the rounds that a layout needs, with plain ones at both ends."""
    rounds = sum(heights) + GAP_ROUNDS * (len(heights) - 1)
    return rounds + 2 * (1 if rounds < LOW_ROUNDS else GAP_ROUNDS)


def _parted(heights: tuple[int, ...], *, spare: int) -> Iterator[Stretch]:
    """Put plain rounds between bands and share out what is left at the two ends, the lower first."""
    ends = spare - GAP_ROUNDS * (len(heights) - 1)
    yield Stretch(REST, ends - ends // 2)
    for place, height in enumerate(heights):
        if place:
            yield Stretch(REST, GAP_ROUNDS)
        yield Stretch(class_of(height), height)
    yield Stretch(REST, ends // 2)
