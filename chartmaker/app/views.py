"""The ways in which the chart can be seen: the one table that menu, view box, painter and export read."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Surface = Literal["flat", "knit", "back", "far"]
Tint = Literal["shade", "value", "paper", "lamp", "protan", "deutan", "tritan"]

KINDS_OF_EYES: tuple[Tint, ...] = ("protan", "deutan", "tritan")
"""By the cone that lacks or is shifted; the words of `shade.vision`, which brings numpy and is not asked here."""


@dataclass(frozen=True, slots=True)
class View:
    """One way of seeing."""

    id: str
    text: str
    """As the menu shows it; & marks its key in the menu."""
    key: str
    surface: Surface = "flat"
    """What is drawn of each stitch: an even cell, its knitted face, the back with its floats, or all of it far away."""
    tint: Tint = "shade"
    """Which colour its yarn has: as dyed, grey, none, under a lamp, or to eyes of another kind."""
    picture: str = "shade"
    """The nearest view that a picture can be exported in."""
    has_strip: bool = False
    """Whether a line above the chart tells of it, or sets what it needs."""

    @property
    def words(self) -> str:
        """Its text without marks."""
        return self.text.replace("&", "")

    @property
    def is_drawn_on(self) -> bool:
        """Whether stitches can be drawn in it."""
        return self.surface != "far"


VIEWS: tuple[View, ...] = (
    View("shade", "&Shade", "1"),
    View("value", "&Grey value", "2", tint="value", picture="value"),
    View("knit", "&Knitted surface", "3", surface="knit", picture="knit"),
    View("symbols", "Sy&mbols", "4", tint="paper"),
    View("back", "Back of the &work", "5", surface="back", has_strip=True),
    View("far", "&Across the room", "6", surface="far", has_strip=True),
    View("lamp", "By lam&plight", "7", tint="lamp", has_strip=True),
    View("protan", "Colour &vision: protan", "8", tint="protan", has_strip=True),
    View("deutan", "Colour vision: &deutan", "9", tint="deutan", has_strip=True),
    View("tritan", "Colour vision: t&ritan", "0", tint="tritan", has_strip=True),
)
"""In the order of their keys."""


def view_named(name: str) -> View:
    """Give a view by its id; raises ValueError where there is none."""
    found = next((view for view in VIEWS if view.id == name), None)
    if found is None:
        raise ValueError(f"there is no view {name!r}")
    return found
