"""What the eye makes of a pattern at its true size: S-CIELAB of Zhang and Wandell (1996, SID Digest 27, 731-734).

XYZ go to three opponent axes, each is smoothed by a sum of Gaussians that stand for what the eye resolves there, and
what comes back is XYZ again, of which CIELAB is taken as ever. Each Gaussian is k·exp(-r²/s²), with k that makes its
sum 1, and so is their weighted sum: a plain area keeps its colour. (The kernel's form is from memory.) The widest one
of the first axis takes away, as the eye does, so that areas of some degrees stand out by about an eighth.

The pattern is cells of one colour each, as stitches are, repeated without end; so nothing is drawn in pixels. The mean
over a cell of a smoothed pattern is a sum over cells, whose weights follow from the integral of erf.
"""

import math
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.shade.lab import lab_of_xyz

OPPONENT = np.array([[0.279, 0.72, -0.107], [-0.449, 0.29, -0.077], [0.086, -0.59, 0.501]])
"""XYZ to light and dark, red and green, blue and yellow (Zhang and Wandell 1996)."""
KERNELS = (
    ((0.921, 0.0283), (0.105, 0.133), (-0.108, 4.336)),
    ((0.531, 0.0392), (0.330, 0.494)),
    ((0.488, 0.0536), (0.371, 0.386)),
)
"""Weight and spread s in degrees of each Gaussian, for each axis of `OPPONENT` (the same paper)."""
REACH = 5.0
"""Beyond so many spreads a Gaussian counts as ended: less than a part in 10¹⁰ lies there."""
OPPONENT.flags.writeable = False


def angle_degrees(size_cm: float, *, distance_cm: float) -> float:
    """Give the angle that a thing seen square on fills, 2·atan(s / 2d)."""
    return 2 * math.degrees(math.atan(size_cm / (2 * distance_cm)))


def seen_from_afar(xyz: ArrayLike, *, cell_degrees: tuple[float, float]) -> NDArray[np.float64]:
    """Smooth a pattern of cells as the eye does.

    Args:
        xyz: the XYZ of each cell, rounds × stitches × 3; beyond its edges the pattern begins anew on every side.
        cell_degrees: width and height of a cell as the angle that it fills.

    Returns:
        The mean XYZ of each cell, the same shape.
    """
    opponent = np.asarray(xyz, dtype=float) @ OPPONENT.T
    rounds, stitches = opponent.shape[:2]
    seen = np.empty_like(opponent)
    for axis, gaussians in enumerate(KERNELS):
        total = sum(weight for weight, _ in gaussians)
        passed = np.zeros((rounds, stitches // 2 + 1))
        for weight, spread in gaussians:
            along = np.fft.rfft(cell_shares(spread, cell_degrees[0], stitches)).real
            up = np.fft.fft(cell_shares(spread, cell_degrees[1], rounds)).real
            passed += weight / total * up[:, np.newaxis] * along
        # A sum over cells that begins anew at its end is a product of transforms.
        seen[..., axis] = np.fft.irfft2(np.fft.rfft2(opponent[..., axis]) * passed, s=(rounds, stitches))
    result: NDArray[np.float64] = seen @ np.linalg.inv(OPPONENT).T
    return result


def lab_from_afar(xyz: ArrayLike, *, cell_degrees: tuple[float, float], white: ArrayLike) -> NDArray[np.float64]:
    """Give L*, a*, b* of each cell (rounds × stitches × 3) as `seen_from_afar`, under a white."""
    return lab_of_xyz(seen_from_afar(xyz, cell_degrees=cell_degrees), white=white)


@lru_cache(maxsize=128)
def cell_shares(spread: float, size: float, number: int) -> NDArray[np.float64]:
    """Give how much each of a row of cells adds to the first one's mean under a Gaussian of this spread.

    Args:
        spread: s of exp(-x²/s²), in the unit of `size`.
        size: of a cell along the row.
        number: of cells, after which the row begins anew.

    Returns:
        A share for each cell (number, read-only), all together 1.
    """
    cells = math.ceil(REACH * spread / size) + 1
    # Sums over two cells of the Gaussian's values: the second difference of its second integral.
    integral = _second_integral(np.arange(-cells - 1, cells + 2) * size, spread)
    shares = (integral[2:] - 2 * integral[1:-1] + integral[:-2]) / size
    folded = np.zeros(number)
    np.add.at(folded, np.arange(-cells, cells + 1) % number, shares)
    folded /= folded.sum()
    folded.flags.writeable = False
    return folded


def _second_integral(x: NDArray[np.floating[Any]], spread: float) -> NDArray[np.float64]:
    """Integrate exp(-x²/s²) / (s √π) twice."""
    erf = np.array([math.erf(value) for value in (x / spread).tolist()])
    return np.asarray((x + x * erf) / 2 + spread / (2 * math.sqrt(math.pi)) * np.exp(-((x / spread) ** 2)))
