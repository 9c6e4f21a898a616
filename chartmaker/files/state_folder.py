"""Where the program keeps what is not the user's own file: unsaved work, copies of earlier saves, who has what open."""

import os
import sys
from collections.abc import Callable, Mapping
from pathlib import Path

from chartmaker.files.problems import UserProblem


def state_folder(
    environ: Mapping[str, str] = os.environ, *, platform: str = sys.platform, home: Callable[[], Path] = Path.home
) -> Path:
    """Give the folder that this system sets aside for such things; it need not exist yet.

    XDG_STATE_HOME or ~/.local/state (XDG Base Directory Specification 0.8), LOCALAPPDATA on Windows,
    ~/Library/Application Support on macOS. Raises UserProblem where the system names no home for the user.
    """
    try:
        if platform == "win32":
            return _named(environ, "LOCALAPPDATA", lambda: home() / "AppData" / "Local") / "Chartmaker"
        if platform == "darwin":
            return home() / "Library" / "Application Support" / "Chartmaker"
        return _named(environ, "XDG_STATE_HOME", lambda: home() / ".local" / "state") / "chartmaker"
    except RuntimeError as problem:
        raise UserProblem("the system names no home folder, so unsaved work cannot be kept") from problem


def made_folder(folder: Path) -> Path:
    """Make the folder, for this user's eyes alone, unless it is there.

    Raises UserProblem where that cannot be done.
    """
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as problem:
        what = f"this folder cannot be made: {problem.strerror or problem}"
        raise UserProblem(what, where=str(folder)) from problem
    return folder


def _named(environ: Mapping[str, str], name: str, otherwise: Callable[[], Path]) -> Path:
    """Give the folder that a variable names; one that is not absolute is to be passed over, as XDG has it."""
    named = Path(environ.get(name, ""))
    return named if named.is_absolute() else otherwise()
