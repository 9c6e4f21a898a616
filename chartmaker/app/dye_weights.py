"""Weights at the dye pot: in grams, by which recipes and scales go, with ounces beside them where those are used."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from chartmaker.app.words import grams, number, tr
from chartmaker.model.units import METRIC

if TYPE_CHECKING:
    from chartmaker.model.units import Units

Weigh = Callable[[float], str]
"""Writes a weight given in grams."""
FINE_BELOW_G = 20.0
"""Below this a tenth of a gram is weighed."""


def weigher(units: Units) -> Weigh:
    """Give what writes weights in a system of measures."""

    def weigh(weight: float) -> str:
        text = tr("{0} g").format(number(weight, 1) if weight < FINE_BELOW_G else grams(weight))
        return text if units is METRIC else f"{text} ({units.weight.told(weight)})"

    return weigh
