"""From plain data to TOML text, laid out for people: sections at the top, one-line tables and arrays within them.

tomlkit writes it, because it can set a table or an array on one line; writers that break each array over as many lines
as it has values would make a spectrum fill a screen.
"""

from collections.abc import Mapping
from typing import TypeGuard

import tomlkit
from tomlkit.container import Container
from tomlkit.items import InlineTable, Item, Table, Trivia

Plain = Mapping[str, object]

_ARRAY, _STRING = 8, 11
"""The numbers that tomlkit gives to those types."""
_ESCAPES = {code: f"\\u{code:04x}" for code in (*range(32), 127) if chr(code) not in "\t\n"} | {ord("\\"): "\\\\"}
"""What TOML does not allow as it stands in a text of several lines."""


def toml_from(data: Plain) -> str:
    """Write plain data, its keys in their order.

    At the top, a dictionary becomes a section and a list of dictionaries becomes one section each; so do
    `readings` and `record` within those. Everything deeper stands on one line. A text of several lines is written as
    such.
    """
    document = tomlkit.document()
    _fill(document, data)
    return document.as_string()


class _Written(Item):
    """A value whose TOML is written here: what tomlkit does too slowly, or differently from one release to the next."""

    def __init__(self, value: object, toml: str, *, discriminant: int) -> None:
        super().__init__(Trivia())
        self._value = value
        self._toml = toml
        self._discriminant = discriminant

    @property
    def discriminant(self) -> int:
        """The number by which tomlkit knows the type of a value."""
        return self._discriminant

    def unwrap(self) -> object:
        """Give the plain value."""
        return self._value

    def as_string(self) -> str:
        """Give the TOML."""
        return self._toml


def _fill(target: Container | Table, data: Plain, *, opens: tuple[str, ...] | None = None) -> None:
    """Add the entries; those that `opens` names, or all where it is None, may become sections of their own."""
    for key, value in data.items():
        may_open = opens is None or key in opens
        if may_open and isinstance(value, Mapping):
            section = tomlkit.table()
            _fill(section, value, opens=())
            target.append(key, section)
        elif may_open and _is_list_of_tables(value):
            sections = tomlkit.aot()
            for each in value:
                section = tomlkit.table()
                _fill(section, each, opens=("readings", "record"))
                sections.append(section)
            target.append(key, sections)
        else:
            target.append(key, _item(value))


def _is_list_of_tables(value: object) -> TypeGuard[list[Plain]]:
    return isinstance(value, list) and bool(value) and all(isinstance(each, Mapping) for each in value)


def _item(value: object) -> Item:
    if isinstance(value, str) and "\n" in value:
        return _lines(value)
    return _on_one_line(value)


def _lines(value: str) -> Item:
    """Write a text over several lines; TOML drops the line break that follows the opening quotes.

    One or two quotes may stand anywhere in it, before the closing ones too (TOML 1.0); three would close it.
    """
    escaped = value.translate(_ESCAPES).replace('"""', '\\"\\"\\"')
    return _Written(value, f'"""\n{escaped}"""', discriminant=_STRING)


def _on_one_line(value: object) -> Item:
    if isinstance(value, Mapping):
        return _inline_table(value)
    if isinstance(value, list):
        return _array(value)
    return tomlkit.item(value)


def _inline_table(value: Plain) -> InlineTable:
    table = tomlkit.inline_table()
    for key, each in value.items():
        table.append(key, _on_one_line(each))
    return table


def _array(values: list[object]) -> Item:
    if values and all(isinstance(value, int | float) for value in values):
        # repr is the shortest text that reads back as the same number; tomlkit makes four objects of each number.
        return _Written(values, f"[{', '.join(map(repr, values))}]", discriminant=_ARRAY)
    array = tomlkit.array()
    for value in values:
        array.append(_on_one_line(value))
    return array
