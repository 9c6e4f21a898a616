"""A block: some rounds of a band by some columns of its drawing, which may run over the join of the repeat.

Columns are those of the chart. Column 0 is the right-most, and after the last comes the first again, since the next
repeat begins there. In a band of one count they are its stitches; in a shaped one a rule that is told to `drawing_of`
(`knit.outline.chart_offsets`) says in which column each round's first stitch stands, so that columns run true.
"""

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from chartmaker.model.band import Band
from chartmaker.model.clip import GAP, GAPS, Clip
from chartmaker.model.design import Design
from chartmaker.model.round import Round

ColumnRule = Callable[[tuple[Round, ...]], tuple[int, ...]]
"""Gives the column of each round's stitch 1, by index of the round."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """Which cells are worked on together."""

    band: int
    first: int
    """Index in the band of its lowest round."""
    last: int
    """Of its highest; it belongs to the block."""
    column: int
    """Its right-most, within the repeat."""
    width: int
    """Columns; what reaches past the repeat's end goes on at its beginning."""

    def __post_init__(self) -> None:
        if not 0 <= self.first <= self.last or self.band < 0 or self.column < 0 or self.width < 1:
            raise ValueError(
                f"no block of rounds {self.first + 1} to {self.last + 1} and {self.width} columns from {self.column}"
            )

    @property
    def height(self) -> int:
        """How many rounds it has."""
        return self.last - self.first + 1

    def reach_over_join(self, repeat: int) -> int:
        """Give how many of its columns lie past the join of a repeat of so many columns; 0 where it ends before."""
        return max(0, self.column + self.width - repeat)


@dataclass(frozen=True, slots=True)
class Drawing:
    """A band as its chart shows it: the part in each column, `GAP` where no stitch stands."""

    lines: tuple[bytes, ...]
    """One a round, all of one width."""
    columns: tuple[int, ...]
    """Of each round's stitch 1."""
    counts: tuple[int, ...]
    """Stitches of each round."""

    @property
    def width(self) -> int:
        """Columns after which the next repeat begins."""
        return len(self.lines[0])

    def cut(self, index: int, column: int, width: int) -> bytes:
        """Give what stands in columns of a round from a column on, over the join where they reach it."""
        line = self.lines[index]
        start = column % len(line)
        return (line + line)[start : start + width]

    def with_laid(self, index: int, column: int, line: bytes) -> bytes:
        """Give the cells of a round with a line laid over it from a column on; gaps of the line leave what is there."""
        old = self.cut(index, column, len(line))
        new = line if GAP not in line else bytes(b if a == GAP else a for a, b in zip(line, old, strict=True))
        turned = new + self.cut(index, column + len(line), self.width - len(line))
        back = -column % self.width
        whole = turned[back:] + turned[:back]
        return whole[self.columns[index] : self.columns[index] + self.counts[index]]


def level(rounds: tuple[Round, ...]) -> tuple[int, ...]:
    """Give column 0 for every round: the rule of a band of one count."""
    return (0,) * len(rounds)


@lru_cache(maxsize=8)
def drawing_of(band: Band, columns: ColumnRule = level) -> Drawing:
    """Give a band as its chart shows it; the last few are kept, since every step of an edit asks for the same."""
    offsets = columns(band.rounds)
    width = max(offset + len(line) for offset, line in zip(offsets, band.rounds, strict=True))
    lines = tuple(
        GAPS * offset + line.cells + GAPS * (width - offset - len(line))
        for offset, line in zip(offsets, band.rounds, strict=True)
    )
    return Drawing(lines, offsets, tuple(map(len, band.rounds)))


def is_there(design: Design, block: Block, columns: ColumnRule = level) -> bool:
    """Tell whether a design has the band, the rounds and the columns of a block."""
    if block.band >= len(design.bands) or block.last >= len(design.bands[block.band].rounds):
        return False
    width = drawing_of(design.bands[block.band], columns).width
    return block.column < width and block.width <= width


def cut_out(design: Design, block: Block, columns: ColumnRule = level) -> Clip:
    """Give what a block holds.

    Raises ValueError where the design has no such block.
    """
    if not is_there(design, block, columns):
        raise ValueError(f"no block of rounds {block.first + 1} to {block.last + 1} in band {block.band + 1}")
    band = design.bands[block.band]
    drawing, rounds = drawing_of(band, columns), range(block.first, block.last + 1)
    lines = tuple(drawing.cut(index, block.column, block.width) for index in rounds)
    return Clip(lines, tuple(band.rounds[index].letters for index in rounds))


def whole_rounds(design: Design, *, band: int, first: int, last: int, columns: ColumnRule = level) -> Block:
    """Give the block of all stitches of some rounds: as wide as they reach, from the right-most one's column."""
    drawing = drawing_of(design.bands[band], columns)
    rounds = range(first, last + 1)
    column = min(drawing.columns[index] for index in rounds)
    end = max(drawing.columns[index] + drawing.counts[index] for index in rounds)
    return Block(band=band, first=first, last=last, column=column, width=end - column)
