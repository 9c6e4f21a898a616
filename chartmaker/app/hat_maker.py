"""Makes the turning hat ready, and paints its fine frames, beside the window; only the newest wish is kept."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from chartmaker.app.side_thread import SideThread

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.appraisal import Appraisal
    from chartmaker.pictures.turning import Dress, Pixels, TurningHat
    from chartmaker.pictures.viewpoint import Viewpoint

    Look = tuple[Viewpoint, int, int]
    """From where, and how many pixels wide and high."""


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
        self._made_of: tuple[Appraisal, Dress] | None = None
        self._wish: tuple[Appraisal, Dress] | None = None
        self._look: Look | None = None
        self._take: Callable[[object], None] | None = None
        self._thread = SideThread(self)
        self._thread.done.connect(self._end)
        self._thread.failed.connect(self._fail)

    @property
    def is_at_work(self) -> bool:
        """Whether something is being made or still to be made."""
        return self._thread.is_running or self._wish is not None

    def make(self, appraisal: Appraisal, dress: Dress) -> None:
        """Have a hat made ready, unless it is so already."""
        if self._made_of is not None and self._made_of[0] is appraisal and self._made_of[1] == dress:
            self._wish = None
            return
        self._wish = (appraisal, dress)
        self._go_on()

    def paint_finely(self, look: Look | None) -> None:
        """Have the hat painted finely when nothing else is to be done; None is nothing any more."""
        self._look = look
        self._go_on()

    def finish(self) -> None:
        """Make nothing more, and wait for what is being made."""
        self._wish = self._look = None
        self._thread.wait()

    def _go_on(self) -> None:
        if self._thread.is_running:
            return
        if self._wish is not None:
            self._begin_hat(*self._wish)
        elif self._look is not None and self.hat is not None:
            self._begin_frame(self.hat, self._look)

    def _begin_hat(self, appraisal: Appraisal, dress: Dress) -> None:
        def take(hat: object) -> None:
            self.hat, self._made_of = hat, (appraisal, dress)  # type: ignore[assignment]
            self.ready.emit()

        def work() -> object:
            from chartmaker.pictures.turning import prepare

            return prepare(appraisal, dress)

        self._wish, self._take = None, take
        self._thread.start(work)

    def _begin_frame(self, hat: TurningHat, look: Look) -> None:
        def take(pixels: object) -> None:
            if hat is self.hat:
                self.painted.emit(look, pixels)

        def work() -> Pixels:
            return hat.frame(look[0], look[1], look[2], fine=True)

        self._look, self._take = None, take
        self._thread.start(work)

    def _end(self, result: object) -> None:
        if self._take is not None:
            self._take(result)
        self._go_on()

    def _fail(self, error: object) -> None:
        self.failed.emit(error)
        self._go_on()
