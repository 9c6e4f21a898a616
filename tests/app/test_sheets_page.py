"""The sheets page shows the very pages that print, follows the design while it is seen, and prints them."""

import numpy as np
import pypdf
import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractSpinBox, QApplication

from chartmaker.app.sheet_choices import HEAVY_LINES, PAPERS, SHEETS, SheetChoices, keep_choices, kept_choices
from chartmaker.model.edits import ReplaceRounds, ReplaceSetting
from chartmaker.model.notation import rounds_from_text
from chartmaker.sheets import job, paper
from chartmaker.sheets.paper import MARGIN_MM

PLAIN, CHANGED = (rounds_from_text(text)[0] for text in ("A B | ........", "A B | x......."))
EDIT = ReplaceRounds(0, ((0, PLAIN, CHANGED),), "one stitch")


@pytest.fixture
def sheets(window, qtbot):
    """Give the page with its first print, the cover's picture in it."""
    window.show_page("sheets")
    page = window._pages["sheets"]
    settle(page, qtbot)
    return page


def settle(page, qtbot):
    qtbot.waitUntil(lambda: page.printed is not None and page.is_current, timeout=30_000)
    qtbot.waitUntil(lambda: page.view.missing() is None and not page.maker.is_painting, timeout=30_000)


def item(page, name):
    return page.side.list.item(SHEETS.index(name))


def named(page):
    return list(dict.fromkeys(one.sheet for one in page.printed.pages))


def test_the_choices_are_those_of_the_print():
    """They stand twice, so that the window loads no ReportLab."""
    assert SHEETS == job.SHEETS
    assert SheetChoices().sheets == job.USUAL_SHEETS
    assert tuple(paper.PAPERS) == PAPERS
    assert HEAVY_LINES == job.HEAVY_LINES


def test_the_page_shows_the_very_pixels_of_the_pdf(sheets):
    picture = sheets.view._pictures[0]
    document = pypdfium2.PdfDocument(sheets.printed.pdf)
    page = document[0]
    expected = page.render(scale=picture.width() / page.get_width()).to_numpy()[..., ::-1]
    document.close()
    shown = np.frombuffer(picture.constBits(), np.uint8).reshape(picture.height(), picture.bytesPerLine() // 4, 4)
    assert np.array_equal(shown[:, : picture.width(), 2::-1], expected[..., :3])
    assert expected.std() > 5


def test_every_sheet_can_be_turned_on_and_off_and_the_settings_remember_it(sheets, qtbot, settings):
    assert named(sheets) == [name for name in job.USUAL_SHEETS if name != "shopping"]  # which has nothing on it
    item(sheets, "yarn").setCheckState(Qt.CheckState.Unchecked)
    item(sheets, "chart-bw").setCheckState(Qt.CheckState.Checked)
    settle(sheets, qtbot)
    wanted = [name for name in SHEETS if name == "chart-bw" or name in set(job.USUAL_SHEETS) - {"yarn", "shopping"}]
    assert named(sheets) == wanted
    assert list(kept_choices(settings).sheets) == [*wanted, "shopping"]


def test_paper_and_lie_change_the_pages(sheets, qtbot, settings):
    sheets.side.paper.setCurrentIndex(PAPERS.index("a5"))
    sheets.side.lie.setCurrentIndex(1)
    settle(sheets, qtbot)
    reader = pypdf.PdfReader(__import__("io").BytesIO(sheets.printed.pdf))
    # ISO 216: A5 is 148 × 210 mm.
    assert [float(side) / 72 * 25.4 for side in reader.pages[0].mediabox[2:]] == pytest.approx([210, 148], abs=0.01)
    assert kept_choices(settings) == SheetChoices(paper="a5", is_landscape=True)


def test_with_no_sheet_ticked_nothing_is_printed_and_the_page_says_so(sheets, qtbot, settings):
    before = sheets.printed
    for name in SHEETS:
        item(sheets, name).setCheckState(Qt.CheckState.Unchecked)
    qtbot.waitUntil(lambda: "nothing would be printed" in sheets.note.text())
    assert sheets.printed is before
    assert kept_choices(settings).sheets
    assert not sheets.side.printing.isEnabled()
    item(sheets, "yarn").setCheckState(Qt.CheckState.Checked)
    settle(sheets, qtbot)
    assert named(sheets) == ["yarn"]
    assert sheets.side.printing.isEnabled()


def test_an_edit_makes_a_new_print_that_keeps_the_pages_which_are_the_same(sheets, window, qtbot):
    item(sheets, "cover").setCheckState(Qt.CheckState.Unchecked)
    settle(sheets, qtbot)
    before, kept = sheets.printed, dict(sheets.view._pictures)
    painted = []
    sheets.maker.painted.connect(lambda _printed, index, _raw: painted.append(index))
    window.document.do(ReplaceSetting("notes", "", "Stretch it over a plate.", "Notes"))
    settle(sheets, qtbot)
    assert sheets.printed is not before
    same = [
        index
        for index, pages in enumerate(zip(before.pages, sheets.printed.pages, strict=True))
        if pages[0] == pages[1]
    ]
    assert same
    assert len(same) < len(before.pages)
    for index in set(same) & kept.keys() & sheets.view._pictures.keys():
        assert sheets.view._pictures[index] is kept[index] or index not in painted


def test_nothing_is_printed_while_the_page_is_not_seen(sheets, window, qtbot):
    window.show_page("chart")
    before = sheets.printed
    window.document.do(EDIT)
    qtbot.wait(600)
    assert sheets.printed is before
    window.show_page("sheets")
    settle(sheets, qtbot)
    assert sheets.printed is not before


def test_turning_back_without_a_change_makes_nothing_anew(sheets, window, qtbot):
    before, pictures = sheets.printed, dict(sheets.view._pictures)
    window.show_page("chart")
    window.show_page("sheets")
    qtbot.wait(400)
    settle(sheets, qtbot)
    assert sheets.printed is before
    assert all(sheets.view._pictures[index] is picture for index, picture in pictures.items())


def test_keys_go_from_page_to_page_and_zoom(sheets):
    view = sheets.view
    view.setFocus()
    QTest.keyClick(view, Qt.Key.Key_PageDown)
    assert sheets.number.value() == 2
    assert "page 2 of" in view.accessibleDescription()
    QTest.keyClick(view, Qt.Key.Key_End)
    assert sheets.number.value() == view.count
    QTest.keyClick(view, Qt.Key.Key_Home)
    before = view.percent
    QTest.keyClick(view, Qt.Key.Key_Plus)
    assert view.percent > before
    QTest.keyClick(view, Qt.Key.Key_F)
    paper_high = sheets.printed.paper.height_mm * view._scale
    assert paper_high <= view.viewport().height()


def test_the_number_and_the_list_lead_to_pages(sheets):
    assert isinstance(sheets.number, QAbstractSpinBox)
    sheets.number.setValue(3)
    assert sheets.view.page == 2
    sheets.side.list.itemActivated.emit(item(sheets, "rounds"))
    assert sheets.printed.pages[sheets.view.page].sheet == "rounds"


def test_settings_that_were_damaged_are_as_usual(settings):
    for key in ("paper", "names", "lines", "landscape"):
        settings.setValue(f"sheets/{key}", "broken")
    assert kept_choices(settings) == SheetChoices()
    choices = SheetChoices(paper="letter", is_landscape=True, sheets=("chart", "yarn"), heavy_lines=0)
    keep_choices(settings, choices)
    assert kept_choices(settings) == choices


def test_saving_as_pdf_writes_what_the_page_shows(sheets, window, answers, tmp_path, qtbot):
    answers.path = tmp_path / "hat.pdf"
    with qtbot.waitSignal(window.background.ended, timeout=30_000):
        sheets.side.filing.click()
    assert answers.path.read_bytes() == sheets.printed.pdf


def test_the_systems_printer_gets_every_page(window, answers, tmp_path, qtbot):
    settings = window.filing.settings
    keep_choices(settings, SheetChoices(paper="a5", sheets=("key", "yarn")))
    answers.print_to = tmp_path / "printed.pdf"
    told = []
    window.filing.told.connect(told.append)
    window.print_paper()
    qtbot.waitUntil(lambda: any(text.startswith("Printed") for text in told), timeout=30_000)
    reader = pypdf.PdfReader(answers.print_to)
    assert told[-1] == f"Printed {len(reader.pages)} pages"
    assert len(reader.pages) >= 2
    box = reader.pages[0].mediabox
    # ISO 216: A5 is 148 × 210 mm.
    assert [float(side) / 72 * 25.4 for side in box[2:]] == pytest.approx([148, 210], abs=0.5)
    document = pypdfium2.PdfDocument(answers.print_to)
    grey = np.asarray(document[0].render(scale=2).to_pil().convert("L"))
    document.close()
    margin = round((MARGIN_MM - 4) / 25.4 * 144)
    assert (grey < 128).mean() > 0.005
    assert (grey[:, : margin // 2] > 250).all()


@pytest.mark.parametrize("kind", [("svg", b"<svg"), ("png", b"\x89PNG")], ids=["svg", "png"])
def test_pages_are_saved_as_pictures_by_the_ending_and_others_are_not_overwritten_unasked(
    window, answers, tmp_path, qtbot, kind
):
    ending, start = kind
    keep_choices(window.filing.settings, SheetChoices(paper="a5", sheets=("key", "yarn")))
    answers.path = tmp_path / f"hat.{ending}"
    with qtbot.waitSignal(window.background.ended, timeout=30_000):
        window.print_pdf()
    files = sorted(tmp_path.glob("hat-*"))
    assert len(files) >= 2
    assert all(path.read_bytes().startswith(start) for path in files)
    files[0].write_bytes(b"kept")
    with qtbot.waitSignal(window.background.ended, timeout=30_000):
        window.print_pdf()
    assert "hat-1" in answers.asked[-1]
    assert files[0].read_bytes() == b"kept"
    answers.sure = True
    with qtbot.waitSignal(window.background.ended, timeout=30_000):
        window.print_pdf()
    assert files[0].read_bytes().startswith(start)


def test_another_paper_keeps_the_sheet_that_was_looked_at(sheets, qtbot):
    sheets.show_sheet("rounds")
    sheets.side.paper.setCurrentIndex(PAPERS.index("a5"))
    settle(sheets, qtbot)
    assert sheets.printed.pages[sheets.view.page].sheet == "rounds"


def test_a_print_that_nobody_wants_any_more_is_given_up(sheets, window, qtbot):
    failed, made = [], []
    sheets.maker.failed.connect(failed.append)
    sheets.maker.made.connect(made.append)
    for name in ("chart-bw", "chart-large", "chart-bw"):
        state = item(sheets, name).checkState()
        item(sheets, name).setCheckState(Qt.CheckState(2 - state.value))
        sheets._make()
        QApplication.processEvents()
    settle(sheets, qtbot)
    assert failed == []
    assert set(named(sheets)) == set(job.USUAL_SHEETS) - {"shopping"} | {"chart-large"}
    assert made[-1] is sheets.printed
    window.document.do(EDIT)
    sheets.finish()
    assert not sheets.maker.is_at_work
