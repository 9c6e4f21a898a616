"""The part of the action table that is about lots: their readings, their keeping, and what two of them say together."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.action import Action, always

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.lots_desk import LotsDesk
    from chartmaker.app.window import Window


def _with_lot(window: Window) -> bool:
    """Tell whether the Lots page is at hand, and a lot of the palette is chosen there."""
    return window.page == "lots" and window.lots.has_chosen


def _with_bath(window: Window) -> bool:
    """Tell whether the lot that is chosen there names a bath."""
    return window.page == "lots" and window.lots.has_bath_chosen


def _with_yarn(window: Window) -> bool:
    """Tell whether the lot that is chosen there names a yarn."""
    return window.page == "lots" and window.lots.has_yarn_chosen


def _with_palette(window: Window) -> bool:
    """Tell whether a palette is open."""
    return window.lots.open_palette.is_there


def _with_changes(window: Window) -> bool:
    """Tell whether the palette has changes that are not saved."""
    return window.lots.open_palette.is_modified


def _keeping(  # noqa: PLR0913 - one row of the table
    name: str,
    text: str,
    keys: tuple[str, ...],
    run: Callable[[LotsDesk], object],
    *,
    enabled: Callable[[Window], bool] = always,
    begins_group: bool = False,
) -> Action:
    return Action(
        f"lots.{name}", "Lots", text, keys, lambda window: run(window.lots), enabled, begins_group=begins_group
    )


def _take(window: Window) -> None:
    from chartmaker.app.readings_desk import take_readings

    take_readings(window)


def _type(window: Window) -> None:
    from chartmaker.app.readings_desk import type_reading

    type_reading(window)


def _with_any_lot(window: Window) -> bool:
    """Tell whether a lot is picked on the Lots page, be it the palette's or only the design's."""
    return window.page == "lots" and bool(window.lots.chosen)


def _use(window: Window) -> None:
    from chartmaker.app.lots_page import LotsPage

    page = window.findChild(LotsPage)
    if page is not None:
        page.use_as_letter()


def _take_photo(window: Window) -> None:
    from chartmaker.app.photo_desk import take_photo

    take_photo(window)


LOTS_ACTIONS: tuple[Action, ...] = (
    Action("lots.take", "Lots", "&Take readings…", ("Ctrl+Alt+R",), _take),
    Action("lots.photo", "Lots", "Take &from a photo…", ("Ctrl+Alt+P",), _take_photo),
    Action("lots.type", "Lots", "T&ype a reading…", ("Ctrl+Alt+Y",), _type, _with_lot),
    Action("lots.use", "Lots", "Use as &letter…", ("Ctrl+Alt+F",), _use, _with_any_lot),
    _keeping("new", "&New lot…", ("Ctrl+Alt+L",), lambda desk: desk.new_lot(), begins_group=True),
    _keeping("edit", "&Edit lot…", ("Ctrl+Alt+E",), lambda desk: desk.edit_lot(), enabled=_with_lot),
    _keeping("delete", "&Delete lot", ("Ctrl+Alt+Backspace",), lambda desk: desk.delete_lot(), enabled=_with_lot),
    _keeping("new_bath", "New &bath…", ("Ctrl+Alt+B",), lambda desk: desk.new_bath(), begins_group=True),
    _keeping("edit_bath", "Edit its bat&h…", ("Ctrl+Alt+H",), lambda desk: desk.edit_bath(), enabled=_with_bath),
    _keeping("new_yarn", "Ne&w yarn…", ("Ctrl+Alt+W",), lambda desk: desk.new_yarn()),
    _keeping("edit_yarn", "Ed&it its yarn…", ("Ctrl+Alt+I",), lambda desk: desk.edit_yarn(), enabled=_with_yarn),
    _keeping(
        "use_up",
        "Take yarn &off the stock…",
        ("Ctrl+Alt+U",),
        lambda desk: desk.use_up(),
        enabled=_with_palette,
        begins_group=True,
    ),
    _keeping(
        "copies",
        "&Refresh copies…",
        ("Ctrl+Alt+C",),
        lambda desk: desk.refresh_copies(),
        enabled=_with_palette,
    ),
    _keeping(
        "save_palette",
        "&Save palette",
        ("Ctrl+Alt+S",),
        lambda desk: desk.save_palette(),
        enabled=_with_changes,
        begins_group=True,
    ),
    _keeping("save_palette_as", "Save palette &as…", ("Ctrl+Alt+A",), lambda desk: desk.save_palette_as()),
    _keeping("name_palette", "Na&me the palette…", ("Ctrl+Alt+K",), lambda desk: desk.name_palette()),
    Action(
        "lots.link",
        "Lots",
        "Open it with the desi&gn",
        ("Ctrl+Alt+G",),
        lambda window: window.lots.link(),
        _with_palette,
        lambda window: window.lots.is_linked,
        tip="The design names the palette, which is opened with it from then on",
    ),
    _keeping("new_palette", "New &palette", ("Ctrl+Alt+N",), lambda desk: desk.new_palette()),
)
"""In the order of the menu."""

OFF_WITHOUT_LOT = (
    *("lots.type", "lots.use", "lots.edit", "lots.delete", "lots.edit_bath", "lots.edit_yarn"),
    *("lots.use_up", "lots.copies", "lots.save_palette", "lots.link"),
)
"""What cannot be done while no lot is chosen and no palette open."""
