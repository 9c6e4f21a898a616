"""The file of the design in the window: the claim on it, what it was like when last seen, copies of its saves."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from chartmaker.app.words import tr
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from pathlib import Path

    from chartmaker.files.backups import SavedCopy
    from chartmaker.files.claims import Claim
    from chartmaker.files.fingerprint import Fingerprint, Standing
    from chartmaker.model.design import Design
    from chartmaker.model.palette import Palette


@dataclass(frozen=True, slots=True)
class Change:
    """What something else has done to the file."""

    standing: Standing
    now: Fingerprint | None
    """What it is like now; None where it is gone, or no file that a design could be in."""

    @property
    def mark(self) -> str:
        """Give a text that is another for every other change."""
        return self.now.digest if self.now else self.standing


class OwnFile(QObject):
    """Where the design is saved to. Without a folder for the program's state nothing is claimed and nothing copied."""

    told = Signal(str)
    """What could not be done and need not stop anybody, for the status bar."""

    def __init__(self, state: Path | None) -> None:
        super().__init__()
        self.state = state
        self._claim: Claim | None = None
        self._path: Path | None = None
        self._is_known_gone = False
        self.fingerprint: Fingerprint | None = None
        """What the file was like when it was opened or saved; None where there is none, or it is not known."""

    def take(self, path: Path, fingerprint: Fingerprint) -> bool:
        """Take the file of a design that was opened; whether this window may save to it, as no other has it open."""
        claim = self._claim_on(path)
        if claim is not None and not claim.is_ours:
            self.leave()
            return False
        self._hold(path, claim, fingerprint)
        return True

    def leave(self) -> None:
        """Let others have the file; the design in the window has none of its own then."""
        if self._claim is not None:
            self._claim.release()
        self._claim = self._path = self.fingerprint = None
        self._is_known_gone = False

    def save(self, thing: Design | Palette, path: Path) -> None:
        """Save what the file holds, and keep a copy of the save; the file is this window's from then on.

        Raises UserProblem where it cannot be written or another window has it open, and ChangedMeanwhile where
        something else has changed it; the file is then as it was.
        """
        claim = self._claim_on(path)
        if claim is not None and not claim.is_ours:
            what = tr("it was not saved: another window has this design open")
            raise UserProblem(what, where=str(path), now=tr("save it under another name"))
        expected = self.fingerprint if self._is_held(path) else None
        try:
            self._keep_copy(path)
            fingerprint = self._written(thing, path, expected)
        except BaseException:
            if claim is not None and claim is not self._claim:
                claim.release()
            raise
        self._hold(path, claim, fingerprint)
        self._keep_copy(path)

    def change(self) -> Change | None:
        """Look at the file; None where it is as it was, or cannot be looked at, which saving will tell."""
        from chartmaker.files.fingerprint import standing_of

        if self._path is None:
            return None
        try:
            if self.fingerprint is not None:
                standing = standing_of(self._path, self.fingerprint)
                return None if standing == "same" else Change(standing, _as_it_is(self._path))
            is_back = self._is_known_gone and self._path.exists()
        except (UserProblem, OSError):
            return None
        return Change("changed", _as_it_is(self._path)) if is_back else None

    def accept(self, change: Change) -> None:
        """Take a change for known: the next save goes over what stands there now, and over nothing later."""
        self.fingerprint = change.now
        self._is_known_gone = change.now is None

    def copies(self, path: Path) -> tuple[SavedCopy, ...]:
        """List the copies of a design's last saves, newest first; none without a folder for them."""
        from chartmaker.files.backups import Backups

        return () if self.state is None else Backups(self.state / "backups").of(path)

    def _written(self, thing: Any, path: Path, expected: Fingerprint | None) -> Fingerprint:
        from chartmaker.files.design_writing import save_design

        return save_design(thing, path, expected=expected)

    def _keep_copy(self, path: Path) -> None:
        from chartmaker.files.backups import Backups

        if self.state is None:
            return
        try:
            Backups(self.state / "backups").keep(path)
        except UserProblem as problem:
            self.told.emit(str(problem))

    def _claim_on(self, path: Path) -> Claim | None:
        """Give the claim on a file, the present one where it is this file's; None where nothing can be claimed."""
        from chartmaker.files.claims import claim

        if self.state is None:
            return None
        if self._claim is not None and self._is_held(path):
            return self._claim
        try:
            return claim(path, self.state / "claims")
        except UserProblem as problem:
            self.told.emit(str(problem))
            return None

    def _is_held(self, path: Path) -> bool:
        from chartmaker.files.claims import path_key

        return self._path is not None and path_key(self._path) == path_key(path)

    def _hold(self, path: Path, claim: Claim | None, fingerprint: Fingerprint) -> None:
        if self._claim is not None and self._claim is not claim:
            self._claim.release()
        self._claim, self._path, self.fingerprint = claim, path, fingerprint
        self._is_known_gone = False


class PaletteFile(OwnFile):
    """Where the palette is saved to; it is never claimed, since several designs share one, each in its window."""

    def _written(self, thing: Any, path: Path, expected: Fingerprint | None) -> Fingerprint:
        from chartmaker.files.palette_writing import save_palette

        return save_palette(thing, path, expected=expected)

    def _keep_copy(self, path: Path) -> None:
        """Keep no copy but the last, which a save leaves beside the file."""

    def _claim_on(self, _path: Path) -> Claim | None:
        return None


def _as_it_is(path: Path) -> Fingerprint | None:
    from chartmaker.files.fingerprint import fingerprint_of

    try:
        return fingerprint_of(path)
    except UserProblem:
        return None
