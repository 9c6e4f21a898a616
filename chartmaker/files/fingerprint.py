"""Whether a file is still what it was when it was opened or saved, or whether something else wrote it meanwhile."""

import hashlib
import os
import stat
import time
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from chartmaker.files.problems import UserProblem
from chartmaker.files.toml_text import MOST_BYTES

Standing = Literal["same", "changed", "gone"]
"""How a file stands to its fingerprint."""

_SETTLED_NS = 3_000_000_000
"""A file written so shortly before a look may be written again under the same time: FAT counts in steps of 2 s."""


class ChangedMeanwhile(UserProblem):
    """A save that was refused because something else wrote, moved or removed the file since it was opened."""

    def __init__(self, standing: Standing, *, where: str) -> None:
        """Take how the file stands now."""
        self.standing = standing
        if standing == "gone":
            what = "it was not saved: the file is not there any more; something else moved or removed it"
        else:
            what = "it was not saved: something else has changed the file since it was opened"
        super().__init__(what, where=where, now="save it under another name, or over what is there now")


@dataclass(frozen=True, slots=True, kw_only=True)
class Fingerprint:
    """What a file was like at one moment."""

    size: int
    """Bytes."""
    mtime_ns: int
    """When it was last written, as the file system has it; nanoseconds since 1970."""
    inode: int
    """The file system's number of the file; saving in one step gives a new one."""
    digest: str
    """BLAKE2b of its bytes."""
    is_settled: bool
    """Whether its time lay so far back that a later write must show in it."""


def fingerprint_of(path: Path) -> Fingerprint:
    """Take the fingerprint of a file that is there.

    Raises UserProblem where it cannot be read, or is larger than any design.
    """
    try:
        with path.open("rb") as file:
            found = os.fstat(file.fileno())
            data = file.read(MOST_BYTES + 1)
    except (OSError, ValueError) as problem:
        raise _unseen(path, problem) from problem
    if len(data) > MOST_BYTES:
        raise UserProblem(f"the file is larger than {MOST_BYTES // 1024**2} MB", where=str(path))
    return fingerprint_from(found, data)


def fingerprint_from(found: os.stat_result, data: bytes) -> Fingerprint:
    """Make the fingerprint of a file from its status and the bytes that are in it."""
    return Fingerprint(
        size=len(data),
        mtime_ns=found.st_mtime_ns,
        inode=found.st_ino,
        digest=digest_of(data),
        is_settled=time.time_ns() - found.st_mtime_ns > _SETTLED_NS,
    )


def standing_of(path: Path, before: Fingerprint) -> Standing:
    """Say how a file stands to what it was; a new time over the same bytes is no change.

    Raises UserProblem where the system does not let it be looked at.
    """
    try:
        found = path.stat()
        if not stat.S_ISREG(found.st_mode) or found.st_size != before.size:
            return "changed"
        looks_same = (found.st_mtime_ns, found.st_ino) == (before.mtime_ns, before.inode)
        if looks_same and before.is_settled:
            return "same"
        return "same" if digest_of(path.read_bytes()) == before.digest else "changed"
    except (FileNotFoundError, NotADirectoryError):
        return "gone"
    except (OSError, ValueError) as problem:
        raise _unseen(path, problem) from problem


def has_changed(path: Path, before: Fingerprint) -> bool:
    """Whether a file is not what it was: written by something else, or gone.

    Raises UserProblem where the system does not let it be looked at.
    """
    return standing_of(path, before) != "same"


def require_unchanged(path: Path, before: Fingerprint) -> None:
    """Do nothing where a file is what it was.

    Raises ChangedMeanwhile where it is not, and UserProblem where the system does not let it be looked at.
    """
    standing = standing_of(path, before)
    if standing != "same":
        raise ChangedMeanwhile(standing, where=str(path))


def digest_of(data: bytes) -> str:
    """Give a text that differs wherever the bytes do."""
    return hashlib.blake2b(data, digest_size=16).hexdigest()


def _unseen(path: Path, problem: Exception) -> UserProblem:
    told = (problem.strerror if isinstance(problem, OSError) else None) or str(problem)
    return UserProblem(f"the file cannot be looked at: {told[:1].lower()}{told[1:]}", where=str(path))
