"""The shades of lots and of undyed yarns: mean of the readings, spread, what it rests on, and its screen colour."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from threading import Lock

import numpy as np
from numpy.typing import NDArray

from chartmaker.model.bounds import MOST_LOTS
from chartmaker.model.palette import Lot, Yarn
from chartmaker.model.reading import Reading
from chartmaker.model.settings import ILLUMINANTS, Viewing
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import RESTS_ON, LotShade
from chartmaker.shade.readings import is_adapted, lab_of_readings, rests_on
from chartmaker.shade.screen import screen_of_lab
from chartmaker.shade.weights import white_point

LONE_DEVIATION = (1.0, 0.8, 0.8)
"""Standard deviation of L*, a* and b* that a lone reading is given: common practice, no source."""
SCREEN_DEVIATION = (6.0, 6.0, 6.0)
"""The same for a shade that rests on a screen colour, however many were picked, since they err alike.

An uncorrected photo is off by over 10 CIEDE2000 in the mean (abstract of a study); 6 on each of three axes comes to 10.
"""
PHOTO_DEVIATION = (1.5, 4.0, 3.0)
"""The same for a shade that rests on a photo corrected by a target; several photos never bring it below, since they err
alike.

Rendered photos of invented wools in daylight, lamplight and under a tube err by 1.2, 4.0 and 2.8 (root mean square;
tests/pictures/test_target_photo.py holds it); value gets more, for the sheen of real wool: common practice, no source.
"""


def shade_of(lot: Lot, viewing: Viewing) -> LotShade | None:
    """Give a lot's shade under `viewing`, or None where it has no reading: planned, or not measured yet."""
    return shades_of((lot,), viewing)[0]


def shade_of_yarn(yarn: Yarn, viewing: Viewing) -> LotShade | None:
    """Give an undyed yarn's shade under `viewing`, or None where it has no reading."""
    if yarn.reading is None:
        return None
    return _computed([(yarn.id, (yarn.reading,))], viewing)[0]


def shades_of(lots: Sequence[Lot], viewing: Viewing) -> tuple[LotShade | None, ...]:
    """Give the shades of many lots at once, None for those without a reading; lots seen before cost next to nothing."""
    shades = [_memo.shade(lot, viewing) if lot.readings else None for lot in lots]
    missing = [index for index, shade in enumerate(shades) if shade is None and lots[index].readings]
    if missing:
        made = _computed([(lots[index].id, lots[index].readings) for index in missing], viewing)
        for index, shade in zip(missing, made, strict=True):
            shades[index] = shade
            _memo.keep(lots[index], shade)
    return tuple(shades)


@dataclass(frozen=True, slots=True)
class _Memo:
    """Shades by the lot itself, not by its value: hashing its spectra would cost as much as the shade.

    Sound because a lot never changes and the entry holds it, so that its `id` belongs to nothing else meanwhile.
    The oldest entries make room when `most` is passed.
    """

    most: int
    entries: dict[tuple[int, str, str], tuple[Lot, LotShade]] = field(default_factory=dict)
    lock: Lock = field(default_factory=Lock)
    """Writers take it: the window appraises off its own thread."""

    def shade(self, lot: Lot, viewing: Viewing) -> LotShade | None:
        entry = self.entries.get((id(lot), viewing.illuminant, viewing.observer))
        return entry[1] if entry else None

    def keep(self, lot: Lot, shade: LotShade) -> None:
        with self.lock:
            while len(self.entries) >= self.most:
                del self.entries[next(iter(self.entries))]
            self.entries[id(lot), shade.viewing.illuminant, shade.viewing.observer] = (lot, shade)


_memo = _Memo(most=2 * MOST_LOTS * len(ILLUMINANTS))
"""Room for two full palettes under every illuminant."""


def _computed(owners: Sequence[tuple[str, tuple[Reading, ...]]], viewing: Viewing) -> list[LotShade]:
    """Give the shades of owners, each an id and at least one reading."""
    lab = lab_of_readings([reading for _, readings in owners for reading in readings], viewing)
    counts = np.array([len(readings) for _, readings in owners])
    starts = np.cumsum(counts) - counts
    means, deviations, mcdms = _statistics(lab, starts=starts, counts=counts)
    rgb, is_out = screen_of_lab(means, white=white_point(viewing))
    rows = zip(owners, means.tolist(), deviations.tolist(), mcdms.tolist(), rgb.tolist(), is_out.tolist(), strict=True)
    return [
        LotShade(
            lot=name,
            viewing=viewing,
            lab=tuple(mean),
            deviation=_judged(tuple(deviation), readings),
            mcdm=mcdm if len(readings) > 1 else 0.0,
            readings=len(readings),
            rests_on=_weakest(readings),
            is_adapted=any(is_adapted(reading, viewing) for reading in readings),
            srgb=tuple(srgb),
            is_out_of_gamut=is_clipped,
        )
        for (name, readings), mean, deviation, mcdm, srgb, is_clipped in rows
    ]


def _statistics(
    lab: NDArray[np.float64], *, starts: NDArray[np.intp], counts: NDArray[np.intp]
) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Give mean (k × 3), standard deviation (k × 3, n - 1) and MCDM (k) of the k runs of rows that begin at `starts`.

    MCDM is the mean CIEDE2000 of the readings from their mean CIELAB (ASTM E2214). A run of one has no deviation: 0.
    """
    means = np.add.reduceat(lab, starts) / counts[:, np.newaxis]
    mean_of_row = np.repeat(means, counts, axis=0)
    squares = np.add.reduceat((lab - mean_of_row) ** 2, starts)
    deviations = np.sqrt(squares / np.maximum(counts - 1, 1)[:, np.newaxis])
    mcdms = np.add.reduceat(ciede2000(mean_of_row, lab), starts) / counts
    return means, deviations, mcdms


def _judged(measured: tuple[float, float, float], readings: tuple[Reading, ...]) -> tuple[float, float, float]:
    """Give the deviation to reckon with: the measured one where there is one, and that is all that can be wrong."""
    weakest = _weakest(readings)
    if weakest == "approximate":
        return SCREEN_DEVIATION
    if weakest == "photo":
        low, a, b = (max(pair) for pair in zip(measured, PHOTO_DEVIATION, strict=True))
        return low, a, b
    return measured if len(readings) > 1 else LONE_DEVIATION


def _weakest(readings: tuple[Reading, ...]) -> str:
    """Give what the weakest of the readings lets a shade rest on."""
    return max((rests_on(reading) for reading in readings), key=RESTS_ON.index)
