"""How long the window takes to be there, and its chart to be in it, and how much memory it takes, against a bare one.

Both are timed from the start of the process to the end of it, ours as a user starts it: `chartmaker.cli` on the example
cap. What is timed ends by itself, so the script puts an end of its own in the place of Qt's event loop.
"""

import os
import statistics
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

from tests.benchmarks.row import Row

ROOT = Path(__file__).parents[2]
SETTINGS = ROOT / ".benchmarks" / "settings.ini"

WATCH = """
def wait_for(is_enough):
    '''Run the event loop until a picture of the window is painted in which there is enough.'''
    from PySide6.QtCore import QCoreApplication, QEvent, QEventLoop, QObject
    from PySide6.QtWidgets import QApplication, QMainWindow
    window = next(widget for widget in QApplication.topLevelWidgets() if isinstance(widget, QMainWindow))
    class Watch(QObject):
        is_over = False
        def eventFilter(self, _watched, event):
            if event.type() == QEvent.Type.Paint and is_enough(window):
                # Comes when all that is painted with the window is painted, and before anything that is timed.
                QCoreApplication.postEvent(self, QEvent(QEvent.Type.User))
            return False
        def event(self, event):
            if event.type() == QEvent.Type.User and not self.is_over:
                self.is_over = True
                end()
            return True
    watch = Watch()
    window.installEventFilter(watch)
    while not watch.is_over:
        QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.WaitForMoreEvents)
"""
END = """
def end():
    import os
    os._exit(0)
"""
PEAK = """
def end():
    import os, sys
    print(next(line for line in open('/proc/self/status') if line.startswith('VmHWM')).split()[1])
    sys.stdout.flush()
    os._exit(0)
"""
BARE = """
import sys
from PySide6.QtWidgets import QApplication, QMainWindow
application = QApplication([])
window = QMainWindow()
window.resize(1180, 800)
window.show()
wait_for(lambda window: True)
"""
OURS = """
import sys
class AfterQt:
    @staticmethod
    def find_spec(name, path=None, target=None):
        if name == "chartmaker.app.window":
            from PySide6.QtWidgets import QApplication
            QApplication.exec = lambda *_: wait_for(IS_ENOUGH)
sys.meta_path.insert(0, AfterQt)
from chartmaker.cli import main
main(sys.argv[1:])
"""
SHOWN = OURS.replace("IS_ENOUGH", "lambda window: True")
CHART = OURS.replace("IS_ENOUGH", "lambda window: window.has_chart")
BARE_WITH_IMPORTS = f"""
import chartmaker.app.main, chartmaker.app.chart_page, chartmaker.files.design_reading
{BARE}
"""
ROUNDS = 11


def measure() -> Iterator[Row]:
    """Start all turn about and compare the medians."""
    durations: dict[str, list[float]] = {BARE: [], SHOWN: [], CHART: []}
    for script in durations:
        run_script(WATCH + END + script)
    for _ in range(ROUNDS):
        for script, kept in durations.items():
            start = time.perf_counter()
            run_script(WATCH + END + script)
            kept.append(1000 * (time.perf_counter() - start))
    bare_ms, shown_ms, chart_ms = (statistics.median(kept) for kept in durations.values())
    yield Row(
        name="window shown and painted, against a bare PySide6 window",
        figure=shown_ms / bare_ms,
        limit=2,
        unit="×",
        detail=f"{shown_ms:.0f} ms against {bare_ms:.0f} ms, from the start of the process; its chart is still empty",
    )
    yield Row(
        name="the cap's chart painted in full, against the same",
        figure=chart_ms / bare_ms,
        limit=None,
        unit="×",
        detail=f"{chart_ms:.0f} ms, so {chart_ms - shown_ms:.0f} ms after the window",
    )
    peaks = [
        statistics.median(float(run_script(WATCH + PEAK + script)) / 1024 for _ in range(3))
        for script in (BARE_WITH_IMPORTS, CHART)
    ]
    yield Row(
        name="peak memory against a bare window with the same imports",
        figure=peaks[1] / peaks[0],
        limit=1.5,
        unit="×",
        detail=f"{peaks[1]:.0f} MB against {peaks[0]:.0f} MB",
    )


def _as_installed() -> dict[str, str]:
    """Give an environment in which modules are compiled once and kept, as they are on the user's machine."""
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return {**kept, "QT_QPA_PLATFORM": "offscreen", "CHARTMAKER_SETTINGS": str(SETTINGS)}


def run_script(script: str) -> str:
    """Run a script on the cap with settings of its own, and give what it prints."""
    SETTINGS.parent.mkdir(exist_ok=True)
    SETTINGS.unlink(missing_ok=True)
    cap = ROOT / "examples" / "lockside-cap.hat.toml"
    run = subprocess.run(
        [sys.executable, "-c", script, str(cap)],
        capture_output=True,
        text=True,
        check=True,
        cwd=ROOT,
        env=_as_installed(),
    )
    return run.stdout
