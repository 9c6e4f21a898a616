"""Small drawings of motifs for the shelf: two repeats at the gauge's proportion, in grey, as a motif has no shades."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QColor, QIcon, QImage, QPainter, QPixmap

from chartmaker.knit.outline import chart_offsets

if TYPE_CHECKING:
    from chartmaker.model.motif import Motif

GREYS = (QColor(232, 232, 232), QColor(48, 48, 48), QColor(140, 140, 140))
"""Of ground, figure and third."""
REPEATS = 2
LARGEST_STITCH = 7
"""Width of a stitch in window units, where there is room."""
FINE = 8
"""Pixels along a side that a stitch is drawn with before it is brought to its size, so that its edges stay true."""


@lru_cache(maxsize=512)
def motif_image(motif: Motif) -> QImage:
    """Draw two repeats of a motif, a pixel a stitch; what no stitch covers is clear."""
    offsets = chart_offsets(motif.rounds)
    width = max(offset + len(line) for offset, line in zip(offsets, motif.rounds, strict=True))
    image = QImage(width * REPEATS, len(motif.rounds), QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    for up, (offset, line) in enumerate(zip(offsets, motif.rounds, strict=True)):
        for stitch, part in enumerate(line.cells):
            for repeat in range(REPEATS):
                column = offset + stitch + repeat * width
                image.setPixelColor(image.width() - 1 - column, image.height() - 1 - up, GREYS[part])
    return image


def motif_icon(motif: Motif, size: QSize, pixel_ratio: float, *, height_per_width: float) -> QIcon:
    """Draw a motif in the middle of a box of this size in window units, as large as it lets it be.

    `height_per_width` is the height of a round by the width of a stitch. A stitch is whole pixels wide where it can be.
    """
    image = motif_image(motif)
    pixmap = QPixmap(size * pixel_ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    room = pixmap.size()
    width = min(room.width() / image.width(), room.height() / (image.height() * height_per_width))
    width = min(float(int(width)) or width, LARGEST_STITCH * pixel_ratio)
    drawn = QSize(max(1, round(image.width() * width)), max(1, round(image.height() * width * height_per_width)))
    fine = image.scaled(image.size() * FINE)
    painter = QPainter(pixmap)
    painter.drawImage(
        (room.width() - drawn.width()) // 2,
        (room.height() - drawn.height()) // 2,
        fine.scaled(drawn, mode=Qt.TransformationMode.SmoothTransformation),
    )
    painter.end()
    pixmap.setDevicePixelRatio(pixel_ratio)
    icon = QIcon(pixmap)
    icon.addPixmap(pixmap, QIcon.Mode.Selected)  # which Qt would tint
    return icon
