"""The worn hat from the side, in cm: its half outline from the worn edge up, the folded brim, and its measures.

Nothing here knows how large it will be drawn; `side_layout` places it on a screen or on paper.
"""

import math
from dataclasses import dataclass
from itertools import accumulate

from chartmaker.knit.depth import depth_of
from chartmaker.knit.easing import eased_steps
from chartmaker.knit.layout import Fabric
from chartmaker.knit.profile import Profile
from chartmaker.model.design import Design

LAYER_CM = 0.3
"""How far a folded brim stands off the fabric that it lies on, as drawn: common practice, no source."""
WIDER = 1.03
"""A hat is measured at its widest too where that is so much wider than the worn edge."""

Place = tuple[float, float]
"""Radius and height above the worn edge, in cm."""


@dataclass(frozen=True, slots=True)
class Part:
    """Brim, widening, body or crown: the stretch of the outline that it takes, and its depth along the fabric."""

    name: str
    first: int
    last: int
    """Places of the outline where it begins and ends."""
    depth_cm: float


@dataclass(frozen=True, slots=True)
class Edge:
    """Where a band begins or ends on the worn outline."""

    place: int
    radius_cm: float


@dataclass(frozen=True, slots=True)
class Strip:
    """What of a band is in sight above the worn edge."""

    name: str
    first: int
    last: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Side:
    """The hat from the side; a place of the outline is the edge between two rounds, the worn edge first."""

    outline: tuple[Place, ...]
    """One half of it, from the worn edge to the top."""
    fold: tuple[Place, ...]
    """The layer that lies double, from the worn edge to the cast-on edge; empty where nothing does."""
    fold_way: str
    """As the hat says it, "" without a fold."""
    strips: tuple[Strip, ...]
    edges: tuple[Edge, ...]
    parts: tuple[Part, ...]
    """Those that the hat has, from the worn edge up."""
    puckered: tuple[int, ...]
    """Places at the top of rounds that draw in faster than fabric lies flat; gathers are not among them."""

    @property
    def edge_radius_cm(self) -> float:
        """Radius of the worn edge."""
        return self.outline[0][0]

    @property
    def widest(self) -> Place:
        """The lowest place of the largest radius."""
        return max(self.outline, key=lambda place: (round(place[0], 6), -place[1]))

    @property
    def is_wider_above(self) -> bool:
        """Whether it is noticeably wider somewhere than at its worn edge."""
        return self.widest[0] > WIDER * self.edge_radius_cm

    @property
    def height_cm(self) -> float:
        """From the worn edge to the highest place, upright."""
        return max(height for _, height in self.outline)

    @property
    def depth_cm(self) -> float:
        """From the worn edge to the top, along the fabric."""
        return math.fsum(part.depth_cm for part in self.parts)


def side(design: Design, fabric: Fabric, profile: Profile) -> Side:
    """Work out the side of the hat as it is worn."""
    points = _outline(fabric, profile, round_cm=design.gauge.round_height_cm)
    folded = min(design.hat.fold.rounds, fabric.rounds - 1) if design.hat.fold else 0
    base = points[folded][1]
    worn = tuple((radius, height - base) for radius, height in points[folded:])
    way = design.hat.fold.way if design.hat.fold else ""
    return Side(
        outline=worn,
        fold=_fold(points[: folded + 1], way) if folded else (),
        fold_way=way,
        strips=_strips(design, folded),
        edges=_edges(design, profile, folded),
        parts=_parts(design, len(worn) - 1),
        puckered=tuple(
            at + 1 - folded
            for at, (puckers, run) in enumerate(zip(profile.puckers, profile.run_cm, strict=True))
            if puckers and run < 0 and at >= folded
        ),
    )


def around_cm(radius_cm: float) -> float:
    """Give the way round a hat of this radius."""
    return 2 * math.pi * radius_cm


def _outline(fabric: Fabric, profile: Profile, *, round_cm: float) -> list[Place]:
    """Give radius and height at the cast-on edge and at the top of each round, eased as the fabric eases itself.

    Where rounds do not meet it goes in steps.
    """
    run, rise = profile.run_cm, profile.rise_cm
    if all(fabric.meets):
        run, rise = (tuple(steps.tolist()) for steps in eased_steps(run, rise, round_cm=round_cm))
        radii = tuple(accumulate(run, initial=profile.radius_cm[0]))
    else:
        radii = (profile.radius_cm[0], *profile.radius_cm)
    heights = accumulate(rise, initial=0.0)
    return [(max(0.0, radius), height) for radius, height in zip(radii, heights, strict=True)]


def _fold(below: list[Place], way: str) -> tuple[Place, ...]:
    """Lay what is below the worn edge over what is above it: outside, inside, or rolled up to the outside."""
    worn_radius, base = below[-1]
    if way == "roll":
        return _roll(worn_radius, length_cm=base - below[0][1])
    off = LAYER_CM if way == "up" else -LAYER_CM
    layer = [(max(0.0, radius + off), base - height) for radius, height in reversed(below)]
    return ((worn_radius, 0.0), *layer)


def _roll(radius_cm: float, *, length_cm: float) -> tuple[Place, ...]:
    """Give a roll of one turn that takes up the fabric, and stands outside the hat."""
    small = max(length_cm / (2 * math.pi), LAYER_CM / 2)
    turns = [math.pi * (1 + step / 8) for step in range(17)]
    return tuple((radius_cm + small + small * math.cos(turn), small + small * math.sin(turn)) for turn in turns)


def _strips(design: Design, folded: int) -> tuple[Strip, ...]:
    ends = tuple(accumulate(len(band.rounds) for band in design.bands))
    strips = []
    for band, end in zip(design.bands, ends, strict=True):
        first = max(0, end - len(band.rounds) - folded)
        if end - folded > first:
            strips.append(Strip(band.name, first, end - folded))
    return tuple(strips)


def _edges(design: Design, profile: Profile, folded: int) -> tuple[Edge, ...]:
    """Give the edges of bands, each with the radius by the count of the round below it."""
    places = {0, *(strip.last for strip in _strips(design, folded))}
    return tuple(Edge(place, profile.radius_cm[max(0, place + folded - 1)]) for place in sorted(places))


def _parts(design: Design, last: int) -> tuple[Part, ...]:
    """Lay the parts of the budget of depth along the outline, which ends at place `last`."""
    found, at = [], 0
    for part in depth_of(design).parts:
        found.append(Part(part.name, min(at, last), min(at + part.rounds, last), part.cm))
        at += part.rounds
    return tuple(found)
