"""Makes the turning hat ready, and paints its fine frames, beside the window; only the newest wish is kept."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from chartmaker.app.side_thread import SideThread

if TYPE_CHECKING:
    from chartmaker.appraisal import Appraisal
    from chartmaker.pictures.turning import Dress, Pixels, TurningHat
    from chartmaker.pictures.viewpoint import Viewpoint

    Look = tuple[Viewpoint, int, int]
    """From where, and how many pixels wide and high, within what a frame may have."""


@dataclass(frozen=True, slots=True, eq=False)
class _Wish:
    appraisal: Appraisal
    dress: Dress

    def is_for(self, appraisal: Appraisal, dress: Dress) -> bool:
        return self.appraisal is appraisal and self.dress == dress


class HatMaker(QObject):
    """Holds the hat that is ready; while another is made, it stays the older one."""

    ready = Signal()
    """`hat` is another one."""
    painted = Signal(object, object)
    """A fine frame: of which look, and its pixels."""
    failed = Signal(object)
    """The exception that kept a hat from being made."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.hat: TurningHat | None = None
        self._made: _Wish | None = None
        self._making: _Wish | None = None
        self._next: tuple[_Wish, Look] | None = None
        self._look: Look | None = None
        """What is to be painted finely."""
        # A fine frame may take a second on a fine screen, and another hat shall not wait for it.
        self._hats, self._frames = SideThread(self), SideThread(self)
        self._hats.done.connect(self._take_hat)
        self._hats.failed.connect(self._fail)
        self._frames.done.connect(self._take_frame)
        self._frames.failed.connect(self.failed)

    @property
    def is_at_work(self) -> bool:
        """Whether something is being made or still to be made."""
        return self._hats.is_running or self._frames.is_running or self._next is not None

    def make(self, appraisal: Appraisal, dress: Dress, look: Look) -> None:
        """Have a hat made ready to be seen so, unless it is there or under way already."""
        newest = self._next[0] if self._next else self._making or self._made
        if newest is None or not newest.is_for(appraisal, dress):
            self._next = (_Wish(appraisal, dress), look)
            self._make_next()

    def paint_finely(self, look: Look | None) -> None:
        """Have the hat painted finely as soon as may be; None is not any more."""
        self._look = look
        self._paint_next()

    def finish(self) -> None:
        """Make nothing more, and wait for what is being made."""
        self._next = self._look = self._making = None
        self._hats.wait()
        self._frames.wait()

    def _make_next(self) -> None:
        if self._next is None or self._hats.is_running:
            return
        (wish, look), self._next = self._next, None

        def work() -> TurningHat:
            from chartmaker.pictures.turning import prepare

            hat = prepare(wish.appraisal, wish.dress)
            hat.frame(*look)  # the first frame is dear, and leaves what makes the next ones cheap
            return hat

        self._making = wish
        self._hats.start(work)

    def _take_hat(self, hat: TurningHat) -> None:
        self.hat, self._made, self._making = hat, self._making, None
        self.ready.emit()
        self._make_next()

    def _fail(self, error: Exception) -> None:
        self._making = None
        self.failed.emit(error)
        self._make_next()

    def _paint_next(self) -> None:
        hat, look = self.hat, self._look
        if hat is None or look is None or self._frames.is_running:
            return

        def work() -> tuple[TurningHat, Look, Pixels]:
            return hat, look, hat.frame(*look, fine=True)

        self._look = None
        self._frames.start(work)

    def _take_frame(self, made: tuple[TurningHat, Look, Pixels]) -> None:
        hat, look, pixels = made
        if hat is self.hat:
            self.painted.emit(look, pixels)
        self._paint_next()
