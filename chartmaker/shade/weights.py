"""From spectra to XYZ: weighting factors and white points, read from kept tables so that numpy alone is needed.

The tables hold the usual bands of instruments under every illuminant and observer that a design may be viewed under.
They were made by colour-science (see `colorimetry`), which is also asked at run time for any other bands.
"""

import json
from functools import cache, lru_cache
from pathlib import Path
from typing import NamedTuple

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.settings import ILLUMINANTS, OBSERVERS, Viewing

TABLES = Path(__file__).parent / "tables"
"""Where the kept tables lie."""
VIEWINGS = tuple(Viewing(illuminant=name, observer=degrees) for name in ILLUMINANTS for degrees in OBSERVERS)
"""Every pair of illuminant and observer that a design may be viewed under."""


class Bands(NamedTuple):
    """Where the values of a spectrum stand: the first wavelength, the step and how many there are."""

    start_nm: float
    step_nm: float
    number: int

    @property
    def end_nm(self) -> float:
        """The last wavelength."""
        return self.start_nm + self.step_nm * (self.number - 1)

    @property
    def wavelengths_nm(self) -> NDArray[np.float64]:
        """All wavelengths, from the first to the last."""
        return self.start_nm + self.step_nm * np.arange(self.number, dtype=float)


KEPT_BANDS = (
    Bands(400, 10, 31),  # 400-700 nm by 10
    Bands(400, 20, 16),  # 400-700 nm by 20
    Bands(400, 5, 61),  # 400-700 nm by 5
    Bands(380, 10, 36),  # 380-730 nm by 10
    Bands(380, 10, 41),  # 380-780 nm by 10
    Bands(380, 5, 81),  # 380-780 nm by 5
    Bands(360, 10, 39),  # 360-740 nm by 10
    Bands(360, 10, 43),  # 360-780 nm by 10
)
"""Bands with a kept table, those of the usual instruments."""


def xyz_of_spectra(reflectance: ArrayLike, *, bands: Bands, viewing: Viewing) -> NDArray[np.float64]:
    """Integrate reflectance factors (… × bands, 1 is the perfect white) to XYZ (… × 3, Y 0 to 100), ASTM E308-15."""
    xyz: NDArray[np.float64] = np.asarray(reflectance, dtype=float) @ weights(bands, viewing)
    return xyz


@lru_cache(maxsize=256)
def weights(bands: Bands, viewing: Viewing) -> NDArray[np.float64]:
    """Give the weighting factors W (bands × 3, read-only) for which `reflectance @ W` is XYZ, Y 100 for the white."""
    if bands in KEPT_BANDS:
        return _read_only(_kept_rows(table_path(bands, TABLES))[viewing_key(viewing)])
    # Late, because importing colour-science takes longer than opening the window may.
    from chartmaker.shade.colorimetry import weighting_factors

    return _read_only(weighting_factors(bands, viewing))


@cache
def white_point(viewing: Viewing) -> NDArray[np.float64]:
    """Give XYZ (3, read-only) of the perfect white, Y = 100: the sum of the 1 nm factors over 360-780 nm, ASTM E308-15.

    CIE 15 prints sums at 5 nm, which differ from it by up to 0.02, and by 0.1 in Z for the lamps with narrow bands.
    """
    return _read_only(_kept_rows(TABLES / "white-points.json")[viewing_key(viewing)][0])


def viewing_key(viewing: Viewing) -> str:
    """Give the tables' word for an illuminant and observer: "D65/10"."""
    return f"{viewing.illuminant}/{viewing.observer}"


def table_path(bands: Bands, folder: Path) -> Path:
    """Give the file that holds the kept factors of these bands."""
    return folder / f"{bands.start_nm:g}-{bands.end_nm:g}-{bands.step_nm:g}.json"


@cache
def _kept_rows(path: Path) -> dict[str, list[list[float]]]:
    rows: dict[str, list[list[float]]] = json.loads(path.read_text(encoding="utf-8"))["rows"]
    return rows


def _read_only(values: ArrayLike) -> NDArray[np.float64]:
    array = np.array(values, dtype=float)
    array.flags.writeable = False
    return array
