"""Makes Qt's actions, menus and tool bar from the action table, and keeps them up to date."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QSizePolicy, QToolBar, QToolButton, QWidget

from chartmaker.app.action import MENUS
from chartmaker.app.actions import ACTIONS, TOOL_BAR, WITH_TEXT
from chartmaker.app.block_actions import OFF_WITHOUT_SELECTION, ON_A_BLOCK
from chartmaker.app.icons import icon
from chartmaker.app.lots_actions import OFF_WITHOUT_LOT
from chartmaker.app.motif_actions import ON_THE_SHELF
from chartmaker.app.shading_actions import ON_A_CHIP
from chartmaker.app.shared_button import SharedButton
from chartmaker.app.structure_actions import ON_A_ROUND
from chartmaker.app.view_box import ViewBox
from chartmaker.app.views import view_named
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from pathlib import Path

    from chartmaker.app.action import Action
    from chartmaker.app.chart_page import ChartPage
    from chartmaker.app.window import Window

ON_AT_FIRST = ("tool.draw", "part.figure", "motifs.snap", "view.shade", "page.chart")
DRAWING_MENUS = ("Shading", "Draw", "Rounds", "Bands", "Motifs")
OFF_AFAR = ("block.", "view.zoom_in", "view.zoom_out", "view.fit", "view.true_size")
"""How the ids begin of what else cannot be done while the whole hat is seen from afar."""
OFF_AT_FIRST = (
    *("edit.undo", "edit.redo", "motifs.stamp", "motifs.lay_in", "findings.mend"),
    *OFF_WITHOUT_SELECTION,
    *OFF_WITHOUT_LOT,
)


class ActionBar(QObject):
    """Holds one Qt action for each entry of the table."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self._has_preview = False
        """Whether the chart shows what a menu's entry would do."""
        self.made = {action.id: self._make(action) for action in ACTIONS}
        self._recent = QMenu(tr("Open &recent"), window)
        self._recent.aboutToShow.connect(self._list_recent)
        self.recolour()
        self._make_menus()
        self.refresh()

    def __getitem__(self, name: str) -> QAction:
        """Give the Qt action of an entry."""
        return self.made[name]

    def take_chart(self, chart: ChartPage) -> None:
        """Give the chart the actions whose keys are its own, its tool bar, and the menus of its columns."""
        for action in ACTIONS:
            if action.where != "window":
                chart.canvas.addAction(self.made[action.id])
            if action.where == "chart":
                chart.shading.addAction(self.made[action.id])
            if action.where == "chart" and action.menu == "View":
                chart.far.addAction(self.made[action.id])
        self.fill_tool_bar(chart.tools)
        of_a_round = tuple(tuple(self.made[name] for name in group) for group in ON_A_ROUND)
        chart.canvas.row_actions = chart.ledger.row_actions = of_a_round
        chart.canvas.blocks.changed.connect(self.refresh)
        chart.canvas.blocks.actions = tuple(tuple(self.made[name] for name in group) for group in ON_A_BLOCK)
        chart.shading.row_actions = tuple(tuple(self.made[name] for name in group) for group in ON_A_CHIP)
        for name, words in ON_THE_SHELF:
            self.made[name].setIconText(tr(words))
        chart.shading.menu_opened.connect(self._show_previews_of)
        chart.motifs.actions = tuple(self.made[name] for name, _ in ON_THE_SHELF)
        self.refresh()

    def refresh(self) -> None:
        """Bring what can be done now, and what is on, up to date."""
        if not self._window.has_chart:
            self._show_first_state()
            return
        view = view_named(self._window.chart.view)
        self.view_box.show_view(view.id)
        for action in ACTIONS:
            made = self.made[action.id]
            is_off = not view.is_drawn_on and (action.menu in DRAWING_MENUS or action.id.startswith(OFF_AFAR))
            made.setEnabled(action.enabled(self._window) and not is_off)
            if action.checked is not None:
                made.setChecked(action.checked(self._window))
        history = self._window.history
        for name, text, what in (
            ("edit.undo", tr("&Undo"), history.undo_words()),
            ("edit.redo", tr("&Redo"), history.redo_words()),
        ):
            self.made[name].setText(f"{text} {_lowered(what)}".strip().replace("&&", "&"))
            self.made[name].setToolTip(_tip(self.made[name]))

    def _show_first_state(self) -> None:
        """Show what will be so when the chart is there, without asking for it."""
        for name, made in self.made.items():
            made.setEnabled(name not in OFF_AT_FIRST)
            made.setChecked(name in ON_AT_FIRST)

    def recolour(self) -> None:
        """Draw the icons in the window's present colours."""
        for action in ACTIONS:
            if action.icon:
                self.made[action.id].setIcon(icon(action.icon, self._window.palette()))

    def _make(self, action: Action) -> QAction:
        made = QAction(tr(action.text), self._window)
        made.setObjectName(action.id)
        made.setShortcuts([QKeySequence(key) for key in action.keys])
        made.setCheckable(action.checked is not None)
        made.triggered.connect(lambda _checked=False: self._run(action))
        made.setToolTip(_tip(made))
        made.setStatusTip(tr(action.tip) if action.tip else "")
        if action.where == "window":
            self._window.addAction(made)
        else:
            made.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        return made

    def _run(self, action: Action) -> None:
        """Do it, once the chart is there and if it can be done then."""
        self._window.bring_chart()
        if self.made[action.id].isEnabled():
            action.run(self._window)
        self.refresh()

    def _show_previews_of(self, menu: QMenu) -> None:
        menu.hovered.connect(self._preview)
        menu.aboutToHide.connect(self._end_preview)

    def _preview(self, marked: QAction) -> None:
        """Show on the chart what the marked entry of a menu would do; one that shows nothing leaves it as it is."""
        if not self._window.has_chart:
            return
        self._end_preview()
        action = next((action for action in ACTIONS if action.id == marked.objectName()), None)
        if action is not None and action.preview is not None and marked.isEnabled():
            self._has_preview = True
            action.preview(self._window)

    def _end_preview(self) -> None:
        if self._has_preview:
            self._has_preview = False
            self._window.chart.shading.desk.show_as_is()

    def _make_menus(self) -> None:
        bar = self._window.menuBar()
        menus: dict[str, QMenu] = {}
        for action in ACTIONS:
            menu = menus.get(action.menu)
            if menu is None:
                # On the heap of the bar, so that it lives as long as the window.
                menu = menus[action.menu] = QMenu(tr(MENUS[action.menu]), bar)
                self._show_previews_of(menu)
                menu.setToolTipsVisible(True)
                bar.addMenu(menu)
            if action.begins_group:
                menu.addSeparator()
            menu.addAction(self.made[action.id])
            if action.id == "file.open":
                menu.addMenu(self._recent)

    def _list_recent(self) -> None:
        self._recent.clear()
        for path in self._window.filing.recent():
            entry = self._recent.addAction(str(path).replace("&", "&&"))
            entry.triggered.connect(lambda _checked=False, path=path: self._open_recent(path))
        if self._recent.isEmpty():
            self._recent.addAction(tr("Nothing opened yet")).setEnabled(False)

    def _open_recent(self, path: Path) -> None:
        self._window.bring_chart()
        self._window.filing.open_recent(path)

    def fill_tool_bar(self, bar: QToolBar) -> None:
        """Put the groups of the chart's tools into a bar."""
        for number, group in enumerate(TOOL_BAR):
            if number:
                bar.addSeparator()
            for entry in group:
                if isinstance(entry, str):
                    bar.addAction(self.made[entry])
                    self._name_button(bar.widgetForAction(self.made[entry]), entry)
                else:
                    bar.addWidget(SharedButton([self.made[name] for name in entry], bar))
        gap = QWidget()
        gap.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        bar.addWidget(gap)
        # It lives with the bar: the bar of what waits goes when the chart comes.
        self.view_box = ViewBox()
        self.view_box.chosen.connect(lambda name: self.made[f"view.{name}"].trigger())
        bar.addWidget(self.view_box)

    def _name_button(self, button: QWidget | None, name: str) -> None:
        if isinstance(button, QToolButton):
            button.setAccessibleName(next(entry.plain_text for entry in ACTIONS if entry.id == name))
            if name in WITH_TEXT:
                button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)


def _tip(action: QAction) -> str:
    keys = ", ".join(key.toString(QKeySequence.SequenceFormat.NativeText) for key in action.shortcuts())
    text = action.text().replace("&", "").rstrip("…")
    return f"{text} ({keys})" if keys else text


def _lowered(text: str) -> str:
    """Begin small after another word, unless the text begins with a letter's name."""
    return text[:1].lower() + text[1:] if text[1:2].islower() else text
