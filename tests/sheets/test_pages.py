import datetime as dt

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from chartmaker.appraisal import appraise
from chartmaker.sheets.job import SHEETS, PrintJob, sheets_named
from chartmaker.sheets.paper import PAPERS
from chartmaker.sheets.plan import plan_pages
from tests.builders import chart
from tests.sheets.recorder import record
from tests.strategies import designs

LINE_MM = 0.5
"""Half of the widest line, which an extent leaves out."""


def boxes_outside(pages, paper):
    found = []
    margin = paper.margin_mm - LINE_MM
    for page in pages:
        for box in page.boxes:
            left, top, right, bottom = box.extent
            inside = (
                left >= margin
                and top >= margin
                and right <= paper.width_mm - margin
                and bottom <= paper.height_mm - margin
            )
            if not inside:
                found.append(f"{page.sheet}: {type(box).__name__} {[round(part, 2) for part in box.extent]}")
    return found


def empty_pages(pages, paper):
    """Find pages with nothing between head and foot."""
    found = []
    for number, page in enumerate(pages, start=1):
        frame = paper.cover_frame if page.sheet == "cover" else paper.frame
        if not any(frame.top - 1 <= box.extent[1] and box.extent[3] <= frame.bottom + 1 for box in page.boxes):
            found.append(number)
    return found


@pytest.mark.parametrize("is_landscape", [False, True], ids=["upright", "lying"])
@pytest.mark.parametrize("paper", PAPERS)
@given(design=designs(), lines=st.sampled_from([0, 5, 10]))
@settings(
    phases=[__import__("hypothesis").Phase.generate],
    max_examples=8,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
)
def test_nothing_leaves_the_margins(design, lines, paper, is_landscape):
    job = PrintJob(
        paper=paper, is_landscape=is_landscape, sheets=SHEETS, printed_on=dt.date(2026, 11, 25), heavy_lines=lines
    )
    pages = plan_pages(appraise(design), job)
    assert boxes_outside(pages, job.sheet) == []
    assert empty_pages(pages, job.sheet) == []


@pytest.mark.parametrize("paper", PAPERS.values(), ids=PAPERS)
def test_margins_are_wide_enough_for_any_printer(paper):
    for sheet in (paper, paper.turned):
        assert sheet.margin_mm >= 10
        assert sheet.frame.width > 120
        assert sheet.frame.height > 95


def test_pages_say_their_title_colourway_date_and_number():
    design = chart("A B | x.", lots={"A": (90, 0, 0), "B": (20, 0, 0)}, title="Lockside cap")
    recorder = record(appraise(design), printed_on=dt.date(2026, 11, 25))
    for number, page in enumerate(recorder.pages, start=1):
        texts = [box.text for box in page if hasattr(box, "text")]
        assert "Lockside cap" in texts
        assert "Colourway: first" in texts
        assert "2026-11-25" in texts
        assert f"page {number} of {len(recorder.pages)}" in texts


def test_a_hat_without_a_title_is_called_untitled():
    assert "Untitled hat" in record(appraise(chart("A | ."))).texts()


def test_sheets_come_in_the_order_asked_for_and_once():
    recorder = record(appraise(chart("A B | x.")), sheets=("baths", "yarn", "baths"))
    assert list(dict.fromkeys(recorder.sheets)) == ["baths", "yarn"]


@pytest.mark.parametrize("names", [("words",), ("chart", "Yarn"), ()])
def test_an_unknown_sheet_is_refused_with_those_that_are_known(names):
    with pytest.raises(ValueError, match="cover, key, chart, chart-bw"):
        sheets_named(names)


def test_one_text_is_not_taken_for_a_list_of_sheets():
    with pytest.raises(ValueError, match="one by one"):
        sheets_named("chart")


def test_joins_name_the_page_and_the_stitch_where_the_chart_goes_on():
    texts = record(appraise(chart("A B | " + "x." * 50)), sheets=("chart",)).texts()
    goes_on = [text for text in texts if text.startswith("goes on at ")]
    comes = [text for text in texts if text.startswith("comes from ")]
    assert goes_on
    assert len(goes_on) == len(comes)
    for onward, back in zip(goes_on, comes, strict=True):
        assert int(onward.split()[3].rstrip(",")) == int(back.split()[2].rstrip(",")) + 1


def test_joins_upwards_name_pages_that_hold_the_next_round():
    recorder = record(appraise(chart("\n".join(["A B | x."] * 140), times=50)), sheets=("chart",))
    for number, page in enumerate(recorder.pages, start=1):
        texts = [box.text for box in page if hasattr(box, "text")]
        for text in texts:
            if "follows on page" in text:
                round_number, target = text.split()[1], int(text.split()[-1])
                beyond = [box.text for box in recorder.pages[target - 1] if hasattr(box, "text")]
                assert target > number
                assert round_number in beyond
    assert any("follows on page" in text for text in recorder.texts())


def test_every_round_of_the_hat_is_numbered_on_the_chart():
    design = chart("A B | xx..\nA B | x...", "A B | x.\nA | ..\nB | ..", times=[6, 12])
    texts = record(appraise(design), sheets=("chart",)).texts()
    assert {"1", "2", "3", "4", "5"} <= set(texts)


def test_the_repeat_says_how_often_it_is_worked():
    texts = record(appraise(chart("A B | xx..", times=36)), sheets=("chart",)).texts()
    assert "work these 4 stitches 36 times" in texts


def test_the_key_tells_how_to_begin_and_how_to_end():
    design = chart("A B | x.", times=72, lots={"A": (90, 0, 0), "B": (20, 0, 0)})
    told = " ".join(record(appraise(design), sheets=("key", "chart")).texts())
    assert "Cast on 144 stitches with A (lot a), long-tail cast-on." in told
    assert "Read upwards, right to left. Round 1 is the first knitted." in told
    assert "twice through the remaining 144 stitches" in told


def test_a_hat_that_cannot_be_knitted_says_so_first():
    design = chart("A | ....", "A | ...", times=[3, 3])
    texts = record(appraise(design), sheets=("key",)).texts()
    assert any(text.startswith("Not ready to knit") for text in texts)


def test_the_notes_of_a_design_are_printed():
    told = " ".join(record(appraise(chart("A | .", notes="Stretch it over a plate.")), sheets=("key",)).texts())
    assert "Notes: Stretch it over a plate." in told
