"""The last saves of a design can be listed and opened, whatever became of its file."""

import datetime as dt
import errno
from dataclasses import replace

import pytest

from chartmaker.files import backups
from chartmaker.files.backups import MOST_COPIES, Backups
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import save_design
from chartmaker.files.problems import UserProblem
from chartmaker.files.saving import Disk
from tests.builders import chart

LOCKSIDE = chart("A B | .x.x\nA B | x.x.", title="Lockside")


def _saved(path, kept, *titles):
    for title in titles:
        save_design(replace(LOCKSIDE, title=title), path)
        kept.keep(path)


def _titles(kept, path):
    return [read_design(copy.file).title for copy in kept.of(path)]


def test_the_last_saves_are_listed_newest_first_and_older_ones_go(tmp_path):
    path, kept = tmp_path / "cap.hat.toml", Backups(tmp_path / "backups")
    titles = [f"save {number}" for number in range(MOST_COPIES + 3)]
    _saved(path, kept, *titles)
    assert _titles(kept, path) == titles[: -MOST_COPIES - 1 : -1]
    assert len(list((tmp_path / "backups").rglob("*.*"))) == MOST_COPIES
    assert (tmp_path / "cap.hat.toml.before").exists()


def test_a_copy_opens_as_the_design_that_was_saved_though_the_file_is_gone(tmp_path):
    path, kept = tmp_path / "cap.hat.toml", Backups(tmp_path / "backups")
    _saved(path, kept, "Lockside")
    path.unlink()
    kept.keep(path)
    (copy,) = kept.of(path)
    assert read_design(copy.file) == LOCKSIDE
    assert abs((dt.datetime.now(dt.UTC) - copy.saved_at).total_seconds()) < 60


def test_what_did_not_change_is_not_copied_again(tmp_path):
    path, kept = tmp_path / "cap.hat.toml", Backups(tmp_path / "backups")
    _saved(path, kept, "same", "same")
    kept.keep(path)
    assert _titles(kept, path) == ["same"]


def test_what_something_else_wrote_is_copied_before_it_is_saved_over(tmp_path):
    path, kept = tmp_path / "cap.hat.toml", Backups(tmp_path / "backups")
    _saved(path, kept, "ours")
    save_design(replace(LOCKSIDE, title="theirs"), path)
    kept.keep(path)
    _saved(path, kept, "ours again")
    assert _titles(kept, path) == ["ours again", "theirs", "ours"]


def test_designs_of_one_name_in_two_folders_are_kept_apart(tmp_path):
    kept = Backups(tmp_path / "backups")
    for folder in ("one", "other"):
        (tmp_path / folder).mkdir()
        _saved(tmp_path / folder / "cap.hat.toml", kept, folder)
    assert _titles(kept, tmp_path / "one" / "cap.hat.toml") == ["one"]
    assert _titles(kept, tmp_path / "other" / "cap.hat.toml") == ["other"]


def test_a_clock_that_is_set_back_does_not_make_a_new_copy_the_older_one(tmp_path, monkeypatch):
    path, kept = tmp_path / "cap.hat.toml", Backups(tmp_path / "backups")
    _saved(path, kept, "first")

    class SetBack(dt.datetime):
        @classmethod
        def now(cls, tz=None):
            return dt.datetime(2001, 1, 1, tzinfo=tz)

    monkeypatch.setattr(backups.dt, "datetime", SetBack)
    _saved(path, kept, "second", "third")
    assert _titles(kept, path) == ["third", "second", "first"]


def test_the_designs_saved_longest_ago_lose_their_copies_first(tmp_path, monkeypatch):
    monkeypatch.setattr(backups, "MOST_DESIGNS", 2)
    kept = Backups(tmp_path / "backups")
    paths = [tmp_path / f"{name}.hat.toml" for name in ("first", "second", "third")]
    for path in paths:
        _saved(path, kept, path.name)
    assert [_titles(kept, path) for path in paths] == [[], ["second.hat.toml"], ["third.hat.toml"]]
    assert len(list((tmp_path / "backups").iterdir())) == 2


def test_other_files_among_the_copies_are_none_and_halves_of_a_killed_program_go(tmp_path):
    path, kept = tmp_path / "cap.hat.toml", Backups(tmp_path / "backups")
    _saved(path, kept, "first")
    (folder,) = (tmp_path / "backups").iterdir()
    (folder / "mine.hat.toml").write_text("")
    (folder / "half.hat.new").write_text("")
    _saved(path, kept, "second")
    assert _titles(kept, path) == ["second", "first"]
    assert (folder / "mine.hat.toml").exists()
    assert not (folder / "half.hat.new").exists()


@pytest.mark.parametrize("name", [".. ..", "a b", "-", "羊" * 70, "x" * 230, "a.b\nc"])
def test_any_name_of_a_design_makes_a_folder_of_the_store(tmp_path, name):
    path, kept = tmp_path / f"{name}.hat.toml", Backups(tmp_path / "backups")
    _saved(path, kept, "Lockside")
    (copy,) = kept.of(path)
    assert copy.file.parent.parent == tmp_path / "backups"


def test_a_copy_that_cannot_be_made_is_told_and_the_design_is_as_it_was(tmp_path):
    class FullDisk(Disk):
        def create(self, _path, _data):
            raise OSError(errno.ENOSPC, "No space left on device")

    path = tmp_path / "cap.hat.toml"
    save_design(LOCKSIDE, path)
    with pytest.raises(UserProblem, match="no copy of this save could be kept: No space left on device"):
        Backups(tmp_path / "backups", disk=FullDisk()).keep(path)
    assert read_design(path) == LOCKSIDE
