"""Saving loses nothing, whichever step fails and wherever the program dies."""

import errno
import os
import stat
from dataclasses import replace

import pytest

from chartmaker.files.design_reading import design_from_text, read_design
from chartmaker.files.design_writing import design_to_text, save_design
from chartmaker.files.palette_reading import read_palette
from chartmaker.files.palette_writing import save_palette
from chartmaker.files.problems import UserProblem
from chartmaker.files.saving import Disk, save_checked, write_safely
from chartmaker.model.bounds import MOST_LOTS, MOST_READINGS
from chartmaker.model.palette import Palette
from chartmaker.model.reading import LabReading
from tests.builders import chart, lot

OLDEST, OLD, NEW = b"oldest", b"old and whole", b"new and whole"
STEPS = ("create", "set_mode", "duplicate", "move_over", "move_over", "settle_folder")


class FailingDisk(Disk):
    """A disk on which one step, counted from 0, fails as a full disk does, half done where it has halves."""

    def __init__(self, failing: int, problem: BaseException) -> None:
        self.failing = failing
        self.problem = problem
        self.taken: list[str] = []

    def _stands(self, step: str) -> bool:
        self.taken.append(step)
        return len(self.taken) - 1 != self.failing

    def create(self, path, data):
        if not self._stands("create"):
            path.write_bytes(data[: len(data) // 2])
            raise self.problem
        super().create(path, data)

    def set_mode(self, path, mode):
        if not self._stands("set_mode"):
            raise self.problem
        super().set_mode(path, mode)

    def duplicate(self, old, new):
        if not self._stands("duplicate"):
            new.write_bytes(old.read_bytes()[:3])
            raise self.problem
        super().duplicate(old, new)

    def move_over(self, new, old):
        if not self._stands("move_over"):
            raise self.problem
        super().move_over(new, old)

    def settle_folder(self, folder):
        if not self._stands("settle_folder"):
            raise self.problem
        super().settle_folder(folder)


class Killed(BaseException):
    """The end of the program: nothing that it would still do happens."""


class DyingDisk(FailingDisk):
    """A disk on which the program dies at one step, so that not even its cleaning up is done."""

    def __init__(self, failing: int) -> None:
        super().__init__(failing, Killed())

    def remove(self, path):
        raise Killed(path)


def _saved_twice(folder):
    path = folder / "cap.hat.toml"
    write_safely(path, OLDEST)
    write_safely(path, OLD)
    return path, folder / "cap.hat.toml.before"


def test_the_steps_of_a_save_are_the_ones_that_the_tests_break(tmp_path):
    path, _ = _saved_twice(tmp_path)
    disk = FailingDisk(-1, OSError())
    write_safely(path, NEW, disk=disk)
    assert tuple(disk.taken) == STEPS


def test_a_save_keeps_what_stood_there_before(tmp_path):
    path, before = _saved_twice(tmp_path)
    write_safely(path, NEW)
    assert (path.read_bytes(), before.read_bytes()) == (NEW, OLD)
    assert sorted(tmp_path.iterdir()) == [path, before]


def test_a_save_of_what_stands_there_already_keeps_the_copy_before(tmp_path):
    path, before = _saved_twice(tmp_path)
    write_safely(path, OLD)
    assert (path.read_bytes(), before.read_bytes()) == (OLD, OLDEST)


def test_output_that_can_be_made_again_leaves_no_copy(tmp_path):
    path = tmp_path / "cap.pdf"
    write_safely(path, OLD, keep_previous=False)
    write_safely(path, NEW, keep_previous=False)
    assert list(tmp_path.iterdir()) == [path]
    assert path.read_bytes() == NEW


@pytest.mark.parametrize("step", range(len(STEPS) - 1))
@pytest.mark.parametrize(
    ("number", "sentence"), [(errno.ENOSPC, "no space left on device"), (errno.EROFS, "read-only file system")]
)
def test_a_step_that_fails_leaves_the_old_file_whole_and_tells_one_sentence(tmp_path, step, number, sentence):
    path, before = _saved_twice(tmp_path)
    with pytest.raises(UserProblem) as caught:
        write_safely(path, NEW, disk=FailingDisk(step, OSError(number, os.strerror(number))))
    assert path.read_bytes() == OLD
    assert before.read_bytes() in (OLDEST, OLD)
    assert sorted(tmp_path.iterdir()) == [path, before]
    now = "what stood there is as it was; save under another name or in another place"
    assert str(caught.value) == f"{path}: it could not be saved: {sentence}; {now}"


def test_a_folder_that_does_not_settle_is_told_and_the_new_file_is_whole(tmp_path):
    path, before = _saved_twice(tmp_path)
    disk = FailingDisk(len(STEPS) - 1, OSError(errno.EIO, "Input/output error"))
    with pytest.raises(UserProblem, match="it was saved, but the disk does not confirm it: input/output error"):
        write_safely(path, NEW, disk=disk)
    assert (path.read_bytes(), before.read_bytes()) == (NEW, OLD)


@pytest.mark.parametrize("step", range(len(STEPS)))
def test_a_program_killed_at_any_step_leaves_whole_files_under_both_names(tmp_path, step):
    path, before = _saved_twice(tmp_path)
    with pytest.raises(Killed):
        write_safely(path, NEW, disk=DyingDisk(step))
    assert path.read_bytes() in (OLD, NEW)
    assert before.read_bytes() in (OLDEST, OLD)
    assert OLD in (path.read_bytes(), before.read_bytes())


@pytest.mark.parametrize("step", range(len(STEPS)))
def test_after_a_kill_the_next_save_works(tmp_path, step):
    path, before = _saved_twice(tmp_path)
    with pytest.raises(Killed):
        write_safely(path, NEW, disk=DyingDisk(step))
    write_safely(path, b"newest")
    assert path.read_bytes() == b"newest"
    assert before.read_bytes() in (OLD, NEW)


@pytest.mark.parametrize("step", range(3))
def test_a_first_save_that_fails_leaves_nothing(tmp_path, step):
    disk = FailingDisk(step, OSError(errno.ENOSPC, "No space left on device"))
    with pytest.raises(UserProblem):
        write_safely(tmp_path / "cap.hat.toml", NEW, disk=disk)
    left = [path.read_bytes() for path in tmp_path.iterdir()]
    assert left == ([] if disk.taken[-1] != "settle_folder" else [NEW])


def test_a_file_system_without_second_names_gets_a_copy(tmp_path, monkeypatch):
    def refuse(*_):
        raise PermissionError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(os, "link", refuse)
    path, before = _saved_twice(tmp_path)
    assert (path.read_bytes(), before.read_bytes()) == (OLD, OLDEST)


@pytest.mark.skipif(os.name != "posix", reason="permissions are another thing elsewhere")
def test_the_permissions_of_a_file_stay(tmp_path):
    path, before = _saved_twice(tmp_path)
    path.chmod(0o640)
    write_safely(path, NEW)
    assert stat.S_IMODE(path.stat().st_mode) == 0o640
    assert before.read_bytes() == OLD


@pytest.mark.skipif(os.name != "posix", reason="making a link takes rights elsewhere")
def test_a_link_is_followed_to_its_file(tmp_path):
    (tmp_path / "real").mkdir()
    path, _ = _saved_twice(tmp_path / "real")
    link = tmp_path / "link.hat.toml"
    link.symlink_to(path)
    write_safely(link, NEW)
    assert link.is_symlink()
    assert path.read_bytes() == NEW
    assert (tmp_path / "real" / "cap.hat.toml.before").read_bytes() == OLD


@pytest.mark.skipif(os.name != "posix", reason="making a link takes rights elsewhere")
def test_links_that_lead_in_a_circle_are_told(tmp_path):
    one, other = tmp_path / "one", tmp_path / "other"
    one.symlink_to(other)
    other.symlink_to(one)
    with pytest.raises(UserProblem, match="it could not be saved"):
        write_safely(one, NEW)


def test_a_protected_file_is_left_alone(tmp_path, monkeypatch):
    path, before = _saved_twice(tmp_path)
    monkeypatch.setattr(os, "access", lambda *_: False)  # the tests may run as a user whom no protection stops
    with pytest.raises(UserProblem, match="the file is protected against writing"):
        write_safely(path, NEW)
    assert (path.read_bytes(), before.read_bytes()) == (OLD, OLDEST)


def test_a_folder_a_pipe_and_a_folder_that_is_not_there_are_told(tmp_path):
    with pytest.raises(UserProblem, match="it could not be saved: this is a folder"):
        write_safely(tmp_path, NEW)
    with pytest.raises(UserProblem, match="it could not be saved: no such file or directory"):
        write_safely(tmp_path / "gone" / "cap.hat.toml", NEW)
    with pytest.raises(UserProblem, match="it could not be saved: embedded null"):
        write_safely(tmp_path / "a\0b", NEW)
    if hasattr(os, "mkfifo"):
        os.mkfifo(tmp_path / "pipe")
        with pytest.raises(UserProblem, match="it could not be saved: this is not an ordinary file"):
            write_safely(tmp_path / "pipe", NEW)


def test_a_saved_design_and_palette_open_as_they_were(tmp_path):
    design = chart("A B | x.x.", times=30, lots={"A": (80.0, 0.0, 10.0), "B": (30.0, 5.0, 10.0)}, title="Lockside 羊")
    save_design(design, tmp_path / "cap.hat.toml")
    save_palette(design.palette, tmp_path / "lots.palette.toml")
    assert read_design(tmp_path / "cap.hat.toml") == design
    assert read_palette(tmp_path / "lots.palette.toml") == design.palette


def test_the_name_of_a_palette_does_not_follow_its_lots_into_a_design(tmp_path):
    design = chart("A | .", lots={"A": lot("oat")})
    named = replace(design, palette=replace(design.palette, name="Allotment"))
    save_design(named, tmp_path / "cap.hat.toml")
    assert read_design(tmp_path / "cap.hat.toml") == design


def test_a_design_that_could_not_be_opened_again_is_not_saved(tmp_path):
    path = tmp_path / "cap.hat.toml"
    save_design(chart("A | ."), path)
    whole = path.read_bytes()
    with pytest.raises(UserProblem, match=r"lots\[1\].yarn: there is no yarn 'gone' here"):
        save_design(chart("A | .", lots={"A": lot("oat", yarn="gone")}), path)
    assert path.read_bytes() == whole


def test_what_does_not_read_back_the_same_is_not_saved(tmp_path):
    path = tmp_path / "cap.hat.toml"
    with pytest.raises(UserProblem, match="does not read back the same, so nothing was saved"):
        save_checked(
            chart("A | ."), path, write=lambda design: design_to_text(replace(design, title="x")), read=design_from_text
        )
    assert not path.exists()


def test_half_a_character_is_told_and_nothing_is_saved(tmp_path):
    with pytest.raises(UserProblem, match="half a character"):
        save_design(chart("A | .", title="\ud83e"), tmp_path / "cap.hat.toml")
    assert not list(tmp_path.iterdir())


def test_a_palette_too_large_to_open_again_is_not_saved(tmp_path):
    notes = "n" * 20_000
    lots = {letter: lot(f"lot-{letter}", name=notes) for letter in "ABCDEFGHIJKLMNOPQRSTUVWXYZ"}
    palette = chart("A | .", lots=lots).palette
    many = replace(palette, lots=tuple(replace(palette.lots[0], id=f"{n}" + notes[:-5]) for n in range(400)))
    with pytest.raises(UserProblem, match="it would be larger than 8 MB; take lots or readings out of it"):
        save_palette(many, tmp_path / "lots.palette.toml")
    assert not list(tmp_path.iterdir())


def test_a_palette_with_as_many_lots_and_readings_as_may_be_saves_and_opens(tmp_path):
    readings = tuple(LabReading(lab=(float(n), 1.5, -2.25)) for n in range(MOST_READINGS))
    palette = Palette(lots=tuple(lot(f"lot-{n}", readings=readings) for n in range(MOST_LOTS)))
    save_palette(palette, tmp_path / "lots.palette.toml")
    assert read_palette(tmp_path / "lots.palette.toml") == palette
