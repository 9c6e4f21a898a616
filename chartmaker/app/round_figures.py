"""The figures of each round as the ledger shows them, also while those of the present design are still to come."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.appraisal import Appraisal, RoundAppraisal
    from chartmaker.model.design import Design


@dataclass(frozen=True, slots=True)
class Figures:
    """What one round comes to."""

    entry: RoundAppraisal
    is_late: bool
    """Whether the round was drawn on since: these are what it came to before."""


class RoundFigures:
    """Finds the figures of a row of the chart, whichever design was appraised last."""

    def __init__(self, document: OpenDesign) -> None:
        self._document = document
        self._found: tuple[Figures | None, ...] = ()
        self._of: tuple[Design, Appraisal] | None = None

    def at(self, row: int) -> Figures | None:
        """Give the figures of a row; None where the round is new and none are known."""
        now = (self._document.design, self._document.appraisal)
        if self._of is None or self._of[0] is not now[0] or self._of[1] is not now[1]:
            self._of, self._found = now, figures_of(*now)
        return self._found[row] if 0 <= row < len(self._found) else None


def figures_of(design: Design, appraisal: Appraisal) -> tuple[Figures | None, ...]:
    """Give the figures of every round of a design from the appraisal of it, or of an older one.

    A round that was only moved brings its own; one that was drawn on has the last ones of its place, if no place moved.
    """
    if appraisal.design is design:
        return tuple(Figures(entry, is_late=False) for entry in appraisal.rounds)
    before = [line for _, line in appraisal.design.rounds()]
    now = [line for _, line in design.rounds()]
    moved = {id(line): Figures(entry, is_late=False) for line, entry in zip(before, appraisal.rounds, strict=True)}
    if len(now) != len(before):
        return tuple(moved.get(id(line)) for line in now)
    # The same round may stand in several places, so each is first looked for in its own.
    return tuple(
        Figures(entry, is_late=False) if line is old else moved.get(id(line), Figures(entry, is_late=True))
        for line, old, entry in zip(now, before, appraisal.rounds, strict=True)
    )
