"""XYZ to CIELAB and back, and CIELAB in polar form: CIE 15:2018 and ISO/CIE 11664-4:2019, with exact constants."""

import numpy as np
from numpy.typing import ArrayLike, NDArray

DELTA = 6 / 29
"""Below DELTA³ of the white the cube root gives way to a straight line (ISO/CIE 11664-4:2019, 5.1)."""


def lab_of_xyz(xyz: ArrayLike, *, white: ArrayLike) -> NDArray[np.float64]:
    """Turn XYZ (… × 3) into L*, a*, b* (… × 3); `white` is XYZ of the perfect white on the same scale."""
    t = np.asarray(xyz, dtype=float) / np.asarray(white, dtype=float)
    f: NDArray[np.float64] = np.where(t > DELTA**3, np.cbrt(t), t / (3 * DELTA**2) + 4 / 29)
    lab = np.empty_like(f)
    lab[..., 0] = 116 * f[..., 1] - 16
    lab[..., 1] = 500 * (f[..., 0] - f[..., 1])
    lab[..., 2] = 200 * (f[..., 1] - f[..., 2])
    return lab


def xyz_of_lab(lab: ArrayLike, *, white: ArrayLike) -> NDArray[np.float64]:
    """Turn L*, a*, b* (… × 3) into XYZ (… × 3) on the scale of `white`, the XYZ of the perfect white."""
    lab = np.asarray(lab, dtype=float)
    f = np.empty_like(lab)
    f[..., 1] = (lab[..., 0] + 16) / 116
    f[..., 0] = f[..., 1] + lab[..., 1] / 500
    f[..., 2] = f[..., 1] - lab[..., 2] / 200
    t = np.where(f > DELTA, f**3, 3 * DELTA**2 * (f - 4 / 29))
    xyz: NDArray[np.float64] = t * np.asarray(white, dtype=float)
    return xyz


def lch_of_lab(lab: ArrayLike) -> NDArray[np.float64]:
    """Turn L*, a*, b* (… × 3) into L*, C*ab and h_ab (… × 3), the hue in degrees from 0 to below 360; 0 for a grey."""
    lab = np.asarray(lab, dtype=float)
    lch = lab.copy()
    lch[..., 1] = np.hypot(lab[..., 1], lab[..., 2])
    hue = np.degrees(np.arctan2(lab[..., 2], lab[..., 1])) % 360
    lch[..., 2] = np.where(hue < 360, hue, 0.0)  # a hue a hair below 0 wraps to 360 itself by rounding
    return lch


def lab_of_lch(lch: ArrayLike) -> NDArray[np.float64]:
    """Turn L*, C*ab and h_ab in degrees (… × 3) into L*, a*, b* (… × 3)."""
    lch = np.asarray(lch, dtype=float)
    lab = lch.copy()
    hue = np.radians(lch[..., 2])
    lab[..., 1] = lch[..., 1] * np.cos(hue)
    lab[..., 2] = lch[..., 1] * np.sin(hue)
    return lab
