"""What stands over the chart when the program is started on nothing, and what it leads to."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.main import open_window
from chartmaker.app.recent_files import remember
from chartmaker.app.start_dialog import StartDialog
from chartmaker.app.start_offer import StartOffer
from chartmaker.files.assets import examples
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import save_design
from tests.app.hand_at import LEFT, NONE, point
from tests.app.test_accessible_names import unnamed
from tests.app.test_translation import longer, unwrapped  # noqa: F401 - a fixture
from tests.builders import chart

OWN = chart("A B | ........", times=18, title="Sluice")


@pytest.fixture
def start(settings, answers, qtbot):
    """Give a function that starts the program, on a file or on nothing."""

    def start_program(path=None, size=(1180, 800)):
        window = open_window(settings, path)
        window.filing.questions = answers
        qtbot.addWidget(window, before_close_func=lambda _window: setattr(answers, "unsaved", "discard"))
        window.resize(*size)
        window.activateWindow()
        qtbot.waitUntil(lambda: QApplication.activeWindow() is window and window.has_chart)
        qtbot.wait(20)
        return window

    return start_program


def offer_of(window):
    return next((offer for offer in window.findChildren(StartOffer) if offer.isVisible()), None)


def pressed(offer, text):
    button = next(button for button in offer.buttons if button.text() == text)
    QTest.mouseClick(button, LEFT, NONE, button.rect().center())


def test_started_on_nothing_it_offers_a_new_hat_first_and_enter_asks_for_one(start, qtbot):
    window = start()
    offer = offer_of(window)
    assert QApplication.focusWidget() is offer.buttons[0]
    QTest.keyClick(offer.buttons[0], Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), StartDialog))
    QTest.keyClick(QApplication.activeWindow(), Qt.Key.Key_Escape)
    assert offer_of(window) is offer
    window.activateWindow()  # which a window manager does when a dialog goes
    qtbot.waitUntil(lambda: QApplication.focusWidget() is offer.buttons[0])
    QTest.keyClick(offer.buttons[0], Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), StartDialog))
    QTest.keyClick(QApplication.activeWindow(), Qt.Key.Key_Return)
    assert offer_of(window) is None
    assert len(window.document.design.bands) > 3


def test_started_on_a_file_it_offers_nothing(start, tmp_path):
    save_design(OWN, tmp_path / "sluice.hat.toml")
    assert offer_of(start(tmp_path / "sluice.hat.toml")) is None


def test_started_on_a_file_that_cannot_be_read_it_tells_so_and_offers_how_to_begin(start, answers, tmp_path):
    window = start(tmp_path / "gone.hat.toml")
    assert len(answers.told) == 1
    assert offer_of(window) is not None


def test_escape_leaves_the_bare_chart_with_the_keys(start):
    window = start()
    QTest.keyClick(offer_of(window).buttons[0], Qt.Key.Key_Escape)
    assert offer_of(window) is None
    assert QApplication.focusWidget() is window.chart.canvas


def test_a_stitch_drawn_beside_it_puts_it_away(start):
    window = start()
    canvas = window.chart.canvas
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (0, 0)))
    assert window.document.stack.count() == 1
    assert offer_of(window) is None


def test_a_design_opened_before_is_offered_by_its_name(start, settings, tmp_path):
    path = tmp_path / "sluice.hat.toml"
    save_design(OWN, path)
    remember(settings, path)
    window = start()
    pressed(offer_of(window), "sluice")
    assert window.document.design == OWN
    assert window.document.path == path
    assert offer_of(window) is None


def test_a_design_that_is_gone_is_told_and_the_offer_stays(start, settings, answers, tmp_path):
    remember(settings, tmp_path / "gone.hat.toml")
    window = start()
    pressed(offer_of(window), "gone")
    assert len(answers.told) == 1
    assert offer_of(window) is not None


@pytest.mark.parametrize("path", examples(), ids=lambda path: path.name)
def test_an_example_is_shown_as_a_copy_with_its_palette_and_is_not_written_to(path, start, answers, tmp_path):
    before = path.read_bytes()
    window = start()
    pressed(offer_of(window), path.name.removesuffix(".hat.toml").replace("-", " ").capitalize())
    design = window.document.design
    assert design.bands == read_design(path).bands
    assert design.palette_file == ""
    assert window.lots.open_palette.palette.lots
    assert window.document.path is None
    answers.path = tmp_path / "own.hat.toml"
    window.save()
    assert read_design(answers.path) == design
    assert path.read_bytes() == before


def test_there_are_examples():
    assert [path.name for path in examples()] == ["lockside-cap.hat.toml", "towpath-tam.hat.toml"]


@pytest.mark.parametrize("size", [(1024, 700), (1440, 900)])
def test_it_stands_in_the_middle_of_the_chart_and_every_button_has_a_name(size, start, settings, tmp_path):
    for name in ("a", "b", "c", "d", "a name that is longer than anybody would like to read on a button of a card"):
        remember(settings, tmp_path / f"{name}.hat.toml")
    window = start(size=size)
    offer, canvas = offer_of(window), window.chart.canvas
    assert unnamed(offer) == []
    middle = canvas.mapTo(window, canvas.rect().center())
    found = offer.mapTo(window, offer.rect().center())
    assert (found - middle).manhattanLength() < 4
    assert window.rect().contains(offer.rect().translated(offer.mapTo(window, offer.rect().topLeft())))


def test_in_a_small_window_the_oldest_designs_are_left_out_first(start, settings, tmp_path):
    for name in "abcd":
        remember(settings, tmp_path / f"{name}.hat.toml")
    window = start(size=(910, 520))
    offer = offer_of(window)
    shown = [button.text() for button in offer.buttons if button.isVisible()]
    assert {"New hat…", "Draw on a bare chart", "Open a design…"} <= set(shown)
    assert shown.count("a") == 0
    assert offer.geometry().bottom() < window.chart.height()
    window.resize(1280, 900)
    QApplication.processEvents()
    assert all(button.isVisible() for button in offer.buttons)


def test_it_goes_out_of_sight_with_the_chart_and_comes_back(start):
    window = start()
    offer = offer_of(window)
    window.show_view("far")
    assert offer_of(window) is None
    window.show_view("shade")
    assert offer_of(window) is offer
    window.show_page("yarn")
    assert offer_of(window) is None
    window.show_page("chart")
    assert offer_of(window) is offer


@pytest.mark.usefixtures("longer")
def test_its_texts_are_translated(start):
    texts = unwrapped(offer_of(start()))
    assert {text for _, text in texts} <= {"Lockside cap", "Towpath tam"}
