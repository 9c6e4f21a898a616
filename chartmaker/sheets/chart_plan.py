"""Which piece of the chart goes on which page, and how large a cell is; no drawing here."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from chartmaker.knit.outline import chart_width
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.sheets.paper import Frame

LEFT_MM, RIGHT_MM = 10.0, 17.0
"""Room beside the cells: stitch counts at the left; round numbers and letters at the right."""
TITLE_MM = 6.0
"""Above a wide piece: its band. A narrow one has it at its right."""
ASIDE_MM = 13.0
"""Height of what stands at the right of a narrow piece: its band, its rounds and its repeat."""
NARROW_SHARE = 0.5
"""Up to this share of the page's width a piece is narrow."""
NUMBERS_MM = 4.2
"""Below it: stitch numbers."""
BRACKET_MM, BARE_BRACKET_MM = 6.6, 3.0
"""Below those: the repeat's bracket, with words and without."""
JOIN_MM = 4.4
"""For each line that says where a cut edge goes on."""
GAP_MM = 7.0
"""Between pieces."""
NARROWEST_MM, TILED_MM, WIDEST_MM = 3.0, 4.0, 5.5
"""Width of a cell: at least, when the chart is cut anyway, and at most."""
EASY_MM = 4.4
"""Down to this width cells are made smaller where that saves a page."""
STEP_MM = 0.1
LOWEST_MM, HIGHEST_MM = 2.5, 6.0
"""Height of a cell: at least, and at most unless that makes it too narrow."""
ROUNDS_PER_HEAVY_LINE = 10
"""Cuts are made at heavy lines where that wastes less than half a page."""


@dataclass(frozen=True, slots=True)
class CellSize:
    """One cell on paper, in the proportion of a stitch."""

    width: float
    height: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A part of a band's drawing that stays in one place; the whole band where it fits."""

    band: int
    first: int
    """Index in the band of its lowest round."""
    end: int
    """One past its highest."""
    right: int
    """Its right-most column."""
    end_column: int
    """One past its left-most."""
    row: int
    """Counts the pieces of a band upwards from 0 …"""
    column: int
    """… and leftwards."""
    rows: int
    columns: int
    """How many pieces the band is cut into each way."""

    @property
    def is_cut_sideways(self) -> bool:
        """Whether another piece goes on to its left or right."""
        return self.columns > 1

    def is_narrow(self, size: CellSize, room: Frame) -> bool:
        """Whether its band is told at its right rather than above it."""
        wide = LEFT_MM + (self.end_column - self.right) * size.width + RIGHT_MM
        return not self.is_cut_sideways and wide <= NARROW_SHARE * room.width

    def height(self, size: CellSize, room: Frame) -> float:
        """Give the height that it takes on the page, all its labels included."""
        joins = (self.row > 0) + (self.row + 1 < self.rows) + self.is_cut_sideways
        cells = (self.end - self.first) * size.height
        if self.is_narrow(size, room):
            return max(cells + NUMBERS_MM + BARE_BRACKET_MM, ASIDE_MM) + joins * JOIN_MM
        return TITLE_MM + cells + NUMBERS_MM + BRACKET_MM + joins * JOIN_MM


def cell_size(gauge: Gauge, *, widest: int, room: Frame) -> CellSize:
    """Choose one cell size for the whole hat: as large as lets the widest band fit, within what can be read."""
    ratio = gauge.round_height_cm / gauge.stitch_width_cm
    least = max(NARROWEST_MM, LOWEST_MM / ratio)
    most = max(least, min(WIDEST_MM, HIGHEST_MM / ratio))
    wide = room.width - LEFT_MM - RIGHT_MM
    width = min(most, wide / widest) if wide / widest >= least else max(least, min(TILED_MM, most))
    width = min(width, wide, _tallest_piece(room) / ratio)
    return CellSize(width, width * ratio)


def best_size(design: Design, room: Frame) -> CellSize:
    """Choose the cell size: the largest, or a smaller one that is still easy to read and takes fewer pages."""
    widest = max(chart_width(band.rounds) for band in design.bands)
    largest = cell_size(design.gauge, widest=widest, room=room)
    steps = max(0, math.floor((largest.width - EASY_MM) / STEP_MM + 1e-9))
    ratio = largest.height / largest.width
    widths = [largest.width - number * STEP_MM for number in range(steps + 1)]
    sizes = [CellSize(width, width * ratio) for width in widths if width * ratio >= LOWEST_MM] or [largest]
    return min(sizes, key=lambda size: len(paged(cut(design, size, room), size, room)))


def cut(design: Design, size: CellSize, room: Frame) -> list[Piece]:
    """Cut every band into pieces that fit a page, in knitting order; most stay whole."""
    columns = max(1, math.floor((room.width - LEFT_MM - RIGHT_MM) / size.width + 1e-9))
    rounds = max(1, math.floor(_tallest_piece(room) / size.height + 1e-9))
    pieces: list[Piece] = []
    done = 0
    for number, band in enumerate(design.bands):
        spans = _row_spans(len(band.rounds), most=rounds, rounds_before=done)
        sides = _column_spans(chart_width(band.rounds), most=columns)
        pieces.extend(
            Piece(
                band=number, first=first, end=end, right=right, end_column=end_column,
                row=row, column=column, rows=len(spans), columns=len(sides),
            )
            for row, (first, end) in enumerate(spans)
            for column, (right, end_column) in enumerate(sides)
        )  # fmt: skip
        done += len(band.rounds)
    return pieces


def paged(pieces: Sequence[Piece], size: CellSize, room: Frame) -> list[list[Piece]]:
    """Put pieces on pages in knitting order, as many to a page as fit."""
    pages: list[list[Piece]] = []
    left = 0.0
    for piece in pieces:
        height = piece.height(size, room)
        if not pages or height > left:
            pages.append([])
            left = room.height
        pages[-1].append(piece)
        left -= height + GAP_MM
    return pages


def _tallest_piece(room: Frame) -> float:
    return room.height - TITLE_MM - NUMBERS_MM - BRACKET_MM - 3 * JOIN_MM


def _row_spans(rounds: int, *, most: int, rounds_before: int) -> list[tuple[int, int]]:
    spans: list[tuple[int, int]] = []
    first = 0
    while first < rounds:
        end = min(rounds, first + most)
        if end < rounds:
            over = (rounds_before + end) % ROUNDS_PER_HEAVY_LINE
            end = end - over if end - over - first > most / 2 else end
        spans.append((first, end))
        first = end
    return spans


def _column_spans(columns: int, *, most: int) -> list[tuple[int, int]]:
    """Cut into the fewest spans, about even, at heavier lines where that fits."""
    if columns <= most:
        return [(0, columns)]
    even = math.ceil(columns / math.ceil(columns / most))
    step = min(most, 5 * math.ceil(even / 5))
    return [(right, min(columns, right + step)) for right in range(0, columns, step)]
