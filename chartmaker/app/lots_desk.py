"""What is done with the lots, baths and yarns of the palette: each is one step of the palette's history."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from chartmaker.app.lots_forms import LotsForms
from chartmaker.app.told import told
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

    from chartmaker.app.filing import Filing
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.open_palette import OpenPalette
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.palette import Palette
    from chartmaker.model.palette_edits import PaletteEdit


class LotsDesk(QObject):
    """Works on the lot that is chosen on the Lots page, or on any by its id."""

    chosen_changed = Signal()
    """Another lot is chosen, or none."""

    def __init__(self, filing: Filing, units: UnitsSetting, parent: QWidget) -> None:
        super().__init__(parent)
        self._filing, self._units = filing, units
        self._parent = parent
        self._forms = LotsForms(filing, units, parent)
        self._chosen = ""
        self._compared: tuple[Palette, Palette, str] | None = None
        """The design's copies, the palette, and what was last told of the two."""
        filing.palettes.open_palette.changed.connect(self.chosen_changed)

    @property
    def filing(self) -> Filing:
        """Where designs and palettes are opened and kept."""
        return self._filing

    @property
    def open_palette(self) -> OpenPalette:
        """The palette, with the one door for changes to it."""
        return self._filing.palettes.open_palette

    @property
    def document(self) -> OpenDesign:
        """The design in the window."""
        return self._filing.document

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

    def name_palette(self) -> None:
        """Give the palette another name."""
        self._forms.open_palette_form()

    @property
    def is_linked(self) -> bool:
        """Whether the design names the palette, so that it is opened with the design."""
        return self._filing.palettes.is_named_by_design

    def link(self) -> None:
        """Let the design name the palette, or no palette where it names this one; one step of the design."""
        from chartmaker.model.edits import ReplaceSetting

        if self._filing.place is None or self.open_palette.path is None:
            self._filing.questions.tell(tr("Save the design and the palette first: the one names the other's file."))
            return
        before = self.document.design.palette_file
        after = "" if self.is_linked else self._filing.palettes.name_from_design()
        text = "Open the palette with the design" if after else "Let the design name no palette"
        self.document.do(ReplaceSetting("palette_file", before, after, text))

    # --- adding and changing

    def new_lot(self) -> None:
        """Fill in a new lot."""
        self._forms.open_lot(None)

    def edit_lot(self, lot_id: str = "") -> None:
        """Change a lot, the chosen one where none is named."""
        lot = self.open_palette.palette.lot(lot_id or self._chosen)
        if lot is not None:
            self._forms.open_lot(lot)

    def new_bath(self) -> None:
        """Fill in a new bath."""
        self._forms.open_bath(None)

    def edit_bath(self, bath_id: str = "") -> None:
        """Change a bath, that of the chosen lot where none is named."""
        bath = self.open_palette.palette.bath(bath_id or self._bath_of_chosen)
        if bath is not None:
            self._forms.open_bath(bath)

    def new_yarn(self) -> None:
        """Fill in a new undyed yarn."""
        self._forms.open_yarn(None)

    def edit_yarn(self, yarn_id: str = "") -> None:
        """Change an undyed yarn, that of the chosen lot where none is named."""
        palette = self.open_palette.palette
        lot = palette.lot(self._chosen)
        yarn = palette.yarn(yarn_id or (lot.yarn if lot else None))
        if yarn is not None:
            self._forms.open_yarn(yarn)

    @property
    def has_bath_chosen(self) -> bool:
        """Whether the lot that is chosen names a bath of the palette."""
        return self.open_palette.palette.bath(self._bath_of_chosen) is not None

    @property
    def has_yarn_chosen(self) -> bool:
        """Whether the lot that is chosen names a yarn of the palette."""
        palette = self.open_palette.palette
        lot = palette.lot(self._chosen)
        return lot is not None and palette.yarn(lot.yarn) is not None

    @property
    def _bath_of_chosen(self) -> str:
        lot = self.open_palette.palette.lot(self._chosen)
        return lot.source[0] if lot and lot.source else ""

    # --- the design and the palette

    def use_up(self) -> None:
        """Take what the hat used off the weights on hand, once the dyer has seen how much."""
        from chartmaker.app.use_up_dialog import UseUpDialog, needs_of
        from chartmaker.model.palette_edits import use_up

        self.document.appraise_now()
        appraisal, palette = self.document.appraisal, self.open_palette.palette
        likely = needs_of(appraisal, is_planned=False)
        if not any(palette.lot(lot_id) for lot_id in likely):
            self._filing.questions.tell(tr("The palette has none of the lots that this hat uses."))
            return
        UseUpDialog(
            palette,
            (likely, needs_of(appraisal, is_planned=True)),
            lambda taken: self.open_palette.do(use_up(palette, taken)),
            self._parent,
            units=self._units.units,
        ).open()

    def refresh_copies(self) -> None:
        """Show in what the design's lots differ from the palette, and bring together those that are chosen."""
        from chartmaker.app.copies_dialog import CopiesDialog
        from chartmaker.model.copies import add_copies, lots_not_in, refresh_copies, stale_copies

        design, palette = self.document.design, self.open_palette.palette
        CopiesDialog(
            stale_copies(design, palette),
            lots_not_in(palette, design),
            refresh=lambda ids: self.document.do(refresh_copies(self.document.design, palette, ids)),
            add=lambda ids: self._do(lambda: add_copies(self.open_palette.palette, design, ids)),
            units=self._units.units,
            parent=self._parent,
        ).open()

    def copies_words(self) -> str:
        """Tell how many lots of the design differ from the palette or are not in it; empty where all are alike."""
        from chartmaker.model.copies import lots_not_in, stale_copies

        if not self.open_palette.is_there:
            return ""
        design, palette = self.document.design, self.open_palette.palette
        if self._compared is not None and self._compared[0] is design.palette and self._compared[1] is palette:
            return self._compared[2]  # drawing leaves both as they are
        stale, missing = len(stale_copies(design, palette)), len(lots_not_in(palette, design))
        words = []
        if stale:
            one, many = (
                tr("1 lot of this design differs from the palette"),
                tr("{0} lots of this design differ from the palette"),
            )
            words.append(one if stale == 1 else many.format(stale))
        if missing:
            one, many = (
                tr("1 lot of this design is not in the palette"),
                tr("{0} lots of this design are not in the palette"),
            )
            words.append(one if missing == 1 else many.format(missing))
        self._compared = (design.palette, palette, "; ".join(words))
        return self._compared[2]

    # --- deleting

    def delete_lot(self, lot_id: str = "") -> None:
        """Take a lot out of the palette, once that was confirmed where letters of the design are it."""
        from chartmaker.model import palette_edits, palette_users

        palette = self.open_palette.palette
        lot = palette.lot(lot_id or self._chosen)
        if lot is None:
            return
        users = palette_users.users_of(palette, lot, design=self.document.design)
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
