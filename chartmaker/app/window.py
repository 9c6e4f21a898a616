"""The window: pages along the top, the page at hand, the findings below, the status at the foot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QSettings, QTimer, Signal
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QApplication,
    QLineEdit,
    QMainWindow,
    QPlainTextEdit,
)

from chartmaker.app.action_bar import ActionBar
from chartmaker.app.arrival import Arrival
from chartmaker.app.autosave import Autosave
from chartmaker.app.background import Background
from chartmaker.app.filing import Filing
from chartmaker.app.findings_split import FindingsSplit
from chartmaker.app.findings_strip import FindingsStrip, sentence
from chartmaker.app.history import History
from chartmaker.app.left_work import LeftWorkOffer
from chartmaker.app.lots_desk import LotsDesk
from chartmaker.app.own_file import OwnFile
from chartmaker.app.page_frame import PageFrame
from chartmaker.app.pages import PAGES, Pages
from chartmaker.app.questions import Questions
from chartmaker.app.seeing import keep_seeing, kept_seeing
from chartmaker.app.selection_label import SelectionLabel
from chartmaker.app.stitch_line import StitchLine
from chartmaker.app.told import told
from chartmaker.app.units_setting import UnitsSetting
from chartmaker.app.views import view_named
from chartmaker.app.waiting_page import WaitingPage

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtGui import QCloseEvent

    from chartmaker.app.chart_page import ChartPage
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.print_desk import PrintDesk
    from chartmaker.checks.finding import Place


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
    units: UnitsSetting

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
        self.units = UnitsSetting(settings, self)
        self.background = Background()
        own_file = OwnFile(state)
        self.filing = Filing(
            document,
            own_file=own_file,
            questions=questions or Questions(self),
            background=self.background,
            settings=settings,
        )
        self.lots = LotsDesk(self.filing, self.units, self)
        self.history = History(document, self.lots.open_palette)
        self.autosave = Autosave(document, own_file, state and state / "recovery")
        self._left_work = LeftWorkOffer(self.filing, self.autosave)
        self.findings = FindingsStrip(document, self.units)
        self._chart: ChartPage | None = None
        self._waiting = WaitingPage()
        self._arrival = Arrival(self)
        self._pages = Pages(
            document,
            self.lots,
            self._waiting,
            settings=settings,
            units=self.units,
            actions=lambda: self.actions_made.made,
        )
        self.colourways = self._pages.colourways
        self._hover = StitchLine()
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
        self._chart = chart = ChartPage(self.document, self.units)
        self._follow_chart(chart)
        self._show_title()
        had_keys = self.focusWidget() is self._waiting
        self._pages.put("chart", chart)
        self._waiting.deleteLater()
        self._split.divide(is_folded=False)
        if had_keys:
            chart.canvas.setFocus()
        self.chart_came.emit()
        return chart

    def _follow_chart(self, chart: ChartPage) -> None:
        canvas = chart.canvas
        self._hover.follow(chart)
        canvas.hand_changed.connect(self.actions_made.refresh)
        for signal in (canvas.refused, canvas.told):
            signal.connect(lambda text: self.statusBar().showMessage(sentence(text), 8000))
        chart.far.refused.connect(lambda text: self.statusBar().showMessage(text, 8000))
        chart.take_seeing(kept_seeing(self._settings))
        chart.seeing_changed.connect(lambda seeing: keep_seeing(self._settings, seeing))
        chart.view_changed.connect(self._follow_view)
        SelectionLabel(canvas.blocks, self.statusBar())
        self.actions_made.take_chart(chart)

    @property
    def page(self) -> str:
        """The page at hand."""
        return self._pages.at_hand

    def show_page(self, name: str) -> None:
        """Turn to a page; it is made when it is first turned to."""
        self.bring_chart()
        self._pages.show_page(name)
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
        """Print to a file, with what is still being typed."""
        self.finish_typing()
        self._print_desk.print_pdf()

    def print_paper(self) -> None:
        """Print by the system's printer, with what is still being typed."""
        self.finish_typing()
        self._print_desk.print_paper()

    def save_yarn_table(self) -> None:
        """Write the yarn table, with what is still being typed."""
        self.finish_typing()
        self._print_desk.save_yarn_table()

    @property
    def _print_desk(self) -> PrintDesk:
        from chartmaker.app.print_desk import PrintDesk

        return PrintDesk(self.filing, self.units.units)

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

    def _lay_out(self) -> None:
        self._split = FindingsSplit(self._pages, self.findings)
        self.setCentralWidget(self._split)
        self.statusBar().addWidget(self._hover, 1)
        self.statusBar().addPermanentWidget(self.background)

    def _connect(self) -> None:
        document = self.document
        self._waiting.canvas.painted.connect(self._arrival.begin)
        self._arrival.loaded.connect(self.bring_chart)
        self._pages.asked.connect(self.show_page)
        self._pages.failed.connect(self.filing.tell)
        self._pages.refused.connect(lambda text: self.statusBar().showMessage(told(text), 8000))
        self.findings.led.connect(self.lead_to)
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
        self._pages.finish()
        self.document.finish()
        self.autosave.close()
        self.filing.own_file.leave()
        self._settings.setValue("geometry", self.saveGeometry())
        event.accept()
