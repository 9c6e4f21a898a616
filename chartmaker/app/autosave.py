"""Keeps unsaved work while it is done, so that it outlives the program; writing runs beside the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from chartmaker.app.side_thread import SideThread
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from pathlib import Path

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.own_file import OwnFile
    from chartmaker.files.draft import Draft
    from chartmaker.files.recovery import RecoveryStore

KEEP_AFTER_MS = 1000
"""How long the first edit that is not kept yet waits; a draft's KEEP_AFTER_S, which costs too much to import here."""
ENDING = ".hat.toml"


class Autosave(QObject):
    """Writes a draft soon after an edit, and removes it once nothing is unsaved. Without a folder it does nothing."""

    told = Signal(str)
    """That work cannot be kept and why, for the status bar; once for each reason."""

    def __init__(self, document: OpenDesign, own_file: OwnFile, folder: Path | None) -> None:
        super().__init__()
        self._document = document
        self._own_file = own_file
        self._folder = folder
        self._store: RecoveryStore | None = None
        self._draft: Draft | None = None
        self._last_told = ""
        self._writing = SideThread(self)
        self._writing.failed.connect(self._fail)
        self._timer = QTimer(self, singleShot=True, interval=KEEP_AFTER_MS)
        self._timer.timeout.connect(self._keep)
        document.edited.connect(self._wait)
        document.replaced.connect(self.drop)
        document.stack.cleanChanged.connect(self._follow)

    @property
    def has_left_work(self) -> bool:
        """Whether there may be work of sessions that are gone: only a look at names."""
        return self._folder is not None and any(self._folder.glob(f"*{ENDING}"))

    def store(self) -> RecoveryStore:
        """Give this session's part of the folder, which is made when it is first asked for.

        Raises UserProblem where nothing can be kept there, ValueError where there is no folder.
        """
        from chartmaker.files.recovery import RecoveryStore

        if self._folder is None:
            raise ValueError("no folder to keep work in")
        if self._store is None:
            self._store = RecoveryStore(self._folder)
        return self._store

    def take(self, draft: Draft) -> None:
        """Go on with a draft that holds the design at hand already."""
        self._draft = draft

    def drop(self) -> None:
        """Remove what is kept: it was saved or given up."""
        self._timer.stop()
        self._writing.wait()
        if self._draft is not None:
            self._draft.forget()
            self._draft = None

    def close(self) -> None:
        """End the session; nothing is unsaved any more."""
        self.drop()
        self._folder = None
        if self._store is not None:
            self._store.close()

    def _follow(self, is_clean: bool) -> None:  # noqa: FBT001 - the signal's own signature
        if is_clean:
            self.drop()
        else:
            self._wait()

    def _wait(self) -> None:
        if self._folder is not None and not self._timer.isActive():
            self._timer.start()

    def _keep(self) -> None:
        document = self._document
        if document.stack.isClean():
            return
        if self._writing.is_running:  # a slow disk: once more, when it may be done
            self._wait()
            return
        try:
            # Made here, since a thread that imports beside the window may meet half-made modules.
            draft = self._draft = self._draft or self.store().draft()
        except UserProblem as problem:
            self._report(str(problem))
            return
        design, path, based_on = document.design, document.path, self._own_file.fingerprint
        self._writing.start(lambda: draft.keep(design, path=path, based_on=based_on))

    def _fail(self, error: Exception) -> None:
        if not isinstance(error, UserProblem):
            raise error
        self._report(str(error))

    def _report(self, sentence: str) -> None:
        """Tell a reason once, and try again: the disk may have room in a moment."""
        if sentence != self._last_told:
            self._last_told = sentence
            self.told.emit(sentence)
        self._wait()
