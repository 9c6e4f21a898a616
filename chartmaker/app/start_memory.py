"""The answers for a new hat from one time to the next: the last ones are what is asked with."""

from __future__ import annotations

import json
import math
from dataclasses import asdict, fields
from typing import TYPE_CHECKING, Any

from chartmaker.app.start_given import Given, usual_by_field
from chartmaker.knit.answers import Answers

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings

KEY, MORE_KEY = "start/answers", "start/more"
FORGOTTEN = ("title",)
"""What is asked anew each time."""


def keep(settings: QSettings, given: Given) -> None:
    """Write the answers."""
    kept = {name: value for name, value in asdict(given).items() if name not in FORGOTTEN}
    settings.setValue(KEY, json.dumps(kept))


def recall(settings: QSettings, usual: Given) -> Given:
    """Give the answers of the last time; what is not there, or is of no such kind, is as usual."""
    try:
        kept = json.loads(str(settings.value(KEY, "")))
    except ValueError:
        return usual
    if not isinstance(kept, dict):
        return usual
    right = {
        each.name: kept[each.name]
        for each in fields(Given)
        if each.name not in FORGOTTEN and _is_like(kept.get(each.name), getattr(usual, each.name))
    }
    own = {name: value for name, value in right.pop("own", {}).items() if _is_own(name, value)}
    return Given(**{**{each.name: getattr(usual, each.name) for each in fields(Given)}, **right, "own": own})


def _is_own(name: str, value: Any) -> bool:
    kinds = usual_by_field(Answers())
    field = name.rpartition("/")[2]
    return field in kinds and _is_like(value, kinds[field])


def _is_like(value: Any, usual: Any) -> bool:
    if isinstance(usual, bool | str):
        return type(value) is type(usual)
    if isinstance(usual, int | float):
        return isinstance(value, int | float) and not isinstance(value, bool) and math.isfinite(value)
    return isinstance(value, type(usual))
