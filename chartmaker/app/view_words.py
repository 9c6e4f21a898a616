"""What the line above the chart says of the view at hand."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.shades import is_only_adapted
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.far_view import FarView
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.views import View
    from chartmaker.model.units import Units


def strip_words(view: View, document: OpenDesign, far: FarView, units: Units) -> str:
    """Give the sentence of a view; empty where it has none."""
    if view.surface == "far":
        return far.words()
    if view.surface == "back":
        return tr(
            "Seen through: stitches keep their columns. The ground is carried above, the figure below. "
            "Heavy black edges: longer than {0}. White tie: catch it there."
        ).format(units.length.brief(document.design.limits.float_cm))
    if view.tint == "lamp":
        return _lamp_words(document)
    return {
        "protan": tr("To eyes that lack the cone for long waves, in part or in whole (Machado 2009)"),
        "deutan": tr("To eyes that lack the cone for middle waves, in part or in whole (Machado 2009)"),
        "tritan": tr("To eyes that lack the cone for short waves, in part or in whole (Machado 2009)"),
    }.get(view.tint, "")


def _lamp_words(document: OpenDesign) -> str:
    design = document.design
    used = {lot_id for _, lot_id in design.colourway.lots}
    adapted = [lot.name for lot in design.palette.lots if lot.id in used and is_only_adapted(lot, design.viewing)]
    if not adapted:
        return tr("Under an incandescent lamp (CIE illuminant A), to eyes used to it")
    return tr(
        "Under an incandescent lamp (CIE A), to eyes used to it. Without a spectrum, and so only adapted: {0}"
    ).format(", ".join(adapted))
