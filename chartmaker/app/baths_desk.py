"""Works on the dye pot: plans this design with others, writes down what was dyed, and keeps what is at hand."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.app.filing import Filing
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.open_palette import OpenPalette
    from chartmaker.appraisal import Appraisal
    from chartmaker.dye.dye_plan import DyePlan
    from chartmaker.dye.plan import BathPlan
    from chartmaker.dye.recording import Recorded
    from chartmaker.model.bath_record import BathRecord
    from chartmaker.model.design import Design
    from chartmaker.model.palette import Bath, Lot, Palette


@dataclass(slots=True)
class Companion:
    """Another design that is planned together with the one in the window."""

    path: Path
    design: Design
    appraisal: Appraisal | None = None
    with_palette: Palette | None = None
    """The palette that its appraisal and its copies were brought up to date with."""


class BathsDesk(QObject):
    """Each change of the palette is one step of its history; the design's copies follow as one step of its own."""

    changed = Signal()
    """Another design is planned along, or one no longer."""
    refused = Signal(str)
    """What could not be done, as a sentence."""
    recorded = Signal(str, str)
    """The id of a bath that is on record now, and what came of it, as a sentence."""

    def __init__(self, filing: Filing, parent: QObject) -> None:
        super().__init__(parent)
        self._filing = filing
        self.companions: list[Companion] = []
        self.document.replaced.connect(self._leave_own)

    @property
    def document(self) -> OpenDesign:
        """The design in the window."""
        return self._filing.document

    @property
    def open_palette(self) -> OpenPalette:
        """The palette, with the one door for changes to it."""
        return self._filing.palettes.open_palette

    @property
    def at_hand(self) -> Palette:
        """All that is known of lots, baths, yarns and the store: the palette's, then the design's own copies."""
        return self.open_palette.palette.followed_by(self.document.design.palette)

    # --- planning

    def plan(self) -> DyePlan:
        """Plan what this design and its companions are short of, from weights on hand as they are now."""
        from chartmaker.planning import plan_for

        return plan_for([self.document.appraisal, *map(self._appraised, self.companions)])

    def add_design(self) -> None:
        """Ask for another design's file, and plan it along."""
        kinds = tr("Designs") + " (*.hat.toml)"
        path = self._filing.questions.file_to_open(tr("Plan another design along"), kinds, self._filing.folder)
        if path is not None:
            self.plan_along(path)

    def plan_along(self, path: Path) -> None:
        """Plan another design along; one that cannot be read, or is here already, is refused."""
        from chartmaker.files.design_reading import read_design

        known = [companion.path for companion in self.companions]
        if path.resolve() in {each.resolve() for each in (*known, *filter(None, [self.document.path]))}:
            self.refused.emit(tr("{0} is planned along already.").format(path.name))
            return
        try:
            self.companions.append(Companion(path, read_design(path)))
        except UserProblem as problem:
            self._filing.questions.tell(str(problem))
            return
        self.changed.emit()

    def leave_out(self, companion: Companion) -> None:
        """Plan without a design."""
        self.companions.remove(companion)
        self.changed.emit()

    def _appraised(self, companion: Companion) -> Appraisal:
        """Appraise a companion with the palette that is open, so that all count the same yarn on hand."""
        from chartmaker.appraisal import appraise
        from chartmaker.model.copies import refresh_copies

        palette = self.open_palette.palette
        if companion.appraisal is None or companion.with_palette is not palette:
            known = [lot.id for lot in companion.design.palette.lots if palette.lot(lot.id)]
            edit = refresh_copies(companion.design, palette, known)
            design = edit.applied_to(companion.design) if edit else companion.design
            companion.appraisal, companion.with_palette = appraise(design, palette), palette
        return companion.appraisal

    def _leave_own(self) -> None:
        """Plan no design twice, once another is in the window."""
        own = self.document.path
        kept = [each for each in self.companions if own is None or each.path.resolve() != own.resolve()]
        if len(kept) < len(self.companions):
            self.companions = kept
            self.changed.emit()

    # --- what was dyed, and what is at hand

    def record(self, plan: BathPlan, record: BathRecord, *, takes_off: bool) -> None:
        """Write down a bath as it was run: its lots come into the palette, and the design's copies follow."""
        from dataclasses import replace

        from chartmaker.dye.recording import record_plan, taken_off

        done = self._try(lambda: record_plan(self.open_palette.palette, self.at_hand, plan, record))
        if done is None:
            return
        if takes_off:
            after = taken_off(done.edit.after, plan, record)
            done = replace(done, edit=replace(done.edit, after=after))
        self._take(done)

    def complete(self, bath_id: str, record: BathRecord) -> None:
        """Change what is written down of a bath that was run."""
        from chartmaker.dye.recording import complete_record

        done = self._try(lambda: complete_record(self.open_palette.palette, bath_id, record))
        if done is not None:
            self._take(done)

    def change_stock(self, stock: Palette) -> str:
        """Keep what is at hand as it stands in `stock`; give what is wrong with it, empty where nothing is."""
        from chartmaker.model.palette_edits import change_stock

        try:
            self.open_palette.do(change_stock(self.open_palette.palette, stock))
        except ValueError as refusal:
            return told(str(refusal))
        return ""

    def replaced_by(self, bath: Bath) -> list[tuple[str, Lot]]:
        """Give each letter whose lot came from the same load of a bath run alike, with the new lot that may follow it.

        Lots of two runs are never quite the same, so nobody but the dyer puts one in the place of the other.
        """
        from chartmaker.dye.chains import are_run_alike

        palette, at_hand = self.open_palette.palette, self.at_hand
        made = {lot.load: lot for lot in palette.lots if lot.bath == bath.id}
        found = []
        for entry in self.document.appraisal.letters:
            source = entry.lot.source if entry.lot else None
            before = at_hand.bath(source[0]) if source else None
            new = made.get(source[1]) if source else None
            if before is not None and new is not None and before.id != bath.id and are_run_alike(before, bath):
                found.append((entry.letter, new))
        return found

    def use_as_letter(self, letter: str, lot_id: str) -> None:
        """Make a letter of the design a lot of the palette, as one step of the design's history."""
        from chartmaker.model.edits import assign

        try:
            self.document.do(assign(self.document.design, letter, lot_id, source=self.open_palette.palette))
        except ValueError as refusal:
            self.refused.emit(told(str(refusal)))

    def _try(self, make: Callable[[], Recorded]) -> Recorded | None:
        try:
            return make()
        except ValueError as refusal:
            self.refused.emit(told(str(refusal)))
            return None

    def _take(self, done: Recorded) -> None:
        from chartmaker.model.copies import refresh_copies

        self.open_palette.do(done.edit)
        palette = self.open_palette.palette
        copies = [lot.id for lot in self.document.design.palette.lots if palette.lot(lot.id)]
        self.document.do(refresh_copies(self.document.design, palette, copies))
        if not done.lots:
            told_of = tr("Bath {0} is on record; its lots come when they are weighed dry.")
            self.recorded.emit(done.bath, told_of.format(done.bath))
            return
        names = "; ".join(lot.name for lot_id in done.lots if (lot := palette.lot(lot_id)))
        self.recorded.emit(done.bath, tr("Bath {0} is on record. In the palette now: {1}.").format(done.bath, names))
