"""The one door for work that would hold up the window: it runs beside it, shows that it runs, and can be stopped."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QProgressBar, QToolButton, QWidget

from chartmaker.app.side_thread import SideThread
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    Work = Callable[[Callable[[int, int], None]], object]

SHOWN_AFTER_MS = 200
"""Shorter work shows nothing."""


class Stopped(Exception):  # noqa: N818 - it ends work that nobody wants any more; nothing went wrong
    """Raised inside work that was given up."""


class _Work:
    """A piece of work, and whether somebody still wants it."""

    def __init__(self, work: Work) -> None:
        self._work = work
        self.is_wanted = True
        self.progress: tuple[int, int] | None = None
        """Steps done and steps in all; written by the thread, read by the window."""
        # Work that was given up still runs until its next step, be what asked for it gone by then.
        self.thread = SideThread(QCoreApplication.instance())

    def run(self) -> object:
        """Do it, in whatever thread this is called in."""
        return self._work(self._step)

    def _step(self, done: int, total: int) -> None:
        if not self.is_wanted:
            raise Stopped
        self.progress = (done, total)


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
        self._running.add(current)
        current.thread.looked.connect(lambda: self._show_progress(current))
        current.thread.done.connect(lambda result: self._end(current, lambda: then(result)))
        current.thread.failed.connect(lambda error: self._end(current, lambda: self.failed.emit(error)))
        self._bar.setRange(0, 0)
        self._delay.start()
        current.thread.start(current.run)

    def stop(self) -> None:
        """Give the work up: it ends at its next step, and what it made is dropped; nothing is written."""
        if self._current is not None:
            self._current.is_wanted = False
        self._rest()

    def finish(self) -> None:
        """Give the work up and wait until it has ended, before the window goes."""
        self.stop()
        for work in tuple(self._running):
            work.thread.wait()
            self._let_go(work)

    def _show_progress(self, work: _Work) -> None:
        if work is self._current and work.progress is not None:
            done, total = work.progress
            self._bar.setRange(0, total)
            self._bar.setValue(done)

    def _end(self, work: _Work, then: Callable[[], None]) -> None:
        self._let_go(work)
        if work is self._current:
            self._rest()
            then()

    def _let_go(self, work: _Work) -> None:
        self._running.discard(work)
        work.thread.deleteLater()

    def _rest(self) -> None:
        self._current = None
        self._delay.stop()
        self.hide()
        self.ended.emit()
