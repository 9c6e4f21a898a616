"""Blocks that follow one another down the page, and over to the next where they must."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import repeat

from chartmaker.sheets.boxes import Box, Style, moved, text_at
from chartmaker.sheets.ink import QUIET
from chartmaker.sheets.lines import MM_PER_PT, wrapped
from chartmaker.sheets.paper import Frame

BODY = Style(9.5)
SMALL = Style(8.0, ink=QUIET)
STRONG = Style(9.5, bold=True)
HEADING = Style(12.5, bold=True)
MOST_LINES = 6
"""Lines of a paragraph; names may be very long, and no block is taller than a page."""
BEGINNING = 3
"""Blocks at the beginning of a group too tall for a page that stay together."""
LEADING = 1.36
"""From baseline to baseline, in sizes of the text."""


@dataclass(frozen=True, slots=True)
class Block:
    """A piece that is not broken: boxes from its own top left corner."""

    height: float
    boxes: tuple[Box, ...] = ()
    keeps_next: bool = False
    """Whether it must not stand last on a page."""
    head: "Block | None" = None
    """What is repeated above it when it comes first on a page: a table's head."""
    gap: float = 0.0
    """Room at its top that it does not need when it comes first on a page."""


def line_height(style: Style) -> float:
    """Give the distance from line to line in millimetres."""
    return style.size_pt * LEADING * MM_PER_PT


def space(height: float) -> Block:
    """Give empty room."""
    return Block(height)


def heading(text: str, *, width: float) -> Block:
    """Give a heading with room above and below, kept with what follows."""
    height = line_height(HEADING)
    title = text_at(0, height + 2.2, text, HEADING, most=width)
    return Block(height + 5.4, (title,), keeps_next=True, gap=3.4)


def paragraph(
    text: str, *, width: float, style: Style = BODY, indent: float = 0.0, most_lines: int = MOST_LINES
) -> list[Block]:
    """Give text as blocks of one line each, the first kept with the second."""
    lines = wrapped(text, most_mm=width - indent, size_pt=style.size_pt, bold=style.bold, most_lines=most_lines)
    height = line_height(style)
    baseline = 0.76 * height
    blocks = [Block(height, (text_at(indent, baseline, line, style),)) for line in lines]
    if len(blocks) > 1:
        blocks[0] = replace(blocks[0], keeps_next=True)
    return blocks


def bulleted(
    text: str, *, width: float, bullet: Sequence[Box], style: Style = BODY, indent: float = 6.0
) -> list[Block]:
    """Give a paragraph of at most `MOST_LINES` with a hanging bullet drawn at its left."""
    blocks = paragraph(text, width=width, style=style, indent=indent, most_lines=MOST_LINES)
    return [replace(blocks[0], boxes=(*bullet, *blocks[0].boxes)), *blocks[1:]]


def fact(name: str, text: str, *, width: float, name_width: float = 40.0) -> list[Block]:
    """Give a named fact: its name in a column of its own, its text beside it."""
    name_box = text_at(0, 0.76 * line_height(BODY), name, replace(BODY, ink=QUIET), most=name_width - 3)
    blocks = paragraph(text, width=width, indent=name_width)
    return [replace(blocks[0], boxes=(name_box, *blocks[0].boxes)), *blocks[1:]]


def beside(left: Sequence[Block], right: Sequence[Block], *, right_x: float) -> Block:
    """Give two short stacks side by side as one block."""
    boxes = (*stacked(left), *stacked(right, right_x))
    return Block(max(height_of(left), height_of(right)), boxes)


def height_of(blocks: Sequence[Block]) -> float:
    """Give the height of blocks one below the other."""
    return sum(block.height for block in blocks)


def flowed(blocks: Sequence[Block], frame: Frame) -> list[tuple[Box, ...]]:
    """Lay blocks down the frame, page after page; each page's boxes in page coordinates."""
    return flowed_into(blocks, repeat(frame), most=frame.height)


def flowed_into(blocks: Sequence[Block], frames: Iterator[Frame], *, most: float) -> list[tuple[Box, ...]]:
    """Lay blocks down one frame after another; the boxes of each frame that was begun, in page coordinates.

    Args:
        blocks: what follows one another.
        frames: pages or columns, as many as are asked for; one may be shorter than the others.
        most: height of the tallest frame that comes again and again.
    """
    frame = next(frames)
    filled: list[list[Box]] = [[]]
    y = frame.top
    for group in _kept_together(blocks, most=most):
        if not any(block.boxes for block in group):  # room alone begins no page
            y = y if y == frame.top else min(y + height_of(group), frame.bottom)
            continue
        while y + height_of(group) > frame.bottom and (y > frame.top or frame.height < most):
            frame = next(frames)
            filled.append([])
            y = frame.top
            if group[0].head is not None:
                filled[-1].extend(moved(group[0].head.boxes, frame.left, y - group[0].head.gap))
                y += group[0].head.height - group[0].head.gap
                break
        for block in group:
            if y == frame.top:
                y -= block.gap if block.boxes else block.height
            filled[-1].extend(moved(block.boxes, frame.left, y))
            y += block.height
    return [tuple(boxes) for boxes in filled]


def kept(blocks: Sequence[Block]) -> list[Block]:
    """Give blocks that stay on one page together, where a page can hold them."""
    return [*(replace(block, keeps_next=True) for block in blocks[:-1]), *blocks[-1:]]


def _kept_together(blocks: Sequence[Block], *, most: float) -> list[list[Block]]:
    """Group blocks that stay together; a group that no page can hold falls apart, all but its beginning."""
    groups: list[list[Block]] = [[]]
    for block in blocks:
        groups[-1].append(block)
        if not block.keeps_next:
            groups.append([])
    return [part for group in groups if group for part in _fitting(group, most=most)]


def _fitting(group: list[Block], *, most: float) -> list[list[Block]]:
    """Give a group whole, or what a page can hold of it: a heading with the head and the first row of its table."""
    if height_of(group) <= most:
        return [group]
    begin = BEGINNING if height_of(group[:BEGINNING]) <= most else 1
    return [group[:begin], *([block] for block in group[begin:])]


def stacked(blocks: Sequence[Block], x: float = 0.0) -> tuple[Box, ...]:
    """Give the boxes of blocks one below the other, moved to the right."""
    boxes: list[Box] = []
    y = 0.0
    for block in blocks:
        boxes.extend(moved(block.boxes, x, y))
        y += block.height
    return tuple(boxes)
