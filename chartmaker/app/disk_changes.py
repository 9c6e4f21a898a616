"""Notices that something else has changed the file of the design or the palette, and asks once whose shall stand."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from chartmaker.app.own_file import Change, OwnFile
    from chartmaker.app.questions import Questions


class Kept(Protocol):
    """What brings one kind of file in and out."""

    @property
    def own_file(self) -> OwnFile:
        """The file at hand."""

    @property
    def questions(self) -> Questions:
        """Who asks the user."""

    @property
    def name(self) -> str:
        """What the file is called when it is asked about."""

    def take_again(self) -> None:
        """Read the file anew, and let go what is in the window."""

    def count_as_unsaved(self) -> None:
        """Let what is in the window count as changed."""

    def save_as(self) -> bool:
        """Ask for another file and save there."""


class DiskChanges:
    """Looks when the window becomes active and before each save."""

    def __init__(self, filing: Kept) -> None:
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
                filing.count_as_unsaved()
            elif answer == "theirs":
                filing.take_again()
            elif answer == "elsewhere":
                filing.save_as()
        finally:
            self._is_asking = False
        return answer == "mine"
