"""Crowns: in which rounds the sections of a hat's top are narrowed, and the bands that do it.

A crown follows the profile that is asked for as far as its sections can: they are narrowed in the round in which the
count that comes of it lies nearest to the profile. No crown draws in faster than a flat disc. Where four or five
single decreases in every round are fewer than a profile asks for, the crown keeps to those, and comes out higher.
"""

import math
from collections.abc import Callable
from dataclasses import dataclass, replace

from chartmaker.knit.changing_band import changing_band
from chartmaker.knit.crown_pattern import carried
from chartmaker.knit.profile import GIVE, GIVE_ROUNDS, SPREAD_ROUNDS, flat_disc_decreases, hemisphere_stitches
from chartmaker.knit.wedge import DECREASES, narrowed, takes, widths
from chartmaker.model.band import Band
from chartmaker.model.bounds import MOST_STITCHES, require_one_of, require_within
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands, with_bands
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round

ROUND, FLAT, POINTED = "round", "flat", "pointed"
PROFILES = (ROUND, FLAT, POINTED)
"""A hemisphere, a wheel that lies flat, a cone."""
FEWEST_SECTIONS, MOST_SECTIONS = 4, 12
FEWEST_DRAWN, MOST_DRAWN = 6, 15
"""Stitches that are drawn up at the top (craft pages)."""
USUAL_DRAWN = 10
"""What a round or a flat crown comes nearest to: the middle of what is drawn up. A pointed one takes the fewest."""
POINT_SLANT = 1 / 3
"""Length of a pointed crown along the fabric, as a share of the circumference: a cone about as high as the hat is
wide at its foot. Common practice, no source."""
MOST_POINT_ROUNDS = 300
CLOSING = 0.1
"""The share of its stitches that a band of a crown loses at least; one that loses fewer prepares a count."""
MOST_BETWEEN = 12
"""Rounds of plain bands between two closing ones that still belong to the crown."""

Curve = Callable[[float], float]
"""Stitches of a profile after so many rounds."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Crown:
    """How the top of a hat is shaped; with the count below it and the gauge that says every round."""

    profile: str = ROUND
    sections: int = 6
    decrease: str = "paired"
    rounds: int | None = None
    """Of a pointed crown; None for one as long as `POINT_SLANT` says. Other profiles say it themselves."""

    def __post_init__(self) -> None:
        require_one_of("a crown's profile", self.profile, PROFILES)
        require_within("a crown's sections", self.sections, FEWEST_SECTIONS, MOST_SECTIONS)
        require_one_of("a crown's decrease", self.decrease, DECREASES)
        if self.rounds is not None:
            require_within("a pointed crown's rounds", self.rounds, 1, MOST_POINT_ROUNDS)

    @property
    def a_round_takes(self) -> int:
        """Stitches that go in a round in which every section is narrowed."""
        return self.sections * takes(self.decrease)


def sections_for(stitches: int) -> tuple[int, ...]:
    """Give the numbers of sections that divide a count."""
    return tuple(count for count in range(FEWEST_SECTIONS, MOST_SECTIONS + 1) if stitches % count == 0)


def steepest(crown: Crown, gauge: Gauge) -> float:
    """Give the stitches a round that a crown can lose at the most: a flat disc's, or all sections in every round.

    Raises ValueError, with a sentence, where one decreasing round is already more than the fabric can take.
    """
    disc = flat_disc_decreases(gauge)
    most = disc * (SPREAD_ROUNDS * GIVE + GIVE_ROUNDS)
    if crown.a_round_takes > most:
        raise ValueError(
            f"{crown.a_round_takes} stitches fewer in one round is more than the fabric takes without a pucker at this "
            f"gauge, {int(most)} at the most: take fewer sections, or single decreases"
        )
    return min(crown.a_round_takes, disc)


def crown_counts(crown: Crown, *, stitches: int, gauge: Gauge) -> tuple[int, ...]:
    """Give the stitches that each round of a crown leaves, from the first; the last is what is drawn up.

    After each round the count is within half of `Crown.a_round_takes` of the curve that `followed` gives.
    Raises ValueError, with a sentence, where the sections do not divide the stitches, or the crown cannot be made.
    """
    if stitches % crown.sections:
        others = ", ".join(map(str, sections_for(stitches))) or "none from 4 to 12"
        raise ValueError(f"{crown.sections} sections do not divide {stitches} stitches; those that do: {others}")
    ways = _ways(crown, stitches)
    curve = followed(crown, stitches=stitches, gauge=gauge)
    counts = [stitches]
    for coming in ways:
        middle = (counts[-1] + coming) / 2
        while curve(len(counts)) > middle + 1e-9:
            counts.append(counts[-1])
        counts.append(coming)
    return tuple(counts[1:])


def followed(crown: Crown, *, stitches: int, gauge: Gauge) -> Curve:
    """Give the curve that a crown's counts keep to: its profile, nowhere steeper than the crown can be."""
    most = steepest(crown, gauge)
    if crown.profile == ROUND:
        return _hemisphere(stitches, gauge, most)
    fall = most if crown.profile == FLAT else _cone_fall(crown, stitches, gauge)
    return lambda number: stitches - fall * number


def crown_bands(  # noqa: PLR0913 - each says another thing, and most leave the last three alone
    crown: Crown, *, stitches: int, gauge: Gauge, letters: str = "A", name: str = "crown", prepare: bool = False
) -> tuple[Band, ...]:
    """Make the bands of a crown on a round of `stitches`: one, whose repeat is a section, in ground alone.

    With `prepare`, a count that the sections do not divide is first brought to the next lower one that they do, in a
    band of its own of one round; without, that is a ValueError with a sentence, as is a crown that cannot be made.
    """
    spare = stitches % crown.sections
    before: tuple[Band, ...] = ()
    if prepare and spare:
        lead = math.ceil(crown.a_round_takes / flat_disc_decreases(gauge) / 2)
        change = changing_band(below=stitches, above=stitches - spare, letter=letters[0])
        rest = Round(letters[0], bytes(len(change.rounds[0])))
        before = (Band(name=f"before {name}", times=change.times, rounds=(*change.rounds, *(rest,) * lead)),)
        stitches -= spare
    counts = crown_counts(crown, stitches=stitches, gauge=gauge)
    rounds, width = [], stitches // crown.sections
    for count in counts:
        here = count // crown.sections
        shaping = narrowed(width, crown.decrease) if here < width else b""
        rounds.append(Round(letters, bytes(here), shaping))
        width = here
    return (*before, Band(name=name, times=crown.sections, rounds=tuple(rounds)))


def crown_start(design: Design) -> int | None:
    """Give the index of the first band of the crown; None where no band closes the hat.

    The crown is the bands at the top that lose a tenth of their stitches or more, a preparing round just below them,
    and a plain band between two such.
    """
    bands = design.bands
    closing = [index for index, band in enumerate(bands) if _loses(band) >= CLOSING]
    if not closing:
        return None
    start = closing[-1]
    for index in range(start - 1, -1, -1):
        lost = _loses(bands[index])
        between = sum(len(band.rounds) for band in bands[index + 1 : start])
        if (lost >= CLOSING and between <= MOST_BETWEEN) or (prepares(bands[index]) and not between):
            start = index
        elif lost:
            break
    return start


def with_crown(
    design: Design, crown: Crown, *, letters: str | None = None, keep_pattern: bool = True, prepare: bool = True
) -> ReplaceBands | None:
    """Make the edit that gives a design this crown on the count that is there, in place of the crown that it has.

    What was drawn on the old crown is kept, the middle of its section on that of the new one, and so are its letters
    unless others are given. None where nothing changes. Raises ValueError, with a sentence, for a crown that cannot be
    made.
    """
    body, old = body_and_crown(design)
    last = body[-1].rounds[-1]
    bands = crown_bands(
        crown,
        stitches=stitches_below_crown(design),
        gauge=design.gauge,
        letters=letters or last.letters[0],
        name=old[-1].name if old else "crown",
        prepare=prepare,
    )
    if keep_pattern:
        top = carried([band for band in old if not prepares(band)], bands[-1])
        bands = (*bands[:-1], _in_letters(top, letters) if letters else top)
    return with_bands(design, (*body, *bands), "Shape the crown")


def stitches_below_crown(design: Design) -> int:
    """Give the count that a design's crown begins on, or would; ValueError where it has nothing below it."""
    last = body_and_crown(design)[0][-1]
    return last.stitches(len(last.rounds) - 1)


def body_and_crown(design: Design) -> tuple[tuple[Band, ...], tuple[Band, ...]]:
    """Part the bands where the crown begins: in a hat of one band, at its first decrease.

    Raises ValueError, with a sentence, where the crown has nothing below it.
    """
    start = crown_start(design)
    if start is None:
        return design.bands, ()
    if start:
        return design.bands[:start], design.bands[start:]
    whole = design.bands[0]
    first = next((index for index, line in enumerate(whole.rounds) if line.eaten > len(line)), 0)
    if not first:
        raise ValueError("the hat has no round below its crown")
    lower, upper = (replace(whole, rounds=part) for part in (whole.rounds[:first], whole.rounds[first:]))
    return (lower,), (replace(upper, name="crown"), *design.bands[1:])


def prepares(band: Band) -> bool:
    """Tell whether a band takes a few stitches away, so that the sections of a crown divide the rest."""
    return 0 < _loses(band) < CLOSING


def _loses(band: Band) -> float:
    """Give the share of its stitches that a band loses; negative where it gains."""
    eaten = band.rounds[0].eaten
    return 1 - len(band.rounds[-1]) / eaten if eaten else 0.0


def _in_letters(band: Band, letters: str) -> Band:
    rounds = (
        replace(line, letters=letters, cells=bytes(min(part, len(letters) - 1) for part in line.cells))
        for line in band.rounds
    )
    return replace(band, rounds=tuple(rounds))


def _ways(crown: Crown, stitches: int) -> list[int]:
    """Give the counts after each decreasing round, down to the one that is drawn up."""
    if not MOST_DRAWN < stitches <= MOST_STITCHES:
        raise ValueError(f"a crown begins with {MOST_DRAWN + 1} to {MOST_STITCHES} stitches, not {stitches}")
    counts = [width * crown.sections for width in widths(stitches // crown.sections, crown.decrease)]
    ends = [count for count in counts if FEWEST_DRAWN <= count <= MOST_DRAWN]
    if crown.profile == POINTED:
        end = min(ends)
    else:
        # A lone last decrease would draw the top out into a nipple; it stands only where it must.
        whole = [count for count in ends if (stitches - count) % crown.a_round_takes == 0]
        end = min(whole or ends, key=lambda count: (abs(count - USUAL_DRAWN), count))
    return counts[1 : counts.index(end) + 1]


def _hemisphere(stitches: int, gauge: Gauge, most: float) -> Curve:
    """Follow a hemisphere until it falls by `most` stitches a round, and from there a line.

    Its count S₀·cos(πk / 2N) falls by 2π·h/w · sin(πk / 2N) a round: at the top as fast as a flat disc.
    """
    quarter = stitches * gauge.stitch_width_cm / 4 / gauge.round_height_cm
    turn = 2 * quarter / math.pi * math.asin(min(1.0, most / flat_disc_decreases(gauge)))

    def curve(number: float) -> float:
        at = min(number, turn)
        return hemisphere_stitches(gauge, stitches=stitches, round_number=at) - most * (number - at)

    return curve


def _cone_fall(crown: Crown, stitches: int, gauge: Gauge) -> float:
    """Give the stitches a round by which a cone falls, so that its last decrease stands in its last round.

    Raises ValueError, with a sentence, where it has too few rounds.
    """
    ways, most = _ways(crown, stitches), steepest(crown, gauge)
    before = ways[-2] if len(ways) > 1 else stitches
    to_middle_of_last = stitches - (before + ways[-1]) / 2
    fewest = math.ceil(to_middle_of_last / most - 1e-9)
    slant = stitches * gauge.stitch_width_cm * POINT_SLANT / gauge.round_height_cm
    rounds = crown.rounds or max(fewest, round(slant))
    if rounds < fewest:
        raise ValueError(
            f"a point of {rounds} rounds from {stitches} stitches would pucker; "
            f"{crown.sections} sections take {fewest} rounds or more"
        )
    return to_middle_of_last / rounds
