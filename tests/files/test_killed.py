"""A program killed at any moment while editing, keeping and saving never loses the file, nor more than it promised."""

import multiprocessing
import random
import threading
import time
from collections import Counter
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import pytest

from chartmaker.files.backups import MOST_COPIES
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import save_design
from chartmaker.files.draft import KEEP_AFTER_S
from chartmaker.files.problems import FileRefused
from chartmaker.files.recovery import RecoveryStore
from tests.files.killed_editor import DESIGN, edit_until_killed, first_state, number_of

STORIES = 4
KILLS = 50
"""In each story; together 200."""
LONGEST_LIFE_S = 0.15
SHORT_KEEP_AFTER_S = 0.01
"""As the window's rule, at a hundredth of its time, so that a life of a tenth of a second has many turns of it."""
MOST_LOST_S = 2.0

METHOD = "forkserver" if "forkserver" in multiprocessing.get_all_start_methods() else "spawn"
CONTEXT = multiprocessing.get_context(METHOD)
if METHOD == "forkserver":
    CONTEXT.set_forkserver_preload(["pytest", "tests.files.killed_editor"])
TURN = threading.Lock()
"""To start a process is to look after all that have ended, which threads must not do at once."""


@dataclass
class Death:
    """What a killed editor had told, and what was found after it."""

    told: list[tuple[str, int, float]]
    killed_at: float
    in_file: int
    left: list[int]
    broken: list[str]
    """What cannot be read, of file and kept work; empty unless something is wrong."""

    @property
    def found(self) -> int:
        return max([self.in_file, *self.left])

    @property
    def confirmed(self) -> int:
        """The newest state that was said to be safe."""
        return max((number for step, number, _ in self.told if step in {"opened", "kept", "saved"}), default=0)

    @property
    def lost_s(self) -> float:
        """How much editing is gone: from the first lost edit to the kill."""
        lost = [moment for step, number, moment in self.told if step == "edited" and number > self.found]
        return self.killed_at - min(lost) if lost else 0.0

    @property
    def longest_step_s(self) -> float:
        moments = [moment for *_, moment in self.told] + [self.killed_at]
        return max((after - before for before, after in pairwise(moments)), default=0.0)

    @property
    def was_doing(self) -> str:
        return self.told[-1][0] if self.told else "starting"


class Running:
    """An editor at work in a folder."""

    def __init__(self, folder: Path, seed: int, *, keep_after_s: float, disk: str = "even") -> None:
        self.folder = folder
        self.log, theirs = CONTEXT.Pipe(duplex=False)
        arguments = (folder, seed, theirs, keep_after_s, disk)
        self.process = CONTEXT.Process(target=edit_until_killed, args=arguments, daemon=True)
        with TURN:
            self.process.start()
        theirs.close()

    def killed_after(self, life_s: float) -> Death:
        """Let it live for a while from its first word, listening; kill it; look at what is there."""
        assert self.log.recv() == "begun"
        end, told = time.monotonic() + life_s, []
        while (still := end - time.monotonic()) > 0:
            if self.log.poll(still):
                told.append(self.log.recv())
        self.process.kill()
        killed_at = time.monotonic()
        with TURN:
            self.process.join()
        assert self.process.exitcode < 0  # it ended by the kill, not by an error of its own
        told += _rest_of(self.log)
        self.log.close()
        return _inquest(self.folder, told, killed_at)


def _rest_of(log):
    rest = []
    try:
        while True:
            rest.append(log.recv())
    except EOFError:
        return rest


def _inquest(folder, told, killed_at):
    broken, in_file = [], 0
    try:
        in_file = number_of(read_design(folder / DESIGN))
    except FileRefused as problem:
        broken.append(str(problem))
    with RecoveryStore(folder / "state" / "recovery") as store:
        found = store.left()
        left = [number_of(read_design(work.file)) for work in found.works]
    broken += [str(problem) for problem in found.problems]
    return Death(told, killed_at, in_file, left, broken)


def _begun_in(folder):
    folder.mkdir(exist_ok=True)
    save_design(first_state(), folder / DESIGN)
    return folder


def _story(folder):
    """One design, edited by one program after another, each of them killed."""
    chance = random.Random(folder.name)
    deaths = []
    for seed in range(KILLS):
        running = Running(folder, seed, keep_after_s=SHORT_KEEP_AFTER_S)
        deaths.append(running.killed_after(chance.uniform(0, LONGEST_LIFE_S)))
        if deaths[-1].broken:  # nobody could go on from there
            break
    return deaths


@pytest.fixture(scope="module")
def stories(tmp_path_factory):
    """The deaths of each story, by its folder; the stories go on beside one another."""
    root = tmp_path_factory.mktemp("killed")
    folders = [_begun_in(root / f"story-{number}") for number in range(STORIES)]
    with ThreadPoolExecutor(STORIES) as pool:
        return dict(zip(folders, pool.map(_story, folders), strict=True))


@pytest.fixture(scope="module")
def deaths(stories):
    return [death for story in stories.values() for death in story]


def test_the_kills_fall_into_every_kind_of_step(deaths):
    assert len(deaths) == 200
    doing = Counter(death.was_doing for death in deaths)
    assert min(doing[step] for step in ("edited", "keeping", "saving")) >= 3, doing


def test_the_stories_go_on_from_one_kill_to_the_next(stories):
    assert sum(story[-1].found for story in stories.values()) > 2 * KILLS


def test_file_and_kept_work_are_whole_after_every_kill(deaths):
    assert [death.broken for death in deaths if death.broken] == []


def test_no_state_that_was_said_to_be_safe_is_lost_by_a_kill(deaths):
    assert [death for death in deaths if death.found < death.confirmed] == []


def test_no_state_is_lost_from_one_kill_to_the_next(stories):
    for story in stories.values():
        found = [death.found for death in story]
        assert found == sorted(found)


def test_a_kill_loses_no_more_than_the_time_an_edit_may_wait_and_the_step_under_way(deaths):
    late = [death for death in deaths if death.lost_s > SHORT_KEEP_AFTER_S + 2 * death.longest_step_s + 0.005]
    assert late == []


def test_kills_leave_no_growing_litter(stories):
    for folder in stories:
        with RecoveryStore(folder / "state" / "recovery") as store:
            store.left()
            assert len(list(store.folder.iterdir())) <= 2  # this session's lock, and at most the work that was left
        assert len(list((folder / "state" / "claims").iterdir())) == 1
        assert len(list(folder.glob("state/backups/*/*"))) <= MOST_COPIES + 1  # and one that was being written


def test_with_the_times_of_the_window_a_kill_loses_at_most_two_seconds(tmp_path):
    chance = random.Random(7)
    folders = [_begun_in(tmp_path / str(number)) for number in range(4)]
    editors = [Running(folder, seed, keep_after_s=KEEP_AFTER_S, disk="real") for seed, folder in enumerate(folders)]
    lives = [chance.uniform(1.5, 4.0) for _ in editors]
    with ThreadPoolExecutor(len(editors)) as pool:
        deaths = list(pool.map(Running.killed_after, editors, lives))
    assert [death.lost_s for death in deaths if death.lost_s > MOST_LOST_S] == []
    assert [death for death in deaths if death.found < death.confirmed] == []


def test_the_same_kills_tear_a_file_that_is_written_in_place(tmp_path):
    chance = random.Random(5)
    for seed in range(STORIES * KILLS):
        running = Running(_begun_in(tmp_path / str(seed)), seed, keep_after_s=0.0, disk="in place")
        if running.killed_after(chance.uniform(0, LONGEST_LIFE_S)).broken:
            return
    pytest.fail("no kill tore a file, so that the other tests of this module tell nothing")
