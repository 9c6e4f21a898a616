"""The pages of the window: their tabs along the top, the colourway beside them, and the page at hand below."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QStackedWidget, QTabBar, QVBoxLayout, QWidget

from chartmaker.app.colourway_box import ColourwayBox
from chartmaker.app.page_frame import PageFrame, rule
from chartmaker.app.seeing import kept_seeing
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from PySide6.QtCore import QSettings
    from PySide6.QtGui import QAction

    from chartmaker.app.lots_desk import LotsDesk
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting

PAGES = ("lots", "hat", "chart", "yarn", "baths", "sheets")
"""In the order of the job."""


class Pages(QWidget):
    """Holds the pages that were turned to already; the others are made when they are first turned to."""

    asked = Signal(str)
    """A tab was chosen: the page that it stands for."""
    refused = Signal(str)
    """What a page could not take."""
    failed = Signal(object)
    """The exception that kept a page from showing what it is for."""

    def __init__(  # noqa: PLR0913 - what the pages need of their window
        self,
        document: OpenDesign,
        lots: LotsDesk,
        waiting: QWidget,
        *,
        settings: QSettings,
        units: UnitsSetting,
        actions: Callable[[], Mapping[str, QAction]],
    ) -> None:
        """Show what waits for the chart, with the chart's tab in front; `actions` gives the window's by their ids."""
        super().__init__()
        self._settings, self._actions = settings, actions
        self._units = units
        self._document, self._lots = document, lots
        self._made: dict[str, QWidget] = {}
        self.stack = QStackedWidget()
        self.stack.addWidget(waiting)
        self.colourways = ColourwayBox(document)
        self.tabs = _tabs()
        self.tabs.currentChanged.connect(lambda index: self.asked.emit(PAGES[index]))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addLayout(self._top())
        layout.addWidget(rule())
        layout.addWidget(self.stack, 1)

    def __getitem__(self, name: str) -> QWidget:
        """Give a page that was made already."""
        return self._made[name]

    @property
    def at_hand(self) -> str:
        """The name of the page whose tab is in front."""
        return PAGES[self.tabs.currentIndex()]

    def put(self, name: str, page: QWidget) -> None:
        """Take a page in, and show it; its tab stays where it is."""
        self._made[name] = page
        self.stack.addWidget(page)
        self.stack.setCurrentWidget(page)

    def show_page(self, name: str) -> None:
        """Show a page and its tab."""
        if name not in self._made:
            self.put(name, self._new(name))
        self.stack.setCurrentWidget(self._made[name])
        self.tabs.setCurrentIndex(PAGES.index(name))

    def finish(self) -> None:
        """Let no page make anything beside the window any more."""
        for name in ("hat", "sheets"):
            page = self._made.get(name)
            if page is not None:
                page.finish()  # type: ignore[attr-defined]

    def _new(self, name: str) -> PageFrame:
        from chartmaker.app import baths_page, hat_page, lots_page, yarn_page
        from chartmaker.app.keeping_strip import KeepingStrip

        if name == "hat":
            page = hat_page.HatPage(self._document, self._units, seeing=lambda: kept_seeing(self._settings))
            page.refused.connect(self.refused)
            return page
        if name == "lots":
            lots = lots_page.LotsPage(
                self._document, settings=self._settings, units=self._units, desk=self._lots, actions=self._actions()
            )
            lots.content.insertWidget(2, KeepingStrip(self._lots, lots))
            lots.refused.connect(self.refused)
            lots.chosen.connect(self._lots.choose)
            return lots
        if name == "yarn":
            yarn = yarn_page.YarnPage(self._document, self._units)
            yarn.refused.connect(self.refused)
            return yarn
        if name == "sheets":
            from chartmaker.app.sheets_page import SheetsPage

            sheets = SheetsPage(self._document, self._units, self._settings)
            for signal, action in ((sheets.print_asked, "file.print"), (sheets.file_asked, "file.pdf")):
                signal.connect(self._actions()[action].trigger)
            sheets.failed.connect(self.failed)
            return sheets
        from chartmaker.app.baths_desk import BathsDesk

        desk = BathsDesk(self._lots.filing, self)
        desk.refused.connect(self.refused)
        baths = baths_page.BathsPage(desk, self._units)
        baths.content.insertWidget(2, KeepingStrip(self._lots, baths))
        baths.told.connect(self.refused)
        return baths

    def _top(self) -> QHBoxLayout:
        top = QHBoxLayout()
        top.setContentsMargins(8, 4, 8, 0)
        top.setSpacing(8)
        top.addWidget(self.tabs)
        top.addStretch(1)
        label = QLabel(tr("Colourway"))
        label.setBuddy(self.colourways)
        top.addWidget(label)
        top.addWidget(self.colourways)
        return top


def _tabs() -> QTabBar:
    tabs = QTabBar()
    tabs.setAccessibleName(tr("Pages"))
    tabs.setDrawBase(False)
    tabs.setDocumentMode(True)
    tabs.setExpanding(False)
    for number, name in enumerate((tr("Lots"), tr("Hat"), tr("Chart"), tr("Yarn"), tr("Baths"), tr("Sheets")), start=1):
        index = tabs.addTab(name)
        tabs.setTabToolTip(index, tr("{0} (Ctrl+{1})").format(name, number))
    tabs.setCurrentIndex(PAGES.index("chart"))
    return tabs
