"""The program's own icons: drawings in one ink, which follows the window's colours."""

from __future__ import annotations

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize
from PySide6.QtGui import QColor, QIcon, QImageReader, QPalette, QPixmap

from chartmaker.files.assets import assets_folder

INK = b"#202020"
"""The ink that the drawings have in their files."""


def icon(name: str, palette: QPalette) -> QIcon:
    """Give an icon in the colour of text, and in the palette's paler one where it is disabled."""
    made = QIcon()
    for mode, group in (
        (QIcon.Mode.Normal, QPalette.ColorGroup.Active),
        (QIcon.Mode.Disabled, QPalette.ColorGroup.Disabled),
    ):
        ink = palette.color(group, QPalette.ColorRole.ButtonText)
        for side in (20, 40):
            made.addPixmap(drawing(name, side, ink), mode)
    return made


def drawing(name: str, side: int, ink: QColor | None = None) -> QPixmap:
    """Give a drawing at a size in pixels, in an ink of choice.

    An icon that is not there gives an empty picture: a missing file should not keep the window from opening.
    """
    path = assets_folder() / "icons" / f"{name}.svg"
    text = path.read_bytes() if path.is_file() else b""
    if ink is not None:
        text = text.replace(INK, ink.name().encode())
    buffer = QBuffer()
    buffer.setData(QByteArray(text))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer, QByteArray(b"svg"))
    reader.setScaledSize(QSize(side, side))
    return QPixmap.fromImage(reader.read()) if text else QPixmap()
