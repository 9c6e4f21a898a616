"""The pages of the chart: each band's one repeat at true proportion, with its numbers, its bracket and its joins."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from chartmaker.appraisal import Appraisal
from chartmaker.knit.outline import chart_width
from chartmaker.sheets.boxes import Body, Bookmark, Box, Lines, Marks, Style, moved, text_at
from chartmaker.sheets.chart_cells import Look, Placing, Row, cell_boxes, lap_boxes, lap_rows_of, rows_of
from chartmaker.sheets.chart_grid import grid_boxes
from chartmaker.sheets.chart_joins import Joins
from chartmaker.sheets.chart_plan import (
    ASIDE_GAP_MM,
    DETAIL_PT,
    TITLE_PT,
    USUAL,
    CellSize,
    Measures,
    Piece,
    Shelf,
    best_size,
    cut,
    paged,
    repeat_words,
    shelf_height,
    shelved,
)
from chartmaker.sheets.ink import ACCENT, QUIET
from chartmaker.sheets.legend import strip
from chartmaker.sheets.lines import MM_PER_PT, width_mm
from chartmaker.sheets.marks import TICK_BOX
from chartmaker.sheets.paper import Frame

READING_LINE = "Read upwards, right to left. Round 1 is the first knitted."
LAP_LINE = "Paler cells are shown again beside the cut."
READING_MM = 6.0
STRIP_GAP_MM = 4.0
NUMBER_PT, LETTERS_PT, STITCH_PT = 7.5, 6.5, 7.0
TICK_MM = 2.6
CLOSEST_NUMBERS_MM = 5.0
LEAST_TITLE, LEAST_DETAIL = 0.65, 0.61
"""How much smaller a band's name and the rounds beside it are set before the name is cut off."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Manner:
    """How a chart is drawn."""

    look: Look
    measures: Measures = USUAL
    every: int = 5
    """Heavier lines every so many: 5, 10, or 0 for none."""


@dataclass(frozen=True, slots=True)
class ChartPlan:
    """Everything decided about the chart before it is laid out."""

    size: CellSize
    pages: tuple[tuple[Shelf, ...], ...]
    room: Frame
    top: tuple[Box, ...]
    """What every page has above its pieces."""
    taken: float = 0.0
    """Height at the top of the first page that something else has."""

    def page_of(self, first_page: int) -> dict[Piece, int]:
        """Give the page of every piece, the first of the chart's pages having this number."""
        return {
            piece: first_page + number for number, page in enumerate(self.pages) for shelf in page for piece in shelf
        }


def plan_chart(appraisal: Appraisal, frame: Frame, manner: Manner, *, taken: float = 0.0) -> ChartPlan:
    """Choose the cell size, cut the bands and put the pieces on pages, below what takes the top of the first."""
    design, scale = appraisal.design, manner.measures.scale
    reading_mm = READING_MM * scale
    below = Frame(frame.left, frame.top + reading_mm, frame.right, frame.bottom)
    legend = strip(appraisal, manner.look, below, scale=scale)
    room = Frame(frame.left, below.top + legend.height + STRIP_GAP_MM, frame.right, frame.bottom)
    size = best_size(design, room, manner.measures, taken=taken)
    pieces = cut(design, size, room)
    is_lapped = any(piece.laps != piece for piece in pieces)
    words = f"{READING_LINE} {LAP_LINE}" if is_lapped else READING_LINE
    wide = width_mm(words, size_pt=9.0 * scale, bold=True)
    style = Style(9.0 * scale * min(1.0, 0.99 * frame.width / wide), bold=True)
    reading = text_at(frame.left, frame.top + 3.2 * scale, words, style)
    pages = paged(shelved(pieces, size, room), size, room, taken=taken)
    return ChartPlan(size, tuple(map(tuple, pages)), room, (reading, *legend.boxes), taken)


def chart_pages(appraisal: Appraisal, plan: ChartPlan, manner: Manner, *, first_page: int) -> Iterator[Body]:
    """Lay the planned pages out.

    Args:
        appraisal: what is drawn.
        plan: made for the same appraisal and manner.
        manner: how it is drawn.
        first_page: number of the first of these pages, for the joins that name pages.
    """
    found = plan.page_of(first_page)
    for number, page in enumerate(plan.pages):
        lower = 0.0 if number else plan.taken
        boxes = list(moved(plan.top, 0.0, lower)) if page else []
        bookmarks: list[Bookmark] = []
        y = plan.room.top + lower
        for shelf in reversed(page):
            height = shelf_height(shelf, plan.size, plan.room)
            marks = []
            left = plan.room.left
            spare = (plan.room.width - sum(piece.width(plan.size, plan.room) for piece in shelf)) / len(shelf)
            for piece in shelf:
                if piece.row == piece.column == 0:
                    marks.append(Bookmark(band_title(appraisal, piece.band), level=1, top=y))
                right = left + piece.width(plan.size, plan.room) + spare if len(shelf) > 1 else plan.room.right
                top = y + height - piece.height(plan.size, plan.room)
                boxes.extend(_Layout(appraisal, manner, plan, piece, found, (left, right)).boxes(top))
                left = right
            bookmarks = [*marks, *bookmarks]
            y += height + manner.measures.gap
        yield Body(tuple(boxes), tuple(bookmarks))


@dataclass(frozen=True, slots=True)
class _Layout:
    """Lays out one piece."""

    appraisal: Appraisal
    manner: Manner
    plan: ChartPlan
    piece: Piece
    page_of: dict[Piece, int]
    sides: tuple[float, float]
    """Between which it stands."""

    def boxes(self, top: float) -> Iterator[Box]:
        """Give everything of the piece, its upper edge at `top`."""
        piece, size, measures = self.piece, self.plan.size, self.manner.measures
        band, shown = self.appraisal.design.bands[piece.band], piece.laps
        rows = rows_of(band, piece)
        joins_top = top if self._is_narrow else top + measures.title
        above = (piece.row + 1 < piece.rows) + piece.is_cut_sideways * measures.side_joins
        cells_top = joins_top + measures.join * above
        placing = Placing(
            right=self.sides[0] + measures.left + (shown.end_column - piece.right) * size.width,
            bottom=cells_top + (shown.end - piece.first) * size.height,
            size=size,
            piece=piece,
        )
        if self._is_narrow:
            yield from self._title_aside(placing.right + measures.right + ASIDE_GAP_MM, cells_top)
        else:
            yield from self._title_above(top)
        yield from lap_boxes(lap_rows_of(band, piece), band, placing, self.manner.look)
        yield from cell_boxes(rows, band, placing, self.manner.look)
        yield from grid_boxes(rows, placing, rounds_before=self._rounds_before, every=self.manner.every)
        yield from self._beside(rows, placing)
        yield from self._stitch_numbers(placing)
        yield from self._bracket(rows, placing)
        yield from Joins(rows, placing, self.plan.room, self.page_of, self._rounds_before).boxes(joins_top)

    @property
    def _rounds_before(self) -> int:
        return sum(len(band.rounds) for band in self.appraisal.design.bands[: self.piece.band])

    @property
    def _is_narrow(self) -> bool:
        return self.piece.is_narrow(self.plan.size, self.plan.room)

    @property
    def _scale(self) -> float:
        return self.manner.measures.scale

    @property
    def _title(self) -> Style:
        return Style(TITLE_PT * self._scale, bold=True)

    @property
    def _detail(self) -> Style:
        return Style(DETAIL_PT * self._scale, ink=QUIET)

    @property
    def _repeat(self) -> Style:
        return Style(DETAIL_PT * self._scale, bold=True, ink=ACCENT)

    def _title_above(self, top: float) -> Iterator[Box]:
        (left, right), baseline = self.sides, top + 3.6 * self._scale
        title = band_title(self.appraisal, self.piece.band)
        wide = width_mm(self._where, size_pt=self._detail.size_pt)
        most = min(0.55 * (right - left), max(0.25 * (right - left), right - left - 3 - LEAST_DETAIL * wide))
        fitting = 0.99 * most / width_mm(title, size_pt=self._title.size_pt, bold=True)
        style = replace(self._title, size_pt=self._title.size_pt * min(1.0, max(LEAST_TITLE, fitting)))
        name = text_at(left, baseline, title, style, most=most)
        yield name
        x = left + name.width + 3
        detail = replace(
            self._detail, size_pt=self._detail.size_pt * min(1.0, max(0.99 * LEAST_DETAIL, 0.99 * (right - x) / wide))
        )
        yield text_at(x, baseline, self._where, detail, most=right - x)

    def _title_aside(self, x: float, top: float) -> Iterator[Box]:
        most, scale = self.sides[1] - x, self._scale
        band = self.appraisal.design.bands[self.piece.band]
        title = band_title(self.appraisal, self.piece.band)
        yield text_at(x, top + 3.4 * scale, title, self._title, most=most)
        yield text_at(x, top + 7.5 * scale, self._where, self._detail, most=most)
        words = repeat_words(band.times, len(band.rounds[self.piece.first]))
        yield text_at(x, top + 11.6 * scale, words, self._repeat, most=most)

    @property
    def _where(self) -> str:
        """The rounds of the piece, and which part of its band it is."""
        piece = self.piece
        first, last = self._rounds_before + piece.first + 1, self._rounds_before + piece.end
        words = [f"round {first}" if first == last else f"rounds {first}–{last}"]
        if piece.rows > 1:
            words.append(f"part {piece.row + 1} of {piece.rows}")
        if piece.is_cut_sideways:
            columns = chart_width(self.appraisal.design.bands[piece.band].rounds)
            words.append(f"columns {piece.right + 1}–{piece.end_column} of {columns}")
        return "  ·  ".join(words)

    def _beside(self, rows: Sequence[Row], placing: Placing) -> Iterator[Box]:
        """Give beside each round a box to tick, its number and its letters; and the counts of stitches."""
        scale, height = self._scale, placing.size.height
        size = min(NUMBER_PT * scale, 0.8 * height / MM_PER_PT)
        letters_pt = min(size, LETTERS_PT * scale)
        rise = 0.35 * size * MM_PER_PT
        right = placing.left_of(self.piece.laps.right - 1)
        counts_x = placing.left_of(self.piece.laps.end_column - 1) - 1.6
        tick = min(TICK_MM * scale, 0.66 * height)
        ticks = []
        before = 0
        for row in rows:
            round_ = self.appraisal.rounds[self._rounds_before + row.index]
            middle = placing.middle_of(row.index, 0)[1]
            ticks.append((right + 1.4 * scale + tick / 2, middle))
            number = text_at(right + 10.4 * scale, middle + rise, str(round_.number), Style(size), align="right")
            yield number
            letters = " ".join(round_.letters)
            yield text_at(right + 11.6 * scale, middle + rise, letters, Style(letters_pt, ink=QUIET))
            if round_.stitches != before or row is rows[-1]:
                yield text_at(counts_x, middle + rise, str(round_.stitches), Style(size, ink=QUIET), align="right")
            before = round_.stitches
        yield Marks(TICK_BOX, tuple(ticks), tick, QUIET)

    def _stitch_numbers(self, placing: Placing) -> Iterator[Box]:
        scale = self._scale
        baseline = placing.shown_bottom + 3.2 * scale
        for column in _numbered(self.piece, placing.size.width / scale):
            x = placing.left_of(column - 1) + placing.size.width / 2
            yield text_at(x, baseline, str(column), Style(STITCH_PT * scale), align="middle")

    def _bracket(self, rows: Sequence[Row], placing: Placing) -> Iterator[Box]:
        row = rows[0]
        if not row.letters:  # the repeat of a higher round would be told with another count
            return
        band, scale = self.appraisal.design.bands[self.piece.band], self._scale
        y = placing.shown_bottom + self.manner.measures.numbers + 0.8
        left, right = placing.left_of(row.end - 1), placing.left_of(row.start - 1)
        segments = [(left, y, right, y)]
        if row.first_stitch == 0:
            segments.append((right, y, right, y - 1.4))
        if row.first_stitch + len(row.letters) == len(band.rounds[row.index]):
            segments.append((left, y, left, y - 1.4))
        yield Lines(tuple(segments), 0.4, ACCENT)
        if self._is_narrow:
            return
        is_part = len(row.letters) < len(band.rounds[row.index])
        words, style = repeat_words(band.times, len(band.rounds[row.index]), is_part=is_part), self._repeat
        if width_mm(words, size_pt=style.size_pt, bold=True) <= right - left:
            yield text_at((left + right) / 2, y + 3.6 * scale, words, style, align="middle")
        else:
            x = max(self.sides[0], min(left, self.sides[1] - 60 * scale))
            yield text_at(x, y + 3.6 * scale, words, style, most=self.sides[1] - x)


def band_title(appraisal: Appraisal, band: int) -> str:
    """Tell a band by its number and its name."""
    name = appraisal.design.bands[band].name.strip()
    return f"{band + 1}  {name}" if name else f"{band + 1}"


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
