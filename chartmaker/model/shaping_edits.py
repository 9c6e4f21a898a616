"""Edits that make a stitch another way: plain, a decrease, an increase; the rounds of its band follow.

A decrease takes in the neighbour that it leans over, and a made stitch pushes its neighbours apart, so that the round
goes on eating what lies below. Its own count changes by that, and each round of the band above follows with the stitch
that stands there, as far as counts met before. What the first round of the next band makes of it is for its knitter
to decide: where it does not meet, that is a finding.
"""

from dataclasses import dataclass, replace
from itertools import accumulate

from chartmaker.model.band import Band
from chartmaker.model.counts import stitches_below
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceRounds
from chartmaker.model.round import Round
from chartmaker.model.stitches import EATEN, Part, Shaping

_SIDES = {
    Shaping.PLAIN: (),
    Shaping.K2TOG: ("right",),
    Shaping.SSK: ("left",),
    Shaping.CENTRED: ("right", "left"),
    Shaping.MAKE: (),
}
"""On which side of itself a stitch takes in neighbours: a decrease lies over the stitches that it leans towards."""


@dataclass(frozen=True, slots=True)
class Shaped:
    """What giving a stitch another sign comes to."""

    edit: ReplaceRounds
    """It may change nothing."""
    stitch: int
    """Where the stitch stands in its round afterwards."""


def shape(design: Design, *, band: int, index: int, stitch: int, sign: Shaping) -> Shaped:
    """Make the edit that gives one stitch a shaping sign, with all that follows in its band.

    Where the round ate too few or too many before, the sign mends that first and moves no other stitch.
    Raises ValueError where no plain stitch is left for a decrease to take in, or the rules of a band refuse its rounds.
    """
    old = design.bands[band]
    before = Shaping(old.rounds[index].shaping[stitch])
    below = stitches_below(design, band=band, index=index)
    short = 0 if below is None else below - old.rounds[index].eaten
    sheet = _Sheet(old)
    sheet.shaping[index][stitch] = sign
    if sign != before:
        stitch = sheet.settle(index, stitch, before, more=_left_over(EATEN[sign] - EATEN[before], short))
    edit = ReplaceRounds(band, sheet.changes(), _told(sign))
    edit.applied_to(design)
    return Shaped(edit, stitch)


def _left_over(more: int, short: int) -> int:
    """Give how many of the stitches eaten `more` than before are not those that the round was `short` of."""
    if more > 0:
        return more - min(more, max(short, 0))
    return more + min(-more, max(-short, 0))


def _told(sign: Shaping) -> str:
    words = {
        Shaping.PLAIN: "Knit plain",
        Shaping.K2TOG: "Knit two together",
        Shaping.SSK: "Slip, slip, knit",
        Shaping.CENTRED: "Decrease two, centred",
        Shaping.MAKE: "Make one",
    }
    return words[sign]


class _Sheet:
    """The rounds of a band while stitches come and go, from one round upwards."""

    def __init__(self, band: Band) -> None:
        self._band = band
        self.cells = [bytearray(line.cells) for line in band.rounds]
        self.shaping = [bytearray(line.shaping) for line in band.rounds]
        self._met = [index > 0 and line.eaten == len(band.rounds[index - 1]) for index, line in enumerate(band.rounds)]

    def settle(self, index: int, at: int, before: Shaping, *, more: int) -> int:
        """Let neighbours of a stitch that now has another sign go or come, so that it eats `more` and its round not.

        Returns where the stitch stands afterwards.
        """
        sign = Shaping(self.shaping[index][at])
        if more > 0:
            sides = [side for side in _SIDES[sign] if side not in _SIDES[before]]
            if before == Shaping.MAKE:
                sides.insert(0, "made")
            for side in sides[:more]:
                at = self._take_in(index, at, side)
        else:
            sides = [side for side in _SIDES[before] if side not in _SIDES[sign]]
            if sign == Shaping.MAKE:
                sides.append("made")
            for side in sides[len(sides) + more :]:
                at = self._let_out(index, at, side)
        return at

    def changes(self) -> tuple[tuple[int, Round, Round], ...]:
        """Give the rounds that came out otherwise, with what they were."""
        found = []
        for index, line in enumerate(self._band.rounds):
            after = replace(line, cells=bytes(self.cells[index]), shaping=bytes(self.shaping[index]))
            if after != line:
                found.append((index, line, after))
        return tuple(found)

    def _take_in(self, index: int, at: int, side: str) -> int:
        signs = self.shaping[index]
        left = next((place for place in range(at + 1, len(signs)) if signs[place] == Shaping.PLAIN), None)
        right = next((place for place in range(at - 1, -1, -1) if signs[place] == Shaping.PLAIN), None)
        wanted, other = (right, left) if side == "right" else (left, right)
        place = wanted if wanted is not None else other
        if place is None:
            raise ValueError("the round has no other plain stitch for this one to take in")
        if side == "made":
            # The made stitch goes: what stands here now is the one that it had pushed aside.
            self.cells[index][at] = self.cells[index][place]
        self._take_out(index, place)
        return at - 1 if place < at else at

    def _let_out(self, index: int, at: int, side: str) -> int:
        if side == "made":
            # What stood here moves on to the left, and the made stitch is new.
            self._put_in(index, at + 1, self.cells[index][at])
            self.cells[index][at] = Part.GROUND
            return at
        self._put_in(index, at + 1 if side == "left" else at, Part.GROUND)
        return at if side == "left" else at + 1

    def _take_out(self, index: int, place: int) -> None:
        """Take a stitch out of a round, and out of each round above the one that eats it."""
        while True:
            del self.cells[index][place], self.shaping[index][place]
            index += 1
            if index == len(self.cells) or not self._met[index]:
                return
            signs = self.shaping[index]
            ends = list(accumulate(EATEN[code] for code in signs))
            eater = next(number for number, end in enumerate(ends) if end > place)
            eaten = EATEN[signs[eater]]
            if eaten > 1:
                is_first = ends[eater] - eaten == place
                signs[eater] = Shaping.PLAIN if eaten == 2 else Shaping.SSK if is_first else Shaping.K2TOG
                return
            place = eater

    def _put_in(self, index: int, place: int, part: int) -> None:
        """Put a plain stitch into a round, and one of ground into each round above it."""
        while True:
            self.cells[index].insert(place, part)
            self.shaping[index].insert(place, Shaping.PLAIN)
            index += 1
            if index == len(self.cells) or not self._met[index]:
                return
            ends = accumulate(EATEN[code] for code in self.shaping[index])
            place, part = sum(end <= place for end in ends), Part.GROUND
