"""The program's own icons: drawings in one ink, which follows the window's colours."""

from __future__ import annotations

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize
from PySide6.QtGui import QColor, QGuiApplication, QIcon, QImageReader, QPainter, QPalette, QPixmap

from chartmaker.files.assets import assets_folder

SIDE = 20
"""Of an icon, in window units."""


def icon(name: str, palette: QPalette) -> QIcon:
    """Give an icon in the colour of text, and in the palette's paler one where it is disabled.

    It is drawn in the pixels of each screen there is, and of no other: drawing takes a good part of the window's start.
    """
    made = QIcon()
    for ratio in {screen.devicePixelRatio() for screen in QGuiApplication.screens()}:
        picture = drawing(name, round(SIDE * ratio))
        for mode, group in (
            (QIcon.Mode.Normal, QPalette.ColorGroup.Active),
            (QIcon.Mode.Disabled, QPalette.ColorGroup.Disabled),
        ):
            made.addPixmap(inked(picture, palette.color(group, QPalette.ColorRole.ButtonText)), mode)
    return made


def inked(picture: QPixmap, ink: QColor) -> QPixmap:
    """Give a drawing in another ink, as opaque as it is."""
    if picture.isNull():
        return picture
    changed = QPixmap(picture)
    painter = QPainter(changed)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceIn)
    painter.fillRect(changed.rect(), ink)
    painter.end()
    return changed


def drawing(name: str, side: int) -> QPixmap:
    """Give a drawing at a size in pixels, in the ink that it has in its file.

    An icon that is not there gives an empty picture: a missing file should not keep the window from opening.
    """
    path = assets_folder() / "icons" / f"{name}.svg"
    text = path.read_bytes() if path.is_file() else b""
    buffer = QBuffer()
    buffer.setData(QByteArray(text))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer, QByteArray(b"svg"))
    reader.setScaledSize(QSize(side, side))
    return QPixmap.fromImage(reader.read()) if text else QPixmap()
