"""The file that unsaved work is kept in: a design as it would be saved, under two lines of comment that say whose.

A person can open it as a design, or mend it by hand. The second line is JSON; its `digest` is of what follows, so that
a file cut short or overwritten is told from a whole one.

History of the format: 1, the first.
"""

import datetime as dt
import json
from dataclasses import asdict, dataclass
from pathlib import Path

from chartmaker.files.fingerprint import Fingerprint, digest_of
from chartmaker.files.problems import UserProblem
from chartmaker.files.toml_text import MOST_BYTES
from chartmaker.files.versions import NEWEST

VERSION = 1
_OPENING = b"# Unsaved work that Chartmaker kept. The next line says of what; the design follows.\n"
_LONGEST_NOTE = 400_000
"""Bytes of the second line: a title and a path, every sign of them escaped, are shorter."""
MOST_KEPT_BYTES = MOST_BYTES + _LONGEST_NOTE


@dataclass(frozen=True, slots=True, kw_only=True)
class Note:
    """Whose unsaved work a file holds."""

    title: str
    path: Path | None
    """The design's own file; None where it was never saved."""
    based_on: Fingerprint | None
    """What that file was like when it was last opened or saved; None where that is not known."""
    kept_at: dt.datetime
    """With its time zone."""
    process: int
    session: str


class NewerWork(UserProblem):
    """Unsaved work that a newer Chartmaker kept, and that is left to it."""


def with_note(note: Note, text: str) -> bytes:
    """Give the bytes of the file; a character that no file can hold becomes a question mark, and the rest is kept."""
    body = text.encode("utf-8", "replace")
    told = {
        "version": VERSION,
        "design_version": NEWEST,
        "digest": digest_of(body),
        **asdict(note),
        "path": None if note.path is None else str(note.path),
        "kept_at": note.kept_at.isoformat(),
    }
    line = json.dumps(told).replace("\x7f", "\\u007f")  # which JSON leaves as it is, and TOML bars from comments
    return b"".join((_OPENING, b"# ", line.encode("ascii"), b"\n", body))


def without_note(data: bytes, where: str) -> tuple[Note, bytes]:
    """Take such a file's bytes apart into its note and the design's text.

    Raises UserProblem where they are no whole one; `where` is what messages call it.
    """
    opening, line, body = _parts(data, where)
    try:
        told = json.loads(line)
        is_newer = told["version"] > VERSION or told["design_version"] > NEWEST
        note = None if is_newer else _note(told)
        is_whole = opening == _OPENING and told.get("digest") == digest_of(body)
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError) as problem:
        raise UserProblem("its second line does not say whose work it is", where=where) from problem
    if note is None:
        raise NewerWork("it was kept by a newer Chartmaker", where=where, now="it is left as it is")
    if not is_whole:
        raise UserProblem("it is not as it was written", where=where)
    return note, body


def _parts(data: bytes, where: str) -> tuple[bytes, bytes, bytes]:
    first = data.find(b"\n") + 1
    second = data.find(b"\n", first) + 1
    if not first or not second or not data.startswith(b"# ", first):
        raise UserProblem("it is cut short, or no unsaved work", where=where)
    return data[:first], data[first + 2 : second], data[second:]


def _note(told: dict[str, object]) -> Note:
    """Make the note of what the line tells.

    Raises ValueError, TypeError or KeyError where that is not a note.
    """
    kept_at = dt.datetime.fromisoformat(_text(told["kept_at"]))
    if kept_at.tzinfo is None:
        raise ValueError("a time without its zone")
    return Note(
        title=_text(told["title"]),
        path=None if told["path"] is None else Path(_text(told["path"])),
        based_on=None if told["based_on"] is None else _fingerprint(told["based_on"]),
        kept_at=kept_at,
        process=_whole(told["process"]),
        session=_text(told["session"]),
    )


def _fingerprint(told: object) -> Fingerprint:
    if not isinstance(told, dict):
        raise TypeError("no fingerprint")
    return Fingerprint(
        size=_whole(told["size"]),
        mtime_ns=_whole(told["mtime_ns"]),
        inode=_whole(told["inode"]),
        digest=_text(told["digest"]),
        is_settled=told["is_settled"] is True,
    )


def _text(value: object) -> str:
    if not isinstance(value, str):
        raise TypeError("no text")
    return value


def _whole(value: object) -> int:
    if not isinstance(value, int):
        raise TypeError("no whole number")
    return value
