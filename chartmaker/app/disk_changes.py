"""Notices that something else has changed the design's file, and asks once whose version shall stand."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chartmaker.app.filing import Filing
    from chartmaker.app.own_file import Change


class DiskChanges:
    """Looks when the window becomes active and before each save."""

    def __init__(self, filing: Filing) -> None:
        self._filing = filing
        self._put_off = ""
        self._is_asking = False

    @property
    def are_to_ask(self) -> bool:
        """Whether there is a change that was not asked about yet."""
        if self._is_asking:
            return False
        change = self._filing.own_file.change()
        return change is not None and change.mark != self._put_off

    def ask(self) -> None:
        """Ask what to do about a change, if there is one, and do it."""
        change = self._filing.own_file.change()
        if change is not None:
            self._settle(change)

    def allow_saving(self) -> bool:
        """Ask before a save, if there is a change; whether to save over the file now."""
        change = self._filing.own_file.change()
        return change is None or self._settle(change)

    def _settle(self, change: Change) -> bool:
        """Ask and do; whether the user wants what is in the window to stand in the file's place."""
        filing = self._filing
        self._is_asking = True
        try:
            answer = filing.questions.what_of_changed(filing.name, is_gone=change.standing == "gone")
            self._put_off = change.mark
            if answer == "mine":
                filing.own_file.accept(change)
                filing.document.stack.resetClean()
            elif answer == "theirs":
                filing.take_again()
            elif answer == "elsewhere":
                filing.save_as()
        finally:
            self._is_asking = False
        return answer == "mine"
