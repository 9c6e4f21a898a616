"""Motifs laid into a design, taken out of one, and made bands of their own."""

import re
import unicodedata
from collections.abc import Collection, Iterator
from dataclasses import replace

from chartmaker.model.band import Band
from chartmaker.model.block import Block, ColumnRule, cut_out, level, whole_rounds
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceRounds, paint
from chartmaker.model.motif import LONGEST_WORD, PLACEHOLDERS, Motif, fits
from chartmaker.model.round import Round

Cells = dict[tuple[int, int], int]
"""The part of each cell, by index of the round in the band and index of the stitch."""


def stamped(
    design: Design, motif: Motif, *, band: int, at: tuple[int, int], offsets: tuple[int, ...] = ()
) -> ReplaceRounds:
    """Make the edit that draws a motif into a band, its first stitch at `at` (round in the band, stitch).

    Only parts are written: letters stay, shaping stays, and a plain round takes a letter for its figure as `paint`
    gives it one. See `stamp_cells` for where the motif goes.
    """
    cells = stamp_cells(design.bands[band], motif, at=at, offsets=offsets)
    return paint(design, band=band, cells=cells, text=f"Stamp {motif.name}")


def stamp_cells(band: Band, motif: Motif, *, at: tuple[int, int], offsets: tuple[int, ...] = ()) -> Cells:
    """Give the cells that a stamp would write, for a preview too; rounds past the band's ends are left out.

    Where the motif's repeat divides the band's it is tiled over it, with a tile beginning at `at`; else it stands once,
    closing round the join. In a shaped band it stands once and stops at the wedge's edges; `offsets` are the columns at
    which the rounds' first stitches are drawn (`knit.outline.chart_offsets`), so that its columns run true.
    Raises ValueError where `stamp_hindrance` has something to say.
    """
    hindrance = stamp_hindrance(band, motif)
    if hindrance:
        raise ValueError(hindrance)
    first, stitch = at
    if not 0 <= first < len(band.rounds):
        raise ValueError(f"the band has no round {first + 1}")
    drawing = {
        (first + up, across): cell for up, line in enumerate(motif.rounds) for across, cell in enumerate(line.cells)
    }
    within = {place: cell for place, cell in drawing.items() if place[0] < len(band.rounds)}
    if band.is_shaped:
        columns = offsets or (0,) * len(band.rounds)
        return dict(_once_in_wedge(within, band, columns=columns, from_column=stitch + columns[first]))
    repeat = len(band.rounds[0])
    copies = repeat // motif.repeat if repeat % motif.repeat == 0 else 1
    return {
        (index, (stitch + across + copy * motif.repeat) % repeat): cell
        for copy in range(copies)
        for (index, across), cell in within.items()
    }


def stamp_hindrance(band: Band, motif: Motif) -> str:
    """Say in a sentence why the motif cannot be stamped into the band; empty where it can."""
    widest = max(map(len, band.rounds))
    if motif.is_shaped:
        return f"{motif.name} is shaped: lay it in as a band of its own"
    if motif.repeat > widest:
        return f"{motif.name} is {motif.repeat} stitches wide, the band's repeat only {widest}"
    return ""


def motif_from(
    design: Design, block: Block, *, name: str, taken: Collection[str] = (), columns: ColumnRule = level
) -> Motif:
    """Make a motif of a block, which may run over the repeat's join; letters become placeholders.

    The shaping comes along where the block is the whole of its rounds. The id is made of the name, other than those
    `taken`. Raises ValueError where the design has no such block, or part of it lies beside a wedge.
    """
    clip = cut_out(design, block, columns)
    if block == whole_rounds(design, band=block.band, first=block.first, last=block.last, columns=columns):
        lines = design.bands[block.band].rounds[block.first : block.last + 1]
        return motif_of(lines, name=name, taken=taken)
    if clip.has_gaps:
        raise ValueError("part of the block lies beside the wedge; choose one within it, or the whole of its rounds")
    return motif_of(clip.rounds(), name=name, taken=taken)


def motif_of(rounds: tuple[Round, ...], *, name: str, taken: Collection[str] = ()) -> Motif:
    """Make a motif of rounds, as a picture or words give them; letters become placeholders, its id is not `taken`."""
    lines = tuple(replace(line, letters=PLACEHOLDERS[: max(line.cells) + 1]) for line in rounds)
    return Motif(id=motif_id(name, taken), name=name, family="own", rounds=lines)


def as_band(motif: Motif, *, stitches: int, letters: str, name: str = "") -> Band:
    """Make a band of a motif, worked as often as `stitches` of the round below hold its repeat.

    `letters` play ground, figure and, where the motif has one, the third; without a name the band takes the motif's.
    Raises ValueError where the repeat does not divide the stitches, or there are too few letters.
    """
    if not fits(motif, stitches):
        raise ValueError(f"{motif.name} repeats every {motif.repeat} stitches, which does not divide {stitches}")
    if len(letters) < motif.parts:
        raise ValueError(f"{motif.name} needs {motif.parts} letters, not {len(letters)}")
    rounds = tuple(replace(line, letters=letters[: len(line.letters)]) for line in motif.rounds)
    return Band(name=name or motif.name, times=stitches // motif.repeat, rounds=rounds)


def motif_id(name: str, taken: Collection[str] = ()) -> str:
    """Make an id of a name: its Latin letters without their accents and its digits, numbered where it is taken."""
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    stem = re.sub(r"[^a-z0-9]+", "-", plain)[: LONGEST_WORD - 8].strip("-") or "motif"
    number, chosen = 1, stem
    while chosen in taken:
        number += 1
        chosen = f"{stem}-{number}"
    return chosen


def _once_in_wedge(
    drawing: Cells, band: Band, *, columns: tuple[int, ...], from_column: int
) -> Iterator[tuple[tuple[int, int], int]]:
    for (index, across), cell in drawing.items():
        stitch = from_column + across - columns[index]
        if 0 <= stitch < len(band.rounds[index]):
            yield (index, stitch), cell
