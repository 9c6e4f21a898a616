from itertools import pairwise

import pytest

from chartmaker.appraisal import appraise
from chartmaker.sheets.boxes import Fills, Text
from chartmaker.sheets.ink import grey_fill
from chartmaker.sheets.marks import GRADE_MARKS
from chartmaker.sheets.value_strip import value_strip
from tests.builders import chart
from tests.sheets.recorder import record

WIDTH = 180.0


def strip_of(values):
    lots = {letter: (value, 0.0, 0.0) for letter, value in values.items()}
    text = "A B | x." if len(values) == 2 else f"{' '.join(values)} | +x."
    return value_strip(appraise(chart(text, lots=lots)), width=WIDTH)


def names(block):
    return {box.text.split()[0]: box for box in block.boxes if isinstance(box, Text) and box.text[0] in "ABC"}


def test_letters_stand_at_their_value():
    for letter, box in names(strip_of({"A": 75, "B": 25})).items():
        middle = (box.extent[0] + box.extent[2]) / 2
        assert middle / WIDTH * 100 == pytest.approx({"A": 75, "B": 25}[letter], abs=0.5)


@pytest.mark.parametrize("width", [50.0, 90.0, 124.0, 180.0, 273.0])
def test_the_numbers_of_the_scale_stand_clear_of_each_other(width):
    lots = {"A": (75, 0.0, 0.0), "B": (25, 0.0, 0.0)}
    strip = value_strip(appraise(chart("A B | x.", lots=lots)), width=width)
    numbers = sorted(box.extent for box in strip.boxes if isinstance(box, Text) and box.text[0] not in "AB")
    assert len(numbers) > 2
    for (_, _, end, _), (start, *_) in pairwise(numbers):
        assert start - end >= 1.0


def test_letters_of_one_value_stand_side_by_side_without_overlap():
    fills = [box.rectangles[0] for box in strip_of({"A": 50, "B": 50, "C": 51}).boxes if isinstance(box, Fills)]
    chips = sorted(rectangle for rectangle in fills if rectangle[3] > 7)
    assert len(chips) == 6
    for (left, _, wide, _), (following, *_) in pairwise(chips):
        assert left + wide <= following + 1e-6


def test_each_letter_has_the_true_grey_of_its_value():
    inks = {box.ink for box in strip_of({"A": 75, "B": 25}).boxes if isinstance(box, Fills)}
    assert grey_fill(75) in inks
    assert grey_fill(25) in inks


def test_the_greys_are_those_of_the_standard():
    # CIE L* 50 is Y 18.42 (CIE 15, (116 fy - 16)); sRGB of it is 119 of 255 (IEC 61966-2-1), worked by hand.
    assert grey_fill(50)[0] * 255 == pytest.approx(119, abs=0.5)


def test_a_grade_is_told_by_word_and_mark():
    appraisal = appraise(chart("A B | x.", lots={"A": (50, 0, 0), "B": (52, 0, 0)}))
    recorder = record(appraisal, sheets=("contrast",))
    assert "lost" in recorder.texts()
    assert any(getattr(box, "mark", None) is GRADE_MARKS["lost"] for page in recorder.pages for box in page)


def test_rounds_that_read_badly_are_listed_as_spans():
    rounds = "\n".join(["A C | x."] * 2 + ["A B | x."] * 3)
    lots = {"A": (50, 0, 0), "B": (52, 0, 0), "C": (95, 0, 0)}
    texts = record(appraise(chart(rounds, lots=lots)), sheets=("contrast",)).texts()
    assert "1–3" in texts


def test_a_hat_without_shades_has_pairs_without_grades():
    texts = record(appraise(chart("A B | x.")), sheets=("contrast",)).texts()
    assert "no shade yet" in texts


def test_findings_are_grouped_by_how_bad_they_are():
    appraisal = appraise(chart("A B | x.", lots={"A": (50, 0, 0), "B": (52, 0, 0)}))
    texts = record(appraisal, sheets=("contrast",)).texts()
    groups = [text for text in texts if text.startswith(("Must be mended", "Will disappoint", "Good to know"))]
    assert sum(int(text.split("(")[1].rstrip(")")) for text in groups) == len(appraisal.findings)
