"""Strict readers of single TOML values: each takes a value of any type and gives the wanted one.

All raise WrongValue with a sentence that says what was wanted and what stood there. Ranges are the model's to judge.
"""

import datetime as dt
import math
from collections.abc import Callable

LARGEST_WHOLE = 10**9
"""No count in a file comes near it; larger ones are refused before any arithmetic."""


class WrongValue(ValueError):  # noqa: N818 - its sentence is about the file
    """A value of another kind than the one wanted; the message is a sentence without its subject."""


Reader = Callable[[object], object]
"""What each function of this module is."""


def text(value: object) -> str:
    """Read a text."""
    if not isinstance(value, str):
        raise WrongValue(f"must be a text in quotes, not {kind_of(value)}")
    return value


def whole(value: object) -> int:
    """Read a whole number; 36.0 is none."""
    if isinstance(value, bool) or not isinstance(value, int):
        raise WrongValue(f"must be a whole number, not {kind_of(value)}")
    if abs(value) > LARGEST_WHOLE:
        raise WrongValue("is too large a number")
    return value


def number(value: object) -> float:
    """Read a finite number, whole or not."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise WrongValue(f"must be a number, not {kind_of(value)}")
    if isinstance(value, int):
        return float(whole(value))
    if not math.isfinite(value):
        raise WrongValue(f"must be a finite number, not {value}")
    return value


def date(value: object) -> dt.date:
    """Read a date without a time of day."""
    if isinstance(value, dt.datetime) or not isinstance(value, dt.date):
        raise WrongValue(f"must be a date like 2026-09-12, not {kind_of(value)}")
    return value


def numbers(value: object) -> tuple[float, ...]:
    """Read an array of finite numbers."""
    if not isinstance(value, list):
        raise WrongValue(f"must be an array of numbers, not {kind_of(value)}")
    if all(type(each) is float and math.isfinite(each) for each in value):  # the usual case, and there are many
        return tuple(value)
    found = []
    for place, each in enumerate(value, start=1):
        try:
            found.append(number(each))
        except WrongValue as problem:
            raise WrongValue(f"value {place} {problem}") from None
    return tuple(found)


def triple(value: object) -> tuple[float, float, float]:
    """Read an array of exactly three finite numbers."""
    found = numbers(value)
    if len(found) != 3:
        raise WrongValue(f"must be an array of 3 numbers, not of {len(found)}")
    return found[0], found[1], found[2]


def kind_of(value: object) -> str:
    """Say in words what kind of TOML value this is."""
    for kinds, words in (
        (bool, "true or false"),
        (int, "a whole number"),
        (float, f"the number {value}" if isinstance(value, float) else ""),
        (str, "a text"),
        (dt.datetime, "a date with a time"),
        (dt.date, "a date"),
        (dt.time, "a time"),
        (list, "an array"),
        (dict, "a table"),
    ):
        if isinstance(value, kinds):
            return words
    return type(value).__name__
