"""The order in which a line of mixed directions stands on the page: Unicode Standard Annex 9 and its rule for brackets.

python-bidi resolves the levels; the pairs of brackets (rule N0) are added here, so that "(12)" after Arabic keeps both.
"""

import unicodedata
from collections.abc import Iterator
from typing import Any

from bidi import algorithm as bidi  # type: ignore[import-untyped]  # ships no types
from bidi.mirror import MIRRORED  # type: ignore[import-untyped]  # ships no types

RIGHT_TO_LEFT = frozenset(("R", "AL", "AN"))
OPENING = frozenset("([{")
"""Brackets that are paired; the rarer ones follow their neighbours."""
CLOSING_OF = {"(": ")", "[": "]", "{": "}"}


def mirrored(character: str) -> str:
    """Give a character as it looks in text that runs leftwards: brackets turn round."""
    return str(MIRRORED.get(character, character))


def levels_of(text: str) -> list[int]:
    """Give the level of each character of a line: even runs rightwards, odd leftwards.

    Args:
        text: without controls of direction, and of one character for each that is placed.
    """
    if not any(unicodedata.bidirectional(character) in RIGHT_TO_LEFT for character in text):
        return [0] * len(text)
    storage = bidi.get_empty_storage()
    base = bidi.get_base_level(text)
    storage["base_level"], storage["base_dir"] = base, "LR"[base]
    bidi.get_embedding_levels(text, storage)
    bidi.explicit_embed_and_overrides(storage)
    bidi.resolve_weak_types(storage)
    _resolve_brackets(storage["chars"], embedding="LR"[base])
    bidi.resolve_neutral_types(storage, debug=False)
    bidi.resolve_implicit_levels(storage, debug=False)
    return [int(character["level"]) for character in storage["chars"]]


def _resolve_brackets(characters: list[dict[str, Any]], *, embedding: str) -> None:
    """Give both brackets of a pair one direction (rule N0): the line's if it is found inside, else their context's."""
    for start, end in _pairs([character["ch"] for character in characters]):
        inside = {_strong(character["type"]) for character in characters[start + 1 : end]} - {""}
        if not inside:
            continue
        before = (_strong(character["type"]) for character in reversed(characters[:start]))
        context = next((direction for direction in before if direction), embedding)
        direction = embedding if embedding in inside or context == embedding else context
        characters[start]["type"] = characters[end]["type"] = direction


def _pairs(text: list[str]) -> Iterator[tuple[int, int]]:
    """Give the places of brackets that belong together, by their opening."""
    waiting: list[int] = []
    found = []
    for place, character in enumerate(text):
        if character in OPENING:
            waiting.append(place)
            continue
        match = next((one for one in reversed(waiting) if CLOSING_OF[text[one]] == character), None)
        if match is not None:
            found.append((match, place))
            del waiting[waiting.index(match) :]
    yield from sorted(found)


def _strong(kind: str) -> str:
    """Give the direction that a resolved type counts as: numbers count as leftward (rules N0 to N2)."""
    if kind in ("R", "AN", "EN"):
        return "R"
    return "L" if kind == "L" else ""
