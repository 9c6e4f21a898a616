"""From a camera's colours to CIE XYZ: a root-polynomial of degree 2, fitted to patches whose XYZ are known.

Finlayson, Mackiewicz and Hurlbert 2015, IEEE Trans. Image Process. 24, 1460-1470 (doi 10.1109/TIP.2015.2405336): the
terms R, G, B, √RG, √GB, √RB all grow with exposure as light does, so a skein in half the light keeps its hue.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lab import lab_of_xyz

Floats = NDArray[np.float64]

TERMS = 6
"""Numbers that each of X, Y and Z is made of."""
FEWEST_PATCHES = 14
"""With fewer a fit of six terms says more of its patches than of the camera: common practice, no source."""
STEP = 0.05
"""Step in XYZ (Y 0 to 100) at which CIEDE2000's own metric is taken."""
EASE = 1e-3
"""How much a fit is held towards small numbers, as a share of the mean square of its terms: for patches all alike."""
_LEAST = 1e-6
"""Light that counts as none."""


@dataclass(frozen=True, slots=True, eq=False)
class Correction:
    """Matrix (6 × 3) from the terms of linear RGB to XYZ, Y 0 to 100, seen under `white`."""

    matrix: Floats
    white: Floats
    """XYZ (3) of the perfect white that the patches' XYZ are for."""

    def xyz(self, rgb: ArrayLike) -> Floats:
        """Give XYZ (… × 3) of linear RGB (… × 3), never below 0."""
        return np.asarray(np.maximum(root_terms(rgb) @ self.matrix, 0))

    def lab(self, rgb: ArrayLike) -> Floats:
        """Give L*, a*, b* (… × 3) of linear RGB (… × 3)."""
        return lab_of_xyz(self.xyz(rgb), white=self.white)


def root_terms(rgb: ArrayLike) -> Floats:
    """Give R, G, B, √RG, √GB, √RB (… × 6) of linear RGB (… × 3); what is below 0 counts as 0."""
    red, green, blue = np.moveaxis(np.maximum(np.asarray(rgb, dtype=float), 0), -1, 0)
    roots = (np.sqrt(red * green), np.sqrt(green * blue), np.sqrt(red * blue))
    return np.stack((red, green, blue, *roots), axis=-1)


def fitted(rgb: ArrayLike, xyz: ArrayLike, *, white: ArrayLike) -> Correction:
    """Fit a correction to patches: linear RGB and XYZ (n × 3 each), least squares in CIEDE2000's own metric.

    A step away from a patch's XYZ counts as the CIEDE2000 that it makes, so that dark patches weigh as they are seen;
    small steps add up as squares, and the fit stays one linear solution. Raises ValueError for fewer than
    `FEWEST_PATCHES`.
    """
    rgb, xyz, white = (np.asarray(each, dtype=float) for each in (rgb, xyz, white))
    if len(xyz) < FEWEST_PATCHES:
        raise ValueError(f"{len(xyz)} patches are too few for a fit; it takes {FEWEST_PATCHES}")
    return _solved(root_terms(rgb), xyz, _weights(xyz, white), white)


def residuals(correction: Correction, rgb: ArrayLike, xyz: ArrayLike) -> Floats:
    """Give each patch's CIEDE2000 (n) between what the correction makes of it and what it is."""
    return ciede2000(correction.lab(rgb), lab_of_xyz(xyz, white=correction.white))


def misfit(rgb: ArrayLike, xyz: ArrayLike, *, white: ArrayLike) -> Floats:
    """Give what the best fit leaves, as the numbers (3n) whose squares it made least."""
    rgb, xyz, white = (np.asarray(each, dtype=float) for each in (rgb, xyz, white))
    terms, weights = root_terms(rgb), _weights(xyz, white)
    off = terms @ _solved(terms, xyz, weights, white).matrix - xyz
    return np.asarray(np.einsum("nij,nj->ni", weights, off).ravel())


def left_out_residuals(rgb: ArrayLike, xyz: ArrayLike, *, white: ArrayLike) -> Floats:
    """Give each patch's CIEDE2000 (n) where it is left out of the fit: what a colour that is no patch may expect."""
    rgb, xyz, white = (np.asarray(each, dtype=float) for each in (rgb, xyz, white))
    terms, weights = root_terms(rgb), _weights(xyz, white)
    lab = np.empty_like(xyz)
    for index in range(len(xyz)):
        others = np.arange(len(xyz)) != index
        lab[index] = _solved(terms[others], xyz[others], weights[others], white).lab(rgb[index])
    return ciede2000(lab, lab_of_xyz(xyz, white=white))


def _weights(xyz: Floats, white: Floats) -> Floats:
    """Give for each XYZ the matrix W (n × 3 × 3) for which |W·d| is near the CIEDE2000 of a small step d.

    CIEDE2000² of small steps is a quadratic form: its matrix follows from the steps along the axes and their sums.
    """
    lab = lab_of_xyz(xyz, white=white)

    def squared(step: Floats) -> Floats:
        return ciede2000(lab, lab_of_xyz(xyz + STEP * step, white=white)) ** 2 / STEP**2

    axes = np.eye(3)
    alone = [squared(axis) for axis in axes]
    form = np.empty((len(xyz), 3, 3))
    for i in range(3):
        for j in range(3):
            form[:, i, j] = alone[i] if i == j else (squared(axes[i] + axes[j]) - alone[i] - alone[j]) / 2
    values, vectors = np.linalg.eigh(form)
    return np.asarray(np.sqrt(np.maximum(values, _LEAST))[:, :, None] * np.swapaxes(vectors, 1, 2))


def _solved(terms: Floats, xyz: Floats, weights: Floats, white: Floats) -> Correction:
    """Solve for the matrix: each patch gives three equations in its 18 numbers."""
    scale = float(np.sqrt(np.mean(terms**2))) or 1.0
    rows = np.einsum("nij,nk->nikj", weights, terms / scale).reshape(3 * len(xyz), 3 * TERMS)
    wanted = np.einsum("nij,nj->ni", weights, xyz).ravel()
    hold = np.sqrt(EASE * np.mean(rows**2)) * np.eye(3 * TERMS)
    solution = np.linalg.lstsq(np.vstack((rows, hold)), np.concatenate((wanted, np.zeros(3 * TERMS))), rcond=None)[0]
    return Correction(solution.reshape(TERMS, 3) / scale, white)
