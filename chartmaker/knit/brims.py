"""Brims: the kinds that a hat can begin with, and the bands and the fold that each is knitted as."""

from collections.abc import Callable
from dataclasses import dataclass

from chartmaker.knit.starting_counts import repeat_for
from chartmaker.model.band import Band
from chartmaker.model.bounds import require_cm_within, require_one_of
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import Fold
from chartmaker.model.round import Round
from chartmaker.model.settings import Limits
from chartmaker.model.units import Measured

BRIM_KINDS = {
    "rib-1x1": "rib, 1 × 1",
    "rib-2x2": "rib, 2 × 2",
    "two-coloured-1x1": "two-coloured rib, 1 × 1",
    "two-coloured-2x2": "two-coloured rib, 2 × 2",
    "hem": "hem, sewn down inside",
    "rolled": "edge that rolls by itself, held by rib, 1 × 1",
    "turned-up": "rib, 2 × 2, turned up double",
}
"""Each kind with what it is called."""
REPEATS = {"rib-1x1": 2, "rib-2x2": 4, "rolled": 2, "two-coloured-1x1": 2, "two-coloured-2x2": 4, "turned-up": 4}
"""Stitches that a kind repeats over; the others go with any count."""
ROLL_CM = 2.0
"""Plain fabric that rolls up at a rolled edge: common practice, no source."""
CUFF_ROUNDS_LESS = 4
"""By how many rounds a cuff is lower than the rib that it lies on, so that it does not cover what is above."""
FEWEST_ROUNDS = 2
"""Rounds of the shallowest brim, each side of a fold."""


@dataclass(frozen=True, slots=True)
class Brim:
    """The kind of a brim, and how deep it is when worn."""

    kind: str = "two-coloured-2x2"
    """One of `BRIM_KINDS`."""
    depth_cm: float = 4.0
    """As worn, so that a folded one is knitted twice as deep; of a rolled edge, the rib that holds it."""

    def __post_init__(self) -> None:
        require_one_of("a brim's kind", self.kind, tuple(BRIM_KINDS))
        require_cm_within("a brim's depth", self.depth_cm, 0.5, 20)

    @property
    def repeat(self) -> int:
        """Stitches that the count must be a multiple of."""
        return REPEATS.get(self.kind, 1)

    @property
    def is_two_coloured(self) -> bool:
        """Whether figure stands beside ground in it."""
        return self.kind.startswith("two-coloured")


@dataclass(frozen=True, slots=True)
class KnittedBrim:
    """A brim as bands."""

    bands: tuple[Band, ...]
    fold: Fold | None = None

    @property
    def worn_rounds(self) -> int:
        """Rounds from the worn edge up: those that do not lie double."""
        return sum(len(band.rounds) for band in self.bands) - (self.fold.rounds if self.fold else 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Edge:
    """What every kind is made from."""

    stitches: int
    rounds: int
    """As deep as the brim is worn."""
    round_cm: float
    letters: str
    """Ground and figure."""

    def plain(self, name: str, rounds: int, texture: str = "") -> Band:
        """Give rounds of ground alone; `texture` is the rib's or "p" for a purl ridge."""
        repeat = max(1, len(texture))
        return Band(
            name=name,
            times=self.stitches // repeat,
            texture=texture,
            rounds=(Round(self.letters[0], bytes(repeat)),) * rounds,
        )


def knitted_brim(brim: Brim, *, stitches: int, gauge: Gauge, letters: str = "AB") -> KnittedBrim:
    """Knit a brim on so many stitches, ground and figure in `letters`.

    Raises ValueError, with a sentence, where its repeat does not divide the stitches, or floats would be too long.
    """
    if stitches % brim.repeat:
        raise ValueError(
            f"a {BRIM_KINDS[brim.kind]} repeats over {brim.repeat} stitches, which do not divide {stitches}"
        )
    float_cm = brim.repeat // 2 * gauge.stitch_width_cm
    if brim.is_two_coloured and float_cm > Limits().float_cm:
        raise ValueError(
            Measured(
                lambda units: (
                    f"a {BRIM_KINDS[brim.kind]} makes floats of {units.length.told(float_cm)} at this gauge, longer "
                    f"than {units.length.brief(Limits().float_cm)}: choose a brim of one colour, or a finer gauge"
                )
            )
        )
    rounds = max(FEWEST_ROUNDS, round(brim.depth_cm / gauge.round_height_cm))
    return _KNITTED[brim.kind](_Edge(stitches=stitches, rounds=rounds, round_cm=gauge.round_height_cm, letters=letters))


def _rib(edge: _Edge, texture: str) -> KnittedBrim:
    return KnittedBrim((edge.plain("rib", edge.rounds, texture),))


def _two_coloured(edge: _Edge, texture: str) -> KnittedBrim:
    """Knit ground and purl figure; a plain and a purl round first keep it from curling."""
    cells = bytes(sign == "p" for sign in texture)
    line = Round(edge.letters[:2], cells)
    rib = Band(
        name="two-coloured rib",
        times=edge.stitches // len(texture),
        texture=texture,
        rounds=(line,) * max(1, edge.rounds - 2),
    )
    return KnittedBrim((edge.plain("edge", 1), edge.plain("ridge", 1, "p"), rib))


def _hem(edge: _Edge) -> KnittedBrim:
    """Face it, turn it at a purl ridge, and knit the outside as deep; that one is ready for a motif."""
    facing, ridge = edge.plain("facing", edge.rounds), edge.plain("ridge", 1, "p")
    repeat = repeat_for(edge.stitches, None)
    line = Round(edge.letters[:2], bytes(repeat))
    outside = Band(name="hem", times=edge.stitches // repeat, rounds=(line,) * (edge.rounds - 1))
    return KnittedBrim((facing, ridge, outside), Fold("in", edge.rounds))


def _rolled(edge: _Edge) -> KnittedBrim:
    rolls = max(FEWEST_ROUNDS, round(ROLL_CM / edge.round_cm))
    bands = (edge.plain("rolled edge", rolls), edge.plain("rib", edge.rounds, "kp"))
    return KnittedBrim(bands, Fold("roll", rolls))


def _turned_up(edge: _Edge) -> KnittedBrim:
    cuff = max(FEWEST_ROUNDS, edge.rounds - CUFF_ROUNDS_LESS)
    return KnittedBrim((edge.plain("rib", edge.rounds + cuff, "kkpp"),), Fold("up", cuff))


_KNITTED: dict[str, Callable[[_Edge], KnittedBrim]] = {
    "rib-1x1": lambda edge: _rib(edge, "kp"),
    "rib-2x2": lambda edge: _rib(edge, "kkpp"),
    "two-coloured-1x1": lambda edge: _two_coloured(edge, "kp"),
    "two-coloured-2x2": lambda edge: _two_coloured(edge, "kkpp"),
    "hem": _hem,
    "rolled": _rolled,
    "turned-up": _turned_up,
}
