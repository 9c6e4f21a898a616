"""Rectangles and ellipses in a box of cells, as strips along the rounds; which corners span the box is all one.

An ellipse's outline has its outermost cells' middles on the sides of the box: with W and H columns and rows less one,
it is the curve (2x / W)² + (2y / H)² = 1 about the middle of the box.
"""

import math
from itertools import pairwise

Cell = tuple[int, int]
"""`(round, stitch)`."""
Strip = tuple[int, int, int]
"""Cells side by side in a round: `(round, first stitch, last stitch)`, both included."""


def rectangle(start: Cell, end: Cell) -> tuple[Strip, ...]:
    """Give the outline of the box that two cells span, a cell thick."""
    (low, right), (high, left) = _box(start, end)
    sides = [(right, left)] if left - right < 2 else [(right, right), (left, left)]
    between = tuple((row, *side) for row in range(low + 1, high) for side in sides)
    ends = dict.fromkeys((low, high))
    return (*((row, right, left) for row in ends), *between)


def filled_rectangle(start: Cell, end: Cell) -> tuple[Strip, ...]:
    """Give all of the box that two cells span."""
    (low, right), (high, left) = _box(start, end)
    return tuple((row, right, left) for row in range(low, high + 1))


def ellipse(start: Cell, end: Cell) -> tuple[Strip, ...]:
    """Give the outline of the ellipse in the box that two cells span, its cells touching at corners at least."""
    (low, right), (high, left) = _box(start, end)
    reaches = _reaches(left - right, high - low)
    strips = []
    for row in range(low, high + 1):
        inner, outer = reaches[abs(2 * row - low - high)]
        if inner <= 1:
            strips.append((row, (left + right - outer) // 2, (left + right + outer) // 2))
        else:
            strips.append((row, (left + right - outer) // 2, (left + right - inner) // 2))
            strips.append((row, (left + right + inner) // 2, (left + right + outer) // 2))
    return tuple(strips)


def filled_ellipse(start: Cell, end: Cell) -> tuple[Strip, ...]:
    """Give the ellipse in the box that two cells span, with all that its outline holds."""
    (low, right), (high, left) = _box(start, end)
    reaches = _reaches(left - right, high - low)
    outer = {row: reaches[abs(2 * row - low - high)][1] for row in range(low, high + 1)}
    return tuple((row, (left + right - reach) // 2, (left + right + reach) // 2) for row, reach in outer.items())


def _box(start: Cell, end: Cell) -> tuple[Cell, Cell]:
    return (min(start[0], end[0]), min(start[1], end[1])), (max(start[0], end[0]), max(start[1], end[1]))


def _reaches(width: int, height: int) -> dict[int, tuple[int, int]]:
    """Give for each row of a quarter, by twice its distance from the middle, the nearest and farthest cell on it.

    All are in half cells from the middle, `width` and `height` the most of them that there are.
    """
    reaches: dict[int, tuple[int, int]] = {}
    for across, up in _thinned(_crossings(width, height)):
        inner, outer = reaches.get(up, (across, across))
        reaches[up] = min(inner, across), max(outer, across)
    return reaches


def _crossings(width: int, height: int) -> list[tuple[int, int]]:
    """Give the cells nearest to where a quarter of the curve crosses columns and rows, from its top to its side.

    Between one crossing and the next the curve stays within one square of four middles, and each is rounded to a
    corner of that: so the cells touch, and none is more than half a cell from the curve.
    """
    found = {(across, _nearest(_along(across, width, height), height)) for across in range(width % 2, width + 1, 2)}
    found |= {(_nearest(_along(up, height, width), width), up) for up in range(height % 2, height + 1, 2)}
    return sorted(found, key=lambda cell: (cell[0], -cell[1]))


def _along(at: int, most: int, other: int) -> float:
    """Give the ellipse's half-axis `other` shrunk as it is at `at` of its half-axis `most`."""
    return other * math.sqrt(1 - (at / most) ** 2) if most else float(other)


def _nearest(value: float, most: int) -> int:
    """Round to the nearest number that is even or odd as `most` is, outwards where two are as near."""
    return min(most, most - 2 * math.ceil((most - value) / 2 - 0.5))


def _thinned(cells: list[tuple[int, int]]) -> list[tuple[int, int]]:
    """Leave out cells in the crook of two that touch at a corner."""
    kept = cells[:1]
    for here, after in pairwise(cells[1:]):
        before = kept[-1]
        if abs(after[0] - before[0]) > 2 or abs(after[1] - before[1]) > 2:
            kept.append(here)
    return kept + cells[1:][-1:]
