"""What is done with motifs at the chart: the shelf is read when first shown, motifs are held, laid in and saved."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QStandardPaths

from chartmaker.app.words import tr
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from PySide6.QtGui import QAction

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.app.motif_shelf import MotifShelf
    from chartmaker.app.questions import Questions
    from chartmaker.files.motif_reading import Shelf
    from chartmaker.model.design import Design
    from chartmaker.model.motif import Motif
    from chartmaker.model.round import Round

MOTIFS_VARIABLE = "CHARTMAKER_MOTIFS"
"""Names a folder to keep the user's motifs in, in place of the system's own place."""
ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def own_motifs_folder() -> Path:
    """Give the folder of the user's own motifs; it need not be there yet."""
    named = os.environ.get(MOTIFS_VARIABLE)
    if named:
        return Path(named)
    return Path(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation)) / "motifs"


class MotifDesk:
    """Works at the canvas's cursor; what is refused is told by the canvas's `refused`."""

    def __init__(self, canvas: ChartCanvas) -> None:
        self._canvas = canvas
        self._document = canvas.document
        self.actions: tuple[QAction, ...] = ()
        """Shown as buttons at the shelf's foot."""
        self.shelf: MotifShelf | None = None
        """None until it is first shown."""
        canvas.stamped.connect(self._tell_left_out)

    @property
    def motif(self) -> Motif | None:
        """The motif that actions are about: at the shelf's cursor, or else the one that was held last."""
        chosen = self.shelf.motif if self.shelf is not None else None
        return chosen or self._canvas.hand.motif

    def made_shelf(self) -> MotifShelf:
        """Give the shelf, made and read when it is first asked for."""
        if self.shelf is None:
            from chartmaker.app.motif_shelf import MotifShelf

            self.shelf = shelf = MotifShelf(self.actions)
            shelf.taken.connect(self.hold)
            shelf.looked.connect(self._canvas.hand_changed)
            self._canvas.cursor_moved.connect(self._follow)
            self._document.edited.connect(self._follow)
            self._document.replaced.connect(self._follow)
            self._follow()
            shelf.take_shelf(self._read())
        return self.shelf

    def hold(self) -> None:
        """Hold the stamp with the motif, and give the chart the keys; a shaped one is told to be laid in."""
        from chartmaker.model.stamping import stamp_hindrance

        motif = self.motif
        if motif is None:
            return
        if motif.is_shaped:
            self._canvas.refused.emit(stamp_hindrance(self._document.design.bands[self._band], motif))
            return
        self._take_up(motif)

    def hold_made(self, motif: Motif) -> None:
        """Hold the stamp with a motif that is not on the shelf, whose cursor rests on none then.

        Raises ValueError, with the sentence of the band at the cursor, where no band of the design can take it.
        """
        from chartmaker.model.stamping import stamp_hindrance

        bands = self._document.design.bands
        if all(stamp_hindrance(band, motif) for band in bands):
            raise ValueError(stamp_hindrance(bands[self._band], motif))
        if self.shelf is not None:
            self.shelf.list.setCurrentRow(-1)
        self._take_up(motif)

    def words_at(self, cell: tuple[int, int]) -> str:
        """Tell what keeps the motif that is held from being stamped whole at a cell; empty where nothing does."""
        hand = self._canvas.hand
        if not hand.holds_stamp or hand.motif is None:
            return ""
        from chartmaker.app.stamps import stamp_words

        return stamp_words(self._document.design, self._canvas.grid, cell, hand.motif)

    def _tell_left_out(self, cell: tuple[int, int]) -> None:
        """Tell how much of the motif that was set down at a cell had no room in the band."""
        from chartmaker.app.stamps import left_out_words, rounds_left_out

        motif = self._canvas.hand.motif
        if motif is not None:
            count = rounds_left_out(self._document.design, self._canvas.grid, cell, motif)
            self._canvas.told.emit(left_out_words(count, len(motif.rounds), is_done=True))

    def keep(self, rounds: tuple[Round, ...], name: str) -> Motif:
        """Save rounds among the user's motifs, under an id that nothing has yet.

        Raises UserProblem where that cannot be done, ValueError for what is no motif.
        """
        from chartmaker.files.motif_writing import save_motif
        from chartmaker.model.stamping import motif_of

        folder = own_motifs_folder()
        motif = motif_of(rounds, name=name, taken=_ids_taken(self._read(), folder))
        save_motif(motif, folder)
        if self.shelf is not None:
            self.shelf.take_shelf(self._read())
        return motif

    def toggle_snap(self) -> None:
        """Let tiles begin with the repeat, or where the pointer is."""
        self._canvas.hand.snaps = not self._canvas.hand.snaps
        self._canvas.hand_changed.emit()

    def lay_in(self) -> None:
        """Make the motif a band above the one at the cursor, in the letters of that one's last round, and go to it."""
        from chartmaker.model.edits import with_bands
        from chartmaker.model.stamping import as_band

        motif, design, below = self.motif, self._document.design, self._band
        if motif is None:
            return
        self._canvas.drop()
        bands = design.bands
        stitches = bands[below].stitches(len(bands[below].rounds) - 1)
        try:
            band = as_band(motif, stitches=stitches, letters=letters_above(design, below, motif.parts))
            name = motif.name.replace("&", "&&")
            edit = with_bands(design, (*bands[: below + 1], band, *bands[below + 1 :]), tr("Lay in {0}").format(name))
        except ValueError as refusal:
            self._canvas.refused.emit(str(refusal))
            return
        self._document.do(edit)
        row = self._canvas.grid.row_of(below + 1, 0)
        self._canvas.choose(range(row, row + 1))

    def save(self, questions: Questions) -> bool:
        """Ask for a name and save the block, or the rounds chosen, among the user's motifs; tell whether it is.

        What goes wrong is told by `questions` or `refused`.
        """
        from chartmaker.files.motif_writing import save_motif
        from chartmaker.knit.outline import chart_offsets
        from chartmaker.model.stamping import motif_from

        self._canvas.drop()
        blocks, design, folder = self._canvas.blocks, self._document.design, own_motifs_folder()
        block = blocks.selection or blocks.whole(self._canvas.chosen)
        name = questions.name_of_motif(design.bands[block.band].name)
        if not name:
            return False
        taken = _ids_taken(self._read(), folder)
        try:
            motif = motif_from(design, block, name=name, taken=taken, columns=chart_offsets)
            save_motif(motif, folder)
        except UserProblem as problem:
            questions.tell(str(problem))
            return False
        except ValueError as refusal:
            self._canvas.refused.emit(str(refusal))
            return False
        shelf = self.made_shelf()
        shelf.take_shelf(self._read())
        shelf.show_motif(motif.id)
        return True

    # --- upkeep

    def _take_up(self, motif: Motif) -> None:
        self._canvas.hand.motif = motif
        self._canvas.take_tool("stamp")
        self._canvas.setFocus()
        self._canvas.hover.show_at(self._canvas.current)

    @property
    def _band(self) -> int:
        """The band at the cursor."""
        return self._canvas.grid.rows[self._canvas.chosen[0]].band

    def _read(self) -> Shelf:
        from chartmaker.files.motif_reading import read_shelf

        return read_shelf(own_motifs_folder())

    def _follow(self) -> None:
        if self.shelf is not None:
            self.shelf.take_band(self._document.design.bands[self._band])
            self.shelf.take_gauge(self._document.design.gauge)


def letters_above(design: Design, band: int, count: int) -> str:
    """Give letters for a band above another: those of its last round, then of the design's other rounds, then new."""
    bands = design.bands
    lines = (bands[band].rounds[-1], *reversed(bands[band].rounds), *(line for _, line in design.rounds()))
    known = dict.fromkeys("".join(line.letters for line in lines) + ALPHABET)
    return "".join(known)[:count]


def _ids_taken(shelf: Shelf, folder: Path) -> set[str]:
    """Give the ids of motifs, and those of files that are none: a broken file is not to be written over either."""
    from chartmaker.files.motif_reading import ENDING

    files = folder.glob(f"*{ENDING}") if folder.is_dir() else ()
    return {motif.id for motif in shelf.motifs} | {path.name.removesuffix(ENDING) for path in files}
