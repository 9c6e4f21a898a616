"""Opens the forms of the palette's things over the window; what comes of one is one step of the palette's history."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.filing import Filing
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.palette import Bath, Lot, Palette, Yarn


class LotsForms:
    """Each is imported when it is first opened. None stands for a new thing."""

    def __init__(self, filing: Filing, units: UnitsSetting, parent: QWidget) -> None:
        self._filing, self._units = filing, units
        self._palette = filing.palettes.open_palette
        self._parent = parent

    def open_lot(self, lot: Lot | None) -> None:
        """Open the form of a lot."""
        from chartmaker.app.lot_form import LotForm
        from chartmaker.model.palette_edits import add_lot, change_lot

        def take(made: Lot) -> None:
            palette = self._palette.palette
            self._palette.do(add_lot(palette, made) if lot is None else change_lot(palette, lot.id, made))

        LotForm(
            lot,
            self._palette.palette,
            take,
            place=self._palette.path,
            questions=self._filing.questions,
            units=self._units.units,
            parent=self._parent,
        ).open()

    def open_bath(self, bath: Bath | None) -> None:
        """Open the form of a bath."""
        from chartmaker.app.bath_form import BathForm
        from chartmaker.model.palette_edits import add_bath, change_bath

        def take(made: Bath) -> None:
            palette = self._palette.palette
            self._palette.do(add_bath(palette, made) if bath is None else change_bath(palette, bath.id, made))

        BathForm(bath, self._palette.palette, take, self._parent, units=self._units.units).open()

    def open_yarn(self, yarn: Yarn | None) -> None:
        """Open the form of an undyed yarn."""
        from chartmaker.app.bath_form import YarnForm
        from chartmaker.model.palette_edits import add_yarn, change_yarn

        def take(made: Yarn) -> None:
            palette = self._palette.palette
            self._palette.do(add_yarn(palette, made) if yarn is None else change_yarn(palette, yarn.id, made))

        YarnForm(yarn, self._palette.palette, take, self._parent, units=self._units.units).open()

    def open_palette_form(self) -> None:
        """Open the form of the palette itself."""
        from chartmaker.app.bath_form import PaletteForm
        from chartmaker.model.palette_edits import rename_palette

        def take(named: Palette) -> None:
            self._palette.do(rename_palette(self._palette.palette, named.name))

        PaletteForm(self._palette.palette, take, self._parent).open()
