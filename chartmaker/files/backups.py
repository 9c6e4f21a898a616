"""Copies of the last saves of each design, in the program's own folder; `NAME.before` beside a design is another thing.

`FOLDER/NAME-KEY/TIME.hat.toml`: the name is for people, the key tells designs of one name apart.
"""

import datetime as dt
import re
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from chartmaker.files.claims import path_key
from chartmaker.files.problems import UserProblem
from chartmaker.files.saving import Disk
from chartmaker.files.state_folder import made_folder
from chartmaker.files.toml_text import text_of_file

MOST_COPIES = 6
"""Copies of one design: the file as it stands, and the five saves before."""
MOST_DESIGNS = 200
"""Designs with copies; those saved longest ago lose theirs first."""
ENDING = ".hat.toml"
_TIME = "%Y-%m-%dT%H-%M-%S.%fZ"
_NEW = ".new"
_LONGEST_NAME = 40


@dataclass(frozen=True, slots=True)
class SavedCopy:
    """A design as it was saved once; `read_design` reads it."""

    file: Path
    saved_at: dt.datetime
    """With its time zone, which is UTC."""


class Backups:
    """The folder of all copies."""

    def __init__(self, folder: Path, *, disk: Disk | None = None) -> None:
        """Take the folder, which need not be there yet."""
        self.folder = folder
        self._disk = disk or Disk()

    def keep(self, path: Path) -> None:
        """Copy a design as it stands in its file, unless the newest copy is the same or there is no file.

        To be called before a save, for what something else may have written there, and after it.
        Raises UserProblem where it cannot be copied; the design's file is never touched.
        """
        try:
            if path.exists():
                self._keep(path, text_of_file(path).encode())
        except (OSError, ValueError) as problem:
            told = (problem.strerror if isinstance(problem, OSError) else None) or problem
            raise UserProblem(f"no copy of this save could be kept: {told}", where=str(path)) from problem

    def of(self, path: Path) -> tuple[SavedCopy, ...]:
        """List the copies of a design, newest first; its own file need not be there any more.

        Raises UserProblem for what no file can be called.
        """
        return _copies_in(self._folder_of(path))

    def _folder_of(self, path: Path) -> Path:
        name = re.sub(r"[^\w-]+", "-", path.name.removesuffix(ENDING))[:_LONGEST_NAME]
        return self.folder / f"{name}-{path_key(path)}"

    def _keep(self, path: Path, data: bytes) -> None:
        copies = self.of(path)
        if copies and copies[0].file.read_bytes() == data:
            return
        folder = made_folder(self._folder_of(path))
        now = dt.datetime.now(dt.UTC)
        if copies:  # a clock that was set back must not make this the older one
            now = max(now, copies[0].saved_at + dt.timedelta(microseconds=1))
        file = folder / f"{now.strftime(_TIME)}{ENDING}"
        new = file.with_suffix(_NEW)
        self._disk.create(new, data)
        self._disk.move_over(new, file)
        for old in (*(copy.file for copy in copies[MOST_COPIES - 1 :]), *folder.glob(f"*{_NEW}")):
            self._remove(old)
        self._tidy()

    def _tidy(self) -> None:
        """Clear away the copies of the designs that were saved longest ago."""
        folders = [one for one in self.folder.iterdir() if one.is_dir()]
        if len(folders) <= MOST_DESIGNS:
            return
        folders.sort(key=lambda one: max((file.name for file in one.iterdir()), default=""), reverse=True)
        for folder in folders[MOST_DESIGNS:]:
            for file in folder.iterdir():
                self._remove(file)
            with suppress(OSError):
                folder.rmdir()

    def _remove(self, file: Path) -> None:
        with suppress(OSError):
            self._disk.remove(file)


def _copies_in(folder: Path) -> tuple[SavedCopy, ...]:
    """Give the copies in a folder, newest first; what is called otherwise is none."""
    copies = []
    for file in folder.glob(f"*{ENDING}"):
        with suppress(ValueError):
            saved_at = dt.datetime.strptime(file.name.removesuffix(ENDING), _TIME).replace(tzinfo=dt.UTC)
            copies.append(SavedCopy(file, saved_at))
    return tuple(sorted(copies, key=lambda copy: copy.saved_at, reverse=True))
