"""How long it takes to plan what must be dyed for ten designs together, of whose lots nothing is on hand."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette_beside
from chartmaker.model.design import Design
from chartmaker.model.palette import Palette
from chartmaker.planning import plan_for
from tests.benchmarks.row import Row, median_ms

EXAMPLES = Path(__file__).parents[2] / "examples"


def measure() -> Iterator[Row]:
    """Plan from ready appraisals, and with the appraisals, as the command does."""
    designs = [_with_nothing(name) for name in ("lockside-cap", "towpath-tam") * 5]
    appraisals = [appraise(design, palette) for design, palette in designs]
    plan = plan_for(appraisals)
    detail = f"{len(plan.cards)} baths, {len(plan.shopping)} things to be got"
    yield Row(
        name="plan for ten designs together",
        figure=median_ms(lambda: plan_for(appraisals)),
        limit=500,
        unit="ms",
        detail=detail,
    )
    yield Row(
        name="plan for ten designs together, appraised anew",
        figure=median_ms(lambda: plan_for([appraise(design, palette) for design, palette in designs]), times=5),
        limit=500,
        unit="ms",
        detail=detail,
    )


def _with_nothing(name: str) -> tuple[Design, Palette | None]:
    path = EXAMPLES / f"{name}.hat.toml"
    design = read_design(path)
    lots = tuple(replace(lot, on_hand_g=0.0) for lot in design.palette.lots)
    return replace(design, palette=replace(design.palette, lots=lots)), read_palette_beside(design, path)
