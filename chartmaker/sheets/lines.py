"""Breaking text into lines of a given width, and eliding what does not fit; any script, any length of word."""

from collections.abc import Iterator

from chartmaker.sheets.text import as_one_line, clusters, width_em

MM_PER_PT = 25.4 / 72
ELLIPSIS = "…"
NARROWEST_EM = 0.15
"""Narrower than any letter: how many characters a line can hold at most, so that endless text is cut before it is
measured."""


def width_mm(text: str, *, size_pt: float, bold: bool = False) -> float:
    """Give the width of one line."""
    return width_em(text, bold=bold) * size_pt * MM_PER_PT


def elided(text: str, *, most_mm: float, size_pt: float, bold: bool = False) -> str:
    """Give one line that fits, its end left out for an ellipsis where it must be."""
    line = as_one_line(text[: 2 * _most_characters(most_mm, size_pt)])
    if width_mm(line, size_pt=size_pt, bold=bold) <= most_mm and len(text) <= 2 * _most_characters(most_mm, size_pt):
        return line
    pieces = list(clusters(line))
    count = _most_that_fit(pieces, ELLIPSIS, most_mm=most_mm, size_pt=size_pt, bold=bold)
    return "".join(pieces[:count]).rstrip() + ELLIPSIS


def wrapped(text: str, *, most_mm: float, size_pt: float, bold: bool = False, most_lines: int = 40) -> tuple[str, ...]:
    """Break text into lines that fit; what passes `most_lines` is elided at the end of the last."""
    cut = 2 * _most_characters(most_mm, size_pt) * most_lines
    lines: list[str] = []
    current = ""
    for word in _words(as_one_line(text[:cut]), most_mm=most_mm, size_pt=size_pt, bold=bold):
        longer = current + word
        if not current or width_mm(longer.rstrip(), size_pt=size_pt, bold=bold) <= most_mm:
            current = longer
            continue
        lines.append(current.rstrip())
        current = word.lstrip()
        if len(lines) > most_lines:
            break
    lines.append(current.rstrip())
    if len(lines) <= most_lines and len(text) <= cut:
        return tuple(lines)
    rest = " ".join(lines[most_lines - 1 :]) + (ELLIPSIS if len(text) > cut else "")
    return (*lines[: most_lines - 1], elided(rest, most_mm=most_mm, size_pt=size_pt, bold=bold))


def _words(line: str, *, most_mm: float, size_pt: float, bold: bool) -> Iterator[str]:
    """Give what may stand apart: words with the space after them, lone ideographs, and pieces of endless words."""
    for word in _at_spaces(line):
        if width_mm(word.rstrip(), size_pt=size_pt, bold=bold) <= most_mm:
            yield word
            continue
        pieces = list(clusters(word))
        while pieces:
            count = max(1, _most_that_fit(pieces, "", most_mm=most_mm, size_pt=size_pt, bold=bold))
            yield "".join(pieces[:count])
            pieces = pieces[count:]


def _at_spaces(line: str) -> Iterator[str]:
    word = ""
    for character in line:
        if word and (word[-1] == " " != character or _is_ideograph(word[-1])):
            yield word
            word = ""
        word += character
    if word:
        yield word


def _is_ideograph(character: str) -> bool:
    return "\u3040" <= character <= "\u9fff" or "\U00020000" <= character <= "\U0003ffff"


def _most_that_fit(pieces: list[str], end: str, *, most_mm: float, size_pt: float, bold: bool) -> int:
    """Give the most pieces that fit together with `end`, by halving."""
    low, high = 0, len(pieces)
    while low < high:
        middle = (low + high + 1) // 2
        text = "".join(pieces[:middle]).rstrip() + end
        if width_mm(text, size_pt=size_pt, bold=bold) <= most_mm:
            low = middle
        else:
            high = middle - 1
    return low


def _most_characters(most_mm: float, size_pt: float) -> int:
    return int(most_mm / (NARROWEST_EM * size_pt * MM_PER_PT)) + 1
