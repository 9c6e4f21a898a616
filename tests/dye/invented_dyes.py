"""Invented lots for the tests, made of absorbers in K/S by formulas of their own: in no way measured.

F and its inverse are written out here anew, so that the program's own are not tested against themselves.
"""

from collections.abc import Sequence
from typing import Any

import numpy as np

from chartmaker.model.palette import Bath, Lot, Palette, Yarn
from chartmaker.model.reading import Spectrum

NM = np.arange(400.0, 701.0, 10.0)
WOOL_R = 0.42 + 0.36 * (NM - 400) / 300


def k_over_s(r: Any) -> Any:
    return (1 - r) ** 2 / (2 * r)


def reflected(f: Any) -> Any:
    return 1 + f - np.sqrt(f * f + 2 * f)


def absorber(height: float, centre_nm: float, width_nm: float) -> Any:
    return height * np.exp(-0.5 * ((NM - centre_nm) / width_nm) ** 2)


def red_dye(moved_nm: float = 0.0) -> Any:
    """A red like madder's; alkali moves its band to longer waves."""
    return absorber(7.0, 505 + moved_nm, 42) + absorber(2.5, 420 + moved_nm, 40)


def grey(height: float) -> Any:
    """The broad absorber that iron brings."""
    return height * (1 + 0.15 * (550 - NM) / 150)


def lot_with(lot_id: str, dye: Any, *, readings: int = 5, seed: int = 1, scatter: float = 0.02, **fields: Any) -> Lot:
    random = np.random.default_rng(seed)
    spectra = tuple(
        Spectrum(
            start_nm=400,
            step_nm=10,
            reflectance=tuple(reflected(k_over_s(WOOL_R) + dye * (1 + random.normal(0, scatter))).tolist()),
        )
        for _ in range(readings)
    )
    return Lot(**{"id": lot_id, "name": lot_id, "yarn": "wool", "readings": spectra} | fields)


def shed(lots: Sequence[Lot], baths: Sequence[Bath] = ()) -> Palette:
    wool = Spectrum(start_nm=400, step_nm=10, reflectance=tuple(WOOL_R.tolist()))
    return Palette(yarns=(Yarn(id="wool", name="wool", reading=wool),), baths=tuple(baths), lots=tuple(lots))
