"""Who has a design open, so that two windows do not overwrite each other.

The lock stands in the program's own folder, not beside the design: it works where the design's folder is read-only, and
leaves nothing there. Windows of one user see each other so; what another user, machine or program does to the file is
noticed by its fingerprint when it is saved.
"""

import datetime as dt
import hashlib
import json
import os
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Self

from chartmaker.files.lock import HeldElsewhereError, Lock, note_of
from chartmaker.files.problems import UserProblem

_FOLDS_CASE = sys.platform in {"win32", "darwin"}
"""Whether names that differ in case alone name one file, as a rule, on this system."""


@dataclass(frozen=True, slots=True)
class Holder:
    """Who has a design open."""

    process: int
    """The process's number; 0 where it is not known."""
    since: dt.datetime | None
    """When it took the design, with its time zone; None where it is not known."""


@dataclass(slots=True)
class Claim:
    """A design that this window has to itself (`is_ours`), or that it found another one to have."""

    path: Path
    holder: Holder
    _lock: Lock | None

    @property
    def is_ours(self) -> bool:
        """Whether this window may save the design in its place."""
        return self._lock is not None

    def release(self) -> None:
        """Let others have it; a second time, or for a claim that is not ours, does nothing."""
        if self._lock:
            self._lock.release()
            self._lock = None

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.release()


def claim(path: Path, folder: Path) -> Claim:
    """Try to have a design, which need not be there yet, to oneself; `folder` is where all windows keep the locks.

    A lock of a process that is gone counts for nothing. Raises UserProblem where nothing can be locked in the folder.
    """
    lock_path = folder / f"{path_key(path)}.lock"
    try:
        lock = Lock(lock_path)
    except HeldElsewhereError:
        return Claim(path, _holder(note_of(lock_path)), None)
    ours = Holder(os.getpid(), dt.datetime.now(dt.UTC))
    lock.note(json.dumps({"process": ours.process, "since": str(ours.since), "path": str(path)}))
    return Claim(path, ours, lock)


def path_key(path: Path) -> str:
    """Give a short text, fit for a file's name, that is the same for every way to write a path.

    Raises UserProblem for what no file can be called, and for links that lead round in a circle.
    """
    try:
        whole = os.path.normcase(path.resolve())
        named = os.fsencode(whole.casefold() if _FOLDS_CASE else whole)
    except (OSError, ValueError, RuntimeError) as problem:
        raise UserProblem(f"this is no path to a file: {problem}", where=str(path)) from problem
    return hashlib.blake2b(named, digest_size=10).hexdigest()


def _holder(note: str) -> Holder:
    """Read who left the note; a claim holds, whatever its note says."""
    try:
        told = json.loads(note)
        return Holder(int(told["process"]), dt.datetime.fromisoformat(told["since"]))
    except (ValueError, TypeError, KeyError, RecursionError):
        return Holder(0, None)
