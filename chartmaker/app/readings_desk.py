"""Readings into the palette: from a measurement file, from anything else that measures, or typed."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from chartmaker.app.told import told
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path

    from chartmaker.app.taking_dialog import TakingDialog
    from chartmaker.app.typed_dialog import TypedDialog
    from chartmaker.app.window import Window
    from chartmaker.files.measurements.contents import Contents
    from chartmaker.model.measured import Measured

MEASUREMENT_KINDS = "*.txt *.cgats *.cxf *.xml *.csv *.tsv *.it8 *.ti3"


def take_readings(window: Window) -> None:
    """Ask for a measurement file, read it beside the window, and show what it would bring."""
    window.finish_typing()
    filing = window.filing
    kinds = f"{tr('Measurements')} ({MEASUREMENT_KINDS});;{tr('All files')} (*)"
    path = filing.questions.file_to_open(tr("Take readings from a measurement file"), kinds, filing.folder)
    if path is None:
        return
    if window.background.is_busy:
        filing.questions.tell(tr("One thing at a time: something is still being made. Stop it, or wait."))
        return
    text = tr("Reading {0}").format(path.name)
    window.background.start(text, lambda _step: _contents_of(path), partial(_show_contents, window, path))


def _contents_of(path: Path) -> Contents:
    from chartmaker.files.measurements.opening import read_measurements

    return read_measurements(path)


def _show_contents(window: Window, path: Path, contents: Contents) -> None:
    offer_samples(window, contents.measured, source=f"{path.name}, {contents.grammar}", notes=contents.notes)


def offer_samples(
    window: Window, measured: Sequence[Measured], *, source: str, notes: Sequence[str] = ()
) -> TakingDialog:
    """Show what samples would bring to the palette; accepting it is one step of the palette's history."""
    from chartmaker.app.taking_dialog import TakingDialog

    dialog = TakingDialog(
        measured,
        source=source,
        notes=notes,
        palette=window.lots.open_palette.palette,
        viewing=window.document.design.viewing,
        parent=window,
    )
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)

    def take() -> None:
        taken = dialog.taking
        window.lots.open_palette.apply(taken.palette, tr("Take readings ({0})").format(taken.added))
        window.show_page("lots")
        window.filing.told.emit(tr("Readings added: {0}").format(taken.added))

    dialog.accepted.connect(take)
    dialog.open()
    return dialog


def type_reading(window: Window) -> TypedDialog | None:
    """Ask for a colour of the lot that is chosen; accepting it is one step of the palette's history."""
    from chartmaker.app.typed_dialog import TypedDialog

    window.finish_typing()
    lot = window.lots.open_palette.palette.lot(window.lots.chosen)
    if lot is None:
        return None
    dialog = TypedDialog(lot, window.document.design.viewing, window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: _add_typed(window, lot.id, dialog))
    dialog.open()
    return dialog


def _add_typed(window: Window, lot_id: str, dialog: TypedDialog) -> None:
    from chartmaker.model.measured import Measured
    from chartmaker.model.taking import taking

    if dialog.reading is None:
        return
    palette = window.lots.open_palette.palette
    taken = taking(palette, [Measured(lot_id, (dialog.reading,))], {0: lot_id})
    if taken.added:
        window.lots.open_palette.apply(taken.palette, tr("Type a reading"))
    else:
        notes = taken.lines[0].notes
        window.filing.told.emit(told(notes[0]) if notes else tr("The lot has this reading already."))
