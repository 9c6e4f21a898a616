"""Which sheets there are, which pages they take, and in which order."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from chartmaker.appraisal import Appraisal
from chartmaker.sheets.bath_layout import bath_blocks
from chartmaker.sheets.boxes import Box, Page
from chartmaker.sheets.chart_layout import chart_pages, plan_chart
from chartmaker.sheets.contrast_layout import contrast_blocks
from chartmaker.sheets.flow import flowed
from chartmaker.sheets.furniture import Furniture
from chartmaker.sheets.key_layout import key_blocks
from chartmaker.sheets.paper import Frame, Paper
from chartmaker.sheets.rounds_layout import rounds_pages
from chartmaker.sheets.yarn_layout import yarn_blocks

SHEET_TITLES = {"chart": "Chart", "yarn": "Yarn", "contrast": "Contrast", "baths": "Baths", "rounds": "Rounds"}
"""The sheets by the word of the command line, in their usual order, with what is printed on them."""
SHEETS = tuple(SHEET_TITLES)

Progress = Callable[[int, int], None]
"""Told the number of pages done and of all pages; may raise to stop."""


@dataclass(frozen=True, slots=True)
class _Body:
    """A page before head and foot."""

    sheet: str
    boxes: Sequence[Box]
    bookmark: str = ""


def sheets_named(names: Sequence[str]) -> tuple[str, ...]:
    """Give the sheets asked for, each once, in the order asked for; raises ValueError for one that is not known."""
    if isinstance(names, str):
        raise ValueError(f"sheets are given one by one, not as the text {names!r}")  # noqa: TRY004 - told to the user
    for name in names:
        if name not in SHEET_TITLES:
            raise ValueError(f"there is no sheet {name!r}; the sheets are {', '.join(SHEETS)}")
    if not names:
        raise ValueError(f"no sheet is named; the sheets are {', '.join(SHEETS)}")
    return tuple(dict.fromkeys(names))


def plan_pages(appraisal: Appraisal, *, paper: Paper, sheets: Sequence[str], printed_on: str = "") -> list[Page]:
    """Lay out all pages of the sheets asked for."""
    bodies: list[_Body] = []
    for name in sheets_named(sheets):
        bodies.extend(_bodies(appraisal, name, paper.frame, first_page=len(bodies) + 1))
    design = appraisal.design
    furniture = Furniture(design.title, design.colourway.name, printed_on, paper)
    pages = []
    for number, body in enumerate(bodies, start=1):
        around = furniture.boxes(sheet_title=SHEET_TITLES[body.sheet], number=number, count=len(bodies))
        pages.append(Page(body.sheet, (*around, *body.boxes), body.bookmark))
    return pages


def _bodies(appraisal: Appraisal, name: str, frame: Frame, *, first_page: int) -> list[_Body]:
    makers = {"yarn": yarn_blocks, "contrast": contrast_blocks, "baths": bath_blocks}
    if name == "chart":
        bodies = _chart_bodies(appraisal, frame, first_page=first_page)
    elif name == "rounds":
        bodies = [_Body(name, boxes) for boxes in rounds_pages(appraisal, frame=frame)]
    else:
        bodies = [_Body(name, boxes) for boxes in flowed(makers[name](appraisal, width=frame.width), frame)]
    return [replace(bodies[0], bookmark=SHEET_TITLES[name]), *bodies[1:]]


def _chart_bodies(appraisal: Appraisal, frame: Frame, *, first_page: int) -> list[_Body]:
    """Give the key, then the drawings; the drawings name pages, so that the key's length must be known first."""
    key = flowed(key_blocks(appraisal, width=frame.width), frame)
    plan = plan_chart(appraisal, frame)
    drawings = chart_pages(appraisal, frame, plan, first_page=first_page + len(key))
    return [_Body("chart", boxes) for boxes in (*key, *drawings)]
