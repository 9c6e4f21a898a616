"""How long prints take against a bare ReportLab script that draws as many shapes, how large they are, and previews."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from io import BytesIO
from pathlib import Path

from PIL import Image
from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from chartmaker.appraisal import Appraisal, appraise
from chartmaker.files.design_reading import read_design
from chartmaker.printing import cover_picture
from chartmaker.sheets.boxes import Fills, Lines, Marks, Picture, Pixels, Text
from chartmaker.sheets.job import SHEETS, PrintJob
from chartmaker.sheets.page_picture import page_picture
from chartmaker.sheets.plan import plan_pages
from chartmaker.sheets.print_sheets import print_sheets
from tests.benchmarks.large_design import large_design
from tests.benchmarks.row import Row, interleaved_ms, median_ms

CAP = Path(__file__).parents[2] / "examples" / "lockside-cap.hat.toml"
PREVIEW_PX = 850
"""A page as wide as the Sheets page shows it in a window of 1180 pixels."""


def measure() -> Iterator[Row]:
    """Print a usual hat and a large one; the hat's picture for the cover is made beforehand, as the window does."""
    cap = appraise(read_design(CAP))
    yield _against_bare("full print of the cap against bare shapes", cap, PrintJob(), times=15)
    repeat = large_design(stitches=24, rounds=90)
    hat = appraise(replace(repeat, bands=(replace(repeat.bands[0], times=6),)))
    job = PrintJob(sheets=SHEETS, picture=cover_picture(hat))
    yield _against_bare("all sheets of a 144 × 90 hat against bare shapes", hat, job, times=5)
    pdf = print_sheets(hat, job)
    detail = f"24 stitches drawn at random, six times round; {len(plan_pages(hat, job))} pages"
    yield Row(name="size of all sheets of a 144 × 90 hat", figure=len(pdf) / 1e6, limit=1, unit="MB", detail=detail)
    wide = appraise(large_design(stitches=144, rounds=90))
    worst = print_sheets(wide, PrintJob(sheets=SHEETS, picture=cover_picture(wide)))
    detail = "144 stitches drawn at random, once round, which no knitter draws"
    yield Row(name="size of the same without any repeat", figure=len(worst) / 1e6, limit=None, unit="MB", detail=detail)
    for name, appraisal, chosen in (("the cap", cap, PrintJob()), ("a 144 × 90 hat", hat, job)):
        yield _previews(name, print_sheets(appraisal, chosen), len(plan_pages(appraisal, chosen)))


def _against_bare(name: str, appraisal: Appraisal, job: PrintJob, *, times: int) -> Row:
    shapes = [count_shapes(page.boxes) for page in plan_pages(appraisal, job)]
    printed_ms, bare_ms = interleaved_ms(
        lambda: print_sheets(appraisal, job), lambda: draw_bare(shapes, job.picture), times=times
    )
    total = sum(shapes, Counter())
    detail = f"{printed_ms:.0f} ms against {bare_ms:.0f} ms for {dict(total)}"
    return Row(name=name, figure=printed_ms / bare_ms, limit=3, unit="×", detail=detail)


def _previews(name: str, pdf: bytes, count: int) -> Row:
    """Draw every page, and tell the slowest."""
    each = [median_ms(lambda at=at: page_picture(pdf, at, width_px=PREVIEW_PX), times=3) for at in range(count)]
    detail = f"the slowest of {count} pages; {sum(each) / count:.0f} ms a page"
    return Row(name=f"preview of a page of {name}", figure=max(each), limit=150, unit="ms", detail=detail)


def count_shapes(boxes: object) -> Counter[str]:
    """Count what a page draws, by kind."""
    counts: Counter[str] = Counter()
    for box in boxes:  # type: ignore[attr-defined]
        match box:
            case Text():
                counts["texts"] += len(box.runs)
            case Fills():
                counts["rectangles"] += len(box.rectangles)
            case Lines():
                counts["lines"] += len(box.segments)
            case Marks():
                counts["circles"] += len(box.centres)
            case Picture():
                counts["pictures"] += 1
    return counts


def draw_bare(pages: list[Counter[str]], picture: Pixels | None) -> bytes:
    """Draw as many shapes, page by page, in the plainest way that ReportLab offers."""
    buffer = BytesIO()
    canvas = Canvas(buffer, invariant=1, pageCompression=1)
    for counts in pages:
        canvas.setFont("Helvetica", 9)
        for number in range(counts["texts"]):
            canvas.drawString(40 + number % 500, 40 + number % 700, "a line of text")
        for number in range(counts["rectangles"]):
            canvas.rect(40 + number % 500, 40 + number % 700, 9, 8, stroke=0, fill=1)
        for number in range(counts["lines"]):
            canvas.line(40 + number % 500, 40, 40 + number % 500, 700)
        for number in range(counts["circles"]):
            canvas.circle(40 + number % 500, 40 + number % 700, 3)
        for _ in range(counts["pictures"] if picture else 0):
            canvas.drawImage(ImageReader(_packed(picture)), 40, 40, 200, 200)
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def _packed(picture: Pixels) -> BytesIO:
    packed = BytesIO()
    Image.frombytes("RGB", (picture.width, picture.height), picture.rgb).save(packed, "JPEG", quality=90)
    packed.seek(0)
    return packed
