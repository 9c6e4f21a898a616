"""Paints the chart: the fabric as one scaled picture, a pixel a stitch, then signs, then lines that help to count.

What costs time is done once for what is in sight and kept by the canvas; painting a widget is then a blit.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QImage, QPainter

from chartmaker.app import shades
from chartmaker.app.chart_grid import GHOST_CODE, NO_STITCH, ChartGrid
from chartmaker.app.signs import draw_letter, draw_mark, draw_mark_aside, draw_shaping, letter_marks

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from chartmaker.app.chart_grid import Row
    from chartmaker.appraisal import Appraisal
    from chartmaker.sheets.marks import Mark

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
PURL_CODE = NO_STITCH + 1
"""Added to a code where the symbol view shows a purled stitch."""
SMALLEST_SIGN_PX = 6
"""Cells lower than this many screen pixels carry no sign."""
SMALLEST_LINES_PX = 5
"""Cells narrower than this many screen pixels have no line around each."""


@dataclass(frozen=True, slots=True)
class Look:
    """How codes are shown under one view: a colour each, and the letters that need a sign to be told apart."""

    view: str
    colours: tuple[QColor, ...]
    """One for each code of a `ChartGrid`."""
    signed: tuple[tuple[str, Mark | None], ...]
    """Letters drawn with a mark, or written where it is None."""

    @classmethod
    def of(cls, appraisal: Appraisal, view: str) -> Look:
        """Make the look of an appraised design under "shade", "value" or "symbols"."""
        live = [shades.letter_colour(appraisal, letter, view=view) for letter in LETTERS]
        colours = (*live, *map(shades.ghosted, live), shades.SURROUND)
        unknown = tuple((letter, None) for letter in LETTERS if shades.known_shade(appraisal, letter) is None)
        return cls(view, colours, tuple(letter_marks(appraisal).items()) if view == "symbols" else unknown)


class FabricPainter:
    """Holds the picture of a grid under a look, and paints any part of it at any size."""

    def __init__(self, grid: ChartGrid, look: Look) -> None:
        self.grid = grid
        self.look = look
        self._image = QImage()
        self._stamps: dict[tuple[int, int, tuple[tuple[str, Mark | None], ...]], NDArray[np.uint8]] = {}
        self.take(grid, look)

    def take(self, grid: ChartGrid, look: Look) -> None:
        """Show another grid or look."""
        self.grid, self.look = grid, look
        lines, places = grid.codes.shape
        # Copied, since QImage would only borrow the memory, and its lines are padded to four bytes.
        self._image = QImage(grid.codes.tobytes(), places, lines, places, QImage.Format.Format_Indexed8).copy()
        self._image.setColorTable([colour.rgb() for colour in look.colours])

    def paint(self, painter: QPainter, *, origin: QPointF, cell: QSizeF, area: QRectF, pixel_ratio: float) -> None:
        """Paint what lies in `area`; `origin` is where the picture's top left stands, in the painter's units."""
        painter.save()
        painter.setClipRect(area)
        part = self._cells_in(area, origin, cell)
        if not part.isEmpty():
            target = QRectF(
                origin.x() + part.x() * cell.width(),
                origin.y() + part.y() * cell.height(),
                part.width() * cell.width(),
                part.height() * cell.height(),
            )
            painter.drawImage(target, self._image, part)
            if cell.height() * pixel_ratio >= SMALLEST_SIGN_PX:
                self._paint_letter_signs(painter, target, part, cell, pixel_ratio)
                self._paint_shaping(painter, origin, part, cell)
            self._paint_lines(painter, origin, part, cell, pixel_ratio)
        painter.restore()

    def _cells_in(self, area: QRectF, origin: QPointF, cell: QSizeF) -> QRectF:
        lines, places = self.grid.codes.shape
        left = max(0, int((area.left() - origin.x()) // cell.width()))
        top = max(0, int((area.top() - origin.y()) // cell.height()))
        right = min(places, int((area.right() - origin.x()) // cell.width()) + 1)
        bottom = min(lines, int((area.bottom() - origin.y()) // cell.height()) + 1)
        return QRectF(left, top, max(0, right - left), max(0, bottom - top))

    def _paint_letter_signs(
        self, painter: QPainter, target: QRectF, part: QRectF, cell: QSizeF, pixel_ratio: float
    ) -> None:
        if not self.look.signed:
            return
        width, height = round(cell.width() * pixel_ratio), round(cell.height() * pixel_ratio)
        stamps = self._stamps_for(width, height)
        left, top = int(part.x()), int(part.y())
        window = np.s_[top : top + int(part.height()), left : left + int(part.width())]
        codes = self.grid.codes[window]
        if self.look.view == "symbols":
            # A purled stitch has its own stamp; a shaped one gets none, since its sign takes the middle of the cell.
            codes = codes + PURL_CODE * self.grid.purl[window].astype(np.uint8)
            codes[self.grid.shaping[window] > 0] = NO_STITCH
        mask = np.ascontiguousarray(stamps[codes].transpose(0, 2, 1, 3)).reshape(codes.shape[0] * height, -1)
        image = QImage(mask.tobytes(), mask.shape[1], mask.shape[0], mask.shape[1], QImage.Format.Format_Alpha8)
        painter.drawImage(target, image, QRectF(image.rect()))

    def _stamps_for(self, width: int, height: int) -> NDArray[np.uint8]:
        """Give the opacity of ink for every code, `(codes, height, width)`, as one cell shows it."""
        key = (width, height, self.look.signed)
        if key not in self._stamps:
            stamps = np.zeros((PURL_CODE + NO_STITCH + 1, height, width), np.uint8)
            for letter, mark in self.look.signed:
                for code, is_purled in ((_code(letter), False), (_code(letter) + PURL_CODE, True)):
                    stamps[code] = _stamp(letter, mark, width, height, is_purled=is_purled)
                    stamps[code + GHOST_CODE] = (stamps[code] * shades.GHOST_SHARE).astype(np.uint8)
            self._stamps = {key: stamps}
        return self._stamps[key]

    def _paint_shaping(self, painter: QPainter, origin: QPointF, part: QRectF, cell: QSizeF) -> None:
        left, top = int(part.x()), int(part.y())
        window = np.s_[top : top + int(part.height()), left : left + int(part.width())]
        codes, shaping = self.grid.codes[window], self.grid.shaping[window]
        marks = dict(self.look.signed)
        for line, place in np.argwhere(shaping):
            box = QRectF(
                origin.x() + (left + place) * cell.width(),
                origin.y() + (top + line) * cell.height(),
                cell.width(),
                cell.height(),
            )
            code, shape = int(codes[line, place]), int(shaping[line, place])
            ink = shades.ink_on(self.look.colours[code])
            if code >= GHOST_CODE:
                ink.setAlphaF(shades.GHOST_SHARE)
            draw_shaping(painter, box, shape, ink)
            mark = marks.get(LETTERS[code % GHOST_CODE])
            if mark is not None:
                draw_mark_aside(painter, box, mark, shape, ink)

    def _paint_lines(self, painter: QPainter, origin: QPointF, part: QRectF, cell: QSizeF, pixel_ratio: float) -> None:
        """Draw a line around each live stitch, heavier ones at each fifth and tenth, and the repeat's outline."""
        weights = _line_weights(1 / pixel_ratio, has_fine=cell.width() * pixel_ratio >= SMALLEST_LINES_PX)
        for rows in self._blocks(part):
            for colour, rects in _block_lines(self.grid, rows, origin, cell, weights):
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(colour)
                painter.drawRects(rects)

    def _blocks(self, part: QRectF) -> list[list[int]]:
        """Group the rows in sight, and one beyond at each end, by where their live stitches stand."""
        last = len(self.grid.rows) - 1
        lowest, highest = last - int(part.bottom()), last - int(part.top()) + 1
        rows = range(max(0, lowest), min(last, highest) + 1)
        return [list(group) for _, group in groupby(rows, key=lambda number: _span(self.grid.rows[number]))]


def _code(letter: str) -> int:
    return ord(letter) - ord("A")


def _stamp(letter: str, mark: Mark | None, width: int, height: int, *, is_purled: bool) -> NDArray[np.uint8]:
    """Give the opacity of a letter's sign, `(height, width)`."""
    image = QImage(width, height, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    box, ink = QRectF(0, 0, width, height), QColor(0, 0, 0)
    if mark is None:
        draw_letter(painter, box, letter, ink)
    else:
        draw_mark(painter, box, mark, ink, is_purled=is_purled)
    painter.end()
    return np.frombuffer(bytes(image.constBits()), np.uint8).reshape(height, width, 4)[:, :, 3]


def _span(row: Row) -> tuple[int, int, int]:
    return row.band, row.offset, row.length


FINE = QColor(119, 119, 119, 150)
FIFTH = QColor(20, 20, 20, 210)
TENTH = QColor(20, 20, 20)


def _line_weights(pixel: float, *, has_fine: bool) -> dict[int, tuple[QColor, float]]:
    """Give colour and thickness of lines: 1 around each stitch, 5 and 10 at those counts, 0 the outline."""
    weights = {5: (FIFTH, pixel), 10: (TENTH, 2 * pixel), 0: (TENTH, 2 * pixel)}
    if has_fine:
        weights |= {1: (FINE, pixel)}
    return weights


def _block_lines(
    grid: ChartGrid, rows: list[int], origin: QPointF, cell: QSizeF, weights: dict[int, tuple[QColor, float]]
) -> list[tuple[QColor, list[QRectF]]]:
    """Give the lines of rows that stand alike, faint ones first, as filled strips of one colour each."""
    first = grid.rows[rows[0]]
    top_line, left_place = grid.place(rows[-1], first.offset + first.length - 1)
    bottom_line, right_place = grid.place(rows[0], first.offset)
    left, right = origin.x() + left_place * cell.width(), origin.x() + (right_place + 1) * cell.width()
    top, bottom = origin.y() + top_line * cell.height(), origin.y() + (bottom_line + 1) * cell.height()
    strips: dict[int, list[QRectF]] = {weight: [] for weight in (1, 5, 10, 0) if weight in weights}
    for count in range(first.offset, first.offset + first.length + 1):
        is_edge = count in (first.offset, first.offset + first.length)
        weight = 0 if is_edge else _weight_at(count)
        if weight in strips:
            thick = weights[weight][1]
            x = origin.x() + (grid.width + grid.ghost - count) * cell.width()
            strips[weight].append(QRectF(x - thick / 2, top, thick, bottom - top))
    for number in range(rows[0], rows[-1] + 2):
        weight = 0 if _is_band_edge(grid, number) else _weight_at(number)
        if weight in strips:
            thick = weights[weight][1]
            y = origin.y() + (len(grid.rows) - number) * cell.height()
            strips[weight].append(QRectF(left - thick / 2, y - thick / 2, right - left + thick, thick))
    return [(weights[weight][0], rects) for weight, rects in strips.items() if rects]


def _weight_at(count: int) -> int:
    return 10 if count % 10 == 0 else 5 if count % 5 == 0 else 1


def _is_band_edge(grid: ChartGrid, number: int) -> bool:
    """Tell whether the line below row `number` parts two bands, or is the chart's own edge."""
    if number in (0, len(grid.rows)):
        return True
    return grid.rows[number].band != grid.rows[number - 1].band
