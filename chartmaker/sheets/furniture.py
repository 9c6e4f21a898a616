"""What every page carries: title, colourway, name of the sheet, date and page number."""

from dataclasses import dataclass

from chartmaker.sheets.boxes import Box, Lines, Style, text_at
from chartmaker.sheets.ink import ACCENT, HAIRLINE, QUIET
from chartmaker.sheets.paper import FOOTER_MM, MARGIN_MM, Paper

TITLE = Style(14.0, bold=True)
SHEET = Style(10.0, bold=True, ink=ACCENT)
QUIET_LINE = Style(8.5, ink=QUIET)
UNTITLED = "Untitled hat"


@dataclass(frozen=True, slots=True)
class Furniture:
    """What stays the same from page to page."""

    title: str
    colourway: str
    printed_on: str
    """As it is to be shown; empty to leave it out."""
    paper: Paper

    def boxes(self, *, sheet_title: str, number: int, count: int) -> list[Box]:
        """Give head and foot of one page."""
        left, right, top = MARGIN_MM, self.paper.width_mm - MARGIN_MM, MARGIN_MM
        bottom = self.paper.height_mm - MARGIN_MM
        width = right - left
        boxes: list[Box] = [
            text_at(left, top + 5.0, self.title.strip() or UNTITLED, TITLE, most=0.72 * width),
            text_at(right, top + 5.0, sheet_title, SHEET, align="right", most=0.26 * width),
            Lines(((left, top + 11.4, right, top + 11.4),), 0.2, HAIRLINE),
            text_at(right, bottom - 0.8, f"page {number} of {count}", QUIET_LINE, align="right"),
            Lines(((left, bottom - FOOTER_MM + 3.4, right, bottom - FOOTER_MM + 3.4),), 0.2, HAIRLINE),
        ]
        if self.colourway.strip():
            words = f"Colourway: {self.colourway}"
            boxes.append(text_at(left, top + 9.6, words, QUIET_LINE, most=0.72 * width))
        if self.printed_on:
            boxes.append(text_at(left, bottom - 0.8, self.printed_on, QUIET_LINE, most=width / 2))
        return boxes
