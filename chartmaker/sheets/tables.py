"""Tables: columns of stated widths, rows that grow with their text, and a head repeated on every page."""

from collections.abc import Sequence
from dataclasses import dataclass

from chartmaker.sheets.boxes import Box, Lines, Style, moved, text_at
from chartmaker.sheets.flow import Block, kept, line_height
from chartmaker.sheets.ink import HAIRLINE, QUIET
from chartmaker.sheets.lines import wrapped

CELL = Style(9.0)
CELL_STRONG = Style(9.0, bold=True)
HEAD = Style(7.5, ink=QUIET)
PAD_MM, CLOSE_PAD_MM = 1.0, 0.45
"""Above and below the text of a row, usually and in a close table."""
GUTTER_MM = 3.0
"""Between columns, inside their widths."""
HAIRLINE_MM = 0.18
MOST_ROWS_WHOLE = 8
"""A table of up to so many rows is not broken where a page can hold it."""


@dataclass(frozen=True, slots=True)
class Column:
    """One column."""

    title: str
    width: float
    align: str = "left"
    style: Style = CELL
    most_lines: int = 2


@dataclass(frozen=True, slots=True)
class Drawn:
    """A cell that is drawn: boxes from its top left corner."""

    height: float
    boxes: tuple[Box, ...]


Cell = str | Drawn


def scaled(columns: Sequence[Column], width: float) -> tuple[Column, ...]:
    """Give columns stretched or shrunk in proportion, to fill a width."""
    factor = width / sum(column.width for column in columns)
    return tuple(
        Column(column.title, column.width * factor, column.align, column.style, column.most_lines) for column in columns
    )


def table(columns: Sequence[Column], rows: Sequence[Sequence[Cell]], *, pad: float = PAD_MM) -> list[Block]:
    """Lay out a table, head and rows a block each; a short one stays whole, and no row of a long one stands alone."""
    head = _head(columns, sum(column.width for column in columns))
    blocks = [_row(columns, row, head, pad) for row in rows]
    if len(blocks) <= MOST_ROWS_WHOLE:
        return kept([head, *blocks])
    return [*kept([head, *blocks[:2]]), *blocks[2:-2], *kept(blocks[-2:])]


def _head(columns: Sequence[Column], width: float) -> Block:
    titles = [wrapped(column.title, most_mm=column.width - GUTTER_MM, size_pt=HEAD.size_pt) for column in columns]
    height = line_height(HEAD)
    depth = max(len(lines) for lines in titles) * height
    boxes: list[Box] = []
    x = 0.0
    for column, lines in zip(columns, titles, strict=True):
        top = depth - len(lines) * height
        boxes.extend(_lines(lines, column, x, top, HEAD))
        x += column.width
    boxes.append(Lines(((0, depth + 1.0, width, depth + 1.0),), 0.35, QUIET))
    return Block(depth + 1.6, tuple(boxes), keeps_next=True)


def _row(columns: Sequence[Column], row: Sequence[Cell], head: Block, pad: float) -> Block:
    boxes: list[Box] = []
    deepest = 0.0
    x = 0.0
    for column, cell in zip(columns, row, strict=True):
        if isinstance(cell, Drawn):
            boxes.extend(moved(cell.boxes, x, pad))
            deepest = max(deepest, cell.height)
        else:
            lines = _cell_lines(cell, column)
            boxes.extend(_lines(lines, column, x, pad, column.style))
            deepest = max(deepest, len(lines) * line_height(column.style))
        x += column.width
    height = deepest + 2 * pad
    boxes.append(Lines(((0, height, x, height),), HAIRLINE_MM, HAIRLINE))
    return Block(height, tuple(boxes), head=head)


def _cell_lines(text: str, column: Column) -> tuple[str, ...]:
    style = column.style
    most = column.width - GUTTER_MM
    return wrapped(text, most_mm=most, size_pt=style.size_pt, bold=style.bold, most_lines=column.most_lines)


def _lines(lines: Sequence[str], column: Column, x: float, top: float, style: Style) -> list[Box]:
    height = line_height(style)
    end = x + column.width - GUTTER_MM if column.align == "right" else x
    return [
        text_at(end, top + (number + 0.76) * height, line, style, align=column.align)
        for number, line in enumerate(lines)
    ]
