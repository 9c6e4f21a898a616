"""What sets the axes of mirrored drawing at the chart's cursor, and keeps them where the chart is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.mirror import Axes
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.chart_canvas import ChartCanvas


class MirrorDesk:
    """Works at the canvas's cursor; what drawing is mirrored about is told by the canvas's `told`."""

    def __init__(self, canvas: ChartCanvas) -> None:
        self._canvas = canvas
        canvas.document.edited.connect(self._keep_inside)
        canvas.document.replaced.connect(lambda: self._set(Axes()))

    @property
    def axes(self) -> Axes:
        """What drawing is mirrored about."""
        return self._canvas.hand.axes

    def turn_stitch(self) -> None:
        """Mirror about the stitch at the cursor; then about its left edge; then about none."""
        self._turn(self.axes.stitch_turned(self._canvas.current[1]))

    def turn_round(self) -> None:
        """Mirror about the round at the cursor; then about its upper edge; then about none."""
        self._turn(self.axes.round_turned(self._canvas.current[0]))

    def _turn(self, axes: Axes) -> None:
        self._canvas.drop()
        self._set(axes)
        self._canvas.told.emit(tr("drawing is {0}").format(axes.words))

    def _keep_inside(self) -> None:
        axes = self.axes.inside(self._canvas.grid)
        if axes != self.axes:
            self._set(axes)

    def _set(self, axes: Axes) -> None:
        self._canvas.hand.axes = axes
        self._canvas.viewport().update()
        self._canvas.hand_changed.emit()
