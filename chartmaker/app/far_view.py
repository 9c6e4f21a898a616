"""The whole hat as it is seen across a room, at its true angular size, on the neutral surround."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QWidget

from chartmaker.app.seeing import Seeing
from chartmaker.app.shades import SURROUND
from chartmaker.app.words import number, tr
from chartmaker.pictures.across_room import draw_from_afar, half_round, size_on_screen_cm
from chartmaker.pictures.cells import flat_cells
from chartmaker.pictures.shades import shade_colours
from chartmaker.shade.distance import angle_degrees

if TYPE_CHECKING:
    from PySide6.QtGui import QKeyEvent, QMouseEvent, QPaintEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting


def far_sentence() -> str:
    """Say what cannot be done here, and how to go back."""
    return tr("Nothing is drawn from across the room: a double click or Escape goes back to the chart.")


class FarView(QWidget):
    """Nothing can be drawn in it; a double click or Escape leaves it."""

    left = Signal()
    refused = Signal(str)
    """What cannot be done here, as a sentence."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self._units = document, units
        self._seeing = Seeing()
        self._made: tuple[object, QImage] | None = None
        """What the picture was made of, and the picture."""
        self.setAccessibleName(tr("The hat across the room"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(260, 160)
        document.appraised.connect(self.update)

    def take(self, seeing: Seeing) -> None:
        """See it from another distance, or on a screen of another scale."""
        self._seeing = seeing
        self.update()

    @property
    def units_per_cm(self) -> float:
        """Window units to the centimetre of this screen."""
        return self._seeing.on_screen(self.screen().physicalDotsPerInch() / 2.54)

    @property
    def stitch_units(self) -> tuple[float, float]:
        """Width and height of a stitch as it is drawn, in window units."""
        gauge = self.document.appraisal.design.gauge
        width, height = (self._drawn_cm(side) for side in (gauge.stitch_width_cm, gauge.round_height_cm))
        return width * self.units_per_cm, height * self.units_per_cm

    @property
    def picture(self) -> QImage:
        """The picture in pixels of the screen."""
        appraisal, ratio = self.document.appraisal, self.devicePixelRatioF()
        size = tuple(side * ratio for side in self.stitch_units)
        if self._made is None or self._made[0] != (id(appraisal), size):
            colours = shade_colours({item.letter: item.shade for item in appraisal.letters})
            letters = half_round(flat_cells(appraisal.design, appraisal.fabric))
            rgb = np.ascontiguousarray(draw_from_afar(letters, colours, stitch_px=(size[0], size[1])))
            height, width, _ = rgb.shape
            image = QImage(rgb.data, width, height, 3 * width, QImage.Format.Format_RGB888).copy()
            image.setDevicePixelRatio(ratio)
            self._made = (id(appraisal), size), image
        return self._made[1]

    def words(self) -> str:
        """Tell how large the hat is, how large it seems, and how large it is drawn."""
        appraisal = self.document.appraisal
        gauge = appraisal.design.gauge
        rounds, columns = half_round(flat_cells(appraisal.design, appraisal.fabric)).shape
        wide, tall = columns * gauge.stitch_width_cm, rounds * gauge.round_height_cm
        angles = [angle_degrees(side, distance_cm=100 * self._seeing.distance_m) for side in (wide, tall)]
        length = self._units.units.length
        return tr("{0} × {1} of hat fill {2}° × {3}°").format(
            length.figure(wide), length.told(tall), *(number(angle, 1) for angle in angles)
        )

    def _drawn_cm(self, size_cm: float) -> float:
        return size_on_screen_cm(size_cm, distance_cm=100 * self._seeing.distance_m, eye_cm=self._seeing.eye_cm)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the hat in the middle, on whole pixels of the screen; what is larger than the window is cut off."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), SURROUND)
        picture, ratio = self.picture, self.devicePixelRatioF()
        size = picture.deviceIndependentSize()
        at = QPointF((self.width() - size.width()) / 2, (self.height() - size.height()) / 2)
        painter.drawImage(QPointF(round(at.x() * ratio) / ratio, round(at.y() * ratio) / ratio), picture)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Say that nothing is drawn here."""
        event.accept()
        self.refused.emit(far_sentence())

    def mouseDoubleClickEvent(self, _event: QMouseEvent) -> None:
        """Go back to the chart."""
        self.left.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go back to the chart with Escape."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)
