"""How far two colours are apart: CIEDE2000, and the metric hue difference of CIELAB.

Symbols and equation numbers of CIEDE2000 are those of Sharma, Wu and Dalal 2005, Color Res. Appl. 30, 21-30
(doi 10.1002/col.20070); the standard is ISO/CIE 11664-6:2014.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

OPPOSITE_DEG = 180 + 1e-9
"""Up to this difference two hues count as no more than 180° apart.

`arctan2` errs in its last digit, so that exactly opposite hues may come out a hair beyond 180° (pair 14 of the paper).
"""


def ciede2000(lab_1: ArrayLike, lab_2: ArrayLike) -> Floats:
    """Give ΔE00 (…) of colours L*, a*, b* (… × 3 each, broadcast), with k_L = k_C = k_H = 1."""
    lab_1, lab_2 = np.asarray(lab_1, dtype=float), np.asarray(lab_2, dtype=float)
    l_1, a_1, b_1 = lab_1[..., 0], lab_1[..., 1], lab_1[..., 2]
    l_2, a_2, b_2 = lab_2[..., 0], lab_2[..., 1], lab_2[..., 2]
    c_mean = (np.hypot(a_1, b_1) + np.hypot(a_2, b_2)) / 2  # (2), (3)
    g = 0.5 * (1 - _seventh(c_mean))  # (4)
    a_1p, a_2p = (1 + g) * a_1, (1 + g) * a_2  # (5)
    c_1p, c_2p = np.hypot(a_1p, b_1), np.hypot(a_2p, b_2)  # (6)
    h_1p, h_2p = _degrees(b_1, a_1p), _degrees(b_2, a_2p)  # (7)
    dh_p, h_meanp = _hue_difference_and_mean(h_1p, h_2p, has_no_hue=c_1p * c_2p == 0)  # (10), (14)
    dl_p = l_2 - l_1  # (8)
    dc_p = c_2p - c_1p  # (9)
    dhh_p = 2 * np.sqrt(c_1p * c_2p) * np.sin(np.radians(dh_p) / 2)  # (11)
    l_meanp = (l_1 + l_2) / 2  # (12)
    c_meanp = (c_1p + c_2p) / 2  # (13)
    t = _hue_weight(np.radians(h_meanp))  # (15)
    dtheta = 30 * np.exp(-(((h_meanp - 275) / 25) ** 2))  # (16)
    r_c = 2 * _seventh(c_meanp)  # (17)
    s_l = 1 + 0.015 * (l_meanp - 50) ** 2 / np.sqrt(20 + (l_meanp - 50) ** 2)  # (18)
    s_c = 1 + 0.045 * c_meanp  # (19)
    s_h = 1 + 0.015 * c_meanp * t  # (20)
    r_t = -np.sin(np.radians(2 * dtheta)) * r_c  # (21)
    light, chroma, hue = dl_p / s_l, dc_p / s_c, dhh_p / s_h
    squared = light * light + chroma * chroma + hue * hue + r_t * chroma * hue  # (22)
    return np.asarray(np.sqrt(np.maximum(squared, 0)))  # rounding alone may bring it below 0


def delta_h(lab_1: ArrayLike, lab_2: ArrayLike) -> Floats:
    """Give ΔH*ab (…) from the first to the second colour (… × 3 each), positive where the hue angle grows.

    CIE 15:2018: 2 √(C*₁ C*₂) sin(Δh/2); 0 where either is a grey.
    """
    lab_1, lab_2 = np.asarray(lab_1, dtype=float), np.asarray(lab_2, dtype=float)
    a_1, b_1, a_2, b_2 = lab_1[..., 1], lab_1[..., 2], lab_2[..., 1], lab_2[..., 2]
    angle = np.arctan2(a_1 * b_2 - b_1 * a_2, a_1 * a_2 + b_1 * b_2)
    return np.asarray(2 * np.sqrt(np.hypot(a_1, b_1) * np.hypot(a_2, b_2)) * np.sin(angle / 2))


def _seventh(chroma: Floats) -> Floats:
    """Give √(C⁷ / (C⁷ + 25⁷)), which equations 4 and 17 share."""
    square = chroma * chroma
    power = square * square * square * chroma
    return np.asarray(np.sqrt(power / (power + 25.0**7)))


def _degrees(b: Floats, a_prime: Floats) -> Floats:
    """Give the hue angle h' from 0 to 360 degrees, 0 where both are 0 (equation 7)."""
    degrees = np.degrees(np.arctan2(b, a_prime))
    return np.where(degrees < 0, degrees + 360, degrees)


def _hue_difference_and_mean(h_1: Floats, h_2: Floats, *, has_no_hue: NDArray[np.bool_]) -> tuple[Floats, Floats]:
    """Give Δh' and the mean h' in degrees (equations 10 and 14); without a hue, 0 and the sum."""
    apart, total = h_2 - h_1, h_1 + h_2
    is_near = np.abs(apart) <= OPPOSITE_DEG
    difference = np.where(is_near, apart, np.where(apart > 0, apart - 360, apart + 360))
    mean = np.where(is_near, total, np.where(total < 360, total + 360, total - 360)) / 2
    return np.where(has_no_hue, 0, difference), np.where(has_no_hue, total, mean)


def _hue_weight(h: Floats) -> Floats:
    """Give T of a mean hue in radians (equation 15)."""
    return np.asarray(
        1
        - 0.17 * np.cos(h - np.radians(30))
        + 0.24 * np.cos(2 * h)
        + 0.32 * np.cos(3 * h + np.radians(6))
        - 0.20 * np.cos(4 * h - np.radians(63))
    )
