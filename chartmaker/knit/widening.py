"""Where a hat widens: a tam's underside from the count of its brim to that of its rim, spread evenly both ways."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from math import ceil, gcd

from chartmaker.knit.profile import GIVE, SPREAD_ROUNDS, flat_disc_decreases
from chartmaker.model.band import Band
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from chartmaker.model.stitches import Shaping

MOST_MORE_ROUNDS = SPREAD_ROUNDS
"""Rounds past the fewest that lie flat that a widening may take for the sake of equal shares."""


@dataclass(frozen=True, slots=True)
class _Steps:
    """In which rounds a repeat gets wider, and how wide."""

    times: int
    ends: tuple[int, ...]
    """The increase rounds, counted from 1."""
    widths: tuple[int, ...]
    """Of a repeat: below, and after each increase round."""

    @property
    def gains(self) -> tuple[int, ...]:
        """Stitches that each increase round makes in a repeat."""
        return tuple(after - before for before, after in pairwise(self.widths))

    @property
    def is_workable(self) -> bool:
        """Whether every increase round makes some, and at most every second of its stitches."""
        return all(0 < gain <= width for gain, width in zip(self.gains, self.widths, strict=False))

    @property
    def has_equal_shares(self) -> bool:
        """Whether every increase round makes equally many."""
        return len(set(self.gains)) == 1

    def rate(self) -> float:
        """Give the most stitches a round that the fabric has to take, as `knit.profile` spreads them."""
        gaps = (end - start for start, end in pairwise((0, *self.ends)))
        return max(gain * self.times / min(gap, SPREAD_ROUNDS) for gain, gap in zip(self.gains, gaps, strict=True))


def widening_bands(
    below: int, above: int, *, gauge: Gauge, letter: str = "A", rounds: int | None = None
) -> tuple[Band, ...]:
    """Make the band that eats `below` stitches and comes to `above` over some rounds; none where they are equal.

    None lets it take as many rounds as lie flat on a plate, as a flat disc widens; in one round it gathers, as a tam
    may above its brim. At most every second stitch of a round is a made one, the gaps between made stitches differ by
    one at most, and so do those between increase rounds. Each increase round ends its share of the rounds, since the
    fabric spreads it over the plain ones before.
    Raises ValueError, with a sentence, for fewer stitches, or too few rounds.
    """
    if above < below:
        raise ValueError(f"a widening from {below} stitches cannot end with {above}, which are fewer")
    if above == below:
        return ()
    steps = _flat_steps(below, above, gauge) if rounds is None else _steps_in(below, above, rounds)
    lines, width = [], steps.widths[0]
    for number in range(1, steps.ends[-1] + 1):
        made = steps.gains[steps.ends.index(number)] if number in steps.ends else 0
        width += made
        lines.append(Round(letter, bytes(width), spread_evenly(width, made, Shaping.MAKE)))
    return (Band(name="widening", times=steps.times, rounds=tuple(lines)),)


def spread_evenly(width: int, count: int, sign: Shaping) -> bytes:
    """Give the shaping of a repeat of `width` stitches of which `count` have a sign, the gaps differing by one at most.

    The first gap is shorter by half, so that the sign does not stand where the rounds begin.
    """
    half = width // 2
    marks = [(place * count + half) // width for place in range(width + 1)]
    return bytes(sign if marks[place + 1] > marks[place] else Shaping.PLAIN for place in range(width))


def _flat_steps(below: int, above: int, gauge: Gauge) -> _Steps:
    """Find the shortest that lies flat, in equal shares where a few rounds more allow it."""
    disc = flat_disc_decreases(gauge)
    fewest = max(_fewest_increases(below, above), ceil((above - below) / disc))
    near = range(fewest, fewest + MOST_MORE_ROUNDS + 1)
    flat = [one for rounds in near for one in _choices(below, above, rounds) if one.rate() <= GIVE * disc]
    return next((one for one in flat if one.has_equal_shares), flat[0]) if flat else _steps_in(below, above, near[-1])


def _steps_in(below: int, above: int, rounds: int) -> _Steps:
    """Find the increase rounds of a widening that is so long."""
    fewest = _fewest_increases(below, above)
    if rounds < fewest:
        raise ValueError(
            f"{below} stitches become {above} in {fewest} rounds or more: a round can make every second stitch at most"
        )
    choices = list(_choices(below, above, rounds))
    return next((one for one in choices if one.has_equal_shares), choices[0])


def _choices(below: int, above: int, rounds: int) -> Iterator[_Steps]:
    """Walk the ways to widen in so many rounds, those with few increase rounds and many repeats first."""
    common = gcd(below, above)
    repeats = [times for times in range(common, 0, -1) if common % times == 0]
    fewest = max(_fewest_increases(below, above), ceil(rounds / SPREAD_ROUNDS))
    for increases in range(fewest, rounds + 1):
        ends = tuple((number + 1) * rounds // increases for number in range(increases))
        for times in repeats:
            gain = (above - below) // times
            widths = tuple(below // times + number * gain // increases for number in range(increases + 1))
            steps = _Steps(times, ends, widths)
            if steps.is_workable:
                yield steps
    ends = tuple(range(1, rounds + 1))
    yield _Steps(1, ends, tuple(round(below * (above / below) ** (number / rounds)) for number in range(rounds + 1)))


def _fewest_increases(below: int, above: int) -> int:
    """Give how many rounds it takes when every round at most doubles what is there."""
    count = 0
    while below < above:
        below, count = 2 * below, count + 1
    return count
