"""The lot that is picked: its shade in figures and words, its curve, other lights, its recipe, notes and picture."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPixmap
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from chartmaker.app.lots_curve import DASHED, SOLID, Curve, CurveView, curve_of, mean_curve
from chartmaker.app.lots_figures import FiguresGrid, figure_rows, recipe_rows
from chartmaker.app.lots_flow import draw_beyond
from chartmaker.app.lots_ladder import LadderPanel
from chartmaker.app.lots_lights import LightsView, patches_of
from chartmaker.app.lots_lines import shade_words
from chartmaker.app.lots_skein import skein_pixmap
from chartmaker.app.lots_tree import FamilyTree
from chartmaker.app.shades import SURROUND
from chartmaker.app.words import number, tr
from chartmaker.model.reading import Spectrum

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path

    from PySide6.QtGui import QPaintEvent

    from chartmaker.app.lots_lines import LotLine
    from chartmaker.model.palette import Palette
    from chartmaker.model.settings import Viewing
    from chartmaker.shade.lot_shade import LotShade

PICTURE_SIDE = 240


class LotCard(QWidget):
    """Everything about one lot, from top to bottom."""

    use_asked = Signal()
    """The lot is to be a letter of the design."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.name = QLabel()
        self.words = QLabel()
        self.skeins = SkeinRow()
        self.use = QPushButton(tr("&Use as letter…"))
        self.figures = FiguresGrid()
        self.outlier = QLabel()
        self.curve = CurveView()
        self.absorption = QCheckBox(tr("as absorption, &K/S"))
        self.no_curve = QLabel(tr("No curve: none of its readings is a spectrum."))
        self.lights = LightsView()
        self.lights_words = QLabel(tr("Not measured in other lights: only a spectrum tells what they will do."))
        self.tree = FamilyTree()
        self.ladder = LadderPanel()
        self.recipe = FiguresGrid()
        self.notes = QLabel()
        self.picture = QLabel()
        self.use.clicked.connect(self.use_asked)
        self.absorption.toggled.connect(self.curve.show_absorption)
        self._lay_out()

    def show_line(
        self, line: LotLine, every: Sequence[LotLine], palette: Palette, *, viewing: Viewing, folder: Path | None
    ) -> None:
        """Show a lot of `every` that is at hand; `folder` is where the path of its picture begins."""
        self.name.setText(line.lot.name)
        self.words.setText(shade_words(line.shade) if line.shade else line.basis)
        self.skeins.show_lines((line,))
        self.figures.show_rows(figure_rows(line))
        self._show_outlier(line, viewing)
        curves = curves_of(line)
        self.curve.show_curves(curves)
        for widget in (self.curve, self.absorption):
            widget.setVisible(bool(curves))
        self.no_curve.setVisible(not curves and bool(line.lot.readings))
        self.lights.show_patches(patches_of(line.lot, palette, viewing))
        self.lights_words.setVisible(bool(self.lights.patches) and not _is_known_in_lights(line.shade))
        self.tree.show_family(line, every, viewing)
        self.ladder.show_bath(line, every, palette, viewing)
        self.recipe.show_rows(recipe_rows(line.bath, line.load, line.units) or [(tr("recipe"), tr("no bath is noted"))])
        notes = [line.lot.notes, line.bath.notes if line.bath else ""]
        self.notes.setText("\n".join(note for note in notes if note))
        self.notes.setVisible(any(notes))
        self._show_picture(line, folder)

    def _show_outlier(self, line: LotLine, viewing: Viewing) -> None:
        from chartmaker.shade.trust import trust_of

        trust = trust_of(line.lot, viewing)
        found = trust.outlier if trust else None
        text = tr("! Reading {0} does not belong with the others: {1} is off by {2} (CIEDE2000 {3}). Measure again.")
        self.outlier.setVisible(found is not None)
        if found:
            off = f"{'+' if found.off > 0 else ''}{number(found.off, 1)}"
            self.outlier.setText(text.format(found.index + 1, found.coordinate, off, number(found.distance, 1)))

    def _show_picture(self, line: LotLine, folder: Path | None) -> None:
        name = line.lot.picture
        shown = QPixmap(str(folder / name)) if name and folder else QPixmap()
        self.picture.setVisible(bool(name))
        if shown.isNull():
            self.picture.setText(tr("Picture {0} is not there").format(name) if name else "")
        else:
            side = Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
            self.picture.setPixmap(shown.scaled(QSize(PICTURE_SIDE, PICTURE_SIDE), *side))

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 8, 12, 12)
        layout.setSpacing(8)
        font = self.name.font()
        font.setBold(True)
        font.setPointSizeF(font.pointSizeF() * 1.15)
        self.name.setFont(font)
        top = QHBoxLayout()
        top.addWidget(self.words, 1)
        top.addWidget(self.use)
        for label in (self.name, self.words, self.outlier, self.no_curve, self.lights_words, self.notes):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        layout.addWidget(self.name)
        layout.addLayout(top)
        column: tuple[QWidget, ...] = (
            self.skeins,
            self.figures,
            self.outlier,
            self.curve,
            self.absorption,
            self.no_curve,
            self.lights,
            self.lights_words,
            self.recipe,
            self.tree,
            self.ladder,
            self.notes,
            self.picture,
        )
        for widget in column:
            layout.addWidget(widget)
        layout.addStretch(1)


class SkeinRow(QWidget):
    """One skein, or two beside each other, large on the neutral surround."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._lines: tuple[LotLine, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Ask for the height of a large skein."""
        return QSize(300, 92)

    def show_lines(self, lines: tuple[LotLine, ...]) -> None:
        """Show the skeins of these lots."""
        self._lines = lines
        self.setAccessibleName(", ".join(line.lot.name for line in lines))
        self.setAccessibleDescription("; ".join(line.description for line in lines))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the skeins in equal shares of the row."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), SURROUND)
        share = self.width() / max(1, len(self._lines))
        width = int(min(190, share - 20))
        for place, line in enumerate(self._lines):
            rgb = QColor(*line.shade.srgb).rgb() if line.shade else None
            is_planned = line.lot.planned is not None
            left = round(share * (place + 0.5) - width / 2)
            pixmap = skein_pixmap(rgb, width, 70, self.devicePixelRatioF(), is_planned=is_planned)
            painter.drawPixmap(left, 11, pixmap)
            if line.shade and line.shade.is_out_of_gamut:
                draw_beyond(painter, QRectF(left + width - 16, 70, 14, 12))


def curves_of(line: LotLine) -> list[Curve]:
    """Give every reading thin, their mean, and the undyed base dashed; nothing without a spectrum."""
    readings = [reading for reading in line.lot.readings if isinstance(reading, Spectrum)]
    mean = mean_curve(readings, tr("lot"))
    if mean is None:
        return []
    thin = [curve_of(reading, width=1.0, style=SOLID) for reading in readings] if len(readings) > 1 else []
    base = line.yarn.reading if line.yarn else None
    undyed = [curve_of(base, tr("base"), DASHED, 1.4)] if isinstance(base, Spectrum) else []
    return [*thin, *undyed, mean]


def _is_known_in_lights(shade: LotShade | None) -> bool:
    """Tell whether a shade was measured by spectra, or foretold from such."""
    from chartmaker.shade.lights import is_measured

    return is_measured(shade) or (shade is not None and shade.rests_on == "predicted")
