"""A band: consecutive rounds with one repeat, worked a whole number of times round the hat."""

from dataclasses import dataclass

from chartmaker.model.bounds import MOST_STITCHES, require_short, require_within
from chartmaker.model.round import Round


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """Rounds from the first knitted to the last, and how many repeats go round."""

    name: str
    times: int
    """How many times the repeat is worked in each round."""
    rounds: tuple[Round, ...]
    """Index 0 is the first knitted."""
    texture: str = ""
    """Knit and purl as "k" and "p" from stitch 1, worked over and over along the repeat; empty is all knit."""

    def __post_init__(self) -> None:
        require_short("a band's name", self.name)
        require_within("times", self.times, 1, MOST_STITCHES)
        if not self.rounds:
            raise ValueError("a band has no rounds")
        if set(self.texture) - {"k", "p"}:
            raise ValueError(f"texture is {self.texture!r}; it is made of k and p")
        for number, line in enumerate(self.rounds, start=1):
            if len(line) * self.times > MOST_STITCHES:
                raise ValueError(
                    f"round {number} has {len(line)} × {self.times} = {len(line) * self.times} stitches, "
                    f"more than {MOST_STITCHES}"
                )
            if self.texture and len(line) % len(self.texture):
                raise ValueError(
                    f"round {number} has {len(line)} cells, which a texture of {len(self.texture)} does not divide"
                )

    @property
    def is_shaped(self) -> bool:
        """Whether any of its rounds has a decrease or an increase."""
        return any(line.is_shaped for line in self.rounds)

    def stitches(self, index: int) -> int:
        """Give the stitches of the whole round at this index of the band."""
        return len(self.rounds[index]) * self.times

    def eaten(self, index: int) -> int:
        """Give the stitches of the round below that the whole round at this index eats."""
        return self.rounds[index].eaten * self.times
