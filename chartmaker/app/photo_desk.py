"""What the menu does about photos: the dialog that reads skeins off one, which keeps its photo from time to time."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chartmaker.app.window import Window


def take_photo(window: Window) -> None:
    """Show the dialog for the palette in the window; it is made when it is first asked for."""
    # Imported late: it brings Pillow and numpy.
    from chartmaker.app.photo_dialog import PhotoDialog

    window.finish_typing()
    filing = window.filing
    dialog = window.findChild(PhotoDialog)
    if not isinstance(dialog, PhotoDialog):
        dialog = PhotoDialog(filing.settings, filing.questions, window)
    dialog.begin(filing.palettes.open_palette, filing.document.design.viewing)
