"""The lines of the chart: thin between cells, heavier every 5, heaviest every 10, counted from stitch 1 and round 1."""

from collections import defaultdict
from collections.abc import Iterable, Iterator

from chartmaker.sheets.boxes import Box, Lines, Segment
from chartmaker.sheets.chart_cells import Placing, Row
from chartmaker.sheets.ink import BLACK, HAIRLINE, WHITE

WIDTHS_MM = (0.12, 0.3, 0.62)
"""Thin, every 5 and every 10."""
CASING_MM = 0.45
"""White to both sides of the heavier lines together, so that they show on dark shades too."""


def grid_boxes(rows: list[Row], placing: Placing, *, rounds_before: int) -> list[Box]:
    """Give the lines around and between the cells of a piece.

    Args:
        rows: its rounds from the lowest up.
        placing: where its cells stand.
        rounds_before: rounds of the hat below the band, so that every tenth of the hat is counted.
    """
    by_weight: dict[int, list[Segment]] = defaultdict(list)
    for weight, segment in _levels(rows, placing, rounds_before):
        by_weight[weight].append(segment)
    for weight, segment in _uprights(rows, placing):
        by_weight[weight].append(segment)
    heavy = [segment for weight in (1, 2) for segment in by_weight[weight]]
    boxes: list[Box] = []
    if by_weight[0]:
        boxes.append(Lines(tuple(by_weight[0]), WIDTHS_MM[0], HAIRLINE))
    if heavy:
        boxes.append(Lines(tuple(heavy), WIDTHS_MM[1] + CASING_MM, WHITE))
    boxes.extend(Lines(tuple(by_weight[weight]), WIDTHS_MM[weight], BLACK) for weight in (1, 2) if by_weight[weight])
    return boxes


def _weight(count: int) -> int:
    return 2 if count % 10 == 0 else 1 if count % 5 == 0 else 0


def _levels(rows: list[Row], placing: Placing, rounds_before: int) -> Iterator[tuple[int, Segment]]:
    """Give the level lines: each between the rounds below and above it, as long as the longer of the two."""
    for below, above in zip([None, *rows], [*rows, None], strict=True):
        spans = [(row.start, row.end) for row in (below, above) if row and row.letters]
        if not spans:
            continue
        index = above.index if above else placing.piece.end
        y = placing.bottom - (index - placing.piece.first) * placing.size.height
        start, end = min(start for start, _ in spans), max(end for _, end in spans)
        yield _weight(rounds_before + index), (placing.left_of(end - 1), y, placing.left_of(start - 1), y)


def _uprights(rows: list[Row], placing: Placing) -> Iterator[tuple[int, Segment]]:
    """Give the upright lines: each along the rounds that have a cell to its left or right."""
    for column in range(placing.piece.right, placing.piece.end_column + 1):
        touched = (row.index for row in rows if row.letters and row.start <= column <= row.end)
        x = placing.left_of(column - 1)
        for first, last in _runs(touched):
            yield _weight(column), (x, placing.top_of(last), x, placing.top_of(first) + placing.size.height)


def _runs(indexes: Iterable[int]) -> Iterator[tuple[int, int]]:
    """Give first and last of each run of successive numbers."""
    first = last = None
    for index in indexes:
        if first is None or last is None:
            first = last = index
        elif index == last + 1:
            last = index
        else:
            yield first, last
            first = last = index
    if first is not None and last is not None:
        yield first, last
