"""Typefaces: the house face that is embedded, and what further faces offer for characters that it lacks.

The house face is Atkinson Hyperlegible, drawn to be told apart at a glance: the sheets are read over a pot. A further
face is never embedded: HarfBuzz shapes its text, which joins Arabic and orders Devanagari, and gives the outlines,
which are drawn. That serves every script and every kind of font file alike, and opens a file in a millisecond.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from importlib import resources

import uharfbuzz as hb  # type: ignore[import-untyped]  # ships no types
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

HOUSE_PACKAGE = "fontpkg_atkinson_hyperlegible"
HOUSE_FILES = {False: "files/AtkinsonHyperlegible-Regular.ttf", True: "files/AtkinsonHyperlegible-Bold.ttf"}
"""By whether it is bold."""
HOUSE = -1
"""Stands for the house face where further faces have their place in `FURTHER_FILES`."""

NOTO, NOTO_CJK = "manimgx_fonts", "noto_cjk_sans_otc"
"""Packages that carry the Noto faces (SIL Open Font License 1.1)."""
SCRIPTS = (
    "Hebrew",
    "Arabic",
    "Devanagari",
    "Bengali",
    "Gurmukhi",
    "Gujarati",
    "Oriya",
    "Tamil",
    "Telugu",
    "Kannada",
    "Malayalam",
    "Sinhala",
    "Thai",
    "Lao",
    "Myanmar",
    "Khmer",
    "Ethiopic",
    "Georgian",
    "Armenian",
)
FURTHER_FILES = (
    (NOTO, "NotoSans[wght].ttf"),
    *((NOTO, f"NotoSans{script}[wght].ttf") for script in SCRIPTS),
    (NOTO, "NotoSansSymbols[wght].ttf"),
    (NOTO_CJK, "NotoSansCJK-Regular.ttc"),
    (NOTO, "NotoEmoji[wght].ttf"),
)
"""Asked in this order."""
BOLD_WEIGHT = 700.0

Command = tuple[str, tuple[float, ...]]
"""A step of an outline: "move" (x, y), "line" (x, y), "curve" (three points, cubic) or "close" (), in em, y upwards."""


@dataclass(frozen=True, slots=True)
class Glyph:
    """One filled outline and where it stands, in em from the beginning of its run."""

    commands: tuple[Command, ...]
    x_em: float
    y_em: float


@dataclass(frozen=True, slots=True)
class Outline:
    """Shaped text, and how far it advances."""

    glyphs: tuple[Glyph, ...]
    advance_em: float


@lru_cache(maxsize=2)
def house_face(*, bold: bool) -> TTFont:
    """Give the house face, registered with ReportLab under its own name."""
    font = TTFont(f"House{'Bold' if bold else 'Regular'}", str(resources.files(HOUSE_PACKAGE) / HOUSE_FILES[bold]))
    pdfmetrics.registerFont(font)
    return font


def house_has(character: str) -> bool:
    """Tell whether the house face can write a character."""
    return ord(character) in house_face(bold=False).face.charToGlyph


def house_advance_em(text: str, *, bold: bool) -> float:
    """Give how far text in the house face advances."""
    face = house_face(bold=bold).face
    widths, default = face.charWidths, face.defaultWidth
    return float(sum(widths.get(ord(character), default) for character in text)) / 1000


def further_face_for(cluster: str) -> int | None:
    """Give the first further face, by its place in `FURTHER_FILES`, that has every character of a cluster."""
    return next((place for place in _order(cluster) if _has_all(place, cluster)), None)


@lru_cache(maxsize=4096)
def shaped(text: str, *, face: int, bold: bool, right_to_left: bool) -> Outline:
    """Shape a run of text of one direction in a further face."""
    font = _opened(face, bold=bold)
    buffer = hb.Buffer()
    buffer.add_str(text)
    buffer.guess_segment_properties()
    buffer.direction = "rtl" if right_to_left else "ltr"
    hb.shape(font, buffer, {})
    em, advance, glyphs = 1 / font.face.upem, 0, []
    for info, position in zip(buffer.glyph_infos, buffer.glyph_positions, strict=True):
        commands = _outline(face, info.codepoint, bold=bold)
        glyphs.append(Glyph(commands, (advance + position.x_offset) * em, position.y_offset * em))
        advance += position.x_advance
    return Outline(tuple(glyphs), advance * em)


@lru_cache(maxsize=4096)
def house_outline(text: str, *, bold: bool) -> Outline:
    """Give text in the house face as outlines, spaced as `house_advance_em` has it."""
    font = _opened(HOUSE, bold=bold)
    em, advance, glyphs = 1 / font.face.upem, 0.0, []
    for character in text:
        glyph = font.get_nominal_glyph(ord(character))
        if glyph:
            glyphs.append(Glyph(_outline(HOUSE, glyph, bold=bold), advance, 0.0))
            advance += font.get_glyph_h_advance(glyph) * em
    return Outline(tuple(glyphs), advance)


@lru_cache(maxsize=4096)
def _outline(face: int, glyph: int, *, bold: bool) -> tuple[Command, ...]:
    font = _opened(face, bold=bold)
    pen = _Pen(font.face.upem)
    font.draw_glyph_with_pen(glyph, pen)
    return tuple(pen.commands)


class _Pen:
    """Collects an outline in em; a pen in HarfBuzz's sense, which fixes the names of its methods."""

    def __init__(self, units_per_em: int) -> None:
        self.commands: list[Command] = []
        self._em = 1 / units_per_em
        self._last = (0.0, 0.0)

    def moveTo(self, point: tuple[float, float]) -> None:  # noqa: N802
        """Begin a contour."""
        self._add("move", point)

    def lineTo(self, point: tuple[float, float]) -> None:  # noqa: N802
        """Go straight."""
        self._add("line", point)

    def qCurveTo(self, control: tuple[float, float], end: tuple[float, float]) -> None:  # noqa: N802
        """Raise a quadratic curve to the cubic one that PDF knows; the two are the same curve."""
        (x0, y0), (x1, y1), (x2, y2) = self._last, control, end
        first = (x0 + 2 / 3 * (x1 - x0), y0 + 2 / 3 * (y1 - y0))
        second = (x2 + 2 / 3 * (x1 - x2), y2 + 2 / 3 * (y1 - y2))
        self._add("curve", first, second, end)

    def curveTo(self, *points: tuple[float, float]) -> None:  # noqa: N802
        """Go along a cubic curve."""
        self._add("curve", *points)

    def closePath(self) -> None:  # noqa: N802
        """End a contour."""
        self.commands.append(("close", ()))

    def endPath(self) -> None:  # noqa: N802
        """End a contour that was left open: filled, it is as good as closed."""
        self.closePath()

    def _add(self, verb: str, *points: tuple[float, float]) -> None:
        self._last = points[-1]
        self.commands.append((verb, tuple(part * self._em for point in points for part in point)))


@lru_cache(maxsize=2 * len(FURTHER_FILES))
def _opened(place: int, *, bold: bool = False) -> hb.Font:
    package, file = (HOUSE_PACKAGE, HOUSE_FILES[bold]) if place == HOUSE else FURTHER_FILES[place]
    blob = hb.Blob.from_file_path(str(resources.files(package) / file))
    font = hb.Font(hb.Face(blob, 0))
    if bold and place != HOUSE:
        font.set_variations({"wght": BOLD_WEIGHT})
    return font


def _order(cluster: str) -> Iterator[int]:
    """Walk the further faces; the emoji come first where the text asks for them by a variation selector."""
    last = len(FURTHER_FILES) - 1
    if EMOJI_SELECTOR in cluster:
        yield last
    yield from range(last + 1)


EMOJI_SELECTOR = "\ufe0f"
SILENT = {EMOJI_SELECTOR, "\ufe0e", "\u200d", "\u200c"}
"""Characters that choose or join and have no look of their own."""


def _has_all(place: int, cluster: str) -> bool:
    font = _opened(place)
    return all(font.get_nominal_glyph(ord(character)) for character in cluster if character not in SILENT)
