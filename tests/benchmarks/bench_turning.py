"""How many frames a second the turning hat has: 30 at 600 × 600, turned and tilted."""

import time
from collections.abc import Callable, Iterator
from itertools import count
from pathlib import Path

from chartmaker.appraisal import Appraisal, appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette_beside
from chartmaker.pictures.turning import TurningHat, prepare
from chartmaker.pictures.viewpoint import Viewpoint
from tests.benchmarks.row import Row, median_ms

EXAMPLES = Path(__file__).parents[2] / "examples"
SIDE = 600
FRAME_MS = 1000 / 30


def measure() -> Iterator[Row]:
    """Turn and tilt a cap with a pompom and a tam, and paint them once finely."""
    for name in ("lockside-cap", "towpath-tam"):
        appraisal = _example(name)
        hat = prepare(appraisal)
        yield from _moved(name, hat)
        yield _told(f"{name} made ready, first frame", lambda appraisal=appraisal: _first(prepare(appraisal)))
        yield _told(f"{name}, a fine frame", lambda hat=hat: hat.frame(Viewpoint(), SIDE, SIDE, fine=True))


def _moved(name: str, hat: TurningHat) -> Iterator[Row]:
    turns = count()
    for what, sight in (
        ("turned", lambda: Viewpoint(turn_degrees=3.0 * next(turns))),
        ("tilted", lambda: Viewpoint(tilt_degrees=next(turns) * 7 % 181 - 90.0)),
    ):
        yield Row(
            name=f"{name} {what}: a frame of {SIDE} × {SIDE}",
            figure=_median_ms(hat, sight),
            limit=FRAME_MS,
            unit="ms",
            detail="of the thread's own time",
        )


def _median_ms(hat: TurningHat, sight: Callable[[], Viewpoint]) -> float:
    return median_ms(lambda: hat.frame(sight(), SIDE, SIDE), times=60, clock=time.thread_time)


def _told(name: str, run: Callable[[], object]) -> Row:
    return Row(name=name, figure=median_ms(run, times=5, clock=time.thread_time), limit=None, unit="ms")


def _first(hat: TurningHat) -> None:
    hat.frame(Viewpoint(), SIDE, SIDE)


def _example(name: str) -> Appraisal:
    path = EXAMPLES / f"{name}.hat.toml"
    design = read_design(path)
    return appraise(design, read_palette_beside(design, path))
