"""The 24-patch target: what its patches are in either edition, as CIELAB stated for it and under any viewing.

The maker states CIELAB for D50 and the 2° observer. What another observer sees depends on the spectra, and those are
kept of the older edition alone, as a mean of measured targets. So each patch's spectrum is changed as little and as
smoothly as gives the stated CIELAB exactly, and then integrated under the viewing that is asked for.
"""

import json
from functools import cache
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.settings import Viewing
from chartmaker.shade.lab import lab_of_xyz, xyz_of_lab
from chartmaker.shade.weights import TABLES, Bands, weights, white_point, xyz_of_spectra

Floats = NDArray[np.float64]

ROWS, COLUMNS = 4, 6
"""Patches down and across, the row of greys being the last."""
PATCHES = ROWS * COLUMNS
EDITIONS = {"before-2014-11": "Before November 2014", "from-2014-11": "After November 2014"}
"""The two editions, and how the table's source calls them."""
EDITION_WORDS = {"before-2014-11": "before November 2014", "from-2014-11": "from November 2014"}
"""How each is told."""
STATED_FOR = Viewing(illuminant="D50", observer="2")
"""What the maker's CIELAB is for."""
SPECTRA_BANDS = Bands(380, 10, 36)
"""Where the kept spectra stand."""
TARGET_TABLE = TABLES / "target-24.json"
MOST_STEPS = 20
"""Newton's steps towards the stated colour; four are enough as a rule."""


class PatchPlace(NamedTuple):
    """Where a patch is on the target, counted from 0 at the upper left, the greys lying below."""

    row: int
    column: int

    @property
    def words(self) -> str:
        """The place as it is told: "patch 3 of row 2"."""
        return f"patch {self.column + 1} of row {self.row + 1}"


def place_of(index: int) -> PatchPlace:
    """Give the place of a patch by its number, row by row from the upper left, 0 to 23."""
    return PatchPlace(*divmod(index, COLUMNS))


def other_edition(edition: str) -> str:
    """Give the edition that this one is not."""
    return next(each for each in EDITIONS if each != edition)


def stated_lab(edition: str) -> Floats:
    """Give L*, a*, b* (24 × 3) that the maker states, D50 and 2°; raises ValueError for no such edition."""
    if edition not in EDITIONS:
        raise ValueError(f"edition is {edition!r}; it can be {', '.join(EDITIONS)}")
    return np.array(_table()[edition])


def measured_spectra() -> Floats:
    """Give reflectance factors (24 × bands) of the older edition, the mean of measured targets."""
    return np.array(_table()["spectra"])


@cache
def patch_spectra(edition: str) -> Floats:
    """Give spectra (24 × bands, read-only) that come to the stated CIELAB, nearest to those measured."""
    wanted = xyz_of_lab(stated_lab(edition), white=white_point(STATED_FOR))
    spectra = np.array(
        [_bent(spectrum, xyz) for spectrum, xyz in zip(measured_spectra(), wanted, strict=True)],
    )
    spectra.flags.writeable = False
    return spectra


@cache
def patch_xyz(edition: str, viewing: Viewing) -> Floats:
    """Give XYZ (24 × 3, read-only, Y 0 to 100) of the patches under a viewing."""
    xyz = xyz_of_spectra(patch_spectra(edition), bands=SPECTRA_BANDS, viewing=viewing)
    xyz.flags.writeable = False
    return xyz


def patch_lab(edition: str, viewing: Viewing) -> Floats:
    """Give L*, a*, b* (24 × 3) of the patches under a viewing."""
    return lab_of_xyz(patch_xyz(edition, viewing), white=white_point(viewing))


def _bent(spectrum: Floats, xyz: Floats) -> Floats:
    """Multiply a spectrum by the smoothest factor near 1 for which it comes to an XYZ under `STATED_FOR`.

    The factor is exp(x), x the least in the sum of its squares and of its second differences' squares.
    """
    w = weights(SPECTRA_BANDS, STATED_FOR)
    second = np.diff(np.eye(len(spectrum)), n=2, axis=0)
    easy = np.linalg.inv(0.01 * np.eye(len(spectrum)) + second.T @ second)
    exponent = np.zeros(len(spectrum))
    for _ in range(MOST_STEPS):
        bent = spectrum * np.exp(exponent)
        slope = w.T * bent
        off = xyz - w.T @ bent
        if np.abs(off).max() < 1e-10:
            break
        # The nearest exponent of all, not of this step: the constraint is laid on anew from 0.
        exponent = easy @ slope.T @ np.linalg.solve(slope @ easy @ slope.T, off + slope @ exponent)
    return np.asarray(spectrum * np.exp(exponent))


@cache
def _table() -> dict[str, list[list[float]]]:
    rows: dict[str, list[list[float]]] = json.loads(TARGET_TABLE.read_text(encoding="utf-8"))["rows"]
    return rows
