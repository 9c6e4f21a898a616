"""The part of the action table that works with motifs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.action import Action, on_chart

if TYPE_CHECKING:
    from chartmaker.app.window import Window


def _with_motif(window: Window) -> bool:
    """Tell whether the chart is the page at hand, and a motif is chosen."""
    return on_chart(window) and window.chart.motifs.motif is not None


def _save(window: Window) -> None:
    window.finish_typing()
    if window.chart.motifs.save(window.filing.questions):
        window.chart.show_shelf(is_shown=True)


MOTIF_ACTIONS: tuple[Action, ...] = (
    Action(
        "motifs.shelf",
        "Motifs",
        "Show the s&helf",
        ("F7",),
        lambda window: window.chart.toggle_shelf(),
        on_chart,
        lambda window: window.chart.has_shelf,
        icon="shelf",
    ),
    Action(
        "motifs.stamp",
        "Motifs",
        "&Stamp the motif",
        ("A",),
        lambda window: window.chart.motifs.hold(),
        _with_motif,
        lambda window: window.chart.canvas.hand.holds_stamp,
        "canvas",
        begins_group=True,
    ),
    Action(
        "motifs.snap",
        "Motifs",
        "S&nap to the repeat",
        ("Shift+A",),
        lambda window: window.chart.motifs.toggle_snap(),
        on_chart,
        lambda window: window.chart.canvas.hand.snaps,
        "canvas",
    ),
    Action(
        "motifs.lay_in",
        "Motifs",
        "Lay it in as a new &band above",
        ("Ctrl+Shift+B",),
        lambda window: window.chart.motifs.lay_in(),
        _with_motif,
    ),
    Action(
        "motifs.save",
        "Motifs",
        "S&ave the selection as a motif…",
        ("Ctrl+Shift+M",),
        _save,
        on_chart,
        begins_group=True,
    ),
)
ON_THE_SHELF = (("motifs.lay_in", "Band above"), ("motifs.snap", "Snap"), ("motifs.save", "Save…"))
"""Buttons at the shelf's foot, and their short words."""
