"""How long the window takes to be ready, and how much memory it takes, against a bare PySide6 window."""

import os
import statistics
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

from tests.benchmarks.row import Row

ROOT = Path(__file__).parents[2]

SHOW = """
for _ in range(20):
    application.processEvents()
    if window.windowHandle() and window.windowHandle().isExposed():
        break
window.grab()
"""
"""Ready is shown, exposed and painted in full."""
PEAK = "print(next(line for line in open('/proc/self/status') if line.startswith('VmHWM')).split()[1])\n"
END = "import os; os._exit(0)\n"

BARE = f"""
import sys
from PySide6.QtWidgets import QApplication, QMainWindow
application = QApplication([])
window = QMainWindow()
window.resize(1180, 800)
window.show()
{SHOW}
"""
OURS = f"""
import sys
from pathlib import Path
import chartmaker.cli
import chartmaker.appraisal
from chartmaker.app.main import open_window
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication
application = QApplication([])
window = open_window(QSettings(sys.argv[1], QSettings.Format.IniFormat), Path(sys.argv[2]))
{SHOW}
"""
BARE_WITH_IMPORTS = f"""
import sys
from pathlib import Path
import chartmaker.app.main, chartmaker.files.design_reading
{BARE}
"""


def measure() -> Iterator[Row]:
    """Start both turn about and compare the medians."""
    durations: dict[str, list[float]] = {BARE: [], OURS: []}
    for script in durations:
        _run(script + END)
    for _ in range(9):
        for script, kept in durations.items():
            start = time.perf_counter()
            _run(script + "sys.stdout.flush()\n" + END)
            kept.append(1000 * (time.perf_counter() - start))
    bare_ms, ours_ms = (statistics.median(kept) for kept in durations.values())
    yield Row(
        name="window ready against a bare PySide6 window",
        figure=ours_ms / bare_ms,
        limit=2,
        unit="×",
        detail=f"{ours_ms:.0f} ms against {bare_ms:.0f} ms, from the start of the process, on the cap",
    )
    peaks = [
        statistics.median(float(_run(script + PEAK + "sys.stdout.flush()\n" + END)) / 1024 for _ in range(3))
        for script in (BARE_WITH_IMPORTS, OURS)
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
    return {**kept, "QT_QPA_PLATFORM": "offscreen"}


def _run(script: str) -> str:
    settings = ROOT / ".benchmarks" / "settings.ini"
    settings.parent.mkdir(exist_ok=True)
    settings.unlink(missing_ok=True)
    cap = ROOT / "examples" / "lockside-cap.hat.toml"
    run = subprocess.run(
        [sys.executable, "-c", script, str(settings), str(cap)],
        capture_output=True,
        text=True,
        check=True,
        cwd=ROOT,
        env=_as_installed(),
    )
    return run.stdout
