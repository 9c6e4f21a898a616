"""The finished file, read by others: its numbers, its bookmarks, its fonts, and the chart by its drawing commands."""

import datetime as dt
import io
import re
from itertools import combinations
from pathlib import Path

import numpy as np
import pypdf
import pypdfium2
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.knit.from_afar import contrasts_from_afar
from chartmaker.knit.yarn_by_band import yarn_by_band
from chartmaker.model.settings import Limits
from chartmaker.planning import plan_for
from chartmaker.sheets.boxes import Fills, Lines
from chartmaker.sheets.ink import ACCENT
from chartmaker.sheets.job import SHEETS, PrintJob
from chartmaker.sheets.paper import PAPERS
from chartmaker.sheets.plan import plan_pages
from chartmaker.sheets.print_sheets import print_sheets
from tests.builders import chart, lot
from tests.sheets.reading import decoded_chart
from tests.sheets.test_pages import empty_pages
from tests.sheets.test_print_sheets import fonts_of, hat, tenths

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.hat.toml"))
EVERY_LIE = [(paper, is_landscape) for paper in PAPERS for is_landscape in (False, True)]


def read(pdf: bytes) -> pypdf.PdfReader:
    return pypdf.PdfReader(io.BytesIO(pdf))


def words_of(pdf: bytes) -> list[str]:
    """Read each page's text by PDFium, as one line."""
    document = pypdfium2.PdfDocument(pdf)
    pages = [" ".join(page.get_textpage().get_text_range().split()) for page in document]
    document.close()
    return pages


@pytest.fixture(scope="module")
def cap():
    return appraise(read_design(EXAMPLES[0]))


@pytest.mark.parametrize(("paper", "is_landscape"), EVERY_LIE)
def test_every_page_says_its_number_title_colourway_and_date(cap, paper, is_landscape):
    job = PrintJob(paper=paper, is_landscape=is_landscape, sheets=SHEETS, printed_on=dt.date(2026, 11, 26))
    pages = words_of(print_sheets(cap, job))
    for number, words in enumerate(pages, start=1):
        assert f"page {number} of {len(pages)}" in words
        assert "Lockside cap" in words
        assert "Colourway: woad and onion" in words
        assert "2026-11-26" in words


@pytest.mark.parametrize(("paper", "is_landscape"), EVERY_LIE)
def test_every_figure_of_yarn_and_contrast_reads_back_whole_on_every_paper(cap, paper, is_landscape):
    job = PrintJob(paper=paper, is_landscape=is_landscape, sheets=("key", "yarn", "contrast"))
    words = " ".join(words_of(print_sheets(cap, job)))
    for item in cap.letters:
        need = item.requirement
        assert f"{item.lot.id} {item.shade.value:.1f}" in words
        assert tenths(need.metres.low, need.metres.likely, need.metres.high) in words
        assert (
            tenths(need.grams.low, need.grams.likely, need.grams.high, need.planned_g, need.on_hand_g, need.short_g)
            in words
        )
        assert tenths(need.stitch_m.likely, need.float_m.likely, need.other_m.likely) in words
    for piece in yarn_by_band(cap.design, cap.fabric, cap.floats, cap.loop):
        assert f"{piece.letter} {piece.grams.likely:.1f}" in words
    shades = {item.letter: item.shade for item in cap.letters}
    afar = contrasts_from_afar(cap.design, shades)
    for pair in cap.pairs:
        figures = pair.boundary_cm, pair.drawn_cm, pair.value_difference, pair.value_difference_low, pair.ciede2000
        assert f"{tenths(*figures)} {pair.grade}" in words
        if pair.letters in afar:
            assert tenths(afar[pair.letters].value_difference, *(one.value_difference for one in pair.to_eyes)) in words
        for light in pair.in_lights:
            assert f"{light.value_difference:.1f}" in words


@pytest.mark.parametrize(("paper", "is_landscape"), EVERY_LIE)
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_no_page_of_an_example_is_empty(path, paper, is_landscape):
    job = PrintJob(paper=paper, is_landscape=is_landscape, sheets=SHEETS)
    assert empty_pages(plan_pages(appraise(read_design(path)), job), job.sheet) == []


@pytest.mark.parametrize(("paper", "is_landscape"), EVERY_LIE)
def test_nothing_of_an_example_is_elided_on_any_paper(cap, paper, is_landscape):
    job = PrintJob(paper=paper, is_landscape=is_landscape, sheets=SHEETS)
    for number, words in enumerate(words_of(print_sheets(cap, job)), start=1):
        assert "…" not in words, f"page {number}"


def test_a_shopping_list_with_nothing_on_it_is_printed_only_alone():
    lots = {letter: lot(letter, (value, 0, 0), on_hand_g=500.0) for letter, value in (("A", 90), ("B", 20))}
    appraisal = appraise(chart("A B | x.", times=72, lots=lots))
    assert {page.sheet for page in plan_pages(appraisal, PrintJob(sheets=("key", "shopping")))} == {"key"}
    (page,) = words_of(print_sheets(appraisal, PrintJob(sheets=("shopping",))))
    assert "Nothing has to be got" in page


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_the_cover_tells_the_measures_of_the_report(path):
    appraisal = appraise(read_design(path))
    (words,) = words_of(print_sheets(appraisal, PrintJob(sheets=("cover",))))
    assert f"{appraisal.circumference_cm:.1f} cm round" in words
    assert f"{appraisal.height_cm:.1f} cm high" in words
    assert f"({appraisal.cast_on_stitches} stitches)" in words
    for item in appraisal.letters:
        assert f"{item.requirement.metres.likely:.1f} {item.requirement.planned_g:.1f}" in words


@pytest.mark.parametrize("sheet", ["chart", "chart-bw", "chart-large"])
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_every_round_of_the_chart_has_its_number_letters_and_count(path, sheet):
    appraisal = appraise(read_design(path))
    words = " ".join(words_of(print_sheets(appraisal, PrintJob(sheets=(sheet,))))).replace("  ", " ")
    counts = None
    for line in appraisal.rounds:
        assert f"{line.number} {' '.join(line.letters)}" in words
        if line.stitches != counts:
            assert re.search(rf"\b{line.stitches}\b", words)
        counts = line.stitches


def flattened(outline):
    for entry in outline:
        if isinstance(entry, list):
            yield from flattened(entry)
        else:
            yield entry


def test_bookmarks_lead_to_the_page_and_the_place_that_they_name(cap):
    pdf = print_sheets(cap, PrintJob(sheets=("key", "chart", "baths")))
    reader, pages = read(pdf), words_of(pdf)
    flat = list(flattened(reader.outline))
    assert [entry.title for entry in flat if entry.title in ("Key", "Chart", "Baths")] == ["Key", "Chart", "Baths"]
    bands = [f"{number} {band.name}" for number, band in enumerate(cap.design.bands, start=1)]
    assert [entry.title for entry in flat if entry.title in bands] == bands
    for entry in flat:
        number = reader.get_destination_page_number(entry)
        if entry.title in bands:
            index = int(entry.title.split()[0]) - 1
            first = sum(len(band.rounds) for band in cap.design.bands[:index]) + 1
            assert re.search(rf"rounds? {first}\b", pages[number])
        height = float(reader.pages[number].mediabox.height)
        assert 0 < float(entry["/Top"]) <= height
    baths = [entry for entry in flat if ", bath " in entry.title]
    assert [entry.title.split(", bath ")[1] for entry in baths] == [card.plan.bath.id for card in plan_for([cap]).cards]
    for entry in baths:
        assert entry.title.split(", bath ")[1] in pages[reader.get_destination_page_number(entry)]


def test_fonts_are_embedded_as_subsets():
    # ISO 32000-1, 9.6.4: the name of a subset begins with six capital letters and a plus sign.
    pdf = print_sheets(hat(), PrintJob(sheets=SHEETS))
    fonts = fonts_of(read(pdf))
    assert fonts
    for font in fonts:
        assert re.match(r"/[A-Z]{6}\+", font["/BaseFont"]), font["/BaseFont"]
        assert "/FontFile2" in font["/FontDescriptor"]


def letters_of(design) -> list[str]:
    """Write a band as the letters that a knitter sees, the top round first, stitch 1 at the right."""
    band = design.bands[0]
    return ["".join(line.letter_of(stitch) for stitch in reversed(range(len(line)))) for line in reversed(band.rounds)]


def bare_page(design) -> bytes:
    return print_sheets(appraise(design), PrintJob(sheets=("chart-bw",)))


def test_the_chart_without_colour_decodes_back_to_the_pattern_by_its_drawing_commands():
    rounds = "A B | x..x.x..x..\nC D | .xx.x.x.xx.\nE A | xx..x...xx.\nB F | x.x.x.x.x.x\nA C | .....x....."
    design = chart(rounds, times=13, lots=dict.fromkeys("ABCDEF", (60, 20, 10)), limits=Limits(float_cm=50.0))
    assert decoded_chart(bare_page(design)) == letters_of(design)


@given(
    cells=st.lists(st.text("ABCDEFGHIJKLMNOPQRSTUVWXYZ"[:12], min_size=9, max_size=9), min_size=6, max_size=12),
    turn=st.integers(0, 14),
)
@settings(max_examples=12, deadline=None)
def test_any_chart_without_colour_decodes_back(cells, turn):
    """Rounds of two letters each, any of twelve, as the rows of letters say."""
    rows = []
    for row in cells:
        pair = sorted(set(row))[:2]
        ground, figure = pair[0], chr(ord(pair[-1]) + turn % 3)
        if ground == figure:
            figure = chr(ord(ground) + 1)
        rows.append(f"{ground} {figure} | {''.join('x' if letter > ground else '.' for letter in row)}")
    design = chart("\n".join(rows), times=12, limits=Limits(float_cm=50.0))
    assert decoded_chart(bare_page(design)) == letters_of(design)


def test_a_chart_without_colour_has_none():
    document = pypdfium2.PdfDocument(
        bare_page(chart("A B | x..x", times=20, lots={"A": (50, 60, 0), "B": (50, -60, 0)}))
    )
    for page in document:
        rgb = np.asarray(page.render(scale=2).to_pil().convert("RGB")).astype(int)
        assert np.ptp(rgb, axis=2).max() <= 1
    document.close()


def test_photocopied_to_grey_the_letters_of_the_coloured_chart_still_differ():
    """Six lots of one value, which only hue tells apart: on a grey copy their signs alone do."""
    letters = "ABCDEF"
    hues = [(60 * np.cos(angle), 60 * np.sin(angle)) for angle in np.linspace(0, 2 * np.pi, 6, endpoint=False)]
    lots = {letter: (55.0, float(a), float(b)) for letter, (a, b) in zip(letters, hues, strict=True)}
    design = chart("\n".join(f"{letter} | ......" for letter in letters), times=24, lots=lots)
    pdf = print_sheets(appraise(design), PrintJob(sheets=("chart",), heavy_lines=0))
    cells = grey_cells(pdf, letters)
    for one, other in combinations(letters, 2):
        ink = max((1 - cells[one]).sum(), (1 - cells[other]).sum())
        apart = np.abs((cells[one] - np.median(cells[one])) - (cells[other] - np.median(cells[other]))).sum()
        assert apart > 0.05 * ink, f"{one} and {other} are alike on a grey copy"


def grey_cells(pdf: bytes, letters: str) -> dict[str, np.ndarray]:
    """Print at 300 dpi in grey and cut out a cell of each letter's round, found beside the number of the round."""
    document = pypdfium2.PdfDocument(pdf)
    page = document[0]
    scale = 300 / 72
    grey = np.asarray(page.render(scale=scale, grayscale=True).to_pil()).astype(float) / 255
    text = page.get_textpage()
    whole = text.get_text_range()
    found = {}
    for letter in letters:
        place = re.search(rf"\d\s+{letter}\b", whole).end() - 1
        left, bottom, _, top = text.get_charbox(place)
        middle = page.get_height() - (bottom + top) / 2
        x = left - 62  # from the letters beside a round to the middle of its cells at the right, in points
        half = 5.0
        found[letter] = grey[
            round((middle - half) * scale) : round((middle - half) * scale) + 40,
            round((x - half) * scale) : round((x - half) * scale) + 40,
        ]
    document.close()
    return found


@pytest.mark.parametrize(("paper", "is_landscape"), EVERY_LIE)
def test_every_page_at_the_pot_says_which_bath_it_is_of(cap, paper, is_landscape):
    job = PrintJob(paper=paper, is_landscape=is_landscape, sheets=("baths",))
    pages = words_of(print_sheets(cap, job))
    of_a_bath = [words for words in pages if "dry weight after" in words or "g fructose" in words]
    assert of_a_bath
    for words in of_a_bath:
        assert "woad leaf (fresh)" in words
        assert "woad-aug" in words


@pytest.mark.parametrize(("paper", "is_landscape"), EVERY_LIE)
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_the_ticks_of_a_cut_stand_at_cells(path, paper, is_landscape):
    job = PrintJob(paper=paper, is_landscape=is_landscape, sheets=("chart-large",))
    found = 0
    for page in plan_pages(appraise(read_design(path)), job):
        cells = [cell for box in page.boxes if isinstance(box, Fills) for cell in box.rectangles]
        for box in page.boxes:
            if not isinstance(box, Lines) or box.ink != ACCENT or box.width != 0.5:
                continue
            for x, y, _, _ in box.segments:
                found += 1
                assert any(
                    left - 0.01 <= x <= left + wide + 0.01 and top - 0.01 <= y <= top + high + 0.01
                    for left, top, wide, high in cells
                )
    assert found
