"""The axes that drawing is mirrored about, and the places that a stroke reaches by them. No Qt here.

An axis is named by twice its column or row: an even number is the middle of a stitch or a round, an odd one the edge
between it and the next, so that what lies at `place` is mirrored at `axis - place`.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.chart_grid import ChartGrid
    from chartmaker.app.covered import Covered


@dataclass(frozen=True, slots=True)
class Axes:
    """What drawing is mirrored about: belongs to the view of the chart, not to the design."""

    across: int | None = None
    """Twice the column of an upright axis, about which stitches change sides."""
    up: int | None = None
    """Twice the row of a level axis, about which rounds change places."""

    def stitch_turned(self, column: int) -> Axes:
        """Put the upright axis through a stitch; then on its left edge; then take it off."""
        return replace(self, across=_turned(self.across, column))

    def round_turned(self, row: int) -> Axes:
        """Put the level axis through a round; then on its upper edge; then take it off."""
        return replace(self, up=_turned(self.up, row))

    def inside(self, grid: ChartGrid) -> Axes:
        """Give the axes moved no further than they must to lie in a chart."""
        return Axes(_within(self.across, grid.width), _within(self.up, len(grid.rows)))

    @property
    def words(self) -> str:
        """What drawing is mirrored about, as a sentence."""
        told = [
            _told(self.across, tr("stitch {0}"), tr("the left edge of stitch {0}")),
            _told(self.up, tr("round {0}"), tr("the upper edge of round {0}")),
        ]
        told = [words for words in told if words]
        return tr("mirrored about {0}").format(tr(" and ").join(told)) if told else tr("not mirrored")


def mirrored(covered: Covered, axes: Axes, grid: ChartGrid) -> Covered:
    """Give what is covered together with its likeness about each axis, and about both; columns close in each band."""
    for axis, turn in ((axes.across, _across), (axes.up, _up)):
        if axis is not None:
            covered = _joined(covered, turn(covered, axis, grid))
    return covered


def _across(covered: Covered, axis: int, grid: ChartGrid) -> Covered:
    turned = {}
    for row, columns in covered.items():
        width = grid.rows[row].width
        turned[row] = columns[(axis - np.arange(width)) % width]
    return turned


def _up(covered: Covered, axis: int, grid: ChartGrid) -> Covered:
    turned = {}
    for row, columns in covered.items():
        if 0 <= axis - row < len(grid.rows):
            width = grid.rows[axis - row].width
            turned[axis - row] = np.zeros(width, np.bool_)
            turned[axis - row][np.nonzero(columns)[0] % width] = True
    return turned


def _joined(first: Covered, second: Covered) -> Covered:
    both = dict(first)
    for row, columns in second.items():
        both[row] = both[row] | columns if row in both else columns
    return both


def _turned(axis: int | None, place: int) -> int | None:
    if axis is None:
        return 2 * place
    return axis + 1 if axis % 2 == 0 else None


def _within(axis: int | None, count: int) -> int | None:
    return None if axis is None else min(axis, 2 * count - 1)


def _told(axis: int | None, middle: str, edge: str) -> str:
    if axis is None:
        return ""
    return (edge if axis % 2 else middle).format(axis // 2 + 1)
