"""A design is one window's at a time, and nobody's once its window is gone."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from chartmaker.files import claims, lock
from chartmaker.files.claims import claim, path_key
from chartmaker.files.lock import HeldElsewhereError, Lock, is_held
from chartmaker.files.problems import UserProblem

ROOT = Path(__file__).parents[2]
CLAIM_AND_WAIT = """
import sys
from pathlib import Path
from chartmaker.files.claims import claim
held = claim(Path(sys.argv[1]), Path(sys.argv[2]))
print(held.is_ours, flush=True)
sys.stdin.read()
"""


def _another_window(path, folder):
    command = [sys.executable, "-c", CLAIM_AND_WAIT, str(path), str(folder)]
    window = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, cwd=ROOT)
    assert window.stdout.readline() == "True\n"
    return window


def _end(window):
    window.kill()
    window.communicate()


def test_the_second_window_is_told_who_has_the_design_and_since_when(tmp_path):
    window = _another_window(tmp_path / "cap.hat.toml", tmp_path / "claims")
    try:
        second = claim(tmp_path / "cap.hat.toml", tmp_path / "claims")
        assert not second.is_ours
        assert second.holder.process == window.pid
        assert second.holder.since.tzinfo is not None
        second.release()
        assert not claim(tmp_path / "cap.hat.toml", tmp_path / "claims").is_ours
    finally:
        _end(window)


def test_the_claim_of_a_killed_window_is_taken_over(tmp_path):
    window = _another_window(tmp_path / "cap.hat.toml", tmp_path / "claims")
    _end(window)
    assert len(list((tmp_path / "claims").iterdir())) == 1
    with claim(tmp_path / "cap.hat.toml", tmp_path / "claims") as taken:
        assert (taken.is_ours, taken.holder.process) == (True, os.getpid())


def test_two_windows_of_one_process_do_not_share_a_design_either(tmp_path):
    with claim(tmp_path / "cap.hat.toml", tmp_path) as first, claim(tmp_path / "cap.hat.toml", tmp_path) as second:
        assert (first.is_ours, second.is_ours) == (True, False)


def test_a_released_claim_leaves_nothing_and_can_be_taken_again(tmp_path):
    for _ in range(2):
        taken = claim(tmp_path / "cap.hat.toml", tmp_path / "claims")
        assert taken.is_ours
        taken.release()
        taken.release()
        assert not taken.is_ours
        assert list((tmp_path / "claims").iterdir()) == []


def test_different_designs_do_not_stand_in_each_others_way(tmp_path):
    with claim(tmp_path / "cap.hat.toml", tmp_path) as cap, claim(tmp_path / "tam.hat.toml", tmp_path) as tam:
        assert cap.is_ours
        assert tam.is_ours


def test_a_design_is_one_however_its_path_is_written(tmp_path, monkeypatch):
    path = tmp_path / "cap.hat.toml"
    monkeypatch.chdir(tmp_path)
    keys = {path_key(path), path_key(Path("cap.hat.toml")), path_key(tmp_path / "gone" / ".." / "cap.hat.toml")}
    assert len(keys) == 1
    assert path_key(tmp_path / "Cap.hat.toml") not in keys or claims._FOLDS_CASE


@pytest.mark.skipif(os.name != "posix", reason="making a link takes rights elsewhere")
def test_a_design_is_one_through_a_link_to_it(tmp_path):
    (tmp_path / "real").mkdir()
    (tmp_path / "link").symlink_to(tmp_path / "real")
    assert path_key(tmp_path / "link" / "cap.hat.toml") == path_key(tmp_path / "real" / "cap.hat.toml")
    (tmp_path / "circle").symlink_to(tmp_path / "circle")
    with pytest.raises(UserProblem, match="this is no path to a file"):
        claim(tmp_path / "circle", tmp_path)


@pytest.mark.parametrize("name", ["a\0b", "\ud83e"])
def test_what_no_file_can_be_called_is_told(tmp_path, name):
    with pytest.raises(UserProblem, match="this is no path to a file"):
        claim(tmp_path / name, tmp_path)


def test_a_design_in_a_folder_that_cannot_be_written_can_be_claimed(tmp_path):
    (tmp_path / "shelf").mkdir(mode=0o500)
    before = list((tmp_path / "shelf").iterdir())
    with claim(tmp_path / "shelf" / "cap.hat.toml", tmp_path / "claims") as taken:
        assert taken.is_ours
        assert list((tmp_path / "shelf").iterdir()) == before


@pytest.mark.parametrize("note", [b"", b"{}", b"[]", b"nobody", b"\xff\xfe", b'{"process": 3, "since": "today"}'])
def test_a_claim_holds_whatever_its_note_says(tmp_path, note):
    with claim(tmp_path / "cap.hat.toml", tmp_path):
        (file,) = tmp_path.iterdir()
        file.write_bytes(note)
        second = claim(tmp_path / "cap.hat.toml", tmp_path)
        assert (second.is_ours, second.holder.process, second.holder.since) == (False, 0, None)


def test_a_folder_where_nothing_can_be_locked_is_told(tmp_path):
    (tmp_path / "taken").write_text("")
    with pytest.raises(UserProblem, match="this folder cannot be made"):
        claim(tmp_path / "cap.hat.toml", tmp_path / "taken")
    (tmp_path / f"{path_key(tmp_path / 'cap.hat.toml')}.lock").mkdir()
    with pytest.raises(UserProblem, match="this cannot be locked: is a directory"):
        claim(tmp_path / "cap.hat.toml", tmp_path)


# --- the lock


def test_looking_whether_a_lock_is_held_changes_nothing(tmp_path):
    path = tmp_path / "one.lock"
    assert not is_held(path)
    assert not path.exists()
    held = Lock(path)
    assert is_held(path)
    held.release()
    path.write_bytes(b"left by a killed program")
    assert not is_held(path)
    assert path.exists()


@pytest.mark.skipif(sys.platform == "win32", reason="no open file is taken away there")
def test_a_lock_whose_file_was_put_anew_before_it_was_held_is_not_held(tmp_path, monkeypatch):
    path, real, turns = tmp_path / "one.lock", lock._lock, []

    def taken_away(handle, *, shared):
        turns.append(shared)
        path.unlink()
        path.write_bytes(b"of another who came in between")
        real(handle, shared=shared)

    monkeypatch.setattr(lock, "_lock", taken_away)
    with pytest.raises(HeldElsewhereError):
        Lock(path)
    assert len(turns) == lock._TRIES


def test_somebody_who_looks_for_an_instant_does_not_keep_a_lock_from_being_taken(tmp_path, monkeypatch):
    looking = lock._patiently(_made(tmp_path / "one.lock"), os.O_RDWR, shared=True, tries=1)
    monkeypatch.setattr(lock.time, "sleep", lambda _: os.close(looking))
    Lock(tmp_path / "one.lock").release()


def _made(path):
    path.write_bytes(b"")
    return path
