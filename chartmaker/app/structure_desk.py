"""What changes rounds, bands and repeats at the chart's cursor: one edit each, and the cursor goes with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.chosen_rounds import rows_of_band
from chartmaker.model import band_edits, repeat_edits, round_edits

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.repeat_edits import Side
    from chartmaker.model.units import Units


class StructureDesk:
    """Works on the rounds that are chosen, or on their band; what is refused is told by the canvas's `refused`."""

    def __init__(self, canvas: ChartCanvas) -> None:
        self._canvas = canvas
        self._document = canvas.document

    @property
    def band(self) -> int:
        """The band at the cursor."""
        return self._canvas.grid.rows[self._canvas.chosen[0]].band

    # --- rounds

    def insert_rounds(self, *, above: bool) -> None:
        """Add plain rounds above or below the chosen ones, as many, and choose them."""
        rows = self._canvas.chosen
        if self._do(lambda design: round_edits.insert_rounds(design, **self._run, above=above)):
            start = rows.stop if above else rows.start
            self._canvas.choose(range(start, start + len(rows)))

    def duplicate_rounds(self) -> None:
        """Work the chosen rounds a second time above themselves, and choose the copies."""
        rows = self._canvas.chosen
        if self._do(lambda design: round_edits.duplicate_rounds(design, **self._run)):
            self._canvas.choose(range(rows.stop, rows.stop + len(rows)))

    def delete_rounds(self) -> None:
        """Take the chosen rounds out, and go to what stands in their place, or to the top of the band."""
        band, first = self.band, self._run["first"]
        if self._do(lambda design: round_edits.delete_rounds(design, **self._run)):
            top = len(self._document.design.bands[band].rounds) - 1
            self._go(self._canvas.grid.row_of(band, min(first, top)))

    def move_rounds(self, *, up: bool) -> None:
        """Let the chosen rounds change places with the one above or below."""
        rows = self._canvas.chosen
        if self._do(lambda design: round_edits.move_rounds(design, **self._run, up=up)):
            step = 1 if up else -1
            self._canvas.choose(range(rows.start + step, rows.stop + step))

    def choose_band(self) -> None:
        """Choose all rounds of the band at the cursor."""
        self._canvas.choose(rows_of_band(self._canvas.grid, self._canvas.current[0]))

    # --- bands

    def add_band(self, *, above: bool) -> None:
        """Add a plain band above or below this one, and go to it."""
        band = self.band
        if self._do(lambda design: band_edits.add_band(design, band=band, above=above)):
            self._go(self._canvas.grid.row_of(band + above, 0))

    def duplicate_band(self) -> None:
        """Work the band a second time above itself, and go to the copy."""
        band = self.band
        if self._do(lambda design: band_edits.duplicate_band(design, band=band)):
            self._go(self._canvas.grid.row_of(band + 1, 0))

    def delete_band(self) -> None:
        """Take the band out, and go to the one in its place."""
        band = self.band
        if self._do(lambda design: band_edits.delete_band(design, band=band)):
            self._go(self._canvas.grid.row_of(min(band, len(self._document.design.bands) - 1), 0))

    def move_band(self, *, up: bool) -> None:
        """Let the band change places with the one above or below, the cursor with it."""
        band, index = self.band, self._run["first"]
        if self._do(lambda design: band_edits.move_band(design, band=band, up=up)):
            self._go(self._canvas.grid.row_of(band + (1 if up else -1), index))

    def join_band(self) -> None:
        """Make the band and the one above it one."""
        self._do(lambda design: band_edits.join_band(design, band=self.band))

    def split_band(self) -> None:
        """Let a new band begin with the round at the cursor, or the lowest that is chosen."""
        self._do(lambda design: band_edits.split_band(design, band=self.band, index=self._run["first"]))

    def rename_band(self, name: str) -> None:
        """Give the band another name."""
        self._do(lambda design: band_edits.rename_band(design, band=self.band, name=name))

    def set_times(self, times: int) -> None:
        """Let the repeat go round another number of times."""
        self._do(lambda design: band_edits.set_times(design, band=self.band, times=times))

    def set_texture(self, texture: str) -> None:
        """Work the band in knit and purl."""
        self._do(lambda design: band_edits.set_texture(design, band=self.band, texture=texture))

    def shape_crown(self, units: Units, parent: QWidget) -> None:
        """Open the dialog that shapes the crown anew; lengths are told in these units."""
        from chartmaker.app.crown_dialog import CrownDialog
        from chartmaker.knit.crown import stitches_below_crown

        self._canvas.drop()
        design = self._document.design
        try:
            stitches_below_crown(design)
        except ValueError as refusal:
            self._canvas.refused.emit(str(refusal))
        else:
            CrownDialog(design, units, self._document.do, parent).open()

    # --- repeats

    def widen(self, side: Side) -> None:
        """Widen the repeat at a side by one stitch, or by one pattern of its texture."""
        self.change_repeat(self._step, side)

    def narrow(self, side: Side) -> None:
        """Narrow the repeat at a side by one stitch, or by one pattern of its texture."""
        self.change_repeat(-self._step, side)

    def change_repeat(self, by: int, side: Side) -> None:
        """Widen the repeat at a side by stitches, or narrow it by as many where they are negative."""
        self._do(lambda design: repeat_edits.change_repeat(design, band=self.band, by=by, side=side))

    def double_repeat(self) -> None:
        """Draw the repeat twice, and work it half as often."""
        self._do(lambda design: repeat_edits.double_repeat(design, band=self.band))

    def halve_repeat(self) -> None:
        """Draw half of the repeat, and work it twice as often."""
        self._do(lambda design: repeat_edits.halve_repeat(design, band=self.band))

    # --- upkeep

    @property
    def _run(self) -> dict[str, int]:
        """The chosen rounds as edits are told them."""
        rows, lines = self._canvas.chosen, self._canvas.grid.rows
        return {"band": lines[rows[0]].band, "first": lines[rows[0]].index, "last": lines[rows[-1]].index}

    @property
    def _step(self) -> int:
        return len(self._document.design.bands[self.band].texture) or 1

    def _do(self, make: Callable[[Design], Edit | None]) -> bool:
        """Do an edit as one step, and tell whether anything changed; a gesture under way is dropped first."""
        self._canvas.drop()
        try:
            edit = make(self._document.design)
        except ValueError as refusal:
            self._canvas.refused.emit(str(refusal))
            return False
        self._document.do(edit)
        return edit is not None

    def _go(self, row: int) -> None:
        self._canvas.choose(range(row, row + 1))
