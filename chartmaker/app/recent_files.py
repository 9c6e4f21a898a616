"""The designs opened last, kept in the window's settings, newest first."""

from pathlib import Path

from PySide6.QtCore import QSettings

KEY = "recent"
MOST = 8


def recent_files(settings: QSettings) -> list[Path]:
    """Give the paths, newest first; whether they still exist is found out when one is opened."""
    kept = settings.value(KEY)
    # One entry alone comes back from an INI file as a text.
    names = kept if isinstance(kept, list) else [kept]
    return [Path(str(name)) for name in names if name][:MOST]


def remember(settings: QSettings, path: Path) -> None:
    """Put a path first."""
    settings.setValue(KEY, [str(each) for each in _with_first(recent_files(settings), path.absolute())])


def forget(settings: QSettings, path: Path) -> None:
    """Take a path off the list."""
    settings.setValue(KEY, [str(each) for each in recent_files(settings) if each != path.absolute()])


def _with_first(paths: list[Path], path: Path) -> list[Path]:
    return [path, *(each for each in paths if each != path)][:MOST]
