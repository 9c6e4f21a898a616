"""What runs behind each stitch of a round: which strand is carried past it, and where a float begins and ends."""

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.floats import floats_between
from chartmaker.model.round import Round
from chartmaker.model.stitches import Part

FROM_BEFORE, TO_NEXT, LONG_FROM_BEFORE, LONG_TO_NEXT = 1, 2, 4, 8
"""A float runs behind the half of a stitch next to the one knitted before it, or to the one after; and it is long."""


@lru_cache(maxsize=4096)
def strands_behind(line: Round, longest: int) -> NDArray[np.uint8]:
    """Give the strands behind each stitch of a repeat, and how they go on over its join.

    Args:
        line: one repeat of a round.
        longest: stitches that a float may pass without being long.

    Returns:
        Sums of the four signs above, shape (stitches, 3), by the part whose letter is carried. A letter that plays
        two parts is the first of them. Behind the stitches where a float begins and ends it takes half of each.
    """
    found = np.zeros((len(line), len(Part)), dtype=np.uint8)
    floats = floats_between(np.frombuffer(line.cells_by_letter, np.uint8), (len(line),))
    part_of = {ord(letter) - ord("A"): part for part, letter in reversed(tuple(enumerate(line.letters)))}
    for letter, start, length in zip(
        floats.letter.tolist(), floats.start.tolist(), floats.length.tolist(), strict=True
    ):
        of_part = found[:, part_of[letter]]
        before, after = FROM_BEFORE, TO_NEXT
        if length > longest:
            before, after = before | LONG_FROM_BEFORE, after | LONG_TO_NEXT
        of_part[(start - 1) % len(line)] |= after
        of_part[(start + np.arange(length)) % len(line)] = before | after
        of_part[(start + length) % len(line)] |= before
    found.flags.writeable = False
    return found
