"""The part of the action table that begins designs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.action import Action

if TYPE_CHECKING:
    from chartmaker.app.window import Window


def _begin(window: Window) -> None:
    from chartmaker.app.start_desk import ask_for_hat

    ask_for_hat(window)


START_ACTIONS: tuple[Action, ...] = (
    Action("file.new", "File", "&New…", ("Ctrl+N",), _begin),
    Action("file.blank", "File", "New &bare design", ("Ctrl+Shift+N",), lambda window: window.filing.new()),
)
