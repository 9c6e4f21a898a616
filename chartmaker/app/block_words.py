"""What is selected, as words for the foot of the window. No Qt here but for the language."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.model.block import Block


def size_words(stitches: int, rounds: int) -> str:
    """Tell a size: "12 stitches × 7 rounds"."""
    across = tr("1 stitch") if stitches == 1 else tr("{0} stitches").format(stitches)
    up = tr("1 round") if rounds == 1 else tr("{0} rounds").format(rounds)
    return tr("{0} × {1}").format(across, up)


def block_words(block: Block, repeat: int) -> str:
    """Tell how large a block is and where it begins, in a repeat of so many stitches."""
    size = size_words(block.width, block.height)
    if block.reach_over_join(repeat):
        return tr("{0}, from stitch {1} across the join").format(size, block.column + 1)
    return tr("{0}, from stitch {1}").format(size, block.column + 1)


def left_out_words(rounds: int) -> str:
    """Tell how many rounds found none in the band to lie on."""
    if rounds == 1:
        return tr("The band ends there: 1 round was left out")
    return tr("The band ends there: {0} rounds were left out").format(rounds)
