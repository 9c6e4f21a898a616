"""Which format a file is in, which version of it, and the steps that bring an older one up to the newest.

History of `chartmaker-design`: 1, the first. History of `chartmaker-palette`: 1, the first.
History of `chartmaker-motif`: 1, the first.
"""

from collections.abc import Callable, Mapping

from chartmaker.files.problems import refusal
from chartmaker.files.values import kind_of

Plain = dict[str, object]
Steps = Mapping[int, Callable[[Plain], Plain]]
"""For each old version, the function that makes the next one of its plain data."""

KINDS = {"chartmaker-design": "a design", "chartmaker-palette": "a palette", "chartmaker-motif": "a motif"}
"""The word that each file gives as its `format`, and what a message calls it."""
NEWEST = 1
"""The version that is written."""
STEPS: Steps = {}
"""Empty while version 1 is the only one."""


def brought_up(data: Plain, name: str, *, kind: str, newest: int = NEWEST, steps: Steps = STEPS) -> Plain:
    """Give the data of a file of this kind as of the newest version; `name` is what messages call the file.

    Raises FileRefused for another format, for no version, and for one that is newer than this program.
    """
    _require_format(data, name, kind)
    version = data.get("version")
    if version is None:
        raise refusal("version: is missing", where=name)
    if isinstance(version, bool) or not isinstance(version, int):
        raise refusal(f"version: must be a whole number, not {kind_of(version)}", where=name)
    if version < 1:
        raise refusal("version: the first is 1", where=name)
    if version > newest:
        what = f"it was written by a newer Chartmaker, in version {_short(version)}; this one reads up to {newest}"
        raise refusal(what, where=name, now="it is left as it is")
    for old in range(version, newest):
        data = {**steps[old](data), "version": old + 1}
    return data


def _require_format(data: Plain, name: str, kind: str) -> None:
    given = data.get("format")
    if given is None:
        raise refusal(f"format: is missing; {KINDS[kind]} says format = {kind!r}", where=name)
    if isinstance(given, str) and given in KINDS and given != kind:
        raise refusal(f"this is {KINDS[given]}, not {KINDS[kind]}", where=name)
    if given != kind:
        shown = repr(given) if isinstance(given, str) else kind_of(given)
        raise refusal(f"format: is {shown}; {KINDS[kind]} says {kind!r}", where=name)


def _short(version: int) -> str:
    return str(version) if version < 10**9 else "far ahead"
