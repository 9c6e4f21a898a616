"""A design: the hat, its bands, its colourways and the copies of the lots that they use."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from chartmaker.model.band import Band
from chartmaker.model.bounds import (
    MOST_ROUNDS,
    MOST_SWATCHES,
    require_letter,
    require_short,
    require_text,
    require_within,
)
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import Hat
from chartmaker.model.palette import Palette
from chartmaker.model.round import Round
from chartmaker.model.settings import Allowances, Limits, Viewing


@dataclass(frozen=True, slots=True)
class Colourway:
    """Which lot each letter is."""

    name: str
    lots: tuple[tuple[str, str], ...] = ()
    """Pairs of letter and lot id, in the order in which they are written; a letter without a pair has no lot yet."""

    def __post_init__(self) -> None:
        require_short("a colourway's name", self.name)
        letters = [letter for letter, _ in self.lots]
        for letter in letters:
            require_letter("a colourway's letter", letter)
        if len(set(letters)) < len(letters):
            raise ValueError(f"colourway {self.name!r} gives a letter twice")
        for _, lot in self.lots:
            require_text("a lot's id", lot)

    def lot_of(self, letter: str) -> str | None:
        """Give the id of the lot that a letter is, or None where it has none yet."""
        return next((lot for name, lot in self.lots if name == letter), None)

    def assigning(self, letter: str, lot: str | None) -> "Colourway":
        """Give this colourway with one letter set to another lot, in its place or in alphabetical order if new."""
        if lot is None:
            return replace(self, lots=tuple(pair for pair in self.lots if pair[0] != letter))
        if self.lot_of(letter) is not None:
            return replace(self, lots=tuple((name, lot if name == letter else old) for name, old in self.lots))
        before = tuple(pair for pair in self.lots if pair[0] < letter)
        after = tuple(pair for pair in self.lots if pair[0] > letter)
        return replace(self, lots=(*before, (letter, lot), *after))


@dataclass(frozen=True, slots=True, kw_only=True)
class Design:
    """Everything of one hat. It never changes: an edit gives a new design."""

    title: str = ""
    notes: str = ""
    palette_file: str = ""
    """Where its lots were copied from, relative to the design's own file; empty when it stands alone."""
    hat: Hat = Hat()
    gauge: Gauge = Gauge()
    metres_per_100g: float = 460.0
    """Grist of what a letter is knitted with, unless its lot's yarn says otherwise."""
    swatches: tuple[Swatch, ...] = ()
    """What the loop length is measured on; without one it is reckoned from gauge."""
    allowances: Allowances = Allowances()
    limits: Limits = Limits()
    viewing: Viewing = Viewing()
    colourways: tuple[Colourway, ...] = ()
    """The first is the one in use."""
    bands: tuple[Band, ...]
    """From the cast-on edge up."""
    palette: Palette = Palette()
    """Copies of the yarns, baths and lots that the colourways use."""

    def __post_init__(self) -> None:
        require_short("title", self.title)
        require_short("notes", self.notes)
        require_within("metres_per_100g", self.metres_per_100g, 10, 5000)
        if not self.bands:
            raise ValueError("a design has no bands")
        count = sum(len(band.rounds) for band in self.bands)
        if count > MOST_ROUNDS:
            raise ValueError(f"a design has {count} rounds, more than {MOST_ROUNDS}")
        if len(self.swatches) > MOST_SWATCHES:
            raise ValueError(f"a design has {len(self.swatches)} swatches, more than {MOST_SWATCHES}")
        known = {lot.id for lot in self.palette.lots}
        for colourway in self.colourways:
            for letter, lot in colourway.lots:
                if lot not in known:
                    raise ValueError(
                        f"colourway {colourway.name!r}: letter {letter} is lot {lot!r}, which is not there"
                    )

    @property
    def colourway(self) -> Colourway:
        """The colourway in use; an empty one where there is none."""
        return self.colourways[0] if self.colourways else Colourway("")

    def using(self, name: str) -> "Design":
        """Give this design with the named colourway put first.

        Raises ValueError where there is none of that name.
        """
        chosen = [colourway for colourway in self.colourways if colourway.name == name]
        if not chosen:
            names = ", ".join(repr(colourway.name) for colourway in self.colourways) or "none"
            raise ValueError(f"there is no colourway {name!r}; the design has {names}")
        others = tuple(colourway for colourway in self.colourways if colourway is not chosen[0])
        return replace(self, colourways=(chosen[0], *others))

    def rounds(self) -> Iterator[tuple[Band, Round]]:
        """Walk all rounds from the cast-on edge up, each with its band."""
        for band in self.bands:
            for line in band.rounds:
                yield band, line

    @property
    def letters_in_use(self) -> str:
        """Every letter that some stitch, edge or trim is worked in, in alphabetical order."""
        letters = {letter for _, line in self.rounds() for letter in line.letters_in_use}
        letters |= {self.hat.cast_on.letter, self.hat.finish.letter}
        letters |= {trim.letter for trim in self.hat.trims}
        return "".join(sorted(letters))
