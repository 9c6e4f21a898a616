"""Real mouse events at cells of the chart, and what stands there afterwards."""

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from chartmaker.app.chart_canvas import ChartCanvas
from chartmaker.app.window import Window
from chartmaker.model.design import Design
from chartmaker.model.notation import rounds_to_text

LEFT, RIGHT, NONE = Qt.MouseButton.LeftButton, Qt.MouseButton.RightButton, Qt.KeyboardModifier.NoModifier


def point(canvas: ChartCanvas, cell: tuple[int, int]) -> QPoint:
    """Give the middle of a cell `(row, column)` in the canvas."""
    return canvas.frame.box(*cell).center().toPoint()


def drag(canvas: ChartCanvas, *cells: tuple[int, int], button: Qt.MouseButton = LEFT) -> None:
    """Press at the first cell, move over the others, and let go at the last."""
    port = canvas.viewport()
    QTest.mousePress(port, button, NONE, point(canvas, cells[0]))
    for cell in cells[1:]:
        QTest.mouseMove(port, point(canvas, cell))
    QTest.mouseRelease(port, button, NONE, point(canvas, cells[-1]))


def drag_over(widget: QWidget, *points: QPointF) -> None:
    """Press at the first point of a widget, move over the others, and let go at the last."""
    QTest.mousePress(widget, LEFT, NONE, points[0].toPoint())
    for each in points[1:]:
        QTest.mouseMove(widget, each.toPoint())
    QTest.mouseRelease(widget, LEFT, NONE, points[-1].toPoint())


def type_at(window: Window, *keys: Qt.Key) -> None:
    """Press keys at the chart."""
    window.chart.canvas.setFocus()
    for key in keys:
        QTest.keyClick(window.chart.canvas, key)


def drawn(design: Design, band: int = 0) -> list[str]:
    """Give the cells of a band as text, the last round first."""
    return [line.split("|")[1].strip() for line in rounds_to_text(design.bands[band].rounds).splitlines()]


def shading(design: Design, band: int = 0) -> list[str]:
    """Give the letters of a band's rounds, the first round first."""
    return [line.letters for line in design.bands[band].rounds]
