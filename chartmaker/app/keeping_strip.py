"""The line above the lots: which palette is open, whether it is saved, and what of the design differs from it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QGridLayout, QPushButton, QWidget

from chartmaker.app.page_frame import words_label
from chartmaker.app.words import plain_tip, tr

if TYPE_CHECKING:
    from chartmaker.app.lots_desk import LotsDesk


class KeepingStrip(QWidget):
    """Follows the palette and the design."""

    def __init__(self, desk: LotsDesk, parent: QWidget) -> None:
        """Take the page that it stands on: shown without one, it would be a window of its own for a moment."""
        super().__init__(parent)
        self._desk = desk
        self.name = words_label()
        self.save = QPushButton(tr("Save palette"))
        self.save.clicked.connect(lambda _checked=False: desk.save_palette())
        self.copies = words_label()
        self.show_copies = QPushButton(tr("Show…"))
        self.show_copies.setAccessibleName(tr("Show what differs from the palette"))
        self.show_copies.clicked.connect(lambda _checked=False: desk.refresh_copies())
        layout = QGridLayout(self)
        layout.setContentsMargins(0, 0, 0, 4)
        layout.setHorizontalSpacing(8)
        layout.setVerticalSpacing(4)
        layout.setColumnStretch(0, 1)
        for row, parts in enumerate(((self.name, self.save), (self.copies, self.show_copies))):
            for column, part in enumerate(parts):
                layout.addWidget(part, row, column)
        desk.open_palette.changed.connect(self.refresh)
        desk.document.appraised.connect(self.refresh)
        self.refresh()

    def refresh(self) -> None:
        """Show what is so now."""
        palette = self._desk.open_palette
        self.setVisible(palette.is_there)
        if not palette.is_there:
            return
        file = palette.path.name if palette.path else tr("no file yet")
        name = palette.palette.name or tr("without a name")
        state = tr("not saved") if palette.is_modified else tr("saved")
        self.name.setText(tr("Palette {0} ({1}): {2}").format(name, file, state if palette.path else tr("not saved")))
        self.name.setToolTip(plain_tip(str(palette.path or "")))
        self.save.setEnabled(palette.is_modified or palette.path is None)
        words = self._desk.copies_words()
        self.copies.setText(f"! {words}" if words else "")
        self.copies.setVisible(bool(words))
        self.show_copies.setVisible(bool(words))
