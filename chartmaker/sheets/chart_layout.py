"""The pages of the chart: each band's one repeat at true proportion, with its numbers, its bracket and its joins."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from chartmaker.appraisal import Appraisal
from chartmaker.knit.outline import chart_width
from chartmaker.sheets.boxes import Box, Lines, Marks, Style, text_at
from chartmaker.sheets.chart_cells import Look, Placing, Row, cell_boxes, rows_of
from chartmaker.sheets.chart_grid import grid_boxes
from chartmaker.sheets.chart_plan import (
    BARE_BRACKET_MM,
    BRACKET_MM,
    GAP_MM,
    JOIN_MM,
    LEFT_MM,
    NUMBERS_MM,
    RIGHT_MM,
    TITLE_MM,
    CellSize,
    Piece,
    best_size,
    cut,
    paged,
)
from chartmaker.sheets.ink import ACCENT, QUIET
from chartmaker.sheets.legend import look_of, strip, strip_height
from chartmaker.sheets.lines import MM_PER_PT, width_mm
from chartmaker.sheets.marks import ARROW_DOWN, ARROW_LEFT, ARROW_RIGHT, ARROW_UP, Mark
from chartmaker.sheets.paper import Frame

READING_LINE = "Read upwards, right to left. Round 1 is the first knitted."
READING_MM = 6.0
STRIP_GAP_MM = 5.0
TITLE = Style(10.0, bold=True)
DETAIL = Style(8.0, ink=QUIET)
NUMBER_PT = 7.5
JOIN = Style(8.0, ink=ACCENT, bold=True)
LETTERS_PT = 6.5
REPEAT = Style(8.0, bold=True, ink=ACCENT)
TICK_MM = 2.0
ARROW_MM = 3.6
CLOSEST_NUMBERS_MM = 5.0


@dataclass(frozen=True, slots=True)
class ChartPlan:
    """Everything decided about the chart before it is laid out."""

    size: CellSize
    pages: tuple[tuple[Piece, ...], ...]
    room: Frame


def plan_chart(appraisal: Appraisal, frame: Frame) -> ChartPlan:
    """Choose the cell size, cut the bands and put the pieces on pages."""
    design = appraisal.design
    top = frame.top + READING_MM + strip_height(appraisal, frame.width) + STRIP_GAP_MM
    room = Frame(frame.left, top, frame.right, frame.bottom)
    size = best_size(design, room)
    return ChartPlan(size, tuple(tuple(page) for page in paged(cut(design, size, room), size, room)), room)


def chart_pages(appraisal: Appraisal, frame: Frame, plan: ChartPlan, *, first_page: int) -> Iterator[list[Box]]:
    """Lay the planned pages out.

    Args:
        appraisal: what is drawn.
        frame: the pages' content.
        plan: made for the same frame.
        first_page: number of the first of these pages, for the joins that name pages.
    """
    look = look_of(appraisal)
    found = {
        (piece.band, piece.row, piece.column): first_page + number
        for number, page in enumerate(plan.pages)
        for piece in page
    }
    top = _page_top(appraisal, look, frame)
    for page in plan.pages:
        boxes = list(top)
        y = plan.room.top
        for piece in reversed(page):
            boxes.extend(_Layout(appraisal, look, plan, piece, found).boxes(y))
            y += piece.height(plan.size, plan.room) + GAP_MM
        yield boxes


def _page_top(appraisal: Appraisal, look: Look, frame: Frame) -> list[Box]:
    """Give what stands above the drawings of every page: how to read, and the strip of letters and signs."""
    reading = text_at(frame.left, frame.top + 3.2, READING_LINE, Style(9.0, bold=True))
    below = Frame(frame.left, frame.top + READING_MM, frame.right, frame.bottom)
    return [reading, *strip(appraisal, look, below)]


@dataclass(frozen=True, slots=True)
class _Layout:
    """Lays out one piece."""

    appraisal: Appraisal
    look: Look
    plan: ChartPlan
    piece: Piece
    page_of: dict[tuple[int, int, int], int]
    """Page by band, row and column of the piece."""

    def boxes(self, top: float) -> Iterator[Box]:
        """Give everything of the piece, its upper edge at `top`."""
        piece, size = self.piece, self.plan.size
        band = self.appraisal.design.bands[piece.band]
        rows = rows_of(band, piece)
        left = self.plan.room.left + LEFT_MM
        joins_top = top if self._is_narrow else top + TITLE_MM
        cells_top = joins_top + JOIN_MM * ((piece.row + 1 < piece.rows) + piece.is_cut_sideways)
        placing = Placing(
            right=left + (piece.end_column - piece.right) * size.width,
            bottom=cells_top + (piece.end - piece.first) * size.height,
            size=size,
            piece=piece,
        )
        if self._is_narrow:
            yield from self._title_aside(placing.right + RIGHT_MM + 1.0, cells_top)
        else:
            yield from self._title_above(top)
        yield from cell_boxes(rows, band, placing, self.look)
        yield from grid_boxes(rows, placing, rounds_before=self._rounds_before)
        yield from self._beside(rows, placing)
        yield from self._stitch_numbers(placing)
        yield from self._bracket(rows, placing)
        yield from self._joins(placing, joins_top)

    @property
    def _rounds_before(self) -> int:
        return sum(len(band.rounds) for band in self.appraisal.design.bands[: self.piece.band])

    @property
    def _is_narrow(self) -> bool:
        return self.piece.is_narrow(self.plan.size, self.plan.room)

    def _title_above(self, top: float) -> Iterator[Box]:
        room = self.plan.room
        title = band_title(self.appraisal, self.piece.band)
        name = text_at(room.left, top + 3.6, title, TITLE, most=0.55 * room.width)
        yield name
        x = room.left + name.width + 3
        yield text_at(x, top + 3.6, self._where, DETAIL, most=room.right - x)

    def _title_aside(self, x: float, top: float) -> Iterator[Box]:
        most = self.plan.room.right - x
        band = self.appraisal.design.bands[self.piece.band]
        yield text_at(x, top + 3.4, band_title(self.appraisal, self.piece.band), TITLE, most=most)
        yield text_at(x, top + 7.5, self._where, DETAIL, most=most)
        words = repeat_words(band.times, len(band.rounds[self.piece.first]))
        yield text_at(x, top + 11.6, words, REPEAT, most=most)

    @property
    def _where(self) -> str:
        """The rounds of the piece, and which part of its band it is."""
        piece = self.piece
        first, last = self._rounds_before + piece.first + 1, self._rounds_before + piece.end
        words = [f"round {first}" if first == last else f"rounds {first}–{last}"]
        if piece.rows > 1:
            words.append(f"part {piece.row + 1} of {piece.rows} upwards")
        if piece.is_cut_sideways:
            columns = chart_width(self.appraisal.design.bands[piece.band].rounds)
            words.append(f"columns {piece.right + 1}–{piece.end_column} of {columns}")
        return "  ·  ".join(words)

    def _beside(self, rows: Sequence[Row], placing: Placing) -> Iterator[Box]:
        size = min(NUMBER_PT, 0.8 * placing.size.height / MM_PER_PT)
        rise = 0.35 * size * MM_PER_PT
        counts_x = placing.left_of(self.piece.end_column - 1) - 1.6
        before = self.appraisal.rounds[self._rounds_before + rows[0].index - 1].stitches if self._has_below else 0
        for row in rows:
            round_ = self.appraisal.rounds[self._rounds_before + row.index]
            baseline = placing.middle_of(row.index, 0)[1] + rise
            yield text_at(placing.right + 7.2, baseline, str(round_.number), Style(size), align="right")
            letters = " ".join(round_.letters)
            yield text_at(placing.right + 9.0, baseline, letters, Style(min(size, LETTERS_PT), ink=QUIET))
            if round_.stitches != before:
                yield text_at(counts_x, baseline, str(round_.stitches), Style(size, ink=QUIET), align="right")
            before = round_.stitches

    @property
    def _has_below(self) -> bool:
        """Whether the count below the piece was shown on the piece before it."""
        return self.piece.row > 0

    def _stitch_numbers(self, placing: Placing) -> Iterator[Box]:
        baseline = placing.bottom + 3.2
        for column in _numbered(self.piece, placing.size.width):
            x = placing.left_of(column - 1) + placing.size.width / 2
            yield text_at(x, baseline, str(column), Style(7.0), align="middle")

    def _bracket(self, rows: Sequence[Row], placing: Placing) -> Iterator[Box]:
        row = next((row for row in rows if row.letters), None)
        if row is None:
            return
        band = self.appraisal.design.bands[self.piece.band]
        y = placing.bottom + NUMBERS_MM + 0.8
        left, right = placing.left_of(row.end - 1), placing.left_of(row.start - 1)
        segments = [(left, y, right, y)]
        if row.first_stitch == 0:
            segments.append((right, y, right, y - 1.4))
        if row.first_stitch + len(row.letters) == len(band.rounds[row.index]):
            segments.append((left, y, left, y - 1.4))
        yield Lines(tuple(segments), 0.4, ACCENT)
        if self._is_narrow:
            return
        words = repeat_words(band.times, len(band.rounds[row.index]))
        if width_mm(words, size_pt=REPEAT.size_pt, bold=True) <= right - left:
            yield text_at((left + right) / 2, y + 3.6, words, REPEAT, align="middle")
        else:
            yield text_at(left, y + 3.6, words, REPEAT, most=self.plan.room.right - left)

    def _joins(self, placing: Placing, top: float) -> Iterator[Box]:
        """Say at each cut edge where it goes on, and mark it by ticks that meet those of the other piece."""
        piece = self.piece
        left, right = placing.left_of(piece.end_column - 1), placing.right
        upper = placing.top_of(piece.end - 1)
        y = top + 3.0
        if piece.row + 1 < piece.rows:
            above = self._rounds_before + piece.end + 1
            yield from self._join(ARROW_UP, left, y, f"round {above} follows on page {self._page(1, 0)}")
            y += JOIN_MM
        if piece.is_cut_sideways:
            yield from self._side_joins(left, right, y)
        if piece.row > 0:
            down = placing.bottom + NUMBERS_MM + (BARE_BRACKET_MM if self._is_narrow else BRACKET_MM) + 2.8
            below = self._rounds_before + piece.first
            yield from self._join(ARROW_DOWN, left, down, f"round {below} lies below, on page {self._page(-1, 0)}")
        edges = []
        if piece.column + 1 < piece.columns:
            edges.append(left)
        if piece.column > 0:
            edges.append(right)
        ticks = [(x, y1, x, y2) for x in edges for y1, y2 in ((upper, upper - TICK_MM),)]
        if ticks:
            yield Lines(tuple(ticks), 0.5, ACCENT)

    def _side_joins(self, left: float, right: float, y: float) -> Iterator[Box]:
        """Tell both side edges on one line, the right one's words past the left one's where the piece is narrow."""
        piece, free = self.piece, left
        if piece.column + 1 < piece.columns:
            words = f"goes on at {piece.end_column + 1}, page {self._page(0, 1)}"
            yield from self._join(ARROW_LEFT, left, y, words)
            free += ARROW_MM + width_mm(words, size_pt=JOIN.size_pt, bold=True) + 4
        if piece.column > 0:
            words = f"comes from {piece.right}, page {self._page(0, -1)}"
            wide = width_mm(words, size_pt=JOIN.size_pt, bold=True)
            x = max(free, right - ARROW_MM - wide)
            yield text_at(x, y, words, JOIN)
            yield Marks(ARROW_RIGHT, ((x + wide + ARROW_MM - 1.2, y - 1.0),), 2.4, ACCENT)

    def _join(self, arrow: Mark, x: float, y: float, words: str) -> Iterator[Box]:
        yield Marks(arrow, ((x + 1.2, y - 1.0),), 2.4, ACCENT)
        yield text_at(x + ARROW_MM, y, words, JOIN, most=self.plan.room.right - x - ARROW_MM)

    def _page(self, rows: int, columns: int) -> int:
        return self.page_of[self.piece.band, self.piece.row + rows, self.piece.column + columns]


def band_title(appraisal: Appraisal, band: int) -> str:
    """Tell a band by its number and its name."""
    name = appraisal.design.bands[band].name.strip()
    return f"{band + 1}  {name}" if name else f"{band + 1}"


def repeat_words(times: int, stitches: int) -> str:
    """Tell how often a repeat is worked."""
    what = "this stitch" if stitches == 1 else f"these {stitches} stitches"
    return f"work {what} {'once' if times == 1 else f'{times} times'}"


def _numbered(piece: Piece, cell_width: float) -> list[int]:
    """Choose the columns that are numbered: the ends, the tens and the fives, as far as they stand clear."""
    columns = range(piece.right + 1, piece.end_column + 1)
    wanted = [columns[0], columns[-1]]
    wanted += [column for column in columns if column % 10 == 0] + [column for column in columns if column % 5 == 0]
    chosen: list[int] = []
    for column in wanted:
        if all(abs(column - other) * cell_width >= CLOSEST_NUMBERS_MM for other in chosen):
            chosen.append(column)
    return chosen
