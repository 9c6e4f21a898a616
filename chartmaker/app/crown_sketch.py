"""The outline of a crown from the side, to scale, with a line across for each round that decreases."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget

from chartmaker.app.words import tr
from chartmaker.knit.easing import eased_steps
from chartmaker.knit.layout import lay_out
from chartmaker.knit.profile import profile

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from chartmaker.model.design import Design

MARGIN = 12.0
BELOW = 12
"""Rounds below the crown that are drawn with it."""


class CrownSketch(QWidget):
    """Shows what stands above the body of a design; empty where nothing can be made."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.points: list[tuple[float, float, bool]] = []
        """Radius and height in cm after each round, from the first that is drawn, and whether it decreases."""
        self.setAccessibleName(tr("Outline of the crown"))
        self.setMinimumSize(160, 110)

    def sizeHint(self) -> QSize:
        """Ask for the room beside the list of rounds."""
        return QSize(320, 200)

    def show_crown(self, design: Design | None, first: int = 0) -> None:
        """Draw a design from a few rounds below its round at index `first` up; nothing without a design."""
        self.points = _points(design, first) if design is not None else []
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint both sides of the outline, the lines across, and the bottom and the top."""
        if not self.points:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ink = self.palette().windowText().color()
        faint = self.palette().mid().color()
        widest = max(radius for radius, *_ in self.points)
        high = max(self.points[-1][1], 0.1)
        scale = min((self.width() - 2 * MARGIN) / (2 * widest), (self.height() - 2 * MARGIN) / high)
        middle, foot = self.width() / 2, self.height() - (self.height() - high * scale) / 2

        def at(side: int, radius: float, height: float) -> QPointF:
            return QPointF(middle + side * radius * scale, foot - height * scale)

        painter.setPen(QPen(faint, 1))
        for radius, height, is_shaped in self.points:
            if is_shaped:
                painter.drawLine(at(-1, radius, height), at(1, radius, height))
        painter.setPen(QPen(ink, 1.8, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin))
        for side in (-1, 1):
            painter.drawPolyline([at(side, radius, height) for radius, height, _ in self.points])
        radius, height, _ = self.points[-1]
        painter.drawLine(at(-1, radius, height), at(1, radius, height))


def _points(design: Design, first: int) -> list[tuple[float, float, bool]]:
    outline = profile(lay_out(design), design.gauge)
    shaped = [line.is_shaped for _, line in design.rounds()]
    radius, height, points = outline.radius_cm[0], 0.0, []
    steps = eased_steps(outline.run_cm, outline.rise_cm, round_cm=design.gauge.round_height_cm)
    for run, rise, is_shaped in zip(*(step.tolist() for step in steps), shaped, strict=True):
        radius, height = max(0.0, radius + run), height + rise
        points.append((radius, height, is_shaped))
    seen = points[max(0, first - BELOW) :]
    return [(radius, height - seen[0][1], is_shaped) for radius, height, is_shaped in seen]
