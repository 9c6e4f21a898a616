"""One round of a chart: a repeat of cells, the letters that play its parts, and its shaping."""

from dataclasses import dataclass

from chartmaker.model.bounds import MOST_STITCHES, require_letter
from chartmaker.model.stitches import Part, Shaping

SIGNS = bytes(Shaping)
"""Every `Shaping`."""


@dataclass(frozen=True, slots=True)
class Round:
    """One repeat of a round, in knitting order: cell 0 is stitch 1, the right-most of the chart."""

    letters: str
    """The letters that play ground, figure and third, one character each: "AB" is ground A, figure B."""
    cells: bytes
    """The `Part` of each stitch."""
    shaping: bytes = b""
    """The `Shaping` of each stitch; left out, all are plain."""

    def __post_init__(self) -> None:
        if not self.shaping:
            object.__setattr__(self, "shaping", bytes(len(self.cells)))
        if not 1 <= len(self.letters) <= len(Part):
            raise ValueError(f"a round has one to three letters, not {len(self.letters)}")
        for letter in self.letters:
            require_letter("a round's letter", letter)
        if not self.cells:
            raise ValueError("a round has no cells")
        if len(self.cells) > MOST_STITCHES:
            raise ValueError(f"a round has {len(self.cells)} cells, more than {MOST_STITCHES}")
        if len(self.shaping) != len(self.cells):
            raise ValueError(f"{len(self.cells)} cells but {len(self.shaping)} shaping signs")
        if self.shaping.translate(None, SIGNS):
            raise ValueError(f"{max(self.shaping)} is no shaping")
        if self.cells.translate(None, bytes(range(len(self.letters)))):
            missing = Part(max(self.cells)).name.lower() if max(self.cells) < len(Part) else str(max(self.cells))
            raise ValueError(f"a cell plays the {missing}, but the round has {len(self.letters)} letter(s)")

    def __len__(self) -> int:
        """Give the number of stitches in one repeat."""
        return len(self.cells)

    @property
    def eaten(self) -> int:
        """Stitches of the round below that one repeat eats."""
        pairs = self.shaping.count(Shaping.K2TOG) + self.shaping.count(Shaping.SSK)
        return len(self) + pairs + 2 * self.shaping.count(Shaping.CENTRED) - self.shaping.count(Shaping.MAKE)

    @property
    def is_shaped(self) -> bool:
        """Whether any stitch is a decrease or an increase."""
        return self.shaping.count(Shaping.PLAIN) < len(self.shaping)

    @property
    def letters_in_use(self) -> str:
        """The letters that at least one stitch is worked in, ground first, each once."""
        worked = ""
        for part, letter in enumerate(self.letters):
            if part in self.cells and letter not in worked:
                worked += letter
        return worked

    def letter_of(self, stitch: int) -> str:
        """Give the letter that the stitch at this index is worked in."""
        return self.letters[self.cells[stitch]]

    @property
    def cells_by_letter(self) -> bytes:
        """The letter code of each stitch, 0 for A to 25 for Z."""
        table = bytes(ord(letter) - ord("A") for letter in self.letters)
        return self.cells.translate(table + bytes(256 - len(table)))
