"""The whole hat spread flat on a grid of cells, with the cells that no stitch covers."""

from dataclasses import dataclass
from itertools import groupby

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.layout import Fabric
from chartmaker.knit.outline import chart_offsets, chart_width
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.round import Round

NO_STITCH = 255
"""The letter code of a cell that no stitch covers."""
WIDEST_DRIFT = 4
"""A drawing more than this many times as wide as its widest round is set flush at the right instead."""


@dataclass(frozen=True, slots=True, eq=False)
class FlatCells:
    """Letters and texture of every cell, index (round, column); column 0 is the right-most, round 0 the first."""

    letters: NDArray[np.uint8]
    """Letter code 0-25, `NO_STITCH` where there is none."""
    purl: NDArray[np.bool_]
    """Whether the stitch shows its purl side."""


@dataclass(frozen=True, slots=True)
class _Wedges:
    """Bands drawn as one, because they are worked the same number of times."""

    bands: tuple[Band, ...]

    @property
    def times(self) -> int:
        return self.bands[0].times

    @property
    def rounds(self) -> tuple[Round, ...]:
        return tuple(line for band in self.bands for line in band.rounds)

    def placed(self) -> tuple[tuple[int, ...], int]:
        """Give the column of each round's stitch 1 in the wedge, and the columns from wedge to wedge."""
        rounds = self.rounds
        widest = max(len(line) for line in rounds)
        pitch = chart_width(rounds)
        if pitch > WIDEST_DRIFT * widest:
            return (0,) * len(rounds), widest
        return chart_offsets(rounds), pitch


def flat_cells(design: Design, fabric: Fabric) -> FlatCells:
    """Spread the hat out, one whole round wide, repeat by repeat; narrower bands stand in the middle."""
    stacked = [_Wedges(tuple(bands)) for _, bands in groupby(design.bands, key=lambda band: band.times)]
    placed = [wedges.placed() for wedges in stacked]
    columns = max(wedges.times * pitch for wedges, (_, pitch) in zip(stacked, placed, strict=True))
    letters = np.full((fabric.rounds, columns), NO_STITCH, dtype=np.uint8)
    purl = np.zeros((fabric.rounds, columns), dtype=np.bool_)
    number = 0
    for wedges, (offsets, pitch) in zip(stacked, placed, strict=True):
        span = wedges.times * pitch
        right = (columns - span) // 2
        for line, texture, offset in zip(wedges.rounds, _textures(wedges.bands), offsets, strict=True):
            here = slice(offset, offset + len(line))
            row = slice(right, right + span)
            whole = fabric.letters[fabric.round(number)].reshape(wedges.times, len(line))
            letters[number, row].reshape(wedges.times, pitch)[:, here] = whole
            purl[number, row].reshape(wedges.times, pitch)[:, here] = purl_of_repeat(texture, len(line))
            number += 1
    return FlatCells(letters, purl)


def purl_of_repeat(texture: str, length: int) -> NDArray[np.bool_]:
    """Tell which stitches of a repeat are purled; the texture runs over and over from stitch 1, empty is all knit."""
    signs = np.array([sign == "p" for sign in texture or "k"], dtype=np.bool_)
    return np.resize(signs, length)


def _textures(bands: tuple[Band, ...]) -> list[str]:
    return [band.texture for band in bands for _ in band.rounds]
