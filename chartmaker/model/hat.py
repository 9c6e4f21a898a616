"""The hat that the bands make: its shape, the head it is for, how it begins and ends, and what is sewn on."""

from dataclasses import dataclass

from chartmaker.model.bounds import MOST_ROUNDS, require_cm_within, require_letter, require_one_of, require_within

SHAPES = ("cap", "tam", "stocking")
CAST_ON_METHODS = ("long-tail", "knitted", "provisional")
FINISH_METHODS = ("drawn-through",)
TRIM_KINDS = ("pompom", "tassel")
FOLD_WAYS = ("up", "in", "roll")


@dataclass(frozen=True, slots=True)
class CastOn:
    """The letter and the method of the cast-on edge."""

    letter: str = "A"
    method: str = "long-tail"

    def __post_init__(self) -> None:
        require_letter("the cast-on letter", self.letter)
        require_one_of("the cast-on method", self.method, CAST_ON_METHODS)


@dataclass(frozen=True, slots=True)
class Finish:
    """The letter and the method that close the last round."""

    letter: str = "A"
    method: str = "drawn-through"

    def __post_init__(self) -> None:
        require_letter("the finishing letter", self.letter)
        require_one_of("the finishing method", self.method, FINISH_METHODS)


@dataclass(frozen=True, slots=True, kw_only=True)
class Trim:
    """Something made of yarn and sewn on: a pompom by its diameter, a tassel by its length."""

    kind: str
    letter: str
    size_cm: float
    """Diameter of a pompom, length of a tassel."""

    def __post_init__(self) -> None:
        require_one_of("a trim's kind", self.kind, TRIM_KINDS)
        require_letter("a trim's letter", self.letter)
        require_cm_within(f"a {self.kind}'s size", self.size_cm, 1, 40)


@dataclass(frozen=True, slots=True)
class Fold:
    """The first rounds, laid double when the hat is worn: turned up outside, sewn down inside, or rolled."""

    way: str
    """Turned "up" it shows its wrong side outside, "in" it is a hem, and "roll" is an edge that rolls by itself."""
    rounds: int
    """Rounds from the cast-on edge that lie on the others; the worn edge is above them."""

    def __post_init__(self) -> None:
        require_one_of("the way of a fold", self.way, FOLD_WAYS)
        require_within("a fold's rounds", self.rounds, 1, MOST_ROUNDS)


@dataclass(frozen=True, slots=True, kw_only=True)
class Hat:
    """What the knitter wants to make, before any stitch of it."""

    shape: str = "cap"
    head_cm: float = 56.0
    ease_percent: float = -6.0
    """How much wider than the head; negative is smaller, which a stranded hat needs to stay on."""
    cast_on: CastOn = CastOn()
    finish: Finish = Finish()
    trims: tuple[Trim, ...] = ()
    fold: Fold | None = None
    """How the brim folds; None where it does not."""
    depth_cm: float | None = None
    """From the worn edge along the fabric to the middle of the top; None where head and shape say it."""

    def __post_init__(self) -> None:
        require_one_of("shape", self.shape, SHAPES)
        require_within("head_cm", self.head_cm, 20, 90)
        require_within("ease_percent", self.ease_percent, -40, 40)
        if self.depth_cm is not None:
            require_within("depth_cm", self.depth_cm, 5, 150)

    @property
    def wanted_cm(self) -> float:
        """The circumference that head and ease ask for."""
        return self.head_cm * (1 + self.ease_percent / 100)
