import datetime as dt
import io

import pypdf
import pytest
from pypdf.generic import DictionaryObject

from chartmaker.appraisal import appraise
from chartmaker.model.palette import Bath, Mordant
from chartmaker.planning import plan_for
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.paper import PAPERS
from chartmaker.sheets.print_sheets import print_sheets
from tests.builders import chart, lot

DATE = dt.date(2026, 11, 25)
TITLES = {
    "markup": "<b>Lock & weir</b> &amp; <para>",
    "arabic": "قبعة القناة (12)",
    "ideographs": "水辺の帽子 한국어 帽子",
    "emoji": "🧶 cap 👩\u200d🌾 🇫🇷",
    "combining": "e\u0301\u0327 Z" + "\u0301" * 60,
    "controls": "a\x00b\u202ec\u2066d\ufeffe",
    "lone surrogate": "a\ud800b",
    "endless": "woad and weld " * 1428,
    "one endless word": "W" * 20_000,
    "devanagari": "ऊन की टोपी",
}


def hat(**fields):
    """A small cap in three invented lots, one of them short."""
    bath = Bath(
        id="madder-sept", dyestuff="madder", part="root", ratio=0.5, hottest_c=72, minutes=60, ph_start=6.8,
        mordants=(Mordant("alum", 12.0), Mordant("cream of tartar", 6.0)),
    )  # fmt: skip
    lots = {
        "A": lot("white", (88, 0, 10), name="White fleece", on_hand_g=60.0),
        "B": lot("madder-1", (40, 40, 25), name="Madder, first bath", bath="madder-sept", on_hand_g=0.5),
        "C": lot("weld-1", (45, -2, 60), name="Weld, first bath", on_hand_g=40.0),
    }
    rounds = "\n".join(["A B | xx..", "A C | ..xx"] * 12)
    return appraise(chart(rounds, times=36, lots=lots, baths=[bath], **{"title": "Lockside cap"} | fields))


def read(pdf: bytes) -> pypdf.PdfReader:
    return pypdf.PdfReader(io.BytesIO(pdf))


def text_of(pdf: bytes) -> str:
    return "\n".join(page.extract_text() for page in read(pdf).pages)


def tenths(*figures: float) -> str:
    """Write figures as a row of the sheets does."""
    return " ".join(f"{figure:.1f}" for figure in figures)


def fonts_of(reader: pypdf.PdfReader) -> list[DictionaryObject]:
    """Find every font that a page or a form of the file can draw with."""
    fonts, seen = [], set()

    def walk(resources) -> None:
        resources = resources.get_object()
        fonts.extend(font.get_object() for font in (resources.get("/Font") or DictionaryObject()).get_object().values())
        for reference in (resources.get("/XObject") or DictionaryObject()).get_object().values():
            form = reference.get_object()
            if id(form) not in seen and "/Resources" in form:
                seen.add(id(form))
                walk(form["/Resources"])

    for page in reader.pages:
        walk(page["/Resources"])
    return fonts


@pytest.mark.parametrize("paper", PAPERS)
def test_two_prints_are_the_same_to_the_byte(paper):
    job = PrintJob(paper=paper, printed_on=DATE)
    assert print_sheets(hat(), job) == print_sheets(hat(), job)


def test_a_print_does_not_depend_on_what_was_printed_before():
    first = print_sheets(hat(title=TITLES["ideographs"]), PrintJob(printed_on=DATE))
    print_sheets(hat(title=TITLES["arabic"]), PrintJob(printed_on=DATE))
    assert print_sheets(hat(title=TITLES["ideographs"]), PrintJob(printed_on=DATE)) == first


@pytest.mark.parametrize(
    ("paper", "width_mm", "height_mm"), [("a4", 210, 297), ("letter", 215.9, 279.4), ("a5", 148, 210)]
)
def test_pages_have_the_size_of_the_paper(paper, width_mm, height_mm):
    # ISO 216: A4 is 210 × 297 mm, A5 is 148 × 210 mm; Letter is 8½ × 11 in.
    for is_landscape, sides in ((False, (width_mm, height_mm)), (True, (height_mm, width_mm))):
        for page in read(print_sheets(hat(), PrintJob(paper=paper, is_landscape=is_landscape))).pages:
            box = page.mediabox
            assert [float(side) / 72 * 25.4 for side in (box.width, box.height)] == pytest.approx(sides, abs=0.01)


def test_an_unknown_paper_is_refused():
    with pytest.raises(ValueError, match="a4, letter or a5"):
        print_sheets(hat(), PrintJob(paper="a6"))


@pytest.mark.parametrize("title", TITLES.values(), ids=TITLES)
def test_any_title_and_any_lot_name_prints(title):
    design = chart("A B | x.", lots={"A": lot("a", (90, 0, 0), name=title), "B": (20, 0, 0)}, title=title, times=9)
    reader = read(print_sheets(appraise(design), PrintJob(printed_on=DATE)))
    assert len(reader.pages) >= 4


def test_markup_prints_as_written():
    assert TITLES["markup"] in text_of(print_sheets(hat(title=TITLES["markup"]), PrintJob()))


def test_drawn_text_can_be_read_by_machines():
    content = read(print_sheets(hat(title="水辺"), PrintJob())).pages[0].get_contents().get_data()
    assert "\ufeff水辺".encode("utf-16-be").hex().upper().encode() in content


@pytest.mark.parametrize("title", ["Lockside cap", TITLES["arabic"], TITLES["controls"]])
def test_every_font_is_embedded(title):
    fonts = fonts_of(read(print_sheets(hat(title=title), PrintJob())))
    assert fonts
    for font in fonts:
        assert "/FontFile2" in font["/FontDescriptor"]


def test_the_file_says_what_it_is_and_leads_to_each_sheet():
    reader = read(print_sheets(hat(), PrintJob()))
    assert reader.metadata.title == "Lockside cap"
    assert not reader.metadata.author
    assert reader.trailer["/Root"]["/Lang"] == "en"
    sheets = [entry for entry in reader.outline if not isinstance(entry, list)]
    assert [entry.title for entry in sheets] == [
        "Cover",
        "Key",
        "Chart",
        "Rounds",
        "Yarn",
        "Contrast",
        "Baths",
        "Shopping list",
    ]
    for entry in sheets:
        page = reader.pages[reader.get_destination_page_number(entry)].extract_text()
        assert (entry.title if entry.title != "Cover" else "To fit") in page


def test_yarn_figures_read_back_from_the_file():
    appraisal = hat()
    text = " ".join(text_of(print_sheets(appraisal, PrintJob(sheets=("yarn",)))).split())
    for item in appraisal.letters:
        need = item.requirement
        intervals = [
            part for interval in (need.metres, need.grams) for part in (interval.low, interval.likely, interval.high)
        ]
        weights = [need.planned_g, need.on_hand_g, need.short_g]
        uses = [need.stitch_m.likely, need.float_m.likely, need.other_m.likely]
        assert f"{need.stitches} {tenths(*intervals, *weights)}" in text
        assert tenths(*uses) in text
    assert f"{appraisal.loop.cm.likely:.2f} cm a stitch" in text
    assert f"{appraisal.circumference_cm:.1f} cm round" in text


def test_contrast_figures_read_back_from_the_file():
    appraisal = hat()
    text = " ".join(text_of(print_sheets(appraisal, PrintJob(sheets=("contrast",)))).split())
    for pair in appraisal.pairs:
        figures = pair.boundary_cm, pair.drawn_cm, pair.value_difference, pair.value_difference_low, pair.ciede2000
        assert f"{tenths(*figures)} {pair.grade}" in text
    for finding in appraisal.findings:
        assert " ".join(finding.message.split()) in text
        assert " ".join(finding.remedy.split()) in text


def test_bath_figures_read_back_from_the_file():
    appraisal = hat()
    (card,) = plan_for([appraisal]).cards
    plan = card.plan
    words = " ".join(text_of(print_sheets(appraisal, PrintJob(sheets=("baths",)))).split())
    assert f"{plan.loads[0].fibre_g:.1f} g fibre" in words
    assert f"for Madder, first bath, short by {plan.loads[0].short_g:.1f} g" in words
    assert f"{plan.dyestuff_g:.1f} g dry madder root" in words
    for portion in plan.mordants:
        assert f"{portion.grams:.1f} g {portion.name}" in words
    assert f"{plan.water_l:.1f} l water" in words
    assert "72 °C at the hottest 60 min in the bath pH 6.8 at the start" in words
    for step in card.timetable:
        assert f"{step.starts_h:.1f} {step.text}" in words


def test_the_shopping_list_reads_back_from_the_file():
    appraisal = hat()
    words = " ".join(text_of(print_sheets(appraisal, PrintJob(sheets=("shopping",)))).split())
    items = plan_for([appraisal]).shopping
    assert {item.kind for item in items} >= {"yarn", "dyestuff", "mordant"}
    for item in items:
        at_hand = "–" if item.at_hand_g is None else f"{item.at_hand_g:.1f}"
        assert f"{item.missing_g:.1f}" in words
        assert f"{item.needed_g:.1f} {at_hand}" in words
        assert item.name in words


def test_progress_is_told_page_by_page():
    told = []
    pdf = print_sheets(hat(), PrintJob(), progress=lambda done, count: told.append((done, count)))
    pages = len(read(pdf).pages)
    assert told == [(number, pages) for number in range(1, pages + 1)]


def test_progress_can_stop_a_print():
    def stop(done, count):
        raise KeyboardInterrupt(f"{done} of {count}")

    with pytest.raises(KeyboardInterrupt, match="1 of"):
        print_sheets(hat(), PrintJob(), progress=stop)
