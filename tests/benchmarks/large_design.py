"""A design as large as the benchmarks ask for, with lots that have several spectra each."""

import numpy as np

from chartmaker.model.band import Band
from chartmaker.model.design import Colourway, Design
from chartmaker.model.edits import paint
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.reading import Spectrum
from chartmaker.model.round import Round


def large_design(*, stitches: int = 400, rounds: int = 200, letters: str = "ABCDEFGH") -> Design:
    """Give a chart of one repeat as wide as the round, every cell of it drawn at random, two letters a round."""
    rng = np.random.default_rng(2026)
    lines = tuple(
        Round(
            letters[index % len(letters)] + letters[(index + 3) % len(letters)],
            rng.integers(0, 2, stitches, dtype=np.uint8).tobytes(),
        )
        for index in range(rounds)
    )
    lots = tuple(_lot(letter, level, rng) for letter, level in zip(letters, np.linspace(0.05, 0.7, 8), strict=True))
    return Design(
        title="Large",
        bands=(Band(name="all over", times=1, rounds=lines),),
        colourways=(Colourway("first", tuple((letter, lot.id) for letter, lot in zip(letters, lots, strict=True))),),
        palette=Palette(lots=lots),
    )


def edited(design: Design, turn: int) -> Design:
    """Give the design with one stitch changed, a different one each turn."""
    index, stitch = turn * 7 % len(design.bands[0].rounds), turn * 13 % len(design.bands[0].rounds[0])
    part = 1 - design.bands[0].rounds[index].cells[stitch]
    return paint(design, band=0, cells={(index, stitch): part}, text="Draw").applied_to(design)


def _lot(letter: str, level: float, rng: np.random.Generator) -> Lot:
    readings = tuple(
        Spectrum(
            start_nm=400, step_nm=10, reflectance=tuple(np.clip(level + rng.normal(0, 0.01, 31), 0.01, 1).tolist())
        )
        for _ in range(4)
    )
    return Lot(id=f"lot-{letter}", name=letter, readings=readings, on_hand_g=50)
