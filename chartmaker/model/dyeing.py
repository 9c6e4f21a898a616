"""What a dyer has at hand and how she works: dyestuffs gathered, pots, and the habits by which fibre is weighed."""

from dataclasses import dataclass

from chartmaker.model.bounds import require_one_of, require_short, require_text, require_within

STATES = ("dry", "fresh")
"""How a dyestuff was weighed."""
LIGHTEST_SKEIN_G = 1.0


@dataclass(frozen=True, slots=True, kw_only=True)
class DyeingHabits:
    """What is added to the yarn that is needed before fibre is weighed out."""

    skein_g: float = 25.0
    """Fibre is wound in skeins of this weight and dyed by whole skeins; 0 for any weight. 25 g is how 2-ply jumper
    weight is sold, 105 m to 25 g (a spinner's published label, 2024)."""
    sample_g: float = 2.0
    """Kept of each load for the records: common practice, no source."""
    scouring_loss_percent: float = 3.0
    """Spinning oil and dirt; 1-5 % for mill-spun yarn (from memory), about 25 % for raw fleece (one sample)."""
    handling_loss_percent: float = 2.0
    """Ends, tangles and ties: common practice, no source."""

    def __post_init__(self) -> None:
        require_within("skein_g", self.skein_g, 0, 1000)
        if 0 < self.skein_g < LIGHTEST_SKEIN_G:
            raise ValueError(
                f"skein_g is {self.skein_g:g}; a skein weighs at least {LIGHTEST_SKEIN_G:g} g, or 0 for any"
            )
        require_within("sample_g", self.sample_g, 0, 1000)
        require_within("scouring_loss_percent", self.scouring_loss_percent, 0, 80)
        require_within("handling_loss_percent", self.handling_loss_percent, 0, 80)

    @property
    def kept(self) -> float:
        """The share of the fibre weighed in that is left as usable yarn."""
        return (1 - self.scouring_loss_percent / 100) * (1 - self.handling_loss_percent / 100)


@dataclass(frozen=True, slots=True, kw_only=True)
class Dyestuff:
    """A dyestuff on the shelf: what was gathered, grown or bought, and how much is left."""

    name: str
    """As the baths call it."""
    part: str = ""
    """Part of the plant; empty where it does not matter."""
    state: str = "dry"
    on_hand_g: float = 0.0
    dries_to_percent: float | None = None
    """What 100 g of it fresh weigh when dry, as the dyer weighed it; None where that is not known."""
    identified_by: str = ""
    """Who, qualified to know it, identified what was gathered."""
    notes: str = ""

    def __post_init__(self) -> None:
        require_text("a dyestuff's name", self.name)
        require_short("part", self.part)
        require_one_of("state", self.state, STATES)
        require_within("on_hand_g", self.on_hand_g, 0, 1_000_000)
        if self.dries_to_percent is not None:
            require_within("dries_to_percent", self.dries_to_percent, 0.1, 100)
        require_short("identified_by", self.identified_by)
        require_short("notes", self.notes)

    @property
    def key(self) -> tuple[str, str, str]:
        """What tells one entry of the shelf from another."""
        return self.name, self.part, self.state


@dataclass(frozen=True, slots=True, kw_only=True)
class Undyed:
    """How much of an undyed yarn is in the store."""

    yarn: str
    """Id of the yarn."""
    on_hand_g: float

    def __post_init__(self) -> None:
        require_text("a yarn's id", self.yarn)
        require_within("on_hand_g", self.on_hand_g, 0, 1_000_000)


@dataclass(frozen=True, slots=True, kw_only=True)
class Pot:
    """A pot that is kept for dyeing and never sees food again."""

    name: str
    litres: float
    """How much liquor it may hold with the fibre in it, not its brim."""
    kept_for: str = ""
    """A metal that it is kept for, iron or copper; empty for baths without them."""

    def __post_init__(self) -> None:
        require_text("a pot's name", self.name)
        require_within("litres", self.litres, 0.1, 1000)
        require_short("kept_for", self.kept_for)
