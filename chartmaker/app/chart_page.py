"""The chart page: value ladder and letters, the chart, and what belongs to each round, side by side."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QScrollBar,
    QSplitter,
    QStackedWidget,
    QToolBar,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.band_strip import BandStrip
from chartmaker.app.chart_canvas import ChartCanvas
from chartmaker.app.far_view import FarView
from chartmaker.app.ledger_column import LedgerColumn
from chartmaker.app.letters_list import LettersList
from chartmaker.app.mirror_desk import MirrorDesk
from chartmaker.app.motif_desk import MotifDesk
from chartmaker.app.page_frame import titled
from chartmaker.app.pattern_desk import PatternDesk
from chartmaker.app.seeing import Seeing
from chartmaker.app.shading_column import ShadingColumn
from chartmaker.app.spoken_cell import SpokenCell
from chartmaker.app.structure_desk import StructureDesk
from chartmaker.app.value_ladder import ValueLadder
from chartmaker.app.view_strip import ViewStrip
from chartmaker.app.view_words import strip_words
from chartmaker.app.views import KINDS_OF_EYES, view_named
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.checks.finding import Place

SIDE_WIDTH = 256


class ChartPage(QWidget):
    """Puts the controls of the chart together; each of them lives in a file of its own."""

    view_changed = Signal()
    """The chart is seen otherwise."""
    seeing_changed = Signal(object)
    """The user set another `Seeing`."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self._units = document, units
        self.canvas = ChartCanvas(document, units)
        self.spoken = SpokenCell(self.canvas)
        self.structure = StructureDesk(self.canvas)
        self.motifs = MotifDesk(self.canvas)
        self.patterns = PatternDesk(self.canvas, self.motifs)
        self.mirror = MirrorDesk(self.canvas)
        self.band = BandStrip(self.canvas, self.structure)
        self.shading = ShadingColumn(self.canvas)
        self.ledger = LedgerColumn(self.canvas)
        self.ladder = ValueLadder(document, units)
        self.letters = LettersList(document, units)
        self.far = FarView(document, units)
        self.strip = ViewStrip(units)
        self._seeing = Seeing()
        self._is_far = False
        self._middle = QStackedWidget()
        self.tools = QToolBar(tr("Chart tools"))
        self.tools.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonIconOnly)
        self._ladder_box = titled(tr("Value, L*"), self.ladder)
        self._letters_box = titled(tr("Letters and lots"), self.letters)
        self._shelf_box: QWidget | None = None
        """None until it is first shown."""
        self._side = self._left_side()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.tools)
        layout.addWidget(self.band)
        layout.addWidget(self.strip)
        layout.addWidget(self._columns(), 1)
        self.strip.changed.connect(self._see_otherwise)
        self.far.left.connect(self.leave_far)
        document.appraised.connect(self._show_strip)
        units.changed.connect(self._show_strip)
        self._show_strip()

    # --- how the chart is seen

    @property
    def view(self) -> str:
        """The id of the view at hand."""
        return "far" if self._is_far else self.canvas.view

    def show_view(self, name: str) -> None:
        """Show the chart, and the shades around it, in a view."""
        view = view_named(name)
        focused = QApplication.focusWidget()
        had_keys = focused is not None and self.isAncestorOf(focused)
        self._is_far = view.surface == "far"
        if self._is_far:
            self.canvas.drop()
        else:
            severity = self._seeing.severity
            self.canvas.show_view(name, severity)
            self.ladder.show_view(name, severity)
            self.letters.show_view(name, severity)
            self.shading.update()
        self._middle.setCurrentIndex(int(self._is_far))
        self._show_strip()
        if had_keys:
            self.take_keys()
        self.view_changed.emit()

    def leave_far(self) -> None:
        """Go back to the chart, as it was last seen."""
        if self._is_far:
            self.show_view(self.canvas.view)

    def take_keys(self) -> None:
        """Give the keys to the chart, in whatever view."""
        (self.far if self._is_far else self.canvas).setFocus()

    def take_seeing(self, seeing: Seeing) -> None:
        """Take what the views need to know: distances, the screen's scale, and severity."""
        was, self._seeing = self._seeing, seeing
        self.far.take(seeing)
        if was.severity != seeing.severity and view_named(self.view).tint in KINDS_OF_EYES:
            self.show_view(self.view)
        else:
            self._show_strip()

    def show_true_size(self) -> None:
        """Draw stitches as large as the printed chart has them."""
        from chartmaker.sheets.chart_plan import best_size
        from chartmaker.sheets.paper import PAPERS

        is_letter = QLocale().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
        size = best_size(self.document.design, PAPERS["letter" if is_letter else "a4"].frame)
        self.canvas.show_width(size.width / 10 * self.far.units_per_cm * self.canvas.devicePixelRatioF())

    def _show_strip(self) -> None:
        view = view_named(self.view)
        words = strip_words(view, self.document, self.far, self._units.units)
        self.strip.show_view(view, self._seeing, units_per_cm=self.far.units_per_cm, words=words)

    def _see_otherwise(self, seeing: Seeing) -> None:
        self.take_seeing(seeing)
        self.seeing_changed.emit(seeing)

    def lead_to(self, place: Place) -> None:
        """Make the place of a finding the current one."""
        self.leave_far()
        if place.round is not None:
            self.canvas.go_to(place.round, place.stitch or 0)
            self.canvas.setFocus()
        elif place.letters:
            self.show_shelf(is_shown=False)
            self.letters.show_letter(place.letters[0])

    @property
    def has_shelf(self) -> bool:
        """Whether the shelf of motifs is shown."""
        return self._shelf_box is not None and not self._shelf_box.isHidden()

    def show_shelf(self, *, is_shown: bool) -> None:
        """Show the shelf of motifs in the place of ladder and letters, or those again."""
        if is_shown == self.has_shelf:
            return
        if self._shelf_box is None:
            self._shelf_box = titled(tr("Motifs"), self.motifs.made_shelf())
            self._side.addWidget(self._shelf_box)
        for box in (self._ladder_box, self._letters_box):
            box.setVisible(not is_shown)
        self._shelf_box.setVisible(is_shown)
        self.canvas.hand_changed.emit()

    def toggle_shelf(self) -> None:
        """Show the shelf and give its words the keys, or hide it and give them to the chart."""
        self.show_shelf(is_shown=not self.has_shelf)
        (self.motifs.shelf if self.has_shelf and self.motifs.shelf else self.canvas).setFocus()

    def _columns(self) -> QSplitter:
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.setChildrenCollapsible(False)
        splitter.addWidget(self._side)
        self._middle.addWidget(self._right_side())
        self._middle.addWidget(self.far)
        splitter.addWidget(self._middle)
        splitter.setStretchFactor(1, 1)
        splitter.setSizes([SIDE_WIDTH, 1000])
        return splitter

    def _left_side(self) -> QSplitter:
        side = QSplitter(Qt.Orientation.Vertical)
        side.setChildrenCollapsible(False)
        side.addWidget(self._ladder_box)
        side.addWidget(self._letters_box)
        side.setStretchFactor(0, 3)
        side.setStretchFactor(1, 2)
        side.setSizes([300, 220])
        side.setMinimumWidth(SIDE_WIDTH)
        return side

    def _right_side(self) -> QWidget:
        """Put the chart and the columns level with it together, one scroll bar to all."""
        inside = QWidget()
        row = QHBoxLayout(inside)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        bar = QScrollBar(Qt.Orientation.Vertical)
        bar.setAccessibleName(tr("Scroll the chart"))
        own = self.canvas.verticalScrollBar()
        self.canvas.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        own.rangeChanged.connect(lambda low, high: _follow(bar, own, low, high))
        own.valueChanged.connect(bar.setValue)
        bar.valueChanged.connect(own.setValue)
        row.addWidget(self.canvas, 1)
        row.addWidget(self.shading)
        row.addWidget(self.ledger)
        row.addWidget(bar)
        return inside


def _follow(bar: QScrollBar, own: QScrollBar, low: int, high: int) -> None:
    bar.setRange(low, high)
    bar.setPageStep(own.pageStep())
    bar.setSingleStep(own.singleStep())
    bar.setValue(own.value())
