"""Unsaved work that outlives the program: kept while it is done, offered after a crash, removed when saved or given up.

One folder for all windows of a user. Each session (a running program) holds a lock there until it ends, however it
ends; work whose session is gone is offered to the next. A piece of work is taken up by renaming its file, which the
system lets only one session do.
"""

import datetime as dt
import secrets
import stat
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Self

from chartmaker.files.design_reading import design_from_text
from chartmaker.files.draft import NEW, Draft
from chartmaker.files.fingerprint import Fingerprint, has_changed
from chartmaker.files.lock import HeldElsewhereError, Lock, is_held
from chartmaker.files.problems import UserProblem
from chartmaker.files.recovery_file import MOST_KEPT_BYTES, NewerWork, Note, without_note
from chartmaker.files.saving import Disk
from chartmaker.files.state_folder import made_folder
from chartmaker.model.design import Design

MOST_LEFT = 50
"""Pieces of work of ended sessions that stay; the oldest go first."""
OLDEST_S = 90 * 24 * 3600
"""The age past which such a piece goes."""
BROKEN = "broken"
"""The folder, within the store's, of files that could not be read."""
_WORK, _LOCK = ".hat.toml", ".lock"


@dataclass(frozen=True, slots=True)
class LeftWork:
    """Unsaved work of a session that is gone."""

    file: Path
    """Where it is kept."""
    note: Note
    has_file_changed: bool
    """Whether the design's own file is not what this work began from: saved or written by something since, or gone."""

    @property
    def title(self) -> str:
        """The design's title; may be empty."""
        return self.note.title

    @property
    def path(self) -> Path | None:
        """The design's own file; None where it was never saved."""
        return self.note.path

    @property
    def kept_at(self) -> dt.datetime:
        """When it was kept, with its time zone."""
        return self.note.kept_at


@dataclass(frozen=True, slots=True)
class Found:
    """What a look for left work found."""

    works: tuple[LeftWork, ...]
    """Newest first."""
    problems: tuple[UserProblem, ...]
    """A sentence for each file that cannot be offered; those that are broken were put aside."""


@dataclass(frozen=True, slots=True)
class Restored:
    """Left work that is open again, and kept on by this session."""

    design: Design
    path: Path | None
    """The design's own file, which does not hold this work; None where it was never saved."""
    based_on: Fingerprint | None
    """What that file was like when the work began; a save should expect it."""
    draft: Draft


class RecoveryStore:
    """The folder in which unsaved work is kept, as one session has it; close it when the program ends."""

    def __init__(self, folder: Path, *, disk: Disk | None = None) -> None:
        """Begin a session.

        Raises UserProblem where nothing can be kept or locked in the folder.
        """
        self.folder = made_folder(folder)
        self._disk = disk or Disk()
        self._lock = _new_session(folder)
        self.session = self._lock.path.stem
        self._count = 0

    def draft(self) -> Draft:
        """Give the place for the unsaved work of one more open design; nothing is written yet."""
        self._count += 1
        return Draft(self.folder / f"{self.session}-{self._count}{_WORK}", self.session, self._disk)

    def left(self) -> Found:
        """Look for work of sessions that are gone.

        Clears away what is past the bounds, and work that was saved after all.
        """
        works: list[LeftWork] = []
        problems: list[UserProblem] = []
        for file in sorted(self._ended(_WORK)):
            try:
                work = self._looked_at(file)
            except NewerWork as problem:
                problems.append(problem)
            except UserProblem as problem:
                problems.append(self._put_aside(file, problem))
            else:
                works += [work] if work else []
        works.sort(key=lambda work: work.kept_at, reverse=True)
        kept = [work for work in works[:MOST_LEFT] if _age_s(work.kept_at) <= OLDEST_S]
        for work in works:
            if work not in kept:
                self.give_up(work)
        self._tidy()
        return Found(tuple(kept), tuple(problems))

    def restore(self, work: LeftWork) -> Restored:
        """Take up left work as this session's own; it stays kept until it is saved or given up.

        Raises UserProblem where another window took it meanwhile, or where the design in it cannot be read; then it is
        put aside, with its text for mending by hand.
        """
        draft = self.draft()
        try:
            work.file.replace(draft.file)
            note, body = without_note(_bytes_of(draft.file), str(draft.file))
            design = design_from_text(body.decode("utf-8"), str(work.path or work.title))
        except FileNotFoundError as problem:
            what = "this unsaved work is no longer there; another window took it or gave it up"
            raise UserProblem(what, where=str(work.path or work.title)) from problem
        except (OSError, UnicodeDecodeError) as problem:
            raise UserProblem(f"this unsaved work cannot be read: {problem}", where=str(draft.file)) from problem
        except UserProblem as problem:
            raise self._put_aside(draft.file, problem) from problem
        return Restored(design, note.path, note.based_on, draft)

    def give_up(self, work: LeftWork) -> None:
        """Remove left work for good."""
        with suppress(OSError):
            self._disk.remove(work.file)

    def close(self) -> None:
        """End the session; work that is still kept is offered to the next."""
        self._lock.release()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _looked_at(self, file: Path) -> LeftWork | None:
        """Give what a file holds; None, and it is gone, where the design's own file holds the same.

        Raises UserProblem where it is broken.
        """
        try:
            note, body = without_note(_bytes_of(file), str(file))
        except FileNotFoundError:  # another session took it up just now
            return None
        except OSError as problem:
            raise UserProblem(f"it cannot be read: {problem.strerror or problem}", where=str(file)) from problem
        work = LeftWork(file, note, has_file_changed=_has_file_changed(note))
        if not _is_saved(note, body):
            return work
        self.give_up(work)
        return None

    def _put_aside(self, file: Path, problem: UserProblem) -> UserProblem:
        """Move a file that cannot be used out of the way; give the sentence that tells so."""
        aside = self.folder / BROKEN / f"{secrets.token_hex(4)}-{file.name}"
        what = f"unsaved work that was kept cannot be read: {problem.what}"
        try:
            file.replace(made_folder(aside.parent) / aside.name)
        except (OSError, UserProblem):
            return UserProblem(what, where=str(file))
        return UserProblem(what, where=str(aside), now="it was put aside there, and can be mended by hand")

    def _ended(self, ending: str) -> Iterator[Path]:
        """Walk the files of sessions that are gone."""
        held = {self.session: True}
        for file in self.folder.glob(f"*{ending}"):
            session = file.name.split("-")[0].removesuffix(_LOCK)
            if session not in held:
                held[session] = is_held(self.folder / f"{session}{_LOCK}")
            if not held[session]:
                yield file

    def _tidy(self) -> None:
        """Clear away what killed sessions have left beside their work, and what is broken and old."""
        aside = sorted((self.folder / BROKEN).glob("*"), key=_age_of_file_s)
        old = [file for place, file in enumerate(aside) if place >= MOST_LEFT or _age_of_file_s(file) > OLDEST_S]
        for file in [*self._ended(_LOCK), *self._ended(NEW), *old]:
            with suppress(OSError):
                self._disk.remove(file)


def _new_session(folder: Path) -> Lock:
    while True:
        with suppress(HeldElsewhereError):  # somebody tidied it away before it was held
            return Lock(folder / f"{secrets.token_hex(8)}{_LOCK}")


def _bytes_of(file: Path) -> bytes:
    if not stat.S_ISREG(file.stat().st_mode):  # a pipe could keep us waiting for ever
        raise OSError("it is no ordinary file")
    with file.open("rb") as opened:
        return opened.read(MOST_KEPT_BYTES)


def _has_file_changed(note: Note) -> bool:
    if note.path is None or note.based_on is None:
        return False
    try:
        return has_changed(note.path, note.based_on)
    except UserProblem:  # as far as can be seen, it is not what it was
        return True


def _is_saved(note: Note, body: bytes) -> bool:
    """Whether the design's own file holds just this: its session ended between saving and clearing up."""
    try:
        return note.path is not None and note.path.stat().st_size == len(body) and note.path.read_bytes() == body
    except (OSError, ValueError):
        return False


def _age_s(since: dt.datetime) -> float:
    return (dt.datetime.now(dt.UTC) - since).total_seconds()


def _age_of_file_s(file: Path) -> float:
    try:
        return _age_s(dt.datetime.fromtimestamp(file.stat().st_mtime, dt.UTC))
    except OSError:
        return 0.0
