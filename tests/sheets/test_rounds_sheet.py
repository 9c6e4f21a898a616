import random
import re
from dataclasses import replace
from pathlib import Path

import pytest

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.knit.written import as_text, written
from chartmaker.sheets.boxes import Lines, Text
from chartmaker.sheets.paper import PAPERS
from chartmaker.sheets.rounds_layout import BREAKS, LINE
from tests.builders import chart, lot
from tests.knit.knitter import knit
from tests.sheets.recorder import record
from tests.sheets.test_pages import LINE_MM

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.hat.toml"))
NUMBERS = re.compile(r"(\d+)(?:–(\d+))?")


def endless(signs=".", seed=3):
    """A round of 600 stitches that does not fold, as text."""
    rng = random.Random(seed)
    cells = "".join(rng.choice(".x+") for _ in range(600))
    return f"M W Q | {cells} | {''.join(rng.choice(signs) for _ in range(600))}"


def rounds_of(design, paper="a4"):
    return record(appraise(design), paper=paper, sheets=("rounds",))


def read_back(recorder):
    """The lines of a sheet as the plain text that the knitter works: every bold number begins one."""
    lines = []
    for page in recorder.pages:
        for box in page:
            if not isinstance(box, Text):
                continue
            if box.style.bold and NUMBERS.fullmatch(box.text):
                lines.append(f"Rnd {box.text}:" if "–" not in box.text else f"Rnds {box.text.replace('–', '-')}:")
            elif lines and lines[-1].startswith("Rnd") and not lines[-1].endswith(" sts)"):
                lines[-1] += f" {box.text}"
            else:
                lines.append(box.text)
    return "\n".join(lines).replace("through the rem\n", "through the rem ")


def number_boxes(page):
    return [box for box in page if isinstance(box, Text) and box.style.bold and NUMBERS.fullmatch(box.text)]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_the_sheet_read_back_knits_the_same_hat(path, paper):
    design = read_design(path)
    sheet = knit(read_back(rounds_of(design, paper)))
    assert sheet == knit(as_text(written(design)))
    assert len(sheet.rounds) == sum(len(band.rounds) for band in design.bands)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_every_number_has_its_box_to_tick_and_its_text_on_its_own_line(path, paper):
    instructions = [one for band in written(read_design(path)).bands for one in band.instructions]
    recorder = rounds_of(read_design(path), paper)
    assert sum(len(number_boxes(page)) for page in recorder.pages) == len(instructions)
    for page in recorder.pages:
        ticks = [box.extent for box in page if isinstance(box, Lines) and len(box.segments) == 4]
        texts = [box for box in page if isinstance(box, Text) and not box.style.bold]
        for number in number_boxes(page):
            near = [tick for tick in ticks if 0 < number.x - tick[2] < 3 and tick[1] < number.baseline < tick[3] + 1]
            assert len(near) == 1
            assert any(text.baseline == number.baseline and 0 < text.x - number.x < 20 for text in texts)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_columns_do_not_run_into_each_other(paper):
    for path in EXAMPLES:
        for page in rounds_of(read_design(path), paper).pages:
            middle = PAPERS[paper].width_mm / 2
            numbers = number_boxes(page)
            assert {box.x > middle for box in numbers} == {False, True}
            top = min(box.baseline for box in numbers)
            for box in page:
                if isinstance(box, Text) and top <= box.baseline < PAPERS[paper].height_mm - 22:
                    assert box.extent[2] < middle or box.x > middle


def test_a_round_too_long_for_half_the_width_takes_the_whole_width():
    middle = PAPERS["a4"].width_mm / 2
    page = rounds_of(chart(endless())).pages[0]
    assert [box.text for box in number_boxes(page)][:1] == ["1"]
    lines = [box for box in page if isinstance(box, Text) and box.text.startswith(("k1 ", "k2 "))]
    assert lines
    assert all(box.x < middle < box.extent[2] for box in lines[:-1])


@pytest.mark.parametrize("paper", PAPERS)
def test_the_longest_rounds_are_written_whole_and_stay_on_their_pages(paper):
    design = chart("\n".join([endless("^", seed=5), endless("^", seed=4), endless()]))
    recorder = rounds_of(design, paper)
    lines = (box for page in recorder.pages for box in page if isinstance(box, Text) and box.style == LINE)
    told = " ".join(box.text for box in lines)
    for one in written(design).bands[0].instructions:
        assert one.text in told
    bottom = PAPERS[paper].frame.bottom + LINE_MM
    outside = [box for page in recorder.pages for box in page if box.extent[3] > bottom and box.extent[1] < bottom]
    assert outside == []
    if paper != "a5":  # where one round may take more than a page
        assert all(number_boxes(page) for page in recorder.pages)


def test_a_lying_page_has_more_columns_and_a_small_one_one():
    design = read_design(EXAMPLES[0])
    columns = {}
    for paper, is_landscape in (("a4", False), ("a4", True), ("a5", False), ("a5", True)):
        page = record(appraise(design), paper=paper, is_landscape=is_landscape, sheets=("rounds",)).pages[0]
        columns[paper, is_landscape] = len({round(box.x) for box in number_boxes(page)})
    assert columns == {("a4", False): 2, ("a4", True): 3, ("a5", False): 1, ("a5", True): 2}


def test_a_line_never_ends_between_a_stitch_and_its_letter_or_a_number_and_what_it_counts():
    text = "*k2 A, [k1 B, k2tog A] 3 times, M1 A; rep from * 35 times more (144 sts)"
    assert BREAKS.split(text) == [
        "*k2 A,", "[k1 B,", "k2tog A] 3 times,", "M1 A;", "rep from * 35 times more", "(144 sts)"
    ]  # fmt: skip


def test_a_band_that_goes_on_in_the_next_column_says_so():
    design = chart("\n".join(["A B | xx.", "A B | x.."] * 60), times=12)
    texts = rounds_of(design).texts()
    assert "rnds 1–120" in texts
    assert "rnds 1–120, continued" in texts


def test_lots_are_named_in_any_script_and_once():
    names = {"A": "ウール、一番", "B": "צמר כחול"}
    design = chart(
        "A B | x.",
        times=12,
        lots={letter: lot(f"lot-{letter}", (50, 0, 0), name=name) for letter, name in names.items()},
    )
    texts = rounds_of(design).texts()
    assert all(texts.count(name) == 1 for name in names.values())


def test_a_round_that_cannot_be_worked_says_why_in_bold():
    recorder = rounds_of(chart("A | ....", "A | ...", times=[3, 3]))
    bold = [box.text for page in recorder.pages for box in page if isinstance(box, Text) and box.style.bold]
    assert "cannot be worked: it takes 9 sts, there are 12" in " ".join(bold)


def test_a_band_without_a_name_is_headed_by_its_number():
    design = chart("A B | x.", times=12)
    nameless = replace(design, bands=(replace(design.bands[0], name=""),))
    assert "1" in rounds_of(nameless).texts()
