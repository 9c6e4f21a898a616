"""Edits that change how many stitches the repeat of a band has, at one of its sides or as a whole.

How often it goes round stays as it is when a repeat is widened or narrowed: a count that no longer meets is a finding.
Each raises ValueError, with a sentence, for what cannot be.
"""

from dataclasses import replace
from typing import Literal

from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands, with_bands
from chartmaker.model.round import Round
from chartmaker.model.stitches import Shaping

Side = Literal["left", "right"]


def change_repeat(design: Design, *, band: int, by: int, side: Side) -> ReplaceBands | None:
    """Make the edit that widens all rounds of a band by stitches of ground at one side; a negative `by` narrows them.

    Narrowing takes plain stitches, the outermost first, so that shaped rounds go on meeting.
    """
    old = design.bands[band]
    if old.texture and by % len(old.texture):
        raise ValueError(
            f"the texture {old.texture} must go on dividing the repeat: change it by {len(old.texture)} at a time, "
            f"or knit all"
        )
    changed = tuple(_widened(line, by, side) if by > 0 else _narrowed(line, -by, side) for line in old.rounds)
    text = f"{'Widen' if by > 0 else 'Narrow'} the repeat at the {side}"
    return _with_band(design, band, replace(old, rounds=changed), text)


def double_repeat(design: Design, *, band: int) -> ReplaceBands | None:
    """Make the edit that draws the repeat twice side by side and works it half as often: the hat is the same."""
    old = design.bands[band]
    if old.times % 2:
        raise ValueError(f"the repeat goes round {old.times} times, an odd number, so it cannot be doubled")
    doubled = tuple(replace(line, cells=line.cells * 2, shaping=line.shaping * 2) for line in old.rounds)
    return _with_band(design, band, replace(old, rounds=doubled, times=old.times // 2), "Double the repeat")


def halve_repeat(design: Design, *, band: int) -> ReplaceBands | None:
    """Make the edit that draws the repeat half as wide and works it twice as often: the hat is the same.

    Both halves of every round must be equal.
    """
    old = design.bands[band]
    for number, line in enumerate(old.rounds, start=1):
        if not _has_equal_halves(line):
            raise ValueError(f"the two halves of round {number} of band {old.name!r} differ, so it cannot be halved")
        if old.texture and len(line) // 2 % len(old.texture):
            raise ValueError(f"the texture {old.texture} does not divide half the repeat; knit all, or shorten it")
    halved = tuple(
        replace(line, cells=line.cells[: len(line) // 2], shaping=line.shaping[: len(line) // 2]) for line in old.rounds
    )
    return _with_band(design, band, replace(old, rounds=halved, times=old.times * 2), "Halve the repeat")


def _widened(line: Round, by: int, side: Side) -> Round:
    new = bytes(by)
    if side == "left":
        return replace(line, cells=line.cells + new, shaping=line.shaping + new)
    return replace(line, cells=new + line.cells, shaping=new + line.shaping)


def _narrowed(line: Round, by: int, side: Side) -> Round:
    """Take stitches from one side: stitch 1 is at the right. Shaped ones go last."""
    if by >= len(line):
        raise ValueError(f"a round of {len(line)} stitches cannot lose {by}; every round keeps at least one")
    order = sorted(
        range(len(line)),
        key=lambda stitch: (line.shaping[stitch] != Shaping.PLAIN, stitch if side == "right" else -stitch),
    )
    gone = set(order[:by])
    kept = [stitch for stitch in range(len(line)) if stitch not in gone]
    return replace(
        line, cells=bytes(line.cells[stitch] for stitch in kept), shaping=bytes(line.shaping[stitch] for stitch in kept)
    )


def _has_equal_halves(line: Round) -> bool:
    half, odd = divmod(len(line), 2)
    return not odd and line.cells[:half] == line.cells[half:] and line.shaping[:half] == line.shaping[half:]


def _with_band(design: Design, index: int, band: Band, text: str) -> ReplaceBands | None:
    return with_bands(design, (*design.bands[:index], band, *design.bands[index + 1 :]), text)
