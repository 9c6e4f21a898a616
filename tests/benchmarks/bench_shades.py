"""How long it takes until a full palette of spectra has its shades."""

import time
from collections.abc import Callable, Iterator

import numpy as np

from chartmaker.model.bounds import MOST_LOTS, MOST_READINGS
from chartmaker.model.palette import Lot
from chartmaker.model.reading import Spectrum
from chartmaker.model.settings import Viewing
from chartmaker.shade import lots as shade_lots
from chartmaker.shade import weights
from chartmaker.shade.lights import inconstancies_of_all, metameric_pairs
from chartmaker.shade.lots import shades_of
from chartmaker.shade.trust import trusts_of
from tests.benchmarks.row import Row

NAME = f"{MOST_LOTS} lots × {MOST_READINGS} spectra"


def measure() -> Iterator[Row]:
    """Take the first shades of a full palette, with no table read and nothing remembered; then what else is told."""
    lots = _full_palette()
    _forget()
    yield Row(name=f"{NAME} to shades, cold", figure=_seconds(lambda: shades_of(lots, Viewing())), limit=1, unit="s")
    yield Row(name="their outliers", figure=_seconds(lambda: trusts_of(lots, Viewing())), limit=None, unit="s")
    yield Row(
        name="their shades in the other lights, and how inconstant they are",
        figure=_seconds(lambda: inconstancies_of_all(lots, Viewing())),
        limit=None,
        unit="s",
    )
    yield Row(
        name="the pairs of them that other lights part",
        figure=_seconds(lambda: metameric_pairs(lots, Viewing())),
        limit=None,
        unit="s",
    )


def _full_palette() -> tuple[Lot, ...]:
    rng = np.random.default_rng(2026)
    levels = rng.uniform(0.03, 0.7, (MOST_LOTS, 1, 31))
    spectra = np.clip(levels + rng.normal(0, 0.01, (MOST_LOTS, MOST_READINGS, 31)), 0.01, 1)
    return tuple(
        Lot(
            id=f"lot-{number}",
            name=f"Lot {number}",
            readings=tuple(Spectrum(start_nm=400, step_nm=10, reflectance=tuple(one)) for one in of_lot),
        )
        for number, of_lot in enumerate(spectra.tolist())
    )


def _forget() -> None:
    """Bring everything that remembers tables or shades back to how a new process has it."""
    shade_lots._memo.entries.clear()
    weights.weights.cache_clear()
    weights.white_point.cache_clear()
    weights._kept_rows.cache_clear()


def _seconds(run: Callable[[], object]) -> float:
    start = time.perf_counter()
    run()
    return time.perf_counter() - start
