"""Which piece of the chart goes on which page, and how large a cell is; no drawing here."""

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from chartmaker.knit.outline import chart_offsets, chart_width
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.sheets.paper import Frame

NARROW_SHARE = 0.5
"""Up to this share of the page's width a piece is narrow."""
STEP_MM = 0.1
"""By which a smaller cell is tried."""
ROUNDS_PER_HEAVY_LINE = 10
"""Cuts are made at heavy lines where that wastes less than half a page."""
MOST_LAP_COLUMNS = 2
"""Stitches of its neighbour that a piece shows once more, paler, at a cut side; and one round above and below."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Measures:
    """How large a chart is drawn; all in mm."""

    narrowest: float
    tiled: float
    easy: float
    widest: float
    """Width of a cell: at least; when the chart is cut anyway; down to which it is made smaller where that saves a
    page; and at most."""
    lowest: float
    highest: float
    """Height of a cell: at least, and at most unless that makes it too narrow."""
    scale: float = 1.0
    """Of the words and numbers around the cells, and of the room that they take."""

    @property
    def left(self) -> float:
        """Room at the left of the cells: stitch counts."""
        return 10.0 * self.scale

    @property
    def right(self) -> float:
        """Room at the right: boxes to tick, round numbers and letters."""
        return 19.5 * self.scale

    @property
    def title(self) -> float:
        """Above a wide piece: its band. A narrow one has it at its right."""
        return 6.0 * self.scale

    @property
    def aside(self) -> float:
        """Height of what stands at the right of a narrow piece: its band, its rounds and its repeat."""
        return 13.0 * self.scale

    @property
    def numbers(self) -> float:
        """Below the cells: stitch numbers."""
        return 4.2 * self.scale

    @property
    def bracket(self) -> float:
        """Below those: the repeat's bracket, with words."""
        return 6.6 * self.scale

    @property
    def bare_bracket(self) -> float:
        """The same without words."""
        return 3.0 * self.scale

    @property
    def join(self) -> float:
        """For each line that says where a cut edge goes on."""
        return 4.4 * self.scale

    @property
    def side_joins(self) -> int:
        """Lines that say where the sides go on: one for both, but in large print one each."""
        return 1 if self.scale == 1 else 2

    @property
    def gap(self) -> float:
        """Between pieces."""
        return 6.0


USUAL = Measures(narrowest=3.0, tiled=4.0, easy=4.4, widest=5.5, lowest=2.5, highest=6.0)
LARGE = Measures(narrowest=6.5, tiled=7.0, easy=7.4, widest=8.5, lowest=6.0, highest=9.5, scale=1.6)
"""Large print: numbers of 12 pt, cells more than twice as large as the smallest usual ones."""


@dataclass(frozen=True, slots=True)
class CellSize:
    """One cell on paper, in the proportion of a stitch."""

    width: float
    height: float
    measures: Measures = USUAL
    """What goes with it."""


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
    """How many pieces the band is cut into upwards, and this row of them leftwards."""
    lap_rounds: int = 0
    lap_columns: int = 0
    """Rounds and columns of each neighbour that are shown once more, paler."""

    @property
    def laps(self) -> "Piece":
        """The part of the band that it shows, with what it shows of its neighbours."""
        return replace(
            self,
            first=self.first - self.lap_rounds * (self.row > 0),
            end=self.end + self.lap_rounds * (self.row + 1 < self.rows),
            right=self.right - self.lap_columns * (self.column > 0),
            end_column=self.end_column + self.lap_columns * (self.column + 1 < self.columns),
        )

    @property
    def is_cut_sideways(self) -> bool:
        """Whether another piece goes on to its left or right."""
        return self.columns > 1

    def is_narrow(self, size: CellSize, room: Frame) -> bool:
        """Whether its band is told at its right rather than above it."""
        measures = size.measures
        wide = measures.left + (self.end_column - self.right) * size.width + measures.right
        return not self.is_cut_sideways and wide <= NARROW_SHARE * room.width

    def height(self, size: CellSize, room: Frame) -> float:
        """Give the height that it takes on the page, all its labels included."""
        measures = size.measures
        joins = (self.row > 0) + (self.row + 1 < self.rows) + self.is_cut_sideways * measures.side_joins
        shown = self.laps
        cells = (shown.end - shown.first) * size.height
        if self.is_narrow(size, room):
            return max(cells + measures.numbers + measures.bare_bracket, measures.aside) + joins * measures.join
        return measures.title + cells + measures.numbers + measures.bracket + joins * measures.join


def cell_size(gauge: Gauge, *, widest: int, room: Frame, measures: Measures = USUAL) -> CellSize:
    """Choose one cell size for the whole hat: as large as lets the widest band fit, within what can be read."""
    ratio = gauge.round_height_cm / gauge.stitch_width_cm
    least = max(measures.narrowest, measures.lowest / ratio)
    most = max(least, min(measures.widest, measures.highest / ratio))
    wide = room.width - measures.left - measures.right
    width = min(most, wide / widest) if wide / widest >= least else max(least, min(measures.tiled, most))
    width = min(width, wide, _tallest_cut(room, measures) / ratio)
    return CellSize(width, width * ratio, measures)


def best_size(design: Design, room: Frame, measures: Measures = USUAL) -> CellSize:
    """Choose the cell size: the largest, or a smaller one that is still easy to read and takes fewer pages."""
    widest = max(chart_width(band.rounds) for band in design.bands)
    largest = cell_size(design.gauge, widest=widest, room=room, measures=measures)
    steps = max(0, math.floor((largest.width - measures.easy) / STEP_MM + 1e-9))
    ratio = largest.height / largest.width
    widths = [largest.width - number * STEP_MM for number in range(steps + 1)]
    sizes = [CellSize(width, width * ratio, measures) for width in widths if width * ratio >= measures.lowest]
    return min(sizes or [largest], key=lambda size: len(paged(cut(design, size, room), size, room)))


def cut(design: Design, size: CellSize, room: Frame) -> list[Piece]:
    """Cut every band into pieces that fit a page, in knitting order; most stay whole."""
    pieces: list[Piece] = []
    done = 0
    for number, band in enumerate(design.bands):
        sides = _column_spans((0, chart_width(band.rounds)), size, room)
        spans, lap_rounds = _row_spans(len(band.rounds), size, room, before=done, is_cut=len(sides) > 1)
        offsets = chart_offsets(band.rounds)
        for row, (first, end) in enumerate(spans):
            reach = [(offsets[index], offsets[index] + len(band.rounds[index])) for index in range(first, end)]
            sides = _column_spans((min(low for low, _ in reach), max(high for _, high in reach)), size, room)
            pieces.extend(
                Piece(
                    band=number, first=first, end=end, right=right, end_column=end_column,
                    row=row, column=column, rows=len(spans), columns=len(sides),
                    lap_rounds=lap_rounds, lap_columns=_lap_columns(size, room),
                )
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
        left -= height + size.measures.gap
    return pages


def _tallest(room: Frame, measures: Measures) -> float:
    """Give the height of cells that a page holds, where nothing is cut."""
    return room.height - measures.title - measures.numbers - measures.bracket


def _tallest_cut(room: Frame, measures: Measures) -> float:
    """Give the same where every edge needs words that say where it goes on."""
    return _tallest(room, measures) - (2 + measures.side_joins) * measures.join


def _row_spans(
    rounds: int, size: CellSize, room: Frame, *, before: int, is_cut: bool
) -> tuple[list[tuple[int, int]], int]:
    """Cut rounds into spans, the uppermost the shortest; and how many rounds of a neighbour each shows."""
    free = _tallest(room, size.measures) - is_cut * size.measures.side_joins * size.measures.join
    if rounds * size.height <= free + 1e-9:
        return [(0, rounds)], 0
    most = max(1, math.floor(_tallest_cut(room, size.measures) / size.height + 1e-9))
    lap = int(most >= 8)
    most -= 2 * lap
    spans: list[tuple[int, int]] = []
    first = 0
    while first < rounds:
        end = min(rounds, first + most)
        if end < rounds:
            over = (before + end) % ROUNDS_PER_HEAVY_LINE
            end = end - over if end - over - first > most / 2 else end
        spans.append((first, end))
        first = end
    return spans, lap


def _columns_in(size: CellSize, room: Frame) -> int:
    """Count the columns that the page's width holds."""
    return max(1, math.floor((room.width - size.measures.left - size.measures.right) / size.width + 1e-9))


def _lap_columns(size: CellSize, room: Frame) -> int:
    """Count the columns of each neighbour that a cut piece shows."""
    most = _columns_in(size, room)
    return MOST_LAP_COLUMNS if most >= 16 else int(most >= 8)


def _column_spans(reach: tuple[int, int], size: CellSize, room: Frame) -> list[tuple[int, int]]:
    """Cut the columns that rounds reach over into the fewest spans, about even, at heavier lines where that fits."""
    low, high = reach
    most = _columns_in(size, room)
    if high - low <= most:
        return [reach]
    most -= 2 * _lap_columns(size, room)
    even = math.ceil((high - low) / math.ceil((high - low) / most))
    step = 5 * math.ceil(even / 5)
    step = step if step <= most else most - most % 5 or most
    start = low - low % 5 if step % 5 == 0 else low
    return [(max(low, right), min(high, right + step)) for right in range(start, high, step)]
