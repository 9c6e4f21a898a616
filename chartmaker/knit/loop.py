"""Loop length: how much yarn one stitch takes."""

import contextlib
import math
import statistics
from dataclasses import dataclass

from chartmaker.knit.interval import Interval
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.units import Measured

KS_DRY_RELAXED = 19.0
"""Plain-knit wool, dry relaxed (Munden 1959, J. Textile Inst. 50)."""
KS_WET_RELAXED = 21.6
"""Plain-knit wool, wet relaxed (Munden 1959): what a hat is once washed and dried, and so the likely figure."""
KS_FULLY_RELAXED = 23.1
"""Plain knit, fully relaxed: Kc 5.5 × Kw 4.2 (data of GATE TF 2015, question 54)."""
SWATCH_ERROR_PERCENT = 5.0
"""How far one swatch may be off, from its counting, its stretching and the scale: common practice, no source."""
COUNTED_TO = 0.5
"""Stitches, and rounds, over 10 cm that a gauge is right to: common practice, no source."""
T_95_OF_MANY = 1.645
"""0.95 quantile of the normal distribution (NIST/SEMATECH e-Handbook, table 1.3.6.7.2, the last row)."""


@dataclass(frozen=True, slots=True)
class LoopLength:
    """The yarn in one stitch, and where the figure comes from."""

    cm: Interval
    source: str
    """Either "swatch" or "gauge"."""
    swatches: tuple[float, ...] = ()
    """What each swatch gives by itself, in cm."""
    deviation_cm: float | None = None
    """Standard deviation of the swatches; None for fewer than two."""

    @property
    def why(self) -> str:
        """What the width of the interval rests on, as a sentence."""
        if self.source == "gauge":
            return (
                "There is no swatch: this is Munden's relation for plain machine-knit wool, from dry relaxed "
                f"(Ks {KS_DRY_RELAXED:g}) to fully relaxed ({KS_FULLY_RELAXED:g}), since nobody can say beforehand how "
                "far your fabric will relax, and with a gauge that is right to half a stitch and half a round."
            )
        if self.deviation_cm is None:
            return f"One swatch: taken as right to {SWATCH_ERROR_PERCENT:g} %, for its counting and weighing."
        deviation_cm = self.deviation_cm
        return Measured(
            lambda units: (
                f"{len(self.swatches)} swatches, which scatter by {units.length.fine(deviation_cm)}: the mean, and "
                "what it may be off by."
            )
        )


def munden_loop_cm(stitches_per_cm2: float, ks: float) -> float:
    """Give the loop length in cm by Munden's relation S = Ks / l², S in stitches/cm² (Munden 1959)."""
    return math.sqrt(ks / stitches_per_cm2)


def loop_from_gauge(gauge: Gauge) -> LoopLength:
    """Estimate the loop length from gauge, between the dry relaxed and the fully relaxed state.

    The low end has half a stitch and half a round more over 10 cm than the gauge says, the high end as many less.
    """
    states = ((KS_DRY_RELAXED, COUNTED_TO), (KS_WET_RELAXED, 0.0), (KS_FULLY_RELAXED, -COUNTED_TO))
    found = [munden_loop_cm(_stitches_per_cm2(gauge, more), ks) for ks, more in states]
    return LoopLength(Interval(*found), "gauge")


def _stitches_per_cm2(gauge: Gauge, more: float) -> float:
    return (gauge.stitches_per_10cm + more) * (gauge.rounds_per_10cm + more) / 100


def swatch_loop_cm(swatch: Swatch, design: Design) -> float:
    """Work the loop length out from one swatch: its yarn less its floats, over its stitches.

    Floats take a stitch width, and the design's slack, for each stitch that they pass. Raises ValueError where they
    would take all the yarn.
    """
    grist = swatch.metres_per_100g or design.metres_per_100g
    metres = swatch.metres if swatch.metres is not None else (swatch.weight_g or 0.0) * grist / 100
    slack = 1 + design.allowances.float_slack_percent / 100
    floats_cm = swatch.passed * design.gauge.stitch_width_cm * slack
    if floats_cm >= 100 * metres:
        raise ValueError(
            Measured(
                lambda units: (
                    f"the swatch has {units.yarn.fine(metres)} of yarn, "
                    f"and its floats alone would take {units.yarn.fine(floats_cm / 100)}"
                )
            )
        )
    return (100 * metres - floats_cm) / swatch.stitches


def loop_from_swatches(design: Design) -> LoopLength:
    """Take the mean of the swatches that can be used; raises ValueError where none can.

    One is right to `SWATCH_ERROR_PERCENT`. The mean of several errs by its standard error, at 95 % on either side by
    the normal distribution, and never less than a lone swatch's error over √n: two that agree by luck prove little.
    """
    found = []
    for swatch in design.swatches:
        with contextlib.suppress(ValueError):
            found.append(swatch_loop_cm(swatch, design))
    if not found:
        raise ValueError("no swatch can be used")
    mean = statistics.fmean(found)
    deviation = statistics.stdev(found) if len(found) > 1 else None
    error = mean * SWATCH_ERROR_PERCENT / 100 / math.sqrt(len(found))
    half = max(error, T_95_OF_MANY * (deviation or 0.0) / math.sqrt(len(found)))
    interval = Interval(max(0.0, mean - half), mean, mean + half)
    return LoopLength(interval, "swatch", tuple(found), deviation)


def loop_length(design: Design) -> LoopLength:
    """Give the loop length: from the swatches when there are any of use, else from gauge."""
    with contextlib.suppress(ValueError):
        return loop_from_swatches(design)
    return loop_from_gauge(design.gauge)


def tex(metres_per_100g: float) -> float:
    """Convert grist to tex, grams in a kilometre: 100 000 / (m per 100 g)."""
    return 100_000 / metres_per_100g


def areal_density(*, stitches_per_cm2: float, loop_cm: float, grist_tex: float) -> float:
    """Give g/m² of plain cloth: S · l[mm] · tex / 100 (Texcoms Textile Technical Handbook 2023, p. 147)."""
    return stitches_per_cm2 * (10 * loop_cm) * grist_tex / 100
