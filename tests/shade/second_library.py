"""What colour-science says of the same things, for comparison; its run-time warnings tell of tables it aligned."""

import warnings

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.settings import Viewing
from chartmaker.shade.colorimetry import OBSERVERS, colour


def xyz_by_colour_science(
    reflectance: ArrayLike, wavelengths: ArrayLike, viewing: Viewing, **options: bool
) -> NDArray[np.float64]:
    """Give XYZ of one spectrum, straight through `colour.sd_to_XYZ` by the ASTM E308 method."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", colour.utilities.ColourRuntimeWarning)
        return colour.sd_to_XYZ(
            colour.SpectralDistribution(reflectance, wavelengths),
            colour.MSDS_CMFS[OBSERVERS[viewing.observer]],
            colour.SDS_ILLUMINANTS[viewing.illuminant],
            method="ASTM E308",
            **options,
        )


def published_lab_of_target(edition: str) -> NDArray[np.float64]:
    """Give the published CIELAB (24 × 3) of an edition of the 24-patch target, under its own white (D50, 2°)."""
    target = colour.CCS_COLOURCHECKERS[edition]
    xyz = np.array([colour.xyY_to_XYZ(xy_y) for xy_y in target.data.values()])
    return colour.XYZ_to_Lab(xyz, target.illuminant)
