"""What is done with the lots, baths and yarns of the palette: each is one step of the palette's history."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from chartmaker.app.told import told
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

    from chartmaker.app.filing import Filing
    from chartmaker.app.open_palette import OpenPalette
    from chartmaker.model.palette_edits import PaletteEdit


class LotsDesk(QObject):
    """Works on the lot that is chosen on the Lots page, or on any by its id."""

    chosen_changed = Signal()
    """Another lot is chosen, or none."""

    def __init__(self, filing: Filing, parent: QWidget) -> None:
        super().__init__(parent)
        self._filing = filing
        self._parent = parent
        self._chosen = ""
        filing.palettes.open_palette.changed.connect(self.chosen_changed)

    @property
    def open_palette(self) -> OpenPalette:
        """The palette, with the one door for changes to it."""
        return self._filing.palettes.open_palette

    @property
    def chosen(self) -> str:
        """The id of the lot that is chosen; empty where none is."""
        return self._chosen

    @property
    def has_chosen(self) -> bool:
        """Whether the lot that is chosen is in the palette, so that it can be worked on."""
        return self.open_palette.palette.lot(self._chosen) is not None

    def choose(self, lot_id: str) -> None:
        """Choose the lot that actions work on; the page that lists them calls this."""
        if lot_id != self._chosen:
            self._chosen = lot_id
            self.chosen_changed.emit()

    # --- the palette

    def save_palette(self) -> None:
        """Save the palette."""
        self._filing.palettes.save()

    def save_palette_as(self) -> None:
        """Save the palette elsewhere."""
        self._filing.palettes.save_as()

    def new_palette(self) -> None:
        """Begin an empty palette."""
        self._filing.palettes.new()

    # --- deleting

    def delete_lot(self, lot_id: str = "") -> None:
        """Take a lot out of the palette, once that was confirmed where letters of the design are it."""
        from chartmaker.model import palette_edits, palette_users

        palette = self.open_palette.palette
        lot = palette.lot(lot_id or self._chosen)
        if lot is None:
            return
        users = palette_users.users_of(palette, lot, design=self._filing.document.design)
        if users:
            asked = tr("Delete {0} from the palette? {1}; the design keeps its own copy.")
            if not self._filing.questions.is_sure(asked.format(lot.name, _sentence(users)), tr("&Delete")):
                return
        self._do(lambda: palette_edits.delete_lot(palette, lot.id))

    def delete_bath(self, bath_id: str) -> None:
        """Take a bath out of the palette; one that lots came from is not, which is told."""
        from chartmaker.model import palette_edits

        self._do(lambda: palette_edits.delete_bath(self.open_palette.palette, bath_id))

    def delete_yarn(self, yarn_id: str) -> None:
        """Take a yarn out of the palette; one that lots are of is not, which is told."""
        from chartmaker.model import palette_edits

        self._do(lambda: palette_edits.delete_yarn(self.open_palette.palette, yarn_id))

    def _do(self, make: Callable[[], PaletteEdit | None]) -> None:
        try:
            self.open_palette.do(make())
        except ValueError as refusal:
            self._filing.questions.tell(told(_sentence(str(refusal))) + ".")


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]
