"""What a long evening at the chart does: strokes, floods, fills of everything, and bands that change places."""

import random
from collections.abc import Callable
from dataclasses import replace

import numpy as np

from chartmaker.app.open_design import OpenDesign
from chartmaker.model.band_edits import move_band, split_band
from chartmaker.model.edits import Edit, ReplaceBands, ReplaceRounds, paint


def edits_at_random(document: OpenDesign) -> Callable[[], Edit | None]:
    """Split a design of one band in two, and give what makes the next edit of it: the same ones on every run."""
    document.do(split_band(document.design, band=0, index=len(document.design.bands[0].rounds) // 2))
    rng = random.Random(2026)
    makers = [_stroke] * 6 + [_flood] * 2 + [_fill, _move]
    return lambda: rng.choice(makers)(document, rng)


def _stroke(document: OpenDesign, rng: random.Random) -> Edit:
    band = rng.randrange(len(document.design.bands))
    rounds = document.design.bands[band].rounds
    row, stitch = rng.randrange(len(rounds) - 3), rng.randrange(len(rounds[0]) - 6)
    part = 1 - rounds[row].cells[stitch]
    cells = {(row + step // 2, stitch + step): part for step in range(6)}
    return paint(document.design, band=band, cells=cells, text="Draw")


def _flood(document: OpenDesign, rng: random.Random) -> Edit:
    """Turn ground and figure about in a third of the width, over a whole band."""
    band = rng.randrange(len(document.design.bands))
    rounds = document.design.bands[band].rounds
    start = rng.randrange(len(rounds[0]) // 2)
    stop = start + len(rounds[0]) // 3
    turned = bytes((1, 0))
    changes = tuple(
        (
            index,
            line,
            replace(
                line,
                cells=line.cells[:start]
                + line.cells[start:stop].translate(turned + bytes(range(2, 256)))
                + line.cells[stop:],
            ),
        )
        for index, line in enumerate(rounds)
    )
    return ReplaceRounds(band, changes, "Fill")


def _fill(document: OpenDesign, rng: random.Random) -> Edit:
    """Draw every round of every band anew, at random: nothing that a program could guess from what stood there."""
    noise = np.random.default_rng(rng.randrange(2**32))
    design = document.design
    bands = tuple(
        replace(
            band,
            rounds=tuple(
                replace(line, cells=noise.integers(0, 2, len(line), dtype=np.uint8).tobytes()) for line in band.rounds
            ),
        )
        for band in design.bands
    )
    return ReplaceBands(design.bands, bands, "Fill")


def _move(document: OpenDesign, _rng: random.Random) -> Edit | None:
    return move_band(document.design, band=0, up=True)
