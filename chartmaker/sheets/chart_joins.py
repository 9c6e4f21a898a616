"""What a piece of chart says at the edges at which it is cut: where it goes on, and ticks that meet their like."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from chartmaker.sheets.boxes import Box, Lines, Marks, Segment, Style, text_at
from chartmaker.sheets.chart_cells import Placing, Row
from chartmaker.sheets.chart_plan import Measures, Piece
from chartmaker.sheets.ink import ACCENT
from chartmaker.sheets.lines import width_mm
from chartmaker.sheets.marks import ARROW_DOWN, ARROW_LEFT, ARROW_RIGHT, ARROW_UP, Mark
from chartmaker.sheets.numbers import spans
from chartmaker.sheets.paper import Frame

TICK_MM = 2.0
ARROW_MM = 3.6
JOIN_PT = 8.0


@dataclass(frozen=True, slots=True)
class Joins:
    """Lays out the joins of one piece."""

    rows: Sequence[Row]
    """Its own rounds from the lowest up."""
    placing: Placing
    room: Frame
    page_of: dict[Piece, int]
    """The page of every piece of the chart."""
    rounds_before: int
    """Rounds of the hat below its band."""

    def boxes(self, top: float) -> Iterator[Box]:
        """Say at each cut edge where it goes on; `top` is the upper end of the room for it."""
        piece, scale = self.piece, self._scale
        left = self.placing.left_of(piece.laps.end_column - 1)
        y = top + 3.0 * scale
        if piece.row + 1 < piece.rows:
            above = self.rounds_before + piece.end + 1
            yield from self._join(ARROW_UP, left, y, f"round {above} follows on {self._pages(1)}")
            y += self._measures.join
        if piece.is_cut_sideways:
            yield from self._side_joins(left, y)
        if piece.row > 0:
            narrow = piece.is_narrow(self.placing.size, self.room)
            bracket = self._measures.bare_bracket if narrow else self._measures.bracket
            down = self.placing.shown_bottom + self._measures.numbers + bracket + 2.8 * scale
            below = self.rounds_before + piece.first
            yield from self._join(ARROW_DOWN, left, down, f"round {below} lies below, on {self._pages(-1)}")
        yield from self._ticks()

    @property
    def piece(self) -> Piece:
        """The piece that says so."""
        return self.placing.piece

    @property
    def _measures(self) -> Measures:
        return self.placing.size.measures

    @property
    def _scale(self) -> float:
        return self.placing.size.measures.scale

    @property
    def _style(self) -> Style:
        return Style(JOIN_PT * self._scale, ink=ACCENT, bold=True)

    def _ticks(self) -> Iterator[Box]:
        """Mark the cuts themselves at both ends, where there are cells along them."""
        piece = self.piece
        ticks: list[Segment] = []
        if piece.row + 1 < piece.rows:
            ticks += self._level_ticks(self.rows[-1], self.placing.top_of(piece.end - 1))
        if piece.row > 0:
            ticks += self._level_ticks(self.rows[0], self.placing.bottom)
        if piece.column + 1 < piece.columns:
            cut = [row.index for row in self.rows if row.letters and row.end == piece.end_column]
            ticks += self._upright_ticks(cut, self.placing.left_of(piece.end_column - 1))
        if piece.column > 0:
            cut = [row.index for row in self.rows if row.letters and row.start == piece.right]
            ticks += self._upright_ticks(cut, self.placing.right)
        if ticks:
            yield Lines(tuple(ticks), 0.5, ACCENT)

    def _level_ticks(self, row: Row, y: float) -> list[Segment]:
        """Mark a cut between rounds at the ends of the round along it, past what is shown once more beside it."""
        if not row.letters:
            return []
        shown = self.piece.laps
        left = self.placing.left_of((shown.end_column if row.end == self.piece.end_column else row.end) - 1)
        right = self.placing.left_of((shown.right if row.start == self.piece.right else row.start) - 1)
        return [(left, y, left - TICK_MM / 2, y), (right, y, right + TICK_MM / 2, y)]

    def _upright_ticks(self, cut: Sequence[int], x: float) -> list[Segment]:
        """Mark a cut between columns above and below the rounds that it goes through."""
        if not cut:
            return []
        piece, shown = self.piece, self.piece.laps
        upper = self.placing.top_of((shown.end if cut[-1] + 1 == piece.end else cut[-1] + 1) - 1)
        lower = self.placing.top_of((shown.first if cut[0] == piece.first else cut[0]) - 1)
        return [(x, upper, x, upper - TICK_MM / 2), (x, lower, x, lower + TICK_MM / 2)]

    def _side_joins(self, left: float, y: float) -> Iterator[Box]:
        """Tell both side edges on one line, the right one's words past the left one's where the piece is narrow."""
        piece, free, style = self.piece, left, self._style
        right = self.placing.left_of(piece.laps.right - 1)
        arrow = ARROW_MM * self._scale
        if piece.column + 1 < piece.columns:
            words = f"goes on at {piece.end_column + 1}, page {self._beside(1)}"
            yield from self._join(ARROW_LEFT, left, y, words)
            free += arrow + width_mm(words, size_pt=style.size_pt, bold=True) + 4
        if piece.column > 0:
            words = f"comes from {piece.right}, page {self._beside(-1)}"
            wide = width_mm(words, size_pt=style.size_pt, bold=True)
            if self._measures.side_joins > 1:
                free, y = left, y + self._measures.join
            x = min(max(free, right - arrow - wide), self.room.right - arrow - wide)
            yield text_at(x, y, words, style)
            yield Marks(ARROW_RIGHT, ((x + wide + 0.67 * arrow, y - 1.0 * self._scale),), 2.4 * self._scale, ACCENT)

    def _join(self, arrow: Mark, x: float, y: float, words: str) -> Iterator[Box]:
        scale = self._scale
        words_x = x + ARROW_MM * scale
        yield Marks(arrow, ((x + 1.2 * scale, y - 1.0 * scale),), 2.4 * scale, ACCENT)
        yield text_at(words_x, y, words, self._style, most=self.room.right - words_x)

    def _beside(self, step: int) -> int:
        """Give the page of the piece at the left (1) or the right (-1)."""
        return next(self._found(self.piece.row, self.piece.column + step))[1]

    def _pages(self, step: int) -> str:
        """Tell the pages of the pieces above (1) or below (-1) that share a column with this one."""
        piece, row = self.piece, self.piece.row + step
        pages = sorted(
            {
                page
                for other, page in self._found(row)
                if other.right < piece.end_column and piece.right < other.end_column
            }
            or {page for _, page in self._found(row)}
        )
        return f"page {pages[0]}" if len(pages) == 1 else f"pages {spans(pages)}"

    def _found(self, row: int, column: int | None = None) -> Iterator[tuple[Piece, int]]:
        for piece, page in self.page_of.items():
            if (piece.band, piece.row) == (self.piece.band, row) and column in (None, piece.column):
                yield piece, page
