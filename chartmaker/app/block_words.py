"""What is selected, as words for the foot of the window. No Qt here but for the language."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.model.block import Block


def block_words(block: Block, repeat: int, *, is_level: bool = True) -> str:
    """Tell how large a block is and where it begins, in a repeat of so many stitches.

    Where rounds have different counts it is told in columns of the chart, whose stitches are not all there.
    """
    one, many = (tr("1 stitch"), tr("{0} stitches")) if is_level else (tr("1 column"), tr("{0} columns"))
    across = one if block.width == 1 else many.format(block.width)
    up = tr("1 round") if block.height == 1 else tr("{0} rounds").format(block.height)
    start = (tr("stitch {0}") if is_level else tr("column {0}")).format(block.column + 1)
    if block.reach_over_join(repeat):
        return tr("{0} × {1}, from {2} across the join").format(across, up, start)
    return tr("{0} × {1}, from {2}").format(across, up, start)
