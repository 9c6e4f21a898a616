import numpy as np
import pypdfium2

from chartmaker.appraisal import appraise
from chartmaker.sheets.boxes import Lines
from chartmaker.sheets.chart_grid import WIDTHS_MM
from chartmaker.sheets.chart_layout import Manner, plan_chart
from chartmaker.sheets.ink import HAIRLINE
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.legend import look_of
from chartmaker.sheets.paper import PAPERS
from chartmaker.sheets.print_sheets import print_sheets
from tests.builders import chart
from tests.sheets.recorder import record

PICTURE = """
.xx.x.x
x..x.xx
..xx.x.
xx.x..x
""".strip()
DPI = 254
"""Ten pixels to a millimetre."""


def printed_cells(design):
    """Print the chart without any shade, rasterise it, and give how much black the middle of each cell holds."""
    appraisal = appraise(design)
    page = record(appraisal, sheets=("chart",)).pages[-1]
    thin = [box for box in page if isinstance(box, Lines) and (box.width, box.ink) == (WIDTHS_MM[0], HAIRLINE)][-1]
    edges = [box for box in page if isinstance(box, Lines) and box.width == WIDTHS_MM[1]][-1]
    left, top, right, bottom = edges.extent
    size = plan_chart(appraisal, PAPERS["a4"].frame, Manner(look=look_of(appraisal))).size
    assert thin.extent[2] <= right
    document = pypdfium2.PdfDocument(print_sheets(appraisal, PrintJob(sheets=("chart",))))
    grey = np.asarray(document[len(document) - 1].render(scale=DPI / 72).to_pil().convert("L"))
    document.close()
    rows, columns = round((bottom - top) / size.height), round((right - left) / size.width)
    return [
        [
            (grey[int(10 * y) - 12 : int(10 * y) + 12, int(10 * x) - 12 : int(10 * x) + 12] < 128).mean()
            for x in (left + (column + 0.5) * size.width for column in range(columns))
        ]
        for y in (top + (row + 0.5) * size.height for row in range(rows))
    ]


def test_the_printed_chart_reads_back_in_black_and_white():
    design = chart("\n".join(f"A B | {line}" for line in PICTURE.splitlines()), times=4)
    read = "\n".join("".join("." if black > 0.05 else "x" for black in row) for row in printed_cells(design))
    # B, the figure, has 15 of the 28 stitches: the letter worked most is bare, and the ground is marked.
    assert PICTURE.count("x") == 15
    assert read == PICTURE
