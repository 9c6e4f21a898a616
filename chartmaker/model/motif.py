"""A motif: a drawing with letters that stand for any, ready to be laid into a band or made one."""

import re
from dataclasses import dataclass

from chartmaker.model.bounds import MOST_ROUNDS, require_one_of, require_text
from chartmaker.model.round import Round

FAMILIES = ("peerie", "border", "cross-and-lozenge", "star", "lattice", "crown", "own")
"""Kinds of motif, small to large; a peerie is a band of one to seven rounds, "own" is what a user drew."""
PLACEHOLDERS = "ABC"
"""What plays ground, figure and third in a motif."""
MOST_TAGS = 20
LONGEST_WORD = 60
"""Characters of an id or a tag."""
_WORD = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")


@dataclass(frozen=True, slots=True, kw_only=True)
class Motif:
    """Rounds that belong together, of one repeat; a shaped one is the wedge of a crown, its counts meeting."""

    id: str
    """Small letters, digits and hyphens: it is its file's name too."""
    name: str
    family: str
    tags: tuple[str, ...] = ()
    """Words to find it by, spelt as an id is."""
    rounds: tuple[Round, ...]
    """Index 0 is the first knitted. Letters are `PLACEHOLDERS`: A is the ground, B the figure."""

    def __post_init__(self) -> None:
        _require_word("a motif's id", self.id)
        require_text("a motif's name", self.name)
        require_one_of("family", self.family, FAMILIES)
        if len(self.tags) > MOST_TAGS:
            raise ValueError(f"a motif has {len(self.tags)} tags, more than {MOST_TAGS}")
        for tag in self.tags:
            _require_word("a tag", tag)
        if not self.rounds:
            raise ValueError("a motif has no rounds")
        if len(self.rounds) > MOST_ROUNDS:
            raise ValueError(f"a motif has {len(self.rounds)} rounds, more than {MOST_ROUNDS}")
        self._require_placeholders()
        self._require_counts_that_meet()

    def _require_placeholders(self) -> None:
        for number, line in enumerate(self.rounds, start=1):
            if not PLACEHOLDERS.startswith(line.letters):
                wanted = " ".join(PLACEHOLDERS[: len(line.letters)])
                raise ValueError(f"round {number} has the letters {' '.join(line.letters)}; a motif's are {wanted}")

    def _require_counts_that_meet(self) -> None:
        if self.repeat < 1:
            raise ValueError("round 1 eats no stitch of what lies below")
        for number, (below, line) in enumerate(zip(self.rounds, self.rounds[1:], strict=False), start=2):
            if line.eaten != len(below):
                raise ValueError(f"round {number} eats {line.eaten} stitches, the round below has {len(below)}")

    @property
    def repeat(self) -> int:
        """Stitches that it takes up of the round it is knitted on."""
        return self.rounds[0].eaten

    @property
    def is_shaped(self) -> bool:
        """Whether it decreases or increases, as a crown's wedge does."""
        return any(line.is_shaped for line in self.rounds)

    @property
    def longest_float(self) -> int:
        """Stitches of its longest float with repeat beside repeat, 0 where it has none."""
        return max(map(longest_float, self.rounds))

    @property
    def parts(self) -> int:
        """How many letters it needs: two as a rule."""
        return max(len(line.letters) for line in self.rounds)


def fits(motif: Motif, stitches: int) -> bool:
    """Tell whether the motif closes up round this count of stitches."""
    return stitches > 0 and stitches % motif.repeat == 0


def floats_of(line: Round) -> tuple[tuple[int, int], ...]:
    """Give each float of a round, with repeat beside repeat: index of the first stitch that it passes, and how many."""
    found = []
    for part in sorted(set(line.cells)):
        uses = [stitch for stitch, cell in enumerate(line.cells) if cell == part]
        following = [*uses[1:], uses[0] + len(line)]
        passed = ((use + 1, later - use - 1) for use, later in zip(uses, following, strict=True))
        found += [(start % len(line), length) for start, length in passed if length]
    return tuple(found)


def longest_float(line: Round) -> int:
    """Give the longest float of a round, in stitches, with repeat beside repeat; 0 where one letter works it all."""
    return max((length for _, length in floats_of(line)), default=0)


def _require_word(name: str, word: str) -> None:
    if not _WORD.fullmatch(word):
        raise ValueError(f"{name} is {word!r}; it is made of small letters and digits, with hyphens between")
    if len(word) > LONGEST_WORD:
        raise ValueError(f"{name} has {len(word)} characters, more than {LONGEST_WORD}")
