"""Which piece of the chart goes on which page, and how large a cell is; no drawing here."""

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from chartmaker.knit.outline import chart_offsets, chart_width
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.sheets.lines import width_mm
from chartmaker.sheets.paper import Frame

NARROW_SHARE = 0.5
"""Up to this share of the page's width a piece is narrow."""
STEP_MM = 0.1
"""By which a smaller cell is tried."""
TITLE_PT, DETAIL_PT = 10.0, 8.0
"""Size of a band's name, and of what else is told of it."""
ASIDE_GAP_MM, WORDS_GAP_MM, MOST_TITLE_MM = 1.0, 2.5, 60.0
"""Before and after what is told at the right of a narrow piece; and how much of that a name has at most."""
ROUNDS_PER_HEAVY_LINE, COLUMNS_PER_HEAVY_LINE = 10, 5
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
    words_mm: float = 0.0
    """Width of what is told at its right where it is narrow, before its scale."""
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

    def width(self, size: CellSize, room: Frame) -> float:
        """Give the width that it takes on the page, with what is told at its right where it is narrow."""
        measures = size.measures
        wide = measures.left + (self.end_column - self.right) * size.width + measures.right
        if self.is_narrow(size, room):
            return wide + ASIDE_GAP_MM + self.words_mm * measures.scale
        return max(wide, self.words_mm * measures.scale)

    @property
    def is_whole(self) -> bool:
        """Whether nothing of its band is elsewhere, so that it may stand beside others."""
        return self.rows == self.columns == 1

    def height(self, size: CellSize, room: Frame) -> float:
        """Give the height that it takes on the page, all its labels included."""
        measures = size.measures
        joins = (self.row > 0) + (self.row + 1 < self.rows) + self.is_cut_sideways * measures.side_joins
        shown = self.laps
        cells = (shown.end - shown.first) * size.height
        if self.is_narrow(size, room):
            return max(cells + measures.numbers + measures.bare_bracket, measures.aside) + joins * measures.join
        return measures.title + cells + measures.numbers + measures.bracket + joins * measures.join


Shelf = tuple[Piece, ...]
"""Pieces that stand beside each other, from the left in knitting order; mostly one."""


def cell_size(gauge: Gauge, *, widest: int, room: Frame, measures: Measures = USUAL) -> CellSize:
    """Choose one cell size for the whole hat: as large as lets the widest band fit, within what can be read."""
    ratio = gauge.round_height_cm / gauge.stitch_width_cm
    least = max(measures.narrowest, measures.lowest / ratio)
    most = max(least, min(measures.widest, measures.highest / ratio))
    wide = room.width - measures.left - measures.right
    width = min(most, wide / widest) if wide / widest >= least else max(least, min(measures.tiled, most))
    width = min(width, wide, _tallest_cut(room, measures) / ratio)
    return CellSize(width, width * ratio, measures)


def best_size(design: Design, room: Frame, measures: Measures = USUAL, *, taken: float = 0.0) -> CellSize:
    """Choose the cell size: the largest, or a smaller one, still easy to read, with fewer pages or fewer cuts."""

    def cost(size: CellSize) -> tuple[int, int]:
        pieces = cut(design, size, room)
        return len(paged(shelved(pieces, size, room), size, room, taken=taken)), len(pieces)

    widest = max(chart_width(band.rounds) for band in design.bands)
    largest = cell_size(design.gauge, widest=widest, room=room, measures=measures)
    steps = max(0, math.floor((largest.width - measures.easy) / STEP_MM + 1e-9))
    ratio = largest.height / largest.width
    widths = [largest.width - number * STEP_MM for number in range(steps + 1)]
    sizes = [CellSize(width, width * ratio, measures) for width in widths if width * ratio >= measures.lowest]
    return min(sizes or [largest], key=cost)


def cut(design: Design, size: CellSize, room: Frame) -> list[Piece]:
    """Cut every band into pieces that fit a page, in knitting order; most stay whole."""
    pieces: list[Piece] = []
    done = 0
    for number, band in enumerate(design.bands):
        sides = _column_spans((0, chart_width(band.rounds)), size, room)
        spans, lap_rounds = _row_spans(len(band.rounds), size, room, before=done, is_cut=len(sides) > 1)
        offsets = chart_offsets(band.rounds)
        for row, (first, end) in enumerate(spans):
            words = _words_mm(f"{number + 1}  {band.name.strip()}", repeat_words(band.times, len(band.rounds[first])))
            reach = [(offsets[index], offsets[index] + len(band.rounds[index])) for index in range(first, end)]
            sides = _column_spans((min(low for low, _ in reach), max(high for _, high in reach)), size, room)
            pieces.extend(
                Piece(
                    band=number, first=first, end=end, right=right, end_column=end_column,
                    row=row, column=column, rows=len(spans), columns=len(sides),
                    words_mm=words, lap_rounds=lap_rounds, lap_columns=_lap_columns(size, room),
                )
                for column, (right, end_column) in enumerate(sides)
            )  # fmt: skip
        done += len(band.rounds)
    return pieces


def repeat_words(times: int, stitches: int, *, is_part: bool = False) -> str:
    """Tell how often a repeat is worked; or, below a piece that is not all of it, what it is a part of."""
    often = "once" if times == 1 else f"{times} times"
    if is_part:
        return f"part of {stitches} stitches, worked {often}"
    return f"work {'this stitch' if stitches == 1 else f'these {stitches} stitches'} {often}"


def _words_mm(title: str, repeat: str) -> float:
    """Give the width of what is told beside a narrow piece; a long title is cut off there."""
    wide = min(width_mm(title[:60], size_pt=TITLE_PT, bold=True), MOST_TITLE_MM)
    return max(wide, width_mm(repeat, size_pt=DETAIL_PT, bold=True)) + WORDS_GAP_MM


def shelved(pieces: Sequence[Piece], size: CellSize, room: Frame) -> list[Shelf]:
    """Put pieces on shelves in knitting order: small ones that follow one another stand beside each other."""
    shelves: list[Shelf] = []
    for piece in pieces:
        joined = (*shelves[-1], piece) if shelves else (piece,)
        wide = sum(one.width(size, room) for one in joined)
        if len(joined) > 1 and all(one.is_whole for one in joined) and wide <= room.width:
            shelves[-1] = joined
        else:
            shelves.append((piece,))
    return shelves


def shelf_height(shelf: Shelf, size: CellSize, room: Frame) -> float:
    """Give the height of the tallest piece of a shelf."""
    return max(piece.height(size, room) for piece in shelf)


def paged(shelves: Sequence[Shelf], size: CellSize, room: Frame, *, taken: float = 0.0) -> list[list[Shelf]]:
    """Put shelves on pages in knitting order, as many to a page as fit.

    Args:
        shelves: in knitting order.
        size: of a cell.
        room: what a page holds.
        taken: height of the first page that something else has; that page stays empty where nothing fits.
    """
    pages: list[list[Shelf]] = [[]]
    left = room.height - taken
    for shelf in shelves:
        height = shelf_height(shelf, size, room)
        if height > left:
            pages.append([])
            left = room.height
        pages[-1].append(shelf)
        left -= height + size.measures.gap
    return pages if pages[0] or taken else pages[1:]


def _tallest(room: Frame, measures: Measures) -> float:
    """Give the height of cells that a page holds, where nothing is cut."""
    return room.height - measures.title - measures.numbers - measures.bracket


def _tallest_cut(room: Frame, measures: Measures) -> float:
    """Give the same where every edge needs words that say where it goes on."""
    return _tallest(room, measures) - (2 + measures.side_joins) * measures.join


def _row_spans(
    rounds: int, size: CellSize, room: Frame, *, before: int, is_cut: bool
) -> tuple[list[tuple[int, int]], int]:
    """Cut rounds into spans; and tell how many rounds of a neighbour each shows."""
    free = _tallest(room, size.measures) - is_cut * size.measures.side_joins * size.measures.join
    if rounds * size.height <= free + 1e-9:
        return [(0, rounds)], 0
    most = max(1, math.floor(_tallest_cut(room, size.measures) / size.height + 1e-9))
    lap = int(most >= 8)
    most -= 2 * lap
    spans: list[tuple[int, int]] = []
    first = 0
    while first < rounds:
        end = _cut_end(first, rounds, most=most, heavy=ROUNDS_PER_HEAVY_LINE, before=before)
        spans.append((first, end))
        first = end
    return spans, lap


def _cut_end(first: int, last: int, *, most: int, heavy: int, before: int = 0) -> int:
    """Choose where a piece ends: all about even, at a heavy line where that makes no piece more, nor a sliver."""
    pieces = math.ceil((last - first) / most)
    if pieces == 1:
        return last
    even = first + math.ceil((last - first) / pieces)
    down = even - (before + even) % heavy
    for end in sorted((down, down + heavy), key=lambda end: abs(end - even)):
        if most <= 2 * (end - first) <= 2 * most and math.ceil((last - end) / most) < pieces:
            return end
    return even


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
    spans: list[tuple[int, int]] = []
    while low < high:
        end = _cut_end(low, high, most=most, heavy=COLUMNS_PER_HEAVY_LINE)
        spans.append((low, end))
        low = end
    return spans
