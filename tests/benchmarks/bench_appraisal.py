"""How long one stitch's edit takes to be appraised in full."""

from collections.abc import Iterator
from itertools import count

import numpy as np

from chartmaker.appraisal import appraise
from chartmaker.knit.layout import lay_out
from tests.benchmarks.large_design import edited, large_design
from tests.benchmarks.row import Row, median_ms


def measure() -> Iterator[Row]:
    """Appraise a 400 × 200 chart after each of many one-stitch edits."""
    design = large_design()
    turns = count()
    full_ms = median_ms(lambda: appraise(edited(design, next(turns))))
    fabric = lay_out(design)
    pass_ms = median_ms(lambda: np.bincount(fabric.letters))
    yield Row(name="a stitch edit on 400 × 200 appraised in full", figure=full_ms, limit=16, unit="ms")
    yield Row(
        name="the same, in passes of numpy.bincount over its cells",
        figure=full_ms / pass_ms,
        limit=None,
        unit="×",
        detail=f"one pass takes {pass_ms:.3f} ms",
    )
