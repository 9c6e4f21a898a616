"""Pages as pictures in files: SVG from the boxes themselves, PNG from the finished PDF; one file a page."""

from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

from PIL import Image

from chartmaker.appraisal import Appraisal
from chartmaker.sheets.furniture import UNTITLED
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.page_picture import page_pixels
from chartmaker.sheets.plan import plan_pages
from chartmaker.sheets.print_sheets import printed
from chartmaker.sheets.svg_surface import svg_pages

KINDS = (".svg", ".png")


def page_files(appraisal: Appraisal, job: PrintJob, path: Path, *, dpi: float) -> Iterator[tuple[Path, bytes]]:
    """Give each page's file with its place: `path` for a lone page, else with the page's number before the ending.

    Args:
        appraisal: what is printed.
        job: which sheets, on which paper.
        path: its ending, one of `KINDS`, says which kind of file.
        dpi: pixels to the inch, of PNG.
    """
    if path.suffix.lower() == ".svg":
        pages = plan_pages(appraisal, job)
        files: Iterator[bytes] = svg_pages(pages, job.sheet, title=appraisal.design.title.strip() or UNTITLED)
        count = len(pages)
    else:
        made = printed(appraisal, job)
        count = len(made.pages)
        files = (_png(made.pdf, index, dpi) for index in range(count))
    digits = len(str(count))
    for number, file in enumerate(files, start=1):
        yield (path if count == 1 else path.with_name(f"{path.stem}-{number:0{digits}}{path.suffix}")), file


def _png(pdf: bytes, index: int, dpi: float) -> bytes:
    pixels = page_pixels(pdf, index, dpi=dpi)
    packed = BytesIO()
    Image.frombytes("RGB", (pixels.width, pixels.height), pixels.rgb).save(packed, "PNG", dpi=(dpi, dpi))
    return packed.getvalue()
