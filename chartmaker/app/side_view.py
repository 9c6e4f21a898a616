"""The measured side drawing of the hat, painted to the size that there is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QWidget

from chartmaker.app.words import tr
from chartmaker.knit.side import Side, around_cm, side
from chartmaker.knit.side_layout import Label, Sheet, SideDrawing, SideWords, Stroke, lay_out_side

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.units import Units

MARGIN = 10.0
ALIGNED = {
    "left": Qt.AlignmentFlag.AlignLeft,
    "middle": Qt.AlignmentFlag.AlignHCenter,
    "right": Qt.AlignmentFlag.AlignRight,
}
PUCKER = QColor(200, 40, 30)


class SideView(QWidget):
    """Follows the design; laid out anew when the design, the units or the size is another."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._document, self._units = document, units
        self._made: tuple[object, SideDrawing] | None = None
        self.setAccessibleName(tr("Measured side drawing"))
        self.setMinimumSize(200, 170)
        document.appraised.connect(self._follow)
        units.changed.connect(self._follow)
        self._follow()

    def sizeHint(self) -> QSize:
        """Ask for room in which all measures stand."""
        return QSize(460, 340)

    @property
    def drawing(self) -> SideDrawing:
        """What is painted."""
        appraisal, units = self._document.appraisal, self._units.units
        key = (id(appraisal), units.name, self.width(), self.height(), self.font().key())
        if self._made is None or self._made[0] != key:
            shape = side(appraisal.design, appraisal.fabric, appraisal.profile)
            is_plate = appraisal.design.hat.shape == "tam"
            self._made = key, lay_out_side(shape, self._sheet(), side_words(units), is_plate=is_plate)
        return self._made[1]

    def _sheet(self) -> Sheet:
        metrics = QFontMetricsF(self.font())
        return Sheet(
            width=max(1.0, self.width() - 2 * MARGIN),
            height=max(1.0, self.height() - 2 * MARGIN),
            line=metrics.height(),
            text_width=metrics.horizontalAdvance,
        )

    def _follow(self) -> None:
        appraisal = self._document.appraisal
        shape = side(appraisal.design, appraisal.fabric, appraisal.profile)
        self.setAccessibleDescription(spoken_side(shape, self._units.units))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint area, strokes and labels."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(MARGIN, MARGIN)
        drawing = self.drawing
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._blend(0.06))
        painter.drawPolygon(_polygon(drawing.area))
        self._paint_strokes(painter, drawing.edges)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._blend(0.06))
        painter.drawPolygon(_polygon(drawing.cuff))
        self._paint_strokes(painter, drawing.strokes)
        for label in drawing.labels:
            box = QRectF(label.x, label.y, label.width + 1, label.height)
            if label.kind == "name":  # lines of the fabric under it end where it stands
                painter.fillRect(box, self._blend(0.06))
            painter.setPen(self._ink(label))
            painter.drawText(box, ALIGNED[label.align] | Qt.TextFlag.TextSingleLine, label.text)

    def _paint_strokes(self, painter: QPainter, strokes: tuple[Stroke, ...]) -> None:
        for stroke in strokes:
            painter.setPen(self._pen(stroke))
            painter.drawPolyline(_polygon(stroke.points))

    def _pen(self, stroke: Stroke) -> QPen:
        width, share, style = {
            "outline": (1.8, 1.0, Qt.PenStyle.SolidLine),
            "fold": (1.4, 0.9, Qt.PenStyle.SolidLine),
            "hidden": (1.2, 0.7, Qt.PenStyle.DashLine),
            "edge": (1.0, 0.32, Qt.PenStyle.SolidLine),
            "axis": (1.0, 0.4, Qt.PenStyle.DashDotLine),
            "witness": (1.0, 0.32, Qt.PenStyle.SolidLine),
            "dimension": (1.1, 1.0, Qt.PenStyle.SolidLine),
            "pucker": (3.0, 1.0, Qt.PenStyle.SolidLine),
        }[stroke.kind]
        colour = self._blend(share)
        if stroke.kind == "dimension":
            colour = self.palette().highlight().color()
        elif stroke.kind == "pucker":
            colour = PUCKER
        pen = QPen(colour, width, style)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        return pen

    def _ink(self, label: Label) -> QColor:
        return self._blend(1.0 if label.kind == "measure" else 0.68)

    def _blend(self, share: float) -> QColor:
        """Give a mixture of text and ground, so that it holds in light and dark."""
        text, ground = self.palette().windowText().color(), self.palette().window().color()
        pairs = ((text.red(), ground.red()), (text.green(), ground.green()), (text.blue(), ground.blue()))
        return QColor(*(round(share * ink + (1 - share) * paper) for ink, paper in pairs))


def side_words(units: Units) -> SideWords:
    """Give what the drawing says, in the language of the window."""
    return SideWords(
        length=units.length.told,
        part={
            "brim": tr("brim {0}"),
            "widening": tr("widening {0}"),
            "body": tr("body {0}"),
            "crown": tr("crown {0}"),
        },
        fold={"up": tr("turned up"), "in": tr("hem inside"), "roll": tr("rolled")},
        around=tr("{0} round"),
        across=tr("{0} across"),
        flat=tr("{0} laid flat"),
        plate=tr("plate {0} across"),
        high=tr("{0} high"),
        depth=tr("{0} deep along the fabric"),
        radius=tr("r {0}"),
    )


def spoken_side(shape: Side, units: Units) -> str:
    """Tell the drawing's measures as one text."""
    words, told = side_words(units), units.length.told
    parts = [
        words.around.format(told(around_cm(shape.edge_radius_cm))),
        words.high.format(told(shape.height_cm)),
        words.depth.format(told(shape.depth_cm)),
        *(words.part[part.name].format(told(part.depth_cm)) for part in shape.parts),
    ]
    if shape.is_wider_above:
        parts.append(tr("widest {0} round").format(told(around_cm(shape.widest[0]))))
    if shape.puckered:
        parts.append(tr("puckers in {0} rounds").format(len(shape.puckered)))
    return ", ".join(parts)


def _polygon(points: tuple[tuple[float, float], ...]) -> QPolygonF:
    return QPolygonF([QPointF(x, y) for x, y in points])
