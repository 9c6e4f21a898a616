"""The depth of a hat, budgeted over brim, body and crown: in rounds, and in cm along the fabric.

Along the fabric every round is as deep as it is high, whether it stands or lies. Rounds of the fold lie on others and
don't count; a top that is drawn up adds nothing.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from chartmaker.knit.crown import crown_start
from chartmaker.knit.depth_rules import Plate, WantedDepth, wanted_depth
from chartmaker.model.band import Band
from chartmaker.model.design import Design

FITS, SHORT, DEEP = "fits", "too short", "too deep"
EDGE_ROUNDS = 6
"""Plain rounds at the cast-on edge, below the first textured one, that still belong to the brim: an edge to roll."""
PLAIN_SHARE = 0.5
"""The share of a crown's lowest band that may be plain at its foot: a dome begins slowly, a body is longer."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Parts:
    """Where the parts of a hat begin, by index of a round in the whole hat."""

    worn: int
    """The worn edge: rounds below it lie double."""
    body: int
    """The first above the brim."""
    crown: int
    """The first of the crown; the number of rounds where there is none."""
    rounds: int
    """In all."""

    @property
    def has_crown(self) -> bool:
        """Whether anything closes the hat."""
        return self.crown < self.rounds


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One part of the budget."""

    name: str
    """One of brim, widening, body, crown."""
    rounds: int
    cm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Depth:
    """What a hat's rounds come to, and what is asked."""

    round_height_cm: float
    folded_rounds: int
    """That lie double and don't count."""
    parts: tuple[Part, ...]
    """From the worn edge up; those that a hat has not are left out."""
    wanted: WantedDepth
    has_crown: bool

    @property
    def rounds(self) -> int:
        """Rounds from the worn edge to the top."""
        return sum(part.rounds for part in self.parts)

    @property
    def cm(self) -> float:
        """From the worn edge along the fabric to the middle of the top."""
        return self.rounds * self.round_height_cm

    @property
    def off_cm(self) -> float:
        """How far it lies outside what fits; negative is too short, 0 fits."""
        return self.wanted.off_cm(self.cm)

    @property
    def verdict(self) -> str:
        """One of fits, too short, too deep."""
        if not self.off_cm:
            return FITS
        return SHORT if self.off_cm < 0 else DEEP

    @property
    def rounds_to_add(self) -> int:
        """What brings it to the depth that is wanted; negative are to be taken out, 0 where it fits."""
        return self.rounds_to_wanted if self.off_cm else 0

    @property
    def rounds_to_wanted(self) -> int:
        """How many rounds more would be the wanted depth to the round, whether it fits or not; negative are fewer."""
        return round((self.wanted.wanted_cm - self.cm) / self.round_height_cm)

    def part(self, name: str) -> Part:
        """Give a part by its name, without rounds where the hat has none."""
        return next((part for part in self.parts if part.name == name), Part(name=name, rounds=0, cm=0.0))


def depth_of(design: Design) -> Depth:
    """Budget the depth of a hat."""
    parts = parts_of(design)
    height = design.gauge.round_height_cm
    widening = _widening_rounds(design, parts)
    counted = {
        "brim": parts.body - parts.worn,
        "widening": widening,
        "body": parts.crown - parts.body - widening,
        "crown": parts.rounds - parts.crown,
    }
    return Depth(
        round_height_cm=height,
        folded_rounds=parts.worn,
        parts=tuple(Part(name=name, rounds=rounds, cm=rounds * height) for name, rounds in counted.items() if rounds),
        wanted=wanted_depth(design.hat, _plate(design, parts)),
        has_crown=parts.has_crown,
    )


def parts_of(design: Design) -> Parts:
    """Tell where brim, body and crown of a hat begin."""
    rounds = sum(len(band.rounds) for band in design.bands)
    fold = design.hat.fold
    worn = min(fold.rounds, rounds) if fold else 0
    under_fold = worn * 2 if fold and fold.way != "roll" else worn
    crown = max(_crown_round(design), worn)
    body = min(max(_brim_rounds(design.bands, worn), under_fold), crown)
    return Parts(worn=worn, body=body, crown=crown, rounds=rounds)


def starts_of(bands: Sequence[Band]) -> tuple[int, ...]:
    """Give the round at which each band begins, by index in the whole hat."""
    starts, below = [], 0
    for band in bands:
        starts.append(below)
        below += len(band.rounds)
    return tuple(starts)


def _crown_round(design: Design) -> int:
    """Give the crown's first round; long plain rounds at the foot of its lowest band are the body's."""
    index = crown_start(design)
    bands = design.bands
    below = sum(len(band.rounds) for band in bands[:index])
    if index is None:
        return below
    plain = next((number for number, line in enumerate(bands[index].rounds) if line.is_shaped), 0)
    return below + (plain if not index or plain > PLAIN_SHARE * len(bands[index].rounds) else 0)


def _brim_rounds(bands: Sequence[Band], folded: int) -> int:
    """Give the rounds below the first band that is all knit after textured ones; 0 without any at the worn edge."""
    edge = brim = 0
    for band in bands:
        if band.texture and set(band.texture) != {"k"}:
            edge = brim = edge + len(band.rounds)
        elif brim or edge + len(band.rounds) > EDGE_ROUNDS + folded:
            break
        else:
            edge += len(band.rounds)
    return brim


def _change(band: Band) -> int:
    return len(band.rounds[-1]) - band.rounds[0].eaten


def _widening_rounds(design: Design, parts: Parts) -> int:
    """Give the rounds of a tam's bands that widen between its brim and its crown."""
    if design.hat.shape != "tam":
        return 0
    placed = zip(starts_of(design.bands), design.bands, strict=True)
    return sum(
        len(band.rounds)
        for start, band in placed
        if parts.body <= start and start + len(band.rounds) <= parts.crown and _change(band) > 0
    )


def _plate(design: Design, parts: Parts) -> Plate | None:
    if design.hat.shape != "tam":
        return None
    width = design.gauge.stitch_width_cm
    brim = _stitches_at(design, max(parts.body - 1, 0))
    rim = max(len(line) * band.times for band, line in design.rounds())
    return Plate(
        brim_cm=(parts.body - parts.worn) * design.gauge.round_height_cm,
        inner_radius_cm=brim * width / (2 * math.pi),
        radius_cm=rim * width / (2 * math.pi),
    )


def _stitches_at(design: Design, number: int) -> int:
    """Give the stitches of a round, by index in the whole hat."""
    starts = starts_of(design.bands)
    band = max(index for index, start in enumerate(starts) if start <= number)
    return design.bands[band].stitches(number - starts[band])
