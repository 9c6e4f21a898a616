"""Paper sizes, and the part of a page that the sheets draw on; all lengths in millimetres, y counts downwards."""

from dataclasses import dataclass, replace

MARGIN_MM, SMALL_MARGIN_MM = 14.0, 11.0
"""Clear of every edge: more than home printers leave unprinted, and room for a clip; less on small paper."""
HEADER_MM, LOW_HEADER_MM = 15.0, 10.5
"""Title, colourway and the name of the sheet; on one line where the page is low."""
FOOTER_MM = 8.0
"""Date and page number."""
LOW_MM = 220.0
"""Pages up to this height are low: A4 and Letter lying, and A5 either way."""
SMALL_MM = 160.0
"""Paper whose shorter side is up to this is small."""


@dataclass(frozen=True, slots=True)
class Paper:
    """One size of paper, as it lies before the reader."""

    name: str
    width_mm: float
    height_mm: float

    @property
    def turned(self) -> "Paper":
        """The same sheet turned by a quarter."""
        return replace(self, width_mm=self.height_mm, height_mm=self.width_mm)

    @property
    def margin_mm(self) -> float:
        """What stays clear at every edge."""
        return SMALL_MARGIN_MM if min(self.width_mm, self.height_mm) <= SMALL_MM else MARGIN_MM

    @property
    def is_low(self) -> bool:
        """Whether the head is one line, so that more height is left for what matters."""
        return self.height_mm <= LOW_MM

    @property
    def cover_frame(self) -> "Frame":
        """The same of a page that has no header."""
        frame = self.frame
        return Frame(left=frame.left, top=self.margin_mm, right=frame.right, bottom=frame.bottom)

    @property
    def frame(self) -> "Frame":
        """The part between header and footer."""
        header = LOW_HEADER_MM if self.is_low else HEADER_MM
        return Frame(
            left=self.margin_mm,
            top=self.margin_mm + header,
            right=self.width_mm - self.margin_mm,
            bottom=self.height_mm - self.margin_mm - FOOTER_MM,
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


PAPERS = {"a4": Paper("a4", 210.0, 297.0), "letter": Paper("letter", 215.9, 279.4), "a5": Paper("a5", 148.0, 210.0)}
"""ISO 216 A4 and A5, and Letter (8½ × 11 in), upright, by the word of the command line."""


def paper_named(name: str, *, is_turned: bool = False) -> Paper:
    """Give a paper by name, upright or lying; raises ValueError for one that is not known."""
    try:
        paper = PAPERS[name]
    except KeyError:
        *others, last = PAPERS
        raise ValueError(f"there is no paper {name!r}; it can be {', '.join(others)} or {last}") from None
    return paper.turned if is_turned else paper
