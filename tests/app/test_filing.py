import tomllib

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest

from chartmaker.app.filing import Filing, _file_stem
from chartmaker.app.main import FaultTeller, open_window
from chartmaker.app.recent_files import recent_files, remember
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import save_design
from chartmaker.files.palette_writing import save_palette
from chartmaker.model.palette import Palette
from chartmaker.report.yarn_as_csv import yarn_as_csv
from tests.app.hand_at import drag, drawn
from tests.builders import chart, lot

CTRL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
DESIGN = chart("A B | x...", times=36, title="Towpath", lots={"A": (30, 0, 0), "B": (80, 0, 0)})


@pytest.fixture
def saved(tmp_path):
    path = tmp_path / "towpath.hat.toml"
    save_design(DESIGN, path)
    return path


def test_a_saved_design_opens_the_same(window, answers, tmp_path):
    drag(window.chart.canvas, (0, 0), (3, 3))
    answers.path = tmp_path / "kept.hat.toml"
    QTest.keyClick(window, Qt.Key.Key_S, CTRL)
    assert read_design(answers.path) == window.document.design
    assert answers.told == []


def test_a_name_without_an_ending_gets_the_designs_ending(window, answers, tmp_path):
    answers.path = tmp_path / "kept"
    assert window.filing.save_as()
    assert window.document.path == tmp_path / "kept.hat.toml"
    assert window.document.path.is_file()


def test_the_title_bar_marks_unsaved_work_and_undo_survives_saving(window, answers, tmp_path):
    assert not window.isWindowModified()
    drag(window.chart.canvas, (0, 0), (0, 3))
    assert window.isWindowModified()
    answers.path = tmp_path / "kept.hat.toml"
    window.save()
    assert not window.isWindowModified()
    window.document.stack.undo()
    assert window.isWindowModified()
    assert drawn(window.document.design)[-1] == "........"
    window.document.stack.redo()
    assert not window.isWindowModified()


def test_opening_shows_the_design_and_its_palette(window, answers, saved, qtbot):
    save_palette(Palette(name="Towpath", lots=(lot("oat", (88, 1, 12)),)), saved.parent / "towpath.palette.toml")
    text = saved.read_text(encoding="utf-8").replace(
        'title = "Towpath"', 'title = "Towpath"\npalette = "towpath.palette.toml"'
    )
    assert "palette" in tomllib.loads(text)
    saved.write_text(text, encoding="utf-8")
    answers.path = saved
    with qtbot.waitSignal(window.document.appraised):
        QTest.keyClick(window, Qt.Key.Key_O, CTRL)
    assert window.document.design.bands == DESIGN.bands
    assert "Towpath" in window.windowTitle()
    qtbot.waitUntil(lambda: window.document.palette is not None)
    assert window.chart.letters.box("A").findData("oat") >= 0


def test_a_palette_can_be_opened_by_hand(window, answers, tmp_path):
    answers.path = tmp_path / "more.palette.toml"
    save_palette(Palette(name="More", lots=(lot("oat", (88, 1, 12)),)), answers.path)
    window.filing.open_palette()
    assert window.chart.letters.box("A").findData("oat") >= 0
    assert window.document.stack.isClean()


@pytest.mark.parametrize(
    "content",
    [b"", b"\xff\xfe\x00", b"format = 'chartmaker-design'\nversion = 99\n", b"not toml at all [", b"a" * 9_000_000],
    ids=["empty", "no-text", "newer", "no-toml", "huge"],
)
def test_a_broken_file_gets_one_message_and_leaves_the_design_alone(window, answers, tmp_path, content):
    answers.path = tmp_path / "broken.hat.toml"
    answers.path.write_bytes(content)
    before = window.document.design
    window.filing.open()
    assert len(answers.told) == 1
    assert "broken.hat.toml" in answers.told[0]
    assert "Traceback" not in answers.told[0]
    assert window.document.design is before


def test_a_file_that_is_not_there_is_told_and_taken_off_the_list(window, answers, settings, tmp_path):
    gone = tmp_path / "gone.hat.toml"
    remember(settings, gone)
    window.filing.open_recent(gone)
    assert len(answers.told) == 1
    assert recent_files(settings) == []


def test_a_place_that_cannot_be_written_is_told_and_the_work_stays_unsaved(window, answers, tmp_path):
    drag(window.chart.canvas, (0, 0), (0, 3))
    answers.path = tmp_path / "no" / "such" / "folder.hat.toml"
    assert not window.filing.save_as()
    assert len(answers.told) == 1
    assert not window.document.stack.isClean()


@pytest.mark.parametrize(("answer", "closes"), [("cancel", False), ("discard", True), ("save", True)])
def test_closing_asks_about_unsaved_work(window, answers, tmp_path, answer, closes):
    drag(window.chart.canvas, (0, 0), (0, 3))
    answers.unsaved, answers.path = answer, tmp_path / "kept.hat.toml"
    window.close()
    assert len(answers.asked) >= 1
    assert window.isVisible() != closes
    assert (tmp_path / "kept.hat.toml").is_file() == (answer == "save")


def test_a_design_without_changes_closes_without_asking(window, answers):
    window.close()
    assert answers.asked == []
    assert not window.isVisible()


def test_giving_up_while_saving_keeps_the_window(window, answers):
    drag(window.chart.canvas, (0, 0), (0, 3))
    answers.unsaved, answers.path = "save", None
    window.close()
    assert window.isVisible()


def test_a_new_design_asks_first_and_can_be_undone_no_further(window, answers):
    drag(window.chart.canvas, (0, 0), (0, 3))
    before = window.document.design
    QTest.keyClick(window, Qt.Key.Key_N, CTRL | SHIFT)
    assert window.document.design is before
    answers.unsaved = "discard"
    QTest.keyClick(window, Qt.Key.Key_N, CTRL | SHIFT)
    assert window.document.design.title == "New cap"
    assert not window.document.stack.canUndo()
    assert window.document.path is None


def test_recent_files_are_newest_first_each_once(settings, tmp_path):
    for name in ("a", "b", "a", "c"):
        remember(settings, tmp_path / name)
    assert [path.name for path in recent_files(settings)] == ["c", "a", "b"]


def test_one_recent_file_comes_back_from_the_settings_file(settings, tmp_path):
    remember(settings, tmp_path / "only")
    settings.sync()
    fresh = QSettings(settings.fileName(), QSettings.Format.IniFormat)
    assert recent_files(fresh) == [tmp_path / "only"]


def test_the_recent_menu_lists_what_was_opened(window, answers, saved):
    answers.path = saved
    window.filing.open()
    menu = window.actions_made._recent
    menu.aboutToShow.emit()
    assert [action.text() for action in menu.actions()] == [str(saved)]


def test_a_picture_is_written_beside_the_windows_work(window, answers, tmp_path, qtbot):
    answers.path = tmp_path / "fabric"
    with qtbot.waitSignal(window.background.ended, timeout=20_000):
        QTest.keyClick(window, Qt.Key.Key_E, CTRL)
    assert (tmp_path / "fabric.png").read_bytes().startswith(b"\x89PNG")


def test_the_yarn_table_is_written_for_spreadsheets(window, answers, tmp_path, qtbot):
    answers.path = tmp_path / "yarn"
    with qtbot.waitSignal(window.background.ended, timeout=20_000):
        QTest.keyClick(window, Qt.Key.Key_V, CTRL | Qt.KeyboardModifier.AltModifier)
    written = (tmp_path / "yarn.csv").read_text(encoding="utf-8")
    assert written == yarn_as_csv(window.document.appraisal)
    assert len(written.splitlines()) == 1 + len(window.document.appraisal.letters)


def test_printing_that_is_stopped_writes_nothing(window, answers, tmp_path, qtbot):
    answers.path = tmp_path / "sheets.pdf"
    window.print_pdf()
    window.background.stop()
    qtbot.wait(800)
    assert not answers.path.exists()
    assert answers.told == []


def test_giving_up_the_choice_of_a_file_or_a_printer_prints_nothing(window, answers):
    answers.path = answers.print_to = None
    window.print_pdf()
    assert not window.background.is_busy
    window.print_paper()
    assert not window.background.is_busy


def test_the_window_starts_on_the_design_that_it_is_called_with(qtbot, settings, saved):
    window = open_window(settings, saved)
    qtbot.addWidget(window)
    assert window.document.design == DESIGN
    assert window.document.path == saved
    assert recent_files(settings) == [saved]


def test_the_window_starts_on_a_new_design_and_tells_when_the_one_called_for_is_refused(
    qtbot, settings, tmp_path, monkeypatch
):
    told = []
    monkeypatch.setattr(Filing, "tell", lambda _self, error: told.append(str(error)))
    window = open_window(settings, tmp_path / "gone.hat.toml")
    qtbot.addWidget(window)
    qtbot.waitUntil(lambda: bool(told))
    assert "gone.hat.toml" in told[0]
    assert window.document.design.title == "New cap"


def test_a_fault_in_the_program_is_told_in_a_sentence(window, answers):
    FaultTeller(window)(KeyError, KeyError("bath"), None)
    assert len(answers.told) == 1
    assert "fault in the program" in answers.told[0]


@pytest.mark.parametrize(
    ("title", "stem"),
    [('Lock/side: "cap" <1>', "lock-side-cap-1"), ("羊 & ü", "羊-ü"), ("///", "hat"), ("x" * 400, "x" * 60)],
)
def test_a_title_becomes_a_file_name_that_every_system_takes(title, stem):
    assert _file_stem(title) == stem
