"""The picture of a swatch beside its lot: chosen from the palette's folder, shown small."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QImageReader, QPixmap
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from chartmaker.app.words import tr
from chartmaker.files.swatch_picture import picture_file, picture_name

if TYPE_CHECKING:
    from pathlib import Path

    from chartmaker.app.questions import Questions

SIDE_PX = 120


class PictureField(QWidget):
    """Its name, a button to choose it, and how it looks; what is missing says so."""

    changed = Signal()

    def __init__(self, name: str, place: Path | None, questions: Questions) -> None:
        """Take the name, and the palette's file, without which there is no folder to choose from."""
        super().__init__()
        self._place = place
        self._questions = questions
        self.line = QLineEdit(name)
        self.line.setAccessibleName(tr("Picture of the swatch"))
        self.line.setPlaceholderText(tr("a PNG or JPEG file in the palette's folder"))
        self.choose = QPushButton(tr("C&hoose…"))
        self.choose.setEnabled(place is not None)
        self.choose.setToolTip("" if place else tr("Save the palette first: pictures are named from its folder"))
        self.shown = QLabel()
        upper = QHBoxLayout()
        upper.addWidget(self.line, 1)
        upper.addWidget(self.choose)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addLayout(upper)
        layout.addWidget(self.shown)
        self.setFocusProxy(self.line)
        self.line.editingFinished.connect(self._follow)
        self.choose.clicked.connect(self._choose)
        self._show()

    def name(self) -> str:
        """Give how the palette names it; empty for none."""
        return self.line.text().strip()

    def _choose(self) -> None:
        if self._place is None:
            return
        kinds = f"{tr('Pictures')} (*.png *.jpg *.jpeg)"
        file = self._questions.file_to_open(tr("Choose a picture"), kinds, self._place.parent)
        if file is None:
            return
        try:
            self.line.setText(picture_name(self._place, file))
        except ValueError as refusal:
            self._questions.tell(str(refusal)[:1].upper() + str(refusal)[1:] + ".")
        self._follow()

    def _follow(self) -> None:
        self._show()
        self.changed.emit()

    def _show(self) -> None:
        picture = swatch_pixmap(self._place, self.name(), SIDE_PX)
        self.shown.setVisible(bool(self.name()))
        if picture is None:
            self.shown.setText(tr("! There is no such picture in the palette's folder"))
        else:
            self.shown.setPixmap(picture)


def swatch_pixmap(place: Path | None, name: str, side_px: int) -> QPixmap | None:
    """Give a lot's picture, no larger than a square of so many pixels; None where there is none that can be shown."""
    file = picture_file(place, name)
    if file is None:
        return None
    reader = QImageReader(str(file))
    reader.setAutoTransform(True)
    size = reader.size()
    if not size.isValid():
        return None
    reader.setScaledSize(size.scaled(QSize(side_px, side_px), Qt.AspectRatioMode.KeepAspectRatio))
    image = reader.read()
    return None if image.isNull() else QPixmap.fromImage(image)
