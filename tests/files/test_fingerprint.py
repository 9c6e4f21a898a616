"""A file that something else wrote, moved or removed is noticed, and never overwritten unasked."""

import os
import shutil
import time
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.files import fingerprint, opening, saving
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import save_design
from chartmaker.files.fingerprint import ChangedMeanwhile, fingerprint_of, has_changed, standing_of
from chartmaker.files.opening import open_design
from chartmaker.files.problems import UserProblem
from chartmaker.files.saving import Disk, write_safely
from tests.builders import chart

LOCKSIDE = chart("A B | .x.x\nA B | x.x.", title="Lockside")
OURS, THEIRS = replace(LOCKSIDE, title="ours"), replace(LOCKSIDE, title="theirs")
LONG_AGO_NS = 1_600_000_000_000_000_000


def _settled(tmp_path):
    """A file written long ago, and its fingerprint."""
    path = tmp_path / "cap.hat.toml"
    path.write_bytes(b"as it was")
    os.utime(path, ns=(LONG_AGO_NS, LONG_AGO_NS))
    return path, fingerprint_of(path)


def test_a_file_left_alone_has_not_changed_and_is_not_read_again(tmp_path, monkeypatch):
    path, before = _settled(tmp_path)
    monkeypatch.setattr(fingerprint, "digest_of", lambda _: "read")
    assert before.is_settled
    assert not has_changed(path, before)


def test_a_new_time_over_the_same_bytes_is_no_change(tmp_path):
    path, before = _settled(tmp_path)
    path.touch()
    assert standing_of(path, before) == "same"


def test_the_same_bytes_put_in_its_place_are_no_change(tmp_path):
    path, before = _settled(tmp_path)
    shutil.copy(path, tmp_path / "copy")
    (tmp_path / "copy").replace(path)
    assert standing_of(path, before) == "same"


def test_other_bytes_of_the_same_length_are_a_change(tmp_path):
    path, before = _settled(tmp_path)
    path.write_bytes(b"as it is!")
    assert standing_of(path, before) == "changed"


def test_a_write_within_the_same_tick_of_the_clock_is_noticed(tmp_path):
    path = tmp_path / "cap.hat.toml"
    path.write_bytes(b"as it was")
    before, moment = fingerprint_of(path), path.stat().st_mtime_ns
    path.write_bytes(b"as it is!")
    os.utime(path, ns=(moment, moment))
    assert path.stat().st_ino == before.inode
    assert standing_of(path, before) == "changed"


@given(st.binary(max_size=40), st.binary(max_size=40))
def test_a_file_has_changed_just_where_its_bytes_have(tmp_path_factory, old, new):
    path = tmp_path_factory.getbasetemp() / "any"
    path.write_bytes(old)
    before = fingerprint_of(path)
    path.write_bytes(new)
    assert has_changed(path, before) == (old != new)


def test_a_file_that_is_gone_or_became_a_folder_has_changed(tmp_path):
    path, before = _settled(tmp_path)
    path.unlink()
    assert standing_of(path, before) == "gone"
    path.mkdir()
    assert standing_of(path, before) == "changed"
    assert standing_of(path / "under" / "it", before) == "gone"


def test_a_file_that_cannot_be_looked_at_is_told(tmp_path, monkeypatch):
    path, before = _settled(tmp_path)
    with pytest.raises(UserProblem, match="cannot be looked at: embedded null byte"):
        standing_of(tmp_path / "a\0b", before)
    with pytest.raises(UserProblem, match="cannot be looked at: no such file"):
        fingerprint_of(tmp_path / "gone")
    monkeypatch.setattr(fingerprint, "MOST_BYTES", 4)
    with pytest.raises(UserProblem, match="larger than"):
        fingerprint_of(path)


# --- opening


def test_opening_gives_the_design_and_the_fingerprint_of_its_file(tmp_path):
    path = tmp_path / "cap.hat.toml"
    save_design(LOCKSIDE, path)
    opened = open_design(path)
    assert opened.design == LOCKSIDE
    assert opened.fingerprint.digest == fingerprint_of(path).digest


def test_a_file_that_is_written_while_it_is_opened_is_read_again(tmp_path, monkeypatch):
    path = tmp_path / "cap.hat.toml"
    save_design(OURS, path)

    def written_meanwhile(given_path):
        monkeypatch.setattr(opening, "fingerprint_of", fingerprint_of)
        save_design(THEIRS, given_path)
        return fingerprint_of(given_path)

    monkeypatch.setattr(opening, "fingerprint_of", written_meanwhile)
    opened = open_design(path)
    assert (opened.design, has_changed(path, opened.fingerprint)) == (THEIRS, False)


def test_a_file_that_is_written_without_end_is_told(tmp_path, monkeypatch):
    path = tmp_path / "cap.hat.toml"
    save_design(OURS, path)
    monkeypatch.setattr(opening, "fingerprint_of", lambda one: replace(fingerprint_of(one), digest="other"))
    with pytest.raises(UserProblem, match="something is writing the file just now; open it again in a moment"):
        open_design(path)


# --- saving


def test_saves_one_after_another_expect_each_other(tmp_path):
    path = tmp_path / "cap.hat.toml"
    taken = save_design(LOCKSIDE, path)
    for title in ("second", "third", "third"):
        taken = save_design(replace(LOCKSIDE, title=title), path, expected=taken)
        assert not has_changed(path, taken)
    assert read_design(path).title == "third"


def test_a_save_over_what_something_else_wrote_is_refused_and_leaves_it(tmp_path):
    path = tmp_path / "cap.hat.toml"
    taken = save_design(LOCKSIDE, path)
    save_design(THEIRS, path)
    with pytest.raises(ChangedMeanwhile) as caught:
        save_design(OURS, path, expected=taken)
    assert str(caught.value) == (
        f"{path}: it was not saved: something else has changed the file since it was opened; "
        "save it under another name, or over what is there now"
    )
    assert caught.value.standing == "changed"
    assert read_design(path) == THEIRS
    assert len(list(tmp_path.iterdir())) == 2


def test_a_save_where_the_file_is_gone_is_refused(tmp_path):
    path = tmp_path / "cap.hat.toml"
    taken = save_design(LOCKSIDE, path)
    path.unlink()
    with pytest.raises(ChangedMeanwhile, match="the file is not there any more") as caught:
        save_design(OURS, path, expected=taken)
    assert caught.value.standing == "gone"
    assert not path.exists()


def test_a_save_that_is_told_to_goes_over_whatever_is_there(tmp_path):
    path = tmp_path / "cap.hat.toml"
    save_design(THEIRS, path)
    save_design(OURS, path, expected=None)
    assert read_design(path) == OURS


def test_what_something_else_wrote_is_no_matter_where_it_wrote_the_same(tmp_path):
    path = tmp_path / "cap.hat.toml"
    taken = save_design(LOCKSIDE, path)
    save_design(OURS, path)
    assert save_design(OURS, path, expected=taken).digest == fingerprint_of(path).digest


def test_a_change_that_comes_while_the_new_file_is_written_is_noticed(tmp_path):
    path = tmp_path / "cap.hat.toml"
    write_safely(path, b"old")
    taken = fingerprint_of(path)

    class SlowDisk(Disk):
        def create(self, new, data):
            super().create(new, data)
            path.write_bytes(b"by another")

    with pytest.raises(ChangedMeanwhile):
        write_safely(path, b"new", expected=taken, disk=SlowDisk())
    assert [file.read_bytes() for file in tmp_path.iterdir()] == [b"by another"]


def test_what_a_killed_save_left_long_ago_goes_with_the_next_and_nothing_else_does(tmp_path, monkeypatch):
    path, other = tmp_path / "cap.hat.toml", tmp_path / ".12345678-12345678.new"

    class DyingDisk(Disk):
        def move_over(self, _new, _old):
            raise KeyboardInterrupt

        def remove(self, _path):
            raise OSError

    write_safely(path, b"first")
    other.write_bytes(b"of another design")
    with pytest.raises(KeyboardInterrupt):
        write_safely(path, b"never", disk=DyingDisk())
    write_safely(path, b"second")
    assert len(list(tmp_path.glob(".*"))) == 3  # another program may be at it
    now = time.time()
    monkeypatch.setattr(saving.time, "time", lambda: now + 7200)
    write_safely(path, b"third")
    assert list(tmp_path.glob(".*")) == [other]
