"""Setting one line of any Unicode text: which face writes what, in which order it stands, and how wide it is.

Nothing here is markup. What no face can write, and what would act on the text unseen (controls, overrides of its
direction), prints as its code point in a small frame: "U+202E".
"""

import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import groupby

from chartmaker.sheets.bidi_order import levels_of, mirrored
from chartmaker.sheets.faces import SILENT, Outline, further_face_for, house_advance_em, house_has, shaped

MOST_MARKS = 3
"""Combining marks above or below one character that are set; more would climb over other lines and print as boxes."""
CODE_SCALE = 0.62
"""Size of a code point in its frame, relative to the text around it."""
CODE_PADDING_EM = 0.12
"""Clear to either side of it, in em of the text around it."""
JOINER = "\u200d"
STACKING_CLASSES = (202, 214, 216, 220, 230, 232)
"""Canonical combining classes of marks that stack above and below (Unicode Standard Annex 44, table 15)."""


@dataclass(frozen=True, slots=True)
class Run:
    """Neighbouring characters that are written in one way, in the order in which they stand on the page."""

    kind: str
    """Either "house" (the embedded face), "outline" (drawn) or "code" (a code point in a frame)."""
    text: str
    advance_em: float
    outline: Outline | None = None


@dataclass(frozen=True, slots=True)
class _Piece:
    """A cluster, the way of writing it, and the level of its direction (Unicode Standard Annex 9)."""

    text: str
    way: str
    face: int = -1
    level: int = 0


def as_one_line(text: str) -> str:
    """Give text with line breaks and tabs as spaces, in composed form (NFC), as it is set."""
    if text.isascii() and text.isprintable():
        return text
    return unicodedata.normalize("NFC", " ".join(text.split()) if not text.isspace() else " ")


@lru_cache(maxsize=8192)
def set_runs(text: str, *, bold: bool = False) -> tuple[Run, ...]:
    """Set one line: its runs from left to right."""
    if text.isascii() and text.isprintable():
        return (Run("house", text, house_advance_em(text, bold=bold)),) if text else ()
    pieces = _in_levels([_piece(cluster) for cluster in clusters(text)])
    groups = [list(group) for _, group in groupby(pieces, key=lambda piece: (piece.way, piece.face, piece.level))]
    return tuple(run for group in _visual_order(groups) for run in _written(group, bold=bold))


def width_em(text: str, *, bold: bool = False) -> float:
    """Give the width of one line in em."""
    return sum(run.advance_em for run in set_runs(text, bold=bold))


def clusters(text: str) -> Iterator[str]:
    """Cut text into characters as a reader counts them: a base with its marks, and what joiners hold together."""
    cluster, stacked = "", 0
    for character in text:
        stacks = unicodedata.combining(character) in STACKING_CLASSES
        if cluster and _continues(cluster, character) and (not stacks or stacked < MOST_MARKS):
            cluster += character
            stacked += stacks
            continue
        if cluster:
            yield cluster
        cluster, stacked = character, 0
    if cluster:
        yield cluster


def _continues(cluster: str, character: str) -> bool:
    if _is_unseen(cluster[-1]) or cluster.isspace():
        return False
    if cluster.endswith(JOINER):
        return not character.isspace() and not _is_unseen(character)
    is_flag = len(cluster) == 1 and _is_flag_letter(cluster) and _is_flag_letter(character)
    is_tone = "\U0001f3fb" <= character <= "\U0001f3ff"
    return character in SILENT or unicodedata.category(character).startswith("M") or is_flag or is_tone


def _is_flag_letter(character: str) -> bool:
    return "\U0001f1e6" <= character <= "\U0001f1ff"


def _is_unseen(character: str) -> bool:
    """Tell what acts without a look of its own, or has none: controls, formats, surrogates, private and unassigned."""
    return unicodedata.category(character).startswith("C") and character not in SILENT


@lru_cache(maxsize=8192)
def _piece(cluster: str) -> _Piece:
    if _is_unseen(cluster[0]) or unicodedata.combining(cluster[0]) in STACKING_CLASSES:
        return _Piece(cluster, "code")
    if len(cluster) == 1 and house_has(cluster):
        return _Piece(cluster, "house")
    face = further_face_for(cluster) if cluster.strip("".join(SILENT)) else None
    return _Piece(cluster, "code") if face is None else _Piece(cluster, "outline", face)


def _in_levels(pieces: list[_Piece]) -> list[_Piece]:
    """Give each piece the level of its direction."""
    stand_ins = "".join(" " if piece.way == "code" else piece.text[0] for piece in pieces)
    levels = levels_of(stand_ins)
    return [replace(piece, level=level) for piece, level in zip(pieces, levels, strict=True)]


def _visual_order(groups: list[list[_Piece]]) -> list[list[_Piece]]:
    """Reverse runs from the highest level down to the lowest odd one (Unicode Standard Annex 9, rule L2)."""
    levels = [group[0].level for group in groups]
    for level in range(max(levels, default=0), 0, -1):
        start = 0
        while start < len(groups):
            end = start
            while end < len(groups) and levels[end] >= level:
                end += 1
            groups[start:end], levels[start:end] = groups[start:end][::-1], levels[start:end][::-1]
            start = max(end, start + 1)
    return groups


def _written(group: list[_Piece], *, bold: bool) -> list[Run]:
    first = group[0]
    if first.way == "code":
        ordered = group[::-1] if first.level % 2 else group
        return [_code_run(character, bold=bold) for piece in ordered for character in piece.text]
    text = "".join(piece.text for piece in group)
    if first.way == "house":
        text = "".join(map(mirrored, reversed(text))) if first.level % 2 else text
        return [Run("house", text, house_advance_em(text, bold=bold))]
    outline = shaped(text, face=first.face, bold=bold, right_to_left=bool(first.level % 2))
    return [Run("outline", text, outline.advance_em, outline)]


def _code_run(character: str, *, bold: bool) -> Run:
    label = f"U+{ord(character):04X}"
    return Run("code", label, CODE_SCALE * house_advance_em(label, bold=bold) + 4 * CODE_PADDING_EM)
