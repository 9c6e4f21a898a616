"""Work in a thread beside the window. Nothing of Qt's goes into the thread: the window looks whether it is back."""

from __future__ import annotations

import gc
import threading
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

if TYPE_CHECKING:
    from collections.abc import Callable

LOOK_EVERY_MS = 4
"""A quarter of a picture of a screen at 60 Hz."""


class SideThread(QObject):
    """Runs one function at a time; both its start and what comes of it belong to the window's thread.

    Objects of Qt's must go where they were made. So the thread sends no signal, the function is held here until it has
    ended, and no rubbish is collected meanwhile, which could hold parts of a window.
    """

    done = Signal(object)
    """What the function gave."""
    failed = Signal(object)
    """The exception that ended it."""
    looked = Signal()
    """It still runs: time to show how far it is."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._errand: _Errand | None = None
        self._timer = QTimer(self, interval=LOOK_EVERY_MS)
        self._timer.timeout.connect(self._look)

    @property
    def is_running(self) -> bool:
        """Whether the function was sent and what came of it is not told yet."""
        return self._errand is not None

    def start(self, work: Callable[[], object]) -> None:
        """Send a function; raises ValueError while another runs."""
        if self._errand is not None:
            raise ValueError("one piece of work at a time")
        self._errand = _Errand(work)
        self._timer.start()

    def wait(self) -> None:
        """Wait until nothing runs any more; what comes of it is not told."""
        if self._errand is not None:
            self._taken()

    def _look(self) -> None:
        if self._errand is None or self._errand.is_out:
            self.looked.emit()
            return
        errand = self._taken()
        if errand.error is not None:
            self.failed.emit(errand.error)
        else:
            self.done.emit(errand.result)

    def _taken(self) -> _Errand:
        errand, self._errand = self._errand, None
        self._timer.stop()
        if errand is None:
            raise ValueError("nothing was sent")
        errand.end()
        return errand


class _Errand:
    """One run of a function in a thread of its own."""

    def __init__(self, work: Callable[[], object]) -> None:
        self._work = work
        self.result: object = None
        self.error: Exception | None = None
        self.is_out = True
        """Whether it is still to come back."""
        _collecting.hold()
        self._thread = threading.Thread(target=self._run)
        self._thread.start()

    def _run(self) -> None:
        try:
            self.result = self._work()
        except Exception as error:  # noqa: BLE001 - whatever it is goes to the window's one error dialog
            self.error = error
        finally:
            self.is_out = False

    def end(self) -> None:
        """Wait for the thread to be gone, so that nothing is given up in it."""
        self._thread.join()
        _collecting.release()


class _Collecting:
    """Python's collecting of rubbish, held back while any thread runs; only the window's thread asks for it."""

    def __init__(self) -> None:
        self._holders = 0
        self._was_on = False

    def hold(self) -> None:
        if not self._holders:
            self._was_on = gc.isenabled()
            gc.disable()
        self._holders += 1

    def release(self) -> None:
        self._holders -= 1
        if not self._holders and self._was_on:
            gc.enable()


_collecting = _Collecting()
