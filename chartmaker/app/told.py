"""Sentences of the layers below, which know no window and no language, in the language of the window.

They come as they are told in English, with what they take in already inside: "Draw ground", "the top of band 'rib' is
reached". A sentence is known by its own words, in `assets/translations/sentences.txt`, and what it takes in is carried
over as it is. Nothing is ever lost by it: a sentence that is not known, or has no translation, stays English.
"""

from __future__ import annotations

import ast
import re
from functools import lru_cache

from chartmaker.app.words import tr
from chartmaker.files.assets import assets_folder
from chartmaker.model.units import METRIC, Units, in_units

LONGEST = 2000
"""Letters of a text that is looked for among the sentences."""


def told(text: str, units: Units = METRIC) -> str:
    """Give a sentence of the layers below in the language of the window, its measures in the units of the window."""
    text = in_units(text, units)
    if not _has_other_language() or len(text) > LONGEST:
        return text
    for source, pattern in _known():
        found = pattern.fullmatch(text)
        if found:
            translated = tr(source)
            return text if translated == source else translated.format(*found.groups())
    return text


def _has_other_language() -> bool:
    """Tell whether a translation of ours is in use; without one there is nothing to look for."""
    return tr("Chart") != "Chart"


@lru_cache
def _known() -> tuple[tuple[str, re.Pattern[str]], ...]:
    """Give every sentence with the pattern that it is known by, those with most words of their own first."""
    path = assets_folder() / "translations" / "sentences.txt"
    lines = path.read_text(encoding="utf-8").splitlines() if path.is_file() else []
    return tuple((source, pattern_of(source)) for source in map(ast.literal_eval, lines))


def pattern_of(source: str) -> re.Pattern[str]:
    """Give the pattern of a sentence, a group for each thing that it takes in."""
    pieces = re.split(r"\{\d+\}", source)
    own = [re.escape(piece.replace("{{", "{").replace("}}", "}")) for piece in pieces]
    return re.compile("(.*?)".join(own), re.DOTALL)
