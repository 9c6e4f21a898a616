"""The cursor on the chart, and the run of rounds that is chosen with it."""

from __future__ import annotations

from chartmaker.app.chart_sight import ChartSight
from chartmaker.app.chosen_rounds import run_between


class ChartCursor(ChartSight):
    """Moves the cursor within the live repeat; how it is shown there is its heirs' business."""

    current: tuple[int, int]
    _anchor: int | None

    @property
    def chosen(self) -> range:
        """The rows that are worked on together: the cursor's, or a run within a band that ends there."""
        return run_between(self._grid, self._anchor, self.current[0])

    def go_to(self, row: int, stitch: int = 0) -> None:
        """Make a stitch of the live repeat the current one, and bring it into sight."""
        row = min(max(row, 0), len(self._grid.rows) - 1)
        stitch = min(max(stitch, 0), self._grid.rows[row].length - 1)
        self._move_cursor((row, self._grid.column_of(row, stitch)))

    def choose(self, rows: range) -> None:
        """Choose a run of rounds, the cursor in the last of them at the stitch where it is."""
        self._anchor = None
        self.go_to(rows[0], self._stitch_near())
        self.reach_to(rows[-1])

    def reach_to(self, row: int) -> None:
        """Choose the rounds from where choosing began, or the cursor's, to a row, as far as the band goes."""
        anchor = self.current[0] if self._anchor is None else self._anchor
        run = run_between(self._grid, anchor, min(max(row, 0), len(self._grid.rows) - 1))
        row = run.start if anchor != run.start else run.stop - 1
        stitch = min(self._stitch_near(), self._grid.rows[row].length - 1)
        self._move_cursor((row, self._grid.column_of(row, stitch)), anchor=anchor)

    def _stitch_near(self) -> int:
        row, column = self.current
        return max(0, column - self._grid.rows[row].offset) if row < len(self._grid.rows) else 0

    def _move_cursor(self, cell: tuple[int, int], *, anchor: int | None = None) -> None:
        """Put the cursor on a cell, and choose from another row to it, or its own alone."""
        raise NotImplementedError
