"""The measured side drawing on paper: laid out by `knit.side_layout`, as the window's is, and made of boxes."""

from collections.abc import Iterator
from itertools import pairwise

from chartmaker.appraisal import Appraisal
from chartmaker.knit.side import side
from chartmaker.knit.side_layout import Point, Sheet, SideDrawing, SideWords, Stroke, lay_out_side
from chartmaker.model.units import Units
from chartmaker.sheets.boxes import Box, Fills, Lines, Segment, Style, text_at
from chartmaker.sheets.flow import Block
from chartmaker.sheets.ink import ACCENT, BLACK, QUIET, WHITE, Ink
from chartmaker.sheets.lines import MM_PER_PT, width_mm

SIZE_PT = 8.0
LINE_MM = 3.6
"""Height of a line of text, as the layout counts it."""
INSET_MM = 1.5
"""Between the room and the drawing, for the ends of its measures."""
DASH_MM = 1.6
STROKES: dict[str, tuple[float, Ink]] = {
    "outline": (0.45, BLACK),
    "fold": (0.35, BLACK),
    "hidden": (0.25, BLACK),
    "edge": (0.15, QUIET),
    "axis": (0.12, QUIET),
    "dimension": (0.25, ACCENT),
    "witness": (0.12, QUIET),
    "pucker": (0.9, BLACK),
}
"""Width and ink of each kind of line."""
DASHED = {"hidden", "axis"}
LABELS = {
    "measure": Style(SIZE_PT, ink=ACCENT, bold=True),
    "radius": Style(7.0, ink=QUIET),
    "name": Style(7.5, ink=QUIET),
}


def side_drawing(appraisal: Appraisal, units: Units, *, width: float, height: float) -> Block:
    """Draw the hat from the side with its measures, as large as this room takes it."""
    shape = side(appraisal.design, appraisal.fabric, appraisal.profile)
    inside = width - 2 * INSET_MM, height - 2 * INSET_MM
    sheet = Sheet(width=inside[0], height=inside[1], line=LINE_MM, text_width=_text_width)
    drawing = lay_out_side(shape, sheet, _words(units), is_plate=appraisal.design.hat.shape == "tam")
    boxes = tuple(box.moved(INSET_MM, INSET_MM) for box in _boxes(drawing, inside))
    return Block(height, boxes)


def _text_width(text: str) -> float:
    return width_mm(text, size_pt=SIZE_PT, bold=True) + 0.5


def _words(units: Units) -> SideWords:
    return SideWords(
        length=units.length.told,
        part={name: f"{name} {{0}}" for name in ("brim", "widening", "body", "crown")},
        fold={"up": "turned up", "in": "hem inside", "roll": "rolled"},
    )


def _boxes(drawing: SideDrawing, room: tuple[float, float]) -> Iterator[Box]:
    yield from _lines(drawing.edges, room)
    if drawing.cuff:
        strips = tuple(_strips(_within(drawing.cuff, room)))
        yield from [Fills(strips, WHITE)] if strips else []
    yield from _lines(drawing.strokes, room)
    for label in drawing.labels:
        if not 0 <= label.y <= room[1] - label.height:
            continue
        style = LABELS[label.kind]
        baseline = label.y + label.height / 2 + 0.35 * style.size_pt * MM_PER_PT
        x = label.x + {"left": 0.0, "middle": label.width / 2, "right": label.width}[label.align]
        text = text_at(x, baseline, label.text, style, align=label.align, most=room[0])
        if label.kind == "name":  # lines of the fabric under it end where it stands
            yield Fills(((text.x - 0.5, label.y, text.width + 1.0, label.height),), WHITE)
        yield text


def _lines(strokes: tuple[Stroke, ...], room: tuple[float, float]) -> Iterator[Lines]:
    """Gather the lines of each kind."""
    found: dict[str, list[Segment]] = {}
    for stroke in strokes:
        segments = [(*one, *other) for one, other in pairwise(_within(stroke.points, room))]
        if stroke.kind in DASHED:
            segments = [dash for segment in segments for dash in _dashes(segment)]
        found.setdefault(stroke.kind, []).extend(segments)
    for kind, segments in found.items():
        if segments:
            yield Lines(tuple(segments), *STROKES[kind])


def _within(points: tuple[Point, ...], room: tuple[float, float]) -> tuple[Point, ...]:
    """Hold points in the room, where a strange hat's measures would push them out of it."""
    width, height = room
    return tuple(
        (min(max(x, -INSET_MM), width + INSET_MM), min(max(y, -INSET_MM), height + INSET_MM)) for x, y in points
    )


def _dashes(segment: Segment) -> Iterator[Segment]:
    """Cut a line into dashes, as long as the gaps between them."""
    x1, y1, x2, y2 = segment
    long = ((x2 - x1) ** 2 + (y2 - y1) ** 2) ** 0.5
    count = int(long / DASH_MM)
    if count < 2:
        yield segment
        return
    for number in range(0, count, 2):
        start, end = number / count, (number + 1) / count
        yield x1 + (x2 - x1) * start, y1 + (y2 - y1) * start, x1 + (x2 - x1) * end, y1 + (y2 - y1) * end


def _strips(area: tuple[Point, ...]) -> Iterator[tuple[float, float, float, float]]:
    """Give level strips that cover an outline which is the same on both sides."""
    half = area[: len(area) // 2]
    other = area[::-1][: len(half)]
    for (left, above), (right, below) in zip(pairwise(half), pairwise(other), strict=True):
        (x1, y1), (x2, y2), (x3, _), (x4, _) = left, above, right, below
        low, high = max(x1, x2), min(x3, x4)
        if high > low and y1 != y2:
            yield low, min(y1, y2), high - low, abs(y2 - y1)
