"""What the fit's side column shows of a design, worked out beside the window where it takes more than a moment."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from chartmaker.knit.fit import fit
from chartmaker.knit.fit_help import helps_beside
from chartmaker.knit.moved import Moved, have_measurements_moved, moved

if TYPE_CHECKING:
    from chartmaker.knit.fit import Help
    from chartmaker.model.design import Design
    from chartmaker.model.units import Units


@dataclass(frozen=True, slots=True, kw_only=True)
class FitReading:
    """Helps, and what has moved since the hat was last fitted."""

    design: Design
    baseline: Design
    units: Units
    helps: tuple[Help, ...]
    moved: Moved | None
    """None where gauge, head and ease are as they were, and the count is near enough to what they ask for."""
    has_moved: bool
    """Whether gauge, head or ease are others than they were."""

    def is_of(self, design: Design, baseline: Design, units: Units) -> bool:
        """Tell whether it was worked out of just these."""
        return self.design is design and self.baseline is baseline and self.units is units


def read_fit(design: Design, baseline: Design, units: Units) -> FitReading:
    """Work it out; up to some hundredths of a second."""
    found, has_moved = fit(design), have_measurements_moved(baseline, design)
    return FitReading(
        design=design,
        baseline=baseline,
        units=units,
        helps=helps_beside(design, found),
        moved=moved(baseline, design, units) if has_moved or not found.is_near_enough else None,
        has_moved=has_moved,
    )


class Baselines:
    """The designs that were fitted last, by step of the history, so that undoing a fit brings back what it mended."""

    def __init__(self) -> None:
        self._kept: list[tuple[int, Design]] = []

    def begin(self, design: Design, step: int) -> None:
        """Take another design up."""
        self._kept = [(step, design)]

    def follow(self, design: Design, step: int) -> Design:
        """Give the design to compare with; one whose counts or rounds are others than before was fitted itself."""
        while len(self._kept) > 1 and self._kept[-1][0] > step:
            self._kept.pop()
        if not self._kept:
            self.begin(design, step)
        elif _size(self._kept[-1][1]) != _size(design):
            self._kept.append((step, design))
        return self._kept[-1][1]


def _size(design: Design) -> tuple[int, int]:
    return design.bands[0].stitches(0), sum(len(band.rounds) for band in design.bands)
