"""The part of the action table that changes what a hat is made of: shaping signs, rounds, bands and repeats."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.action import Action, Where, on_chart
from chartmaker.model.stitches import Shaping

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.structure_desk import StructureDesk


def _sign(sign: Shaping, text: str, key: str, *, begins_group: bool = False) -> Action:
    name = sign.name.lower()
    return Action(
        f"sign.{name}",
        "Draw",
        text,
        (key,),
        lambda window: window.chart.canvas.take_sign(sign),
        on_chart,
        lambda window: window.chart.canvas.hand.sign_held == sign,
        "canvas",
        f"sign-{name}",
        begins_group,
    )


def _structure(  # noqa: PLR0913 - one row of the table
    id_: str,
    text: str,
    key: str | tuple[str, ...],
    run: Callable[[StructureDesk], object],
    *,
    where: Where = "chart",
    begins_group: bool = False,
) -> Action:
    menu = id_.partition(".")[0].capitalize()
    keys = (key,) if isinstance(key, str) else key
    return Action(
        id_, menu, text, keys, lambda window: run(window.chart.structure), on_chart, None, where, "", begins_group
    )


def _field(name: str, text: str, key: str, *, begins_group: bool = False) -> Action:
    return Action(
        f"bands.{name}",
        "Bands",
        text,
        (key,),
        lambda window: window.chart.band.begin(name),
        on_chart,
        begins_group=begins_group,
    )


SIGN_ACTIONS: tuple[Action, ...] = (
    _sign(Shaping.PLAIN, "Knit plai&n", "N", begins_group=True),
    _sign(Shaping.K2TOG, "&Knit two together (k2tog)", "K"),
    _sign(Shaping.SSK, "&Slip, slip, knit (ssk)", "S"),
    _sign(Shaping.CENTRED, "Centred double decrease", "C"),
    _sign(Shaping.MAKE, "&Make one", "M"),
)
"""How a stitch is made, by its sign: taken up, then set with the pointer or at the cursor."""

ROUND_ACTIONS: tuple[Action, ...] = (
    _structure(
        "rounds.insert_above", "Insert a round &above", "I", lambda desk: desk.insert_rounds(above=True), where="canvas"
    ),
    _structure(
        "rounds.insert_below",
        "Insert a round &below",
        "Shift+I",
        lambda desk: desk.insert_rounds(above=False),
        where="canvas",
    ),
    _structure("rounds.duplicate", "D&uplicate the round", "Ctrl+D", lambda desk: desk.duplicate_rounds()),
    _structure("rounds.delete", "&Delete the round", ("Ctrl+Del", "Ctrl+Backspace"), lambda desk: desk.delete_rounds()),
    _structure("rounds.up", "Move the round u&p", "Alt+Up", lambda desk: desk.move_rounds(up=True), begins_group=True),
    _structure("rounds.down", "Move the round d&own", "Alt+Down", lambda desk: desk.move_rounds(up=False)),
    _structure(
        "rounds.choose", "&Choose all rounds of the band", "Ctrl+B", lambda desk: desk.choose_band(), begins_group=True
    ),
)
"""Of the round at the cursor, or of the run of rounds that is chosen."""

BAND_ACTIONS: tuple[Action, ...] = (
    _structure("bands.add_above", "Add a band &above", "B", lambda desk: desk.add_band(above=True), where="canvas"),
    _structure(
        "bands.add_below", "Add a band &below", "Shift+B", lambda desk: desk.add_band(above=False), where="canvas"
    ),
    _structure("bands.duplicate", "D&uplicate the band", "Ctrl+Shift+D", lambda desk: desk.duplicate_band()),
    _structure(
        "bands.delete", "&Delete the band", ("Ctrl+Shift+Del", "Ctrl+Shift+Backspace"), lambda desk: desk.delete_band()
    ),
    _structure(
        "bands.up", "Move the band u&p", "Alt+Shift+Up", lambda desk: desk.move_band(up=True), begins_group=True
    ),
    _structure("bands.down", "Move the band d&own", "Alt+Shift+Down", lambda desk: desk.move_band(up=False)),
    _structure("bands.join", "&Join with the band above", "J", lambda desk: desk.join_band(), where="canvas"),
    _structure(
        "bands.split", "&Split the band below this round", "Shift+J", lambda desk: desk.split_band(), where="canvas"
    ),
    _field("name", "Re&name the band", "F2", begins_group=True),
    _field("repeat", "Set the &repeat", "F3"),
    _field("times", "Set how many &times it goes round", "F4"),
    _field("texture", "Set the te&xture", "F5"),
    _structure(
        "bands.widen_left",
        "&Widen the repeat at the left",
        "Alt+Left",
        lambda desk: desk.widen("left"),
        begins_group=True,
    ),
    _structure("bands.widen_right", "Widen the repeat at the ri&ght", "Alt+Right", lambda desk: desk.widen("right")),
    _structure(
        "bands.narrow_left", "Narrow the repeat at the &left", "Alt+Shift+Left", lambda desk: desk.narrow("left")
    ),
    _structure(
        "bands.narrow_right", "Narrow the repeat at the r&ight", "Alt+Shift+Right", lambda desk: desk.narrow("right")
    ),
    _structure("bands.double", "Doubl&e the repeat", "Ctrl+R", lambda desk: desk.double_repeat(), begins_group=True),
    _structure("bands.halve", "&Halve the repeat", "Ctrl+Shift+R", lambda desk: desk.halve_repeat()),
)
"""Of the band at the cursor."""

CROWN_ACTIONS: tuple[Action, ...] = (
    Action(
        "bands.crown",
        "Bands",
        "Shape the &crown…",
        ("Ctrl+Shift+K",),
        lambda window: window.chart.structure.shape_crown(window.units.units, window),
        lambda window: window.page in {"chart", "hat"} and window.has_chart,
        begins_group=True,
        tip="Profile, sections and decreases of the top; what is drawn there stays in the middle of its section.",
    ),
)
"""Of the bands at the top, wherever the cursor is."""

ON_A_ROUND: tuple[tuple[str, ...], ...] = (
    ("rounds.insert_above", "rounds.insert_below", "rounds.duplicate", "rounds.delete", "rounds.up", "rounds.down"),
    ("bands.add_above", "bands.add_below", "bands.split", "bands.join", "bands.delete"),
)
"""Groups of the menu of a round, beside the chart."""
