"""What a knitter answers when she starts a hat, and what is answered for her until she says otherwise."""

from dataclasses import dataclass

from chartmaker.knit.brims import Brim
from chartmaker.model.bounds import MOST_LETTERS, require_letter, require_one_of, require_short, require_within
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import SHAPES, Trim

EASE_PERCENT = -9.0
STRAIGHT_SHARE = 0.25
"""How far a stocking cap goes up straight before it tapers, to the head's girth."""
BRIM_SHARE = {"cap": 0.07, "tam": 0.055, "stocking": 0.07}
"""Depth of the brim to the head's girth."""
WIDEN_PERCENT = 50.0
TAPER_DECREASES, TAPER_EVERY = 2, 2
RESERVE_PERCENT = 10.0
TASSEL_SHARE = 0.15
"""Length of a stocking cap's tassel to the head's girth."""
LEFT_AT_POINT = 8
"""Stitches that are drawn up at a stocking cap's point."""


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
    swatch: Swatch | None = None
    brim: Brim = Brim()
    ease_percent: float = EASE_PERCENT
    depth_cm: float = 21.5
    """From the worn edge along the fabric to the middle of the top."""
    letters: str = "AB"
    """Ground and figure first; further ones are kept for the bands to come."""
    widen_percent: float = WIDEN_PERCENT
    """How much wider than its brim a tam is at its rim."""
    taper_decreases: int = TAPER_DECREASES
    """Decreases in every second round of a stocking cap's taper."""
    motif_repeat: int | None = None
    """A repeat that the body is to hold a whole number of times; None for as many kinds as can be."""
    trims: tuple[Trim, ...] = ()
    reserve_percent: float = RESERVE_PERCENT
    title: str = ""

    def __post_init__(self) -> None:
        require_one_of("shape", self.shape, SHAPES)
        require_within("head_cm", self.head_cm, 20, 90)
        require_within("metres_per_100g", self.metres_per_100g, 10, 5000)
        require_within("ease_percent", self.ease_percent, -40, 40)
        require_within("depth_cm", self.depth_cm, 5, 150)
        require_within("widen_percent", self.widen_percent, 10, 120)
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
    return Answers(
        shape=shape,
        head_cm=head_cm,
        gauge=gauge,
        brim=Brim(depth_cm=round(BRIM_SHARE[shape] * head_cm, 1)),
        depth_cm=round(_depth_cm(shape, head_cm, gauge), 1),
        trims=(Trim(kind="tassel", letter="B", size_cm=round(TASSEL_SHARE * head_cm)),) if shape == "stocking" else (),
    )


def taper_rounds(stitches: float, decreases: int) -> float:
    """Give the rounds that so many stitches take down to the point of a stocking cap, so many less every second one."""
    return TAPER_EVERY * max(0.0, stitches - LEFT_AT_POINT) / decreases


def sources_for(shape: str) -> tuple[Sourced, ...]:
    """Tell what the default answers of a shape rest on, each in a sentence."""
    common = (
        Sourced("ease_percent", "About 9 % smaller than the head: stranded hats, The Knitter 2019"),
        Sourced("depth_cm", DEPTH_SOURCES[shape]),
        Sourced("brim", "The brim is 5 to 7 % of the head deep: common practice, no source"),
        Sourced("reserve_percent", "10 % of the yarn in reserve; 10 to 20 % is common practice, no source"),
    )
    return common + SHAPE_SOURCES[shape]


DEPTH_SOURCES = {
    "cap": "Midway between a third of the girth and 2 cm, and 0.4 of it: craft pages, which differ",
    "tam": "Midway between a third of the girth and 2 cm, and 0.4 of it: craft pages, which differ",
    "stocking": "A quarter of the girth straight, then as long as its taper takes: common practice, no source",
}
SHAPE_SOURCES: dict[str, tuple[Sourced, ...]] = {
    "cap": (),
    "tam": (Sourced("widen_percent", "Widened by about 50 % after the brim: The Knitter 2017"),),
    "stocking": (
        Sourced("taper_decreases", "Two decreases every second round: a published pattern note"),
        Sourced("trims", "A tassel at the point: common practice, no source"),
    ),
}


def _depth_cm(shape: str, head_cm: float, gauge: Gauge) -> float:
    if shape != "stocking":
        return (head_cm / 3 + 2 + 0.4 * head_cm) / 2
    stitches = head_cm * (1 + EASE_PERCENT / 100) / gauge.stitch_width_cm
    return STRAIGHT_SHARE * head_cm + taper_rounds(stitches, TAPER_DECREASES) * gauge.round_height_cm
