"""The one way to paper: an appraisal in, a PDF out."""

import datetime as dt
from collections.abc import Sequence

from chartmaker.appraisal import Appraisal
from chartmaker.sheets.furniture import UNTITLED
from chartmaker.sheets.paper import paper_named
from chartmaker.sheets.pdf_surface import PdfSurface
from chartmaker.sheets.plan import SHEETS, Progress, plan_pages, sheets_named
from chartmaker.sheets.surface import draw_page


def print_sheets(
    appraisal: Appraisal,
    *,
    paper: str = "a4",
    sheets: Sequence[str] = SHEETS,
    printed_on: dt.date | None = None,
    progress: Progress | None = None,
) -> bytes:
    """Print the sheets of a design to a PDF; the same arguments give the same bytes.

    Args:
        appraisal: what is printed.
        paper: "a4" or "letter".
        sheets: any of `SHEETS`, printed in the order given.
        printed_on: the date on every page; none when it is left out, since this module keeps no clock.
        progress: told after every page how many are done and how many there are; it may raise to stop.

    Raises:
        ValueError: a paper or a sheet that is not known, told with those that are.
    """
    size, names = paper_named(paper), sheets_named(sheets)
    date = printed_on.isoformat() if printed_on else ""
    pages = plan_pages(appraisal, paper=size, sheets=names, printed_on=date)
    surface = PdfSurface(title=appraisal.design.title.strip() or UNTITLED, paper=size)
    for done, page in enumerate(pages, start=1):
        draw_page(page, size, surface)
        if progress:
            progress(done, len(pages))
    return surface.finished()
