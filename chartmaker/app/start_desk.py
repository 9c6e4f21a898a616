"""What File, New does: asks for a hat in a dialog, and takes up in the window what was begun there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt

from chartmaker.app.start_dialog import StartDialog

if TYPE_CHECKING:
    from chartmaker.app.window import Window
    from chartmaker.model.design import Design


def ask_for_hat(window: Window) -> None:
    """Ask about unsaved work, then for a hat; with Escape nothing has changed."""
    from chartmaker.app.blank import blank_design

    window.finish_typing()
    filing = window.filing
    if not filing.may_leave_design():
        return
    dialog = StartDialog(filing.settings, window.units, window.document.palette, window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.begun.connect(lambda design: begin_in(window, design))
    dialog.bare.connect(lambda: begin_in(window, blank_design()))
    dialog.open()


def begin_in(window: Window, design: Design) -> None:
    """Take up a design that was just made, and show all of it with the keys where a motif can be drawn."""
    window.filing.begin(design)
    window.show_page("chart")
    canvas = window.chart.canvas
    canvas.go_to(canvas.grid.row_of(_band_for_motifs(design), 0), 0)
    canvas.fit()


def _band_for_motifs(design: Design) -> int:
    """Give the tallest band that a motif may be drawn in as it is: the keys begin there."""
    bands = design.bands
    plain = [
        place
        for place, band in enumerate(bands)
        if not band.is_shaped and "p" not in band.texture and len(band.rounds[0].letters) > 1
    ]
    return max(plain, key=lambda place: len(bands[place].rounds), default=0)
