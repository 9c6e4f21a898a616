"""A lock that ends with its process, however that ends: the system's own, on a file made for nothing else.

Written on the standard library's `fcntl` and `msvcrt` rather than with a lock library: the two that are usual take some
40 ms to import, more than the window has to spare, for the four calls that are needed here.
"""

import errno
import os
import sys
import time
from contextlib import suppress
from pathlib import Path

from chartmaker.files.problems import UserProblem
from chartmaker.files.state_folder import made_folder

_HELD = {errno.EAGAIN, errno.EWOULDBLOCK, errno.EACCES, errno.EDEADLK, errno.ENOENT}
"""What the systems answer when another holds the lock, or has just taken its file away."""
_TRIES = 4
_PAUSE_S = 0.005
"""Somebody who only looks has the lock for an instant, so that one refusal is not taken for an answer."""
_LONGEST_NOTE = 4096

if sys.platform == "win32":
    import msvcrt

    _TRIES_TO_LOOK = _TRIES
    _FAR = 1 << 30
    """Locked bytes cannot be read on Windows, so one is locked far behind the note."""

    def _lock(handle: int, *, shared: bool) -> None:  # noqa: ARG001 - there is no shared lock here
        os.lseek(handle, _FAR, os.SEEK_SET)
        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        os.lseek(handle, 0, os.SEEK_SET)
else:
    import fcntl

    _TRIES_TO_LOOK = 1  # those who look share the lock, and none stands in another's way

    def _lock(handle: int, *, shared: bool) -> None:
        fcntl.flock(handle, (fcntl.LOCK_SH if shared else fcntl.LOCK_EX) | fcntl.LOCK_NB)


class HeldElsewhereError(Exception):
    """Another open lock, of this process or of another one, has the file."""


class Lock:
    """A lock that is held until `release`, or until the process is gone; its file may carry a note for others."""

    def __init__(self, path: Path) -> None:
        """Take the lock of this file, which is made if need be.

        Raises HeldElsewhereError where another has it, and UserProblem where the system can lock nothing here.
        """
        made_folder(path.parent)
        self.path = path
        self._handle = _patiently(path, os.O_RDWR | os.O_CREAT, shared=False, tries=_TRIES)

    def note(self, text: str) -> None:
        """Leave a text, of at most some thousand characters, for whoever finds the lock held."""
        with suppress(OSError):  # the lock holds without it
            os.ftruncate(self._handle, 0)
            os.lseek(self._handle, 0, os.SEEK_SET)
            os.write(self._handle, text.encode("utf-8", "replace")[:_LONGEST_NOTE])

    def release(self) -> None:
        """Let the lock go and take its file away; a second time does nothing."""
        if self._handle < 0:
            return
        if sys.platform != "win32":
            with suppress(OSError):  # before it is let go: nobody can have taken it again yet
                self.path.unlink()
        os.close(self._handle)
        self._handle = -1
        if sys.platform == "win32":
            with suppress(OSError):  # after it: Windows takes no open file away
                self.path.unlink()


def note_of(path: Path) -> str:
    """Give the note that the holder of a lock left; empty where there is none, or none yet."""
    try:
        with path.open("rb") as file:
            return file.read(_LONGEST_NOTE).decode("utf-8", "replace")
    except OSError:
        return ""


def is_held(path: Path) -> bool:
    """Whether a living process holds the lock of this file; nothing is changed by looking."""
    try:
        handle = _patiently(path, os.O_RDWR, shared=True, tries=_TRIES_TO_LOOK)
    except HeldElsewhereError:
        return True
    except UserProblem:  # it is not there, or cannot be locked by anybody
        return False
    os.close(handle)
    return False


def _patiently(path: Path, flags: int, *, shared: bool, tries: int) -> int:
    for _ in range(tries - 1):
        with suppress(HeldElsewhereError):
            return _locked(path, flags, shared=shared)
        time.sleep(_PAUSE_S)
    return _locked(path, flags, shared=shared)


def _locked(path: Path, flags: int, *, shared: bool) -> int:
    """Open and lock; a file that its holder took away in between has no say any more, and counts as held."""
    try:
        handle = os.open(path, flags, 0o600)
    except (OSError, ValueError) as problem:
        raise _cannot(path, problem) from problem
    try:
        _lock(handle, shared=shared)
        is_still = os.path.samestat(os.fstat(handle), path.stat())
    except OSError as problem:
        os.close(handle)
        if problem.errno in _HELD:
            raise HeldElsewhereError(path) from None
        raise _cannot(path, problem) from problem
    if not is_still:
        os.close(handle)
        raise HeldElsewhereError(path)
    return handle


def _cannot(path: Path, problem: Exception) -> UserProblem:
    told = (problem.strerror if isinstance(problem, OSError) else None) or str(problem)
    return UserProblem(f"this cannot be locked: {told[:1].lower()}{told[1:]}", where=str(path))
