"""Nothing is lost: unsaved work is kept and offered again, and no file is overwritten that another hand has changed."""

import signal
import subprocess
import sys
import time
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from chartmaker.app.autosave import KEEP_AFTER_MS
from chartmaker.app.main import SETTINGS_VARIABLE, STATE_VARIABLE, kept_state, open_window
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.window import Window
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import design_to_text, save_design
from chartmaker.files.draft import KEEP_AFTER_S, Draft
from chartmaker.files.opening import open_design
from chartmaker.files.recovery import RecoveryStore
from tests.app.hand_at import drawn, type_at
from tests.app.keeping_answers import KeepingAnswers
from tests.builders import chart

ROOT = Path(__file__).parents[2]
CTRL = Qt.KeyboardModifier.ControlModifier
DESIGN = chart("A B | ........\nA B | ........", times=18, title="Towpath", lots={"A": (30, 0, 0), "B": (80, 0, 0)})
OTHERS = chart("A B | xxxxxxxx\nA B | xxxxxxxx", times=18, title="Sluice", lots={"A": (30, 0, 0), "B": (80, 0, 0)})


@pytest.fixture
def answers():
    return KeepingAnswers()


@pytest.fixture
def state(tmp_path):
    return tmp_path / "state"


@pytest.fixture
def saved(tmp_path):
    path = tmp_path / "towpath.hat.toml"
    save_design(DESIGN, path)
    return path


@pytest.fixture
def start(qtbot, settings, answers, state):
    """Give a function that starts the window on a file, or on a new design, as the program does."""
    started = []

    def start_window(path=None, *, state=state, answers=answers):
        def give():
            return window.filing.first_design()

        window = Window(OpenDesign(give, path=path), settings, answers, state=state)
        window.show()
        window.activateWindow()
        qtbot.waitUntil(lambda: QApplication.activeWindow() is window and window.has_chart)
        qtbot.wait(20)
        started.append((window, answers))
        return window

    yield start_window
    for window, its_answers in started:
        its_answers.unsaved = "discard"
        window.close()
        window.deleteLater()


def kept(state):
    return sorted((state / "recovery").glob("*.hat.toml"))


def leave_work(state, design, path=None, based_on=None):
    """Do what a program leaves that was killed: work is kept, its session is gone."""
    with RecoveryStore(state / "recovery") as store:
        store.draft().keep(design, path=path, based_on=based_on)
    time.sleep(0.002)


def come_back(window, qtbot):
    """Turn to another window and back."""
    other = QWidget()
    qtbot.addWidget(other)
    other.show()
    other.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is other)
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window)
    qtbot.wait(20)


def write_as_another(path, design=OTHERS):
    path.write_text(design_to_text(design), encoding="utf-8")


# --- keeping while one works


def test_the_wait_is_the_one_that_a_draft_promises():
    assert KEEP_AFTER_MS == 1000 * KEEP_AFTER_S


def test_an_edit_is_kept_within_two_seconds(start, state, saved, qtbot):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: len(kept(state)) == 1, timeout=2000)
    assert read_design(kept(state)[0]) == window.document.design
    assert read_design(saved) == DESIGN


def test_edits_one_after_the_other_do_not_put_off_keeping(start, state, saved, qtbot):
    window = start(saved)
    began = time.monotonic()
    while not kept(state) and time.monotonic() - began < 2:
        type_at(window, Qt.Key.Key_Space, Qt.Key.Key_X)
        qtbot.wait(50)
    assert window.document.stack.count() >= 20
    assert len(kept(state)) == 1


def test_where_nothing_changed_nothing_is_written(start, state, saved, qtbot):
    window = start(saved)
    qtbot.wait(KEEP_AFTER_MS + 300)
    assert kept(state) == []
    type_at(window, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: len(kept(state)) == 1, timeout=2000)
    before = kept(state)[0].stat()
    qtbot.wait(KEEP_AFTER_MS + 300)
    after = kept(state)[0].stat()
    assert (before.st_ino, before.st_mtime_ns) == (after.st_ino, after.st_mtime_ns)


@pytest.mark.parametrize("way", ["save", "undo", "new", "close"])
def test_what_is_saved_or_given_up_is_no_longer_kept(start, saved, answers, qtbot, way):
    window, state = start(saved), saved.parent / "state"
    type_at(window, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: len(kept(state)) == 1, timeout=2000)
    answers.unsaved = "discard"
    ways = {"save": window.save, "undo": window.undo, "new": window.filing.new, "close": window.close}
    ways[way]()
    assert kept(state) == []
    qtbot.wait(KEEP_AFTER_MS + 300)
    assert kept(state) == []
    assert answers.told == []


def test_what_is_being_kept_while_it_is_saved_is_not_left_behind(start, state, saved, monkeypatch, qtbot):
    keep, begun = Draft.keep, []

    def keep_slowly(draft, design, **about):
        begun.append(design)
        time.sleep(0.3)
        keep(draft, design, **about)

    monkeypatch.setattr(Draft, "keep", keep_slowly)
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: len(begun) == 1, timeout=2000)
    window.save()
    qtbot.wait(500)
    assert kept(state) == []


def test_a_window_that_is_closed_leaves_no_lock(start, state, saved, qtbot):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: len(kept(state)) == 1, timeout=2000)
    window.save()
    window.close()
    assert list(state.rglob("*.lock")) == []


def test_where_work_cannot_be_kept_that_is_told_once_at_the_foot(start, state, saved, answers, qtbot):
    state.mkdir()
    (state / "recovery").write_text("in the way")
    window = start(saved)
    said = []
    window.filing.told.connect(said.append)
    type_at(window, Qt.Key.Key_Space)
    qtbot.wait(2 * KEEP_AFTER_MS + 400)
    assert len(said) == 1
    assert "recovery" in said[0]
    assert answers.told == []


# --- offering what was left


def test_left_work_comes_back_as_an_unsaved_change_of_its_file(start, state, saved, answers, qtbot):
    leave_work(state, OTHERS, saved, open_design(saved).fingerprint)
    answers.left = ["restore"]
    window = start()
    assert answers.offers == [["Sluice"]]
    assert window.document.design == OTHERS
    assert window.document.path == saved
    assert window.document.stack.count() == 0
    assert window.isWindowModified()
    assert len(kept(state)) == 1
    qtbot.wait(KEEP_AFTER_MS + 300)
    assert len(kept(state)) == 1
    window.save()
    assert read_design(saved) == OTHERS
    assert not window.isWindowModified()
    assert kept(state) == []
    assert (answers.changes, answers.told) == ([], [])


def test_restored_work_that_is_given_up_leaves_the_next_design_unmarked(start, state, answers):
    leave_work(state, OTHERS)
    answers.left, answers.unsaved = ["restore"], "discard"
    window = start()
    window.filing.new()
    assert window.document.design.title == "New cap"
    assert not window.isWindowModified()
    assert kept(state) == []


def test_works_are_offered_newest_first_until_the_rest_is_left(start, state, answers):
    for title in ("first", "second", "third"):
        leave_work(state, replace(DESIGN, title=title))
    answers.left = ["discard", "discard", "later"]
    window = start()
    assert answers.offers == [["third", "second", "first"], ["second", "first"], ["first"]]
    assert window.document.design.title == "New cap"
    assert [read_design(file).title for file in kept(state)] == ["first"]


def test_work_that_was_never_saved_asks_for_a_name(start, state, answers, tmp_path):
    leave_work(state, OTHERS)
    answers.left, answers.path = ["restore"], tmp_path / "sluice.hat.toml"
    window = start()
    assert window.document.path is None
    window.save()
    assert read_design(answers.path) == OTHERS


def test_work_whose_file_was_changed_since_is_not_saved_over_it_unasked(start, state, saved, answers):
    leave_work(state, OTHERS, saved, open_design(saved).fingerprint)
    newer = replace(DESIGN, title="Newer")
    write_as_another(saved, newer)
    answers.left = ["restore"]
    window = start()
    window.save()
    assert len(answers.changes) >= 1
    assert read_design(saved) == newer
    assert window.isWindowModified()


def test_work_of_a_window_that_lives_is_not_offered(start, state, answers):
    with RecoveryStore(state / "recovery") as store:
        store.draft().keep(OTHERS, path=None)
        start()
        assert answers.offers == []


def test_broken_work_is_told_and_put_aside(start, state, answers):
    leave_work(state, OTHERS)
    kept(state)[0].write_text("# half of a", encoding="utf-8")
    start()
    assert answers.offers == []
    assert len(answers.told) == 1
    assert "put aside" in answers.told[0]
    assert kept(state) == []


def test_a_start_without_left_work_asks_nothing_and_makes_no_folder(start, state, answers):
    start()
    assert answers.offers == []
    assert not (state / "recovery").exists()


def test_without_a_folder_for_state_nothing_is_kept_and_nothing_offered(start, saved, answers, qtbot, tmp_path):
    before = sorted(tmp_path.rglob("*.toml"))
    window = start(saved, state=None)
    type_at(window, Qt.Key.Key_Space)
    qtbot.wait(KEEP_AFTER_MS + 300)
    assert answers.offers == []
    assert sorted(tmp_path.rglob("*.toml")) == before


def test_settings_of_their_own_keep_no_state_unless_a_folder_is_named(monkeypatch, tmp_path):
    monkeypatch.setenv(SETTINGS_VARIABLE, str(tmp_path / "settings.ini"))
    monkeypatch.delenv(STATE_VARIABLE, raising=False)
    assert kept_state() is None
    monkeypatch.setenv(STATE_VARIABLE, str(tmp_path / "state"))
    assert kept_state() == tmp_path / "state"


@pytest.mark.skipif(sys.platform == "win32", reason="SIGKILL is a POSIX signal")
def test_a_window_that_is_killed_leaves_its_work_to_the_next(start, state, saved, answers, qtbot):
    command = [sys.executable, "-m", "tests.app.window_to_kill", str(saved), str(state)]
    with subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, text=True) as running:
        try:
            told = running.stdout.readline()
            edited_at = time.monotonic()
            qtbot.waitUntil(lambda: len(kept(state)) == 1, timeout=10_000)
            took_s = time.monotonic() - edited_at
        finally:
            running.send_signal(signal.SIGKILL)
    assert running.returncode == -signal.SIGKILL
    assert told == "2\n"
    assert took_s < 2
    answers.left = ["restore"]
    window = start()
    assert answers.offers == [["Towpath"]]
    assert window.document.path == saved
    assert sum(row.count("x") for row in drawn(window.document.design)) == 2
    assert window.document.stack.count() == 0
    assert window.isWindowModified()
    assert answers.told == []
    assert read_design(saved) == DESIGN


# --- a file that something else has changed


def test_a_change_by_something_else_is_asked_about_once(start, saved, answers, qtbot):
    window = start(saved)
    come_back(window, qtbot)
    assert answers.changes == []
    write_as_another(saved)
    come_back(window, qtbot)
    come_back(window, qtbot)
    assert answers.changes == [("towpath.hat.toml", False)]
    saved.unlink()
    come_back(window, qtbot)
    assert answers.changes[1:] == [("towpath.hat.toml", True)]


def test_a_file_written_anew_with_the_same_bytes_is_no_change(start, saved, answers, qtbot):
    window = start(saved)
    write_as_another(saved, DESIGN)
    come_back(window, qtbot)
    assert answers.changes == []


def test_keeping_ones_own_makes_it_unsaved_and_saves_over_the_file_without_asking_again(start, saved, answers, qtbot):
    window = start(saved)
    write_as_another(saved)
    answers.changed = "mine"
    come_back(window, qtbot)
    assert window.isWindowModified()
    assert read_design(saved) == OTHERS
    window.save()
    assert read_design(saved) == DESIGN
    assert len(answers.changes) == 1


def test_taking_the_files_shows_it_with_nothing_unsaved(start, saved, answers, qtbot):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    write_as_another(saved)
    answers.changed = "theirs"
    come_back(window, qtbot)
    assert window.document.design == OTHERS
    assert not window.isWindowModified()
    window.save()
    assert len(answers.changes) == 1


@pytest.mark.parametrize("answer", ["later", "mine", "theirs", "elsewhere"])
def test_saving_never_overwrites_a_change_unasked(start, saved, answers, tmp_path, answer):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    mine = window.document.design
    write_as_another(saved)
    answers.changed, answers.path = answer, tmp_path / "elsewhere.hat.toml"
    QTest.keyClick(window, Qt.Key.Key_S, CTRL)
    assert len(answers.changes) == 1
    assert read_design(saved) == (mine if answer == "mine" else OTHERS)
    assert answers.path.exists() == (answer == "elsewhere")
    assert window.isWindowModified() == (answer == "later")
    assert answers.told == []


def test_a_change_in_the_instant_of_saving_is_refused_and_the_claim_stays(start, saved, answers, qtbot):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    answers.changed = "mine"
    ask = answers.what_of_changed

    def change_again(name, *, is_gone):
        write_as_another(saved, replace(OTHERS, title="Later still"))
        return ask(name, is_gone=is_gone)

    answers.what_of_changed = change_again
    write_as_another(saved)
    window.save()
    assert len(answers.told) == 1
    assert "something else has changed" in answers.told[0]
    assert read_design(saved).title == "Later still"
    assert window.isWindowModified()
    others = KeepingAnswers()
    start(saved, answers=others)
    qtbot.waitUntil(lambda: len(others.told) == 1)


def test_closing_with_save_stays_open_where_a_change_is_put_off(start, saved, answers):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    write_as_another(saved)
    answers.unsaved = "save"
    window.close()
    assert window.isVisible()
    assert read_design(saved) == OTHERS


def test_a_file_that_is_gone_and_comes_back_is_asked_about_again(start, saved, answers):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    saved.unlink()
    answers.changed = "mine"
    window.filing.changes.ask()
    write_as_another(saved)
    answers.changed = "later"
    window.save()
    assert answers.changes == [("towpath.hat.toml", True), ("towpath.hat.toml", False)]
    assert read_design(saved) == OTHERS


# --- two windows on one file


def test_a_design_that_another_window_has_opens_as_a_copy(start, saved, answers, tmp_path, qtbot):
    first = start(saved)
    others = KeepingAnswers()
    second = start(saved, answers=others)
    qtbot.waitUntil(lambda: len(others.told) == 1)
    assert "another window" in others.told[0]
    assert second.document.design == DESIGN
    assert second.document.path is None
    type_at(second, Qt.Key.Key_Space)
    second.save()
    assert others.asked == ["towpath-copy.hat.toml"]
    others.path = saved
    second.save()
    assert "another window" in others.told[1]
    assert read_design(saved) == DESIGN
    assert second.isWindowModified()
    others.path = tmp_path / "other.hat.toml"
    second.save()
    assert read_design(others.path) == second.document.design
    assert first.document.path == saved
    assert answers.told == []


def test_a_design_is_free_again_when_its_window_closes_or_turns_to_another(start, saved, answers):
    first = start(saved)
    first.filing.new()
    others = KeepingAnswers()
    second = start(saved, answers=others)
    assert second.document.path == saved
    second.close()
    answers.path = saved
    first.filing.open()
    assert first.document.path == saved
    assert (answers.told, others.told) == ([], [])


def test_opening_ones_own_file_again_is_no_conflict(start, saved, answers, qtbot):
    window = start(saved)
    answers.path = saved
    window.filing.open()
    qtbot.wait(20)
    assert window.document.path == saved
    assert answers.told == []


def test_a_refused_file_leaves_the_claim_on_the_one_at_hand(start, saved, answers, tmp_path, qtbot):
    window = start(saved)
    answers.path = tmp_path / "broken.hat.toml"
    answers.path.write_text("not a design")
    window.filing.open()
    others = KeepingAnswers()
    start(saved, answers=others)
    qtbot.waitUntil(lambda: len(others.told) == 1)
    assert window.document.path == saved


# --- earlier copies


def test_an_earlier_copy_opens_as_an_unsaved_change(start, saved, answers):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    window.save()
    once = window.document.design
    type_at(window, Qt.Key.Key_Left, Qt.Key.Key_Space)
    window.save()
    twice = window.document.design
    answers.copy = 1
    window.actions_made["file.copies"].trigger()
    assert answers.offered_copies == [3]
    assert window.document.design == once
    assert window.document.path == saved
    assert window.isWindowModified()
    assert read_design(saved) == twice
    window.save()
    assert read_design(saved) == once
    assert (answers.told, answers.changes) == ([], [])


def test_choosing_no_copy_changes_nothing(start, saved):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    window.save()
    before = window.document.design
    window.actions_made["file.copies"].trigger()
    assert window.document.design is before
    assert not window.isWindowModified()


def test_a_copy_does_not_take_the_place_of_unsaved_work_unasked(start, saved, answers):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    window.save()
    type_at(window, Qt.Key.Key_Left, Qt.Key.Key_Space)
    before = window.document.design
    answers.copy, answers.unsaved = 1, "cancel"
    window.actions_made["file.copies"].trigger()
    assert answers.asked == ["towpath.hat.toml"]
    assert window.document.design is before


def test_where_there_are_no_copies_that_is_told(start, answers):
    window = start()
    window.actions_made["file.copies"].trigger()
    assert len(answers.told) == 1
    assert answers.offered_copies == []


def test_undo_survives_saving(start, saved):
    window = start(saved)
    type_at(window, Qt.Key.Key_Space)
    window.save()
    assert window.document.stack.canUndo()
    QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
    assert window.document.design == DESIGN
    window.save()
    assert read_design(saved) == DESIGN
    assert window.document.stack.canRedo()


def test_the_program_hands_its_state_folder_to_the_window(qtbot, settings, saved, state):
    window = open_window(settings, saved, state)
    qtbot.addWidget(window)
    qtbot.waitUntil(lambda: window.has_chart)
    assert len(list((state / "claims").glob("*.lock"))) == 1
