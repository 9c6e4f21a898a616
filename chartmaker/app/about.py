"""Tells what the program is, and in which version."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMessageBox

from chartmaker import __version__
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget


def show_about(parent: QWidget) -> None:
    """Show it over a window, which goes on meanwhile."""
    text = tr(
        "Chartmaker {0}\n\nFrom measured dye lots and a chart to a stranded hat that reads, fits and has yarn enough."
    )
    box = QMessageBox(QMessageBox.Icon.NoIcon, tr("About Chartmaker"), text.format(__version__), parent=parent)
    box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    box.open()
