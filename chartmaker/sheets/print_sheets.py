"""The one way to paper: an appraisal in, a PDF out."""

from chartmaker.appraisal import Appraisal
from chartmaker.sheets.furniture import UNTITLED
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.pdf_surface import PdfSurface
from chartmaker.sheets.plan import Progress, plan_pages
from chartmaker.sheets.surface import draw_page


def print_sheets(appraisal: Appraisal, job: PrintJob, *, progress: Progress | None = None) -> bytes:
    """Print the sheets of a design to a PDF; the same arguments give the same bytes.

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
    return surface.finished()
