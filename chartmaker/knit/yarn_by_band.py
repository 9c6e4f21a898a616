"""Where in the hat each letter's yarn goes: its stitches and floats, band by band."""

from dataclasses import dataclass

import numpy as np

from chartmaker.knit.floats import Floats
from chartmaker.knit.interval import Interval
from chartmaker.knit.layout import Fabric
from chartmaker.knit.loop import LoopLength
from chartmaker.knit.yarn import float_factors, grist
from chartmaker.model.bounds import MOST_LETTERS
from chartmaker.model.design import Design


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceYarn:
    """What one letter takes in one piece of the hat: a band, or a round."""

    piece: int
    """Index of the band or of the round, from the cast-on edge up."""
    letter: str
    stitches: int
    stitch_m: Interval
    float_m: Interval
    metres_per_100g: float

    @property
    def metres(self) -> Interval:
        """Stitches and floats together."""
        return self.stitch_m + self.float_m

    @property
    def grams(self) -> Interval:
        """The same in grams, by the letter's own grist."""
        return self.metres * (100 / self.metres_per_100g)


def yarn_by_band(design: Design, fabric: Fabric, floats: Floats, loop: LoopLength) -> tuple[PieceYarn, ...]:
    """Share stitches and floats out over the bands; the rest, tails and edges, belongs to none.

    Bands from the cast-on edge up, in each the letters that it uses, in alphabetical order.
    """
    return _by_piece(design, fabric, floats, loop, piece_of=fabric.band_of)


def yarn_by_round(design: Design, fabric: Fabric, floats: Floats, loop: LoopLength) -> tuple[PieceYarn, ...]:
    """Share stitches and floats out over the rounds, in the same order."""
    return _by_piece(design, fabric, floats, loop, piece_of=tuple(range(fabric.rounds)))


def _by_piece(
    design: Design, fabric: Fabric, floats: Floats, loop: LoopLength, *, piece_of: tuple[int, ...]
) -> tuple[PieceYarn, ...]:
    piece = np.array(piece_of)
    shape = (int(piece.max()) + 1, MOST_LETTERS)
    stitch_at = np.repeat(piece, fabric.counts) * MOST_LETTERS + fabric.letters
    stitches = np.bincount(stitch_at, minlength=shape[0] * shape[1]).reshape(shape)
    float_at = piece[floats.round] * MOST_LETTERS + floats.letter
    passed = np.bincount(float_at, weights=floats.length, minlength=shape[0] * shape[1]).reshape(shape)
    factors = float_factors(design)
    grists = {letter: grist(design, letter) for letter in design.letters_in_use}
    return tuple(
        PieceYarn(
            piece=number,
            letter=letter,
            stitches=int(stitches[number, code]),
            stitch_m=loop.cm * (int(stitches[number, code]) / 100),
            float_m=factors * float(passed[number, code]),
            metres_per_100g=grists[letter],
        )
        for number, code in np.argwhere(stitches).tolist()
        for letter in (chr(ord("A") + code),)
    )
