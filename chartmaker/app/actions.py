"""The table of everything that can be done in the window; menus, tool bar and the list of keys are made from it."""

from __future__ import annotations

from chartmaker.app.action import Action, on_chart
from chartmaker.app.block_actions import BLOCK_ACTIONS
from chartmaker.app.drawing_actions import DRAWING_ACTIONS, SHAPE_TOOLS
from chartmaker.app.lots_actions import LOTS_ACTIONS
from chartmaker.app.motif_actions import MOTIF_ACTIONS
from chartmaker.app.pattern_actions import PATTERN_ACTIONS
from chartmaker.app.shading_actions import SHADING_ACTIONS
from chartmaker.app.start_actions import START_ACTIONS
from chartmaker.app.structure_actions import BAND_ACTIONS, CROWN_ACTIONS, ROUND_ACTIONS, SIGN_ACTIONS
from chartmaker.app.views import VIEWS, View


def _view(view: View) -> Action:
    return Action(
        f"view.{view.id}",
        "View",
        view.text,
        (view.key,),
        lambda window: window.show_view(view.id),
        on_chart,
        lambda window: window.chart.view == view.id,
        "chart",
    )


def _page(name: str, text: str, key: str, *, begins_group: bool = False) -> Action:
    return Action(
        f"page.{name}",
        "View",
        text,
        (key,),
        lambda window: window.show_page(name),
        checked=lambda window: window.page == name,
        begins_group=begins_group,
    )


ACTIONS: tuple[Action, ...] = (
    *START_ACTIONS,
    Action("file.open", "File", "&Open…", ("Ctrl+O",), lambda window: window.filing.open()),
    Action(
        "file.palette",
        "File",
        "Open &palette…",
        ("Ctrl+Shift+O",),
        lambda window: window.filing.open_palette(),
    ),
    Action("file.save", "File", "&Save", ("Ctrl+S",), lambda window: window.save(), begins_group=True),
    Action("file.save_as", "File", "Save &as…", ("Ctrl+Shift+S",), lambda window: window.save_as()),
    Action("file.copies", "File", "&Earlier copies…", ("Ctrl+Shift+E",), lambda window: window.open_copy()),
    Action(
        "file.picture",
        "File",
        "Export p&icture…",
        ("Ctrl+E",),
        lambda window: window.export_picture(),
        begins_group=True,
    ),
    Action("file.pdf", "File", "Save sheets as P&DF or pictures…", ("Ctrl+Alt+D",), lambda window: window.print_pdf()),
    Action("file.yarn", "File", "Sa&ve the yarn table…", ("Ctrl+Alt+V",), lambda window: window.save_yarn_table()),
    Action("file.print", "File", "Prin&t…", ("Ctrl+P",), lambda window: window.print_paper()),
    Action("file.quit", "File", "&Quit", ("Ctrl+Q",), lambda window: window.close(), begins_group=True),
    Action(
        "edit.undo",
        "Edit",
        "&Undo",
        ("Ctrl+Z",),
        lambda window: window.undo(),
        lambda window: window.history.undoing.canUndo(),
        icon="undo",
    ),
    Action(
        "edit.redo",
        "Edit",
        "&Redo",
        ("Ctrl+Shift+Z", "Ctrl+Y"),
        lambda window: window.redo(),
        lambda window: window.history.redoing.canRedo(),
        icon="redo",
    ),
    *BLOCK_ACTIONS,
    *SHADING_ACTIONS,
    *DRAWING_ACTIONS,
    *SIGN_ACTIONS,
    *ROUND_ACTIONS,
    *BAND_ACTIONS,
    *CROWN_ACTIONS,
    *MOTIF_ACTIONS,
    *PATTERN_ACTIONS,
    *LOTS_ACTIONS,
    *(_view(view) for view in VIEWS),
    Action(
        "view.zoom_in",
        "View",
        "Zoom &in",
        ("Ctrl++", "Ctrl+="),
        lambda window: window.chart.canvas.zoom(1),
        on_chart,
        icon="zoom-in",
        begins_group=True,
    ),
    Action(
        "view.zoom_out",
        "View",
        "Zoom &out",
        ("Ctrl+-",),
        lambda window: window.chart.canvas.zoom(-1),
        on_chart,
        icon="zoom-out",
    ),
    Action(
        "view.fit",
        "View",
        "&Fit the whole chart",
        ("Ctrl+0",),
        lambda window: window.chart.canvas.fit(),
        on_chart,
        icon="fit",
    ),
    Action(
        "view.true_size",
        "View",
        "Tr&ue size on paper",
        ("Ctrl+9",),
        lambda window: window.chart.show_true_size(),
        on_chart,
    ),
    Action(
        "view.imperial",
        "View",
        "I&nches, yards and ounces",
        ("Ctrl+Shift+U",),
        lambda window: window.units.toggle(),
        checked=lambda window: window.units.are_imperial,
        tip="Shows and takes lengths in inches; files stay metric.",
    ),
    _page("lots", "&Lots", "Ctrl+1", begins_group=True),
    _page("hat", "&Hat", "Ctrl+2"),
    _page("chart", "&Chart", "Ctrl+3"),
    _page("yarn", "&Yarn", "Ctrl+4"),
    _page("baths", "&Baths", "Ctrl+5"),
    _page("sheets", "Sh&eets", "Ctrl+6"),
    Action("findings.next", "Findings", "&Next finding", ("F8",), lambda window: window.findings.go(1)),
    Action("findings.previous", "Findings", "&Previous finding", ("Shift+F8",), lambda window: window.findings.go(-1)),
    Action(
        "findings.mend",
        "Findings",
        "&Give the lot that mends it",
        ("Ctrl+F8",),
        lambda window: window.findings.apply_remedy(),
        lambda window: window.findings.has_remedy,
    ),
    Action(
        "findings.fold",
        "Findings",
        "&Show or hide the list",
        ("F9",),
        lambda window: window.findings.toggle(),
        begins_group=True,
    ),
    Action("help.keys", "Help", "&Keys", ("F1",), lambda window: window.show_keys()),
    Action("help.about", "Help", "&About Chartmaker", (), lambda window: window.show_about()),
)
"""In the order of the menus."""

TOOL_BAR: tuple[tuple[str | tuple[str, ...], ...], ...] = (
    ("edit.undo", "edit.redo"),
    ("tool.draw", SHAPE_TOOLS, "tool.pick", "tool.select", "motifs.shelf"),
    ("part.ground", "part.figure", "part.third"),
    tuple(action.id for action in SIGN_ACTIONS),
    ("view.zoom_in", "view.zoom_out", "view.fit"),
)
"""Groups of the chart's tool bar, where entries that stand together share one button; the choice of views stands at
its right end."""
WITH_TEXT = ("part.ground", "part.figure", "part.third")
"""Shown with their words in the tool bar."""
