"""How long a page of as many lots as a palette holds takes to scroll by a step, painted."""

import tempfile
from collections.abc import Iterator
from itertools import count
from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from chartmaker.app.lots_page import LotsPage
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.window import Window
from chartmaker.model.palette import Palette
from tests.benchmarks.row import Row, median_ms
from tests.builders import chart, lot

LOTS = 400


def measure() -> Iterator[Row]:
    """Scroll through the skeins of a full palette."""
    application = QApplication.instance() or QApplication([])
    lots = tuple(lot(f"lot {place}", (20 + place % 70, place % 40 - 20, place % 60)) for place in range(LOTS))
    with tempfile.TemporaryDirectory() as folder:
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = Window(OpenDesign(chart("A B | x.x.", times=36)), settings)
        window.resize(1180, 800)
        window.show()
        window.document.take_palette(Palette(lots=lots))
        window.show_page("lots")
        for _ in range(5):
            application.processEvents()
        page = window.findChild(LotsPage)
        assert page is not None
        bar, port = page.flow.verticalScrollBar(), page.flow.viewport()
        steps = count()

        def scroll() -> None:
            bar.setValue(bar.maximum() * (next(steps) % 40) // 40)
            port.repaint()

        yield Row(
            name="lots page scrolled by a fortieth",
            figure=median_ms(scroll, times=80),
            limit=16,
            unit="ms",
            detail=f"{LOTS} lots in a window of 1180 × 800",
        )
        window.document.stack.setClean()
        window.close()
