"""The folder for what is not the user's own is the one that each system sets aside."""

import os
import stat
from pathlib import Path

import pytest

from chartmaker.files.problems import UserProblem
from chartmaker.files.state_folder import made_folder, state_folder

HOME = Path("/home/dyer")


def _home():
    return HOME


@pytest.mark.parametrize(
    ("platform", "environ", "folder"),
    [
        # The XDG Base Directory Specification 0.8: $XDG_STATE_HOME, else ~/.local/state; relative paths are invalid.
        ("linux", {"XDG_STATE_HOME": "/var/state"}, Path("/var/state/chartmaker")),
        ("linux", {}, HOME / ".local/state/chartmaker"),
        ("linux", {"XDG_STATE_HOME": ""}, HOME / ".local/state/chartmaker"),
        ("linux", {"XDG_STATE_HOME": "state"}, HOME / ".local/state/chartmaker"),
        ("freebsd14", {}, HOME / ".local/state/chartmaker"),
        ("win32", {"LOCALAPPDATA": "/c/local"}, Path("/c/local/Chartmaker")),
        ("win32", {"XDG_STATE_HOME": "/var/state"}, HOME / "AppData/Local/Chartmaker"),
        ("darwin", {"XDG_STATE_HOME": "/var/state"}, HOME / "Library/Application Support/Chartmaker"),
    ],
)
def test_each_system_has_its_own_folder(platform, environ, folder):
    assert state_folder(environ, platform=platform, home=_home) == folder


def test_a_user_without_a_home_is_told():
    def homeless():
        raise RuntimeError("Could not determine home directory.")

    with pytest.raises(UserProblem, match="names no home folder"):
        state_folder({}, platform="linux", home=homeless)


@pytest.mark.skipif(os.name != "posix", reason="permissions are another thing elsewhere")
def test_the_folder_is_made_for_the_user_alone(tmp_path):
    folder = made_folder(made_folder(tmp_path / "state" / "chartmaker"))
    assert stat.S_IMODE(folder.stat().st_mode) & 0o077 == 0
