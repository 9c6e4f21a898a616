"""Which letters play ground and figure in each round: chips that can be chosen, dragged, filled, swapped, mirrored."""

from __future__ import annotations

from math import floor
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPalette, QPen

from chartmaker.app.letter_menu import ALPHABET, letter_menu, patch
from chartmaker.app.round_column import LOWEST_TEXT, RoundColumn
from chartmaker.app.shades import letter_colour
from chartmaker.app.shading_desk import ShadingDesk
from chartmaker.app.shading_edits import fill
from chartmaker.app.signs import draw_strands, letter_marks
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from chartmaker.app.chart_canvas import ChartCanvas
    from chartmaker.model.edits import Edit
    from chartmaker.sheets.marks import Mark

CHIP_WIDTH = 32
PART_WIDTH = 46
"""Room for one part's chips and its heading."""
LEFT = 4
HIGHEST_CHIP = 20


class ShadingColumn(RoundColumn):
    """Chips for ground, figure and, where some round has one, the third part."""

    def __init__(self, canvas: ChartCanvas, parent: QWidget | None = None) -> None:
        super().__init__(canvas, parent)
        self.desk = ShadingDesk(canvas)
        self._drag: tuple[int, int] | None = None
        """Row and part where a drag began."""
        self._drag_to = 0
        self.setAccessibleName(tr("Shading of the rounds"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setToolTip(
            tr(
                "Click a chip to choose its letter, drag it up or down to fill.\n"
                "Keys: arrows move, a letter sets it, Shift with up or down fills."
            )
        )
        self._marks: dict[str, Mark] = {}
        self._colours: dict[str, QColor] = {}
        self._of: tuple[object, ...] = ()
        """The appraisal and the view that marks and colours belong to."""
        self._take_marks()
        self._fit_width()
        self.document.replaced.connect(self._fit_width)
        self.document.edited.connect(self._fit_width)
        canvas.previewed.connect(self.follow)
        canvas.cursor_moved.connect(self._describe)

    # --- what the keys, the menu and the action table do

    @property
    def part(self) -> int:
        """Which part the keys and the menu act on: 0 ground, 1 figure, 2 third."""
        return self.desk.part

    @part.setter
    def part(self, part: int) -> None:
        self.desk.part = part

    def set_letter(self, letter: str) -> None:
        """Let a letter play the current part in the chosen rounds."""
        self.desk.do(self.desk.letter_edit(letter))

    def choose_letter(self) -> None:
        """Open the menu of letters at the current chip; the chart shows the one that is marked."""
        row, letter = self.canvas.current[0], self.desk.letter
        if not letter:
            return
        menu = letter_menu(self.document.appraisal, self.set_letter, self, current=letter)
        menu.hovered.connect(lambda marked: self.desk.show(self.desk.letter_edit(marked.data())))
        menu.aboutToHide.connect(self.desk.show_as_is)
        menu.popup(self.mapToGlobal(self._chip(row, self.part).bottomLeft().toPoint()))

    def letter_at(self, row: int, part: int) -> str:
        """Give the letter of a chip; empty where the round has no such part."""
        return self.desk.letter_at(row, part)

    def _fill_edit(self, rows: list[int] | range, part: int, letter: str) -> Edit | None:
        return fill(self.document.design, self.canvas.grid, rows=rows, part=part, letter=letter)

    # --- painting

    def follow(self) -> None:
        """Paint those chips anew that look otherwise."""
        self._take_marks()
        super().follow()

    def look_of(self, row: int) -> object:
        """Give letters, whether they are drawn, their colours and marks, and where the keys act."""
        at = self.canvas.grid.rows[row]
        line = self.canvas.shown.bands[at.band].rounds[at.index]
        chips = tuple(
            (letter, part in line.cells, self._colour(letter).rgba(), self._mark(letter))
            for part, letter in enumerate(line.letters)
        )
        return chips, self.part, self.hasFocus()

    def paint_row(self, painter: QPainter, row: int, box: QRectF) -> None:
        """Paint a round's chips; one whose part is not drawn in the round has a dotted edge.

        Beside a round that carries three strands at once stands the sign of that.
        """
        at = self.canvas.grid.rows[row]
        line = self.canvas.shown.bands[at.band].rounds[at.index]
        dragged = self._dragged_rows()
        for part, letter in enumerate(line.letters):
            chip = self._chip(row, part)
            colour = self._colour(letter)
            text = letter if box.height() >= LOWEST_TEXT else ""
            patch(painter, chip, colour, text, is_pale=part not in line.cells, mark=self._mark(letter))
            is_current = row in self.canvas.chosen and part == self.part
            if (is_current and self.hasFocus()) or (row in dragged and self._drag and part == self._drag[1]):
                painter.setPen(QPen(self.palette().color(QPalette.ColorRole.WindowText), 2))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(chip.adjusted(-1, -1, 1, 1))
        if len(line.letters_in_use) > 2:
            ink = self.palette().color(QPalette.ColorRole.WindowText)
            draw_strands(painter, QPointF(self.width() - LEFT - 3, box.center().y()), box.height(), ink)

    def _mark(self, letter: str) -> Mark | None:
        """Give a letter's mark where the chart shows marks."""
        return self._marks.get(letter) if self.canvas.view == "symbols" else None

    def _colour(self, letter: str) -> QColor:
        self._take_marks()
        if letter not in self._colours:
            canvas = self.canvas
            colour = letter_colour(self.document.appraisal, letter, view=canvas.view, severity=canvas.severity)
            self._colours[letter] = colour
        return self._colours[letter]

    def _take_marks(self) -> None:
        """Keep marks and colours for as long as they stand."""
        now = (self.document.appraisal, self.canvas.view, self.canvas.severity)
        if self._of != now:
            self._of, self._marks, self._colours = now, letter_marks(self.document.appraisal), {}

    def _chip(self, row: int, part: int) -> QRectF:
        box = self.row_box(row)
        height = max(1.0, min(box.height() - 3, HIGHEST_CHIP))
        left = LEFT + part * PART_WIDTH + (PART_WIDTH - CHIP_WIDTH) / 2
        # Not `round`, which would set every other chip higher by a unit, and others after a scroll.
        return QRectF(left, floor(box.center().y() - height / 2 + 0.5) + 0.5, CHIP_WIDTH, height)

    def _dragged_rows(self) -> range:
        if self._drag is None:
            return range(0)
        low, high = sorted((self._drag[0], self._drag_to))
        return range(low, high + 1)

    # --- Qt's own events

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of a chip."""
        row = self.row_at(event.position().y())
        part = int((event.position().x() - LEFT) // PART_WIDTH)
        if row is None or not self.letter_at(row, max(part, 0)):
            return
        self.part = max(part, 0)
        if row not in self.canvas.chosen:
            self.canvas.go_to(row)
        if event.button() == Qt.MouseButton.LeftButton:
            self._drag, self._drag_to = (row, self.part), row
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag a chip's letter over other rounds, shown at once."""
        if self._drag is None:
            return
        sight = self.canvas.frame.rows_in_sight()
        row = self.row_at(event.position().y())
        if row is None:
            row = sight[-1] if event.position().y() < self.row_box(sight[-1]).center().y() else sight[0]
        if row != self._drag_to:
            self._drag_to = row
            edit = self._drag_edit()
            design = self.document.design
            self.canvas.show_design(edit.applied_to(design) if edit else design)
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Fill the rounds dragged over, or choose a letter where the chip was only clicked."""
        if self._drag is None or event.button() != Qt.MouseButton.LeftButton:
            return
        edit, was_click = self._drag_edit(), self._drag_to == self._drag[0]
        self._drag = None
        self.canvas.show_design(self.document.design)
        if was_click:
            self.choose_letter()
        else:
            self.document.do(edit)
        self.update()

    def _drag_edit(self) -> Edit | None:
        if self._drag is None:
            return None
        return self._fill_edit(self._dragged_rows(), self._drag[1], self.letter_at(*self._drag))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move among the chips, set or fill letters, or drop a drag."""
        key, row = Qt.Key(event.key()), self.canvas.current[0]
        text = event.text().upper()
        step = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}.get(key, 0)
        if key == Qt.Key.Key_Escape and self._drag is not None:
            self._drag = None
            self.canvas.show_design(self.document.design)
            self.update()
        elif step and 0 <= row + step < len(self.canvas.grid.rows):
            letter = self.letter_at(row, self.part)
            self.canvas.go_to(row + step)
            if event.modifiers() & Qt.KeyboardModifier.ShiftModifier and letter:
                self.set_letter(letter)
        elif key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self.part = min(max(self.part + (1 if key == Qt.Key.Key_Right else -1), 0), self._parts() - 1)
            self._describe()
            self.update()
        elif key in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.choose_letter()
        elif len(text) == 1 and text in ALPHABET:
            self.set_letter(text)
        else:
            super().keyPressEvent(event)

    # --- upkeep

    def _parts(self) -> int:
        return max(2, *(len(line.letters) for _, line in self.document.design.rounds()))

    def _fit_width(self) -> None:
        parts = self._parts()
        names = (tr("ground"), tr("figure"), tr("third"))
        self.headings = tuple((names[part], LEFT + part * PART_WIDTH, PART_WIDTH) for part in range(parts))
        self.setFixedWidth(2 * LEFT + parts * PART_WIDTH)

    def _describe(self) -> None:
        row = self.canvas.current[0]
        letter = self.letter_at(row, self.part) or tr("none")
        part = (tr("ground"), tr("figure"), tr("third"))[self.part]
        words = tr("Round {0}, {1}: {2}").format(row + 1, part, letter)
        if self.desk.strands_at(row) > 2:
            words += tr(", three strands at once")
        self.setAccessibleDescription(words)
