"""What a hat's stitches are painted in under a tint: their letters' colours, or those of their rounds' tightness."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.appraisal import Appraisal
from chartmaker.knit.tightness import tightness
from chartmaker.pictures.cells import NO_STITCH, FlatCells
from chartmaker.pictures.fabric_tiles import flush_cells
from chartmaker.pictures.shades import LetterColours
from chartmaker.pictures.tightness_ramp import grade_codes, grade_colours
from chartmaker.pictures.tints import TIGHTNESS, tinted


@dataclass(frozen=True, slots=True, eq=False)
class HatColours:
    """A code for each stitch and a colour for each code."""

    cells: FlatCells
    """Every round flush, by codes; `NO_STITCH` beyond its last stitch."""
    linear: NDArray[np.float32]
    """Linear light of each code, shape (256, 3)."""
    trims: LetterColours
    """Of the letters, for what is sewn on."""


def hat_colours(appraisal: Appraisal, tint: str, *, severity: float = 1.0) -> HatColours:
    """Colour a hat in one of `tints.TINTS`; raises ValueError for another."""
    cells = flush_cells(appraisal.design, appraisal.fabric)
    if tint != TIGHTNESS:
        colours = tinted(appraisal, tint, severity=severity)
        return HatColours(cells, colours.linear, colours)
    codes = grade_codes(tightness(appraisal.design, appraisal.fabric, appraisal.profile))
    letters = np.where(cells.letters == NO_STITCH, NO_STITCH, codes[:, None]).astype(np.uint8)
    return HatColours(FlatCells(letters, cells.purl), grade_colours().linear, tinted(appraisal, "value"))
