"""Paper sizes, and the part of a page that the sheets draw on; all lengths in millimetres, y counts downwards."""

from dataclasses import dataclass

MARGIN_MM = 14.0
"""Clear of every edge: more than home printers leave unprinted, and room for a clip."""
HEADER_MM = 15.0
"""Title, colourway and the name of the sheet."""
FOOTER_MM = 8.0
"""Date and page number."""


@dataclass(frozen=True, slots=True)
class Paper:
    """One size of paper, upright."""

    name: str
    width_mm: float
    height_mm: float

    @property
    def frame(self) -> "Frame":
        """The part between header and footer."""
        return Frame(
            left=MARGIN_MM,
            top=MARGIN_MM + HEADER_MM,
            right=self.width_mm - MARGIN_MM,
            bottom=self.height_mm - MARGIN_MM - FOOTER_MM,
        )


@dataclass(frozen=True, slots=True)
class Frame:
    """A rectangle that content stays inside."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        """From left to right."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """From top to bottom."""
        return self.bottom - self.top


PAPERS = {"a4": Paper("a4", 210.0, 297.0), "letter": Paper("letter", 215.9, 279.4)}
"""ISO 216 A4, and Letter (8½ × 11 in), by the word of the command line."""


def paper_named(name: str) -> Paper:
    """Give a paper by name; raises ValueError for one that is not known."""
    try:
        return PAPERS[name]
    except KeyError:
        raise ValueError(f"there is no paper {name!r}; it can be {' or '.join(PAPERS)}") from None
