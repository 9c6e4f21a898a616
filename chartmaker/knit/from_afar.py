"""How two letters differ when the knitted pattern is seen across a room."""

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.band import Band
from chartmaker.model.bounds import MOST_LETTERS
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.distance import angle_degrees, seen_from_afar
from chartmaker.shade.lab import lab_of_xyz, xyz_of_lab
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.weights import white_point

ACROSS_ROOM_CM = 300.0
"""Common practice, no source."""


@dataclass(frozen=True, slots=True)
class FarContrast:
    """How two letters differ from afar, in the band where both have most stitches."""

    letters: str
    """Both, in alphabetical order."""
    band: int
    """Index of that band."""
    value_difference: float
    """|ΔL*| of what the eye makes of their stitches."""
    ciede2000: float


def contrasts_from_afar(
    design: Design, shades: Mapping[str, LotShade], *, distance_cm: float = ACROSS_ROOM_CM
) -> dict[str, FarContrast]:
    """Give, by the two letters, how each pair that shares a band differs when the fabric is seen from this distance.

    A letter's colour from afar is the mean of its stitches as `shade.distance` has them, so that single stitches run
    into what is round them and wide areas keep their colour. Bands that are shaped, or have a letter without a shade,
    are left out: their pattern does not go on as it stands.
    """
    found: dict[str, tuple[int, FarContrast]] = {}
    for index, band in enumerate(design.bands):
        letters = set("".join(line.letters_in_use for line in band.rounds))
        if len(letters) < 2 or not letters <= shades.keys() or len({len(line) for line in band.rounds}) > 1:
            continue
        if band.is_shaped:
            continue
        for common, contrast in _in_band(index, band, design.gauge, shades, distance_cm):
            kept = found.get(contrast.letters)
            if kept is None or kept[0] < common:
                found[contrast.letters] = (common, contrast)
    return {letters: contrast for letters, (_, contrast) in found.items()}


def _in_band(
    index: int, band: Band, gauge: Gauge, shades: Mapping[str, LotShade], distance_cm: float
) -> list[tuple[int, FarContrast]]:
    """Give the contrast of every two letters of a band, with the stitches of the one that has fewer in the hat."""
    cells = np.array([list(line.cells_by_letter) for line in band.rounds], dtype=np.uint8)
    letters = sorted(set("".join(line.letters_in_use for line in band.rounds)))
    white = white_point(shades[letters[0]].viewing)
    seen = seen_from_afar(_xyz(cells, letters, shades, white), cell_degrees=_stitch_degrees(gauge, distance_cm))
    masks = {letter: cells == _code(letter) for letter in letters}
    lab = {letter: lab_of_xyz(seen[mask].mean(axis=0), white=white) for letter, mask in masks.items()}
    found = []
    for one, other in combinations(letters, 2):
        common = band.times * min(int(masks[one].sum()), int(masks[other].sum()))
        difference = float(abs(lab[one][0] - lab[other][0]))
        apart = float(ciede2000(lab[one], lab[other]))
        found.append((common, FarContrast(one + other, index, difference, apart)))
    return found


def _xyz(
    cells: NDArray[np.uint8], letters: list[str], shades: Mapping[str, LotShade], white: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Give the XYZ of every cell, rounds × stitches × 3."""
    table = np.zeros((MOST_LETTERS, 3))
    for letter in letters:
        table[_code(letter)] = xyz_of_lab(shades[letter].lab, white=white)
    return table[cells]


def _stitch_degrees(gauge: Gauge, distance_cm: float) -> tuple[float, float]:
    return (
        angle_degrees(gauge.stitch_width_cm, distance_cm=distance_cm),
        angle_degrees(gauge.round_height_cm, distance_cm=distance_cm),
    )


def _code(letter: str) -> int:
    return ord(letter) - ord("A")
