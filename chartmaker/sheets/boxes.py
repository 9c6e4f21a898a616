"""What a page is made of: frozen boxes in millimetres from the page's top left corner, every decision taken."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from chartmaker.sheets.ink import BLACK, Ink
from chartmaker.sheets.lines import MM_PER_PT, elided
from chartmaker.sheets.marks import Mark
from chartmaker.sheets.text import Run, as_one_line, set_runs

Rectangle = tuple[float, float, float, float]
"""Left, top, width, height."""
Segment = tuple[float, float, float, float]
"""From x, y to x, y."""
Point = tuple[float, float]
Extent = tuple[float, float, float, float]
"""Left, top, right, bottom."""

Recolouring = Callable[[Ink], Ink]

ASCENT_EM, DESCENT_EM = 0.95, 0.29
"""How far the house face reaches above and below the baseline."""


@dataclass(frozen=True, slots=True)
class Style:
    """How text looks."""

    size_pt: float
    bold: bool = False
    ink: Ink = BLACK


@dataclass(frozen=True, slots=True, kw_only=True)
class Text:
    """One line of text."""

    x: float
    """Left end."""
    baseline: float
    text: str
    style: Style
    runs: tuple[Run, ...]
    """From left to right."""

    @property
    def width(self) -> float:
        """From its left to its right end."""
        return sum(run.advance_em for run in self.runs) * self.style.size_pt * MM_PER_PT

    @property
    def extent(self) -> Extent:
        """The room that it takes."""
        em = self.style.size_pt * MM_PER_PT
        return self.x, self.baseline - ASCENT_EM * em, self.x + self.width, self.baseline + DESCENT_EM * em

    def moved(self, dx: float, dy: float) -> "Text":
        """Give it moved."""
        return replace(self, x=self.x + dx, baseline=self.baseline + dy)

    def inked(self, change: Recolouring) -> "Text":
        """Give it in other colours."""
        return replace(self, style=replace(self.style, ink=change(self.style.ink)))


@dataclass(frozen=True, slots=True)
class Fills:
    """Rectangles of one colour."""

    rectangles: tuple[Rectangle, ...]
    ink: Ink

    @property
    def extent(self) -> Extent:
        """The room that they take together."""
        return (
            min(left for left, _, _, _ in self.rectangles),
            min(top for _, top, _, _ in self.rectangles),
            max(left + width for left, _, width, _ in self.rectangles),
            max(top + height for _, top, _, height in self.rectangles),
        )

    def moved(self, dx: float, dy: float) -> "Fills":
        """Give them moved."""
        return replace(self, rectangles=tuple((x + dx, y + dy, w, h) for x, y, w, h in self.rectangles))

    def inked(self, change: Recolouring) -> "Fills":
        """Give it in other colours."""
        return replace(self, ink=change(self.ink))


@dataclass(frozen=True, slots=True)
class Lines:
    """Straight lines of one width and colour."""

    segments: tuple[Segment, ...]
    width: float
    ink: Ink

    @property
    def extent(self) -> Extent:
        """The room that they take together; half their width to each side is left out."""
        xs = [x for x1, _, x2, _ in self.segments for x in (x1, x2)]
        ys = [y for _, y1, _, y2 in self.segments for y in (y1, y2)]
        return min(xs), min(ys), max(xs), max(ys)

    def moved(self, dx: float, dy: float) -> "Lines":
        """Give them moved."""
        moved = tuple((x1 + dx, y1 + dy, x2 + dx, y2 + dy) for x1, y1, x2, y2 in self.segments)
        return replace(self, segments=moved)

    def inked(self, change: Recolouring) -> "Lines":
        """Give it in other colours."""
        return replace(self, ink=change(self.ink))


@dataclass(frozen=True, slots=True)
class Marks:
    """One drawn mark, at many places."""

    mark: Mark
    centres: tuple[Point, ...]
    size: float
    """Side of the square that the mark fills."""
    ink: Ink

    @property
    def extent(self) -> Extent:
        """The room that they take together."""
        half = self.size / 2
        xs, ys = zip(*self.centres, strict=True)
        return min(xs) - half, min(ys) - half, max(xs) + half, max(ys) + half

    def moved(self, dx: float, dy: float) -> "Marks":
        """Give them moved."""
        return replace(self, centres=tuple((x + dx, y + dy) for x, y in self.centres))

    def inked(self, change: Recolouring) -> "Marks":
        """Give it in other colours."""
        return replace(self, ink=change(self.ink))


@dataclass(frozen=True, slots=True)
class Picture:
    """Pixels, drawn into a rectangle of their proportion."""

    rectangle: Rectangle
    pixels: "Pixels"

    @property
    def extent(self) -> Extent:
        """The room that it takes."""
        left, top, width, height = self.rectangle
        return left, top, left + width, top + height

    def moved(self, dx: float, dy: float) -> "Picture":
        """Give it moved."""
        left, top, width, height = self.rectangle
        return replace(self, rectangle=(left + dx, top + dy, width, height))

    def inked(self, change: Recolouring) -> "Picture":  # noqa: ARG002 - as the other boxes have it
        """Give it as it is: a picture keeps its colours."""
        return self


@dataclass(frozen=True, slots=True)
class Pixels:
    """A picture in sRGB, as bytes, so that two of them can be compared."""

    width: int
    height: int
    rgb: bytes
    """Row after row from the top, three bytes a pixel."""


Box = Text | Fills | Lines | Marks | Picture


@dataclass(frozen=True, slots=True)
class Bookmark:
    """A line of the file's table of contents."""

    title: str
    level: int = 0
    """0 for a sheet, 1 for a part of it."""
    top: float = 0.0
    """Where on the page it leads to, in mm from the page's top."""


@dataclass(frozen=True, slots=True)
class Body:
    """A page before head and foot."""

    boxes: tuple[Box, ...]
    bookmarks: tuple[Bookmark, ...] = ()


@dataclass(frozen=True, slots=True)
class Page:
    """One page, done."""

    sheet: str
    """Name of the sheet that it belongs to."""
    boxes: tuple[Box, ...]
    bookmarks: tuple[Bookmark, ...] = ()


def moved(boxes: Sequence[Box], dx: float, dy: float) -> tuple[Box, ...]:
    """Give boxes moved together."""
    return tuple(box.moved(dx, dy) for box in boxes)


def text_at(  # noqa: PLR0913 - a place, a text and how it stands there
    x: float, baseline: float, text: str, style: Style, *, align: str = "left", most: float | None = None
) -> Text:
    """Set one line of text.

    Args:
        x: the end, or the middle, that `align` names.
        baseline: the line that letters stand on.
        text: anything; line breaks become spaces.
        style: how it looks.
        align: "left", "right" or "middle".
        most: the width that it may take; a longer text is elided.
    """
    line = as_one_line(text) if most is None else elided(text, most_mm=most, size_pt=style.size_pt, bold=style.bold)
    box = Text(x=x, baseline=baseline, text=line, style=style, runs=set_runs(line, bold=style.bold))
    shift = {"left": 0.0, "right": -box.width, "middle": -box.width / 2}[align]
    return box.moved(shift, 0.0) if shift else box


def outline_of(rectangle: Rectangle, *, width: float, ink: Ink) -> Lines:
    """Give the four sides of a rectangle."""
    left, top, wide, high = rectangle
    right, bottom = left + wide, top + high
    sides = (
        (left, top, right, top),
        (right, top, right, bottom),
        (right, bottom, left, bottom),
        (left, bottom, left, top),
    )
    return Lines(sides, width, ink)
