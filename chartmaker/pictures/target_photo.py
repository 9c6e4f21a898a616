"""Shades from a photo of skeins beside the 24-patch target: patches read, the camera corrected, skeins read.

The pixels' curve is taken as sRGB's (IEC 61966-2-1), which Display P3 shares. An embedded profile's primaries need not
be known: the correction is fitted to whatever the camera made of the patches.
"""

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from chartmaker.model.reading import LabReading
from chartmaker.model.settings import Viewing
from chartmaker.pictures.light_fall import LightFall, light_fall
from chartmaker.pictures.quadrilateral import Picture, Pixels, homography, in_order, mapped, outside_share, read_at
from chartmaker.pictures.target_grid import POSITIONS, Position, patch_points
from chartmaker.shade.correction import FEWEST_PATCHES, Correction, fitted, left_out_residuals, residuals
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.target import PATCHES, PatchPlace, other_edition, patch_xyz, place_of
from chartmaker.shade.weights import white_point

Floats = NDArray[np.float64]

MOST_RESIDUAL = 4.0
"""Mean CIEDE2000 of the patches above which a photo is refused.

Rendered photos keep to 2.1 in daylight, lamplight and under a tube (tests/pictures/test_target_photo.py); corners 0.4
patches off do no harm, half a patch off they come to 8 and more.
"""
MOST_SPOILT = 0.05
"""Share of a patch's pixels that may be clipped, or lie in shadow, before it is left out of the fit."""
CLEARLY_BETTER = 0.85
"""The other edition is named where its mean residual is below this share of the chosen one's, and by `BETTER_BY`."""
BETTER_BY = 0.15
ROUGH_SIDE, FINE_SIDE = 10, 48
"""Points along a side of a patch: to find how the target lies, and to read it."""
TILES, TILE_SIDE = 4, 32
"""A skein is read in so many tiles each way, each by so many points along a side."""


@dataclass(frozen=True, slots=True, eq=False)
class TargetReading:
    """What a photo's target says: how it lies, what corrects the camera, and how well that does."""

    edition: str
    viewing: Viewing
    corners: Floats
    """In the picture (4 × 2), clockwise from the upper left."""
    position: Position
    fall: LightFall
    """How the light falls off over the photo, which is evened out."""
    correction: Correction
    is_used: NDArray[np.bool_]
    """Which of the 24 patches the fit rests on."""
    clipped: Floats
    """Share (24) of each patch's pixels that are clipped."""
    dark: Floats
    """Share (24) that lie in shadow."""
    residual: Floats
    """CIEDE2000 (24) of each patch after correction; nan for one that is left out."""
    left_out: float
    """Mean CIEDE2000 of patches that are each left out of the fit: what a skein may expect at best."""
    other_mean: float
    """Mean residual that the other edition would leave."""

    @property
    def mean(self) -> float:
        """Mean CIEDE2000 of the patches that were used."""
        return float(np.nanmean(self.residual))

    @property
    def worst(self) -> float:
        """CIEDE2000 of the patch that fits worst."""
        return float(np.nanmax(self.residual))

    @property
    def worst_place(self) -> PatchPlace:
        """Where that patch is."""
        return place_of(int(np.nanargmax(self.residual)))

    @property
    def unused(self) -> tuple[PatchPlace, ...]:
        """The patches that were left out of the fit."""
        return tuple(place_of(index) for index in range(PATCHES) if not self.is_used[index])

    @property
    def likely_edition(self) -> str:
        """The other edition where that fits clearly better, else the one that was chosen."""
        is_better = self.other_mean < CLEARLY_BETTER * self.mean and self.other_mean < self.mean - BETTER_BY
        return other_edition(self.edition) if is_better else self.edition

    @property
    def refusal(self) -> str:
        """Why no shade can be taken by it and what to do, in one sentence; empty where it serves."""
        if self.mean <= MOST_RESIDUAL:
            return ""
        return (
            f"the patches are off by {self.mean:.1f} in the mean after correction, more than {MOST_RESIDUAL:g}, "
            f"most at {self.worst_place.words}: set the corners on the outermost patches' own corners, see that all "
            "of the target lies in the same even light and in focus, and that its edition is right"
        )


@dataclass(frozen=True, slots=True, eq=False)
class SkeinReading:
    """What a marked part of a photo comes to."""

    lab: tuple[float, float, float]
    """Under the viewing of the target's reading."""
    deviation: tuple[float, float, float]
    """Standard deviation of L*, a*, b* among its tiles."""
    spread: float
    """Mean CIEDE2000 of its tiles from its colour."""
    clipped: float
    """Share of its pixels with a channel at its top or bottom, which may truly lie beyond."""
    dark: float
    """Share of its pixels that lie in shadow."""
    viewing: Viewing

    @property
    def reading(self) -> LabReading:
        """The reading for a lot."""
        low, high = 0.0, 110.0
        value, a, b = (round(each, 2) for each in self.lab)
        return LabReading(lab=(min(max(value, low), high), a, b), viewing=self.viewing, source="photo")


def read_target(picture: Picture, corners: ArrayLike, *, edition: str, viewing: Viewing) -> TargetReading:
    """Read the target between four corners (4 × 2, x and y in pixels, in any order) and fit the correction.

    `picture` is sRGB-coded (height × width × 3 or 4). Raises ValueError, a sentence, where the corners span nothing,
    reach outside the picture, or too few patches can be used; whether the fit serves is `refusal`'s to say.
    """
    ordered = in_order(corners)
    if outside_share(picture, ordered):
        raise ValueError("a corner of the target lies outside the picture")
    xyz, white = patch_xyz(edition, viewing), white_point(viewing)
    position = _position(picture, ordered, xyz=xyz, white=white)
    points = patch_points(ordered, position, per_side=FINE_SIDE)
    pixels = read_at(picture, points)
    clipped, dark, light = pixels.clipped, pixels.dark, pixels.light
    is_used = _usable(pixels)
    if is_used.sum() < FEWEST_PATCHES:
        raise ValueError(_too_few(is_used, clipped, dark))
    light, known, places = light[is_used], xyz[is_used], points[is_used].mean(axis=1)
    fall = light_fall(light, known, places, white=white)
    light = fall.evened(light, places)
    correction = fitted(light, known, white=white)
    residual = np.full(PATCHES, np.nan)
    residual[is_used] = residuals(correction, light, known)
    other = patch_xyz(other_edition(edition), viewing)[is_used]
    return TargetReading(
        edition=edition,
        viewing=viewing,
        corners=ordered,
        position=position,
        fall=fall,
        correction=correction,
        is_used=is_used,
        clipped=clipped,
        dark=dark,
        residual=residual,
        left_out=float(left_out_residuals(light, known, white=white).mean()),
        other_mean=float(residuals(fitted(light, other, white=white), light, other).mean()),
    )


def read_skein(picture: Picture, outline: ArrayLike, target: TargetReading) -> SkeinReading:
    """Read a marked part of the same picture, four corners (4 × 2) in any order, corrected by its target.

    Raises ValueError, a sentence, where it spans nothing or reaches outside the picture.
    """
    ordered = in_order(outline)
    if outside_share(picture, ordered):
        raise ValueError("the mark reaches outside the picture")
    points = _tile_points(ordered)
    pixels = read_at(picture, points)
    whole = Pixels(pixels.values.reshape(-1, 3))
    lab = target.correction.lab(target.fall.evened(whole.light, points.mean(axis=(0, 1))))
    tiles = target.correction.lab(target.fall.evened(pixels.light, points.mean(axis=1)))
    return SkeinReading(
        lab=(float(lab[0]), float(lab[1]), float(lab[2])),
        deviation=tuple(tiles.std(axis=0, ddof=1).tolist()),
        spread=float(ciede2000(lab, tiles).mean()),
        clipped=float(max(whole.clipped, whole.floored)),
        dark=float(whole.dark),
        viewing=target.viewing,
    )


def _position(picture: Picture, corners: Floats, *, xyz: Floats, white: Floats) -> Position:
    """Find how the target lies: the way in which a fit to roughly read patches leaves least."""

    def misfit(position: Position) -> float:
        pixels = read_at(picture, patch_points(corners, position, per_side=ROUGH_SIDE))
        is_used = _usable(pixels)
        if is_used.sum() < FEWEST_PATCHES:
            is_used = np.ones(PATCHES, dtype=bool)
        light, known = pixels.light[is_used], xyz[is_used]
        return float(residuals(fitted(light, known, white=white), light, known).mean())

    return min(POSITIONS, key=misfit)


def _usable(pixels: Pixels) -> NDArray[np.bool_]:
    return np.asarray((pixels.clipped <= MOST_SPOILT) & (pixels.dark <= MOST_SPOILT))


def _too_few(is_used: NDArray[np.bool_], clipped: Floats, dark: Floats) -> str:
    number = int(is_used.sum())
    if (clipped > MOST_SPOILT).sum() >= (dark > MOST_SPOILT).sum():
        return f"only {number} patches can be used, the others are too bright: take the photo again with less exposure"
    return f"only {number} patches can be used, the others are too dark: take the photo again in more light"


def _tile_points(corners: Floats) -> Floats:
    """Give the points (tiles × points × 2) of the picture at which a marked part is read."""
    steps = (np.arange(TILE_SIDE) + 0.5) / (TILE_SIDE * TILES)
    inside = np.stack(np.meshgrid(steps, steps), axis=-1).reshape(-1, 2)
    first = np.stack(np.meshgrid(*2 * (np.arange(TILES) / TILES,)), axis=-1).reshape(-1, 1, 2)
    return mapped(homography(corners), first + inside)
