"""Paints the chart: the fabric as one scaled picture, a pixel a stitch, then signs, then lines that help to count.

What costs time is done once for what is in sight and kept by the canvas; painting a widget is then a blit.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QColor, QImage, QPainter

from chartmaker.app import shades
from chartmaker.app.chart_grid import GHOST_CODE, NO_STITCH, ChartGrid
from chartmaker.app.chart_lines import paint_lines
from chartmaker.app.letter_menu import ALPHABET
from chartmaker.app.signs import draw_letter, draw_mark, draw_mark_aside, draw_shaping
from chartmaker.app.stitch_fill import StitchFill

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from chartmaker.app.look import Look
    from chartmaker.model.design import Design
    from chartmaker.sheets.marks import Mark

PURL_CODE = NO_STITCH + 1
"""Added to a code where the symbol view shows a purled stitch."""
SMALLEST_SIGN_PX = 6
"""Cells lower than this many screen pixels carry no sign."""


class FabricPainter:
    """Holds the picture of a grid under a look, and paints any part of it at any size."""

    def __init__(self, grid: ChartGrid, look: Look, design: Design) -> None:
        self.grid = grid
        self.look = look
        self._image = QImage()
        self._stamps: dict[tuple[int, int, tuple[tuple[str, Mark | None], ...]], NDArray[np.uint8]] = {}
        self._stitches = StitchFill()
        self.take(grid, look, design)

    @property
    def reach(self) -> int:
        """How many rows away from a stitch its yarn shows."""
        return 0 if self.look.surface == "flat" else 1

    def take(self, grid: ChartGrid, look: Look, design: Design) -> None:
        """Show another grid or look, of this design."""
        self.grid, self.look = grid, look
        if look.surface != "flat":
            self._stitches.take(grid, look, design)
            return
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
            if self.look.surface == "flat":
                painter.drawImage(target, self._image, part)
            else:
                self._stitches.paint(painter, target.topLeft(), part.toRect(), cell, pixel_ratio)
            if cell.height() * pixel_ratio >= SMALLEST_SIGN_PX and self.look.surface != "back":
                self._paint_letter_signs(painter, target, part, cell, pixel_ratio)
            if cell.height() * pixel_ratio >= SMALLEST_SIGN_PX and self.look.surface == "flat":
                self._paint_shaping(painter, origin, part, cell)
            paint_lines(
                painter,
                self.grid,
                origin=origin,
                part=part,
                cell=cell,
                pixel_ratio=pixel_ratio,
                is_drawing=self.look.surface == "flat",
            )
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
            mark = marks.get(ALPHABET[code % GHOST_CODE])
            if mark is not None:
                draw_mark_aside(painter, box, mark, shape, ink)


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
