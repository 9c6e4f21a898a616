from itertools import combinations

import numpy as np
import pypdfium2
import pytest

from chartmaker.sheets.boxes import Marks, Page
from chartmaker.sheets.ink import BLACK
from chartmaker.sheets.marks import EMPTY, LETTER_MARKS, PURL_BAR, SHAPING_MARKS, Disc, Ring, marks_by_letter
from chartmaker.sheets.paper import Paper
from chartmaker.sheets.pdf_surface import PdfSurface
from chartmaker.sheets.surface import draw_page

SIDE_MM = 3.0
"""The narrowest cell that is printed."""
DPI = 300


def rasters(marks):
    """Print marks in a row of the narrowest cells and give the grey of each cell, 0 white to 1 black."""
    paper = Paper("strip", SIDE_MM * len(marks), SIDE_MM)
    boxes = tuple(
        Marks(mark, (((place + 0.5) * SIDE_MM, SIDE_MM / 2),), 0.62 * SIDE_MM, BLACK)
        for place, mark in enumerate(marks)
    )
    surface = PdfSurface(title="marks", paper=paper)
    draw_page(Page("chart", boxes), paper, surface)
    document = pypdfium2.PdfDocument(surface.finished())
    grey = np.asarray(document[0].render(scale=DPI / 72).to_pil().convert("L"))
    document.close()
    side = grey.shape[1] // len(marks)
    return [1 - grey[:side, place * side : (place + 1) * side] / 255 for place in range(len(marks))]


def test_twenty_six_letters_have_twenty_six_marks():
    marks = marks_by_letter({chr(ord("A") + place): place for place in range(26)})
    assert len(set(marks.values())) == 26


def test_the_letter_worked_most_is_bare_and_a_tie_goes_to_the_first():
    assert marks_by_letter({"A": 3, "B": 9, "C": 9})["B"] is EMPTY


def test_marks_differ_in_black_and_white_at_the_smallest_size_printed():
    marks = [*LETTER_MARKS, PURL_BAR, *SHAPING_MARKS.values()]
    printed = rasters(marks)
    for (one, first), (other, second) in combinations(zip(marks, printed, strict=True), 2):
        ink = max(first.sum(), second.sum())
        assert np.abs(first - second).sum() > 0.2 * ink, f"{one.name} looks like {other.name}"


@pytest.mark.parametrize("mark", [*LETTER_MARKS, PURL_BAR, *SHAPING_MARKS.values()], ids=lambda mark: mark.name)
def test_marks_stay_inside_their_square(mark):
    for shape in mark.shapes:
        if isinstance(shape, Disc | Ring):
            assert max(map(abs, shape.centre)) + shape.radius <= 0.5
        else:
            assert max(abs(part) for point in shape.points for part in point) <= 0.5


def test_decreases_lean_as_their_stitches_lean():
    # Craft Yarn Council terms: k2tog leans right, ssk leans left.
    (k2tog,), (ssk,) = SHAPING_MARKS[1].shapes, SHAPING_MARKS[2].shapes
    assert k2tog.points[1][0] > k2tog.points[0][0]
    assert ssk.points[1][0] < ssk.points[0][0]
