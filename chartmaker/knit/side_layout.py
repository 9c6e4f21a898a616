"""The measured side drawing laid out on a sheet of any size, as strokes and labels; a window or a page only draws them.

x counts to the right and y downwards, in whatever unit the size is given in. No two labels overlap: what has no room is
left out, the least telling first.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import hypot
from typing import Literal

from chartmaker.knit.beside_line import beside
from chartmaker.knit.side import Place, Side, Strip, around_cm

StrokeKind = Literal["outline", "fold", "hidden", "edge", "axis", "dimension", "witness", "pucker"]
LabelKind = Literal["measure", "radius", "name"]
Align = Literal["left", "middle", "right"]
Point = tuple[float, float]

GAP_LINES = 0.7
"""Between the hat and a dimension line, in heights of a line of text."""
CLEAR_LINES = 0.13
"""Between the hat and a witness line, and past a dimension line."""
TICK_LINES = 0.28
"""Half the length of the stroke that ends a dimension line."""
LEAST_SHARE = 0.45
"""The measures beside the hat go below it where they would make it smaller than this share."""


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line through points."""

    kind: StrokeKind
    points: tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Label:
    """A line of text in its box."""

    kind: LabelKind
    text: str
    x: float
    """Left end of the box."""
    y: float
    """Top of the box."""
    width: float
    height: float
    align: Align = "left"

    def overlaps(self, other: "Label") -> bool:
        """Tell whether two boxes share any room."""
        return (
            self.x < other.x + other.width
            and other.x < self.x + self.width
            and self.y < other.y + other.height
            and other.y < self.y + self.height
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class SideDrawing:
    """Everything to be drawn, in this order: the fabric's area, edges of bands, the cuff, strokes, labels."""

    area: tuple[Point, ...]
    """The outline all the way round."""
    cuff: tuple[Point, ...]
    """The same of a brim that is turned up, which hides what is under it; empty where none is."""
    edges: tuple[Stroke, ...]
    """Where bands meet."""
    strokes: tuple[Stroke, ...]
    labels: tuple[Label, ...]
    scale: float
    """Units of the sheet to the centimetre."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SideWords:
    """What is written, in the language and the units of who reads; {0} stands for a length with its unit."""

    length: Callable[[float], str]
    part: Mapping[str, str]
    """By the parts' names, with {0} for their depth."""
    fold: Mapping[str, str]
    """By the ways of a fold."""
    around: str = "{0} round"
    across: str = "{0} across"
    flat: str = "{0} laid flat"
    plate: str = "plate {0}"
    high: str = "{0} high"
    depth: str = "{0} deep in all"
    radius: str = "r {0}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """The room there is, and how large text comes out in it."""

    width: float
    height: float
    line: float
    """Height of a line of text."""
    text_width: Callable[[str], float]


def lay_out_side(side: Side, sheet: Sheet, words: SideWords, *, is_plate: bool = False) -> SideDrawing:
    """Place the drawing in the middle of a sheet, as large as its measures leave room; `is_plate` names a tam's."""
    draft, bare = (_Draft(side, sheet, words, is_plate=is_plate, has_sides=has_sides) for has_sides in (True, False))
    if draft.scale < LEAST_SHARE * bare.scale:
        draft = bare
    return SideDrawing(
        area=draft.area(),
        cuff=draft.cuff(),
        edges=tuple(draft.edges()),
        strokes=(*draft.hat_strokes(), *draft.dimensions()),
        labels=_apart(draft.labels()),
        scale=draft.scale,
    )


def _apart(labels: Iterator[Label]) -> tuple[Label, ...]:
    """Keep the labels that overlap none before them: they come in the order of what they tell."""
    kept: list[Label] = []
    for label in labels:
        if not any(label.overlaps(other) for other in kept):
            kept.append(label)
    return tuple(kept)


def _filled(pieces: Sequence[str], sheet: Sheet) -> list[str]:
    """Join pieces to as few lines as the sheet is wide enough for."""
    lines: list[str] = []
    for piece in pieces:
        joined = f"{lines[-1]} · {piece}" if lines else piece
        if lines and sheet.text_width(joined) <= sheet.width:
            lines[-1] = joined
        else:
            lines.append(piece)
    return lines


def _spread(wanted: list[float], *, apart: float, low: float, high: float) -> list[float]:
    """Move places on a line, given from low to high, as little as keeps them apart and within bounds."""
    placed: list[float] = []
    for at in wanted:
        placed.append(max(at, placed[-1] + apart if placed else low))
    limit = high
    for index in reversed(range(len(placed))):
        placed[index] = min(placed[index], limit)
        limit = placed[index] - apart
    return placed


class _Draft:
    """One try at a sheet: with the measures of depth beside the hat, or below where it would be too small."""

    def __init__(self, side: Side, sheet: Sheet, words: SideWords, *, is_plate: bool, has_sides: bool) -> None:
        self.side, self.sheet, self.words, self.has_sides = side, sheet, words, has_sides
        self.gap = GAP_LINES * sheet.line
        self.clear = CLEAR_LINES * sheet.line
        length = words.length
        self.part_texts = [words.part[part.name].format(length(part.depth_cm)) for part in side.parts]
        self.high_text = words.high.format(length(side.height_cm))
        edge, wide = side.edge_radius_cm, side.widest[0]
        flat = words.flat.format(length(around_cm(edge) / 2))
        deep = words.depth.format(length(side.depth_cm))
        depths = [deep] if has_sides else [self.high_text, deep, *self.part_texts]
        self.below = [*_filled([*self._widths_of(edge, words.across), flat], sheet), *_filled(depths, sheet)]
        across = words.plate if is_plate else words.across
        self.above = _filled(self._widths_of(wide, across), sheet) if side.is_wider_above else []
        left, right = self._margins()
        self.over = 2 * self.gap + (sheet.line if self.above and has_sides else 0.0)
        top = self.over + (len(self.above) + 0.2) * sheet.line
        bottom = self.gap + (len(self.below) + 0.4) * sheet.line
        room_x, room_y = sheet.width - left - right, sheet.height - top - bottom
        reach = max(radius for radius, _ in (*side.outline, *side.fold))
        self.scale = max(min(room_x / (2 * reach), room_y / max(side.height_cm, 1.0)), 1e-3)
        self.hat_width = 2 * reach * self.scale
        self.middle = left + room_x / 2
        self.foot = top + (room_y + side.height_cm * self.scale) / 2

    def _widths_of(self, radius_cm: float, across: str) -> list[str]:
        length = self.words.length
        return [self.words.around.format(length(around_cm(radius_cm))), across.format(length(2 * radius_cm))]

    def _margins(self) -> tuple[float, float]:
        """Give the room that the measures take at the left and at the right."""
        width = self.sheet.text_width
        if not self.has_sides:
            return 1.5 * self.gap, 1.5 * self.gap
        left = max([width(text) for text in self.part_texts], default=0.0) + 3.5 * self.gap
        return left, width(self.high_text) + 3 * self.gap

    # --- the hat

    def at(self, place: Place, sign: int = 1) -> Point:
        """Give a place on the sheet, on the right half or, with −1, on the left."""
        return self.middle + sign * place[0] * self.scale, self.foot - place[1] * self.scale

    def area(self) -> tuple[Point, ...]:
        """Give the outline from the worn edge at the left over the top to the right."""
        half = self.side.outline
        return (*(self.at(place, -1) for place in half), *(self.at(place) for place in reversed(half)))

    def cuff(self) -> tuple[Point, ...]:
        """Give the area of a brim that is turned up."""
        if self.side.fold_way != "up":
            return ()
        half = self.side.fold
        return (*(self.at(place, -1) for place in half), *(self.at(place) for place in reversed(half)))

    def edges(self) -> Iterator[Stroke]:
        """Draw the lines where bands meet."""
        outline = self.side.outline
        for edge in self.side.edges[1:-1]:
            yield Stroke("edge", (self.at(outline[edge.place], -1), self.at(outline[edge.place])))

    def hat_strokes(self) -> Iterator[Stroke]:
        """Draw axis, outline, fold, and where it puckers."""
        outline = self.side.outline
        top = self.foot - self.side.height_cm * self.scale
        yield Stroke("axis", ((self.middle, self.foot + self.gap / 2), (self.middle, top - self.gap / 2)))
        yield Stroke("outline", (*self.area(), self.area()[0]))
        kind: StrokeKind = "hidden" if self.side.fold_way == "in" else "fold"
        for sign in (-1, 1) if self.side.fold else ():
            yield Stroke(kind, tuple(self.at(place, sign) for place in self.side.fold))
        if self.side.fold and self.side.fold_way != "roll":
            yield Stroke(kind, (self.at(self.side.fold[-1], -1), self.at(self.side.fold[-1])))
        for place in self.side.puckered:
            for sign in (-1, 1):
                yield Stroke("pucker", (self.at(outline[place - 1], sign), self.at(outline[place], sign)))

    # --- measures

    @cached_property
    def depth_line(self) -> tuple[tuple[Point, ...], tuple[int, ...]]:
        """The line along the left half of the outline, and which of its points stands for each place."""
        points = [self.at(place, -1) for place in self.side.outline]
        fold_px = max((radius for radius, _ in self.side.fold), default=0.0) - self.side.edge_radius_cm
        return beside(points, self.gap + max(0.0, fold_px) * self.scale)

    def _beside(self, place: int) -> Point:
        line, point_of = self.depth_line
        return line[point_of[place]]

    @property
    def _foot_y(self) -> float:
        return self.foot + self.gap

    @property
    def _over_y(self) -> float:
        """Where the line of the widest measure lies, above the hat and its depth line."""
        return self.foot - self.side.height_cm * self.scale - self.over

    @property
    def _right_x(self) -> float:
        return self.middle + self.hat_width / 2 + self.gap

    def dimensions(self) -> Iterator[Stroke]:
        """Draw the dimension lines with their ends, and the witness lines that lead to them."""
        edge = self.side.edge_radius_cm * self.scale
        yield from self._level(self.middle - edge, self.middle + edge, self._foot_y)
        for x in (self.middle - edge, self.middle + edge):
            yield Stroke("witness", ((x, self.foot + self.clear), (x, self._foot_y + self.gap / 2)))
        if self.above:
            radius, height = self.side.widest
            left, right = self.at((radius, height), -1), self.at((radius, height))
            yield from self._level(left[0], right[0], self._over_y)
            for x, y in (left, right):
                yield Stroke("witness", ((x, y - self.clear), (x, self._over_y - self.gap / 2)))
        if self.has_sides:
            yield from self._upright()
            yield from self._depth()

    def _level(self, left: float, right: float, y: float) -> Iterator[Stroke]:
        yield Stroke("dimension", ((left, y), (right, y)))
        for x in (left, right):
            yield self._tick((x, y), (1.0, -1.0))

    def _upright(self) -> Iterator[Stroke]:
        x, top = self._right_x, self.foot - self.side.height_cm * self.scale
        yield Stroke("dimension", ((x, top), (x, self.foot)))
        highest = max(self.side.outline, key=lambda place: (round(place[1], 6), place[0]))
        for y, radius in ((top, highest[0]), (self.foot, self.side.edge_radius_cm)):
            yield self._tick((x, y), (1.0, -1.0))
            yield Stroke("witness", ((self.at((radius, 0.0))[0] + self.clear, y), (x + self.gap / 2, y)))

    def _depth(self) -> Iterator[Stroke]:
        yield Stroke("dimension", self.depth_line[0])
        outline = self.side.outline
        for place in {0, *(part.last for part in self.side.parts)}:
            (x1, y1), (x2, y2) = self.at(outline[place], -1), self._beside(place)
            long = hypot(x2 - x1, y2 - y1) or 1.0
            away = (x2 - x1) / long, (y2 - y1) / long
            dx, dy = self.clear * away[0], self.clear * away[1]
            yield Stroke("witness", ((x1 + dx, y1 + dy), (x2 + dx, y2 + dy)))
            yield self._tick((x2, y2), (away[0] - away[1], away[0] + away[1]))

    def _tick(self, at: Point, way: Point) -> Stroke:
        half = TICK_LINES * self.sheet.line / (hypot(*way) or 1.0)
        dx, dy = way[0] * half, way[1] * half
        return Stroke("dimension", ((at[0] - dx, at[1] - dy), (at[0] + dx, at[1] + dy)))

    # --- labels, what tells most first

    def labels(self) -> Iterator[Label]:
        """Write the measures, then the radii of the bands' edges, then the bands' names."""
        line = self.sheet.line
        for number, text in enumerate(self.below):
            yield self._label("measure", text, (self.middle, self._foot_y + (number + 0.2) * line), "middle")
        for number, text in enumerate(reversed(self.above)):
            yield self._label("measure", text, (self.middle, self._over_y - (number + 1.2) * line), "middle")
        if self.has_sides:
            y = self.foot - self.side.height_cm * self.scale / 2 - line / 2
            yield self._label("measure", self.high_text, (self._right_x + self.gap / 2, y), "left")
            yield from self._depth_labels()
        yield from self._radii()
        yield from self._fold_name()
        for strip in sorted(self.side.strips, key=lambda strip: strip.first - strip.last):
            yield from self._name(strip)

    def _label(self, kind: LabelKind, text: str, at: Point, align: Align) -> Label:
        width = self.sheet.text_width(text)
        left = at[0] - {"left": 0.0, "middle": width / 2, "right": width}[align]
        left = min(max(left, 0.0), max(0.0, self.sheet.width - width))
        return Label(kind, text, left, at[1], width, self.sheet.line, align)

    def _depth_labels(self) -> Iterator[Label]:
        """Write each part's depth at the left of its stretch, clear of the line."""
        line = self.sheet.line
        middles = [self._beside((part.first + part.last) // 2)[1] - line / 2 for part in self.side.parts]
        tops = _spread(middles[::-1], apart=line, low=0.0, high=self.sheet.height - line)[::-1]
        for text, y in zip(self.part_texts, tops, strict=True):
            beside = [x for x, at in self.depth_line[0] if y - line <= at <= y + 2 * line]
            x = min(beside or [self.middle - self.hat_width / 2 - self.gap])
            yield self._label("measure", text, (x - self.gap / 2, y), "right")

    @cached_property
    def _covered_y(self) -> float:
        """Where what lies double ends, seen from outside; the foot where nothing does."""
        shown = self.side.fold if self.side.fold_way in ("up", "in") else ()
        return self.foot - max((height for _, height in shown), default=0.0) * self.scale

    def _radii(self) -> Iterator[Label]:
        """Write a radius over the edge of a band, right of the axis, where it is another than at the edge below."""
        told = None
        ys = [self.at(self.side.outline[edge.place])[1] for edge in self.side.edges]
        for edge, y, above in zip(self.side.edges, ys, ys[1:], strict=False):
            text = self.words.radius.format(self.words.length(edge.radius_cm))
            x = min(self._rights(edge.place, above=y, within=1.15 * self.sheet.line))
            has_room = y - above >= 1.15 * self.sheet.line and y <= self._covered_y
            if text != told and has_room and self.sheet.text_width(text) <= x - self.middle - 1.5 * self.gap:
                told = text
                yield self._label("radius", text, (x - self.gap, y - 1.1 * self.sheet.line), "right")

    def _rights(self, place: int, *, above: float, within: float) -> Iterator[float]:
        """Give where the outline stands right of the axis, from a place of it up, as high as a line of words is."""
        for point in self.side.outline[place:]:
            x, y = self.at(point)
            if above - y > within:
                return
            yield x

    def _fold_name(self) -> Iterator[Label]:
        """Write what lies double, where it has room."""
        if self.foot - self._covered_y >= self.sheet.line:
            text = self.words.fold[self.side.fold_way]
            left = self.middle - self.side.edge_radius_cm * self.scale
            if self.sheet.text_width(text) <= self.middle - left - 1.5 * self.gap:
                y = (self.foot + self._covered_y - self.sheet.line) / 2
                yield self._label("name", text, (left + self.gap, y), "left")

    def _name(self, strip: Strip) -> Iterator[Label]:
        """Write a band's name left of the axis, where what is in sight of it is as high and as wide as that."""
        points = [self.at(place, -1) for place in self.side.outline[strip.first : strip.last + 1]]
        low, high, line = min(points[0][1], self._covered_y), points[-1][1], self.sheet.line
        middle = (low + high) / 2
        left = max([x for x, y in points if abs(y - middle) <= line], default=points[0][0])
        room = self.middle - left - 1.5 * self.gap
        if low - high >= line and self.sheet.text_width(strip.name) <= room:
            yield self._label("name", strip.name, (left + self.gap, middle - line / 2), "left")
