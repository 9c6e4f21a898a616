"""Loop length: how much yarn one stitch takes."""

import math
from dataclasses import dataclass

from chartmaker.knit.interval import Interval
from chartmaker.model.gauge import Gauge, Swatch

KS_DRY_RELAXED = 19.0
"""Plain-knit wool, dry relaxed (Munden 1959, J. Textile Inst. 50)."""
KS_WET_RELAXED = 21.6
"""Plain-knit wool, wet relaxed (Munden 1959): what a hat is once washed and dried, and so the likely figure."""
KS_FULLY_RELAXED = 23.1
"""Plain knit, fully relaxed: Kc 5.5 × Kw 4.2 (data of GATE TF 2015, question 54)."""
SWATCH_ERROR_PERCENT = 5.0
"""How far one swatch may be off, from its counting, its stretching and the scale: common practice, no source."""


@dataclass(frozen=True, slots=True)
class LoopLength:
    """The yarn in one stitch, and where the figure comes from."""

    cm: Interval
    source: str
    """Either "swatch" or "gauge"."""


def munden_loop_cm(stitches_per_cm2: float, ks: float) -> float:
    """Give the loop length in cm by Munden's relation S = Ks / l², S in stitches/cm² (Munden 1959)."""
    return math.sqrt(ks / stitches_per_cm2)


def loop_from_gauge(gauge: Gauge) -> LoopLength:
    """Estimate the loop length from gauge, between the dry relaxed and the fully relaxed state."""
    density = 1 / (gauge.stitch_width_cm * gauge.round_height_cm)
    states = (KS_DRY_RELAXED, KS_WET_RELAXED, KS_FULLY_RELAXED)
    return LoopLength(Interval(*(munden_loop_cm(density, ks) for ks in states)), "gauge")


def loop_from_swatch(swatch: Swatch, *, metres_per_100g: float) -> LoopLength:
    """Work the loop length out from a swatch; one that was weighed needs the yarn's grist."""
    metres = swatch.metres if swatch.metres is not None else (swatch.grams or 0.0) * metres_per_100g / 100
    return LoopLength(Interval.about(100 * metres / swatch.stitches, percent=SWATCH_ERROR_PERCENT), "swatch")


def loop_length(gauge: Gauge, swatch: Swatch | None, *, metres_per_100g: float) -> LoopLength:
    """Give the loop length: from the swatch when there is one, else from gauge."""
    return loop_from_swatch(swatch, metres_per_100g=metres_per_100g) if swatch else loop_from_gauge(gauge)


def tex(metres_per_100g: float) -> float:
    """Convert grist to tex, grams in a kilometre: 100 000 / (m per 100 g)."""
    return 100_000 / metres_per_100g


def areal_density(*, stitches_per_cm2: float, loop_cm: float, grist_tex: float) -> float:
    """Give g/m² of plain cloth: S · l[mm] · tex / 100 (Texcoms Textile Technical Handbook 2023, p. 147)."""
    return stitches_per_cm2 * (10 * loop_cm) * grist_tex / 100
