"""Starts the window."""

from __future__ import annotations

import gc
import os
import sys
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QSettings, QTimer, QTranslator
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from chartmaker.app.icons import drawing
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.window import Window
from chartmaker.files.assets import assets_folder
from chartmaker.files.problems import UserProblem
from chartmaker.files.state_folder import state_folder

if TYPE_CHECKING:
    from types import TracebackType

    from chartmaker.model.design import Design

SETTINGS_VARIABLE = "CHARTMAKER_SETTINGS"
"""Names a file to keep the window's settings in, in place of the system's own place."""
STATE_VARIABLE = "CHARTMAKER_STATE"
"""Names a folder for unsaved work, copies of saves and claims; where only settings are named, none of it is kept."""


def run(design_path: Path | None) -> int:
    """Open the window on a design, or on a new one, and give its exit status when it is closed."""
    application = QApplication.instance() or QApplication(sys.argv[:1])
    application.setApplicationName("Chartmaker")
    application.setOrganizationName("Chartmaker")
    install_translations(application)
    problem: UserProblem | None = None
    try:
        state = kept_state()
    except UserProblem as told:
        state, problem = None, told
    window = open_window(kept_settings(), design_path, state)
    if problem is not None:
        QTimer.singleShot(0, window, partial(window.filing.tell, problem))
    sys.excepthook = FaultTeller(window)
    window.chart_came.connect(gc.enable)
    return application.exec()


def install_translations(application: QCoreApplication) -> None:
    """Let Qt's own words, and ours where they are translated, be those of the system's language."""
    for name, folder in (
        ("qtbase", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)),
        ("chartmaker", str(assets_folder() / "translations")),
    ):
        translator = QTranslator(application)
        if translator.load(QLocale(), name, "_", folder):
            application.installTranslator(translator)


def open_window(settings: QSettings, design_path: Path | None = None, state: Path | None = None) -> Window:
    """Show the window on a design; on a new one where none is named, or where it is refused, which is then told.

    The design is read when something asks for it, at the latest once the window has been painted.
    """

    def give() -> Design:
        return window.filing.first_design()

    window = Window(OpenDesign(give, path=design_path), settings, state=state)
    window.setWindowIcon(QIcon(drawing("chartmaker", 128)))
    window.chart_came.connect(partial(_offer_start, window))
    window.show()
    return window


def _offer_start(window: Window) -> None:
    """Where nothing was opened, offer how to begin."""
    if window.filing.place is None:
        from chartmaker.app.start_offer import offer_start

        offer_start(window)


def kept_settings() -> QSettings:
    """Give where the window keeps what it remembers."""
    path = os.environ.get(SETTINGS_VARIABLE)
    return QSettings(path, QSettings.Format.IniFormat) if path else QSettings("Chartmaker", "Chartmaker")


def kept_state() -> Path | None:
    """Give the folder of the program's state; None where settings of their own say that nothing shall be left behind.

    Raises UserProblem where the system names no home for the user.
    """
    named = os.environ.get(STATE_VARIABLE)
    if named:
        return Path(named).absolute()
    return None if os.environ.get(SETTINGS_VARIABLE) else state_folder()


class FaultTeller:
    """Stands at the window's edge: whatever went wrong inside is told in the one error dialog, never as a traceback."""

    def __init__(self, window: Window) -> None:
        self._window = window
        self._is_telling = False

    def __call__(self, _kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """Tell an error that nothing inside caught; one that comes while another is told is left to the terminal."""
        if isinstance(error, KeyboardInterrupt) or self._is_telling or os.environ.get("CHARTMAKER_TRACEBACK"):
            sys.__excepthook__(type(error), error, trace)
            return
        self._is_telling = True
        try:
            self._window.filing.tell(error)
        finally:
            self._is_telling = False
