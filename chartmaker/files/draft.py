"""The unsaved work of one open design, kept in a file of its own while it is done."""

import datetime as dt
import os
import threading
from contextlib import suppress
from pathlib import Path

from chartmaker.files.design_writing import design_to_text
from chartmaker.files.fingerprint import Fingerprint, digest_of
from chartmaker.files.problems import UserProblem
from chartmaker.files.recovery_file import Note, with_note
from chartmaker.files.saving import Disk
from chartmaker.model.design import Design

KEEP_AFTER_S = 1.0
"""How long an edit may wait to be kept, counted from the first that waits: with the writing, well within 2 seconds."""
NEW = ".new"
"""Added to the file's name for the one that is being written."""


class Draft:
    """The unsaved work of one open design; its methods may be called from any thread."""

    def __init__(self, file: Path, session: str, disk: Disk) -> None:
        """Take where it is kept, by which session, and the disk to write with."""
        self.file = file
        self._session = session
        self._disk = disk
        self._turn = threading.Lock()
        self._kept: tuple[Design | None, Path | None, Fingerprint | None] = (None, None, None)
        self._digest = ""

    def keep(self, design: Design, *, path: Path | None, based_on: Fingerprint | None = None) -> None:
        """Write the design, so that it comes back should the program end before it is saved; costs little if unchanged.

        `path` is the design's own file, `based_on` its fingerprint when it was opened or saved.
        Raises UserProblem where it cannot be written; what was kept before is kept still.
        """
        whole_path = path and path.absolute()
        with self._turn:
            before, *about = self._kept
            if design is before and about == [whole_path, based_on]:
                return
            text = design_to_text(design)
            digest = digest_of(text.encode("utf-8", "replace"))
            if digest != self._digest or about != [whole_path, based_on]:
                self._write(text, design.title, whole_path, based_on)
            self._kept, self._digest = (design, whole_path, based_on), digest

    def forget(self) -> None:
        """Remove what is kept, since it was saved or given up; work done later may be kept again."""
        with self._turn:
            self._kept, self._digest = (None, None, None), ""
            with suppress(OSError):  # what cannot be removed is offered once too often, and nothing is lost
                self._disk.remove(self.file)

    def _write(self, text: str, title: str, path: Path | None, based_on: Fingerprint | None) -> None:
        note = Note(
            title=title,
            path=path,
            based_on=based_on,
            kept_at=dt.datetime.now(dt.UTC),
            process=os.getpid(),
            session=self._session,
        )
        new = self.file.with_name(self.file.name + NEW)
        try:
            self._disk.remove(new)
            self._disk.create(new, with_note(note, text))
            self._disk.move_over(new, self.file)
        except OSError as problem:
            what = f"unsaved work cannot be kept: {problem.strerror or problem}"
            raise UserProblem(what, where=str(self.file.parent), now="save the design") from problem
