"""Unsaved work is kept cheaply, offered to the next session alone, taken once, and never fatal."""

import datetime as dt
import errno
import os
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.files import recovery, recovery_file
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import design_to_text, save_design
from chartmaker.files.fingerprint import Fingerprint
from chartmaker.files.lock import Lock
from chartmaker.files.problems import UserProblem
from chartmaker.files.recovery import BROKEN, MOST_LEFT, OLDEST_S, RecoveryStore
from chartmaker.files.recovery_file import Note, with_note, without_note
from chartmaker.files.saving import Disk
from tests.builders import chart, lot
from tests.strategies import designs, texts

LOCKSIDE = chart("A B | .x.x\nA B | x.x.", title="Lockside")
NOW = dt.datetime(2026, 9, 12, 10, 0, tzinfo=dt.UTC)


class CountingDisk(Disk):
    """A disk that counts the files it makes."""

    made = 0

    def create(self, path, data):
        self.made += 1
        super().create(path, data)


class FullDisk(Disk):
    """A disk on which half a file finds room."""

    def create(self, path, data):
        path.write_bytes(data[: len(data) // 2])
        raise OSError(errno.ENOSPC, "No space left on device")


def _note(**fields):
    whole = {"title": "Lockside", "path": None, "based_on": None, "kept_at": NOW, "process": 7, "session": "s"}
    return Note(**whole | fields)


def _left_behind(folder, design=LOCKSIDE, **about):
    """What a session leaves that ends without clearing up."""
    with RecoveryStore(folder) as gone:
        draft = gone.draft()
        draft.keep(design, **{"path": None} | about)
    return draft.file


def _store(tmp_path, name="recovery"):
    return RecoveryStore(tmp_path / name)


# --- keeping


def test_what_a_session_leaves_comes_back_in_the_next(tmp_path):
    _left_behind(tmp_path / "recovery", path=tmp_path / "cap.hat.toml")
    with _store(tmp_path) as store:
        (work,) = store.left().works
        assert (work.title, work.path, work.has_file_changed) == ("Lockside", tmp_path / "cap.hat.toml", False)
        assert abs((dt.datetime.now(dt.UTC) - work.kept_at).total_seconds()) < 60
        restored = store.restore(work)
        assert (restored.design, restored.path) == (LOCKSIDE, tmp_path / "cap.hat.toml")
        assert store.left().works == ()


def test_restored_work_stays_kept_until_it_is_forgotten(tmp_path):
    _left_behind(tmp_path / "recovery")
    with _store(tmp_path) as store:
        store.restore(store.left().works[0])
    with _store(tmp_path) as store:
        store.restore(store.left().works[0]).draft.forget()
    with _store(tmp_path) as store:
        assert store.left().works == ()


def test_what_did_not_change_is_not_written_again(tmp_path):
    disk = CountingDisk()
    with RecoveryStore(tmp_path, disk=disk) as store:
        draft = store.draft()
        draft.keep(LOCKSIDE, path=None)
        draft.keep(LOCKSIDE, path=None)
        draft.keep(replace(LOCKSIDE), path=None)
        assert disk.made == 1
        draft.keep(replace(LOCKSIDE, title="Lockgate"), path=None)
        draft.keep(replace(LOCKSIDE, title="Lockgate"), path=tmp_path / "cap.hat.toml")
        assert disk.made == 3


def test_after_forgetting_the_same_design_is_kept_again(tmp_path):
    with _store(tmp_path) as store:
        draft = store.draft()
        for _ in range(2):
            draft.keep(LOCKSIDE, path=None)
            assert draft.file.exists()
            draft.forget()
            assert not draft.file.exists()


def test_a_full_disk_is_told_and_what_was_kept_before_stays(tmp_path):
    file = _left_behind(tmp_path / "recovery")
    with RecoveryStore(tmp_path / "recovery", disk=FullDisk()) as store:
        draft = store.restore(store.left().works[0]).draft
        with pytest.raises(UserProblem, match="unsaved work cannot be kept: No space left on device; save the design"):
            draft.keep(replace(LOCKSIDE, title="Lockgate"), path=None)
        assert not file.exists()
    with _store(tmp_path) as store:
        assert [work.title for work in store.left().works] == ["Lockside"]
        assert [file for file in store.folder.iterdir() if file.suffix == ".new"] == []


def test_half_a_character_costs_that_character_alone(tmp_path):
    _left_behind(tmp_path / "recovery", chart("A | .", title="hat \ud83e"))
    with _store(tmp_path) as store:
        assert store.restore(store.left().works[0]).design == chart("A | .", title="hat ?")


def test_kept_work_opens_as_a_design_by_hand(tmp_path):
    assert read_design(_left_behind(tmp_path, path=tmp_path / "a\x7fb\nc.hat.toml")) == LOCKSIDE


# --- offering


def test_the_work_of_a_living_session_is_not_offered(tmp_path):
    with _store(tmp_path) as living, _store(tmp_path) as other:
        living.draft().keep(LOCKSIDE, path=None)
        assert other.left().works == ()
        assert living.left().works == ()


def test_work_is_offered_newest_first(tmp_path):
    for minutes, title in ((5, "middle"), (9, "newest"), (1, "oldest")):
        _put(tmp_path, f"{minutes:016x}-1.hat.toml", _note(title=title, kept_at=_ago(minutes=10 - minutes)))
    with RecoveryStore(tmp_path) as store:
        assert [work.title for work in store.left().works] == ["newest", "middle", "oldest"]


def test_two_sessions_never_take_the_same_work(tmp_path):
    _left_behind(tmp_path / "recovery")
    with _store(tmp_path) as one, _store(tmp_path) as other:
        (first,), (second,) = one.left().works, other.left().works
        one.restore(first)
        with pytest.raises(UserProblem, match="another window took it or gave it up"):
            other.restore(second)
        assert other.left().works == ()


def test_work_that_was_given_up_is_gone(tmp_path):
    _left_behind(tmp_path / "recovery")
    with _store(tmp_path) as store:
        store.give_up(store.left().works[0])
        assert store.left().works == ()


def test_work_that_its_file_holds_already_is_not_offered(tmp_path):
    path = tmp_path / "cap.hat.toml"
    file = _left_behind(tmp_path / "recovery", path=path)
    save_design(LOCKSIDE, path)
    with _store(tmp_path) as store:
        assert store.left().works == ()
        assert not file.exists()


def test_work_tells_whether_its_file_was_changed_since(tmp_path):
    path = tmp_path / "cap.hat.toml"
    before = save_design(LOCKSIDE, path)
    _left_behind(tmp_path / "recovery", replace(LOCKSIDE, title="edited"), path=path, based_on=before)
    with _store(tmp_path) as store:
        assert [work.has_file_changed for work in store.left().works] == [False]
        save_design(replace(LOCKSIDE, title="by another"), path)
        (work,) = store.left().works
        assert work.has_file_changed
        restored = store.restore(work)
        with pytest.raises(UserProblem, match="something else has changed the file"):
            save_design(restored.design, path, expected=restored.based_on)


# --- what goes wrong


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"\n\n\n",
        b"# a\n# {}\n",
        b"# a\n# not json\nb = 1\n",
        b"# a\n# " + b"[" * 100_000 + b"\n",
        b"# a\n# [1]\n",
        b'# a\n# {"version": "1"}\n',
        b"# a\n# " + b"9" * 5000 + b"\n",
        with_note(_note(), design_to_text(LOCKSIDE))[:-9],
        with_note(_note(), design_to_text(LOCKSIDE)).replace(b".x.x", b".x.."),
        with_note(_note(), design_to_text(LOCKSIDE)).replace(b"+00:00", b""),
        b"\xff\xfe" * 3000,
    ],
)
def test_a_broken_file_is_told_and_put_aside_and_the_rest_is_offered(tmp_path, data):
    (tmp_path / "0123-1.hat.toml").write_bytes(data)
    _left_behind(tmp_path)
    with RecoveryStore(tmp_path) as store:
        found = store.left()
        assert [work.title for work in found.works] == ["Lockside"]
        (problem,) = found.problems
        assert "it was put aside there, and can be mended by hand" in str(problem)
        assert store.left().problems == ()
    (aside,) = (tmp_path / BROKEN).iterdir()
    assert aside.read_bytes() == data


def test_work_that_can_be_written_but_not_read_is_put_aside_with_its_text(tmp_path):
    unreadable = chart("A | .", lots={"A": lot("oat", yarn="gone")})
    _left_behind(tmp_path, unreadable)
    with RecoveryStore(tmp_path) as store:
        with pytest.raises(UserProblem, match="there is no yarn 'gone' here"):
            store.restore(store.left().works[0])
        assert store.left().works == ()
    (aside,) = (tmp_path / BROKEN).iterdir()
    assert design_to_text(unreadable).encode() in aside.read_bytes()


@pytest.mark.parametrize("version", ["VERSION", "NEWEST"])
def test_work_of_a_newer_program_is_told_and_left_where_it_is(tmp_path, monkeypatch, version):
    with monkeypatch.context() as newer:
        newer.setattr(recovery_file, version, 2)
        file = _left_behind(tmp_path)
    with RecoveryStore(tmp_path) as store:
        found = store.left()
        assert found.works == ()
        assert [str(problem) for problem in found.problems] == [
            f"{file}: it was kept by a newer Chartmaker; it is left as it is"
        ]
    assert file.exists()


def test_a_folder_that_cannot_be_made_is_told(tmp_path):
    (tmp_path / "taken").write_text("")
    with pytest.raises(UserProblem, match="this folder cannot be made"):
        RecoveryStore(tmp_path / "taken" / "recovery")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no pipes among files elsewhere")
def test_a_pipe_in_the_folder_does_not_hang_the_program(tmp_path):
    os.mkfifo(tmp_path / "0123-1.hat.toml")
    with RecoveryStore(tmp_path) as store:
        assert len(store.left().problems) == 1


# --- bounds


def _ago(**span):
    return dt.datetime.now(dt.UTC) - dt.timedelta(**span)


def _put(folder, name, note):
    (folder / name).write_bytes(with_note(note, design_to_text(LOCKSIDE)))


def test_the_store_keeps_no_more_than_its_bounds(tmp_path):
    for number in range(MOST_LEFT + 3):
        _put(tmp_path, f"{number:016x}-1.hat.toml", _note(title=str(number), kept_at=_ago(hours=number)))
    _put(tmp_path, "f-1.hat.toml", _note(title="ancient", kept_at=_ago(seconds=OLDEST_S + 60)))
    with RecoveryStore(tmp_path) as store:
        titles = [work.title for work in store.left().works]
    assert titles == [str(number) for number in range(MOST_LEFT)]
    assert len(list(tmp_path.glob("*.hat.toml"))) == MOST_LEFT


def test_old_broken_files_and_leftovers_of_killed_sessions_go(tmp_path):
    (tmp_path / BROKEN).mkdir()
    old, young = tmp_path / BROKEN / "old", tmp_path / BROKEN / "young"
    for file in (old, young, tmp_path / "0123.lock", tmp_path / "0123-1.hat.toml.new"):
        file.write_text("")
    long_ago = _ago(seconds=OLDEST_S + 60).timestamp()
    os.utime(old, (long_ago, long_ago))
    with RecoveryStore(tmp_path) as store:
        store.left()
        assert sorted(tmp_path.rglob("*")) == sorted([tmp_path / BROKEN, young, tmp_path / f"{store.session}.lock"])


def test_what_a_living_session_is_writing_is_not_cleared_away(tmp_path):
    with RecoveryStore(tmp_path) as living, RecoveryStore(tmp_path) as other:
        writing = tmp_path / f"{living.session}-1.hat.toml.new"
        writing.write_text("half")
        other.left()
        assert writing.exists()
        assert (tmp_path / f"{living.session}.lock").exists()


def test_a_session_whose_new_lock_is_tidied_away_begins_again(tmp_path, monkeypatch):
    names = iter(["taken", "free"])
    monkeypatch.setattr(recovery.secrets, "token_hex", lambda _: next(names))
    held = Lock(tmp_path / "taken.lock")
    with RecoveryStore(tmp_path) as store:
        assert store.session == "free"
    held.release()


# --- the file


def fingerprints():
    whole = st.integers(0, 2**63)
    return st.builds(Fingerprint, size=whole, mtime_ns=whole, inode=whole, digest=texts(), is_settled=st.booleans())


@given(
    design=designs(),
    title=texts() | st.characters(categories=["Cs"]),  # two halves would rightly come back as one character
    path=st.none() | texts().map(lambda name: Path("/") / name),
    based_on=st.none() | fingerprints(),
    kept_at=st.datetimes(timezones=st.just(dt.UTC)),
)
def test_a_note_and_a_design_come_back_as_they_were(design, title, path, based_on, kept_at):
    note = _note(title=title, path=path, based_on=based_on, kept_at=kept_at)
    text = design_to_text(design)
    assert without_note(with_note(note, text), "") == (note, text.encode())


@given(st.integers(0, 2000), st.binary(min_size=1, max_size=3))
def test_a_file_that_is_changed_anywhere_is_refused_or_reads_the_same_design(place, other):
    whole = with_note(_note(), design_to_text(LOCKSIDE))
    place %= len(whole)
    changed = whole[:place] + other + whole[place + len(other) :]
    try:
        _, body = without_note(changed, "")
    except UserProblem:
        return
    assert body == design_to_text(LOCKSIDE).encode()
