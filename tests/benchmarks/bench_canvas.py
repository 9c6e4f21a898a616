"""How long the chart's canvas takes to repaint, against a blit of as many pixels."""

import tempfile
from collections.abc import Iterator
from itertools import count
from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QApplication, QWidget

from chartmaker.app.open_design import OpenDesign
from chartmaker.app.window import Window
from chartmaker.model.edits import paint
from tests.benchmarks.large_design import large_design
from tests.benchmarks.row import Row, interleaved_ms, median_ms


class Blit(QWidget):
    """A widget that paints one pixmap of its own size and nothing else."""

    def __init__(self, window: Window) -> None:
        super().__init__()
        viewport = window.chart.canvas.viewport()
        self.resize(viewport.size())
        self._pixmap = QPixmap(viewport.size() * viewport.devicePixelRatioF())
        self._pixmap.fill(QColor("#778899"))

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Blit."""
        QPainter(self).drawPixmap(0, 0, self._pixmap)


def measure() -> Iterator[Row]:
    """Repaint the canvas of a 400 × 200 chart whole, and after one stitch's edit."""
    application = QApplication.instance() or QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = Window(OpenDesign(large_design()), settings)
        window.resize(1440, 900)
        window.show()
        blit = Blit(window)
        blit.show()
        for _ in range(5):
            application.processEvents()
        viewport = window.chart.canvas.viewport()
        canvas_ms, blit_ms = interleaved_ms(viewport.repaint, blit.repaint, times=200)
        size = f"{viewport.width()} × {viewport.height()} pixels, blit {blit_ms:.2f} ms"
        yield Row(
            name="canvas repaint against the blit of its pixels",
            figure=canvas_ms / blit_ms,
            limit=4,
            unit="×",
            detail=size,
        )
        turns = count()
        edit_ms = median_ms(lambda: _edit(window, next(turns)), times=40)
        yield Row(
            name="an edit appraised in the window's thread, and painted",
            figure=edit_ms,
            limit=None,
            unit="ms",
            detail="on 400 × 200, as where something cannot wait for its figures",
        )
        window.document.stack.setClean()
        window.close()


def _edit(window: Window, turn: int) -> None:
    design = window.document.design
    cell = turn * 7 % 200, turn * 13 % 400
    part = 1 - design.bands[0].rounds[cell[0]].cells[cell[1]]
    window.document.do(paint(design, band=0, cells={cell: part}, text="Draw"))
    window.document.appraise_now()
    QApplication.processEvents()
