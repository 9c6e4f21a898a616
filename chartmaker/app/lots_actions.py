"""The part of the action table that is about lots: their readings, their keeping, and what two of them say together."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from chartmaker.app.action import Action

LOTS_ACTIONS: tuple[Action, ...] = ()
"""In the order of the menu."""
