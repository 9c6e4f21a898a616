"""What a knitter answers when she starts a hat, and what is answered for her until she says otherwise."""

import math
from contextlib import suppress
from dataclasses import dataclass

from chartmaker.knit.brims import Brim
from chartmaker.knit.crown import FLAT, ROUND, Crown, steepest
from chartmaker.knit.depth_rules import OVER_A_THIRD_CM, Plate, cap_depths, tam_depth
from chartmaker.knit.profile import flat_disc_decreases
from chartmaker.model.bounds import (
    MOST_LETTERS,
    require_cm_within,
    require_letter,
    require_one_of,
    require_short,
    require_within,
)
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import SHAPES, Trim
from chartmaker.model.units import Measured

HEADS_CM = (20, 90)
EASE_PERCENT = -9.0
STRAIGHT_SHARE = 0.25
"""How far a stocking cap goes up straight before it tapers, to the head's girth."""
BRIM_SHARE = {"cap": 0.07, "tam": 0.055, "stocking": 0.07}
"""Depth of the brim to the head's girth."""
WIDEN_PERCENT = 50.0
WIDEN_ROUNDS = 1
TAPER_DECREASES, TAPER_EVERY = 2, 2
RESERVE_PERCENT = 10.0
TASSEL_SHARE = 0.15
"""Length of a stocking cap's tassel to the head's girth."""
LEFT_AT_POINT = 6
"""Stitches that are drawn up at a stocking cap's point."""
LIKELY_SECTIONS = (6, 5, 7, 8)
"""Sections that a crown may be given unasked, the usual first: a tam has five to seven (The Knitter 2013)."""
NEARLY_FLATTEST = 0.9
"""How fast a crown must be able to draw in, to the fastest of these: common practice, no source."""
CROWN_PROFILES = {"cap": ROUND, "tam": FLAT, "stocking": ROUND}


@dataclass(frozen=True, slots=True)
class Sourced:
    """What one answer rests on while the knitter has not given her own."""

    field: str
    """The name of the field of `Answers`."""
    source: str
    """A sentence: the fact and where it is published, or that it is common practice without a source."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Answers:
    """Everything that a plain hat is made from."""

    shape: str = "cap"
    head_cm: float = 56.0
    gauge: Gauge = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
    metres_per_100g: float = 420.0
    swatches: tuple[Swatch, ...] = ()
    brim: Brim = Brim()
    ease_percent: float = EASE_PERCENT
    depth_cm: float = 21.5
    """From the worn edge along the fabric to the middle of the top."""
    letters: str = "AB"
    """Ground and figure first; further ones are kept for the bands to come."""
    crown: Crown = Crown()
    """Of a cap and a tam; a stocking cap tapers instead."""
    widen_percent: float = WIDEN_PERCENT
    """How much wider than its brim a tam is at its rim."""
    widen_rounds: int = WIDEN_ROUNDS
    """Over how many rounds a tam widens; one gathers above the brim."""
    taper_decreases: int = TAPER_DECREASES
    """Decreases in every second round of a stocking cap's taper."""
    motif_repeat: int | None = None
    """A repeat that the body is to hold a whole number of times; None for as many kinds as can be."""
    trims: tuple[Trim, ...] = ()
    reserve_percent: float = RESERVE_PERCENT
    title: str = ""

    def __post_init__(self) -> None:
        require_one_of("shape", self.shape, SHAPES)
        require_within("head_cm", self.head_cm, *HEADS_CM)
        require_within("metres_per_100g", self.metres_per_100g, 10, 5000)
        require_within("ease_percent", self.ease_percent, -40, 40)
        require_cm_within("the depth", self.depth_cm, 5, 150)
        require_within("widen_percent", self.widen_percent, 10, 120)
        require_within("widen_rounds", self.widen_rounds, 1, 100)
        require_within("taper_decreases", self.taper_decreases, 1, 24)
        require_short("title", self.title)
        if self.motif_repeat is not None:
            require_within("motif_repeat", self.motif_repeat, 1, 100)
        for letter in self.letters:
            require_letter("a letter", letter)
        if not 2 <= len(set(self.letters)) == len(self.letters) <= MOST_LETTERS:
            raise ValueError(f"letters are {self.letters!r}; a hat begins with at least two, each once")

    @property
    def wanted_cm(self) -> float:
        """The circumference that head and ease ask for."""
        return self.head_cm * (1 + self.ease_percent / 100)

    @property
    def ground(self) -> str:
        """The letter that lies behind."""
        return self.letters[0]

    @property
    def figure(self) -> str:
        """The letter that is drawn."""
        return self.letters[1]


def defaults_for(*, shape: str, head_cm: float, gauge: Gauge) -> Answers:
    """Answer everything that shape, head and gauge leave open; `sources_for` says what it rests on.

    Raises ValueError for what is out of range.
    """
    require_one_of("shape", shape, SHAPES)
    require_within("head_cm", head_cm, *HEADS_CM)
    return Answers(
        shape=shape,
        head_cm=head_cm,
        gauge=gauge,
        brim=Brim(depth_cm=round(BRIM_SHARE[shape] * head_cm, 1)),
        crown=likely_crown(CROWN_PROFILES[shape], gauge),
        depth_cm=usual_depth_cm(shape, head_cm, gauge),
        trims=(Trim(kind="tassel", letter="B", size_cm=round(TASSEL_SHARE * head_cm)),) if shape == "stocking" else (),
    )


def usual_depth_cm(shape: str, head_cm: float, gauge: Gauge) -> float:
    """Give about the depth of a hat that no other was asked for, to the millimetre; its counts say it exactly."""
    around_cm = head_cm * (1 + EASE_PERCENT / 100)
    if shape == "tam":
        radius_cm = around_cm / (2 * math.pi)
        rim_cm = radius_cm * (1 + WIDEN_PERCENT / 100)
        plate = Plate(brim_cm=BRIM_SHARE["tam"] * head_cm, inner_radius_cm=radius_cm, radius_cm=rim_cm)
        return round(tam_depth(head_cm, plate).lowest_cm, 1)
    if shape == "stocking":
        taper_cm = taper_rounds(around_cm / gauge.stitch_width_cm, TAPER_DECREASES) * gauge.round_height_cm
        return round(STRAIGHT_SHARE * head_cm + taper_cm, 1)
    return round(sum(cap_depths(head_cm)) / 2, 1)


def likely_crown(profile: str, gauge: Gauge) -> Crown:
    """Give a crown of the usual number of sections, or of the next that can draw in as fast as its profile does.

    Raises ValueError where the fabric takes none of them.
    """
    rates: dict[int, float] = {}
    for sections in LIKELY_SECTIONS:
        with suppress(ValueError):
            rates[sections] = min(steepest(Crown(sections=sections), gauge), flat_disc_decreases(gauge))
    if not rates:
        steepest(Crown(sections=LIKELY_SECTIONS[0]), gauge)  # says why
    enough = NEARLY_FLATTEST * max(rates.values())
    return Crown(profile=profile, sections=next(sections for sections, rate in rates.items() if rate >= enough))


def taper_rounds(stitches: float, decreases: int) -> float:
    """Give the rounds that so many stitches take down to the point of a stocking cap, so many less every second one."""
    return TAPER_EVERY * max(0.0, stitches - LEFT_AT_POINT) / decreases


def sources_for(shape: str) -> tuple[Sourced, ...]:
    """Tell what the default answers of a shape rest on, each in a sentence."""
    common = (
        Sourced("ease_percent", "About 9 % smaller than the head: stranded hats, The Knitter 2019"),
        Sourced("depth_cm", DEPTH_SOURCES[shape]),
        Sourced("brim", "The brim is 5 to 7 % of the head deep: common practice, no source"),
        Sourced("metres_per_100g", _yarn_source()),
        Sourced("reserve_percent", "10 % of the yarn in reserve; 10 to 20 % is common practice, no source"),
    )
    return common + SHAPE_SOURCES[shape]


def _yarn_source() -> str:
    return Measured(
        lambda units: f"Yarn of {units.grist.told(420)}, 2-ply jumper weight: a spinner's published label, 2024"
    )


DEPTH_SOURCES = {
    "cap": Measured(
        lambda units: (
            f"Midway between a third of the girth and {units.length.brief(OVER_A_THIRD_CM)}, and 0.4 of it: "
            "craft pages, which differ"
        )
    ),
    "tam": (
        "Brim, underside and top of a plate as wide as the rim: geometry; at least a third of the girth: craft pages"
    ),
    "stocking": "A quarter of the girth straight, then as long as its taper takes: common practice, no source",
}
CROWN_SOURCE = (
    "Six sections, or as many as can draw in as fast as a flat disc, 2π × stitch gauge / round gauge stitches a round "
    "(geometry); a tam has five to seven: The Knitter 2013"
)
SHAPE_SOURCES: dict[str, tuple[Sourced, ...]] = {
    "cap": (Sourced("crown", CROWN_SOURCE),),
    "tam": (
        Sourced("crown", CROWN_SOURCE),
        Sourced("widen_percent", "Widened by about 50 % after the brim: The Knitter 2017"),
        Sourced("widen_rounds", "All in one round, which gathers above the brim: common practice, no source"),
    ),
    "stocking": (
        Sourced("taper_decreases", "Two decreases every second round: a published pattern note"),
        Sourced("trims", "A tassel at the point: common practice, no source"),
    ),
}
