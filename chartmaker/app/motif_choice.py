"""Which motifs the shelf offers for a band: by family, by words, and by how their repeat goes into it. No Qt here."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from chartmaker.model.motif import fits

if TYPE_CHECKING:
    from chartmaker.model.band import Band
    from chartmaker.model.motif import Motif

Fit = Literal["repeat", "round", "any"]
"""What a motif's repeat must divide: the band's repeat, the stitches of the whole round, or nothing."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MotifChoice:
    """What is asked for."""

    family: str = ""
    """Empty is any."""
    words: str = ""
    """Each must be found in the motif's name, id, family or tags."""
    fit: Fit = "repeat"

    def takes(self, motif: Motif, band: Band) -> bool:
        """Tell whether the shelf offers a motif for a band.

        A shaped one is laid in above the band, so what counts for it is the whole round that it is knitted on.
        """
        if self.family and motif.family != self.family:
            return False
        told = " ".join((motif.name, motif.id, motif.family, *motif.tags)).casefold()
        if not all(word in told for word in self.words.casefold().split()):
            return False
        if self.fit == "any":
            return True
        is_whole = self.fit == "round" or motif.is_shaped
        return fits(motif, band.stitches(len(band.rounds) - 1) if is_whole else len(band.rounds[0]))
