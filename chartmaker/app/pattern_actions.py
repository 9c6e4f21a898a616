"""The part of the action table that makes patterns of pictures and words."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from chartmaker.app.action import Action, on_chart

if TYPE_CHECKING:
    from chartmaker.app.window import Window


def _open(window: Window, side: Literal["picture", "words"]) -> None:
    window.finish_typing()
    filing = window.filing
    window.chart.patterns.open(side, window, settings=filing.settings, questions=filing.questions)


PATTERN_ACTIONS: tuple[Action, ...] = (
    Action(
        "pattern.picture",
        "Motifs",
        "Pattern from a &picture…",
        ("Ctrl+Shift+P",),
        lambda window: _open(window, "picture"),
        on_chart,
        begins_group=True,
    ),
    Action(
        "pattern.words",
        "Motifs",
        "Pattern from &words…",
        ("Ctrl+Shift+T",),
        lambda window: _open(window, "words"),
        on_chart,
    ),
)
