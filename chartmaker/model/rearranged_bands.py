"""Bands put together anew out of the rounds that are there: what a structural edit of the past is kept as.

An edit that keeps the bands themselves keeps a whole chart as it was, where drawing has gone on since.
"""

import zlib
from collections.abc import Sequence
from dataclasses import dataclass, replace

from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands
from chartmaker.model.round import Round

Run = tuple[int, int, int]
"""Band, first round and the one after the last, among other bands."""


@dataclass(frozen=True, slots=True)
class Sketch:
    """One band, told by where its rounds are found among other bands."""

    name: str
    times: int
    texture: str
    pieces: tuple[Run | Round, ...]
    """Runs that are found there, and rounds that are not."""

    def drawn(self, others: Sequence[Band]) -> Band:
        """Give the band."""
        rounds: list[Round] = []
        for piece in self.pieces:
            if isinstance(piece, Round):
                rounds.append(piece)
            else:
                band, first, end = piece
                rounds.extend(others[band].rounds[first:end])
        return Band(name=self.name, times=self.times, texture=self.texture, rounds=tuple(rounds))


@dataclass(frozen=True, slots=True)
class RearrangeBands:
    """Put bands in the place of all, each told by where its rounds stood."""

    before: tuple[Sketch, ...]
    """What stood there, told by what comes."""
    after: tuple[Sketch, ...]
    """What comes, told by what stood there."""
    checksums: tuple[int, int]
    """Of what stood there, and of what comes."""
    text: str

    def applied_to(self, design: Design) -> Design:
        """Give the design with the bands rearranged."""
        if _checksum(design.bands) != self.checksums[0]:
            raise ValueError("the bands are not what the edit remembers")
        return replace(design, bands=tuple(sketch.drawn(design.bands) for sketch in self.after))

    def inverse(self) -> "RearrangeBands":
        """Give the edit that puts the old bands back."""
        return replace(self, before=self.after, after=self.before, checksums=self.checksums[::-1])


def rearranged(edit: ReplaceBands) -> RearrangeBands:
    """Give an edit that does the same and keeps only the rounds that it brings or takes away."""
    return RearrangeBands(
        _sketches(edit.before, edit.after),
        _sketches(edit.after, edit.before),
        (_checksum(edit.before), _checksum(edit.after)),
        edit.text,
    )


def _sketches(bands: Sequence[Band], others: Sequence[Band]) -> tuple[Sketch, ...]:
    places = {id(line): (band, index) for band, other in enumerate(others) for index, line in enumerate(other.rounds)}
    return tuple(Sketch(band.name, band.times, band.texture, _pieces(band, others, places)) for band in bands)


def _pieces(band: Band, others: Sequence[Band], places: dict[int, tuple[int, int]]) -> tuple[Run | Round, ...]:
    """Find the rounds of a band among others, in runs as long as they go."""
    pieces: list[Run | Round] = []
    for line in band.rounds:
        last = pieces[-1] if pieces else None
        if isinstance(last, tuple) and others[last[0]].rounds[last[2] : last[2] + 1] == (line,):
            pieces[-1] = (last[0], last[1], last[2] + 1)
        elif id(line) in places:
            found, index = places[id(line)]
            pieces.append((found, index, index + 1))
        else:
            pieces.append(line)
    return tuple(pieces)


def _checksum(bands: Sequence[Band]) -> int:
    checksum = 0
    for band in bands:
        checksum = zlib.crc32(repr((band.name, band.times, band.texture, len(band.rounds))).encode(), checksum)
        for line in band.rounds:
            checksum = zlib.crc32(line.letters.encode() + b"|" + line.cells + line.shaping, checksum)
    return checksum
