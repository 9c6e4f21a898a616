"""The lines of the chart: thin between cells, heavier every 5 and 10 as wished, counted from stitch 1 and round 1."""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from itertools import groupby

from chartmaker.sheets.boxes import Box, Lines, Segment
from chartmaker.sheets.chart_cells import Placing, Row
from chartmaker.sheets.ink import BLACK, HAIRLINE, WHITE

WIDTHS_MM = (0.12, 0.3, 0.62)
"""Thin, every 5 and every 10."""
CASING_MM = 0.35
"""White to both sides of the heavier lines together, so that they show on dark shades too."""


def grid_boxes(rows: list[Row], placing: Placing, *, rounds_before: int, every: int = 5) -> list[Box]:
    """Give the lines around and between the cells of a piece.

    Args:
        rows: its rounds from the lowest up.
        placing: where its cells stand.
        rounds_before: rounds of the hat below the band, so that every tenth of the hat is counted.
        every: 5 for heavier lines every 5 and heaviest every 10, 10 for those alone, 0 for none; the piece's outline
            is heavier always.
    """
    by_weight: dict[int, list[Segment]] = defaultdict(list)
    for count, is_edge, segment in (*_levels(rows, placing, rounds_before), *_uprights(rows, placing)):
        by_weight[_weight(count, is_edge=is_edge, every=every)].append(segment)
    heavy = [segment for weight in (1, 2) for segment in by_weight[weight]]
    boxes: list[Box] = []
    if by_weight[0]:
        boxes.append(Lines(tuple(by_weight[0]), WIDTHS_MM[0], HAIRLINE))
    if heavy:
        boxes.append(Lines(tuple(heavy), WIDTHS_MM[1] + CASING_MM, WHITE))
    boxes.extend(Lines(tuple(by_weight[weight]), WIDTHS_MM[weight], BLACK) for weight in (1, 2) if by_weight[weight])
    return boxes


def _weight(count: int, *, is_edge: bool, every: int) -> int:
    """Weigh a line by the stitches or rounds before it; edges are never thin, and the first edge is no tenth."""
    if every and count and count % 10 == 0:
        return 2
    return 1 if is_edge or (every == 5 and count % 5 == 0) else 0


def _levels(rows: list[Row], placing: Placing, rounds_before: int) -> Iterator[tuple[int, bool, Segment]]:
    """Give the level lines between the rounds below and above them: inner where both have a cell, else edges."""
    for below, above in zip([None, *rows], [*rows, None], strict=True):
        index = above.index if above else placing.piece.end
        y = placing.bottom - (index - placing.piece.first) * placing.size.height
        for is_edge, columns in _sorted_out(_columns(below), _columns(above)):
            for start, last in _runs(columns):
                yield rounds_before + index, is_edge, (placing.left_of(last), y, placing.left_of(start - 1), y)


def _uprights(rows: list[Row], placing: Placing) -> Iterator[tuple[int, bool, Segment]]:
    """Give the upright lines between the columns at their right and left: inner where both have a cell, else edges."""
    for column in range(placing.piece.right, placing.piece.end_column + 1):
        x = placing.left_of(column - 1)
        at_right = {row.index for row in rows if row.start < column <= row.end}
        at_left = {row.index for row in rows if row.start <= column < row.end}
        for is_edge, indexes in _sorted_out(at_right, at_left):
            for first, last in _runs(indexes):
                yield column, is_edge, (x, placing.top_of(last), x, placing.top_of(first) + placing.size.height)


def _columns(row: Row | None) -> set[int]:
    return set(range(row.start, row.end)) if row else set()


def _sorted_out(one: set[int], other: set[int]) -> tuple[tuple[bool, list[int]], tuple[bool, list[int]]]:
    """Sort the places of two neighbours into edges, which only one has, and inner ones, which both have."""
    return (True, sorted(one ^ other)), (False, sorted(one & other))


def _runs(numbers: Iterable[int]) -> Iterator[tuple[int, int]]:
    """Give first and last of each run of successive numbers."""
    groups = groupby(enumerate(numbers), key=lambda pair: pair[1] - pair[0])
    for _, group in groups:
        run = [number for _, number in group]
        yield run[0], run[-1]
