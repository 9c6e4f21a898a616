"""What a colour looks like in another light: chromatic adaptation by CAT16, in one step and complete.

Li et al. 2017, Color Res. Appl. 42, 703-718 (doi 10.1002/col.22131), with the degree of adaptation D = 1.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

M_16 = np.array(
    [[0.401288, 0.650173, -0.051461], [-0.250268, 1.204414, 0.045854], [-0.002079, 0.048952, 0.953127]],
)
"""XYZ to the sharpened cone signals R, G, B of CAT16 (Li et al. 2017)."""
M_16.flags.writeable = False


def adaptation_matrix(*, from_white: ArrayLike, to_white: ArrayLike) -> NDArray[np.float64]:
    """Give the matrix (3 × 3) that takes XYZ seen under one white to the corresponding XYZ under another.

    `M16⁻¹ · diag(RGB of the new white / RGB of the old) · M16`; whites are XYZ (3 each) of equal Y.
    """
    rgb_from = M_16 @ np.asarray(from_white, dtype=float)
    rgb_to = M_16 @ np.asarray(to_white, dtype=float)
    return np.linalg.solve(M_16, (rgb_to / rgb_from)[:, np.newaxis] * M_16)


def adapted(xyz: ArrayLike, *, from_white: ArrayLike, to_white: ArrayLike) -> NDArray[np.float64]:
    """Adapt XYZ (… × 3) from one white to another (3 each), by CAT16 in one step with D = 1."""
    matrix = adaptation_matrix(from_white=from_white, to_white=to_white)
    result: NDArray[np.float64] = np.asarray(xyz, dtype=float) @ matrix.T
    return result
