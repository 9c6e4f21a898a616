"""Prints the sheets beside the window, and draws their pages; only the newest wish counts."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from chartmaker.app.background import Stopped
from chartmaker.app.side_thread import SideThread

if TYPE_CHECKING:
    from chartmaker.app.sheet_choices import SheetChoices
    from chartmaker.appraisal import Appraisal
    from chartmaker.model.units import Units
    from chartmaker.sheets.boxes import Pixels
    from chartmaker.sheets.page_picture import PagePicture
    from chartmaker.sheets.print_sheets import Printed


@dataclass(frozen=True, slots=True, eq=False)
class Wish:
    """What is to be printed."""

    appraisal: Appraisal
    choices: SheetChoices
    units: Units

    def is_same(self, other: Wish | None) -> bool:
        """Tell whether another wish would give the same print."""
        mine = self.choices, self.units
        return other is not None and self.appraisal is other.appraisal and mine == (other.choices, other.units)


class SheetsMaker(QObject):
    """Holds the print that is ready; while another is made, it stays the older one.

    The hat's picture for the cover takes longer than all the rest. So the sheets come first with the picture that there
    is, or without, and once more with the new one.
    """

    made = Signal(object)
    """A new print: `Printed`."""
    painted = Signal(object, int, object)
    """Of which print, the index of the page, and its pixels."""
    failed = Signal(object)
    """The exception that kept sheets from being made."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.printed: Printed | None = None
        self._wish: Wish | None = None
        self._made_of: tuple[Wish, Pixels | None] | None = None
        self._making_of: tuple[Wish, Pixels | None] | None = None
        self._picture: tuple[Appraisal, Pixels | None] | None = None
        self._drawing: Appraisal | None = None
        self._prints, self._hats, self._pages = SideThread(self), SideThread(self), SideThread(self)
        self._prints.done.connect(self._take_print)
        self._prints.failed.connect(self._fail_print)
        self._hats.done.connect(self._take_picture)
        self._hats.failed.connect(self._fail_picture)
        self._pages.done.connect(self._take_page)
        self._pages.failed.connect(self.failed)

    @property
    def is_at_work(self) -> bool:
        """Whether a print, or the picture for it, is under way."""
        return self._prints.is_running or self._hats.is_running

    @property
    def is_painting(self) -> bool:
        """Whether a page is being drawn."""
        return self._pages.is_running

    def make(self, wish: Wish) -> None:
        """Have the sheets made as wished, unless they are there or under way already."""
        if not wish.is_same(self._wish):
            self._wish = wish
            self._go_on()

    def paint(self, index: int, *, width_px: int) -> None:
        """Have a page of the print that is ready drawn; raises ValueError while another is drawn."""
        made = self.printed
        if made is None:
            return

        def work() -> tuple[Printed, int, PagePicture]:
            from chartmaker.sheets.page_picture import page_picture

            return made, index, page_picture(made.pdf, index, width_px=width_px)

        self._pages.start(work)

    def finish(self) -> None:
        """Make nothing more, and wait for what is being made."""
        self._wish = None
        for thread in (self._prints, self._hats, self._pages):
            thread.wait()

    def _go_on(self) -> None:
        """Begin what the wish still lacks: the print, or the picture for its cover."""
        wish = self._wish
        if wish is None:
            return
        picture = self._picture[1] if self._picture else None
        current = self._making_of or self._made_of
        if not self._prints.is_running and wish.choices.sheets:
            is_new = current is None or not wish.is_same(current[0])
            if is_new or (current is not None and current[1] is not picture and "cover" in wish.choices.sheets):
                self._print(wish, picture)
        has_picture = self._picture is not None and self._picture[0] is wish.appraisal
        if "cover" in wish.choices.sheets and not has_picture and not self._hats.is_running:
            self._draw(wish.appraisal)

    def _print(self, wish: Wish, picture: Pixels | None) -> None:
        self._making_of = wish, picture
        job = wish.choices.job(units=wish.units, picture=picture)

        def look(_done: int, _count: int) -> None:
            if self._wish is not wish:
                raise Stopped

        def work() -> Printed:
            from chartmaker.sheets.print_sheets import printed

            return printed(wish.appraisal, job, progress=look)

        self._prints.start(work)

    def _draw(self, appraisal: Appraisal) -> None:
        self._drawing = appraisal

        def work() -> Pixels:
            from chartmaker.printing import cover_picture

            return cover_picture(appraisal)

        self._hats.start(work)

    def _take_print(self, printed: Printed) -> None:
        self._made_of, self._making_of = self._making_of, None
        self.printed = printed
        self.made.emit(printed)
        self._go_on()

    def _fail_print(self, error: Exception) -> None:
        if isinstance(error, Stopped):
            self._making_of = None
        else:
            self._made_of, self._making_of = self._making_of, None
            self.failed.emit(error)
        self._go_on()

    def _take_picture(self, picture: Pixels | None) -> None:
        if self._drawing is not None:
            self._picture = self._drawing, picture
        self._go_on()

    def _fail_picture(self, error: Exception) -> None:
        self._take_picture(None)
        self.failed.emit(error)

    def _take_page(self, painted: tuple[Printed, int, PagePicture]) -> None:
        self.painted.emit(*painted)
