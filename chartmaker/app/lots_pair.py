"""Two lots compared: how far apart they are, their curves, other lights, and both recipes with what differs marked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from chartmaker.app.lots_card import SkeinRow
from chartmaker.app.lots_curve import DASHED, DOTTED, Curve, CurveView, curve_of, mean_curve
from chartmaker.app.lots_figures import FiguresGrid, recipes_side_by_side
from chartmaker.app.lots_lights import LightsView, patches_of_two
from chartmaker.app.told import told
from chartmaker.app.words import number, tr
from chartmaker.dye.causes import read_causes
from chartmaker.dye.comparison import compare
from chartmaker.model.reading import Spectrum

if TYPE_CHECKING:
    from chartmaker.app.lots_lines import LotLine
    from chartmaker.dye.causes import CauseReading, SuspectLine
    from chartmaker.dye.comparison import Strength
    from chartmaker.model.palette import Palette
    from chartmaker.model.settings import Limits, Viewing


class PairCard(QWidget):
    """Reference and sample from top to bottom."""

    swap_asked = Signal()
    """Reference and sample are to change places."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.names = QLabel()
        self.swap = QPushButton(tr("S&wap"))
        self.swap.setToolTip(tr("Let reference and sample change places"))
        self.skeins = SkeinRow()
        self.reading = QLabel()
        self.suspects_title = QLabel(tr("Usual suspects"))
        self.suspects = QLabel()
        self.figures = FiguresGrid()
        self.curve = CurveView()
        self.absorption = QCheckBox(tr("as absorption, &K/S"))
        self.lights = LightsView()
        self.recipes_title = QLabel(tr("Recipes; ≠ marks what differs"))
        self.recipes = FiguresGrid()
        self.swap.clicked.connect(self.swap_asked)
        self.absorption.toggled.connect(self.curve.show_absorption)
        self._lay_out()

    def show_pair(self, first: LotLine, second: LotLine, palette: Palette, *, viewing: Viewing, limits: Limits) -> None:
        """Show two lots, the reference first; `limits` are those that the design judges contrast by."""
        self.names.setText(tr("1  {0}\n2  {1}").format(first.lot.name, second.lot.name))
        self.skeins.show_lines((first, second))
        comparison = compare(palette, first.lot, second.lot, viewing)
        apart = [*difference_rows(first, second), *contrast_rows(first, second, limits)]
        self.figures.show_rows([*apart, *strength_rows(comparison.strength)])
        self._tell(read_causes(comparison))
        curves = curves_of_two(first, second, comparison.strength)
        self.curve.show_curves(curves)
        for widget in (self.curve, self.absorption):
            widget.setVisible(bool(curves))
        self.lights.show_patches(patches_of_two(first.lot, second.lot, palette, viewing))
        rows, differing = recipes_side_by_side(first, second)
        self.recipes.show_rows([("", "1", "2"), *rows] if rows else [], marked=[line + 1 for line in differing])
        self.recipes_title.setVisible(bool(rows))

    def _tell(self, reading: CauseReading) -> None:
        """Tell the cause in words, how sure it is, and the usual suspects, each with what the records say."""
        parts = (reading.strength, reading.shift, reading.how_sure)
        self.reading.setText("\n".join(told(part.strip()) for part in parts if part))
        self.suspects.setText("\n".join(_suspect_words(line) for line in reading.suspects))
        for widget in (self.suspects_title, self.suspects):
            widget.setVisible(bool(reading.suspects))

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(12, 8, 12, 12)
        layout.setSpacing(8)
        font = self.names.font()
        font.setBold(True)
        self.names.setFont(font)
        self.names.setWordWrap(True)
        self.names.setTextFormat(Qt.TextFormat.PlainText)
        top = QHBoxLayout()
        top.addWidget(self.names, 1)
        top.addWidget(self.swap, 0, Qt.AlignmentFlag.AlignTop)
        layout.addLayout(top)
        for label in (self.reading, self.suspects):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        column: tuple[QWidget, ...] = (
            self.skeins,
            self.reading,
            self.figures,
            self.curve,
            self.absorption,
            self.suspects_title,
            self.suspects,
            self.recipes_title,
            self.recipes,
            self.lights,
        )
        for widget in column:
            layout.addWidget(widget)
        layout.addStretch(1)


def difference_rows(first: LotLine, second: LotLine) -> list[tuple[str, str]]:
    """Give how far the sample is from the reference, with the direction in words."""
    from chartmaker.shade.difference import ciede2000
    from chartmaker.shade.lab import lch_of_lab

    if first.shade is None or second.shade is None:
        return [(tr("difference"), tr("not known: one of them has no shade"))]
    apart = float(ciede2000(first.shade.lab, second.shade.lab))
    (l_1, c_1, h_1), (l_2, c_2, h_2) = (lch_of_lab(line.shade.lab).tolist() for line in (first, second) if line.shade)
    turn = (h_2 - h_1 + 180) % 360 - 180
    return [
        (tr("difference"), tr("CIEDE2000 {0}").format(number(apart, 1))),
        (tr("value"), _told(l_2 - l_1, tr("2 is lighter"), tr("2 is darker"))),
        (tr("chroma"), _told(c_2 - c_1, tr("2 is stronger"), tr("2 is duller"))),
        (tr("hue"), f"{'+' if turn > 0 else ''}{number(turn)}°"),
    ]


def contrast_rows(first: LotLine, second: LotLine, limits: Limits) -> list[tuple[str, str]]:
    """Give the grade that the two would have side by side, and how many more readings would settle it."""
    from chartmaker.shade.settling import settle

    if first.shade is None or second.shade is None:
        return []
    outcome = settle(first.shade, second.shade, limits)
    grade, best = tr(outcome.grade), tr(outcome.grade_of_mean)
    if outcome.is_settled:
        return [(tr("contrast"), tr("{0}; more readings would not change that").format(grade))]
    if outcome.readings is None:
        return [(tr("contrast"), tr("{0}; no number of readings would make it {1}").format(grade, best))]
    more = tr("{0}; {1} more of 1 and {2} more of 2 would make it {3}")
    return [(tr("contrast"), more.format(grade, *outcome.more, best))]


def _told(difference: float, more: str, less: str) -> str:
    sign = "+" if difference > 0 else ""
    words = (more if difference > 0 else less) if abs(difference) >= 0.5 else tr("alike")
    return f"{sign}{number(difference, 1)}, {words}"


def strength_rows(strength: Strength | None) -> list[tuple[str, str]]:
    """Give strength as a multiple and in per cent, and the shift that remains, with what the readings may give."""
    if strength is None:
        return []
    lightness, chroma, turn = strength.shift_lch
    factor, low, high = (number(part, 2) for part in (strength.factor, strength.low, strength.high))
    of_shift = tr("CIEDE2000 {0}, of which readings may give {1}; L* {2}, C* {3}, hue {4}°")
    return [
        (tr("strength"), tr("{0} × ({1} %), {2} to {3}").format(factor, number(100 * strength.factor), low, high)),
        (
            tr("shift"),
            of_shift.format(
                number(strength.shift_ciede2000, 1),
                number(strength.shift_limit, 1),
                _signed(lightness, 1),
                _signed(chroma, 1),
                _signed(turn, 0),
            ),
        ),
    ]


def _signed(value: float, digits: int) -> str:
    return f"{'+' if value > 0 else ''}{number(value, digits)}"


def _suspect_words(line: SuspectLine) -> str:
    evidence = f" ({line.evidence})" if line.evidence else ""
    text = tr("• {0}: {1}{2}. Source: {3}")
    return text.format(told(line.cause), told(line.standing), evidence, line.source)


def curves_of_two(first: LotLine, second: LotLine, strength: Strength | None = None) -> list[Curve]:
    """Give the mean curve of each, the sample dashed, the best match of the reference's dye, and the undyed base."""
    curves = []
    base = first.yarn.reading if first.yarn else None
    if isinstance(base, Spectrum):
        curves.append(curve_of(base, tr("base"), DOTTED, 1.2))
    for line, label, style in ((first, "1", Qt.PenStyle.SolidLine), (second, "2", DASHED)):
        mean = mean_curve([each for each in line.lot.readings if isinstance(each, Spectrum)], label, style)
        if mean:
            curves.append(mean)
    if strength is not None:
        points = tuple(zip(strength.bands.wavelengths_nm.tolist(), strength.best_curve, strict=True))
        curves.append(Curve(points, tr("best"), Qt.PenStyle.DashDotLine, 1.4))
    return curves if any(curve.label in "12" for curve in curves) else []
