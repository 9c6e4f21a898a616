"""How soon the chart answers the hand: a stitch, the figures that follow it, a fill, and what the history takes up."""

import gc
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from itertools import count
from pathlib import Path

import numpy as np
from PySide6.QtCore import QEventLoop, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.open_design import OpenDesign
from chartmaker.app.window import Window
from chartmaker.model.design import Design
from chartmaker.model.edits import Edit, ReplaceRounds
from tests.benchmarks.large_design import large_design
from tests.benchmarks.row import Row

TIMES = 60
NONE = Qt.KeyboardModifier.NoModifier


def measure() -> Iterator[Row]:
    """Draw and fill by real events and edits, and count what a thousand steps of history take up."""
    with _window_on(large_design()) as window:
        strokes = [_stitch(window, turn) for turn in range(TIMES + 5)][5:]
    press, release, follow = zip(*strokes, strict=True)
    where = "on 400 × 200 in a window of 1180 × 800"
    yield _row("a stitch, from the press to its pixels", press, 16, where)
    yield _row("the same stitch done, from the release to its pixels", release, 16, f"{where}, ledger and all")
    yield _row("its figures, from then until they are painted", follow, 50, "appraised beside the window")
    with _window_on(large_design(stitches=600, rounds=600)) as window:
        turns = count()
        fills = [_timed(window, _fill(window.document.design, next(turns))) for _ in range(25)][3:]
    yield _row("an edit of every round of 600 × 600 laid out and painted", fills, 50, "as a fill makes it")
    for size in ((400, 200), (600, 600)):
        megabytes = float(_in_a_process_of_its_own(*size))
        yield Row(
            name=f"memory of 1,000 steps on {size[0]} × {size[1]}",
            figure=megabytes,
            limit=50,
            unit="MB",
            detail="six strokes to two floods, a fill of every round and a band moved",
        )


def _row(name: str, durations: tuple[float, ...] | list[float], limit: float, detail: str) -> Row:
    late = sorted(durations)[int(0.95 * len(durations))]
    return Row(
        name=name,
        figure=statistics.median(durations),
        limit=limit,
        unit="ms",
        detail=f"{detail}; one in twenty takes {late:.1f} ms or more",
    )


@contextmanager
def _window_on(design: Design) -> Iterator[Window]:
    application = QApplication.instance() or QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = Window(OpenDesign(design), settings)
        window.resize(1180, 800)
        window.show()
        while not window.has_chart:
            application.processEvents()
        for _ in range(10):
            application.processEvents()
        yield window
        window.document.stack.setClean()
        window.close()
        window.deleteLater()
        application.processEvents()


def _stitch(window: Window, turn: int) -> tuple[float, float, float]:
    """Draw what is not there yet, or take away what is; give milliseconds until press, release and figures are seen."""
    canvas = window.chart.canvas
    rows, columns = canvas.frame.rows_in_sight(), canvas.frame.columns_in_sight()
    cell = rows[turn * 7 % (len(rows) - 2) + 1], columns[turn * 5 % (len(columns) - 2) + 1]
    at = canvas.frame.box(*cell).center().toPoint()
    is_drawn = window.document.design.bands[0].rounds[cell[0]].cells[cell[1]]
    button = Qt.MouseButton.RightButton if is_drawn else Qt.MouseButton.LeftButton
    gc.collect()
    pressed = _ms(lambda: _seen(lambda: QTest.mousePress(canvas.viewport(), button, NONE, at)))
    released = _ms(lambda: _seen(lambda: QTest.mouseRelease(canvas.viewport(), button, NONE, at)))
    return pressed, released, _ms(lambda: _wait_for_figures(window))


def _seen(act: Callable[[], object]) -> None:
    """Act, and paint what it changed; the sums have not begun then."""
    act()
    QApplication.sendPostedEvents()


def _wait_for_figures(window: Window) -> None:
    while not window.document.is_appraised:
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)
    QApplication.sendPostedEvents()


def _ms(run: Callable[[], object]) -> float:
    start = time.perf_counter()
    run()
    return 1000 * (time.perf_counter() - start)


def _timed(window: Window, edit: Edit) -> float:
    taken = _ms(lambda: _seen(lambda: window.document.do(edit)))
    _wait_for_figures(window)
    return taken


def _fill(design: Design, turn: int) -> ReplaceRounds:
    """Draw every round of the first band anew, at random."""
    rng = np.random.default_rng(turn)
    rounds = design.bands[0].rounds
    changes = tuple(
        (index, line, replace(line, cells=rng.integers(0, 2, len(line), dtype=np.uint8).tobytes()))
        for index, line in enumerate(rounds)
    )
    return ReplaceRounds(0, changes, "Fill")


# --- the history


def _in_a_process_of_its_own(stitches: int, rounds: int) -> str:
    """Measure in a process that has held nothing else yet, since memory that was let go is not always given back."""
    script = f"from tests.benchmarks.bench_desk import tell_memory; tell_memory({stitches}, {rounds})"
    root = Path(__file__).parents[2]
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True, cwd=root)
    return run.stdout


def tell_memory(stitches: int, rounds: int) -> None:
    """Print how many megabytes a process grows by while a thousand edits are done on a design of two bands."""
    from tests.benchmarks.history_edits import edits_at_random

    application = QApplication.instance() or QApplication([])
    document = OpenDesign(large_design(stitches=stitches, rounds=rounds))
    make = edits_at_random(document)
    for _ in range(40):  # what is made once, and what the allocator takes at first
        document.do(make())
    document.stack.clear()
    before = _resident_mb()
    for _ in range(1000):
        document.do(make())
        document.compact_past()
    document.finish()
    application.processEvents()
    print(_resident_mb() - before)


def _resident_mb() -> float:
    gc.collect()
    line = next(line for line in Path("/proc/self/status").read_text().splitlines() if line.startswith("VmRSS"))
    return int(line.split()[1]) / 1024
