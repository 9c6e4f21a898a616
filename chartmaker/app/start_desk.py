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

    def begin(design: Design) -> None:
        filing.begin(design)
        window.show_page("chart")
        window.chart.canvas.fit()

    window.finish_typing()
    filing = window.filing
    if not filing.may_leave_design():
        return
    dialog = StartDialog(filing.settings, window.units, window.document.palette, window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.begun.connect(begin)
    dialog.bare.connect(lambda: begin(blank_design()))
    dialog.open()
