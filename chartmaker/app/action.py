"""What an entry of the action table says of one thing that can be done."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.window import Window

Where = Literal["window", "chart", "canvas"]

MENUS = {
    "File": "&File",
    "Edit": "&Edit",
    "Shading": "&Shading",
    "Draw": "&Draw",
    "Rounds": "&Rounds",
    "Bands": "&Bands",
    "Motifs": "&Motifs",
    "Lots": "&Lots",
    "View": "&View",
    "Findings": "Fi&ndings",
    "Help": "&Help",
}
"""What the table calls a menu, and what the bar shows: & marks its key."""


def always(_window: Window) -> bool:
    """Tell that an action can be done at any time."""
    return True


def on_chart(window: Window) -> bool:
    """Tell whether the chart is the page at hand."""
    return window.page == "chart"


@dataclass(frozen=True, slots=True)
class Action:
    """One thing that can be done."""

    id: str
    menu: str
    text: str
    """As menus show it; & marks its key in the menu."""
    keys: tuple[str, ...]
    run: Callable[[Window], object]
    enabled: Callable[[Window], bool] = always
    checked: Callable[[Window], bool] | None = None
    """Set for what is on or off."""
    where: Where = "window"
    """Which control must have the keyboard for its key to act: single letters belong to the chart alone."""
    icon: str = ""
    begins_group: bool = False
    """Whether a line stands above it in its menu."""
    preview: Callable[[Window], object] | None = None
    """Shows on the chart what it would do, while its entry in a menu is marked."""
    tip: str = ""
    """What the status bar tells of it beyond its text."""

    @property
    def plain_text(self) -> str:
        """Its text without marks."""
        return self.text.replace("&", "").rstrip("…")
