"""How long a new hat takes from a knitter's answers to everything that is known of it, and to the screen."""

import tempfile
from collections.abc import Iterator
from itertools import count
from pathlib import Path

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from chartmaker.app.open_design import OpenDesign
from chartmaker.app.start_desk import begin_in
from chartmaker.app.start_dialog import StartDialog
from chartmaker.app.start_given import Given
from chartmaker.app.window import Window
from chartmaker.appraisal import appraise
from chartmaker.files.palette_reading import read_palette
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.body_plan import body_plan
from chartmaker.knit.starter import started
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import SHAPES
from chartmaker.model.palette import Palette
from tests.benchmarks.row import Row, median_ms

PALETTE = Path(__file__).parents[2] / "palettes" / "allotment.palette.toml"
FINE = Gauge(stitches_per_10cm=36, rounds_per_10cm=40)


def measure() -> Iterator[Row]:
    """Begin each shape for a large head at a fine gauge, lots and appraisal included, the body planned anew."""
    palette = read_palette(PALETTE)
    for shape in SHAPES:

        def begin(shape: str = shape) -> object:
            body_plan.cache_clear()
            return appraise(started(defaults_for(shape=shape, head_cm=60, gauge=FINE), palette), palette)

        design = started(defaults_for(shape=shape, head_cm=60, gauge=FINE), palette)
        rounds = sum(len(band.rounds) for band in design.bands)
        yield Row(
            name=f"a new {shape}, from answers to appraisal",
            figure=median_ms(begin),
            limit=100,
            unit="ms",
            detail=f"{design.bands[0].stitches(0)} stitches, {rounds} rounds; the screen takes the rest of 200 ms",
        )
    yield from _on_screen(palette)


def _on_screen(palette: Palette) -> Iterator[Row]:
    """Answer in the dialog, and begin what it shows in the window, each until all of it is painted."""
    application = QApplication.instance() or QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = Window(OpenDesign(started(defaults_for(shape="cap", head_cm=56, gauge=FINE))), settings)
        window.resize(1280, 800)
        window.show()
        window.bring_chart()
        window.lots.open_palette.take(palette, None)
        dialog = StartDialog(settings, window.units, palette, window)
        dialog.show()
        heads = count(52.0, 0.25)
        for shape in SHAPES:
            dialog.questions.show_given(Given(shape=shape, stitches=36, rounds=40))

            def answer() -> None:
                body_plan.cache_clear()
                dialog.questions.head.show_head(next(heads))
                dialog.refresh()
                application.processEvents()

            def begin() -> None:
                answer()
                design = dialog.outcome.design
                if design is not None:
                    begin_in(window, design)
                application.processEvents()

            yield Row(
                name=f"a new {shape} from answers to screen, in the dialog",
                figure=median_ms(answer, times=9),
                limit=200,
                unit="ms",
                detail="made, appraised, drawn and told anew, while answers are typed",
            )
            yield Row(
                name=f"a new {shape} from answers to screen, begun in the window",
                figure=median_ms(begin, times=9),
                limit=200,
                unit="ms",
                detail="the same, and then the chart painted in full",
            )
        dialog.close()
        window.document.stack.setClean()
        window.close()
