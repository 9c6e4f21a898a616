"""Saving that cannot lose the last good copy, wherever it is cut short.

The new text goes into a file beside the old one and is forced to the disk; the old file is given a second name,
`NAME.before`; then the new file takes the old one's place in one step. At every moment the name holds a whole file.
What something else has written there meanwhile is not overwritten unless the caller says so.
"""

import errno
import os
import secrets
import shutil
import stat
import time
import zlib
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from chartmaker.files.fingerprint import Fingerprint, fingerprint_from, require_unchanged
from chartmaker.files.problems import UserProblem
from chartmaker.files.toml_text import MOST_BYTES

BEFORE = ".before"
"""Added to a file's name for the copy that stood there before the last save."""
_NEW = ".new"
_ABANDONED_S = 3600
"""A half-written file of this age was left by a program that was killed."""

_T = TypeVar("_T")


class Disk:
    """The steps that saving takes, each as the system does it; tests put one in its place that fails or dies."""

    def create(self, path: Path, data: bytes) -> None:
        """Write a file that must not be there yet, and force it to the disk."""
        with path.open("xb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())

    def set_mode(self, path: Path, mode: int) -> None:
        """Give a file the permissions of another."""
        path.chmod(mode)

    def duplicate(self, old: Path, new: Path) -> None:
        """Give a file a second name; where the file system has no such thing, make a copy and force it to the disk."""
        try:
            os.link(old, new)
        except OSError:
            shutil.copy2(old, new)
            with new.open("rb+") as file:
                os.fsync(file.fileno())

    def move_over(self, new: Path, old: Path) -> None:
        """Put a file in the place of another, or of none, in one step."""
        new.replace(old)

    def settle_folder(self, folder: Path) -> None:
        """Force the names in a folder to the disk, where the system lets a folder be opened for that."""
        if os.name != "posix":
            return
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        except OSError as problem:
            if problem.errno not in {errno.EINVAL, errno.ENOTSUP}:  # some network disks cannot, and need not
                raise
        finally:
            os.close(handle)

    def remove(self, path: Path) -> None:
        """Take away a file, if it is there."""
        path.unlink(missing_ok=True)


def save_checked(
    thing: _T,
    path: Path,
    *,
    write: Callable[[_T], str],
    read: Callable[[str, str], _T],
    expected: Fingerprint | None = None,
) -> Fingerprint:
    """Save a value as text, once that text was read back and gave the same value; give the file's new fingerprint.

    Raises UserProblem where it cannot be written, or could not be opened again, and ChangedMeanwhile where the file is
    not as `expected`; the file is then as it was.
    """
    text, where = write(thing), str(path)
    data = _encoded(text, where)
    if read(text, where) != thing:
        raise UserProblem("what would be written does not read back the same, so nothing was saved", where=where)
    return write_safely(path, data, expected=expected)


def write_safely(
    path: Path,
    data: bytes,
    *,
    keep_previous: bool = True,
    expected: Fingerprint | None = None,
    disk: Disk | None = None,
) -> Fingerprint:
    """Put these bytes into a file, in one step; with `keep_previous`, what stood there stays as `NAME.before`.

    A link is followed to its file, the file's permissions stay, and bytes that stand there already are left alone.
    Gives the fingerprint of the file as it is then. Raises ChangedMeanwhile where the file is not as `expected` (None
    is whatever it may be), UserProblem where any step fails; both leave the file as it was.
    """
    disk = disk or Disk()
    try:
        target = path.resolve()
        old = _Old(target, _mode_of(target), expected)
        if old.mode is not None and target.read_bytes() == data:
            return fingerprint_from(target.stat(), data)
        _replace(old, data, keep_previous=keep_previous, disk=disk)
        written = fingerprint_from(target.stat(), data)
    except (OSError, ValueError, RuntimeError) as problem:  # a path with a zero byte; links that lead round in a circle
        now = "what stood there is as it was; save under another name or in another place"
        raise UserProblem(f"it could not be saved: {_reason(problem)}", where=str(path), now=now) from problem
    try:
        disk.settle_folder(target.parent)
    except OSError as problem:
        what = f"it was saved, but the disk does not confirm it: {_reason(problem)}"
        raise UserProblem(what, where=str(path), now="save it in another place as well") from problem
    with suppress(OSError):
        _sweep(target, disk)
    return written


def _reason(problem: Exception) -> str:
    told = (problem.strerror if isinstance(problem, OSError) else None) or str(problem)
    return told[:1].lower() + told[1:]


def _encoded(text: str, where: str) -> bytes:
    try:
        data = text.encode("utf-8")
    except UnicodeEncodeError as problem:
        sign = ascii(text[problem.start])
        raise UserProblem(f"it could not be saved: {sign} is half a character", where=where) from None
    if len(data) > MOST_BYTES:
        what = f"it could not be saved: it would be larger than {MOST_BYTES // 1024**2} MB"
        raise UserProblem(what, where=where, now="take lots or readings out of it")
    return data


def _mode_of(target: Path) -> int | None:
    """Give the permissions of the file that is there, or None where there is none yet."""
    try:
        found = target.stat().st_mode
    except FileNotFoundError:
        return None
    if stat.S_ISDIR(found):
        raise IsADirectoryError(errno.EISDIR, "this is a folder")
    if not stat.S_ISREG(found):
        raise OSError(errno.EINVAL, "this is not an ordinary file")
    if not os.access(target, os.W_OK):
        raise PermissionError(errno.EACCES, "the file is protected against writing")
    return stat.S_IMODE(found)


@dataclass(frozen=True, slots=True)
class _Old:
    """What stands where a save goes."""

    path: Path
    mode: int | None
    """Its permissions; None where nothing is there yet."""
    expected: Fingerprint | None

    def require_expected(self) -> None:
        """Raise ChangedMeanwhile where it is not what was expected."""
        if self.expected:
            require_unchanged(self.path, self.expected)


def _replace(old: _Old, data: bytes, *, keep_previous: bool, disk: Disk) -> None:
    mark = f"{_mark_of(old.path)}{secrets.token_hex(4)}"
    new, spare = old.path.with_name(f"{mark}{_NEW}"), old.path.with_name(f"{mark}{BEFORE}")
    try:
        disk.create(new, data)
        if old.mode is not None:
            disk.set_mode(new, old.mode)
        old.require_expected()  # as late as can be, since writing may take a while
        if old.mode is not None and keep_previous:
            disk.duplicate(old.path, spare)
            disk.move_over(spare, old.path.with_name(old.path.name + BEFORE))
        disk.move_over(new, old.path)
    except BaseException:
        for leftover in (new, spare):
            with suppress(OSError):
                disk.remove(leftover)
        raise


def _mark_of(target: Path) -> str:
    """Give how the files begin that stand beside a target for the time of a save; short, whatever its name."""
    return f".{zlib.crc32(os.fsencode(target.name)):08x}-"


def _sweep(target: Path, disk: Disk) -> None:
    """Take away what saves of this file have left that were killed long ago."""
    for leftover in target.parent.glob(f"{_mark_of(target)}*"):
        found = leftover.lstat()
        age_s = time.time() - max(
            found.st_mtime, found.st_ctime
        )  # a second name has its file's times, but for the last
        if leftover.suffix in {_NEW, BEFORE} and age_s > _ABANDONED_S:
            disk.remove(leftover)
