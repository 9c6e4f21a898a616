"""How the codes of a chart are shown under one view: their colours, their signs, and what the back tells."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from chartmaker.app import shades
from chartmaker.app.letter_menu import ALPHABET
from chartmaker.app.signs import letter_marks
from chartmaker.app.views import Surface, view_named

if TYPE_CHECKING:
    from PySide6.QtGui import QColor

    from chartmaker.appraisal import Appraisal
    from chartmaker.model.round import Round
    from chartmaker.sheets.marks import Mark


@dataclass(frozen=True, slots=True)
class CaughtRow:
    """Where the long floats of a round are caught, as long as the round is still this one."""

    row: int
    line: Round
    places: tuple[tuple[int, int], ...]
    """Stitch in the repeat, and the part whose letter is caught there."""


@dataclass(frozen=True, slots=True)
class Look:
    """A colour for each code, and the letters that need a sign to be told apart."""

    view: str
    surface: Surface
    colours: tuple[QColor, ...]
    """One for each code of a `ChartGrid`."""
    signed: tuple[tuple[str, Mark | None], ...]
    """Letters drawn with a mark, or written where it is None."""
    longest: int = 0
    """Stitches that a float may pass without being long."""
    caught: tuple[CaughtRow, ...] = ()
    """On the back of the work."""

    @classmethod
    def of(cls, appraisal: Appraisal, view: str, *, severity: float = 1.0) -> Look:
        """Make the look of an appraised design under a view, by its id."""
        seen = view_named(view)
        live = [shades.letter_colour(appraisal, letter, view=view, severity=severity) for letter in ALPHABET]
        colours = (*live, *map(shades.ghosted, live), shades.SURROUND)
        unknown = tuple((letter, None) for letter in ALPHABET if shades.known_shade(appraisal, letter) is None)
        signed = tuple(letter_marks(appraisal).items()) if seen.tint == "paper" else unknown
        design = appraisal.design
        longest = math.floor(design.limits.float_cm * (1 + 1e-9) / design.gauge.stitch_width_cm)
        caught = _caught(appraisal) if seen.surface == "back" else ()
        return cls(view, seen.surface, colours, signed, longest, caught)

    def rows_that_differ(self, other: Look) -> tuple[int, ...] | None:
        """Give the rows that another look shows otherwise; None where that is any of them."""
        if replace(self, caught=()) != replace(other, caught=()):
            return None
        return tuple({row.row for row in set(self.caught) ^ set(other.caught)})


def _caught(appraisal: Appraisal) -> tuple[CaughtRow, ...]:
    lines = [line for _, line in appraisal.design.rounds()]
    places: dict[int, set[tuple[int, int]]] = {}
    for found in appraisal.long_floats:
        line = lines[found.round]
        inside = {(stitch, line.letters.index(found.letter)) for stitch in found.catches if stitch < len(line)}
        places.setdefault(found.round, set()).update(inside)
    return tuple(CaughtRow(row, lines[row], tuple(sorted(found))) for row, found in sorted(places.items()))
