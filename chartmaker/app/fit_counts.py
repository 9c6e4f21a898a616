"""The stitch counts that the bands allow, as rows: a click or Enter casts on so many."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QSizePolicy

from chartmaker.app.table import Cell, ReadingTable
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QKeyEvent, QMouseEvent

    from chartmaker.knit.fit import Candidate, Fit
    from chartmaker.model.units import Units

NOW = "▸ "
"""Before the count that the hat has."""
FARTHEST = 0.3
"""Counts farther than this from what is asked, as a share of it, are nothing to choose from."""
LEFT = Qt.MouseButton.LeftButton


def wearable(found: Fit, now: int) -> tuple[Candidate, ...]:
    """Give the counts worth showing: the nearest, the present one, and what is not absurdly far."""
    farthest = FARTHEST * found.wanted_cm
    return tuple(
        candidate
        for place, candidate in enumerate(found.candidates)
        if not place or candidate.stitches == now or abs(candidate.off_cm) <= farthest
    )


class CountsTable(ReadingTable):
    """The nearest count stands first; the arrow keys walk through them, so that each can be looked at first."""

    chosen = Signal(int)
    """A count to cast on."""
    looked_at = Signal()
    """Another row is the current one."""

    def __init__(self) -> None:
        headings = (tr("Cast on"), tr("Round"), tr("Ease %"), tr("Verdict"))
        super().__init__(headings, wide=0, name=tr("Stitch counts that the bands allow"))
        self.candidates: tuple[Candidate, ...] = ()
        self.verticalHeader().setDefaultSectionSize(24)
        self.setStyleSheet(self.styleSheet().replace("8px", "4px"))  # a narrow column, whose words come first
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setToolTip(tr("Click a count, or press Enter on it, to cast on so many stitches"))
        self.currentCellChanged.connect(lambda *_cells: self.looked_at.emit())

    def show_candidates(self, candidates: Sequence[Candidate], *, now: int, units: Units) -> None:
        """Show counts, the present one marked."""
        self.candidates = tuple(candidates)
        heading = self.horizontalHeaderItem(1)
        if heading is not None:
            heading.setText(tr("Round") + tr(units.length.unit))
        self.show_rows([_row(candidate, now=now, units=units) for candidate in candidates])
        for line in range(self.rowCount()):
            for place in range(self.columnCount()):
                item = self.item(line, place)
                if item is not None:
                    item.setToolTip("")
        here = [row for row, candidate in enumerate(candidates) if candidate.stitches == now]
        self.setCurrentCell(here[0] if here else 0, 0)
        rows = self.verticalHeader().defaultSectionSize() * len(candidates)
        self.setFixedHeight(self.horizontalHeader().sizeHint().height() + rows + 2 * self.frameWidth())

    @property
    def current(self) -> Candidate | None:
        """The count that is looked at."""
        row = self.currentRow()
        return self.candidates[row] if 0 <= row < len(self.candidates) else None

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Choose the count that was clicked."""
        super().mouseReleaseEvent(event)
        index = self.indexAt(event.position().toPoint())
        if event.button() == LEFT and index.isValid() and index.row() == self.currentRow():
            self._choose()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Choose the count that is looked at by Enter."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._choose()
        else:
            super().keyPressEvent(event)

    def _choose(self) -> None:
        if self.current is not None:
            self.chosen.emit(self.current.stitches)


def _row(candidate: Candidate, *, now: int, units: Units) -> tuple[Cell, ...]:
    is_now = candidate.stitches == now
    length, ease = units.length, number(candidate.ease_percent)
    if candidate.ease_percent >= 0.5:
        ease = "+" + ease
    return (
        Cell(f"{NOW if is_now else ''}{candidate.stitches}", is_number=True, is_strong=is_now),
        Cell(number(length.shown(candidate.circumference_cm), length.digits), is_number=True, is_strong=is_now),
        Cell(ease, is_number=True, is_strong=is_now),
        Cell(tr(candidate.verdict), is_strong=is_now),
    )
