"""Edits of a block: cleared, pasted, moved, turned about, shifted within itself, repeated across its band.

Parts move, letters stay: re-drawing never touches shading, but that a round takes a letter for a part that it had none
for, as `edits.paint` gives it. Each raises ValueError, with a sentence, for what cannot be. Where rounds have different
counts a block is turned only onto the stitches that it covers already.
"""

from dataclasses import dataclass, replace

from chartmaker.model.block import Block, ColumnRule, cut_out, drawing_of, level
from chartmaker.model.clip import GAP, GAPS, Clip
from chartmaker.model.design import Design
from chartmaker.model.edits import Edit, ReplaceRounds, one_edit, redraw
from chartmaker.model.stitches import Part

Corner = tuple[int, int, int]
"""Band, round in the band and column of a block's lowest and right-most cell; the column may lie in a neighbour."""


@dataclass(frozen=True, slots=True)
class Laid:
    """What laying a piece down comes to."""

    edit: Edit | None
    """None where nothing changes."""
    block: Block
    """Where it lies then."""
    left_out: int
    """Rounds of it for which the band has none."""


def clear(design: Design, block: Block, columns: ColumnRule = level) -> ReplaceRounds:
    """Make the edit that leaves ground where the block is."""
    blank = (bytes([Part.GROUND]) * block.width,) * block.height
    drawn = _laid(design, (block.band, block.first, block.column), blank, columns)
    return redraw(design, band=block.band, drawn=drawn, text="Clear a block")


def paste(design: Design, clip: Clip, *, to: Corner, columns: ColumnRule = level, text: str = "Paste a block") -> Laid:
    """Make the edit that lays a piece down, going on over the join, and leaving out the rounds above the band's top.

    Columns beside the wedge of a shaped band are left out too.
    """
    _require_room(design, clip, to, columns)
    drawn = _laid(design, to, clip.lines, columns)
    edit = redraw(design, band=to[0], drawn=drawn, text=text)
    return _landed(design, clip, to, columns, edit if edit.changes else None)


def move(design: Design, block: Block, *, to: Corner, columns: ColumnRule = level) -> Laid:
    """Make the edit that lays a block down elsewhere, in its band or another, with ground where it was."""
    clip = cut_out(design, block, columns)
    _require_room(design, clip, to, columns)
    text = "Move a block"
    cleared = replace(clear(design, block, columns), text=text)
    if to[0] != block.band:
        drawn = _laid(design, to, clip.lines, columns)
        edit = one_edit(design, [cleared, redraw(design, band=to[0], drawn=drawn, text=text)])
        return _landed(design, clip, to, columns, edit)
    # A round that has no letter for a part yet keeps none where it is only cleared, so both steps are one drawing.
    between = cleared.applied_to(design)
    drawn = {index: after.cells for index, _, after in cleared.changes}
    drawn |= _laid(between, to, clip.lines, columns)
    edit = redraw(design, band=block.band, drawn=drawn, text=text)
    return _landed(design, clip, to, columns, edit if edit.changes else None)


def copy(design: Design, block: Block, *, to: Corner, columns: ColumnRule = level) -> Laid:
    """Make the edit that lays a block down elsewhere too."""
    return paste(design, cut_out(design, block, columns), to=to, columns=columns, text="Copy a block")


def flip_sideways(design: Design, block: Block, columns: ColumnRule = level) -> ReplaceRounds:
    """Make the edit that flips a block left and right; whole rounds, each about its own middle."""
    clip = cut_out(design, block, columns)
    return _put_back(design, block, _sideways(design, block, clip), columns, "Flip left and right")


def flip_upright(design: Design, block: Block, columns: ColumnRule = level) -> ReplaceRounds:
    """Make the edit that flips a block upside down."""
    return _put_back(design, block, cut_out(design, block, columns).flipped_upright(), columns, "Flip upside down")


def turn_half(design: Design, block: Block, columns: ColumnRule = level) -> ReplaceRounds:
    """Make the edit that turns a block by half a turn: as flipping it both ways does."""
    clip = cut_out(design, block, columns)
    turned = _sideways(design, block, clip).flipped_upright()
    return _put_back(design, block, turned, columns, "Turn by half a turn")


def shift(
    design: Design, block: Block, *, rounds: int = 0, stitches: int = 0, columns: ColumnRule = level
) -> ReplaceRounds:
    """Make the edit that shifts a block up and to the left within itself, or down and to the right below zero.

    What leaves at one side comes in at the other: of whole rounds, that is round the circumference.
    """
    clip = cut_out(design, block, columns).shifted(rounds=rounds, stitches=stitches)
    return _put_back(design, block, clip, columns, "Shift within the block")


def repeat(design: Design, block: Block, columns: ColumnRule = level) -> ReplaceRounds:
    """Make the edit that works a block over and over across its rounds, from where it stands.

    Raises ValueError, with the widths that would do, where its width does not divide the repeat.
    """
    drawing = drawing_of(design.bands[block.band], columns)
    clip = cut_out(design, block, columns)
    if clip.has_gaps or any(count != drawing.width for count in drawing.counts[block.first : block.last + 1]):
        raise ValueError("a block is repeated across rounds of one count, and these differ from their band's widest")
    copies, left_over = divmod(drawing.width, block.width)
    if left_over:
        widths = [str(width) for width in range(1, drawing.width + 1) if drawing.width % width == 0]
        would = f"{', '.join(widths[:-1])} or {widths[-1]}" if len(widths) > 1 else widths[0]
        raise ValueError(
            f"a block of {block.width} stitches does not divide the repeat of {drawing.width}; one of {would} would"
        )
    lines = tuple(line * copies for line in clip.lines)
    drawn = _laid(design, (block.band, block.first, block.column), lines, columns)
    return redraw(design, band=block.band, drawn=drawn, text="Repeat a block across the band")


def _sideways(design: Design, block: Block, clip: Clip) -> Clip:
    """Flip a clip of the block: about the middle of each round where it holds them whole, else about its own."""
    rounds = design.bands[block.band].rounds[block.first : block.last + 1]
    is_whole = all(
        len(line.strip(GAPS)) == len(whole) and GAP not in line.strip(GAPS)
        for line, whole in zip(clip.lines, rounds, strict=True)
    )
    return clip.flipped_sideways(within_stitches=is_whole)


def _put_back(design: Design, block: Block, clip: Clip, columns: ColumnRule, text: str) -> ReplaceRounds:
    before = cut_out(design, block, columns).gaps
    for number, (old, new) in enumerate(zip(before, clip.gaps, strict=True), start=block.first + 1):
        if old != new:
            raise ValueError(
                f"round {number} of the band would have stitches where the wedge has none; choose rounds of one count, "
                f"or a block within the wedge"
            )
    drawn = _laid(design, (block.band, block.first, block.column), clip.lines, columns)
    return redraw(design, band=block.band, drawn=drawn, text=text)


def _laid(design: Design, to: Corner, lines: tuple[bytes, ...], columns: ColumnRule) -> dict[int, bytes]:
    """Give the cells of the band's rounds with lines laid over them from a corner on, as far as it has rounds."""
    band, first, column = to
    drawing = drawing_of(design.bands[band], columns)
    return {
        index: drawing.with_laid(index, column, line)
        for index, line in enumerate(lines, start=first)
        if index < len(drawing.lines)
    }


def _require_room(design: Design, clip: Clip, to: Corner, columns: ColumnRule) -> None:
    band = design.bands[to[0]]
    width = drawing_of(band, columns).width
    if not 0 <= to[1] < len(band.rounds):
        raise ValueError(f"the band has no round {to[1] + 1} to lay the piece on")
    if clip.width > width:
        raise ValueError(f"the piece is {clip.width} stitches wide, the band's repeat only {width}")


def _landed(design: Design, clip: Clip, to: Corner, columns: ColumnRule, edit: Edit | None) -> Laid:
    band = design.bands[to[0]]
    last = min(to[1] + len(clip.lines), len(band.rounds)) - 1
    column = to[2] % drawing_of(band, columns).width
    block = Block(band=to[0], first=to[1], last=last, column=column, width=clip.width)
    return Laid(edit, block, to[1] + len(clip.lines) - 1 - last)
