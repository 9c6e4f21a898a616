"""The sheets page: the real pages as they will print, and beside them the choices of what is printed on what."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSpinBox, QSplitter, QToolButton, QVBoxLayout, QWidget

from chartmaker.app.page_frame import PageFrame
from chartmaker.app.sheet_choices import keep_choices, kept_choices
from chartmaker.app.sheets_maker import SheetsMaker, Wish
from chartmaker.app.sheets_side import SheetsSide, sheet_title
from chartmaker.app.sheets_view import SheetsView
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings
    from PySide6.QtGui import QHideEvent, QShowEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.sheets.print_sheets import Printed

WAIT_MS = 150
"""After a change, so that a gesture's steps make one print."""


class SheetsPage(PageFrame):
    """Follows the design while it is seen; what was changed meanwhile is printed when it is turned to again."""

    print_asked = Signal()
    file_asked = Signal()
    failed = Signal(object)
    """The exception that kept sheets from being made."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, settings: QSettings) -> None:
        super().__init__(tr("Sheets"))
        self.document, self._units, self._settings = document, units, settings
        self.view = SheetsView()
        self.side = SheetsSide(kept_choices(settings))
        self.maker = SheetsMaker(self)
        self._wait = QTimer(self, singleShot=True, interval=WAIT_MS)
        self.number = QSpinBox()
        self._of, self._percent = QLabel(), QLabel()
        self._lay_out()
        self._connect()

    @property
    def printed(self) -> Printed | None:
        """The print that is shown."""
        return self.maker.printed

    @property
    def is_current(self) -> bool:
        """Whether the print is that of the design and the choices as they are, the cover's picture too."""
        return not self._wait.isActive() and not self.maker.is_at_work

    def refresh(self) -> None:
        """Print anew soon, if the page is seen."""
        if self.isVisible():
            self._wait.start()

    def finish(self) -> None:
        """Make nothing more."""
        self._wait.stop()
        self.maker.finish()

    # --- making

    def _lay_out(self) -> None:
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(self._bar())
        column.addWidget(self.view, 1)
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(left)
        split.addWidget(self.side)
        split.setStretchFactor(0, 1)
        split.setSizes([780, 260])
        split.setChildrenCollapsible(False)
        self.content.addWidget(split, 1)
        self.note.setText(tr("The pages as they will print. Ticks say what is printed."))

    def _bar(self) -> QHBoxLayout:
        bar = QHBoxLayout()
        bar.setSpacing(6)
        label = QLabel(tr("Pa&ge"))
        label.setBuddy(self.number)
        self.number.setAccessibleName(tr("Page"))
        self.number.setRange(0, 0)
        for part in (label, self.number, self._of):
            bar.addWidget(part)
        bar.addStretch(1)
        self._percent.setAccessibleName(tr("Size of the pages"))
        bar.addWidget(self._button("−", tr("Smaller (−)"), lambda: self.view.zoom_by(-1)))
        bar.addWidget(self._percent)
        bar.addWidget(self._button("+", tr("Larger (+)"), lambda: self.view.zoom_by(1)))
        bar.addWidget(self._button(tr("Width"), tr("As wide as the view (W)"), self.view.fit_width))
        bar.addWidget(self._button(tr("Whole page"), tr("A whole page in the view (F)"), self.view.fit_page))
        return bar

    def _button(self, text: str, tip: str, run: object) -> QToolButton:
        button = QToolButton()
        button.setText(text)
        button.setToolTip(tip)
        button.setAccessibleName(tip)
        button.setAutoRaise(True)
        button.clicked.connect(run)
        return button

    def _connect(self) -> None:
        self.document.appraised.connect(self.refresh)
        self._units.changed.connect(self.refresh)
        self._wait.timeout.connect(self._make)
        self.side.changed.connect(self._take_choices)
        self.side.led.connect(self.show_sheet)
        self.side.print_asked.connect(self.print_asked)
        self.side.file_asked.connect(self.file_asked)
        self.maker.made.connect(self._show)
        self.maker.painted.connect(self._take_page)
        self.maker.failed.connect(self.failed)
        self.view.wanted.connect(self._paint_next)
        self.view.page_changed.connect(self._tell_page)
        self.view.zoomed.connect(self._tell_page)
        self.number.valueChanged.connect(self._go_to)

    # --- following

    def showEvent(self, event: QShowEvent) -> None:
        """Print what is new since the page was seen."""
        super().showEvent(event)
        self.view.setFocus()
        self._make()

    def hideEvent(self, event: QHideEvent) -> None:
        """Rest."""
        super().hideEvent(event)
        self._wait.stop()

    def _make(self) -> None:
        choices = self.side.choices
        if choices.sheets:
            self.maker.make(Wish(self.document.appraisal, choices, self._units.units))
        else:
            self.side.show_counts({})
            self.note.setText(tr("No sheet is ticked: nothing would be printed."))

    def _take_choices(self) -> None:
        if self.side.choices.sheets:
            keep_choices(self._settings, self.side.choices)
        self._wait.start()

    def _show(self, printed: Printed) -> None:
        counts = Counter(page.sheet for page in printed.pages)
        self.side.show_counts(counts)
        self.note.setText(tr("The pages as they will print. Ticks say what is printed."))
        self.view.show_print(printed)
        self.number.setRange(1, len(printed.pages))
        self._of.setText(tr("of {0}").format(len(printed.pages)))
        self._tell_page()

    def _tell_page(self) -> None:
        self._percent.setText(f"{self.view.percent} %")
        if self.printed is not None and self.view.page < len(self.printed.pages):
            self.number.blockSignals(True)
            self.number.setValue(self.view.page + 1)
            self.number.blockSignals(False)
            title = sheet_title(self.printed.pages[self.view.page].sheet)
            told = tr("page {0} of {1}: {2}").format(self.view.page + 1, self.view.count, title)
            self.view.setAccessibleDescription(told)

    def _go_to(self, number: int) -> None:
        self.view.go_to(number - 1)

    def show_sheet(self, name: str) -> None:
        """Show the first page of a sheet, if it is printed."""
        pages = self.printed.pages if self.printed else ()
        found = next((index for index, page in enumerate(pages) if page.sheet == name), None)
        if found is not None:
            self.view.go_to(found)

    def _paint_next(self) -> None:
        """Have the next page drawn that is in sight and has no picture."""
        missing = self.view.missing()
        if missing is not None and not self.maker.is_painting and self.isVisible():
            self.maker.paint(missing[0], width_px=missing[1])

    def _take_page(self, printed: Printed, index: int, raw: object) -> None:
        self.view.take(printed, index, raw)  # type: ignore[arg-type]  # the signal carries any object
        self._paint_next()
