"""A cursor on one table of a file: it knows its path, hands out checked values, and notes what is wrong on the way.

Reading goes on past a problem, so that one message can tell of all. Where a value cannot be made, a stand-in takes its
place; what was read is then thrown away, because the gathered problems refuse the file in the end.
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any, TypeVar

from chartmaker.files.problems import ProblemList
from chartmaker.files.values import Reader, kind_of

_T = TypeVar("_T")


class Table:
    """One table, and the keys of it that were asked for."""

    def __init__(self, data: Mapping[str, object], problems: ProblemList, *, path: str = "") -> None:
        """Take the plain data, the list that gathers problems, and the table's own path (empty for the whole file)."""
        self._data = data
        self._problems = problems
        self._path = path
        self._known: dict[str, None] = {}

    def __contains__(self, key: str) -> bool:
        """Tell whether the file gives this key, and count it among the known ones."""
        self._known[key] = None
        return key in self._data

    def path_of(self, key: str) -> str:
        """Give the path of a key of this table, as messages tell it; of the table itself where the key is empty."""
        shown = key if re.fullmatch(r"[\w.-]*", key) else repr(key)
        return ".".join(part for part in (self._path, shown) if part)

    def peek(self, key: str) -> object:
        """Give a value as it stands, unchecked; None where there is none."""
        return self._data.get(key)

    def complain(self, key: str, text: str, *, line: int = 0, word: str = "", known: Iterable[str] = ()) -> None:
        """Note a problem with the value of a key, or with a line of it, counted from 1.

        Where `word` resembles one of `known`, that one is suggested. An empty key is the table itself.
        """
        place = f", line {line}" if line else ""
        self._problems.add(self.path_of(key) + place, text, word=word, known=known)

    def fields(self, readers: Mapping[str, Reader], *, required: tuple[str, ...] = ()) -> dict[str, Any]:
        """Read the keys that are there and right; note those that are wrong, or required and missing."""
        found = {}
        for key, reader in readers.items():
            if key in self:
                try:
                    found[key] = reader(self._data[key])
                except ValueError as problem:
                    self.complain(key, str(problem))
            elif key in required:
                self.complain(key, "is missing")
        return found

    def build(self, stand_in: _T, fields: Mapping[str, Any], *, keys: Mapping[str, str] | None = None) -> _T:
        """Give `stand_in` with these fields, or note which of them the model refuses and give what can be made.

        `stand_in` is a valid value that holds the model's default wherever it has one. `keys` tells the file's key of a
        field where the two differ.
        """
        try:
            return _replaced(stand_in, fields)
        except ValueError:
            settled, refused = _settled(stand_in, fields)
        for field, sentence in refused.items():
            self.complain((keys or {}).get(field, field), sentence)
        return settled

    def inner(self, key: str) -> "Table":
        """Give the table under a key; an empty one where there is none, or where it is no table, which is noted."""
        value = self._data.get(key, {}) if key in self else {}
        if not isinstance(value, dict):
            self.complain(key, f"must be a table, not {kind_of(value)}")
            value = {}
        return Table(value, self._problems, path=self.path_of(key))

    def tables(self, key: str, *, most: int | None = None) -> list["Table"]:
        """Give the tables of an array, their paths counted from 1; none where more than `most` stand there."""
        value = self._data.get(key, []) if key in self else []
        if not isinstance(value, list):
            self.complain(key, f"must be an array of tables, not {kind_of(value)}")
            return []
        if most is not None and len(value) > most:
            self.complain(key, f"there are {len(value)}, more than {most}")
            return []
        found = []
        for number, each in enumerate(value, start=1):
            path = f"{self.path_of(key)}[{number}]"
            if isinstance(each, dict):
                found.append(Table(each, self._problems, path=path))
            else:
                self._problems.add(path, f"must be a table, not {kind_of(each)}")
        return found

    def items(self) -> list[tuple[str, object]]:
        """Give all keys and values as they stand, and count every key as known."""
        self._known.update(dict.fromkeys(self._data))
        return list(self._data.items())

    def close(self) -> None:
        """Note every key that nobody asked for, with the name that it may have been meant to be."""
        asked = tuple(self._known)
        for key in self._data:
            if key not in self._known:
                self.complain(key, "unknown key", word=key, known=asked)


def _replaced(value: _T, fields: Mapping[str, Any]) -> _T:
    changed: _T = replace(value, **fields)  # type: ignore[type-var]  # every value of the model is a dataclass
    return changed


def _settled(value: _T, fields: Mapping[str, Any]) -> tuple[_T, dict[str, str]]:
    """Put in the fields one at a time; those refused wait for another turn, since rules may hold between fields."""
    waiting = dict(fields)
    refused: dict[str, str] = {}
    while waiting:
        refused = {}
        for field, given in waiting.items():
            try:
                value = _replaced(value, {field: given})
            except ValueError as problem:
                refused[field] = str(problem)
        if len(refused) == len(waiting):
            break
        waiting = {field: fields[field] for field in refused}
    return value, refused
