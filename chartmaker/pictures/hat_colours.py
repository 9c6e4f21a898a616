"""What a hat's stitches are painted in under a tint: their letters' colours, or those of their rounds' tightness."""

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from chartmaker.appraisal import Appraisal
from chartmaker.knit.tightness import tightness
from chartmaker.pictures.cells import NO_STITCH
from chartmaker.pictures.fabric_tiles import FlushCells, flush_cells
from chartmaker.pictures.shades import LetterColours
from chartmaker.pictures.tightness_ramp import grade_codes, grade_colours
from chartmaker.pictures.tints import TIGHTNESS, tinted


@dataclass(frozen=True, slots=True, eq=False)
class HatColours:
    """A code for each stitch and a colour for each code."""

    cells: FlushCells
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
    by_round = np.where(cells.codes == NO_STITCH, NO_STITCH, codes[:, None]).astype(np.uint8)
    return HatColours(replace(cells, codes=by_round), grade_colours().linear, tinted(appraisal, "value"))
