"""A window for tests: settings in a file of their own, and somebody else to answer its questions."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chartmaker.app.motif_desk import MOTIFS_VARIABLE
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.window import Window
from chartmaker.model.design import Design
from tests.app.answers import Answers
from tests.builders import chart


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Let the offscreen platform say what it cannot do without a window manager: that is no fault of ours."""
    for item in items:
        item.add_marker(pytest.mark.qt_log_ignore("^This plugin does not support ", extend=True))


@pytest.fixture(autouse=True)
def motifs_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give a folder for the user's motifs that no other test and no user shares; it is not there yet."""
    folder = tmp_path / "own motifs"
    monkeypatch.setenv(MOTIFS_VARIABLE, str(folder))
    return folder


@pytest.fixture
def settings(tmp_path: Path) -> QSettings:
    """Give settings that no other test and no user shares, metric whatever the machine is set to."""
    kept = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    kept.setValue("units", "metric")
    return kept


@pytest.fixture
def answers() -> Answers:
    """Give the answers that the window's questions will get."""
    return Answers()


Opener = Callable[..., Window]


@pytest.fixture
def open_on(qtbot: QtBot, settings: QSettings, answers: Answers) -> Iterator[Opener]:
    """Give a function that shows the window on a design."""
    shown = []

    def open_window(design: Design, path: Path | None = None, size: tuple[int, int] = (1180, 800)) -> Window:
        window = Window(OpenDesign(design, path=path), settings, answers)
        window.resize(*size)
        window.show()
        window.activateWindow()
        qtbot.waitUntil(lambda: QApplication.activeWindow() is window and window.has_chart)
        shown.append(window)
        return window

    yield open_window
    for window in shown:
        answers.unsaved = "discard"
        window.close()
        window.deleteLater()


@pytest.fixture
def two_shades() -> Design:
    """Give eight rounds of eight stitches, bare ground A with figure B, clear of each other."""
    return chart("\n".join(["A B | ........"] * 8), times=18, lots={"A": (30, 8, 12), "B": (80, 0, 20)})


@pytest.fixture
def window(open_on: Opener, two_shades: Design) -> Window:
    """Give the window on `two_shades`."""
    return open_on(two_shades)
