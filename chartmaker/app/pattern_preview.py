"""A pattern as it will be knitted: one repeat live, its neighbours faded beside it, long floats marked."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPaintEvent, QPen, qRgb
from PySide6.QtWidgets import QSizePolicy, QWidget

from chartmaker.app.pattern_words import longest_allowed
from chartmaker.app.shades import SURROUND, UNKNOWN, ghosted, ink_on, letter_colour
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.pattern_wish import Made
    from chartmaker.appraisal import Appraisal
    from chartmaker.pictures.pattern import Pattern

FloatsShown = Literal["long", "all", "none"]
LARGEST_STITCH = 18.0
"""Width of a stitch in window units, where there is room."""
SMALLEST_GRID = 5.0
"""Stitches below this width are drawn without lines between them."""
SMALLEST_STRAND = 2.5
"""In rounds below this height strands would hide the pattern; the brackets beside it tell of them."""
MARGIN = 10.0
MARKS = 40.0
"""Room at the right for the marks of rounds with long floats."""
BESIDE = 0.25
"""Repeats shown on each side at least."""
UNKNOWN_GREYS = (228, 150, 84, 190)
"""Of letters whose shades are not known, so that they can be told from one another."""


class PatternPreview(QWidget):
    """Draws a pattern at the proportion of the gauge."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._made: Made | None = None
        self._live, self._ghost = QImage(), QImage()
        self._colours: dict[str, QColor] = {}
        self._height_per_width = 1.0
        self._limit = 0
        self._which: FloatsShown = "long"
        self.setMinimumSize(220, 160)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(tr("Preview of the pattern"))

    @property
    def _pattern(self) -> Pattern | None:
        return self._made.pattern if self._made is not None else None

    def show_pattern(self, made: Made | None, appraisal: Appraisal) -> None:
        """Show a pattern in the shades of a design's letters; None shows that there is none."""
        self._made = made
        gauge = appraisal.design.gauge
        self._height_per_width = gauge.round_height_cm / gauge.stitch_width_cm
        self._limit = longest_allowed(appraisal)
        if made is not None:
            pattern = made.pattern
            letters = "".join(sorted({letter for line in pattern.rounds for letter in line.letters}))
            self._colours = _colours(letters, appraisal)
            self._live = _image(pattern, self._colours)
            self._ghost = _image(pattern, {letter: ghosted(colour) for letter, colour in self._colours.items()})
        self.update()

    def show_floats(self, which: FloatsShown) -> None:
        """Draw the floats that are over the limit, or all of two stitches and more, or none."""
        self._which = which
        self.update()

    @property
    def repeat_box(self) -> QRectF:
        """Where the live repeat stands."""
        if self._pattern is None:
            return QRectF()
        stitches, rounds = len(self._pattern.rounds[0]), len(self._pattern.rounds)
        room = QRectF(self.rect()).adjusted(MARGIN, MARGIN, -MARGIN - MARKS, -MARGIN)
        width = min(
            LARGEST_STITCH,
            room.width() / (stitches * (1 + 2 * BESIDE)),
            room.height() / (rounds * self._height_per_width),
        )
        box = QRectF(0, 0, stitches * width, rounds * width * self._height_per_width)
        box.moveCenter(room.center())
        return box

    def stitch_box(self, index: int, stitch: int) -> QRectF:
        """Give where a stitch of the live repeat stands, by index of its round and its own."""
        box = self.repeat_box
        pattern = self._pattern
        if pattern is None:
            return QRectF()
        width, height = box.width() / len(pattern.rounds[0]), box.height() / len(pattern.rounds)
        return QRectF(box.right() - (stitch + 1) * width, box.bottom() - (index + 1) * height, width, height)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the repeat with as many neighbours as there is room for."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), SURROUND)
        if self._made is None:
            return
        pattern = self._made.pattern
        box = self.repeat_box
        stitch = box.width() / len(pattern.rounds[0])
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, stitch * self.devicePixelRatioF() < 2)
        around = QRectF(MARGIN, box.top(), self.width() - 2 * MARGIN - MARKS, box.height())
        painter.save()
        painter.setClipRect(around)
        copies = int(around.width() / max(1.0, box.width())) // 2 + 1
        for copy in range(-copies, copies + 1):
            if copy:
                painter.drawImage(box.translated(copy * box.width(), 0), self._ghost)
        painter.drawImage(box, self._live)
        if stitch >= SMALLEST_GRID:
            self._paint_grid(painter, box, pattern)
        painter.restore()
        self._paint_edges(painter, box)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_floats(painter, box, self._made)
        self._paint_marks(painter, around.right(), self._made.longest)

    def _paint_grid(self, painter: QPainter, box: QRectF, pattern: Pattern) -> None:
        painter.setPen(QPen(QColor(0, 0, 0, 46), 0))
        stitches, rounds = len(pattern.rounds[0]), len(pattern.rounds)
        for column in range(1, stitches):
            x = box.left() + box.width() * column / stitches
            painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()))
        for row in range(1, rounds):
            y = box.top() + box.height() * row / rounds
            painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y))

    def _paint_edges(self, painter: QPainter, box: QRectF) -> None:
        """Mark the join: a black line, with a white one outside it, at each end of the repeat."""
        for x, side in ((box.left(), -1), (box.right(), 1)):
            for offset, colour in ((0, QColor(0, 0, 0)), (side, QColor(255, 255, 255))):
                painter.setPen(QPen(colour, 1))
                painter.drawLine(QPointF(x + offset, box.top() - 4), QPointF(x + offset, box.bottom() + 4))

    def _paint_floats(self, painter: QPainter, box: QRectF, made: Made) -> None:
        """Draw strands across the stitches that they pass: long ones thick, with a bar at each end."""
        lines = made.pattern.rounds
        width, height = box.width() / len(lines[0]), box.height() / len(lines)
        if height < SMALLEST_STRAND:
            return
        painter.save()
        painter.setClipRect(box)
        shows_all = self._which == "all" and width >= SMALLEST_GRID
        for index, (line, floats) in enumerate(zip(lines, made.floats, strict=True)):
            for start, length in floats:
                is_long = length > self._limit
                if self._which == "none" or not (is_long or (shows_all and length > 1)):
                    continue
                colour = ink_on(self._colours[line.letter_of(start)])
                painter.setPen(_strand(colour, height, is_long=is_long))
                for turn in (0, len(line)):  # what runs over the join ends at the repeat's other side
                    right = box.right() - (start - turn + 0.2) * width
                    left = right - (length - 0.4) * width
                    y = box.bottom() - (index + 0.5) * height
                    painter.drawLine(QPointF(left, y), QPointF(right, y))
                    if is_long:
                        for x in (left, right):
                            painter.drawLine(QPointF(x, y - 0.32 * height), QPointF(x, y + 0.32 * height))
        painter.restore()

    def _paint_marks(self, painter: QPainter, left: float, longest: tuple[int, ...]) -> None:
        """Beside each run of rounds with long floats, a bracket and the longest of them."""
        painter.setPen(QPen(QColor(255, 255, 255), 2))
        height = self.stitch_box(0, 0).height()
        bottom, free = self.repeat_box.bottom(), float(self.height())
        metrics = painter.fontMetrics()
        numbered = groupby(enumerate(longest), key=lambda item: item[1] > self._limit)
        for is_long, group in numbered:
            rounds = list(group)
            if not is_long:
                continue
            low, high = bottom - rounds[0][0] * height - 1, bottom - (rounds[-1][0] + 1) * height + 1
            x = left + 6
            painter.drawLine(QPointF(x, low), QPointF(x, high))
            middle = (low + high) / 2
            if middle + metrics.height() / 2 <= free:
                text = f"! {max(length for _, length in rounds)}"
                painter.drawText(QPointF(x + 5, middle + metrics.ascent() / 2 - 1), text)
                free = middle - metrics.height() / 2


def _strand(colour: QColor, height: float, *, is_long: bool) -> QPen:
    if is_long:
        return QPen(colour, 2.0 if height > 6 else 1.0)
    faint = QColor(colour)
    faint.setAlpha(150)
    return QPen(faint, 1.0, Qt.PenStyle.DotLine)


def _colours(letters: str, appraisal: Appraisal) -> dict[str, QColor]:
    """Give each letter its shade; letters without one get greys that differ."""
    found = {letter: letter_colour(appraisal, letter) for letter in letters}
    unknown = [letter for letter, colour in found.items() if colour == UNKNOWN]
    for number, letter in enumerate(unknown):
        grey = UNKNOWN_GREYS[number % len(UNKNOWN_GREYS)]
        found[letter] = QColor(grey, grey, grey)
    return found


def _image(pattern: Pattern, colours: dict[str, QColor]) -> QImage:
    """Draw one repeat, a pixel a stitch, stitch 1 at the right and round 1 at the foot."""
    stitches, rounds = len(pattern.rounds[0]), len(pattern.rounds)
    table = {letter: ord(letter) - ord("A") for letter in colours}
    rows = bytearray()
    for line in reversed(pattern.rounds):
        rows += line.cells_by_letter[::-1].ljust(-(-stitches // 4) * 4, b"\0")
    data = bytes(rows)  # held until it is converted: Qt only looks at it
    image = QImage(data, stitches, rounds, -(-stitches // 4) * 4, QImage.Format.Format_Indexed8)
    entries = [qRgb(0, 0, 0)] * 26
    for letter, code in table.items():
        entries[code] = colours[letter].rgb()
    image.setColorTable(entries)
    return image.convertToFormat(QImage.Format.Format_RGB32)
