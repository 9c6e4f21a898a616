"""How long the cap's full print takes, against a bare ReportLab script that draws as many shapes."""

from collections import Counter
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

from reportlab.pdfgen.canvas import Canvas

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.sheets.boxes import Fills, Lines, Marks, Text
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.plan import plan_pages
from chartmaker.sheets.print_sheets import print_sheets
from tests.benchmarks.row import Row, interleaved_ms

CAP = Path(__file__).parents[2] / "examples" / "lockside-cap.hat.toml"


def measure() -> Iterator[Row]:
    """Print the cap and the bare shapes turn about."""
    appraisal = appraise(read_design(CAP))
    shapes = [count_shapes(page.boxes) for page in plan_pages(appraisal, PrintJob())]
    printed_ms, bare_ms = interleaved_ms(
        lambda: print_sheets(appraisal, PrintJob()), lambda: draw_bare(shapes), times=15
    )
    total = sum(shapes, Counter())
    yield Row(
        name="full print of the cap against bare shapes",
        figure=printed_ms / bare_ms,
        limit=3,
        unit="×",
        detail=f"{printed_ms:.0f} ms against {bare_ms:.0f} ms for {dict(total)}",
    )


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
    return counts


def draw_bare(pages: list[Counter[str]]) -> bytes:
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
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()
