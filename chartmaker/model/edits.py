"""Changes to a design as values: each can be applied, and each gives the edit that takes it back.

The law that all keep: `edit.inverse().applied_to(edit.applied_to(design)) == design`.
An edit holds what stood before as well as what comes after; applied to a design that differs from what it remembers
it raises ValueError rather than overwrite something unseen.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any, Protocol

from chartmaker.model.band import Band
from chartmaker.model.design import Colourway, Design
from chartmaker.model.palette import Palette
from chartmaker.model.round import Round

ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


class Edit(Protocol):
    """What every edit can do."""

    @property
    def text(self) -> str:
        """What the edit does, as an undo menu tells it."""

    def applied_to(self, design: Design) -> Design:
        """Give the changed design."""

    def inverse(self) -> "Edit":
        """Give the edit that takes this one back."""


@dataclass(frozen=True, slots=True)
class ReplaceRounds:
    """Put other rounds in the place of some: drawing, shading and shaping are all this."""

    band: int
    changes: tuple[tuple[int, Round, Round], ...]
    """Index in the band, what stood there, what comes."""
    text: str

    def applied_to(self, design: Design) -> Design:
        """Give the design with the rounds replaced."""
        band = design.bands[self.band]
        rounds = list(band.rounds)
        for index, before, after in self.changes:
            if rounds[index] != before:
                raise ValueError(f"round {index + 1} of band {band.name!r} is not what the edit remembers")
            rounds[index] = after
        return _with_band(design, self.band, replace(band, rounds=tuple(rounds)))

    def inverse(self) -> "ReplaceRounds":
        """Give the edit that puts the old rounds back."""
        return replace(self, changes=tuple((index, after, before) for index, before, after in self.changes))


@dataclass(frozen=True, slots=True)
class AssignLot:
    """Make a letter of the colourway in use another lot, and take a copy of that lot into the design if it is new."""

    before: tuple[tuple[Colourway, ...], Palette]
    after: tuple[tuple[Colourway, ...], Palette]
    text: str

    def applied_to(self, design: Design) -> Design:
        """Give the design with the letter assigned."""
        if (design.colourways, design.palette) != self.before:
            raise ValueError("the colourways are not what the edit remembers")
        colourways, palette = self.after
        return replace(design, colourways=colourways, palette=palette)

    def inverse(self) -> "AssignLot":
        """Give the edit that puts the old lot back."""
        return replace(self, before=self.after, after=self.before)


@dataclass(frozen=True, slots=True)
class ReplaceSetting:
    """Put another value in one field of a design: hat, gauge, title, or the order of its colourways."""

    field: str
    before: Any
    after: Any
    text: str

    def applied_to(self, design: Design) -> Design:
        """Give the design with the field replaced."""
        if getattr(design, self.field) != self.before:
            raise ValueError(f"{self.field} is not what the edit remembers")
        changes: dict[str, Any] = {self.field: self.after}
        return replace(design, **changes)

    def inverse(self) -> "ReplaceSetting":
        """Give the edit that puts the old value back."""
        return replace(self, before=self.after, after=self.before)


@dataclass(frozen=True, slots=True)
class ReplaceBands:
    """Put other bands in the place of all: adding, removing and moving bands and rounds."""

    before: tuple[Band, ...]
    after: tuple[Band, ...]
    text: str

    def applied_to(self, design: Design) -> Design:
        """Give the design with the bands replaced."""
        if design.bands != self.before:
            raise ValueError("the bands are not what the edit remembers")
        return replace(design, bands=self.after)

    def inverse(self) -> "ReplaceBands":
        """Give the edit that puts the old bands back."""
        return replace(self, before=self.after, after=self.before)


@dataclass(frozen=True, slots=True)
class Together:
    """Several edits as one step, each applied to what the one before it gives."""

    edits: tuple[Edit, ...]
    text: str

    def applied_to(self, design: Design) -> Design:
        """Give the design with all of them applied, the first first."""
        for edit in self.edits:
            design = edit.applied_to(design)
        return design

    def inverse(self) -> "Together":
        """Give the edit that takes them back, the last first."""
        return replace(self, edits=tuple(edit.inverse() for edit in reversed(self.edits)))


def paint(design: Design, *, band: int, cells: dict[tuple[int, int], int], text: str) -> ReplaceRounds:
    """Make the edit that gives cells `(round index in the band, stitch index)` these parts.

    A round that has no letter yet for a part that is painted gets the letter that the nearest round of the band uses
    for it. Cells outside the band are passed over.
    """
    rounds = design.bands[band].rounds
    painted: dict[int, bytearray] = {}
    for (index, stitch), part in cells.items():
        if 0 <= index < len(rounds) and 0 <= stitch < len(rounds[index]):
            painted.setdefault(index, bytearray(rounds[index].cells))[stitch] = part
    return redraw(design, band=band, drawn={index: bytes(parts) for index, parts in painted.items()}, text=text)


def redraw(design: Design, *, band: int, drawn: dict[int, bytes], text: str) -> ReplaceRounds:
    """Make the edit that gives rounds, by index in the band, other cells, as many as they have.

    Letters come as `paint` gives them.
    """
    rounds = design.bands[band].rounds
    givers: dict[int, list[int]] = {}
    changes = []
    for index, cells in sorted(drawn.items()):
        before = rounds[index]
        if cells != before.cells:
            letters = before.letters
            if cells.translate(None, bytes(range(len(letters)))):
                letters = _letters_for(rounds, index, parts_needed=max(cells) + 1, givers=givers)
            changes.append((index, before, replace(before, letters=letters, cells=cells)))
    return ReplaceRounds(band, tuple(changes), text)


def reshade(design: Design, *, band: int, letters: dict[int, str], text: str) -> ReplaceRounds:
    """Make the edit that gives rounds, by index in the band, these letters; the pattern stays as it is.

    Raises ValueError where a round would lose the letter of a part that it draws.
    """
    rounds = design.bands[band].rounds
    changes = tuple(
        (index, rounds[index], replace(rounds[index], letters=new))
        for index, new in sorted(letters.items())
        if new != rounds[index].letters
    )
    return ReplaceRounds(band, changes, text)


def assign(design: Design, letter: str, lot: str | None, *, source: Palette | None = None) -> AssignLot:
    """Make the edit that makes a letter of the colourway in use this lot.

    The lot is taken from `source` where the design has no copy of it yet.
    Raises ValueError where the lot is in neither.
    """
    palette = design.palette
    if lot is not None and palette.lot(lot) is None:
        palette = palette.with_lot_from(source or Palette(), lot)
    first = (design.colourways[0] if design.colourways else Colourway("first")).assigning(letter, lot)
    text = f"Make {letter} {lot}" if lot else f"Take the lot off {letter}"
    return AssignLot((design.colourways, design.palette), ((first, *design.colourways[1:]), palette), text)


def one_edit(design: Design, edits: Sequence[ReplaceRounds]) -> Edit | None:
    """Join edits of different bands into one, so that one gesture is one step; None where they change nothing."""
    real = [edit for edit in edits if edit.changes]
    if not real:
        return None
    if len(real) == 1:
        return real[0]
    after = design
    for edit in real:
        after = edit.applied_to(after)
    return ReplaceBands(design.bands, after.bands, real[0].text)


def with_bands(design: Design, bands: Sequence[Band], text: str) -> ReplaceBands | None:
    """Make the edit that gives a design these bands; None where it has them already.

    Raises ValueError, with a sentence, where the design's rules refuse them.
    """
    edit = ReplaceBands(design.bands, tuple(bands), text)
    if edit.after == edit.before:
        return None
    edit.applied_to(design)
    return edit


def _letters_for(rounds: tuple[Round, ...], index: int, *, parts_needed: int, givers: dict[int, list[int]]) -> str:
    """Give a round's letters with those that it lacks; `givers` keeps, by part, which rounds have a letter for it."""
    letters = rounds[index].letters
    for part in range(len(letters), parts_needed):
        if part not in givers:
            givers[part] = [other for other, line in enumerate(rounds) if len(line.letters) > part]
        nearest = sorted(givers[part], key=lambda other: abs(other - index))
        donors = (rounds[other].letters[part] for other in nearest)
        letters += next(letter for letter in (*donors, *ALPHABET) if letter not in letters)
    return letters


def _with_band(design: Design, index: int, band: Band) -> Design:
    return replace(design, bands=(*design.bands[:index], band, *design.bands[index + 1 :]))
