"""The fit beside the hat: counts to choose from, what would help, the depth budget, and what a change has moved."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from chartmaker.app.page_frame import words_label
from chartmaker.app.side_thread import SideThread
from chartmaker.app.told import told
from chartmaker.app.words import tr
from chartmaker.model.units import reason

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from PySide6.QtGui import QShowEvent

    from chartmaker.app.fit_reading import FitReading
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.knit.depth import Depth
    from chartmaker.knit.fit import Candidate, Help
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.units import Units

AIR = 10


class FitSide(QScrollArea):
    """Follows the design; every button and row is one step that can be undone."""

    refused = Signal(str)
    """What the design's rules, or its patterns, don't let be done, as a sentence."""
    failed = Signal(object)
    """The exception that kept the helps from being found."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # Imported late: they bring numpy, which the window's first picture can do without.
        from chartmaker.app.depth_bar import DepthBar
        from chartmaker.app.fit_counts import CountsTable
        from chartmaker.app.fit_reading import Baselines

        self.document, self._units = document, units
        self._baselines = Baselines()
        self.reading: FitReading | None = None
        self.counts = CountsTable()
        self.counts.chosen.connect(self._cast_on)
        self.counts.looked_at.connect(self._tell_times)
        self.asked, self.times, self.depth_words, self.moved_words = _line(), _line(), _line(), _line()
        self.bar = DepthBar()
        self.add_or_take = _button(self._add_or_take)
        self.fit_anew = _button(self._fit_anew)
        self.fit_anew.setText(tr("Fit anew"))
        self.fit_anew.setToolTip(tr("Count, crown and plain rounds at once, as one step"))
        self.helps: list[QPushButton] = []
        self._lay_out()
        self._thread = SideThread(self)
        self._thread.done.connect(self._take_reading)
        self._thread.failed.connect(self.failed)
        self._soon = QTimer(self, singleShot=True, interval=0)
        self._soon.timeout.connect(self.refresh)
        document.replaced.connect(self._begin)
        document.edited.connect(self._soon.start)
        units.changed.connect(self._soon.start)
        if document.is_here:
            self._begin()

    def finish(self) -> None:
        """Let nothing be worked out any more, and wait for what is."""
        self._soon.stop()
        self._thread.wait()

    def refresh(self) -> None:
        """Show counts and depth at once, helps and what has moved as soon as they are found."""
        baseline = self._baselines.follow(self.document.design, self.document.stack.index())
        if not self.isVisible():
            return
        self._show_counts()
        self._show_depth()
        self._ask(baseline)

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what was done elsewhere."""
        super().showEvent(event)
        self._soon.start()

    @property
    def is_settled(self) -> bool:
        """Whether everything shown is of the design as it stands."""
        reading = self.reading
        is_at_rest = not self._soon.isActive() and not self._thread.is_running
        return reading is not None and reading.design is self.document.design and is_at_rest

    def _begin(self) -> None:
        self._baselines.begin(self.document.design, self.document.stack.index())
        self._soon.start()

    def _ask(self, baseline: Design) -> None:
        """Have helps and moves worked out, unless they are shown already."""
        from chartmaker.app.fit_reading import read_fit

        design, units, reading = self.document.design, self._units.units, self.reading
        if reading is not None and reading.is_of(design, baseline, units):
            return
        if reading is None or reading.design is not design:
            self._show_helps(())
            self._moved.hide()
        if not self._thread.is_running:  # else what comes of it is stale, and is asked for anew when it is back
            self._thread.start(lambda: read_fit(design, baseline, units))

    def _take_reading(self, reading: FitReading) -> None:
        self.reading = reading
        self._soon.start()  # which asks anew where something has changed meanwhile
        if reading.design is not self.document.design:
            return
        self._show_helps(reading.helps)
        moved = reading.moved
        self._moved.setVisible(moved is not None and bool(moved.sentences))
        if moved is not None:
            heading = tr("What has moved") if reading.has_moved else tr("What fitting anew would do")
            self._moved_heading.setText(heading)
            self._moved.setAccessibleName(heading)
            self.moved_words.setText("\n".join(_sentence(text, self._units.units) for text in moved.sentences))
            self.fit_anew.setVisible(moved.edit is not None)

    def _show_counts(self) -> None:
        from chartmaker.app.fit_counts import wearable
        from chartmaker.knit.fit import fit

        design = self.document.design
        found = fit(design)
        self.asked.setText(
            tr("{0} stitches, {1} round, are asked for.").format(
                f"{found.target_stitches:.1f}", self._units.units.length.told(found.wanted_cm)
            )
            + ("" if found.candidates else " " + tr("The bands allow no count within the limits."))
        )
        now = design.bands[0].stitches(0)
        worth = wearable(found, now)
        self.counts.setVisible(bool(worth))
        self.counts.show_candidates(worth, now=now, units=self._units.units)
        self._tell_times()

    def _tell_times(self) -> None:
        candidate = self.counts.current
        self.times.setText(self._times_words(candidate) if candidate else "")

    def _times_words(self, candidate: Candidate) -> str:
        """Tell how often each band goes round at a count, bands that go round alike together."""
        names: dict[int, dict[str, None]] = {}
        for number, (band, times) in enumerate(zip(self.document.design.bands, candidate.times, strict=False), start=1):
            names.setdefault(times, {})[band.name.strip() or tr("band {0}").format(number)] = None
        each = (
            (tr("once {1}") if times == 1 else tr("{0} times {1}")).format(times, ", ".join(named))
            for times, named in names.items()
        )
        return tr("At {0}: {1}").format(candidate.stitches, "; ".join(each))

    def _show_depth(self) -> None:
        from chartmaker.app.depth_bar import wanted_words
        from chartmaker.knit.depth import depth_of

        depth, length = depth_of(self.document.design), self._units.units.length.told
        self.bar.show_depth(depth, self._units.units)
        self.depth_words.setText(
            tr("{0} deep, {1}: {2}").format(
                length(depth.cm), wanted_words(depth.wanted, self._units.units), self._verdict(depth)
            )
        )
        self.depth_words.setToolTip(told(depth.wanted.rule, self._units.units))
        rounds = depth.rounds_to_add if depth.has_crown else 0
        self.add_or_take.setVisible(bool(rounds))
        text = tr("Add {0} rounds") if rounds > 0 else tr("Take out {0} rounds")
        self.add_or_take.setText(text.format(abs(rounds)))

    def _verdict(self, depth: Depth) -> str:
        if not depth.has_crown:
            return tr("nothing closes the hat yet")
        return tr(depth.verdict)

    def _show_helps(self, helps: Sequence[Help]) -> None:
        while (item := self._helps.takeAt(0)) is not None:
            if widget := item.widget():
                widget.deleteLater()
        self.helps = []
        self._helps_heading.setVisible(bool(helps))
        for one in helps:
            line = _line()
            line.setText(_sentence(one.text, self._units.units))
            button = _button(partial(self._do, one.edit))
            button.setText(tr("Do so: {0} stitches").format(one.candidate.stitches))
            button.setAccessibleDescription(line.text())
            self._helps.addWidget(line)
            self._helps.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
            self.helps.append(button)

    def _cast_on(self, stitches: int) -> None:
        from chartmaker.knit.fit import cast_on_edit

        self._try(lambda: cast_on_edit(self.document.design, stitches))

    def _add_or_take(self) -> None:
        from chartmaker.knit.depth import depth_of
        from chartmaker.knit.depth_edit import add_or_take_rounds

        design = self.document.design
        self._try(lambda: add_or_take_rounds(design, depth_of(design).rounds_to_add))

    def _fit_anew(self) -> None:
        if self.reading is not None and self.reading.moved is not None and self.is_settled:
            self._do(self.reading.moved.edit)

    def _try(self, make: Callable[[], Edit | None]) -> None:
        try:
            edit = make()
        except ValueError as error:
            self.refused.emit(told(reason(error), self._units.units))
        else:
            self._do(edit)

    def _do(self, edit: Edit | None) -> None:
        self.document.do(edit)

    def _lay_out(self) -> None:
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(AIR, 0, AIR, AIR)
        column.setSpacing(6)
        self._moved = QFrame()
        self._moved.setFrameShape(QFrame.Shape.StyledPanel)
        self._moved_heading = _heading("")
        strip = QVBoxLayout(self._moved)
        strip.addWidget(self._moved_heading)
        strip.addWidget(self.moved_words)
        strip.addWidget(self.fit_anew, 0, Qt.AlignmentFlag.AlignLeft)
        self._moved.hide()
        self._helps_heading = _heading(tr("What would help"))
        self._helps_heading.hide()
        self._helps = QVBoxLayout()
        column.addWidget(self._moved)
        parts: tuple[QWidget, ...] = (_heading(tr("Stitch count")), self.asked, self.counts, self.times)
        for part in (*parts, self._helps_heading):
            column.addWidget(part)
        column.addLayout(self._helps)
        parts = (_heading(tr("Depth")), self.bar, self.depth_words)
        for part in parts:
            column.addWidget(part)
        self.add_or_take.hide()  # until the depth says what it would do
        column.addWidget(self.add_or_take, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        self.setWidget(inside)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(tr("Fit"))
        self.setMinimumWidth(270)


def _button(run: Callable[[], None]) -> QPushButton:
    button = QPushButton()
    button.clicked.connect(lambda _checked=False: run())
    button.setAutoDefault(False)
    return button


def _line() -> QLabel:
    label = words_label()
    label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
    return label


def _heading(text: str) -> QLabel:
    label = QLabel(text)
    font = label.font()
    font.setBold(True)
    label.setFont(font)
    return label


def _sentence(text: str, units: Units) -> str:
    spoken = told(text, units)
    return spoken[:1].upper() + spoken[1:] + "."
