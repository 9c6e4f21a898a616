"""Small drawings of motifs for the shelf: two repeats in neutral grey, since a motif has no shades of its own."""

from __future__ import annotations

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
"""Side of a stitch in window units, where there is room."""


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


def motif_icon(motif: Motif, size: QSize, pixel_ratio: float) -> QIcon:
    """Draw a motif in the middle of a box of this size in window units, as large as whole pixels let it be."""
    image = motif_image(motif)
    pixmap = QPixmap(size * pixel_ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    room = pixmap.size()
    stitch = min(room.width() // image.width(), room.height() // image.height(), round(LARGEST_STITCH * pixel_ratio))
    if stitch:
        drawn = image.scaled(image.size() * stitch)
    else:
        size = image.size().scaled(room, Qt.AspectRatioMode.KeepAspectRatio).expandedTo(QSize(1, 1))
        drawn = image.scaled(size, mode=Qt.TransformationMode.SmoothTransformation)
    painter = QPainter(pixmap)
    painter.drawImage((room.width() - drawn.width()) // 2, (room.height() - drawn.height()) // 2, drawn)
    painter.end()
    pixmap.setDevicePixelRatio(pixel_ratio)
    return QIcon(pixmap)
