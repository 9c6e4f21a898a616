"""How long it takes to find every stitch count that a hat's bands allow, what would help, and what a change moves."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from chartmaker.app.fit_reading import read_fit
from chartmaker.files.design_reading import read_design
from chartmaker.knit.fit import fit
from chartmaker.knit.fit_help import helps
from chartmaker.model.band import Band
from chartmaker.model.bounds import MOST_STITCHES
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.units import METRIC
from tests.benchmarks.large_design import large_design
from tests.benchmarks.row import Row, median_ms

EXAMPLES = Path(__file__).parents[2] / "examples"


def measure() -> Iterator[Row]:
    """Fit the example cap to a head between two counts, and a chart of 600 rounds in sixty bands."""
    cap = read_design(EXAMPLES / "lockside-cap.hat.toml")
    between = replace(cap, hat=replace(cap.hat, ease_percent=0.0))
    for name, design in (("the cap between two counts", between), ("600 × 600 in 60 bands", _in_bands())):
        found = fit(design, most=MOST_STITCHES)
        yield Row(
            name=f"fit of {name}, over all counts and what would help",
            figure=median_ms(lambda design=design: (fit(design, most=MOST_STITCHES), helps(design))),
            limit=50,
            unit="ms",
            detail=f"{len(found.candidates)} counts, {len(helps(design))} helps",
        )

    coarse = replace(cap, gauge=Gauge(stitches_per_10cm=22, rounds_per_10cm=26))
    reading = read_fit(coarse, cap, METRIC)
    yield Row(
        name="what the fit's side tells of the cap after another gauge",
        figure=median_ms(lambda: read_fit(coarse, cap, METRIC)),
        limit=50,
        unit="ms",
        detail=f"{len(reading.helps)} helps, {len(reading.moved.sentences) if reading.moved else 0} sentences",
    )


def _in_bands() -> Design:
    whole = large_design(stitches=600, rounds=600)
    rounds = whole.bands[0].rounds
    bands = tuple(Band(name=f"{first}", times=1, rounds=rounds[first : first + 10]) for first in range(0, 600, 10))
    return replace(whole, bands=bands)
