"""Weighting factors and white points made by colour-science; the only module of the house that imports it.

Importing it costs a third of a second and more, so `weights` comes here only for a spectrum whose bands have no kept
table. Run as `python -m chartmaker.shade.colorimetry`, it writes the kept tables anew.
"""

import json
import math
import warnings
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.settings import Viewing
from chartmaker.shade.target import EDITIONS, SPECTRA_BANDS, TARGET_TABLE
from chartmaker.shade.weights import KEPT_BANDS, TABLES, VIEWINGS, Bands, table_path, viewing_key

with warnings.catch_warnings(), np.printoptions():
    # It warns on import that scipy and matplotlib are missing: neither serves what is used here (interpolation by
    # Sprague and sums of products). It also sets an old style of printing for all arrays, which is put back.
    warnings.filterwarnings("ignore", message='"(SciPy|Matplotlib)" related API features')
    import colour

OBSERVERS = {"2": "CIE 1931 2 Degree Standard Observer", "10": "CIE 1964 10 Degree Standard Observer"}
"""colour-science's names of the observers that a `Viewing` may have."""
FIRST_NM, LAST_NM = 360, 780
"""The range over which ASTM E308-15 adds up."""


def weighting_factors(bands: Bands, viewing: Viewing) -> NDArray[np.float64]:
    """Give the factors W (bands × 3) for which `reflectance @ W` is XYZ, Y being 100 for the perfect white.

    ASTM E308-15 as colour-science computes it, from unit spectra: it is linear. Steps of 1, 5, 10 and 20 nm on whole
    multiples of the step (of 10 nm from 10 nm on) go in as they are; any other bands are brought to 1 nm first, by
    Sprague's interpolation (CIE 167:2005). Bands outside 360-780 nm weigh nothing; where bands are missing at an end,
    the last one stands for them. At 5 nm too the factors come from the 1 nm functions, so that all bands share one
    white. Raises ValueError where fewer than 8 bands lie within 360-780 nm.
    """
    if not _fits_the_practice(bands):
        fine, shares = _at_whole_nanometres(bands)
        return shares @ weighting_factors(fine, viewing)
    wavelengths = bands.wavelengths_nm
    within = np.flatnonzero((wavelengths > FIRST_NM - 1e-6) & (wavelengths < LAST_NM + 1e-6))
    if len(within) < 8:
        raise ValueError(f"{len(within)} bands of {bands} lie within {FIRST_NM}-{LAST_NM} nm; 8 are needed")
    factors = np.zeros((bands.number, 3))
    with warnings.catch_warnings():
        # It tells of every table that it trims or aligns, which is what it is asked to do here.
        warnings.simplefilter("ignore", colour.utilities.ColourRuntimeWarning)
        units = colour.MultiSpectralDistributions(np.eye(len(within)), wavelengths[within])
        factors[within] = colour.msds_to_XYZ(
            units,
            colour.MSDS_CMFS[OBSERVERS[viewing.observer]],
            colour.SDS_ILLUMINANTS[viewing.illuminant],
            method="ASTM E308",
            mi_5nm_omission_method=False,
        )
    return factors


def _fits_the_practice(bands: Bands) -> bool:
    """Tell whether ASTM E308-15 has factors for these bands; its multiples begin at 10 nm for 10 and 20 nm steps."""
    return bands.step_nm in {1, 5, 10, 20} and bands.start_nm % min(bands.step_nm, 10) == 0


def _at_whole_nanometres(bands: Bands) -> tuple[Bands, NDArray[np.float64]]:
    """Give the whole nanometres that bands span, and the share (bands × nanometres) that each has in each by Sprague.

    Not by colour-science's own aligning, which leaves a gap where the first band is no whole nanometre.
    """
    wavelengths = bands.wavelengths_nm
    first, last = math.ceil(wavelengths[0] - 1e-6), math.floor(wavelengths[-1] + 1e-6)
    points = np.clip(np.arange(first, last + 1), wavelengths[0], wavelengths[-1])
    shares = np.array([colour.SpragueInterpolator(wavelengths, unit)(points) for unit in np.eye(bands.number)])
    return Bands(first, 1, len(points)), shares


def white_point_of(viewing: Viewing) -> NDArray[np.float64]:
    """Give XYZ of the perfect white, Y = 100: the sum of the factors at 1 nm over 360-780 nm."""
    every_nanometre = Bands(FIRST_NM, 1, LAST_NM - FIRST_NM + 1)
    white: NDArray[np.float64] = weighting_factors(every_nanometre, viewing).sum(axis=0)
    return white


def write_tables(folder: Path) -> None:
    """Write the white points and the factors of `KEPT_BANDS` as JSON files into a folder, to 12 decimals."""
    origin = (
        f"Made by colour-science {colour.__version__} (ASTM E308-15, factors from the 1 nm functions): "
        "python -m chartmaker.shade.colorimetry"
    )
    whites = {viewing_key(viewing): [white_point_of(viewing)] for viewing in VIEWINGS}
    head: dict[str, object] = {"origin": origin + "; XYZ of the perfect white for each illuminant/observer"}
    (folder / "white-points.json").write_text(_as_text(head, whites), encoding="utf-8")
    for bands in KEPT_BANDS:
        rows = {viewing_key(viewing): list(weighting_factors(bands, viewing)) for viewing in VIEWINGS}
        head = {"origin": origin + "; a row of X, Y, Z for each band", **bands._asdict()}
        table_path(bands, folder).write_text(_as_text(head, rows), encoding="utf-8")


def target_lab(edition: str) -> NDArray[np.float64]:
    """Give L*, a*, b* (24 × 3, D50 and 2°) that the maker states for an edition, row by row from the upper left.

    colour-science keeps them as xyY; two decimals are what was published.
    """
    whole = next(each for name, each in colour.CCS_COLOURCHECKERS.items() if name.endswith(EDITIONS[edition]))
    xyz = colour.xyY_to_XYZ(list(whole.data.values()))
    return np.asarray(np.round(colour.XYZ_to_Lab(xyz, whole.illuminant), 2))


def target_spectra() -> NDArray[np.float64]:
    """Give reflectance factors (24 × `SPECTRA_BANDS`) of the older edition, the mean of measured targets."""
    shape = colour.SpectralShape(SPECTRA_BANDS.start_nm, SPECTRA_BANDS.end_nm, SPECTRA_BANDS.step_nm)
    sets = (list(each.values()) for each in colour.SDS_COLOURCHECKERS.values())
    measured = next(spectra for spectra in sets if spectra[0].shape == shape)
    return np.array([spectrum.values for spectrum in measured])


def write_target(path: Path) -> None:
    """Write the 24-patch target's table: both editions' CIELAB, and the spectra of the older one."""
    head: dict[str, object] = {
        "origin": f"From colour-science {colour.__version__}: python -m chartmaker.shade.colorimetry; "
        "the maker's CIELAB for D50 and 2° of both editions, and the mean of measured targets of the older one",
    }
    rows = {edition: list(target_lab(edition)) for edition in EDITIONS}
    path.write_text(_as_text(head, {**rows, "spectra": list(target_spectra())}, decimals=5), encoding="utf-8")


def _as_text(head: dict[str, object], rows: dict[str, list[NDArray[np.float64]]], *, decimals: int = 12) -> str:
    """Lay a table out as JSON with one row a line."""
    lines = [f"  {json.dumps(key)}: {json.dumps(value)}," for key, value in head.items()]
    blocks = [
        f'    "{key}": [\n'
        + ",\n".join("      [" + ", ".join(f"{value:.{decimals}f}" for value in row) + "]" for row in matrix)
        + "\n    ]"
        for key, matrix in rows.items()
    ]
    return "{\n" + "\n".join(lines) + '\n  "rows": {\n' + ",\n".join(blocks) + "\n  }\n}\n"


if __name__ == "__main__":
    write_tables(TABLES)
    write_target(TARGET_TABLE)
    print(f"wrote {len(KEPT_BANDS) + 2} tables to {TABLES}")
