"""A surface that remembers what is drawn, and reads the chart back as text pictures."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from chartmaker.appraisal import Appraisal
from chartmaker.sheets.boxes import Box, Fills, Lines, Marks, Page, Picture, Text
from chartmaker.sheets.chart_plan import CellSize
from chartmaker.sheets.job import SHEETS, PrintJob
from chartmaker.sheets.marks import Mark
from chartmaker.sheets.paper import Paper
from chartmaker.sheets.plan import plan_pages
from chartmaker.sheets.surface import draw


@dataclass
class Recorder:
    """Keeps the boxes of each page, in the order in which they are drawn."""

    pages: list[list[Box]] = field(default_factory=list)
    sheets: list[str] = field(default_factory=list)

    def begin_page(self, page: Page, paper: Paper) -> None:
        assert paper.width_mm > 0
        self.pages.append([])
        self.sheets.append(page.sheet)

    def text(self, box: Text) -> None:
        self.pages[-1].append(box)

    def fills(self, box: Fills) -> None:
        self.pages[-1].append(box)

    def lines(self, box: Lines) -> None:
        self.pages[-1].append(box)

    def marks(self, box: Marks) -> None:
        self.pages[-1].append(box)

    def picture(self, box: Picture) -> None:
        self.pages[-1].append(box)

    def end_page(self) -> None:
        assert self.pages[-1], "a page with nothing on it"

    def texts(self, *sheets: str) -> list[str]:
        """Give every line of text, of all sheets or of those named."""
        return [
            box.text
            for sheet, page in zip(self.sheets, self.pages, strict=True)
            for box in page
            if isinstance(box, Text) and (not sheets or sheet in sheets)
        ]


def record(appraisal: Appraisal, *, sheets: Sequence[str] = SHEETS, **choices: Any) -> Recorder:
    recorder = Recorder()
    job = PrintJob(sheets=sheets, **choices)
    draw(plan_pages(appraisal, job), job.sheet, recorder)
    return recorder


def marks_as_text(
    boxes: Sequence[Box], *, right: float, bottom: float, size: CellSize, signs: Mapping[Mark, str], blank: str = "."
) -> str:
    """Read the marks in a grid of cells back into a text picture, first line the top round.

    `signs` says which character a mark is; cells with two marks show the one that `signs` names, marks that it does not
    name are passed over. The grid's origin is its lower right corner.
    """
    cells: dict[tuple[int, int], str] = defaultdict(lambda: blank)
    for box in boxes:
        if not isinstance(box, Marks) or box.mark not in signs:
            continue
        for x, y in box.centres:
            column, row = int((right - x) // size.width), int((bottom - y) // size.height)
            assert cells[row, column] == blank, f"two marks in round {row}, column {column}"
            cells[row, column] = signs[box.mark]
    rows = max(row for row, _ in cells) + 1
    columns = max(column for _, column in cells) + 1
    return "\n".join(
        "".join(cells[row, column] for column in reversed(range(columns))) for row in reversed(range(rows))
    )
