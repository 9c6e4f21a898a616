"""Every stitch of the hat in one row of numbers, round after round, as it comes off the needles."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.design import Design
from chartmaker.model.stitches import EATEN

STITCHES_EATEN: NDArray[np.intp] = np.array(EATEN, dtype=np.intp)
"""The model's table of stitches eaten by each `Shaping`, for whole arrays of them; read-only."""
STITCHES_EATEN.flags.writeable = False


@dataclass(frozen=True, slots=True, eq=False)
class Fabric:
    """The whole hat flat: stitch 1 of round 1 first, all repeats worked out; arrays are read-only."""

    starts: NDArray[np.intp]
    """Where each round begins in the flat arrays, and the total at the end: shape (rounds + 1,)."""
    letters: NDArray[np.uint8]
    """The letter of each stitch, 0 for A to 25 for Z."""
    parts: NDArray[np.uint8]
    """The `Part` of each stitch."""
    shaping: NDArray[np.uint8]
    """The `Shaping` of each stitch."""
    band_of: tuple[int, ...]
    """The band of each round, by index."""
    counts: tuple[int, ...]
    """Stitches of each round."""
    eaten: tuple[int, ...]
    """Stitches of the round below that each round eats."""
    meets: tuple[bool, ...]
    """Whether each round eats exactly what lies below it; the first must be all plain."""

    def round(self, index: int) -> slice:
        """Give the place of a round in the flat arrays."""
        return slice(int(self.starts[index]), int(self.starts[index + 1]))

    @property
    def rounds(self) -> int:
        """How many rounds there are."""
        return len(self.counts)

    @property
    def round_of(self) -> NDArray[np.intp]:
        """The round of each stitch, shape (stitches,)."""
        return np.repeat(np.arange(self.rounds), self.counts)


def lay_out(design: Design) -> Fabric:
    """Work every round of a design out over all its repeats."""
    letters: list[bytes] = []
    parts: list[bytes] = []
    shaping: list[bytes] = []
    band_of: list[int] = []
    eaten: list[int] = []
    for number, band in enumerate(design.bands):
        for line in band.rounds:
            letters.append(line.cells_by_letter * band.times)
            parts.append(line.cells * band.times)
            shaping.append(line.shaping * band.times)
            eaten.append(line.eaten * band.times)
            band_of.append(number)
    counts = tuple(len(cells) for cells in letters)
    first_is_plain = not any(shaping[0])
    meets = (first_is_plain, *(eats == below for eats, below in zip(eaten[1:], counts, strict=False)))
    return Fabric(
        starts=_frozen(np.concatenate(([0], np.cumsum(counts)))),
        letters=_flat(letters),
        parts=_flat(parts),
        shaping=_flat(shaping),
        band_of=tuple(band_of),
        counts=counts,
        eaten=tuple(eaten),
        meets=meets,
    )


def parents(fabric: Fabric) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Pair each stitch with the stitches of the round below that it eats, where the counts meet.

    Returns:
        The eating and the eaten stitch, as places in the flat arrays; both of shape (pairs,), in knitting order.
        A stitch that eats two stands twice, one that eats none not at all.
    """
    first = fabric.counts[0]
    eats = STITCHES_EATEN[fabric.shaping[first:]]
    above = np.arange(first, len(fabric.letters), dtype=np.intp)
    if all(fabric.meets[1:]):
        eater = above if not fabric.shaping[first:].any() else np.repeat(above, eats)
        return eater, np.arange(len(eater), dtype=np.intp)
    met = np.array(fabric.meets)
    eater = np.repeat(above, np.where(met[fabric.round_of[first:]], eats, 0))
    below = [
        np.arange(fabric.starts[index - 1], fabric.starts[index], dtype=np.intp)
        for index in range(1, fabric.rounds)
        if fabric.meets[index]
    ]
    return eater, np.concatenate([np.empty(0, dtype=np.intp), *below])


def _flat(rounds: list[bytes]) -> NDArray[np.uint8]:
    return np.frombuffer(b"".join(rounds), dtype=np.uint8)


def _frozen(array: NDArray[np.intp]) -> NDArray[np.intp]:
    array.flags.writeable = False
    return array
