"""Which pages each sheet takes, and in which order."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from chartmaker.appraisal import Appraisal
from chartmaker.model.units import Units
from chartmaker.planning import plan_for
from chartmaker.sheets.bath_layout import bath_pages
from chartmaker.sheets.boxes import Body, Bookmark, Box, Page
from chartmaker.sheets.chart_layout import Manner, chart_pages, plan_chart
from chartmaker.sheets.chart_plan import LARGE, USUAL
from chartmaker.sheets.contrast_layout import contrast_blocks
from chartmaker.sheets.cover_layout import cover_pages
from chartmaker.sheets.flow import Block, flowed
from chartmaker.sheets.furniture import Furniture
from chartmaker.sheets.ink import in_grey
from chartmaker.sheets.job import SHEET_TITLES, PrintJob
from chartmaker.sheets.key_layout import key_blocks
from chartmaker.sheets.legend import look_of
from chartmaker.sheets.paper import Frame
from chartmaker.sheets.rounds_layout import rounds_pages
from chartmaker.sheets.shopping_layout import shopping_blocks
from chartmaker.sheets.whole_layout import whole_hat, whole_height
from chartmaker.sheets.yarn_layout import yarn_blocks

Progress = Callable[[int, int], None]
"""Told the number of pages done and of all pages; may raise to stop."""


@dataclass(frozen=True, slots=True)
class Sought:
    """What a sheet is laid out for."""

    appraisal: Appraisal
    job: PrintJob
    frame: Frame
    first_page: int
    """Number of its first page in the print."""


def plan_pages(appraisal: Appraisal, job: PrintJob) -> list[Page]:
    """Lay out all pages of the sheets asked for."""
    bodies: list[tuple[str, Body]] = []
    for name in _worth_printing(appraisal, job.sheets):
        made = _MAKERS[name](Sought(appraisal, job, job.sheet.frame, len(bodies) + 1))
        mark = Bookmark(SHEET_TITLES[name])
        first = Body(made[0].boxes, (mark, *made[0].bookmarks))
        bodies.extend((name, body) for body in (first, *made[1:]))
    design = appraisal.design
    date = job.printed_on.isoformat() if job.printed_on else ""
    furniture = Furniture(design.title, design.colourway.name, date, job.sheet)
    pages = []
    for number, (name, body) in enumerate(bodies, start=1):
        title = "" if name == "cover" else SHEET_TITLES[name]
        around = furniture.boxes(sheet_title=title, number=number, count=len(bodies))
        if name == "chart-bw":
            around = [box.inked(in_grey) for box in around]
        pages.append(Page(name, (*around, *body.boxes), body.bookmarks))
    return pages


def _worth_printing(appraisal: Appraisal, names: Sequence[str]) -> list[str]:
    """Leave out a shopping list with nothing on it, unless nothing else is printed."""
    is_needed = "shopping" not in names or len(names) == 1 or bool(plan_for([appraisal]).shopping)
    return [name for name in names if is_needed or name != "shopping"]


def _flowed(blocks: Callable[[Appraisal, Units, float], list[Block]]) -> Callable[[Sought], list[Body]]:
    """Make a sheet of what is laid out as blocks."""

    def make(sought: Sought) -> list[Body]:
        pages = flowed(blocks(sought.appraisal, sought.job.units, sought.frame.width), sought.frame)
        return [Body(boxes) for boxes in pages]

    return make


def _cover(sought: Sought) -> list[Body]:
    return [Body(boxes) for boxes in cover_pages(sought.appraisal, sought.job)]


def _key(sought: Sought) -> list[Body]:
    blocks = key_blocks(sought.appraisal, sought.job.units, frame=sought.frame)
    return [Body(boxes) for boxes in flowed(blocks, sought.frame)]


def _rounds(sought: Sought) -> list[Body]:
    return [Body(boxes) for boxes in rounds_pages(sought.appraisal, sought.job.units, frame=sought.frame)]


def _chart(sought: Sought, *, is_bare: bool = False, is_large: bool = False) -> list[Body]:
    """Give the whole hat small, then each band large; the small one names the pages of the others."""
    look = look_of(sought.appraisal, is_bare=is_bare)
    measures = LARGE if is_large else USUAL
    manner = Manner(look=look, measures=measures, every=sought.job.heavy_lines)
    taken = whole_height(sought.appraisal, sought.frame)
    plan = plan_chart(sought.appraisal, sought.frame, manner, taken=taken)
    first, *others = chart_pages(sought.appraisal, plan, manner, first_page=sought.first_page)
    found: dict[int, int] = {}
    for piece, page in plan.page_of(sought.first_page).items():
        found.setdefault(piece.band, page)
    whole = whole_hat(sought.appraisal, sought.frame, look, page_of=found)
    return [Body((*whole, *first.boxes), first.bookmarks), *others]


def _bare_chart(sought: Sought) -> list[Body]:
    """Give the chart without any colour, as a photocopier would."""
    return [Body(_grey(body.boxes), body.bookmarks) for body in _chart(sought, is_bare=True)]


def _grey(boxes: Sequence[Box]) -> tuple[Box, ...]:
    return tuple(box.inked(in_grey) for box in boxes)


_MAKERS: dict[str, Callable[[Sought], list[Body]]] = {
    "cover": _cover,
    "key": _key,
    "chart": _chart,
    "chart-bw": _bare_chart,
    "chart-large": lambda sought: _chart(sought, is_large=True),
    "rounds": _rounds,
    "yarn": _flowed(lambda appraisal, units, width: yarn_blocks(appraisal, units, width=width)),
    "contrast": _flowed(lambda appraisal, units, width: contrast_blocks(appraisal, units, width=width)),
    "baths": lambda sought: bath_pages(sought.appraisal, sought.job.units, frame=sought.frame),
    "shopping": _flowed(lambda appraisal, _units, width: shopping_blocks(appraisal, width=width)),
}
"""What makes each sheet's pages."""
