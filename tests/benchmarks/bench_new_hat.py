"""How long a new hat takes from a knitter's answers to everything that is known of it."""

from collections.abc import Iterator
from pathlib import Path

from chartmaker.appraisal import appraise
from chartmaker.files.palette_reading import read_palette
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.body_plan import body_plan
from chartmaker.knit.starter import started
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import SHAPES
from tests.benchmarks.row import Row, median_ms

PALETTE = Path(__file__).parents[2] / "palettes" / "allotment.palette.toml"
FINE = Gauge(stitches_per_10cm=36, rounds_per_10cm=40)


def measure() -> Iterator[Row]:
    """Begin each shape for a large head at a fine gauge, lots and appraisal included, the body planned anew."""
    palette = read_palette(PALETTE)
    for shape in SHAPES:

        def begin(shape: str = shape) -> object:
            body_plan.cache_clear()
            return appraise(started(defaults_for(shape=shape, head_cm=60, gauge=FINE), palette), palette)

        design = started(defaults_for(shape=shape, head_cm=60, gauge=FINE), palette)
        rounds = sum(len(band.rounds) for band in design.bands)
        yield Row(
            name=f"a new {shape}, from answers to appraisal",
            figure=median_ms(begin),
            limit=100,
            unit="ms",
            detail=f"{design.bands[0].stitches(0)} stitches, {rounds} rounds; the screen takes the rest of 200 ms",
        )
