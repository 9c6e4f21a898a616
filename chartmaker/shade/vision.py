"""What colours look like to eyes that lack, or shift, one kind of cone: the model of Machado, Oliveira and Fernandes.

Machado, Oliveira and Fernandes 2009, IEEE Trans. Vis. Comput. Graph. 15(6), 1291-1298 (doi 10.1109/TVCG.2009.113); its
matrices on linear sRGB, one for each tenth of severity, are the table of Machado 2010 (hdl 10183/26950), kept in
`colour-vision.json` beside this module. Severity 1 is the lack of the cone: protanopia, deuteranopia; of tritanopia the
authors say that shifting its cone only comes near it.
"""

import json
from functools import cache, lru_cache
from pathlib import Path

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.shade.adaptation import adaptation_matrix
from chartmaker.shade.lab import lab_of_xyz, xyz_of_lab
from chartmaker.shade.screen import RGB_OF_XYZ, SRGB_WHITE, XYZ_OF_RGB, decoded, encoded

KINDS = ("protan", "deutan", "tritan")
"""By the cone that lacks or is shifted: long, middle and short waves."""
TABLE = Path(__file__).parent / "colour-vision.json"


@lru_cache(maxsize=32)
def vision_matrix(kind: str, severity: float = 1.0) -> NDArray[np.float64]:
    """Give the matrix (3 × 3) on linear sRGB for one of `KINDS`; between two tenths of severity it goes straight.

    Raises ValueError for another kind, or a severity outside 0 to 1.
    """
    if kind not in KINDS:
        raise ValueError(f"there is no kind of colour vision {kind!r}; there are {', '.join(KINDS)}")
    if not 0 <= severity <= 1:
        raise ValueError(f"a severity of {severity:g} is outside 0 to 1")
    steps = _published()[kind]
    low = min(int(severity * 10), 9)
    share = severity * 10 - low
    matrix = np.asarray((1 - share) * steps[low] + share * steps[low + 1])
    matrix.flags.writeable = False
    return matrix


def seen_by(rgb: ArrayLike, kind: str, *, severity: float = 1.0) -> NDArray[np.uint8]:
    """Give sRGB (… × 3, 0 to 255) as such eyes see it, clipped to what a screen can show."""
    linear = decoded(np.asarray(rgb, dtype=float) / 255) @ vision_matrix(kind, severity).T
    return np.rint(255 * encoded(np.clip(linear, 0, 1))).astype(np.uint8)


def lab_seen_by(lab: ArrayLike, kind: str, *, white: ArrayLike, severity: float = 1.0) -> NDArray[np.float64]:
    """Give L*, a*, b* (… × 3) under a white as such eyes see them, as CIELAB of the screen's white.

    The shades are adapted to that white by CAT16, since the model is one of sRGB; nothing is clipped on the way.
    """
    to_linear = RGB_OF_XYZ @ adaptation_matrix(from_white=white, to_white=SRGB_WHITE)
    through = XYZ_OF_RGB @ vision_matrix(kind, severity) @ to_linear
    return lab_of_xyz(xyz_of_lab(lab, white=white) @ through.T, white=SRGB_WHITE)


@cache
def _published() -> dict[str, NDArray[np.float64]]:
    """Read the matrices of each kind, shape (11, 3, 3)."""
    kept = json.loads(TABLE.read_text(encoding="utf-8"))
    return {kind: np.array(kept[kind]) for kind in KINDS}
