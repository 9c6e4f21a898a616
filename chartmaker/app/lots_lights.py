"""One lot, or two beside each other, as four lights show them: patches on the neutral surround, with figures below."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from chartmaker.app.shades import SURROUND
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QPaintEvent

    from chartmaker.model.palette import Lot, Palette
    from chartmaker.model.settings import Viewing

HEIGHT = 92
INK = QColor(0, 0, 0)


@dataclass(frozen=True, slots=True)
class LightPatch:
    """What one light shows."""

    illuminant: str
    colours: tuple[QColor, ...]
    figure: str
    """How far the lot changes, or how far the two are apart."""


class LightsView(QWidget):
    """Paints a patch for each light."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.patches: tuple[LightPatch, ...] = ()
        self.setAccessibleName(tr("In other lights"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Ask for a row of patches with two lines of words."""
        return QSize(300, HEIGHT)

    def show_patches(self, patches: Sequence[LightPatch]) -> None:
        """Show these patches."""
        self.patches = tuple(patches)
        words = (f"{patch.illuminant}: {patch.figure}" for patch in self.patches)
        self.setAccessibleDescription(", ".join(words))
        self.setVisible(bool(self.patches))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the patches side by side."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), SURROUND)
        font = painter.font()
        font.setPixelSize(11)
        painter.setFont(font)
        for place, shown in enumerate(self.patches):
            width = self.width() / len(self.patches)
            left = place * width
            box = QRectF(left + 8, 8, width - 16, 44)
            for part, colour in enumerate(shown.colours):
                share = box.width() / len(shown.colours)
                painter.fillRect(QRectF(box.left() + part * share, box.top(), share, box.height()), colour)
            painter.setPen(QPen(QColor(96, 96, 96), 1))
            painter.drawRect(box)
            painter.setPen(INK)
            for line, text in enumerate((shown.illuminant, shown.figure)):
                painter.drawText(QRectF(left, 55 + 16 * line, width, 16), Qt.AlignmentFlag.AlignCenter, text)


def patches_of(lot: Lot, palette: Palette, viewing: Viewing) -> tuple[LightPatch, ...]:
    """Give a lot under its own light and the others, each with its inconstancy in CIEDE2000.

    A planned lot has the shades that the palette foretells.
    """
    from chartmaker.dye.predicted import shade_in
    from chartmaker.shade.lights import inconstancies_of, inconstancy, other_lights

    own = shade_in(palette, lot, viewing)
    if own is None:
        return ()
    patches = [LightPatch(viewing.illuminant, (QColor(*own.srgb),), tr("judged in"))]
    if lot.planned is None:
        changes = [(change.shade, change.ciede2000) for change in inconstancies_of(lot, viewing)]
    else:  # foretold from spectra, so that other lights are known as well
        shades = [shade_in(palette, lot, light) for light in other_lights(viewing)]
        changes = [(shade, inconstancy(shade, own)) for shade in shades if shade is not None]
    for shade, moved in changes:
        figure = tr("not known") if moved is None else tr("moves {0}").format(number(moved, 1))
        patches.append(LightPatch(shade.viewing.illuminant, (QColor(*shade.srgb),), figure))
    return tuple(patches)


def patches_of_two(first: Lot, second: Lot, palette: Palette, viewing: Viewing) -> tuple[LightPatch, ...]:
    """Give two lots beside each other in each light, with their CIEDE2000 there."""
    from chartmaker.dye.predicted import shade_in
    from chartmaker.shade.difference import ciede2000
    from chartmaker.shade.lights import other_lights

    patches = []
    for light in (viewing, *other_lights(viewing)):
        shades = [shade_in(palette, lot, light) for lot in (first, second)]
        if shades[0] is None or shades[1] is None:
            return ()
        apart = float(ciede2000(shades[0].lab, shades[1].lab))
        colours = tuple(QColor(*shade.srgb) for shade in shades if shade)
        patches.append(LightPatch(light.illuminant, colours, tr("ΔE {0}").format(number(apart, 1))))
    return tuple(patches)
