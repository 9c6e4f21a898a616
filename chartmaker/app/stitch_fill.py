"""Fills the chart's cells with knitted stitches: their faces, or the back of the work with its floats."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtGui import QImage

from chartmaker.app import shades
from chartmaker.app.chart_grid import GHOST_CODE, NO_STITCH, ChartGrid, stitches_along
from chartmaker.knit.strands import strands_behind
from chartmaker.model.stitches import Part, Shaping
from chartmaker.pictures.back import CAUGHT, lay_strands
from chartmaker.pictures.stitch_tiles import KNIT, LEANS_LEFT, LEANS_RIGHT, PURL, StitchTiles, packed

if TYPE_CHECKING:
    from numpy.typing import NDArray
    from PySide6.QtCore import QPointF, QRect, QSizeF
    from PySide6.QtGui import QColor, QPainter

    from chartmaker.app.look import Look
    from chartmaker.model.design import Design
    from chartmaker.model.round import Round

BEHIND_SHARE = 0.34
"""How much of a stitch's colour is left behind the floats, the rest being the surround."""
RELIEF_BEHIND = 0.45
"""How much of its light and shade."""
_LIES = np.full(max(Shaping) + 1, KNIT, dtype=np.uint8)
_LIES[Shaping.K2TOG], _LIES[Shaping.SSK] = LEANS_RIGHT, LEANS_LEFT


class StitchFill:
    """Holds ready tiles of one size under one look, and puts a chart together of them."""

    def __init__(self) -> None:
        self._lines: tuple[Round, ...] = ()
        self._caught: dict[int, tuple[Round, tuple[tuple[int, int], ...]]] = {}
        self._rgb = np.zeros((NO_STITCH + 1, 3), dtype=np.uint8)
        self._surface = "flat"
        self._tiles: dict[tuple[int, int], StitchTiles] = {}

    def take(self, grid: ChartGrid, look: Look, design: Design) -> None:
        """Show another grid or look, of this design."""
        self._grid, self._look = grid, look
        self._lines = tuple(line for _, line in design.rounds())
        self._caught = {row.row: (row.line, row.places) for row in look.caught}
        rgb = np.array([_rgb(colour) for colour in look.colours], dtype=np.uint8)
        if look.surface == "back":
            self._strand_colours = packed(rgb)
            rgb = np.rint(BEHIND_SHARE * rgb + (1 - BEHIND_SHARE) * np.array(_rgb(shades.SURROUND))).astype(np.uint8)
        if look.surface != self._surface or not np.array_equal(rgb, self._rgb):
            self._surface, self._rgb = look.surface, rgb
            self._tiles = {}

    def paint(self, painter: QPainter, at: QPointF, part: QRect, cell: QSizeF, pixel_ratio: float) -> None:
        """Paint the cells of a part of the grid, its first at a point in the painter's units."""
        width, height = round(cell.width() * pixel_ratio), round(cell.height() * pixel_ratio)
        window = np.s_[part.top() : part.bottom() + 1, part.left() : part.right() + 1]
        codes = self._grid.codes[window]
        above = np.concatenate([self._grid.codes[max(0, part.top() - 1), window[1]][None], codes[:-1]])
        purl = self._grid.purl[window]
        if self._look.surface == "back":
            pixels = self._tiles_of(width, height).picture(codes, above, np.where(purl, KNIT, PURL).astype(np.uint8))
            self._lay_strands(pixels, part, width, height)
        else:
            lies = np.where(purl, PURL, _LIES[self._grid.shaping[window]]).astype(np.uint8)
            pixels = self._tiles_of(width, height).picture(codes, above, lies)
        image = QImage(pixels.data, pixels.shape[1], pixels.shape[0], 4 * pixels.shape[1], QImage.Format.Format_RGB32)
        image.setDevicePixelRatio(pixel_ratio)
        painter.drawImage(at, image)

    def _tiles_of(self, width: int, height: int) -> StitchTiles:
        if (width, height) not in self._tiles:
            relief = RELIEF_BEHIND if self._look.surface == "back" else 1.0
            tiles = StitchTiles(self._rgb, width=width, height=height, bare=NO_STITCH, relief=relief)
            self._tiles = {(width, height): tiles}
        return self._tiles[width, height]

    def _lay_strands(self, pixels: NDArray[np.uint32], part: QRect, width: int, height: int) -> None:
        grid = self._grid
        places = np.s_[part.left() : part.right() + 1]
        is_faded = grid.codes[part.top() : part.bottom() + 1, places] >= GHOST_CODE
        signs = np.zeros((*is_faded.shape, len(Part)), dtype=np.uint8)
        colours = np.zeros(signs.shape, dtype=np.uint32)
        for line in range(part.height()):
            number = len(grid.rows) - 1 - part.top() - line
            stitch = stitches_along(grid.width, grid.ghost, grid.rows[number])[0][places]
            signs[line] = self._signs_of(number)[stitch]
            signs[line, stitch < 0] = 0
            for place, letter in enumerate(self._lines[number].letters):
                code = ord(letter) - ord("A")
                colours[line, :, place] = self._strand_colours[code + GHOST_CODE * is_faded[line]]
        lay_strands(pixels, signs=signs, colours=colours, is_faded=is_faded, width=width, height=height)

    def _signs_of(self, number: int) -> NDArray[np.uint8]:
        """Give the signs of a round's stitches, with where its floats are caught as far as that is known."""
        line = self._lines[number]
        signs = strands_behind(line, self._look.longest)
        known = self._caught.get(number)
        if known is None or known[0] != line:
            return signs
        signs = signs.copy()
        for stitch, part in known[1]:
            signs[stitch, part] |= CAUGHT
        return signs


def _rgb(colour: QColor) -> tuple[int, int, int]:
    return colour.red(), colour.green(), colour.blue()
