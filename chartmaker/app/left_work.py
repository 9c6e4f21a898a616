"""Offers unsaved work that the program could not save before it ended: after a crash, once the window is there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from chartmaker.app.autosave import Autosave
    from chartmaker.app.filing import Filing
    from chartmaker.files.recovery import LeftWork


class LeftWorkOffer(QObject):
    """Asks about work of sessions that are gone, newest first, until one is restored or the rest is left for later."""

    def __init__(self, filing: Filing, autosave: Autosave) -> None:
        super().__init__()
        self._filing = filing
        self._autosave = autosave

    def offer(self) -> None:
        """Look for such work and ask about it; nothing is shown where there is none."""
        if not self._autosave.has_left_work:
            return
        try:
            found = self._autosave.store().left()
            for problem in found.problems:
                self._filing.tell(problem)
            self._ask(list(found.works))
        except UserProblem as problem:
            self._filing.tell(problem)

    def _ask(self, works: list[LeftWork]) -> None:
        while works:
            answer, work = self._filing.questions.what_of_left(works)
            if answer == "discard":
                self._autosave.store().give_up(work)
                works.remove(work)
                continue
            if answer == "restore" and self._filing.may_leave():
                self._restore(work)
            return

    def _restore(self, work: LeftWork) -> None:
        """Put the work into the window as unsaved changes of its file.

        Raises UserProblem where another window took it meanwhile, or it cannot be read.
        """
        restored = self._autosave.store().restore(work)
        # Where it is not known what the file was like, it could be overwritten unseen.
        path = None if restored.based_on is None else restored.path
        self._filing.take_unsaved(restored.design, path, restored.based_on)
        self._autosave.take(restored.draft)
