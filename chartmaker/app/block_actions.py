"""The part of the action table that works with a block of the chart, or with the rounds that are chosen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.action import Action, on_chart

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.block_desk import BlockDesk
    from chartmaker.app.window import Window


def _with_selection(window: Window) -> bool:
    """Tell whether the chart is the page at hand, and a block or a run of rounds is selected."""
    return on_chart(window) and window.chart.canvas.blocks.has_selection


def _with_block(window: Window) -> bool:
    """Tell whether the chart is the page at hand, and a block is selected."""
    return on_chart(window) and window.chart.canvas.blocks.tool.block is not None


def _block(  # noqa: PLR0913 - one row of the table
    name: str,
    text: str,
    keys: tuple[str, ...],
    run: Callable[[BlockDesk], object],
    *,
    enabled: Callable[[Window], bool] = on_chart,
    begins_group: bool = False,
) -> Action:
    return Action(
        f"block.{name}",
        "Edit",
        text,
        keys,
        lambda window: run(window.chart.canvas.blocks),
        enabled,
        where="canvas",
        begins_group=begins_group,
    )


def _changed(desk: BlockDesk, name: str) -> None:
    from chartmaker.model import block_edits

    desk.change(getattr(block_edits, name))


SELECT_TOOL = Action(
    "tool.select",
    "Draw",
    "Select a &block",
    ("Q",),
    lambda window: window.chart.canvas.take_tool("select"),
    on_chart,
    lambda window: window.chart.canvas.hand.tool.name == "select",
    "canvas",
    "select",
)

BLOCK_ACTIONS: tuple[Action, ...] = (
    _block("cut", "Cu&t", ("Ctrl+X",), lambda desk: desk.cut(), enabled=_with_selection, begins_group=True),
    _block("copy", "&Copy", ("Ctrl+C",), lambda desk: desk.copy(), enabled=_with_selection),
    _block("paste", "&Paste", ("Ctrl+V",), lambda desk: desk.paste()),
    _block("clear", "Cl&ear to ground", ("Del", "Backspace"), lambda desk: desk.clear(), enabled=_with_selection),
    _block("all", "Select &all of the band", ("Ctrl+A",), lambda desk: desk.select_all()),
    _block(
        "flip_sideways",
        "&Flip left and right",
        ("Ctrl+H",),
        lambda desk: _changed(desk, "flip_sideways"),
        begins_group=True,
    ),
    _block("flip_upright", "Flip upside &down", ("Ctrl+Shift+H",), lambda desk: _changed(desk, "flip_upright")),
    _block("turn_half", "Turn by &half a turn", ("Ctrl+U",), lambda desk: _changed(desk, "turn_half")),
    _block(
        "shift_left",
        "&Shift one stitch to the left",
        ("Ctrl+Left",),
        lambda desk: desk.shift(stitches=1),
        begins_group=True,
    ),
    _block("shift_right", "Shift one stitch to the ri&ght", ("Ctrl+Right",), lambda desk: desk.shift(stitches=-1)),
    _block("shift_up", "Shift &one round up", ("Ctrl+Up",), lambda desk: desk.shift(rounds=1)),
    _block("shift_down", "Shift o&ne round down", ("Ctrl+Down",), lambda desk: desk.shift(rounds=-1)),
    _block(
        "repeat",
        "Repeat across the &band",
        ("Ctrl+G",),
        lambda desk: _changed(desk, "repeat"),
        enabled=_with_block,
        begins_group=True,
    ),
)
"""Of the block, or else of the rounds chosen; turning and shifting also of the whole band where neither is."""

ON_A_BLOCK: tuple[tuple[str, ...], ...] = (
    ("block.cut", "block.copy", "block.paste", "block.clear"),
    ("block.flip_sideways", "block.flip_upright", "block.turn_half"),
    ("block.shift_left", "block.shift_right", "block.shift_up", "block.shift_down"),
    ("block.repeat", "motifs.save"),
)
"""Groups of the menu of a block."""
OFF_WITHOUT_SELECTION = ("block.cut", "block.copy", "block.clear", "block.repeat")
