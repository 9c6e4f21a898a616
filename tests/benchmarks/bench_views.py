"""How long the chart takes from a scroll, and from a stitch drawn, to painted pixels, in every view: 60 a second."""

import tempfile
import time
from collections.abc import Iterator
from itertools import count, cycle
from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from chartmaker.app.chart_canvas import ChartCanvas
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.views import VIEWS
from chartmaker.app.window import Window
from chartmaker.model.edits import paint
from tests.benchmarks.large_design import large_design
from tests.benchmarks.row import Row, median_ms

FRAME_MS = 16
SIDE = 600
STEPS = (7, 31, -12, 60, -45, -41)
"""Window units that the chart is scrolled by in turn, both ways; they come to nothing."""


def measure() -> Iterator[Row]:
    """Scroll and draw on a chart of 600 × 600 in a window of 1180 × 800."""
    application = QApplication.instance() or QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = Window(OpenDesign(large_design(stitches=SIDE, rounds=SIDE)), settings)
        window.resize(1180, 800)
        window.show()
        for _ in range(5):
            application.processEvents()
        canvas = window.chart.canvas
        canvas.viewport().repaint()
        for view in VIEWS:
            if not view.is_drawn_on:
                continue
            window.show_view(view.id)
            for width in (3, 15):
                canvas.show_width(width)
                application.processEvents()
                yield from _of_view(canvas, f"{view.words}, stitches {canvas.frame.size.width} px wide")
        window.document.stack.setClean()
        window.close()


def _of_view(canvas: ChartCanvas, name: str) -> Iterator[Row]:
    for bar in (canvas.horizontalScrollBar(), canvas.verticalScrollBar()):
        bar.setValue(bar.maximum() // 2)
    steps, turns = cycle(STEPS), count()
    for text, run in (
        ("scrolled", lambda: _scroll(canvas, next(steps))),
        ("drawn on", lambda: _draw(canvas, next(turns))),
    ):
        yield Row(
            name=f"{name}: {text}",
            figure=median_ms(run, times=30, clock=time.thread_time),
            limit=FRAME_MS,
            unit="ms",
            detail="of the thread's own time",
        )


def _scroll(canvas: ChartCanvas, step: int) -> None:
    for bar in (canvas.horizontalScrollBar(), canvas.verticalScrollBar()):
        bar.setValue(bar.value() + step)
    canvas.viewport().repaint()


def _draw(canvas: ChartCanvas, turn: int) -> None:
    """Show a stitch as the hand's preview does, without the appraisal, which follows by itself."""
    sight = canvas.frame.rows_in_sight()
    row, stitch = sight[turn * 7 % len(sight)], canvas.frame.columns_in_sight()[turn % 20]
    design = canvas.document.design
    part = 1 - design.bands[0].rounds[row].cells[stitch]
    canvas.show_design(paint(design, band=0, cells={(row, stitch): part}, text="Draw").applied_to(design))
    canvas.viewport().repaint()
