"""Loads what the chart rests on beside the window, so that the window is there at once and answers meanwhile."""

from __future__ import annotations

from contextlib import suppress
from importlib import import_module

from PySide6.QtCore import QObject, QTimer, Signal

from chartmaker.app.side_thread import SideThread

NEEDED = ("chartmaker.files.design_reading", "chartmaker.appraisal", "chartmaker.app.chart_page")
"""Modules that bring numpy and the sums with them."""


class Arrival(QObject):
    """One loading, begun when the window has shown its first picture."""

    loaded = Signal()
    """Told in the window's thread."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._is_begun = False
        self._thread = SideThread(self)
        self._thread.done.connect(self.loaded)

    def begin(self) -> None:
        """Start once what is being painted now is on the screen; a second call does nothing."""
        if not self._is_begun:
            self._is_begun = True
            QTimer.singleShot(0, self, lambda: self._thread.start(_load))

    def finish(self) -> None:
        """Wait until nothing is being loaded, since two threads that import at once may meet half-made modules."""
        self._is_begun = True
        self._thread.wait()


def _load() -> None:
    # What fails to load fails again in the window's own thread, where it is told.
    with suppress(Exception):
        for name in NEEDED:
            import_module(name)
