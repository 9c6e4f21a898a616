"""Spectra drawn: reflectance, or the strength of absorption K/S, against the wavelength."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QPaintEvent

    from chartmaker.model.reading import Spectrum

LEFT, RIGHT, TOP, FOOT = 44, 34, 18, 34
FIRST_NM, LAST_NM = 400, 700
STEPS = (0.05, 0.1, 0.2, 0.25, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0)
DARKEST = 1e-3
"""Reflectance below which K/S only tells of the instrument's zero."""
SOLID, DASHED, DOTTED = Qt.PenStyle.SolidLine, Qt.PenStyle.DashLine, Qt.PenStyle.DotLine


@dataclass(frozen=True, slots=True)
class Curve:
    """One line of the drawing."""

    points: tuple[tuple[float, float], ...]
    """Wavelength in nm, reflectance factor."""
    label: str = ""
    """Written at its right end; one without is a reading, drawn thin."""
    style: Qt.PenStyle = SOLID
    width: float = 2.0


def curve_of(reading: Spectrum, label: str = "", style: Qt.PenStyle = SOLID, width: float = 2.0) -> Curve:
    """Make the curve of a spectrum."""
    points = ((reading.start_nm + reading.step_nm * place, value) for place, value in enumerate(reading.reflectance))
    return Curve(tuple(points), label, style, width)


def mean_curve(readings: Sequence[Spectrum], label: str, style: Qt.PenStyle = SOLID) -> Curve | None:
    """Make the mean of spectra, at the wavelengths of the first; None without any."""
    if not readings:
        return None
    import numpy as np

    first = curve_of(readings[0])
    nm = [place for place, _ in first.points]
    rows = []
    for reading in readings:
        places, values = zip(*curve_of(reading).points, strict=True)
        rows.append(np.interp(nm, places, values))
    return Curve(tuple(zip(nm, np.mean(rows, axis=0).tolist(), strict=True)), label, style, 2.4)


class CurveView(QWidget):
    """Draws curves in the colour of the text, told apart by their dashes and by labels at their ends."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.curves: tuple[Curve, ...] = ()
        self.is_absorption = False
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(tr("Spectrum"))

    def sizeHint(self) -> QSize:
        """Ask for a drawing a little wider than high."""
        return QSize(320, 196)

    def show_curves(self, curves: Sequence[Curve]) -> None:
        """Draw these curves in place of what is there."""
        self.curves = tuple(curves)
        self.setAccessibleDescription(self._words())
        self.update()

    def show_absorption(self, is_absorption: bool) -> None:  # noqa: FBT001 - a signal's own signature
        """Draw K/S in the place of reflectance, or reflectance again."""
        self.is_absorption = is_absorption
        self.setAccessibleDescription(self._words())
        self.update()

    def drawn(self) -> tuple[Curve, ...]:
        """Give the curves with what is drawn upwards: reflectance, or K/S = (1 - R)² / 2R (Kubelka and Munk)."""
        if not self.is_absorption:
            return self.curves
        return tuple(
            replace(curve, points=tuple((nm, _absorption(value)) for nm, value in curve.points))
            for curve in self.curves
        )

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint axes, a quiet grid and the curves."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self.palette().color(QPalette.ColorRole.Base))
        curves = self.drawn()
        inside = QRectF(LEFT, TOP, self.width() - LEFT - RIGHT, self.height() - TOP - FOOT)
        step = _step(max((value for curve in curves for _, value in _seen(curve)), default=1.0))
        top = step * 4
        self._paint_axes(painter, inside, step)
        painter.setClipRect(inside.adjusted(-1, -1, 1, 1))
        ink = self.palette().color(QPalette.ColorRole.Text)
        ends = []
        for curve in curves:
            line = QPolygonF([_at(inside, nm, value, top) for nm, value in _seen(curve)])
            colour = QColor(ink)
            colour.setAlphaF(1.0 if curve.label else 0.45)
            painter.setPen(QPen(colour, curve.width, curve.style))
            painter.drawPolyline(line)
            if curve.label and not line.isEmpty():
                ends.append((line.last().y(), curve.label))
        painter.setClipping(False)
        painter.setPen(ink)
        self._paint_labels(painter, inside, ends)

    def _paint_axes(self, painter: QPainter, inside: QRectF, step: float) -> None:
        ink = self.palette().color(QPalette.ColorRole.Text)
        quiet = QColor(ink)
        quiet.setAlphaF(0.14)
        font = painter.font()
        font.setPixelSize(11)
        painter.setFont(font)
        for line in range(5):
            y = inside.bottom() - inside.height() * line / 4
            painter.setPen(quiet)
            painter.drawLine(QPointF(inside.left(), y), QPointF(inside.right(), y))
            painter.setPen(ink)
            text = _plain(step * line if self.is_absorption else 100 * step * line)
            box = QRectF(0, y - 8, LEFT - 6, 16)
            painter.drawText(box, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, text)
        for nm in range(FIRST_NM, LAST_NM + 1, 50):
            x = inside.left() + inside.width() * (nm - FIRST_NM) / (LAST_NM - FIRST_NM)
            painter.setPen(quiet)
            painter.drawLine(QPointF(x, inside.top()), QPointF(x, inside.bottom()))
            if nm % 100 == 0:
                painter.setPen(ink)
                painter.drawText(QRectF(x - 20, inside.bottom() + 2, 40, 14), Qt.AlignmentFlag.AlignCenter, str(nm))
        painter.drawLine(inside.bottomLeft(), inside.bottomRight())
        painter.drawLine(inside.bottomLeft(), inside.topLeft())
        upward = tr("K/S") if self.is_absorption else tr("reflectance, %")
        painter.drawText(
            QRectF(4, 0, self.width(), 16), Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, upward
        )
        below = QRectF(inside.left(), inside.bottom() + 15, inside.width(), 16)
        painter.drawText(below, Qt.AlignmentFlag.AlignCenter, tr("wavelength, nm"))

    def _paint_labels(self, painter: QPainter, inside: QRectF, ends: list[tuple[float, str]]) -> None:
        """Write labels beside the ends of their curves, pushed apart where they would cover one another."""
        last = -100.0
        for y, label in sorted(ends):
            last = max(y, last + 12, inside.top())
            box = QRectF(inside.right() + 4, last - 8, RIGHT - 4, 16)
            painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, label)

    def _words(self) -> str:
        told = []
        for curve in (curve for curve in self.drawn() if curve.label):
            values = dict(curve.points)
            at = [nm for nm in (400, 500, 600, 700) if nm in values]
            scale, digits = (1, 2) if self.is_absorption else (100, 0)
            figures = ", ".join(f"{nm} nm {number(scale * values[nm], digits)}" for nm in at)
            told.append(f"{curve.label}: {figures}")
        return "; ".join(told)


def _absorption(reflectance: float) -> float:
    """Give K/S of a reflectance factor (Kubelka-Munk; R = 0.55 gives 0.184)."""
    held = max(DARKEST, reflectance)
    return (1 - held) ** 2 / (2 * held)


def _seen(curve: Curve) -> list[tuple[float, float]]:
    return [(nm, value) for nm, value in curve.points if FIRST_NM <= nm <= LAST_NM]


def _at(inside: QRectF, nm: float, value: float, top: float) -> QPointF:
    across = (nm - FIRST_NM) / (LAST_NM - FIRST_NM)
    return QPointF(inside.left() + inside.width() * across, inside.bottom() - inside.height() * value / top)


def _step(highest: float) -> float:
    """Give a quarter of the axis, so that the highest value lies below its top."""
    return next((step for step in STEPS if 4 * step >= highest), STEPS[-1])


def _plain(value: float) -> str:
    return f"{value:g}"
