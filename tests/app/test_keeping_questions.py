"""The dialogs about left work, changed files and copies, answered by real keys and clicks."""

import datetime as dt
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox, QPushButton, QWidget

from chartmaker.app.choice_dialog import local_time
from chartmaker.app.questions import Questions
from chartmaker.files.backups import SavedCopy
from chartmaker.files.recovery import LeftWork
from chartmaker.files.recovery_file import Note

NOON = dt.datetime(2026, 3, 1, 12, 0, tzinfo=dt.UTC)


def work(title, path=None, *, has_file_changed=False):
    note = Note(title=title, path=path, based_on=None, kept_at=NOON, process=1, session="a")
    return LeftWork(Path("kept"), note, has_file_changed=has_file_changed)


WORKS = (work("Towpath", Path("towpath.hat.toml"), has_file_changed=True), work("<b>Sluice</b>"))
COPIES = tuple(SavedCopy(Path(f"{hour}.hat.toml"), NOON - dt.timedelta(hours=hour)) for hour in range(3))


@pytest.fixture
def questions(qtbot):
    parent = QWidget()
    qtbot.addWidget(parent)
    parent.show()
    return Questions(parent)


def meanwhile(act):
    """Do something at the dialog once it is there."""

    def look():
        dialog = QApplication.activeModalWidget()
        if dialog is None or not dialog.isActiveWindow():
            QTimer.singleShot(10, look)
        else:
            act(dialog)

    QTimer.singleShot(0, look)


def keys(*wanted):
    def press(_dialog):
        for key in wanted:
            QTest.keyClick(QApplication.focusWidget(), key)

    return press


def click(name):
    return lambda dialog: QTest.mouseClick(dialog.findChild(QPushButton, name), Qt.MouseButton.LeftButton)


def test_enter_restores_the_newest(questions):
    meanwhile(keys(Qt.Key.Key_Return))
    assert questions.what_of_left(WORKS) == ("restore", WORKS[0])


def test_another_can_be_chosen_and_discarded(questions):
    def act(dialog):
        keys(Qt.Key.Key_Down)(dialog)
        click("discard")(dialog)

    meanwhile(act)
    assert questions.what_of_left(WORKS) == ("discard", WORKS[1])


@pytest.mark.parametrize("act", [keys(Qt.Key.Key_Escape), click("later")])
def test_escape_leaves_it_for_later(questions, act):
    meanwhile(act)
    assert questions.what_of_left(WORKS)[0] == "later"


def test_the_offer_shows_title_file_and_time(questions):
    shown = []

    def act(dialog):
        table = dialog.table
        shown.extend([table.item(row, column).text() for column in range(3)] for row in range(2))
        keys(Qt.Key.Key_Escape)(dialog)

    meanwhile(act)
    questions.what_of_left(WORKS)
    time = local_time(NOON)
    assert shown == [
        ["Towpath", "towpath.hat.toml (changed since)", time],
        ["<b>Sluice</b>", "never saved", time],
    ]


def test_a_copy_is_chosen_by_keys(questions):
    meanwhile(keys(Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Return))
    assert questions.which_copy("towpath.hat.toml", COPIES) == COPIES[2]


def test_escape_chooses_no_copy(questions):
    meanwhile(keys(Qt.Key.Key_Escape))
    assert questions.which_copy("towpath.hat.toml", COPIES) is None


@pytest.mark.parametrize(
    ("text", "answer"),
    [("Keep mine", "mine"), ("Take the file's", "theirs"), ("Save mine as…", "elsewhere"), ("Later", "later")],
)
def test_every_answer_about_a_changed_file_can_be_clicked(questions, text, answer):
    def act(dialog):
        button = next(each for each in dialog.buttons() if each.text().replace("&", "") == text)
        QTest.mouseClick(button, Qt.MouseButton.LeftButton)

    meanwhile(act)
    assert questions.what_of_changed("towpath.hat.toml", is_gone=False) == answer


def test_enter_pressed_unawares_overwrites_nothing(questions):
    meanwhile(keys(Qt.Key.Key_Return))
    assert questions.what_of_changed("towpath.hat.toml", is_gone=False) == "later"


def test_a_file_that_is_gone_cannot_be_taken_and_escape_puts_it_off(questions):
    shown = []

    def act(dialog: QMessageBox):
        shown.extend(each.text() for each in dialog.buttons())
        keys(Qt.Key.Key_Escape)(dialog)

    meanwhile(act)
    assert questions.what_of_changed("towpath.hat.toml", is_gone=True) == "later"
    assert len(shown) == 3
    assert "Take the file's" not in shown
