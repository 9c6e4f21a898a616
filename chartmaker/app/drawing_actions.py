"""The part of the action table that draws: tools, parts, mirroring, and the band that is worked in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.action import Action, on_chart
from chartmaker.app.block_actions import SELECT_TOOL
from chartmaker.model.stitches import Part

if TYPE_CHECKING:
    from chartmaker.app.window import Window


def _tool(name: str, text: str, key: str, *, begins_group: bool = False, tip: str = "") -> Action:
    return Action(
        f"tool.{name}",
        "Draw",
        text,
        (key,),
        lambda window: window.chart.canvas.take_tool(name),
        on_chart,
        lambda window: window.chart.canvas.hand.tool.name == name,
        "canvas",
        name,
        begins_group,
        tip=tip,
    )


def _part(part: Part, text: str, key: str, *, begins_group: bool = False) -> Action:
    return Action(
        f"part.{part.name.lower()}",
        "Draw",
        text,
        (key,),
        lambda window: window.chart.canvas.take_part(part),
        on_chart,
        lambda window: window.chart.canvas.hand.part == part,
        "canvas",
        part.name.lower(),
        begins_group,
    )


def _turn_alone(window: Window) -> None:
    canvas = window.chart.canvas
    canvas.drop()
    canvas.work_alone(is_alone=not canvas.is_alone)
    canvas.hand_changed.emit()


DRAWING_ACTIONS: tuple[Action, ...] = (
    _tool("draw", "&Draw", "D"),
    _tool("line", "&Line", "L"),
    _tool("rectangle", "&Rectangle", "R"),
    _tool("filled-rectangle", "Filled rect&angle", "Shift+R"),
    _tool("ellipse", "Ell&ipse", "E"),
    _tool("filled-ellipse", "Filled &ellipse", "Shift+E"),
    _tool(
        "fill",
        "Fl&ood fill",
        "O",
        tip="Fill the stitches of one part that hang together, round the join too, as far as the band goes",
    ),
    _tool("pick", "&Pick the part", "P"),
    SELECT_TOOL,
    _part(Part.GROUND, "&Ground", "G", begins_group=True),
    _part(Part.FIGURE, "&Figure", "F"),
    _part(Part.THIRD, "&Third", "T"),
    Action(
        "draw.ground_here",
        "Draw",
        "Ground at the &cursor",
        ("X",),
        lambda window: window.chart.canvas.draw_ground_here(),
        on_chart,
        where="canvas",
        begins_group=True,
    ),
    Action(
        "mirror.stitch",
        "Draw",
        "Mirror about t&his stitch",
        ("V",),
        lambda window: window.chart.mirror.turn_stitch(),
        on_chart,
        lambda window: window.chart.mirror.axes.across is not None,
        "canvas",
        "mirror-stitch",
        begins_group=True,
        tip="Mirror drawing and filling, not signs or motifs, about this stitch; again: its left edge; again: off",
    ),
    Action(
        "mirror.round",
        "Draw",
        "Mirror abo&ut this round",
        ("H",),
        lambda window: window.chart.mirror.turn_round(),
        on_chart,
        lambda window: window.chart.mirror.axes.up is not None,
        "canvas",
        "mirror-round",
        tip="Mirror drawing and filling, not signs or motifs, about this round; again: its upper edge; again: off",
    ),
    Action(
        "band.alone",
        "Draw",
        "&Work in this band alone",
        ("W",),
        _turn_alone,
        on_chart,
        lambda window: window.chart.canvas.is_alone,
        "canvas",
        "band-alone",
        tip="Ghost the other bands, and leave them as they are whatever is drawn over them",
    ),
)
SHAPE_TOOLS = (
    "tool.line",
    "tool.rectangle",
    "tool.filled-rectangle",
    "tool.ellipse",
    "tool.filled-ellipse",
    "tool.fill",
)
"""Share one button of the tool bar."""
