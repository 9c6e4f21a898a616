"""One line above the chart that shows the band at the cursor, and where its name, repeat, times and texture are set."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QLineEdit, QSizePolicy, QSpinBox, QWidget

from chartmaker.app.words import tr
from chartmaker.model.bounds import MOST_STITCHES

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QKeyEvent, QWheelEvent

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.app.structure_desk import StructureDesk
    from chartmaker.model.band import Band
    from chartmaker.model.repeat_edits import Side

SIDES: tuple[Side, ...] = ("left", "right")


class CalmSpin(QSpinBox):
    """A whole number that the wheel changes only while it has the keyboard, and that is taken when it is left."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setToolTip(name)
        self.setKeyboardTracking(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the wheel to what lies behind unless this has the keyboard."""
        if self.hasFocus():
            super().wheelEvent(event)
        else:
            event.ignore()


class BandStrip(QWidget):
    """Follows the cursor; each field hands its value over when it is left or Enter is pressed."""

    def __init__(self, canvas: ChartCanvas, desk: StructureDesk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._canvas, self._desk = canvas, desk
        self._document = canvas.document
        self._shown: Band | None = None
        self._index = 0
        """Of the cursor's round in the band that is shown."""
        self.name = _line(tr("Name of the band"), 90)
        self.place = QLabel()
        self.repeat = CalmSpin(tr("Stitches of the repeat in this round"))
        self.side = QComboBox()
        self.side.addItems([tr("at the left"), tr("at the right")])
        self.side.setAccessibleName(tr("Side at which the repeat is widened or narrowed"))
        self.side.setToolTip(tr("Where the repeat gains or loses stitches"))
        self.times = CalmSpin(tr("How many times the repeat goes round"))
        self.count = QLabel()
        self.count.setTextFormat(Qt.TextFormat.PlainText)
        self.texture = _line(tr("Texture of the band"), 64)
        self.texture.setPlaceholderText(tr("knit all"))
        self.texture.setToolTip(tr("Knit and purl from stitch 1, such as kkpp; empty is knit all"))
        self._lay_out()
        self.name.editingFinished.connect(self._take_name)
        self.texture.editingFinished.connect(self._take_texture)
        self.repeat.valueChanged.connect(self._take_repeat)
        self.times.valueChanged.connect(self._take_times)
        canvas.cursor_moved.connect(self.refresh)
        self._document.edited.connect(self.refresh)
        self._document.replaced.connect(self.refresh)
        self.refresh()

    def begin(self, field: str) -> None:
        """Go to a field, "name", "repeat", "times" or "texture", with what stands in it chosen."""
        lines, numbers = {"name": self.name, "texture": self.texture}, {"repeat": self.repeat, "times": self.times}
        control = lines[field] if field in lines else numbers[field]
        control.setFocus(Qt.FocusReason.ShortcutFocusReason)
        control.selectAll()

    def refresh(self) -> None:
        """Show the band at the cursor as it is."""
        rows = self._canvas.grid.rows
        row = rows[min(self._canvas.current[0], len(rows) - 1)]
        band = self._document.design.bands[row.band]
        self._show_place(len(band.rounds))
        if band is not self._shown or row.index != self._index:
            self._shown, self._index = band, row.index
            self._show_fields(band, row.index)

    def _show_place(self, rounds: int) -> None:
        lines, chosen = self._canvas.grid.rows, self._canvas.chosen
        first, last = (lines[row].index + 1 for row in (chosen[0], chosen[-1]))
        if first == last:
            self.place.setText(tr("round {0} of {1}").format(first, rounds))
        else:
            self.place.setText(tr("rounds {0}–{1} of {2}").format(first, last, rounds))

    def _show_fields(self, band: Band, index: int) -> None:
        length, lengths = len(band.rounds[index]), [len(line) for line in band.rounds]
        most = MOST_STITCHES // band.times
        for control in (self.name, self.texture, self.repeat, self.times):
            control.blockSignals(True)
        self.name.setText(band.name)
        self.name.setCursorPosition(0)
        self.texture.setText(band.texture)
        self.repeat.setRange(length - min(lengths) + 1, length + max(0, most - max(lengths)))
        self.repeat.setSingleStep(len(band.texture) or 1)
        self.repeat.setValue(length)
        self.times.setRange(1, MOST_STITCHES // max(lengths))
        self.times.setValue(band.times)
        for control in (self.name, self.texture, self.repeat, self.times):
            control.blockSignals(False)
        self.count.setText(tr("= {0} stitches").format(length * band.times))

    def _take_name(self) -> None:
        self._take(lambda: self._desk.rename_band(self.name.text()))

    def _take_texture(self) -> None:
        self._take(lambda: self._desk.set_texture(self.texture.text()))

    def _take_times(self, times: int) -> None:
        self._take(lambda: self._desk.set_times(times))

    def _take_repeat(self, stitches: int) -> None:
        if self._shown is not None:
            by = stitches - len(self._shown.rounds[self._index])
            self._take(lambda: self._desk.change_repeat(by, SIDES[self.side.currentIndex()]))

    def _take(self, do: Callable[[], None]) -> None:
        """Hand a value over, and show what came of it: a refused one goes back."""
        do()
        self._shown = None
        self.refresh()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go back to the chart: with Enter the value is taken, with Escape it is as it was."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._canvas.setFocus()
        elif event.key() == Qt.Key.Key_Escape:
            self._shown = None
            self.refresh()
            self._canvas.setFocus()
        else:
            super().keyPressEvent(event)

    def _lay_out(self) -> None:
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 2, 8, 3)
        row.setSpacing(6)
        row.addWidget(QLabel(tr("Band")))
        row.addWidget(self.name, 3)
        row.addWidget(self.place)
        row.addSpacing(8)
        row.addWidget(QLabel(tr("repeat")))
        row.addWidget(self.repeat)
        row.addWidget(self.side)
        row.addWidget(QLabel("×"))
        row.addWidget(self.times)
        row.addWidget(self.count)
        row.addSpacing(8)
        row.addWidget(QLabel(tr("texture")))
        row.addWidget(self.texture, 2)
        row.addStretch(1)


def _line(name: str, least: int) -> QLineEdit:
    line = QLineEdit()
    line.setAccessibleName(name)
    line.setMinimumWidth(least)
    line.setMaximumWidth(260)
    line.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
    return line
