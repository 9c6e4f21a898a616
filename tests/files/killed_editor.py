"""A program that edits, keeps and saves one design without end, for tests to kill; it imports no test library.

Each state carries its number and a checksum of its cells in its title, so that whoever finds it can tell how far the
editing had come, and that nothing of it is mixed with another state.
"""

import io
import os
import random
import time
import zlib
from dataclasses import replace
from multiprocessing.connection import Connection
from pathlib import Path
from typing import IO, Any

from chartmaker.files.backups import Backups
from chartmaker.files.claims import claim
from chartmaker.files.design_writing import save_design
from chartmaker.files.opening import open_design
from chartmaker.files.recovery import RecoveryStore
from chartmaker.files.saving import Disk
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceSetting, paint
from chartmaker.model.palette import Palette
from tests.benchmarks.large_design import large_design

DESIGN = "towpath.hat.toml"
SAVE_EVERY = 20
"""Edits, about, from one save to the next."""
WAIT_S = 0.001
_OPEN = io.open
PAUSE_S = 0.0005
"""A hand is slower; without a pause the log would fill."""


def first_state() -> Design:
    """Give state 0; without lots, which would take the time that a short life has for editing."""
    return _numbered(replace(large_design(stitches=72, rounds=60), colourways=(), palette=Palette()), 0)


def number_of(design: Design) -> int:
    """Give the number of a state; its cells must be the ones that state had."""
    number, checksum = design.title.split()
    assert int(checksum) == _checksum(design)
    return int(number)


def edit_until_killed(folder: Path, seed: int, log: Connection, keep_after_s: float, disk: str) -> None:
    """Open the design, take up what the last one left, and go on; tell every step before and after it.

    `disk` is "real"; "even", on which to open a file for writing and to force it out take a millisecond each, so that
    kills fall between the steps as often as into any; or "in place", even too, on which a file is emptied and filled
    again. What a killed program has written is there without being forced out.
    """
    log.send("begun")
    if disk != "real":
        os.fsync = lambda _handle: time.sleep(WAIT_S)
        io.open = _open_and_wait
    if disk == "in place":
        Disk.move_over = _write_in_place
    Editor(folder, random.Random(seed), log, keep_after_s).run()


class Editor:
    """What the window does with a design, without the window."""

    def __init__(self, folder: Path, chance: random.Random, log: Connection, keep_after_s: float) -> None:
        self.path = folder / DESIGN
        self.chance = chance
        self.log = log
        self.keep_after_s = keep_after_s
        self.store = RecoveryStore(folder / "state" / "recovery")
        self.backups = Backups(folder / "state" / "backups")
        self.claim = claim(self.path, folder / "state" / "claims")
        assert self.claim.is_ours
        self.waiting_since: float | None = None

    def run(self) -> None:
        self._open()
        while True:
            self._edit()
            if self.chance.randrange(SAVE_EVERY) == 0:
                self._save()
            elif self.waiting_since is not None and time.monotonic() - self.waiting_since >= self.keep_after_s:
                self._keep()
            time.sleep(PAUSE_S)

    def _tell(self, step: str) -> None:
        self.log.send((step, self.number, time.monotonic()))

    def _open(self) -> None:
        opened = open_design(self.path)
        self.design, self.fingerprint, self.draft = opened.design, opened.fingerprint, self.store.draft()
        for work in self.store.left().works:
            if work.has_file_changed:  # it was saved since, for nobody else writes here
                self.store.give_up(work)
                continue
            restored = self.store.restore(work)
            self.design, self.draft = restored.design, restored.draft
        self.number = number_of(self.design)
        self._tell("opened")

    def _edit(self) -> None:
        rounds = self.design.bands[0].rounds
        places = [(self.chance.randrange(len(rounds)), self.chance.randrange(len(rounds[0]))) for _ in range(5)]
        painted = paint(self.design, band=0, cells={place: self.chance.randrange(2) for place in places}, text="Draw")
        self.number += 1
        self.design = _numbered(painted.applied_to(self.design), self.number)
        self.waiting_since = self.waiting_since or time.monotonic()
        self._tell("edited")

    def _keep(self) -> None:
        self._tell("keeping")
        self.draft.keep(self.design, path=self.path, based_on=self.fingerprint)
        self.waiting_since = None
        self._tell("kept")

    def _save(self) -> None:
        self._tell("saving")
        self.backups.keep(self.path)
        self.fingerprint = save_design(self.design, self.path, expected=self.fingerprint)
        self.draft.forget()
        self.waiting_since = None
        self._tell("saved")
        self.backups.keep(self.path)


def _numbered(design: Design, number: int) -> Design:
    title = f"{number} {_checksum(design)}"
    return ReplaceSetting("title", design.title, title, "Name").applied_to(design)


def _checksum(design: Design) -> int:
    return zlib.crc32(b"".join(line.cells for _, line in design.rounds()))


def _open_and_wait(path: Path, mode: str = "r", *arguments: Any, **options: Any) -> IO[Any]:
    file = _OPEN(path, mode, *arguments, **options)
    if mode[0] in "wx":
        time.sleep(WAIT_S)
    return file


def _write_in_place(_disk: Disk, new: Path, old: Path) -> None:
    """Do what a program does that does not know better: empty the file and fill it again."""
    old.write_bytes(new.read_bytes())
    new.unlink()
