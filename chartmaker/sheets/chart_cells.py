"""The cells of a piece of chart: shades, marks, shaping signs and purl bars, gathered so that each is drawn once."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from itertools import groupby

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.band import Band
from chartmaker.model.stitches import Shaping
from chartmaker.shade.lot_shade import LotShade
from chartmaker.sheets.boxes import Box, Fills, Lines, Marks, Point, Rectangle, outline_of
from chartmaker.sheets.chart_plan import CellSize, Piece
from chartmaker.sheets.ink import HAIRLINE, PALE_MARK, Ink, fill_of, ink_on, paled
from chartmaker.sheets.marks import CATCH, PURL_BAR, SHAPING_MARKS, Mark

MARK_SHARE, SMALL_SHARE, SIGN_SHARE = 0.62, 0.40, 0.84
"""Size of a letter's mark, of one beside a sign, and of a sign, as shares of the cell's shorter side."""
ASIDE = {
    Shaping.PLAIN: (0.0, 0.0),
    Shaping.K2TOG: (0.27, 0.27),
    Shaping.SSK: (-0.27, 0.27),
    Shaping.CENTRED: (0.0, 0.24),
    Shaping.MAKE: (0.0, 0.26),
}
"""Where a letter's mark stands beside a sign, in cells rightwards and downwards: in the corner that the sign leaves."""
PURL_DROP, PURLED_MARK_RISE = 0.32, -0.1
"""Where the purl bar stands, and a letter's mark above it."""
CATCH_SHARE, CATCH_ASIDE = 0.34, -0.5
"""Size of the sign for a catch, as a share of the cell's shorter side, and where it begins: at the left edge."""
LAP_LINE_MM = 0.12


@dataclass(frozen=True, slots=True)
class Look:
    """How the letters are shown."""

    marks: Mapping[str, Mark]
    shades: Mapping[str, LotShade | None]
    """None where a letter's cells stay unfilled."""
    catches: Mapping[tuple[int, int], frozenset[int]] = field(default_factory=dict)
    """By band, and round in the band: the stitches of the repeat behind which a long float is caught."""


@dataclass(frozen=True, slots=True)
class Row:
    """One round of a piece: its cells, clipped to the piece."""

    index: int
    """Index of the round in its band."""
    start: int
    """Chart column of the first cell shown."""
    letters: str
    shaping: bytes
    first_stitch: int
    """Index in the repeat of the first cell shown."""

    @property
    def end(self) -> int:
        """One past the chart column of the last cell shown."""
        return self.start + len(self.letters)


def rows_of(band: Band, piece: Piece) -> list[Row]:
    """Give the rounds of a piece from the lowest up; where a round has no cell in it, an empty row."""
    offsets = chart_offsets(band.rounds)
    rows = []
    for index in range(piece.first, piece.end):
        line, offset = band.rounds[index], offsets[index]
        first = max(0, piece.right - offset)
        last = max(first, min(len(line), piece.end_column - offset))
        letters = "".join(line.letter_of(stitch) for stitch in range(first, last))
        rows.append(Row(index, max(offset, piece.right), letters, line.shaping[first:last], first))
    return rows


def lap_rows_of(band: Band, piece: Piece) -> list[Row]:
    """Give what a piece shows of its neighbours."""
    shown = piece.laps
    own = replace(shown, first=piece.first, end=piece.end)
    parts = (
        replace(shown, end=piece.first),
        replace(own, end_column=piece.right),
        replace(own, right=piece.end_column),
        replace(shown, first=piece.end),
    )
    return [row for part in parts for row in rows_of(band, part) if row.letters]


@dataclass(frozen=True, slots=True)
class Placing:
    """Where the cells of a piece stand on the page."""

    right: float
    """Right edge of its right-most column."""
    bottom: float
    """Lower edge of its lowest round."""
    size: CellSize
    piece: Piece

    def left_of(self, column: int) -> float:
        """Give the left edge of a chart column."""
        return self.right - (column - self.piece.right + 1) * self.size.width

    def top_of(self, index: int) -> float:
        """Give the upper edge of a round."""
        return self.bottom - (index - self.piece.first + 1) * self.size.height

    @property
    def shown_bottom(self) -> float:
        """The lower edge of all that is shown, its neighbour's rounds included."""
        return self.top_of(self.piece.laps.first - 1)

    def middle_of(self, index: int, column: int, dx: float = 0.0, dy: float = 0.0) -> Point:
        """Give a place in a cell, `dx` cells right of its middle and `dy` below."""
        width, height = self.size.width, self.size.height
        return self.left_of(column) + (0.5 + dx) * width, self.top_of(index) + (0.5 + dy) * height


def cell_boxes(rows: list[Row], band: Band, placing: Placing, look: Look) -> list[Box]:
    """Give all cells: fills first, then the marks on them."""
    fills = _fills(rows, placing, look)
    return [*(Fills(tuple(found), ink) for ink, found in fills.items()), *_marks(rows, band, placing, look)]


def lap_boxes(rows: list[Row], band: Band, placing: Placing, look: Look) -> list[Box]:
    """Give the cells that a piece repeats of its neighbours, paler than its own, each in a thin frame."""
    fills = _fills(rows, placing, look)
    size = placing.size
    frames = tuple(
        segment
        for row in rows
        for column in range(row.start, row.end)
        for segment in outline_of(
            (placing.left_of(column), placing.top_of(row.index), size.width, size.height), width=0, ink=HAIRLINE
        ).segments
    )
    marks = (replace(box, ink=PALE_MARK) for box in _marks(rows, band, placing, look))
    boxes: list[Box] = [Fills(tuple(found), paled(ink)) for ink, found in fills.items()]
    return [*boxes, *marks, *([Lines(frames, LAP_LINE_MM, HAIRLINE)] if frames else [])]


def _fills(rows: list[Row], placing: Placing, look: Look) -> dict[Ink, list[Rectangle]]:
    found: dict[Ink, list[Rectangle]] = defaultdict(list)
    for row in rows:
        column = row.start
        for letter, group in groupby(row.letters):
            count = len(list(group))
            left = placing.left_of(column + count - 1)
            rectangle = (left, placing.top_of(row.index), count * placing.size.width, placing.size.height)
            if look.shades.get(letter) is not None:
                found[fill_of(look.shades[letter])].append(rectangle)
            column += count
    return found


def _marks(rows: list[Row], band: Band, placing: Placing, look: Look) -> Iterator[Marks]:
    side = min(placing.size.width, placing.size.height)
    edge = CATCH_ASIDE + CATCH_SHARE * side / placing.size.width / 2
    found: dict[tuple[Mark, float, Ink], list[Point]] = defaultdict(list)
    inks = {letter: ink_on(shade) for letter, shade in look.shades.items()}
    for row in rows:
        caught = look.catches.get((placing.piece.band, row.index), frozenset())
        for place, (letter, code) in enumerate(zip(row.letters, row.shaping, strict=True)):
            stitch, column, ink = row.first_stitch + place, row.start + place, inks[letter]
            is_purl = bool(band.texture) and band.texture[stitch % len(band.texture)] == "p"
            dx, dy = ASIDE[Shaping(code)]
            share = SMALL_SHARE if code else MARK_SHARE
            if is_purl and not code:
                dy, share = PURLED_MARK_RISE, 0.8 * MARK_SHARE
            if look.marks[letter].shapes:
                found[look.marks[letter], share * side, ink].append(placing.middle_of(row.index, column, dx, dy))
            if code:
                found[SHAPING_MARKS[Shaping(code)], SIGN_SHARE * side, ink].append(placing.middle_of(row.index, column))
            if is_purl:
                drop = -0.38 if code else PURL_DROP
                found[PURL_BAR, MARK_SHARE * side, ink].append(placing.middle_of(row.index, column, 0.0, drop))
            if stitch in caught:
                found[CATCH, CATCH_SHARE * side, ink].append(placing.middle_of(row.index, column, edge))
    for (mark, size, ink), centres in found.items():
        yield Marks(mark, tuple(centres), size, ink)
