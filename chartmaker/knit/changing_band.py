"""A band of one round that brings one stitch count to another, its shaping spread evenly round."""

from math import gcd

from chartmaker.model.band import Band
from chartmaker.model.round import Round
from chartmaker.model.stitches import Shaping


def changing_band(*, below: int, above: int, letter: str) -> Band:
    """Make a band of one round that eats `below` stitches and has `above`, the shaping spread evenly.

    At most every second stitch can be made, or be a decrease.
    """
    times = gcd(below, above)
    cells, eaten = above // times, below // times
    count = abs(cells - eaten)
    sign = Shaping.MAKE if cells > eaten else Shaping.K2TOG
    signs = bytes(
        sign if (stitch + 1) * count // cells > stitch * count // cells else Shaping.PLAIN for stitch in range(cells)
    )
    name = "increase" if above > below else "decrease"
    return Band(name=name, times=times, rounds=(Round(letter, bytes(cells), signs),))
