"""The one way to paper: an appraisal in, a PDF out."""

from dataclasses import dataclass

from chartmaker.appraisal import Appraisal
from chartmaker.sheets.boxes import Page
from chartmaker.sheets.furniture import UNTITLED
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.paper import Paper
from chartmaker.sheets.pdf_surface import PdfSurface
from chartmaker.sheets.plan import Progress, plan_pages
from chartmaker.sheets.surface import draw_page


@dataclass(frozen=True, slots=True, eq=False)
class Printed:
    """A finished print, with the pages that it was drawn from."""

    pdf: bytes
    pages: tuple[Page, ...]
    paper: Paper
    """As it lies."""


def printed(appraisal: Appraisal, job: PrintJob, *, progress: Progress | None = None) -> Printed:
    """Print the sheets of a design; the same arguments give the same bytes.

    Args:
        appraisal: what is printed.
        job: which sheets, and on which paper.
        progress: told after every page how many are done and how many there are; it may raise to stop.
    """
    pages = plan_pages(appraisal, job)
    surface = PdfSurface(title=appraisal.design.title.strip() or UNTITLED, paper=job.sheet)
    for done, page in enumerate(pages, start=1):
        draw_page(page, job.sheet, surface)
        if progress:
            progress(done, len(pages))
    return Printed(surface.finished(), tuple(pages), job.sheet)


def print_sheets(appraisal: Appraisal, job: PrintJob, *, progress: Progress | None = None) -> bytes:
    """Give the bytes of the PDF alone."""
    return printed(appraisal, job, progress=progress).pdf
