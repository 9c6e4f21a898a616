"""What the File menu does: new, open, save, print, export; unsaved work is asked about, problems are told once."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSettings, Qt, QTimer, Signal

from chartmaker.app.disk_changes import DiskChanges
from chartmaker.app.palette_filing import PaletteFiling
from chartmaker.app.recent_files import forget, recent_files, remember
from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.background import Background, Work
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.own_file import OwnFile
    from chartmaker.app.questions import Questions
    from chartmaker.files.fingerprint import Fingerprint
    from chartmaker.model.design import Design
    from chartmaker.model.palette import Palette

DESIGN_ENDING = ".hat.toml"
FOLDER_KEY = "folder"
PICTURE_WIDTH_PX = 1600
PALETTE_AFTER_MS = 100
"""The palette beside a design is read after the window has painted: it only offers further lots."""


class Filing(QObject):
    """Brings designs in and out; readers, writers and printers are imported when they are first used."""

    told = Signal(str)
    """Something that went well, for the status bar."""

    def __init__(
        self,
        document: OpenDesign,
        *,
        own_file: OwnFile,
        questions: Questions,
        background: Background,
        settings: QSettings,
    ) -> None:
        super().__init__()
        self.document = document
        self.own_file = own_file
        self.questions = questions
        self.background = background
        self.settings = settings
        self.changes = DiskChanges(self)
        self.place: Path | None = document.path
        """Where the design came from or was saved to, even where another window has that file."""
        self.palettes = PaletteFiling(self)
        own_file.told.connect(self.told)
        background.failed.connect(self.tell)

    # --- opening

    def first_design(self) -> Design:
        """Read the design that the window was started on; a new one where there is none, or it is refused and told."""
        from chartmaker.app.blank import blank_design

        if self.document.path is not None:
            try:
                design, self.document.path = self._taken(self.document.path)
            except (UserProblem, OSError) as problem:
                self.document.path = self.place = None
                self._tell_soon(problem)
            else:
                self.after_opening()
                return design
        return blank_design()

    def new(self) -> None:
        """Begin a bare design."""
        from chartmaker.app.blank import blank_design

        if self.may_leave_design():
            self.begin(blank_design())

    def begin(self, design: Design) -> None:
        """Take up a design that was just made, in place of the one at hand; the palette stays open."""
        self.own_file.leave()
        self.place = None
        self.document.replace(design, path=None, palette=self.document.palette)

    def open(self) -> None:
        """Ask for a design and open it."""
        if self.may_leave():
            path = self.questions.file_to_open(tr("Open a design"), kinds(tr("Designs"), "*.hat.toml"), self.folder)
            if path is not None:
                self._take(path)

    def open_recent(self, path: Path) -> None:
        """Open a design that was opened before."""
        if self.may_leave() and not self._take(path):
            forget(self.settings, path)

    def open_example(self, path: Path) -> None:
        """Show a copy of a design that came with the program, which is no file of the user's."""
        if self.may_leave():
            self.carefully(lambda: self._take_example(path))

    def _take_example(self, path: Path) -> None:
        from chartmaker.files.opening import open_design, open_palette
        from chartmaker.files.palette_reading import palette_beside

        design = open_design(path).design
        beside = palette_beside(design, path)
        palette = open_palette(beside).palette if beside else None
        self.own_file.leave()
        self.place = None
        self.document.replace(replace(design, palette_file=""), path=None, palette=palette)
        self.told.emit(tr("This is a copy of the example: save it under a name of your own to keep changes"))

    def open_palette(self) -> None:
        """Ask for a palette whose lots the letters may choose from too."""
        self.palettes.open()

    def recent(self) -> list[Path]:
        """Give the designs opened last."""
        return recent_files(self.settings)

    def _take(self, path: Path, *, palette: Palette | None = None) -> bool:
        def read() -> None:
            design, own = self._taken(path)
            self.document.replace(design, path=own, palette=palette)
            self.after_opening()

        return self.carefully(read)

    def _taken(self, path: Path) -> tuple[Design, Path | None]:
        """Read a design and take its file; without the file, and told, where another window has it.

        Raises UserProblem or OSError where it cannot be read; the file at hand stays this window's then.
        """
        from chartmaker.files.opening import open_design

        opened = open_design(path)
        own = self._own(path, opened.fingerprint)
        self.place = path
        return opened.design, own

    def _own(self, path: Path, fingerprint: Fingerprint) -> Path | None:
        """Give the path where the design may be saved to it, None where another window has it, which is told."""
        if self.own_file.take(path, fingerprint):
            return path
        what = tr("another window has this design open, so this is a copy")
        self._tell_soon(UserProblem(what, where=str(path), now=tr("save it under another name to keep changes")))
        return None

    def take_again(self) -> None:
        """Read the design's file anew, and let go what is in the window."""
        if self.document.path is not None:  # the palette at hand may have changes of its own
            self._take(self.document.path, palette=self.document.palette)

    def count_as_unsaved(self) -> None:
        """Let the design count as changed, since its file holds something else now."""
        self.document.stack.resetClean()

    def take_unsaved(self, design: Design, path: Path | None, based_on: Fingerprint | None) -> None:
        """Show work that its file does not hold; `based_on` is what the file was like when the work began."""
        if path is None or based_on is None:
            self.own_file.leave()
            self.show_unsaved(design, None)
        else:
            own = self._own(path, based_on)
            self.place = path
            self.show_unsaved(design, own)

    def show_unsaved(self, design: Design, path: Path | None) -> None:
        """Show a design as unsaved changes of a file, which is this window's already, or of none."""
        self.place = self.place if path is None else path
        self.document.replace(design, path=path, palette=None)
        self.document.stack.resetClean()
        self.after_opening()

    def open_copy(self) -> None:
        """Ask for a copy of one of the last saves, and show it as unsaved changes."""
        from chartmaker.app.earlier_copies import open_earlier_copy

        self.carefully(lambda: open_earlier_copy(self))

    def after_opening(self) -> None:
        """Remember the design's place, and read the palette beside it once the window has shown the design itself."""
        if self.place is None:
            return
        self._note_place(self.place)
        if self.document.is_appraised:
            self._take_palette_soon()
        else:
            self.document.appraised.connect(self._take_palette_soon, Qt.ConnectionType.SingleShotConnection)

    def _take_palette_soon(self) -> None:
        QTimer.singleShot(PALETTE_AFTER_MS, self, self._take_palette_beside)

    def _take_palette_beside(self) -> None:
        self.carefully(self.palettes.take_beside)

    # --- saving

    @property
    def name(self) -> str:
        """What the design is called before its title is known to anybody else."""
        return self.document.path.name if self.document.path else self._title

    @property
    def _title(self) -> str:
        title = self.document.design.title if self.document.is_here else ""
        return title or tr("New cap")

    def may_leave(self) -> bool:
        """Ask about unsaved work of the design and of its palette; whether both may be left."""
        return self.may_leave_design() and self.palettes.may_leave()

    def may_leave_design(self) -> bool:
        """Ask about unsaved work of the design; whether it may be left."""
        if self.document.stack.isClean():
            return True
        answer = self.questions.what_of_unsaved(self.name)
        return self.save() if answer == "save" else answer == "discard"

    def save(self) -> bool:
        """Save to the design's file, asking for one where it has none, and about a change by something else.

        Gives whether nothing is unsaved now.
        """
        if self.document.path is None:
            return self.save_as()
        if self.changes.allow_saving():
            return self._write(self.document.path)
        return self.document.stack.isClean()

    def save_as(self) -> bool:
        """Ask for a file and save there; whether it is saved now."""
        path = self.questions.file_to_save(tr("Save the design"), kinds(tr("Designs"), "*.hat.toml"), self._proposed)
        return path is not None and self._write(_with_ending(path, DESIGN_ENDING))

    @property
    def _proposed(self) -> Path:
        if self.document.path is not None:
            return self.document.path
        if self.place is not None:  # another window has that file
            return self.place.with_name(self.place.name.removesuffix(DESIGN_ENDING) + tr("-copy") + DESIGN_ENDING)
        return self.folder / (_file_stem(self.document.design.title) + DESIGN_ENDING)

    def _write(self, path: Path) -> bool:
        def write() -> None:
            self.own_file.save(self.document.design, path)
            self.document.path = self.place = path
            self.document.stack.setClean()
            self._note_place(path)
            self.told.emit(tr("Saved {0}").format(path.name))

        return self.carefully(write)

    # --- pictures, and whatever else is made

    def export_picture(self, view: str) -> None:
        """Ask for a file, and draw the fabric to it as the view shows it."""
        path = self.place_for(tr("Export a picture"), kinds(tr("PNG"), "*.png"), ".png")
        if path is None:
            return
        self.document.appraise_now()
        appraisal = self.document.appraisal

        def work(_step: Callable[[int, int], None]) -> bytes:
            from chartmaker.pictures.picture import picture
            from chartmaker.pictures.png import png_bytes

            return png_bytes(picture(appraisal, view, PICTURE_WIDTH_PX))

        self.make(tr("Drawing {0}").format(path.name), work, path)

    def make(self, text: str, work: Work, path: Path) -> None:
        """Have something made beside the window, and write it to a file, or each part to the file that it names."""

        def write(made: object) -> None:
            files = [(path, made)] if isinstance(made, bytes) else made
            if isinstance(files, list):
                self._write_files(files, asked_for=path)

        if self.background.is_busy:
            self.questions.tell(tr("One thing at a time: something is still being made. Stop it, or wait."))
        else:
            self.background.start(text, work, write)

    def _write_files(self, files: list[tuple[Path, bytes]], *, asked_for: Path) -> None:
        from chartmaker.files.saving import write_safely

        def write() -> None:
            for path, contents in files:
                write_safely(path, contents, keep_previous=False)

        there = [path.name for path, _ in files if path != asked_for and path.exists()]
        sentence = tr("{0} of these files are there already, {1} among them. They will be written anew.")
        if there and not self.questions.is_sure(sentence.format(len(there), there[0]), tr("Write them")):
            return
        if self.carefully(write):
            first, last = files[0][0].name, files[-1][0].name
            self.told.emit(tr("Wrote {0}").format(first if len(files) == 1 else tr("{0} to {1}").format(first, last)))

    def place_for(self, title: str, pattern: str, ending: str, *, others: tuple[str, ...] = ()) -> Path | None:
        """Ask where to write something made of the design; a name without its ending, or one of the others, gets it."""
        base = self.document.path
        stem = base.name.removesuffix(DESIGN_ENDING) if base else _file_stem(self.document.design.title)
        path = self.questions.file_to_save(title, pattern, (base.parent if base else self.folder) / (stem + ending))
        if path is None or path.suffix.lower() in others:
            return path
        return _with_ending(path, ending)

    # --- problems

    def tell(self, error: BaseException) -> None:
        """Tell what went wrong, in a sentence for the user's own problems and for faults of the program alike."""
        if isinstance(error, UserProblem):
            self.questions.tell(told(str(error)))
        elif isinstance(error, OSError):
            self.questions.tell(f"{error.filename or tr('the file')}: {error.strerror or error}.")
        else:
            text = tr("This is a fault in the program itself ({0}: {1}). The design is as it was; save it if you like.")
            self.questions.tell(text.format(type(error).__name__, error))

    def _tell_soon(self, error: BaseException) -> None:
        """Tell it once what is being done now is over: what is opened is shown before a dialog stands over it."""
        QTimer.singleShot(0, self, partial(self.tell, error))

    def carefully(self, step: Callable[[], object]) -> bool:
        """Run a step that reads or writes; whether it went well, any problem being told."""
        try:
            step()
        except (UserProblem, OSError) as problem:
            self.tell(problem)
            return False
        return True

    @property
    def folder(self) -> Path:
        """The folder that files were opened from or saved to last."""
        kept = self.settings.value(FOLDER_KEY, "")
        return Path(str(kept)) if kept else Path.home()

    def _note_place(self, path: Path) -> None:
        remember(self.settings, path)
        self.settings.setValue(FOLDER_KEY, str(path.absolute().parent))


def kinds(name: str, pattern: str) -> str:
    """Give what a dialog for files is to show."""
    return f"{name} ({pattern});;{tr('All files')} (*)"


def _file_stem(title: str) -> str:
    """Give a title as a file name without what file systems refuse."""
    kept = "".join(char if char.isalnum() else "-" for char in title.lower())
    return "-".join(part for part in kept.split("-") if part)[:60] or "hat"


def _with_ending(path: Path, ending: str) -> Path:
    if path.name.endswith(ending) or (ending == DESIGN_ENDING and path.suffix == ".toml"):
        return path
    return path.with_name(path.name + ending)
