"""Appraises large designs beside the window: an edit is painted first, its figures follow."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from chartmaker.app.side_thread import SideThread

if TYPE_CHECKING:
    from chartmaker.appraisal import Appraisal
    from chartmaker.model.design import Design
    from chartmaker.model.palette import Palette

    Task = tuple[Design, Palette | None]

AT_ONCE_STITCHES = 16_000
"""Designs of up to so many stitches are appraised with the edit itself, which costs them a quarter of a frame."""


def is_done_at_once(design: Design) -> bool:
    """Tell whether a design is so small that its figures need not follow it.

    It goes by size and not by time, so that what a window does never depends on how busy the machine is.
    """
    return sum(len(line) * band.times for band, line in design.rounds()) <= AT_ONCE_STITCHES


class Appraiser(QObject):
    """One thread that appraises the newest design it was asked for; what it made of an older one is dropped."""

    made = Signal(object)
    """The `Appraisal` of the newest design, told in the window's thread."""
    failed = Signal(object)
    """The exception that ended the work on the newest design."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._newest: Task | None = None
        self._running: Task | None = None
        self._thread = SideThread(self)
        self._thread.done.connect(self._take)
        self._thread.failed.connect(self._take)
        # Nothing else is done when it comes, so all that the edit changed has been painted: Python runs one thread
        # at a time, and sums begun sooner would hold up the painting.
        self._after_painting = QTimer(self, singleShot=True, interval=0)
        self._after_painting.timeout.connect(self._begin)

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._newest is not None

    def ask(self, design: Design, palette: Palette | None) -> None:
        """Have a design appraised once what is to be painted is painted; any older question is forgotten."""
        self._newest = (design, palette)
        if self._running is None:
            self._after_painting.start()

    def forget(self) -> None:
        """Give no answer any more to what was asked."""
        self._newest = None
        self._after_painting.stop()

    def finish(self) -> None:
        """Forget what was asked, and wait until nothing runs any more."""
        self.forget()
        self._thread.wait()
        self._running = None

    def _begin(self) -> None:
        self._running = task = self._newest
        if task is not None:
            self._thread.start(lambda: _appraised(*task))

    def _take(self, result: object) -> None:
        task, self._running = self._running, None
        if task is not self._newest:
            if self._newest is not None:
                self._after_painting.start()
            return
        self._newest = None
        if isinstance(result, Exception):
            self.failed.emit(result)
        else:
            self.made.emit(result)


def _appraised(design: Design, palette: Palette | None) -> Appraisal:
    from chartmaker.appraisal import appraise

    return appraise(design, palette)
