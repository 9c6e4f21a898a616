"""The window: pages along the top, the page at hand, the findings below, the status at the foot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QSettings, Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QApplication,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QMainWindow,
    QPlainTextEdit,
    QSizePolicy,
    QSplitter,
    QStackedWidget,
    QTabBar,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.action_bar import ActionBar
from chartmaker.app.arrival import Arrival
from chartmaker.app.autosave import Autosave
from chartmaker.app.background import Background
from chartmaker.app.colourway_box import ColourwayBox
from chartmaker.app.filing import Filing
from chartmaker.app.findings_strip import FindingsStrip, sentence
from chartmaker.app.history import History
from chartmaker.app.left_work import LeftWorkOffer
from chartmaker.app.lots_desk import LotsDesk
from chartmaker.app.own_file import OwnFile
from chartmaker.app.page_frame import PageFrame, rule
from chartmaker.app.questions import Questions
from chartmaker.app.seeing import keep_seeing, kept_seeing
from chartmaker.app.selection_label import SelectionLabel
from chartmaker.app.told import told
from chartmaker.app.views import view_named
from chartmaker.app.waiting_page import WaitingPage
from chartmaker.app.words import plain_tip, tr

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtGui import QCloseEvent

    from chartmaker.app.chart_page import ChartPage
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.checks.finding import Place

PAGES = ("lots", "hat", "chart", "yarn", "baths")
"""In the order of the job."""


class Window(QMainWindow):
    """One design to a window.

    It is shown before the chart is there, which needs numpy and the sums; those are loaded once it has been painted.
    """

    chart_came = Signal()
    """All that the start needed is loaded and made."""

    document: OpenDesign
    filing: Filing
    findings: FindingsStrip
    lots: LotsDesk
    history: History

    def __init__(
        self,
        document: OpenDesign,
        settings: QSettings,
        questions: Questions | None = None,
        *,
        state: Path | None = None,
    ) -> None:
        """Take the folder of the program's state; without one, unsaved work and copies of saves are not kept."""
        super().__init__()
        self.document = document
        # Goes with the window, whose connections Qt cuts first: a history that is torn down still sends signals.
        document.setParent(self)
        self._settings = settings
        self.background = Background()
        own_file = OwnFile(state)
        self.filing = Filing(
            document,
            own_file=own_file,
            questions=questions or Questions(self),
            background=self.background,
            settings=settings,
        )
        self.lots = LotsDesk(self.filing, self)
        self.history = History(document, self.lots.open_palette)
        self.autosave = Autosave(document, own_file, state and state / "recovery")
        self._left_work = LeftWorkOffer(self.filing, self.autosave)
        self.findings = FindingsStrip(document)
        self.colourways = ColourwayBox(document)
        self._pages: dict[str, QWidget] = {}
        self._chart: ChartPage | None = None
        self._waiting = WaitingPage()
        self._arrival = Arrival(self)
        self._stack = QStackedWidget()
        self._tabs = self._make_tabs()
        self._hover = QLabel()
        self._told: tuple[int, int] | None = None
        self._hover.setTextFormat(Qt.TextFormat.PlainText)
        self._hover.setContentsMargins(8, 0, 0, 0)
        # Long words are cut short rather than make the window wider.
        self._hover.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._lay_out()
        self.actions_made = ActionBar(self)
        self.actions_made.fill_tool_bar(self._waiting.tools)
        self._connect()
        self.resize(1180, 800)
        self._restore()
        self._show_title()
        self._waiting.setFocus()

    # --- pages

    @property
    def has_chart(self) -> bool:
        """Whether the chart is there already."""
        return self._chart is not None

    @property
    def chart(self) -> ChartPage:
        """The chart page; it comes when it is first asked for, or by itself after the window's first picture."""
        return self._chart or self.bring_chart()

    def bring_chart(self) -> ChartPage:
        """Put the chart in the place that waits for it, if it is not there yet."""
        if self._chart is not None:
            return self._chart
        self._arrival.finish()
        from chartmaker.app.chart_page import ChartPage

        if not self.document.is_appraised:
            self.document.appraise_now()
        self._chart = self._pages["chart"] = chart = ChartPage(self.document)
        chart.canvas.hovered.connect(self._tell_stitch)
        self.document.appraised.connect(self._tell_stitch_again)
        chart.canvas.hand_changed.connect(self.actions_made.refresh)
        for signal in (chart.canvas.refused, chart.canvas.told):
            signal.connect(lambda text: self.statusBar().showMessage(sentence(text), 8000))
        chart.far.refused.connect(lambda text: self.statusBar().showMessage(text, 8000))
        chart.take_seeing(kept_seeing(self._settings))
        chart.seeing_changed.connect(lambda seeing: keep_seeing(self._settings, seeing))
        chart.view_changed.connect(self._follow_view)
        SelectionLabel(chart.canvas.blocks, self.statusBar())
        self.actions_made.take_chart(chart)
        self._show_title()
        had_keys = self.focusWidget() is self._waiting
        self._stack.addWidget(chart)
        self._stack.setCurrentWidget(chart)
        self._waiting.deleteLater()
        self._fold_findings(is_folded=False)
        if had_keys:
            chart.canvas.setFocus()
        self.chart_came.emit()
        return chart

    @property
    def page(self) -> str:
        """The page at hand."""
        return PAGES[self._tabs.currentIndex()]

    def show_page(self, name: str) -> None:
        """Turn to a page; it is made when it is first turned to."""
        self.bring_chart()
        if name not in self._pages:
            self._pages[name] = self._made(name)
        page = self._pages[name]
        if self._stack.indexOf(page) < 0:
            self._stack.addWidget(page)
        self._stack.setCurrentWidget(page)
        self._tabs.setCurrentIndex(PAGES.index(name))
        self.history.turn_to(name)
        self.actions_made.refresh()
        self._hover.clear()
        if name == "chart":
            self.chart.take_keys()

    def lead_to(self, place: Place) -> None:
        """Turn to the place of a finding."""
        page = place.page if place.page in PAGES else "chart"
        self.show_page(page)
        shown = self._pages[page]
        if shown is self._chart:
            self.chart.lead_to(place)
        elif isinstance(shown, PageFrame):
            shown.lead_to(place)

    def show_view(self, view: str) -> None:
        """Show the chart in a view, by its id."""
        self.chart.show_view(view)

    def _follow_view(self) -> None:
        from chartmaker.app.far_view import far_sentence

        self.actions_made.refresh()
        if not view_named(self.chart.view).is_drawn_on:
            self.statusBar().showMessage(far_sentence(), 8000)
        elif self.statusBar().currentMessage() == far_sentence():
            self.statusBar().clearMessage()

    def _made(self, name: str) -> PageFrame:
        from chartmaker.app import baths_page, hat_page, lots_page, yarn_page

        if name == "hat":
            page = hat_page.HatPage(self.document)
            page.refused.connect(lambda text: self.statusBar().showMessage(told(text), 8000))
            return page
        if name == "lots":
            from chartmaker.app.keeping_strip import KeepingStrip

            lots = lots_page.LotsPage(self.document)
            lots.content.insertWidget(2, KeepingStrip(self.lots))
            lots.chosen.connect(self.lots.choose)
            return lots
        kinds = {"yarn": yarn_page.YarnPage, "baths": baths_page.BathsPage}
        return kinds[name](self.document)

    # --- what actions do

    def save(self) -> None:
        """Save, with what is still being typed."""
        self.finish_typing()
        self.filing.save()

    def save_as(self) -> None:
        """Save elsewhere, with what is still being typed."""
        self.finish_typing()
        self.filing.save_as()

    def open_copy(self) -> None:
        """Choose among the copies of the last saves, after what is still being typed."""
        self.finish_typing()
        self.filing.open_copy()

    def print_pdf(self) -> None:
        """Print, with what is still being typed."""
        self.finish_typing()
        self.filing.print_pdf()

    def export_picture(self) -> None:
        """Draw the fabric to a file in the view at hand, or in the shade where no picture shows that view."""
        self.finish_typing()
        self.filing.export_picture(view_named(self.chart.view).picture)

    def undo(self) -> None:
        """Take the last step back; a gesture under way is dropped first."""
        self.chart.canvas.drop()
        self.history.undoing.undo()

    def redo(self) -> None:
        """Take a step again."""
        self.chart.canvas.drop()
        self.history.redoing.redo()

    def finish_typing(self) -> None:
        """Take what is being typed, as leaving its control would."""
        focused = QApplication.focusWidget()
        if isinstance(focused, QLineEdit | QAbstractSpinBox | QPlainTextEdit) and self.isAncestorOf(focused):
            focused.clearFocus()
            focused.setFocus()

    def show_keys(self) -> None:
        """Show every key."""
        from chartmaker.app.keys_dialog import KeysDialog

        KeysDialog(self).open()

    def show_about(self) -> None:
        """Tell what this is."""
        from chartmaker.app.about import show_about

        show_about(self)

    # --- making

    def _make_tabs(self) -> QTabBar:
        tabs = QTabBar()
        tabs.setAccessibleName(tr("Pages"))
        tabs.setDrawBase(False)
        tabs.setDocumentMode(True)
        tabs.setExpanding(False)
        for number, name in enumerate((tr("Lots"), tr("Hat"), tr("Chart"), tr("Yarn"), tr("Baths")), start=1):
            index = tabs.addTab(name)
            tabs.setTabToolTip(index, tr("{0} (Ctrl+{1})").format(name, number))
        tabs.setCurrentIndex(PAGES.index("chart"))
        return tabs

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        top.setContentsMargins(8, 4, 8, 0)
        top.setSpacing(8)
        top.addWidget(self._tabs)
        top.addStretch(1)
        label = QLabel(tr("Colourway"))
        label.setBuddy(self.colourways)
        top.addWidget(label)
        top.addWidget(self.colourways)
        upper = QWidget()
        layout = QVBoxLayout(upper)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addLayout(top)
        layout.addWidget(rule())
        layout.addWidget(self._stack, 1)
        self._split = QSplitter(Qt.Orientation.Vertical)
        self._split.setChildrenCollapsible(False)
        self._split.addWidget(upper)
        self._split.addWidget(self.findings)
        self._split.setStretchFactor(0, 1)
        self._stack.addWidget(self._waiting)
        self.setCentralWidget(self._split)
        self.statusBar().addWidget(self._hover, 1)
        self.statusBar().addPermanentWidget(self.background)

    def _connect(self) -> None:
        document = self.document
        self._waiting.canvas.painted.connect(self._arrival.begin)
        self._arrival.loaded.connect(self.bring_chart)
        self._tabs.currentChanged.connect(lambda index: self.show_page(PAGES[index]))
        self.findings.led.connect(self.lead_to)
        self.findings.folded.connect(self._fold_findings)
        self.filing.told.connect(lambda text: self.statusBar().showMessage(text, 6000))
        self.autosave.told.connect(self.filing.told)
        self.chart_came.connect(lambda: QTimer.singleShot(0, self, self._left_work.offer))
        document.stack.indexChanged.connect(self._follow)
        self.lots.chosen_changed.connect(self.actions_made.refresh)
        document.stack.cleanChanged.connect(self._show_title)
        document.appraised.connect(self._follow)
        document.failed.connect(self.filing.tell)
        document.replaced.connect(self._show_title)
        self.findings.list.currentItemChanged.connect(lambda _now, _before: self.actions_made.refresh())

    def _follow(self) -> None:
        self.actions_made.refresh()
        self._show_title()

    def _show_title(self) -> None:
        title = self.filing.name
        if self.document.is_here:
            title = self.document.design.title or title
        self.setWindowTitle(f"{title.replace('[*]', '[* ]')}[*] – Chartmaker")
        self.setWindowModified(not self.document.stack.isClean())

    def _fold_findings(self, is_folded: bool) -> None:  # noqa: FBT001 - the signal's own signature
        line = self.findings.minimumSizeHint().height()
        total = sum(self._split.sizes())
        lower = line if is_folded else self.findings.wanted_height
        self.findings.setMaximumHeight(line if is_folded else 16_777_215)
        self._split.setSizes([total - lower, lower])

    def _tell_stitch_again(self) -> None:
        """What was drawn under the pointer is told without its moving; a gesture under way tells for itself."""
        canvas = self.chart.canvas
        if self._told and not canvas.hand.is_busy:
            self._tell_stitch(self._told if self._told[0] < len(canvas.grid.rows) else None)

    def _tell_stitch(self, cell: tuple[int, int] | None) -> None:
        self._told = cell
        from chartmaker.app.chart_words import stitch_words

        words = stitch_words(self.chart.canvas, cell) if cell else ""
        held = self.chart.motifs.words_at(cell) if cell else ""
        words = f"! {sentence(held)}  {words}" if held else words
        self._hover.setText(words)
        self._hover.setToolTip(plain_tip(words) if words else "")

    # --- coming and going

    def _restore(self) -> None:
        kept = self._settings.value("geometry")
        if kept is not None:
            self.restoreGeometry(kept)

    def changeEvent(self, event: QEvent) -> None:
        """Follow the system from light to dark and back, and look at the file when the user comes back."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            QTimer.singleShot(0, self, self._look_at_file)
        if event.type() == QEvent.Type.PaletteChange and hasattr(self, "actions_made"):
            self.actions_made.recolour()
            if self.document.has_appraisal:
                self.findings.refresh(is_anew=True)

    def _look_at_file(self) -> None:
        if self._chart is None or QApplication.activeModalWidget() is not None:
            return
        for changes in (self.filing.changes, self.filing.palettes.changes):
            if changes.are_to_ask:
                self._chart.canvas.drop()
                changes.ask()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Ask about unsaved work before going."""
        self.finish_typing()
        if not self.filing.may_leave():
            event.ignore()
            return
        self._arrival.loaded.disconnect(self.bring_chart)
        self._arrival.finish()
        self.background.finish()
        self.document.finish()
        self.autosave.close()
        self.filing.own_file.leave()
        self._settings.setValue("geometry", self.saveGeometry())
        event.accept()
