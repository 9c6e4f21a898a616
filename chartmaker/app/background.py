"""The one door for work that would hold up the window: it runs beside it, shows that it runs, and can be stopped."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QRunnable, QThreadPool, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QProgressBar, QToolButton, QWidget

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    Work = Callable[[Callable[[int, int], None]], object]

SHOWN_AFTER_MS = 200
"""Shorter work shows nothing."""


class Stopped(Exception):  # noqa: N818 - it ends work that nobody wants any more; nothing went wrong
    """Raised inside work that was given up."""


class _Reports(QObject):
    """Carries what a worker has to say across threads."""

    stepped = Signal(int, int)
    done = Signal(object)
    failed = Signal(object)
    over = Signal()


class _Work(QRunnable):
    """Runs a function in a thread of the pool."""

    def __init__(self, work: Work) -> None:
        super().__init__()
        self.setAutoDelete(False)
        self.work = work
        self.reports = _Reports()
        self.is_wanted = True

    def step(self, done: int, total: int) -> None:
        """Report how far the work is; raises Stopped where it was given up."""
        if not self.is_wanted:
            raise Stopped
        self.reports.stepped.emit(done, total)

    def run(self) -> None:
        """Run it, and report the result or the error."""
        try:
            result = self.work(self.step)
        except Stopped:
            pass
        except Exception as error:  # noqa: BLE001 - whatever it is goes to the window's one error dialog
            self.reports.failed.emit(error)
        else:
            self.reports.done.emit(result)
        self.reports.over.emit()


class Background(QWidget):
    """Stands in the status bar while something runs. One piece of work at a time."""

    failed = Signal(object)
    """The exception that ended the work."""
    ended = Signal()
    """The work is over, done, failed or stopped."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._label = QLabel()
        self._bar = QProgressBar()
        self._bar.setRange(0, 0)
        self._bar.setFixedWidth(120)
        self._bar.setTextVisible(False)
        self._stop = QToolButton()
        self._stop.setText(tr("Stop"))
        self._stop.setToolTip(tr("Give this up; nothing is written"))
        self._stop.clicked.connect(self.stop)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        for part in (self._label, self._bar, self._stop):
            layout.addWidget(part)
        self._delay = QTimer(self, singleShot=True, interval=SHOWN_AFTER_MS)
        self._delay.timeout.connect(self.show)
        self._current: _Work | None = None
        # Work that was given up still runs until its next step, and must be kept alive for so long.
        self._running: set[_Work] = set()
        self.hide()

    @property
    def is_busy(self) -> bool:
        """Whether something runs whose result is still wanted."""
        return self._current is not None

    def start(self, text: str, work: Work, then: Callable[[Any], None]) -> None:
        """Run `work` beside the window; `then` is called in the window's thread with what it gives.

        The work is given a function to call with how many steps are done and how many there are.
        Raises ValueError while something else runs.
        """
        if self._current is not None:
            raise ValueError("one piece of work at a time")
        self._label.setText(text)
        self._current = current = _Work(work)
        current.reports.stepped.connect(self._show_progress)
        self._running.add(current)
        current.reports.over.connect(lambda: self._running.discard(current))
        current.reports.done.connect(lambda result: self._end(current, lambda: then(result)))
        current.reports.failed.connect(lambda error: self._end(current, lambda: self.failed.emit(error)))
        self._bar.setRange(0, 0)
        self._delay.start()
        QThreadPool.globalInstance().start(current)

    def stop(self) -> None:
        """Give the work up: it ends at its next step, and what it made is dropped; nothing is written."""
        if self._current is not None:
            self._current.is_wanted = False
        self._rest()

    def finish(self) -> None:
        """Give the work up and wait until it has ended, before the window goes."""
        self.stop()
        QThreadPool.globalInstance().waitForDone()

    def _show_progress(self, done: int, total: int) -> None:
        self._bar.setRange(0, total)
        self._bar.setValue(done)

    def _end(self, work: _Work, then: Callable[[], None]) -> None:
        if work is self._current:
            self._rest()
            then()

    def _rest(self) -> None:
        self._current = None
        self._delay.stop()
        self.hide()
        self.ended.emit()
