"""The part of the action table that re-shades rounds: those that are chosen, or the one at the cursor."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.action import Action, on_chart

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.shading_desk import ShadingDesk
    from chartmaker.model.edits import Edit


def _edit(
    name: str,
    text: str,
    key: str,
    make: Callable[[ShadingDesk], Edit | None],
    *,
    begins_group: bool = False,
) -> Action:
    """Make a row that does an edit, and shows it while its entry in a menu is marked."""
    return Action(
        f"shading.{name}",
        "Shading",
        text,
        (key,),
        lambda window: window.chart.shading.desk.do(make(window.chart.shading.desk)),
        on_chart,
        begins_group=begins_group,
        preview=lambda window: window.chart.shading.desk.show(make(window.chart.shading.desk)),
    )


SHADING_ACTIONS: tuple[Action, ...] = (
    Action(
        "shading.choose",
        "Shading",
        "Choose the &letter here",
        ("Ctrl+L",),
        lambda window: window.chart.shading.choose_letter(),
        on_chart,
    ),
    Action(
        "shading.steps",
        "Shading",
        "Shade in &steps…",
        ("Ctrl+Shift+L",),
        lambda window: window.chart.shading.desk.step_through(window),
        on_chart,
    ),
    _edit(
        "fill_up",
        "Fill &up to the band's end",
        "Ctrl+Shift+Up",
        lambda desk: desk.fill_edit(upwards=True),
        begins_group=True,
    ),
    _edit("fill_down", "Fill &down to the band's end", "Ctrl+Shift+Down", lambda desk: desk.fill_edit(upwards=False)),
    _edit("swap", "S&wap ground and figure", "Ctrl+Shift+W", lambda desk: desk.swap_edit()),
    _edit("mirror", "&Mirror upwards", "Ctrl+M", lambda desk: desk.mirror_edit(upwards=True), begins_group=True),
    _edit("mirror_down", "Mi&rror downwards", "Ctrl+Alt+M", lambda desk: desk.mirror_edit(upwards=False)),
    Action(
        "shading.add",
        "Shading",
        "&Add a letter to the round…",
        ("Ctrl+T",),
        lambda window: window.chart.shading.desk.add_letter(window),
        on_chart,
        begins_group=True,
    ),
    Action(
        "shading.take_off",
        "Shading",
        "&Take unused letters off",
        ("Ctrl+Alt+T",),
        lambda window: window.chart.shading.desk.take_off(),
        on_chart,
        preview=lambda window: window.chart.shading.desk.show(window.chart.shading.desk.take_off_edit()),
    ),
)
ON_A_CHIP: tuple[tuple[str, ...], ...] = (
    ("shading.choose", "shading.steps"),
    ("shading.fill_up", "shading.fill_down", "shading.swap"),
    ("shading.mirror", "shading.mirror_down"),
    ("shading.add", "shading.take_off"),
)
"""Groups of the menu of a chip."""
