"""What the sheets are drawn on: the little that a surface must be able to do."""

from collections.abc import Sequence
from typing import Protocol

from chartmaker.sheets.boxes import Fills, Lines, Marks, Page, Picture, Text
from chartmaker.sheets.paper import Paper


class Surface(Protocol):
    """Takes boxes as they are laid out; y counts downwards from the top of the page, in millimetres."""

    def begin_page(self, page: Page, paper: Paper) -> None:
        """Start a page."""

    def text(self, box: Text) -> None:
        """Write a line."""

    def fills(self, box: Fills) -> None:
        """Fill rectangles."""

    def lines(self, box: Lines) -> None:
        """Draw straight lines."""

    def marks(self, box: Marks) -> None:
        """Draw a mark at each of its places."""

    def picture(self, box: Picture) -> None:
        """Draw pixels."""

    def end_page(self) -> None:
        """Finish the page."""


def draw(pages: Sequence[Page], paper: Paper, surface: Surface) -> None:
    """Walk pages onto a surface, box by box in their order."""
    for page in pages:
        draw_page(page, paper, surface)


def draw_page(page: Page, paper: Paper, surface: Surface) -> None:
    """Walk one page onto a surface."""
    surface.begin_page(page, paper)
    for box in page.boxes:
        match box:
            case Text():
                surface.text(box)
            case Fills():
                surface.fills(box)
            case Lines():
                surface.lines(box)
            case Marks():
                surface.marks(box)
            case Picture():
                surface.picture(box)
    surface.end_page()
