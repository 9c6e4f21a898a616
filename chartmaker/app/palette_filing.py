"""What the window does with the file of its palette: open, new, save; unsaved work is asked about."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING

from chartmaker.app.disk_changes import DiskChanges
from chartmaker.app.open_palette import OpenPalette
from chartmaker.app.own_file import PaletteFile
from chartmaker.app.words import tr
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from chartmaker.app.filing import Filing
    from chartmaker.app.questions import Questions

PALETTE_ENDING = ".palette.toml"


class PaletteFiling:
    """Brings palettes in and out; several windows may have one open, and a save asks where another was quicker."""

    def __init__(self, filing: Filing) -> None:
        self._filing = filing
        self.open_palette = OpenPalette(filing.document)
        self.own_file = PaletteFile(filing.own_file.state)
        self.own_file.told.connect(filing.told)
        self.open_palette.changed.connect(self._follow)
        self.changes = DiskChanges(self)

    @property
    def questions(self) -> Questions:
        """Who asks the user."""
        return self._filing.questions

    @property
    def name(self) -> str:
        """What the palette is called when it is asked about."""
        document = self.open_palette
        if document.path is not None:
            return document.path.name
        return document.palette.name or tr("The new palette")

    @property
    def is_named_by_design(self) -> bool:
        """Whether the design names this palette, so that it is opened with the design."""
        from chartmaker.files.claims import path_key

        place, path, document = self._filing.place, self.open_palette.path, self._filing.document
        if place is None or path is None or not document.is_here or not document.design.palette_file:
            return False
        try:
            return path_key(place.parent / document.design.palette_file) == path_key(path)
        except UserProblem:  # no possible path
            return False

    def name_from_design(self) -> str:
        """Give how the design names the palette: from its own folder, where they share a disk."""
        place, path = self._filing.place, self.open_palette.path
        if place is None or path is None:
            return ""
        folder, whole = place.absolute().parent, path.absolute()
        try:
            return Path(os.path.relpath(whole, folder)).as_posix()
        except ValueError:  # on another disk
            return whole.as_posix()

    def open(self) -> None:
        """Ask for a palette whose lots the letters may choose from too."""
        if not self.may_leave():
            return
        path = self.questions.file_to_open(tr("Open a palette"), kinds(), self._filing.folder)
        if path is not None and self._filing.carefully(lambda: self.take(path)):
            palette = self.open_palette.palette
            self._filing.told.emit(
                tr("{0} lots of {1} are at hand").format(len(palette.lots), palette.name or path.name)
            )

    def new(self) -> None:
        """Begin an empty palette."""
        from chartmaker.model.palette import Palette

        if self.may_leave():
            self.open_palette.take(Palette(), None)
            self._filing.told.emit(tr("A new palette: add lots, baths and yarns, then save it"))

    def take(self, path: Path) -> None:
        """Read a palette and take its file.

        Raises UserProblem or OSError where it cannot be read; the palette at hand stays then.
        """
        from chartmaker.files.opening import open_palette

        opened = open_palette(path)
        self.own_file.take(path, opened.fingerprint)
        self.open_palette.take(opened.palette, path)

    def take_beside(self) -> None:
        """Take the palette that the design names, if there is one and none is being worked on.

        Raises UserProblem where it is there and cannot be read.
        """
        from chartmaker.files.palette_reading import palette_beside

        place = self._filing.place
        path = place and palette_beside(self._filing.document.design, place)
        if path and not self.open_palette.is_modified:
            self.take(path)
            self._tell_stale()

    def _tell_stale(self) -> None:
        from chartmaker.model.copies import stale_copies

        stale = len(stale_copies(self._filing.document.design, self.open_palette.palette))
        if stale:
            text = tr("{0} of the design's lots differ from the palette: the Lots page shows in what")
            self._filing.told.emit(text.format(stale))

    def _follow(self) -> None:
        """Let the file go with the palette that was in it: nobody is asked about changes of it any more."""
        if self.open_palette.path is None:
            self.own_file.leave()

    def take_again(self) -> None:
        """Read the palette's file anew, and let go what is in the window."""
        path = self.open_palette.path
        if path is not None:
            self._filing.carefully(lambda: self.take(path))

    def count_as_unsaved(self) -> None:
        """Let the palette count as changed, since its file holds something else now."""
        self.open_palette.stack.resetClean()

    def may_leave(self) -> bool:
        """Ask about unsaved work; whether the palette at hand may be left."""
        if not self.open_palette.is_modified:
            return True
        answer = self.questions.what_of_unsaved(self.name)
        return self.save() if answer == "save" else answer == "discard"

    def save(self) -> bool:
        """Save to the palette's file, asking for one where it has none, and about a change by something else.

        Gives whether nothing is unsaved now.
        """
        path = self.open_palette.path
        if path is None:
            return self.save_as()
        if self.changes.allow_saving():
            return self._write(path)
        return not self.open_palette.is_modified

    def save_as(self) -> bool:
        """Ask for a file and save there; whether it is saved now."""
        document = self.open_palette
        proposed = document.path or self._filing.folder / (_stem(document.palette.name) + PALETTE_ENDING)
        path = self.questions.file_to_save(tr("Save the palette"), kinds(), proposed)
        if path is None:
            return False
        return self._write(path if path.suffix == ".toml" else path.with_name(path.name + PALETTE_ENDING))

    def _write(self, path: Path) -> bool:
        def write() -> None:
            document = self.open_palette
            self.own_file.save(document.palette, path)
            document.path = path
            document.stack.setClean()
            document.changed.emit()
            self._filing.told.emit(tr("Saved {0}").format(path.name))

        return self._filing.carefully(write)


def kinds() -> str:
    """Give the kinds of file that a dialog offers for palettes."""
    return f"{tr('Palettes')} (*.palette.toml);;{tr('All files')} (*)"


def _stem(name: str) -> str:
    kept = "".join(char if char.isalnum() else "-" for char in name.lower())
    return "-".join(part for part in kept.split("-") if part)[:60] or "lots"
