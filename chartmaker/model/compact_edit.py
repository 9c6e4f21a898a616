"""Edits of a design's past, kept small: a fill of a large chart brings a chart's worth of rounds, and that adds up.

A stroke shares all rounds but its own with the steps before and after it, and stays as it is.
"""

import zlib
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from itertools import groupby
from typing import Any

from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.edits import Edit, ReplaceBands, ReplaceRounds
from chartmaker.model.rearranged_bands import rearranged
from chartmaker.model.round import Round
from chartmaker.model.stitches import Part

WORTH_PACKING = 8_000
"""Stitches that an edit must draw anew before it saves anything that matters to keep only what differs."""

Place = tuple[int, int]
"""Band, and round in the band."""


@dataclass(frozen=True, slots=True)
class RedrawRounds:
    """Put rounds of the same length in the place of some, told by what differs: the bits that both have not alike.

    It is its own inverse but for what it remembers, since what differs is the same both ways.
    """

    runs: tuple[tuple[int, int, int], ...]
    """Band, first round and the one after the last of each run of rounds."""
    difference: bytes
    """Compressed: letters, cells and shaping of all rounds, before and after, joined by exclusive or."""
    before: int
    """Checksum of what stands there."""
    after: int
    """Checksum of what comes."""
    text: str

    def applied_to(self, design: Design) -> Design:
        """Give the design with the rounds drawn otherwise."""
        old = [design.bands[band].rounds[index] for band, index in self._places()]
        records = _records(old)
        if zlib.crc32(records) != self.before:
            raise ValueError("the rounds are not what the edit remembers")
        return _with_rounds(design, dict(zip(self._places(), _rounds(self._other(records), old), strict=True)))

    def inverse(self) -> "RedrawRounds":
        """Give the edit that puts the old rounds back."""
        return replace(self, before=self.after, after=self.before)

    def _places(self) -> Iterable[Place]:
        return ((band, index) for band, first, end in self.runs for index in range(first, end))

    def _other(self, records: bytes) -> bytes:
        return _differing(records, zlib.decompress(self.difference))


def compacted(edit: Edit) -> Edit:
    """Give an edit that does the same and takes up less memory; the edit itself where that is not worth while."""
    changes = _changes(edit)
    if not changes or any(len(before) != len(after) for _, before, after in changes):
        if isinstance(edit, ReplaceBands) and _stitches(edit.before) >= WORTH_PACKING:
            return rearranged(edit)
        return edit
    if sum(len(after) for _, _, after in changes) < WORTH_PACKING:
        return edit
    before, after = _records(line for _, line, _ in changes), _records(line for _, _, line in changes)
    return RedrawRounds(
        _runs([place for place, _, _ in changes]),
        zlib.compress(_differing(before, after)),
        zlib.crc32(before),
        zlib.crc32(after),
        edit.text,
    )


def _changes(edit: Edit) -> list[tuple[Place, Round, Round]]:
    """Give place, old and new of the rounds that an edit replaces; none where it changes anything else too."""
    if isinstance(edit, ReplaceRounds):
        return [((edit.band, index), before, after) for index, before, after in sorted(edit.changes, key=_index)]
    if not isinstance(edit, ReplaceBands) or [_but_rounds(band) for band in edit.before] != [
        _but_rounds(band) for band in edit.after
    ]:
        return []
    return [
        ((number, index), before, after)
        for number, (old, new) in enumerate(zip(edit.before, edit.after, strict=True))
        for index, (before, after) in enumerate(zip(old.rounds, new.rounds, strict=True))
        if before is not after
    ]


def _stitches(bands: Sequence[Band]) -> int:
    return sum(len(line) for band in bands for line in band.rounds)


def _index(change: tuple[int, Round, Round]) -> int:
    return change[0]


def _but_rounds(band: Band) -> tuple[Any, ...]:
    return band.name, band.times, band.texture, len(band.rounds)


def _runs(places: Sequence[Place]) -> tuple[tuple[int, int, int], ...]:
    """Join places that follow one another."""
    runs = []
    for (band, _), group in groupby(enumerate(places), key=lambda entry: (entry[1][0], entry[1][1] - entry[0])):
        indexes = [place[1] for _, place in group]
        runs.append((band, indexes[0], indexes[-1] + 1))
    return tuple(runs)


def _records(lines: Iterable[Round]) -> bytes:
    """Write rounds one after another: letters at the width of three, cells, shaping."""
    return b"".join(line.letters.encode().ljust(len(Part)) + line.cells + line.shaping for line in lines)


def _rounds(records: bytes, like: Iterable[Round]) -> Iterable[Round]:
    """Read rounds as long as some others; shaping that is the same is shared with them."""
    start = 0
    for old in like:
        cells, shaping = start + len(Part), start + len(Part) + len(old)
        start = shaping + len(old)
        now = records[shaping:start]
        yield Round(
            records[cells - len(Part) : cells].decode().rstrip(),
            records[cells:shaping],
            old.shaping if now == old.shaping else now,
        )


def _differing(first: bytes, second: bytes) -> bytes:
    joined = int.from_bytes(first, "little") ^ int.from_bytes(second, "little")
    return joined.to_bytes(len(first), "little")


def _with_rounds(design: Design, lines: dict[Place, Round]) -> Design:
    bands = list(design.bands)
    for number in {band for band, _ in lines}:
        rounds = tuple(lines.get((number, index), old) for index, old in enumerate(bands[number].rounds))
        bands[number] = replace(bands[number], rounds=rounds)
    return replace(design, bands=tuple(bands))
