"""What every page carries: title, colourway, name of the sheet, date and page number."""

from collections.abc import Iterator
from dataclasses import dataclass

from chartmaker.sheets.boxes import Box, Lines, Style, Text, text_at
from chartmaker.sheets.ink import ACCENT, HAIRLINE, QUIET
from chartmaker.sheets.paper import FOOTER_MM, Paper

TITLE = Style(14.0, bold=True)
LOW_TITLE = Style(12.0, bold=True)
"""On low pages, where the colourway stands beside it."""
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
        """Give head and foot of one page; one without a title, the cover, has no head: it says all that itself."""
        left, right = self.paper.margin_mm, self.paper.width_mm - self.paper.margin_mm
        bottom = self.paper.height_mm - self.paper.margin_mm
        head = self._low_head if self.paper.is_low else self._head
        boxes: list[Box] = [
            *(head(sheet_title) if sheet_title else ()),
            text_at(right, bottom - 0.8, f"page {number} of {count}", QUIET_LINE, align="right"),
            Lines(((left, bottom - FOOTER_MM + 3.4, right, bottom - FOOTER_MM + 3.4),), 0.2, HAIRLINE),
        ]
        if self.printed_on:
            boxes.append(text_at(left, bottom - 0.8, self.printed_on, QUIET_LINE, most=(right - left) / 2))
        return boxes

    def _head(self, sheet_title: str) -> Iterator[Box]:
        """Give the head in two lines."""
        left, top = self.paper.margin_mm, self.paper.margin_mm
        right = self.paper.width_mm - left
        width = right - left
        sheet = text_at(right, top + 5.0, sheet_title, SHEET, align="right", most=0.4 * width)
        yield self._title(top + 5.0, TITLE, most=sheet.x - left - 6)
        yield sheet
        yield Lines(((left, top + 11.4, right, top + 11.4),), 0.2, HAIRLINE)
        if self.colourway.strip():
            yield text_at(left, top + 9.6, self._colourway, QUIET_LINE, most=0.72 * width)

    def _low_head(self, sheet_title: str) -> Iterator[Box]:
        """Give the head in one line."""
        left, baseline = self.paper.margin_mm, self.paper.margin_mm + 4.4
        right = self.paper.width_mm - left
        width = right - left
        sheet = text_at(right, baseline, sheet_title, SHEET, align="right", most=0.4 * width)
        title = self._title(baseline, LOW_TITLE, most=min(0.45 * width, sheet.x - left - 12))
        yield title
        yield sheet
        yield Lines(((left, baseline + 2.4, right, baseline + 2.4),), 0.2, HAIRLINE)
        if self.colourway.strip():
            x = left + title.width + 4
            yield text_at(x, baseline, self._colourway, QUIET_LINE, most=sheet.x - x - 4)

    def _title(self, baseline: float, style: Style, *, most: float) -> Text:
        return text_at(self.paper.margin_mm, baseline, self.title.strip() or UNTITLED, style, most=most)

    @property
    def _colourway(self) -> str:
        return f"Colourway: {self.colourway}"
