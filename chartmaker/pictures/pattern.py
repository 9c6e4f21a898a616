"""Patterns made of a picture's light: two parts by a level of value, or two letters a round by their shades."""

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.motif import longest_float
from chartmaker.model.round import Round
from chartmaker.pictures.diffusion import diffused
from chartmaker.shade.lab import DELTA, lab_of_xyz, xyz_of_lab
from chartmaker.shade.screen import SRGB_WHITE, XYZ_OF_RGB

MIDDLE_VALUE = 50.0
"""The level of a picture that has one value alone, which no level divides."""

Floats = NDArray[np.float64]
Step = Callable[[int, int], None]
"""Told how many rounds are diffused and how many there are; what it raises ends the work."""
Lab = tuple[float, float, float]
_WHITE: list[float] = SRGB_WHITE.tolist()


@dataclass(frozen=True, slots=True)
class Pattern:
    """Rounds that a picture or words became, from the first knitted."""

    rounds: tuple[Round, ...]

    @property
    def floats(self) -> tuple[int, ...]:
        """The longest float of each round, in stitches, with repeat beside repeat."""
        return tuple(map(longest_float, self.rounds))

    @property
    def longest_float(self) -> int:
        """The longest float of all."""
        return max(self.floats)


def padded(pattern: Pattern, stitches: int) -> Pattern:
    """Give a pattern as wide as `stitches` with plain ground beside it, shared out evenly, the odd stitch at the left.

    Raises ValueError where the pattern is wider.
    """
    width = len(pattern.rounds[0])
    if stitches < width:
        raise ValueError(f"the pattern is {width} stitches wide, more than {stitches}")
    right = (stitches - width) // 2
    left = stitches - width - right
    return Pattern(tuple(Round(line.letters, bytes(right) + line.cells + bytes(left)) for line in pattern.rounds))


def values(light: ArrayLike) -> Floats:
    """Give the value, CIE L*, of linear sRGB light (… × 3)."""
    return np.asarray(_lab(np.asarray(light, dtype=float))[..., 0])


def otsu_level(value: ArrayLike) -> float:
    """Give the level that divides values (any shape) into two classes farthest apart for their spread.

    Otsu 1979, IEEE Trans. Systems, Man and Cybernetics 9, 62-66: the largest variance between classes, equation 18;
    here over the values themselves, not a histogram, and halfway to the next value.
    """
    ordered = np.sort(np.asarray(value, dtype=float), axis=None)
    count = len(ordered)
    below = np.arange(1, count)
    sums = np.cumsum(ordered)[:-1]
    w_0 = below / count
    mu_t = ordered.mean()
    between = (mu_t * w_0 - sums / count) ** 2 / (w_0 * (1 - w_0))
    between[np.diff(ordered) < 1e-9] = -1  # equal values cannot be told apart
    if not len(between) or between.max() < 0:
        return MIDDLE_VALUE
    best = int(np.argmax(between))
    return float((ordered[best] + ordered[best + 1]) / 2)


def thresholded(  # noqa: PLR0913 - settings that a user chooses one by one
    light: ArrayLike,
    *,
    letters: str = "AB",
    level: float | None = None,
    inverts: bool = False,
    dithers: bool = False,
    step: Step | None = None,
) -> Pattern:
    """Make what is darker than a level of value the figure, or what is lighter with `inverts`.

    Args:
        light: linear sRGB of each stitch, shape (rounds, stitches, 3), as `stitch_light` gives it.
        letters: ground and figure.
        level: CIE L*, 0 to 100; without one, `otsu_level`.
        inverts: whether light is figure.
        dithers: whether Floyd and Steinberg's diffusion stands for greys by a scatter of stitches.
        step: told how far diffusion is.
    """
    light = np.asarray(light, dtype=float)
    value = values(light)
    chosen = otsu_level(value) if level is None else level
    if dithers:
        middle = float(xyz_of_lab([chosen, 0, 0], white=SRGB_WHITE)[1]) / 100
        luminance = light @ (XYZ_OF_RGB[1] / 100)
        dark = diffused(
            luminance[..., None],
            np.array([[1.0], [0.0]]),
            choose=lambda _row, light_here: int(light_here[0] < middle),
            step=step,
        )
    else:
        dark = (value < chosen).astype(np.uint8)
    return pattern_of(dark ^ 1 if inverts else dark, letters)


def reduced(
    light: ArrayLike, shades: Mapping[str, ArrayLike], *, dithers: bool = False, step: Step | None = None
) -> Pattern:
    """Give each stitch the nearer of two letters, the two of each round chosen for the least sum of CIELAB differences.

    Args:
        light: linear sRGB of each stitch, shape (rounds, stitches, 3), as `stitch_light` gives it.
        shades: CIELAB of each letter, one at least. Picture and letters are compared each under its own white.
        dithers: whether Floyd and Steinberg's diffusion mixes the two letters of a round.
        step: told how far diffusion is.

    Raises ValueError without a letter.
    """
    if not shades:
        raise ValueError("there is no letter with a shade to make the pattern of")
    light = np.asarray(light, dtype=float)
    letters = "".join(shades)
    lab = np.array([np.asarray(shade, dtype=float) for shade in shades.values()])
    differences = np.linalg.norm(_lab(light)[:, :, None] - lab, axis=-1)
    pairs = [_best_pair(row) for row in differences]
    if dithers:
        known: list[Lab] = [(each[0], each[1], each[2]) for each in lab.tolist()]
        codes = diffused(
            light @ XYZ_OF_RGB.T,
            xyz_of_lab(lab, white=SRGB_WHITE),
            choose=lambda row, xyz: _nearer(xyz, known, pairs[row]),
            step=step,
        )
    else:
        codes = np.array(
            [np.where(row[:, i] <= row[:, j], i, j) for row, (i, j) in zip(differences, pairs, strict=True)]
        )
    return _shaded(codes, letters)


def pattern_of(figure: NDArray[np.integer], letters: str) -> Pattern:
    """Make a pattern of cells, shape (rounds, stitches), 1 where the figure is; a round without any is plain."""
    return Pattern(tuple(Round(letters if row.any() else letters[0], row.astype(np.uint8).tobytes()) for row in figure))


def _lab(light: Floats) -> Floats:
    return lab_of_xyz(light @ XYZ_OF_RGB.T, white=SRGB_WHITE)


def _best_pair(differences: Floats) -> tuple[int, int]:
    """Choose the two letters of a round, from differences (stitches, letters); one letter pairs with itself."""
    pairs = list(combinations(range(differences.shape[1]), 2)) or [(0, 0)]
    first, second = np.array(pairs).T
    total = np.minimum(differences[:, first], differences[:, second]).sum(axis=0)
    return pairs[int(np.argmin(total))]


def _nearer(xyz: list[float], lab: list[Lab], pair: tuple[int, int]) -> int:
    """Choose the nearer of two letters to a light; in Python's own numbers, as it is asked stitch by stitch."""
    x, y, z = (_cube_root(part / white) for part, white in zip(xyz, _WHITE, strict=True))
    here = (116 * y - 16, 500 * (x - y), 200 * (y - z))
    return pair[0] if math.dist(here, lab[pair[0]]) <= math.dist(here, lab[pair[1]]) else pair[1]


def _cube_root(t: float) -> float:
    """Give f of ISO/CIE 11664-4:2019, 5.1, which `lab_of_xyz` has for arrays."""
    return math.cbrt(t) if t > DELTA**3 else t / (3 * DELTA**2) + 4 / 29


def _shaded(codes: NDArray[np.integer], letters: str) -> Pattern:
    """Make rounds of letter codes; the ground of a round is the one of its letters that the whole has more of."""
    counts = np.bincount(codes.ravel(), minlength=len(letters))
    rounds = []
    for row in codes:
        used = sorted(set(row.tolist()), key=lambda code: (-counts[code], code))
        rounds.append(Round("".join(letters[code] for code in used), bytes(used.index(code) for code in row.tolist())))
    return Pattern(tuple(rounds))
